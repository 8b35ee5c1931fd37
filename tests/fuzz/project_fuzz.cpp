#include "core/project/project_file.hpp"
#include "core/project/project_writer.hpp"
#include "tests/fuzz/promise.hpp"

#include <cstddef>
#include <cstdint>
#include <string_view>

using namespace sheerlay;
using sheerlay::test::promise;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const auto read = core::parseProject(text, "fuzz.sheerlay");
    if (!read) {
        promise(!read.error().empty(), "a project that is refused is refused with a message");
        return 0;
    }
    const std::string written = core::writeProject(read->project);
    const auto again = core::parseProject(written, "written.sheerlay");
    promise(again.has_value(), "a project that was read can be written and read again");
    promise(core::writeProject(again->project) == written, "a project written twice is the same text");
    return 0;
}

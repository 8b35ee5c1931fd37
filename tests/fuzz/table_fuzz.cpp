#include "core/offsets/table_project.hpp"
#include "core/project/project_file.hpp"
#include "tests/fuzz/corrections_first.hpp"
#include "tests/fuzz/promise.hpp"

using namespace sheerlay;
using sheerlay::test::promise;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const auto input = test::correctionsFirst(data, size);
    if (!input.corrections)
        return 0;
    const auto read = core::readTable(input.rest, "fuzz.csv", "Fuzz", *input.corrections);
    promise(read.has_value() || !read.error().empty(), "a table that is refused is refused with a message");
    if (read)
        promise(core::parseProject(read->projectText, "fuzz.sheerlay").has_value(),
                "the project of a table can be read");
    return 0;
}

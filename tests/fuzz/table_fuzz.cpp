#include "core/offsets/table_project.hpp"
#include "core/project/project_file.hpp"
#include "tests/fuzz/promise.hpp"

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

using namespace sheerlay;
using sheerlay::test::promise;

/// Corrections in the lines that begin with "!", the table in all others.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    std::string_view text(reinterpret_cast<const char*>(data), size);
    std::vector<std::string> said;
    while (text.starts_with('!')) {
        const auto end = text.find('\n');
        said.emplace_back(text.substr(1, end == std::string_view::npos ? end : end - 1));
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    }
    const auto corrections = core::readCorrections(said);
    if (!corrections) {
        promise(!corrections.error().empty(), "what is said and can't be read is complained of");
        return 0;
    }
    const auto read = core::readTable(text, "fuzz.csv", "Fuzz", *corrections);
    if (!read) {
        promise(!read.error().empty(), "a table that is refused is refused with a message");
        return 0;
    }
    promise(core::parseProject(read->projectText, "fuzz.sheerlay").has_value(),
            "the project of a table can be read");
    return 0;
}

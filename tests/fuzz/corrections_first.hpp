#pragma once

#include "core/offsets/table_project.hpp"
#include "core/project/project_file.hpp"
#include "tests/fuzz/promise.hpp"

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace sheerlay::test {

/// Runs a reader that takes corrections over an input: corrections stand in the lines at its head that begin
/// with "!", then comes the file itself. Whatever it reads must be a project that can be read.
template <class Reader> void readCorrected(const std::uint8_t* data, std::size_t size, Reader reader) {
    std::string_view rest(reinterpret_cast<const char*>(data), size);
    std::vector<std::string> said;
    while (rest.starts_with('!')) {
        const auto end = rest.find('\n');
        said.emplace_back(rest.substr(1, end == std::string_view::npos ? end : end - 1));
        rest.remove_prefix(end == std::string_view::npos ? rest.size() : end + 1);
    }
    const auto corrections = core::readCorrections(said);
    if (!corrections) {
        promise(!corrections.error().empty(), "what is said and can't be read is complained of");
        return;
    }
    const auto read = reader(rest, "fuzz", "Fuzz", *corrections);
    promise(read.has_value() || !read.error().empty(), "what is refused is refused with a message");
    if (read)
        promise(core::parseProject(read->projectText, "fuzz.sheerlay").has_value(),
                "a project made can be read");
}

} // namespace sheerlay::test

#pragma once

#include "core/offsets/table_corrections.hpp"
#include "tests/fuzz/promise.hpp"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sheerlay::test {

/// An input of a fuzz target: corrections in the lines at its head that begin with "!", then the file itself.
struct CorrectedInput {
    std::optional<core::TableCorrections> corrections; ///< none where they can't be read
    std::string_view rest;
};

inline CorrectedInput correctionsFirst(const std::uint8_t* data, std::size_t size) {
    CorrectedInput input;
    input.rest = {reinterpret_cast<const char*>(data), size};
    std::vector<std::string> said;
    while (input.rest.starts_with('!')) {
        const auto end = input.rest.find('\n');
        said.emplace_back(input.rest.substr(1, end == std::string_view::npos ? end : end - 1));
        input.rest.remove_prefix(end == std::string_view::npos ? input.rest.size() : end + 1);
    }
    const auto read = core::readCorrections(said);
    promise(read.has_value() || !read.error().empty(), "what is said and can't be read is complained of");
    if (read)
        input.corrections = *read;
    return input;
}

} // namespace sheerlay::test

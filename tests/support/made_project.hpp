#pragma once

#include "core/offsets/table_project.hpp"
#include "tests/support/project_text.hpp"

#include <string>
#include <vector>

/// What became of a table or drawing.
namespace sheerlay::test {

using MadeText = Expected<core::ReadTable, std::vector<core::FileMessage>>;

/// Corrections that can be read.
[[nodiscard]] inline core::TableCorrections corrected(const std::vector<std::string>& takes) {
    const auto corrections = core::readCorrections(takes);
    REQUIRE(corrections.has_value());
    return *corrections;
}

/// The project of a text that was made, read again.
[[nodiscard]] inline core::Project projectOf(const MadeText& read) {
    if (!read)
        for (const core::FileMessage& message : read.error())
            UNSCOPED_INFO(core::toText(message));
    REQUIRE(read.has_value());
    return parsed(read->projectText);
}

/// Every message of one that was refused.
[[nodiscard]] inline std::string refusalOf(const MadeText& read) {
    REQUIRE_FALSE(read.has_value());
    std::string all;
    for (const core::FileMessage& message : read.error())
        all += core::toText(message) + "\n";
    return all;
}

} // namespace sheerlay::test

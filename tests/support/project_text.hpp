#pragma once

#include "core/project/project_file.hpp"
#include "tests/support/catch.hpp"

#include <fstream>
#include <iterator>
#include <string>

/// Project files as text, to be read, spoilt or varied.
namespace sheerlay::test {

[[nodiscard]] inline std::string fileText(const std::string& path) {
    std::ifstream stream(path, std::ios::binary);
    REQUIRE(stream.good());
    return {std::istreambuf_iterator<char>(stream), {}};
}

/// A small project that reads without a word, to be spoilt or varied.
[[nodiscard]] inline std::string smallProject() {
    return fileText(std::string(SHEERLAY_REFERENCE) + "/../cli/odd/later_tables.sheerlay");
}

[[nodiscard]] inline std::string replaced(std::string text, const std::string& from, const std::string& to) {
    const auto at = text.find(from);
    INFO("text to replace: " << from);
    REQUIRE(at != std::string::npos);
    return text.replace(at, from.size(), to);
}

[[nodiscard]] inline core::Project parsed(const std::string& text) {
    const auto read = core::parseProject(text, "trial.sheerlay");
    if (!read)
        for (const core::FileMessage& message : read.error())
            UNSCOPED_INFO(core::toText(message));
    REQUIRE(read.has_value());
    CHECK(read->warnings.empty());
    return read->project;
}

/// The one message for which a small project with more tables behind it is refused.
[[nodiscard]] inline std::string refusalOf(const std::string& tables) {
    const auto read = core::parseProject(smallProject() + tables, "trial.sheerlay");
    REQUIRE_FALSE(read.has_value());
    REQUIRE(read.error().size() == 1);
    return core::toText(read.error().front());
}

/// Whether a text says this; shown where the check fails.
[[nodiscard]] inline bool says(const std::string& text, const std::string& part) {
    UNSCOPED_INFO(text);
    return text.find(part) != std::string::npos;
}

} // namespace sheerlay::test

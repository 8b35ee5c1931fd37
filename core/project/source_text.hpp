#pragma once

#include <toml++/toml.h>

#include <string>
#include <string_view>
#include <vector>

namespace sheerlay::core {

/// The text of a file with its lines, to quote a number as it was written. The text must outlive this.
class SourceText {
public:
    explicit SourceText(std::string_view text);

    /// What stands at a region of one line; empty where the region spans lines or lies outside the text.
    [[nodiscard]] std::string_view slice(const toml::source_region& region) const;

    /// A whole line without its end, counted from 1; empty outside the text.
    [[nodiscard]] std::string_view line(int number) const;

private:
    std::vector<std::string_view> m_lines;
};

} // namespace sheerlay::core

#pragma once

#include <toml++/toml.h>

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace sheerlay::core {

/// Bytes from..to of a text.
struct Span {
    std::size_t from = 0;
    std::size_t to = 0;
};

/// The text of a project with its TOML tables, and where in it they stand.
class Source {
public:
    /// @param text  must outlive the source; TOML that can be read
    explicit Source(std::string_view text);

    [[nodiscard]] std::string_view text() const noexcept { return m_text; }
    [[nodiscard]] const toml::table& root() const noexcept { return m_root; }
    [[nodiscard]] Span span(const toml::node& node) const {
        return {byteOf(node.source().begin), byteOf(node.source().end)};
    }
    [[nodiscard]] std::string slice(const toml::node& node) const {
        const Span at = span(node);
        return std::string(m_text.substr(at.from, at.to - at.from));
    }
    /// Where the line after the node's first begins.
    [[nodiscard]] std::size_t lineAfter(const toml::node& node) const {
        const std::size_t line = node.source().begin.line;
        return line < m_lines.size() ? m_lines[line] : m_text.size();
    }
    /// A table with its header, up to what belongs to the next one: comments above that are left to it.
    [[nodiscard]] Span section(const toml::table& table) const;
    /// The lines a key's value stands on.
    [[nodiscard]] Span linesOf(const toml::node& value) const;

private:
    void findHeaders(const toml::table& table);
    [[nodiscard]] bool isSpare(std::size_t line) const;
    [[nodiscard]] std::size_t byteOf(const toml::source_position& place) const;

    std::string_view m_text;
    toml::table m_root;
    std::vector<std::size_t> m_lines;   ///< byte each line begins at
    std::vector<std::size_t> m_headers; ///< lines of [headers], from 1
};

/// Text in place of a span of the file.
struct Change {
    Span at;
    std::string text;
};

/// What the file says, and what the project says before and after, all three as texts.
struct Three {
    const Source& file;
    const Source& before;
    const Source& after;
};

} // namespace sheerlay::core

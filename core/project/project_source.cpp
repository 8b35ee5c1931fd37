#include "core/project/project_source.hpp"

#include <algorithm>
#include <utility>

namespace sheerlay::core {

Source::Source(std::string_view text) : m_text(text), m_root(toml::parse(text)) {
    m_lines.push_back(0);
    for (std::size_t i = 0; i < text.size(); ++i)
        if (text[i] == '\n')
            m_lines.push_back(i + 1);
    findHeaders(m_root);
    std::ranges::sort(m_headers);
}

Span Source::linesOf(const toml::node& value) const {
    const Span at = span(value);
    const std::size_t end = m_text.find('\n', at.to);
    return {m_text.rfind('\n', at.from) + 1, end == std::string_view::npos ? m_text.size() : end + 1};
}

Span Source::section(const toml::table& table) const {
    const std::size_t first = table.source().begin.line;
    const auto next = std::ranges::upper_bound(m_headers, first);
    std::size_t end = next == m_headers.end() ? m_lines.size() + 1 : *next;
    while (end - 1 > first && isSpare(end - 1))
        --end;
    return {m_lines[first - 1], end - 1 < m_lines.size() ? m_lines[end - 1] : m_text.size()};
}

void Source::findHeaders(const toml::table& table) {
    for (const auto& [key, node] : table) {
        if (const auto* inner = node.as_table()) {
            if (!inner->is_inline())
                m_headers.push_back(inner->source().begin.line);
            findHeaders(*inner);
        } else if (const auto* list = node.as_array()) {
            for (const toml::node& entry : *list)
                if (const auto* element = entry.as_table(); element && !element->is_inline()) {
                    m_headers.push_back(element->source().begin.line);
                    findHeaders(*element);
                }
        }
    }
}

bool Source::isSpare(std::size_t line) const {
    const std::size_t from = m_lines[line - 1];
    const auto sign = m_text.find_first_not_of(" \t\r", from);
    return sign == std::string_view::npos || m_text[sign] == '\n' || m_text[sign] == '#';
}

std::size_t Source::byteOf(const toml::source_position& place) const {
    std::size_t at = m_lines.at(place.line - 1);
    for (toml::source_index sign = 1; sign < place.column && at < m_text.size(); ++sign) {
        ++at; // columns count signs, not bytes
        while (at < m_text.size() && (static_cast<unsigned char>(m_text[at]) & 0xC0U) == 0x80U)
            ++at;
    }
    return at;
}

} // namespace sheerlay::core

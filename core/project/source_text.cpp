#include "core/project/source_text.hpp"

namespace sheerlay::core {

namespace {

/// Byte at which the sign with this number (from 1) begins; columns count signs, not bytes.
std::size_t byteOfColumn(std::string_view line, toml::source_index column) {
    std::size_t at = 0;
    for (toml::source_index sign = 1; sign < column && at < line.size(); ++sign) {
        ++at;
        while (at < line.size() && (static_cast<unsigned char>(line[at]) & 0xC0U) == 0x80U)
            ++at;
    }
    return at;
}

} // namespace

SourceText::SourceText(std::string_view text) {
    while (!text.empty()) {
        const std::size_t end = text.find('\n');
        m_lines.push_back(text.substr(0, end));
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    }
}

std::string_view SourceText::line(int number) const {
    if (number < 1 || number > std::ssize(m_lines))
        return {};
    std::string_view text = m_lines[static_cast<std::size_t>(number) - 1];
    if (text.ends_with('\r'))
        text.remove_suffix(1);
    return text;
}

std::string_view SourceText::slice(const toml::source_region& region) const {
    if (region.begin.line != region.end.line)
        return {};
    const std::string_view text = line(static_cast<int>(region.begin.line));
    const std::size_t begin = byteOfColumn(text, region.begin.column);
    const std::size_t end = byteOfColumn(text, region.end.column);
    return begin < end ? text.substr(begin, end - begin) : std::string_view{};
}

} // namespace sheerlay::core

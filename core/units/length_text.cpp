#include "core/units/length_text.hpp"

#include <array>
#include <utility>

namespace sheerlay::core {

namespace {

constexpr std::array<std::pair<std::string_view, std::string_view>, 28> replacements{{
    {"\u2032", "'"},     {"\u2019", "'"},     {"\u2018", "'"},     {"\u00b4", "'"},     {"\u2033", "\""},
    {"\u201d", "\""},    {"\u201c", "\""},    {"\u2212", "-"},     {"\u2013", "-"},     {"\u2010", "-"},
    {"\u2011", "-"},     {"\u2044", "/"},     {"\u00bd", " 1/2 "}, {"\u00bc", " 1/4 "}, {"\u00be", " 3/4 "},
    {"\u215b", " 1/8 "}, {"\u215c", " 3/8 "}, {"\u215d", " 5/8 "}, {"\u215e", " 7/8 "}, {"\u00a0", " "},
    {"\u2009", " "},     {"\u202f", " "},     {"\u2002", " "},     {"\u2003", " "},     {"''", "\""},
    {"\t", " "},         {"\u2014", "-"},     {"\u2153", " 1/3 "},
}};

std::string lower(std::string text) {
    for (char& c : text)
        if (c >= 'A' && c <= 'Z')
            c = static_cast<char>(c - 'A' + 'a');
    return text;
}

} // namespace

std::string plainSigns(std::string_view text) {
    std::string plain;
    while (!text.empty()) {
        std::size_t taken = 0;
        for (const auto& [from, to] : replacements) {
            if (text.starts_with(from)) {
                plain += to;
                taken = from.size();
                break;
            }
        }
        if (taken == 0) {
            plain += text.front();
            taken = 1;
        }
        text.remove_prefix(taken);
    }
    return lower(trimmed(plain));
}

std::string trimmed(std::string_view text) {
    constexpr std::string_view blank = " \t\r\n";
    const auto first = text.find_first_not_of(blank);
    return first == std::string_view::npos
               ? std::string()
               : std::string(text.substr(first, text.find_last_not_of(blank) - first + 1));
}

bool inFeetInchesEighths(std::string_view printed) {
    const auto first = printed.find('-', 1);
    return first != std::string_view::npos && printed.find('-', first + 1) != std::string_view::npos;
}

std::string quoted(std::string_view text) {
    constexpr std::size_t longest = 40;
    std::string shown = "\"";
    std::size_t end = text.size();
    if (end > longest) {
        end = longest;
        // Do not cut a sign of several bytes in two.
        while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U)
            --end;
    }
    for (const char c : text.substr(0, end))
        shown += static_cast<unsigned char>(c) < 0x20U || c == 0x7F ? '?' : c;
    return shown + (end < text.size() ? "…\"" : "\"");
}

} // namespace sheerlay::core

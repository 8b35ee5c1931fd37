#include "core/sheets/type.hpp"

#include "core/sheets/type_advances.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace sheerlay::core {

namespace {

constexpr double raisedNumerator = capHeight * (1.0 - fractionSize); // its top stands level with the capitals
constexpr double slashOverlap = 0.06; // of the size of type: the slash leans into both numbers

bool isDigit(char c) noexcept {
    return c >= '0' && c <= '9';
}

struct Decoded {
    char32_t code = 0xFFFD;
    std::size_t bytes = 1;
};

// UTF-8; a broken byte counts as one unknown character, since a width is all that is wanted here.
Decoded decode(std::string_view text) noexcept {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned lead = byte(0);
    if (lead < 0x80)
        return {lead, 1};
    const std::size_t bytes = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : lead >= 0xC0 ? 2 : 1;
    if (bytes == 1 || bytes > text.size())
        return {};
    char32_t code = lead & (0x7FU >> bytes);
    for (std::size_t i = 1; i < bytes; ++i)
        code = (code << 6U) | (byte(i) & 0x3FU);
    return {code, bytes};
}

double advance(char32_t code, Weight weight) noexcept {
    const detail::Advances& table = weight == Weight::Regular    ? detail::advancesRegular
                                    : weight == Weight::SemiBold ? detail::advancesSemiBold
                                                                 : detail::advancesBold;
    constexpr double wideLetter = 0.95;
    std::size_t index = 0;
    if (code >= 0x20 && code < 0x7F)
        index = code - 0x20;
    else if (code >= 0xA0 && code <= 0xFF)
        index = 95 + code - 0xA0;
    else {
        const auto& further = detail::furtherCharacters;
        const auto* found = std::find(further.begin(), further.end(), code);
        if (found == further.end())
            return wideLetter;
        index = 95 + 96 + static_cast<std::size_t>(found - further.begin());
    }
    return table[index] / 1000.0;
}

// Length of the fraction that starts at `i`, 0 when there is none: 1/2, 13/16, …
std::size_t fractionAt(std::string_view line, std::size_t i) noexcept {
    if (i > 0 && (isDigit(line[i - 1]) || line[i - 1] == '/' || line[i - 1] == '.'))
        return 0;
    std::size_t j = i;
    while (j < line.size() && isDigit(line[j]))
        ++j;
    if (j == i || j - i > 2 || j >= line.size() || line[j] != '/')
        return 0;
    std::size_t k = j + 1;
    while (k < line.size() && isDigit(line[k]))
        ++k;
    const std::string_view below = line.substr(j + 1, k - j - 1);
    constexpr std::array<std::string_view, 6> parts{"2", "4", "8", "16", "32", "64"};
    const bool known = std::find(parts.begin(), parts.end(), below) != parts.end();
    const bool goesOn = k < line.size() && (line[k] == '/' || line[k] == '.');
    return known && !(goesOn && k + 1 < line.size() && isDigit(line[k + 1])) ? k - i : 0;
}

// A measure and its unit belong on one line.
bool gluedBefore(std::string_view before, std::string_view word) noexcept {
    if (before.empty() || word.empty())
        return false;
    if ((before.back() == '\'' || before.ends_with("+/-")) && isDigit(word.front()))
        return true;
    if (!isDigit(before.back()))
        return false;
    if (fractionAt(word, 0) > 0)
        return true;
    while (!word.empty() &&
           (word.back() == '.' || word.back() == ',' || word.back() == ';' || word.back() == ')'))
        word.remove_suffix(1);
    constexpr std::array<std::string_view, 6> units{"mm", "m", "in", "ft", "N", "lb"};
    return std::find(units.begin(), units.end(), word) != units.end();
}

} // namespace

std::vector<TextRun> runsOf(std::string_view line) {
    std::vector<TextRun> runs;
    std::string plain;
    const auto flush = [&] {
        if (!plain.empty())
            runs.push_back({TextRun::Kind::Plain, plain});
        plain.clear();
    };
    for (std::size_t i = 0; i < line.size();) {
        const std::size_t length = isDigit(line[i]) ? fractionAt(line, i) : 0;
        if (length == 0) {
            plain += line[i++];
            continue;
        }
        flush();
        runs.push_back({TextRun::Kind::Fraction, std::string(line.substr(i, length))});
        i += length;
    }
    flush();
    return runs;
}

std::vector<PlacedRun> place(const std::vector<TextRun>& runs, double size, Weight weight) {
    std::vector<PlacedRun> placed;
    double x = 0.0;
    const auto put = [&](const std::string& text, double raise, double ofSize) {
        placed.push_back({text, x, raise, ofSize});
        x += plainWidth(text, ofSize, weight);
    };
    for (const TextRun& run : runs) {
        if (run.kind == TextRun::Kind::Plain) {
            put(run.text, 0.0, size);
            continue;
        }
        const std::size_t slash = run.text.find('/');
        put(run.text.substr(0, slash), raisedNumerator * size, fractionSize * size);
        x -= slashOverlap * size;
        put("/", 0.0, size);
        x -= slashOverlap * size;
        put(run.text.substr(slash + 1), 0.0, fractionSize * size);
    }
    return placed;
}

double plainWidth(std::string_view text, double size, Weight weight) {
    double width = 0.0;
    while (!text.empty()) {
        const Decoded next = decode(text);
        width += advance(next.code, weight);
        text.remove_prefix(next.bytes);
    }
    return width * size;
}

double textWidth(const std::vector<TextRun>& runs, double size, Weight weight) {
    const std::vector<PlacedRun> placed = place(runs, size, weight);
    return placed.empty() ? 0.0
                          : placed.back().offset + plainWidth(placed.back().text, placed.back().size, weight);
}

double textWidth(std::string_view line, double size, Weight weight) {
    return textWidth(runsOf(line), size, weight);
}

namespace {

/// The words that a line is not broken in; a measure counts as one.
std::vector<std::string> wordsIn(std::string_view text) {
    std::vector<std::string> words;
    for (std::size_t i = 0; i < text.size();) {
        const std::size_t end = std::min(text.find(' ', i), text.size());
        if (end > i) {
            const std::string_view word = text.substr(i, end - i);
            if (!words.empty() && gluedBefore(words.back(), word))
                words.back().append(" ").append(word);
            else
                words.emplace_back(word);
        }
        i = end + 1;
    }
    return words;
}

} // namespace

double widestWord(std::string_view text, double size, Weight weight) {
    double widest = 0.0;
    for (const std::string& word : wordsIn(text))
        widest = std::max(widest, textWidth(word, size, weight));
    return widest;
}

std::vector<std::string> wrap(std::string_view text, double width, double size, Weight weight) {
    std::vector<std::string> lines;
    std::string line;
    for (std::string word : wordsIn(text)) {
        const std::string longer = line.empty() ? word : line + " " + word;
        if (textWidth(longer, size, weight) <= width) {
            line = longer;
            continue;
        }
        if (!line.empty())
            lines.push_back(line);
        while (textWidth(word, size, weight) > width) {
            std::size_t cut = 0;
            while (cut < word.size()) {
                const std::size_t next = cut + decode(std::string_view(word).substr(cut)).bytes;
                if (cut > 0 && textWidth(word.substr(0, next), size, weight) > width)
                    break;
                cut = next;
            }
            if (cut >= word.size())
                break;
            lines.push_back(word.substr(0, cut));
            word.erase(0, cut);
        }
        line = word;
    }
    if (!line.empty())
        lines.push_back(line);
    return lines;
}

namespace {

// Depth of the ink below the baseline, of the size of type: letters with a tail and marks such as commas and
// slashes.
double depthOf(const std::vector<TextRun>& runs) {
    for (const TextRun& run : runs)
        if (run.text.find_first_of("gjpqyQ,;()[]{}|/@$_\xC3\xE2") !=
            std::string::npos) // the last two: lead bytes
            return 0.85 * descent;
    return 0.015; // rounds hang a little
}

} // namespace

Box inkBox(const Text& text) {
    const double width = textWidth(text.runs, text.size, text.weight);
    const double left = text.anchor == Anchor::Left     ? 0.0
                        : text.anchor == Anchor::Middle ? -width / 2
                                                        : -width;
    const double depth = depthOf(text.runs);
    const double c = std::cos(text.rotation), s = std::sin(text.rotation);
    Box box{1e9, 1e9, -1e9, -1e9};
    for (const double x : {left, left + width})
        for (const double y : {-capHeight * text.size, depth * text.size}) {
            const double px = text.at.x() + c * x - s * y, py = text.at.y() + s * x + c * y;
            box.left = std::min(box.left, px);
            box.right = std::max(box.right, px);
            box.top = std::min(box.top, py);
            box.bottom = std::max(box.bottom, py);
        }
    return box;
}

} // namespace sheerlay::core

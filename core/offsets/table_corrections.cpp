#include "core/offsets/table_corrections.hpp"

#include "core/units/length_text.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <array>
#include <string_view>
#include <type_traits>
#include <utility>

namespace sheerlay::core {

namespace {

constexpr std::string_view keys =
    "row N, column N, stations, labels, units, decimal, two-part, spacing, waterline-spacing, "
    "buttock-spacing, half-siding, profile, mirror, heights, drawn-to, beam, centre, base, bow, up or faces";

std::optional<std::size_t> smallNumber(std::string_view text) {
    if (text.empty() || text.size() > 4 || text.find_first_not_of("0123456789") != std::string_view::npos)
        return std::nullopt;
    std::size_t number = 0;
    for (const char c : text)
        number = 10 * number + static_cast<std::size_t>(c - '0');
    return number;
}

/// "5", or a spreadsheet's "E" for a column.
std::optional<std::size_t> lineNumber(std::string_view text, bool column) {
    if (const auto number = smallNumber(text))
        return *number > 0 ? number : std::nullopt;
    if (!column || text.empty() || text.size() > 2)
        return std::nullopt;
    std::size_t number = 0;
    for (const char c : text) {
        if (c < 'a' || c > 'z')
            return std::nullopt;
        number = 26 * number + static_cast<std::size_t>(c - 'a') + 1;
    }
    return number;
}

template <class T> using Words = std::initializer_list<std::pair<std::string_view, T>>;

/// "-x", "+z", "y".
std::optional<AxisDirection> direction(std::string_view text) {
    AxisDirection read;
    if (text.starts_with('+') || text.starts_with('-')) {
        read.positive = text.front() == '+';
        text.remove_prefix(1);
    }
    const auto axis = std::string_view("xyz").find(text);
    if (text.size() != 1 || axis == std::string_view::npos)
        return std::nullopt;
    read.axis = static_cast<int>(axis);
    return read;
}

/// One correction after the other; what can't be read is complained of.
class CorrectionReader {
public:
    void read(const std::string& text) {
        const auto sign = text.find('=');
        if (sign == std::string::npos)
            return complain(text,
                            inEnglish(sayable("KEY = VALUE, with one of the keys {}"), std::string(keys)));
        m_text = text;
        m_key = plainSigns(text.substr(0, sign));
        m_value = trimmed(text.substr(sign + 1));
        if (m_value.empty())
            return complain(text, sayable("a value behind the = sign"));
        if (m_key.starts_with("row ") || m_key.starts_with("column "))
            return line();
        if (m_key == "labels")
            return labels();
        if (m_key == "bow" || m_key == "up")
            return axis();
        if (m_key == "faces")
            return faces();
        if (m_key == "profile")
            return m_read.profile.push_back(m_value);
        if (choice("stations", m_read.stationsInColumns, {{"columns", true}, {"rows", false}}) ||
            choice("units",
                   m_read.units,
                   {{"mm", PlainUnit::Millimetres},
                    {"cm", PlainUnit::Centimetres},
                    {"m", PlainUnit::Metres},
                    {"in", PlainUnit::Inches},
                    {"ft", PlainUnit::Feet}}) ||
            choice(
                "decimal", m_read.decimal, {{"comma", DecimalMark::Comma}, {"point", DecimalMark::Point}}) ||
            choice("two-part",
                   m_twoPart,
                   {{"inches-eighths", TwoPart::InchesEighths}, {"feet-inches", TwoPart::FeetInches}}) ||
            choice("heights", m_read.heightsBelow, {{"below", true}, {"above", false}}) ||
            choice("drawn-to",
                   m_drawnTo,
                   {{"moulds", DrawnTo::Moulds}, {"inside", DrawnTo::Moulds}, {"outside", DrawnTo::Outside}}))
            return;
        for (const auto& [key, field] : {std::pair{"spacing", &m_read.spacing},
                                         {"waterline-spacing", &m_read.waterlineSpacing},
                                         {"buttock-spacing", &m_read.buttockSpacing},
                                         {"half-siding", &m_read.halfSiding},
                                         {"mirror", &m_read.mirror},
                                         {"beam", &m_read.beam},
                                         {"centre", &m_read.centre},
                                         {"base", &m_read.base}})
            if (m_key == key) {
                *field = m_value;
                return;
            }
        complain(text, inEnglish(sayable("one of the keys {}"), std::string(keys)));
    }

    Expected<TableCorrections, std::vector<std::string>> result() && {
        if (!m_complaints.empty())
            return unexpected(std::move(m_complaints));
        m_read.twoPart = m_twoPart.value_or(TwoPart::Unsaid);
        m_read.drawnTo = m_drawnTo.value_or(DrawnTo::Moulds);
        return std::move(m_read);
    }

private:
    void complain(const std::string& found, const std::string& would) {
        m_complaints.push_back(
            inEnglish(sayable("{} can't be read; what would do: {}."), quoted(found), would));
    }
    void line() {
        const bool column = m_key.starts_with("column ");
        const auto number = lineNumber(trimmed(m_key.substr(column ? 7 : 4)), column);
        if (number)
            m_read.lines.push_back({column, *number, m_value});
        else
            complain(m_text, column ? sayable("column 3 = … or column C = …") : sayable("row 5 = …"));
    }
    void labels() {
        const auto number = smallNumber(m_value);
        if (number && *number > 0)
            m_read.labels = *number;
        else
            complain(m_text, sayable("labels = 1, the number of cells in front that name a line"));
    }
    void axis() {
        const auto read = direction(plainSigns(m_value));
        if (!read)
            return complain(
                m_text,
                inEnglish(sayable("{} = x, -x, y, -y, z or -z, a direction of the file's axes"), m_key));
        (m_key == "bow" ? m_read.bow : m_read.up) = read;
    }
    void faces() {
        std::string_view rest = m_value;
        while (!rest.empty()) {
            const auto end = rest.find(',');
            const auto number = smallNumber(trimmed(rest.substr(0, end)));
            if (!number || *number == 0)
                return complain(m_text, sayable("faces = 1, 3, the numbers of the hull's faces in the file"));
            m_read.faces.push_back(*number - 1);
            rest.remove_prefix(end == std::string_view::npos ? rest.size() : end + 1);
        }
    }
    template <class T>
    bool choice(std::string_view key, std::optional<T>& field, Words<std::type_identity_t<T>> words) {
        if (m_key != key)
            return false;
        const std::string value = plainSigns(m_value);
        std::string would;
        for (const auto& [word, meaning] : words) {
            if (value == word)
                field = meaning;
            would += (would.empty() ? "" : " or ") + std::string(key) + " = " + std::string(word);
        }
        if (std::ranges::none_of(words, [&value](const auto& word) { return word.first == value; }))
            complain(m_text, would);
        return true;
    }

    TableCorrections m_read;
    std::optional<TwoPart> m_twoPart;
    std::optional<DrawnTo> m_drawnTo;
    std::vector<std::string> m_complaints;
    std::string m_text;
    std::string m_key;
    std::string m_value;
};

} // namespace

Expected<TableCorrections, std::vector<std::string>> readCorrections(const std::vector<std::string>& said) {
    CorrectionReader reader;
    for (const std::string& several : said) {
        std::string_view rest = several;
        while (!rest.empty()) {
            const auto end = rest.find('\n');
            const std::string one = trimmed(rest.substr(0, end));
            if (!one.empty() && !one.starts_with('#'))
                reader.read(one);
            rest.remove_prefix(end == std::string_view::npos ? rest.size() : end + 1);
        }
    }
    return std::move(reader).result();
}

} // namespace sheerlay::core

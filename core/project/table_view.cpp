#include "core/project/table_view.hpp"

#include "core/units/length.hpp"
#include "core/units/length_text.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace sheerlay::core {

namespace {

// Nothing that belongs to a boat is a kilometre long; more is a slip of the pen or of the units.
constexpr double longestLength = 1e6; // mm

/// Places behind the point of a number as written: "12.50" has two; 0 where it has none.
int writtenDecimals(std::string_view written) {
    const std::size_t point = written.find('.');
    if (point == std::string_view::npos)
        return 0;
    int places = 0;
    for (std::size_t i = point + 1;
         i < written.size() && (written[i] == '_' || (written[i] >= '0' && written[i] <= '9'));
         ++i)
        places += written[i] == '_' ? 0 : 1;
    const std::size_t exponent = written.find_first_of("eE");
    if (exponent == std::string_view::npos)
        return places;
    const int shift = std::atoi(std::string(written.substr(exponent + 1)).c_str());
    return std::clamp(places - std::clamp(shift, -400, 400), 0, 400);
}

const char* unitName(Units units) {
    return units == Units::Inches ? sayable("inches") : sayable("millimetres");
}

std::string wantedLength(Sign sign, Units units) {
    const char* what = sign == Sign::Positive      ? sayable("a length above 0")
                       : sign == Sign::NotNegative ? sayable("a length of 0 or more")
                                                   : sayable("a length");
    return inEnglish(
        sayable("{}: a number of {}, or a text such as \"1-3-4+\" or \"15 3/4 in\""), what, unitName(units));
}

} // namespace

int lineOf(const toml::node& node) {
    return static_cast<int>(node.source().begin.line);
}

std::string describe(const toml::node& node, const SourceText& source) {
    const std::string_view written = source.slice(node.source());
    switch (node.type()) {
    case toml::node_type::table:
        return "a table";
    case toml::node_type::array:
        return "a list";
    case toml::node_type::string:
        return inEnglish(sayable("the text {}"), quoted(node.as_string()->get()));
    case toml::node_type::integer:
        return inEnglish(sayable("the number {}"),
                         written.empty() ? std::to_string(node.as_integer()->get())
                                         : std::string(written.substr(0, 40)));
    case toml::node_type::floating_point:
        return inEnglish(sayable("the number {}"),
                         written.empty() ? std::to_string(node.as_floating_point()->get())
                                         : std::string(written.substr(0, 40)));
    case toml::node_type::boolean:
        return node.as_boolean()->get() ? "true" : "false";
    case toml::node_type::date:
    case toml::node_type::time:
    case toml::node_type::date_time:
        return "a date or time" +
               (written.empty() ? std::string{} : " (" + std::string(written.substr(0, 40)) + ")");
    case toml::node_type::none:
        break;
    }
    return "nothing";
}

std::optional<Cell>
readLengthNode(const toml::node& node, const std::string& key, Sign sign, Reading& reading) {
    const int line = lineOf(node);
    Cell cell{0.0, 0.0, {}, line};
    if (const auto* text = node.as_string()) {
        const auto read = parseLength(text->get(), reading.units);
        if (!read) {
            reading.messages.error(line, key, read.error().found, read.error().would);
            return std::nullopt;
        }
        cell = {read->millimetres, read->resolution, text->get(), line};
    } else if (node.is_number()) {
        const double unit = reading.units == Units::Inches ? mmPerInch : 1.0;
        const std::string_view written = reading.source.slice(node.source());
        const double value = node.is_integer() ? static_cast<double>(node.as_integer()->get())
                                               : node.as_floating_point()->get();
        cell = {value * unit, unit * std::pow(10.0, -writtenDecimals(written)), std::string(written), line};
    } else {
        reading.messages.error(line, key, describe(node, reading.source), wantedLength(sign, reading.units));
        return std::nullopt;
    }
    std::string found;
    if (!std::isfinite(cell.value))
        found = "a number that is not finite, " + cell.printed;
    else if (std::abs(cell.value) > longestLength)
        found = inEnglish(sayable("{}, longer than any boat"), describe(node, reading.source));
    else if (cell.value < 0.0 && sign != Sign::Any)
        found = inEnglish(sayable("{}, which is negative"), describe(node, reading.source));
    else if (cell.value == 0.0 && sign == Sign::Positive)
        found = describe(node, reading.source);
    if (!found.empty()) {
        reading.messages.error(line, key, found, wantedLength(sign, reading.units));
        return std::nullopt;
    }
    return cell;
}

std::string TableView::keyOf(std::string_view key) const {
    return m_path.empty() ? std::string(key) : m_path + "." + std::string(key);
}

int TableView::lineOfKey(std::string_view key) const {
    const toml::node* node = m_table.get(key);
    return node != nullptr ? lineOf(*node) : m_line;
}

const toml::node* TableView::find(std::string_view key, Need need, std::string_view would) {
    m_known.emplace_back(key);
    const toml::node* node = m_table.get(key);
    if (node == nullptr && need == Need::Required)
        m_reading.messages.error(m_line, keyOf(key), "this key is missing", std::string(would));
    return node;
}

std::optional<TableView> TableView::table(std::string_view key, Need need, std::string_view would) {
    const toml::node* node = find(key, need, would);
    if (node == nullptr)
        return std::nullopt;
    if (const toml::table* inner = node->as_table())
        return TableView(*inner, keyOf(key), lineOf(*node), m_reading);
    m_reading.messages.error(lineOf(*node),
                             keyOf(key),
                             describe(*node, m_reading.source),
                             would.empty() ? "a table of keys" : std::string(would));
    return std::nullopt;
}

const toml::array* TableView::array(std::string_view key, Need need, std::string_view would) {
    const toml::node* node = find(key, need, would);
    if (node == nullptr)
        return nullptr;
    const toml::array* list = node->as_array();
    if (list == nullptr)
        m_reading.messages.error(
            lineOf(*node), keyOf(key), describe(*node, m_reading.source), std::string(would));
    return list;
}

std::optional<Cell> TableView::length(std::string_view key, Need need, Sign sign) {
    const toml::node* node = find(key, need, wantedLength(sign, m_reading.units));
    if (node == nullptr)
        return std::nullopt;
    return readLengthNode(*node, keyOf(key), sign, m_reading);
}

std::optional<double> TableView::number(std::string_view key, Need need, std::string_view would) {
    const toml::node* node = find(key, need, would);
    if (node == nullptr)
        return std::nullopt;
    const auto value = node->is_number() ? node->value<double>() : std::nullopt;
    if (!value || !std::isfinite(*value)) {
        m_reading.messages.error(
            lineOf(*node), keyOf(key), describe(*node, m_reading.source), std::string(would));
        return std::nullopt;
    }
    return value;
}

std::optional<std::string> TableView::text(std::string_view key, Need need, std::string_view would) {
    const toml::node* node = find(key, need, would);
    if (node == nullptr)
        return std::nullopt;
    if (const auto* written = node->as_string())
        return written->get();
    m_reading.messages.error(
        lineOf(*node), keyOf(key), describe(*node, m_reading.source), std::string(would));
    return std::nullopt;
}

void TableView::reportWord(std::string_view key, const std::string& written, const std::string& would) {
    m_reading.messages.error(lineOfKey(key), keyOf(key), "the text " + quoted(written), would);
}

void TableView::reportUnknown() const {
    for (const auto& [key, node] : m_table) {
        if (std::find(m_known.begin(), m_known.end(), key.str()) != m_known.end())
            continue;
        std::string known;
        for (const std::string& name : m_known)
            known += (known.empty() ? "" : ", ") + name;
        const int line =
            key.source().begin.line != 0 ? static_cast<int>(key.source().begin.line) : lineOf(node);
        // A quoted key may hold anything, line ends too; a message stays on one line.
        constexpr std::string_view bare = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_";
        const bool isBare =
            key.str().size() <= 40 && key.str().find_first_not_of(bare) == std::string_view::npos;
        m_reading.messages.warning(line,
                                   keyOf(isBare ? std::string(key.str()) : quoted(key.str())),
                                   "a key that is not known here, so it is left out",
                                   "remove it, or use one of " + known);
    }
}

} // namespace sheerlay::core

#pragma once

#include "core/project/project.hpp"
#include "core/units/length.hpp"

#include <cctype>
#include <cmath>
#include <optional>
#include <random>
#include <string>
#include <utility>
#include <vector>

/// Misprints as a compositor, a copyist or a reader makes them: one number of a clean table set wrong, by a
/// slip of its digits, its feet or inches, or of the eye. Made for this project; the kinds are those of
/// table_checks.md 2.4 and the issue's.
namespace sheerlay::test {

/// One number of a table.
struct TableCell {
    std::size_t station = 0;
    int point = 0; ///< index into Station::points; sheer, keel or knuckle below 0
    bool height = false;
    static constexpr int sheer = -1, keel = -2, knuckle = -3;
};

[[nodiscard]] inline core::TablePoint& pointOf(core::HullTable& table, const TableCell& c) {
    core::Station& s = table.stations[c.station];
    return c.point == TableCell::sheer     ? s.sheer
           : c.point == TableCell::keel    ? *s.keel
           : c.point == TableCell::knuckle ? *s.knuckle
                                           : s.points[static_cast<std::size_t>(c.point)];
}

[[nodiscard]] inline double& valueOf(core::HullTable& table, const TableCell& c) {
    core::TablePoint& p = pointOf(table, c);
    return c.height ? p.height : p.halfBreadth;
}

/// Every number that was read off the lines, not chosen beforehand.
[[nodiscard]] inline std::vector<TableCell> cellsOf(const core::HullTable& table) {
    std::vector<TableCell> list;
    for (std::size_t i = 0; i < table.stations.size(); ++i) {
        const core::Station& s = table.stations[i];
        list.push_back({i, TableCell::sheer, false});
        list.push_back({i, TableCell::sheer, true});
        if (s.keel)
            list.push_back({i, TableCell::keel, true});
        if (s.knuckle)
            for (const bool height : {false, true})
                list.push_back({i, TableCell::knuckle, height});
        for (std::size_t k = 0; k < s.points.size(); ++k)
            list.push_back({i, static_cast<int>(k), s.points[k].kind == core::PointKind::Buttock});
    }
    return list;
}

/// A station that stands on the stem: nothing but the stem's own thickness.
[[nodiscard]] inline bool onStem(const core::HullTable& table, const TableCell& c) {
    const core::Station& s = table.stations[c.station];
    return !s.keel && s.sheer.halfBreadth <= 2 * table.roundedTo;
}

struct Misprint {
    TableCell cell;
    double right = 0.0, wrong = 0.0; ///< mm
    std::string kind;
};

/// Draws misprints from a seeded stream.
class Misprinter {
public:
    Misprinter(const core::HullTable& clean, unsigned seed)
        : m_table(clean), m_cells(cellsOf(clean)), m_random(seed) {}

    [[nodiscard]] Misprint next() {
        for (;;) {
            const TableCell c = m_cells[below(m_cells.size())];
            const double right = valueOf(m_table, c);
            const std::size_t kind = below(std::size(kinds));
            const auto wrong = slip(kind, c, right);
            if (wrong && *wrong >= 0 && std::abs(*wrong - right) > 0.9 * m_table.roundedTo)
                return {c, right, *wrong, kinds[kind]};
        }
    }

private:
    static constexpr const char* kinds[] = {
        "digit", "exchanged", "dropped", "inch", "foot", "eighths", "station", "column"};

    [[nodiscard]] std::size_t below(std::size_t n) { return static_cast<std::size_t>(m_random() % n); }

    [[nodiscard]] static std::optional<double> parsed(const std::string& text) {
        const auto read = core::parseLength(text, core::Units::Inches);
        return read ? std::optional(read->millimetres) : std::nullopt;
    }

    [[nodiscard]] std::optional<double> slip(std::size_t kind, const TableCell& c, double right) {
        std::string text = core::toFeetInchesEighths(right);
        std::vector<std::size_t> digits;
        for (std::size_t i = 0; i < text.size(); ++i)
            if (std::isdigit(static_cast<unsigned char>(text[i])))
                digits.push_back(i);
        const double sign = below(2) == 0 ? 1 : -1;
        switch (kind) {
        case 0: { // a digit taken for one that looks like it
            constexpr std::pair<char, char> alike[] = {
                {'1', '7'}, {'3', '8'}, {'0', '6'}, {'5', '6'}, {'4', '9'}, {'2', '7'}, {'3', '5'}};
            const auto [a, b] = alike[below(std::size(alike))];
            const std::size_t at = digits[below(digits.size())];
            if (text[at] != a && text[at] != b)
                return std::nullopt;
            text[at] = text[at] == a ? b : a;
            return parsed(text);
        }
        case 1: { // inches and eighths in each other's place
            const std::size_t a = text.find('-'), b = text.find('-', a + 1);
            std::string tail;
            std::string eighths = text.substr(b + 1);
            if (eighths.back() == '+') {
                tail = "+";
                eighths.pop_back();
            }
            return parsed(text.substr(0, a + 1) + eighths + "-" + text.substr(a + 1, b - a - 1) + tail);
        }
        case 2: { // a digit fallen out of the forme
            const std::size_t at = digits[below(digits.size())];
            if (text[at] == '0')
                return std::nullopt;
            text[at] = '0';
            return parsed(text);
        }
        case 3:
            return right + sign * core::mmPerInch;
        case 4:
            return right + sign * core::mmPerFoot;
        case 5:
            return right + sign * static_cast<double>(2 + below(3)) * core::mmPerInch / 8;
        case 6: { // the same line of the station beside
            const auto other = c.station + (sign > 0 ? 1 : static_cast<std::size_t>(-1));
            if (other >= m_table.stations.size())
                return std::nullopt;
            for (const TableCell& d : m_cells)
                if (d.station == other && sameLine(c, d))
                    return valueOf(m_table, d);
            return std::nullopt;
        }
        default: { // the next column of the same station
            if (c.point < 0 && c.height)
                return std::nullopt;
            std::vector<double> others;
            for (const TableCell& d : m_cells)
                if (d.station == c.station && d.height == c.height && d.point != c.point &&
                    d.point != TableCell::keel && std::abs(d.point - c.point) == 1)
                    others.push_back(valueOf(m_table, d));
            if (others.empty())
                return std::nullopt;
            return others[below(others.size())];
        }
        }
    }

    [[nodiscard]] bool sameLine(const TableCell& a, const TableCell& b) {
        if (a.height != b.height || std::min(a.point, 0) != std::min(b.point, 0))
            return false;
        const core::TablePoint &p = pointOf(m_table, a), &q = pointOf(m_table, b);
        return p.kind == q.kind && (a.point < 0 || (a.height ? std::abs(p.halfBreadth - q.halfBreadth) < 1e-6
                                                             : std::abs(p.height - q.height) < 1e-6));
    }

    core::HullTable m_table;
    std::vector<TableCell> m_cells;
    std::mt19937 m_random;
};

/// The table with one number set wrong, its text with it.
[[nodiscard]] inline core::HullTable withMisprint(core::HullTable table, const Misprint& m) {
    valueOf(table, m.cell) = m.wrong;
    core::TablePoint& p = pointOf(table, m.cell);
    (m.cell.height ? p.printedHeight : p.printedHalfBreadth) = core::toFeetInchesEighths(m.wrong);
    return table;
}

/// The table as another draughtsman might have rounded it: every number of a table of exact values moved by
/// up to half a unit, evenly spread, which is what rounding does.
[[nodiscard]] inline core::HullTable roundedAnew(core::HullTable exact, unsigned seed) {
    std::mt19937_64 random(seed);
    for (const TableCell& c : cellsOf(exact)) {
        const double by = static_cast<double>(random() >> 11U) * 0x1p-53 - 0.5; // of a unit
        double& v = valueOf(exact, c);
        v = std::max(0.0, v + by * exact.roundedTo);
    }
    return exact;
}

} // namespace sheerlay::test

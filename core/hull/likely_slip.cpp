#include "core/hull/likely_slip.hpp"

#include "core/project/diagonal.hpp"
#include "core/units/length.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>
#include <string_view>
#include <vector>

namespace sheerlay::core {
namespace {

constexpr double easy = 0.5; // cost of a slip that happens every day
constexpr double usual = 1.0;
constexpr double rare = 2.0;
constexpr double farthest = 3.0; // spreads

struct Guess {
    double value, cost;
    std::string words;
};

bool isDigit(char c) {
    return std::isdigit(static_cast<unsigned char>(c)) != 0;
}

bool lookAlike(char a, char b) {
    constexpr std::array<std::string_view, 6> pairs = {"17", "38", "06", "56", "49", "27"};
    return std::any_of(pairs.begin(), pairs.end(), [&](std::string_view p) {
        return (p[0] == a && p[1] == b) || (p[0] == b && p[1] == a);
    });
}

/// Slips of the number's own signs.
void slipsOfText(const std::string& text, Units plain, std::vector<Guess>& guesses) {
    const auto add = [&](const std::string& meant, double cost, const std::string& words) {
        if (const auto read = parseLength(meant, plain))
            guesses.push_back({read->millimetres, cost, words});
    };
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (!isDigit(text[i]))
            continue;
        for (char d = '0'; d <= '9'; ++d) {
            if (d == text[i])
                continue;
            std::string meant = text;
            meant[i] = d;
            const bool lost = text[i] == '0';
            add(meant,
                lost || lookAlike(d, text[i]) ? easy : rare,
                lost ? say("a digit lost")
                     : say("a {} for a {}", std::string(1, text[i]), std::string(1, d)));
        }
        if (i + 1 < text.size() && isDigit(text[i + 1]) && text[i] != text[i + 1]) {
            std::string meant = text;
            std::swap(meant[i], meant[i + 1]);
            add(meant, usual, say("two digits exchanged"));
        }
    }
    const std::size_t first = text.find('-', 1);
    const std::size_t second = first == std::string::npos ? first : text.find('-', first + 1);
    if (second != std::string::npos) {
        std::size_t end = second + 1;
        while (end < text.size() && isDigit(text[end]))
            ++end;
        add(text.substr(0, first + 1) + text.substr(second + 1, end - second - 1) + "-" +
                text.substr(first + 1, second - first - 1) + text.substr(end),
            usual,
            say("inches and eighths exchanged"));
    }
}

/// Whether two stations' cells stand in one line of the table.
bool onOneLine(const TablePoint& a, const TablePoint& b, bool height) {
    if (a.kind != b.kind || a.diagonal.has_value() != b.diagonal.has_value())
        return false;
    if (a.diagonal)
        return a.diagonal->height == b.diagonal->height && slopeOf(*a.diagonal) == slopeOf(*b.diagonal);
    return height ? a.halfBreadth == b.halfBreadth : a.height == b.height;
}

const char* lineName(const TablePoint& cell) {
    return cell.diagonal                       ? sayable("diagonal")
           : cell.kind == PointKind::Waterline ? sayable("waterline")
           : cell.kind == PointKind::Buttock   ? sayable("buttock")
                                               : sayable("point");
}

/// The number of a neighbour, taken by the eye or the hand for this one.
std::optional<std::string> neighbour(const HullTable& table, const LoftPoint& p, const SuspectCell& cell) {
    const auto same = [&](double value) { return std::abs(value - cell.printed) < 0.1 * table.roundedTo; };
    const auto valueOf = [&](const TablePoint& q) {
        return q.diagonal ? q.diagonal->distance : cell.height ? q.height : q.halfBreadth;
    };
    const auto at = static_cast<std::size_t>(p.station);
    const Station& own = table.stations[at];
    for (const std::size_t i : {at - 1, at + 1}) {
        if (i >= table.stations.size())
            continue;
        const Station& s = table.stations[i];
        const std::string words = say("the number of the station beside it, at x {}", s.printedX);
        switch (p.cell->kind) {
        case PointKind::Sheer:
            if (same(valueOf(s.sheer)))
                return words;
            break;
        case PointKind::Keel:
            if (s.keel && same(valueOf(*s.keel)))
                return words;
            break;
        case PointKind::Knuckle:
            if (s.knuckle && same(valueOf(*s.knuckle)))
                return words;
            break;
        default:
            for (const TablePoint& q : s.points)
                if (onOneLine(q, *p.cell, cell.height) && same(valueOf(q)))
                    return words;
        }
    }
    std::vector<const TablePoint*> column;
    for (const TablePoint& q : own.points)
        if (q.kind == p.cell->kind && q.diagonal.has_value() == p.cell->diagonal.has_value())
            column.push_back(&q);
    const auto here = std::find(column.begin(), column.end(), p.cell);
    if (here == column.end())
        return std::nullopt;
    for (const auto step : {-1, 1}) {
        const auto k = here - column.begin() + step;
        if (k >= 0 && k < static_cast<std::ptrdiff_t>(column.size()) &&
            same(valueOf(*column[static_cast<std::size_t>(k)])))
            return say("the number of the {} beside it", say(lineName(*p.cell)));
    }
    return std::nullopt;
}

} // namespace

const std::string& printedNumber(const TablePoint& cell, bool height) {
    return cell.diagonal ? cell.diagonal->printedDistance
           : height      ? cell.printedHeight
                         : cell.printedHalfBreadth;
}

std::optional<LikelySlip> likelySlip(const HullTable& table, const LoftData& data, const SuspectCell& cell) {
    const LoftPoint& p = data.points[cell.point];
    const std::string& text = printedNumber(*p.cell, cell.height);
    const auto reads = [&](Units plain) {
        const auto read = parseLength(text, plain);
        return read && std::abs(read->millimetres - cell.printed) < 1e-6;
    };
    std::vector<Guess> guesses;
    const Units plain = reads(Units::Millimetres) ? Units::Millimetres : Units::Inches;
    if (reads(plain))
        slipsOfText(text, plain, guesses);
    const bool inches = plain == Units::Inches || text.find_first_of("-'\"") != std::string::npos;
    if (inches)
        for (const double sign : {1.0, -1.0}) {
            guesses.push_back({cell.printed + sign * mmPerInch,
                               easy,
                               sign < 0 ? say("an inch too much") : say("an inch too little")});
            guesses.push_back({cell.printed + sign * mmPerFoot,
                               easy,
                               sign < 0 ? say("a foot too much") : say("a foot too little")});
        }
    if (cell.height && cell.printed != 0)
        guesses.push_back({-cell.printed, usual, say("the wrong side of the base line")});
    if (const auto words = neighbour(table, p, cell))
        guesses.push_back({std::round(cell.fair / table.roundedTo) * table.roundedTo, usual, *words});

    const double spread = std::max(cell.spread, table.roundedTo / 3);
    const Guess* best = nullptr;
    double bestCost = 0;
    for (const Guess& g : guesses) {
        const double off = (g.value - cell.fair) / spread;
        const double cost = off * off / 2 + g.cost;
        if (std::abs(off) <= farthest && (!best || cost < bestCost)) {
            best = &g;
            bestCost = cost;
        }
    }
    if (!best)
        return std::nullopt;
    return LikelySlip{best->value, best->words};
}

} // namespace sheerlay::core

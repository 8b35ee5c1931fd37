#include "core/hull/knuckle_line.hpp"

#include "core/hull/line_deviation.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {
namespace {

struct Numbered : LineEntry {
    std::size_t station = 0;
};
using Line = std::vector<Numbered>;

std::vector<double> sizes(const Line& line) {
    std::vector<double> list;
    for (const LineDeviation& d : lineDeviations({line.begin(), line.end()}))
        list.push_back(std::abs(d.size));
    return list;
}

double worst(const Line& line) {
    const std::vector<double> all = sizes(line);
    return all.empty() ? 0.0 : *std::max_element(all.begin(), all.end());
}

Line without(Line line, std::size_t entry) {
    line.erase(line.begin() + static_cast<std::ptrdiff_t>(entry));
    return line;
}

/// What the nearest say of an entry: two on each side, or the next three of an outermost one.
double fairAt(const Line& line, std::size_t entry) {
    const std::size_t n = line.size();
    std::size_t from = entry >= 2 ? entry - 2 : 0;
    std::size_t to = std::min(entry + 2, n - 1);
    if (entry == 0)
        to = 3;
    else if (entry + 1 == n)
        from = n - 4;
    double fair = 0;
    for (std::size_t a = from; a <= to; ++a) {
        double l = a == entry ? 0.0 : 1.0;
        for (std::size_t b = from; b <= to; ++b)
            if (b != a && b != entry && a != entry)
                l *= (line[entry].at - line[b].at) / (line[a].at - line[b].at);
        fair += l * line[a].value;
    }
    return fair;
}

/// The entry without which the rest runs fairest.
std::size_t oddest(const Line& line) {
    std::size_t found = 0;
    double least = 1e300;
    for (std::size_t i = 0; i < line.size(); ++i)
        if (const double rest = worst(without(line, i)); rest < least) {
            least = rest;
            found = i;
        }
    return found;
}

/// Entries that the fair rest of their line speaks against, each with what the rest wants instead. They are
/// judged when all of them are out: one misprint hides another.
std::vector<Numbered> misplaced(Line line, double gross) {
    std::vector<Numbered> odd;
    std::optional<double> threshold = lineThreshold(sizes(line));
    for (std::size_t left = line.size() / 4; threshold && worst(line) > *threshold && left > 0; --left) {
        const std::size_t i = oddest(line);
        odd.push_back(line[i]);
        line = without(std::move(line), i);
        threshold = lineThreshold(sizes(line));
    }
    std::vector<Numbered> wrong;
    for (Numbered& n : odd) {
        const auto at = std::lower_bound(
            line.begin(), line.end(), n, [](const Numbered& a, const Numbered& b) { return a.at < b.at; });
        const bool outermost = at == line.begin() || at == line.end();
        const auto entry = static_cast<std::size_t>(at - line.begin());
        Line with = line;
        with.insert(with.begin() + (at - line.begin()), n);
        constexpr double foot = 150.0; // mm: a forefoot's run is off what the next three say, but by less
        const double fair = fairAt(with, entry);
        if (std::abs(n.value - fair) < (outermost ? std::max(foot, gross) : gross))
            continue;
        n.value = fair;
        wrong.push_back(n);
    }
    return wrong;
}

} // namespace

std::vector<std::optional<TablePoint>> plausibleKnuckle(const HullTable& table) {
    std::vector<std::optional<TablePoint>> knuckle;
    for (const Station& s : table.stations)
        knuckle.push_back(s.knuckle);
    for (double TablePoint::*number : {&TablePoint::halfBreadth, &TablePoint::height}) {
        Line line;
        for (std::size_t i = 0; i < knuckle.size(); ++i)
            if (knuckle[i])
                line.push_back({{table.stations[i].x, (*knuckle[i]).*number}, i});
        for (const Numbered& n : misplaced(std::move(line), grossError(table)))
            (*knuckle[n.station]).*number = n.value;
    }
    return knuckle;
}

} // namespace sheerlay::core

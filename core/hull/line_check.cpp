#include "core/hull/line_check.hpp"

#include "core/hull/knuckle_line.hpp"
#include "core/hull/line_deviation.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>

namespace sheerlay::core {
namespace {

struct Entry : LineEntry {
    CellRef cell;
};

/// The worst cells of a family of lines: each one found is taken out before the next is looked for, or it
/// would accuse its neighbours.
void worstOf(std::vector<std::vector<Entry>> lines, std::vector<CellRef>& out) {
    for (auto& line : lines)
        std::sort(line.begin(), line.end(), [](const Entry& a, const Entry& b) { return a.at < b.at; });
    for (int taken = 0; taken < 3; ++taken) {
        std::vector<double> sizes;
        double size = 0;
        CellRef worst;
        for (const auto& line : lines)
            for (const LineDeviation& d : lineDeviations({line.begin(), line.end()})) {
                sizes.push_back(d.size);
                if (std::abs(d.size) > std::abs(size)) {
                    size = d.size;
                    worst = line[d.entry].cell;
                }
            }
        const auto threshold = lineThreshold(std::move(sizes));
        if (!threshold || std::abs(size) <= *threshold)
            return;
        for (auto& line : lines)
            std::erase_if(line, [&](const Entry& e) { return e.cell == worst; });
        if (std::find(out.begin(), out.end(), worst) == out.end())
            out.push_back(worst);
    }
}

/// A station on the stem can't be broader below than the stem's thickness at the deck.
void onStems(const HullTable& table, const LoftData& data, std::vector<CellRef>& out) {
    for (std::size_t i = 0; i < data.points.size(); ++i) {
        const LoftPoint& p = data.points[i];
        if (!p.cell || p.kind != LoftPoint::Kind::Section ||
            (p.station != 0 && p.station + 1 != static_cast<int>(table.stations.size())))
            continue;
        const Station& s = table.stations[static_cast<std::size_t>(p.station)];
        const double thin = std::max(2 * table.roundedTo, table.halfSiding + table.roundedTo);
        if (!s.keel && s.sheer.halfBreadth <= thin && p.y > 2 * thin)
            out.push_back({i, false});
    }
}

/// What no section can be: a keel above its own points, a sheer below them, a waterline far broader than the
/// sheer. Where several points say so of one sheer, it is the sheer.
void outOfOrder(const HullTable& table, const LoftData& data, std::vector<CellRef>& out) {
    constexpr double tumblehome = 1.3; // no planked side falls in by more on its way up
    constexpr double least = 20.0;     // mm, smaller ones are left to the fit
    for (std::size_t st = 0; st < table.stations.size(); ++st) {
        std::vector<std::size_t> points;
        std::optional<std::size_t> sheer;
        std::optional<std::size_t> keel;
        for (std::size_t i = 0; i < data.points.size(); ++i)
            if (const LoftPoint& p = data.points[i]; p.cell && p.station == static_cast<int>(st)) {
                if (p.kind == LoftPoint::Kind::Section || p.kind == LoftPoint::Kind::Knuckle)
                    points.push_back(i);
                else
                    (p.kind == LoftPoint::Kind::Sheer ? sheer : keel) = i;
            }
        if (!sheer || points.empty())
            continue;
        std::vector<std::size_t> broad;
        std::vector<std::size_t> high;
        std::vector<std::size_t> low;
        for (const std::size_t i : points) {
            const LoftPoint& p = data.points[i];
            if (p.y > tumblehome * data.points[*sheer].y + least)
                broad.push_back(i);
            if (p.z > data.points[*sheer].z + least)
                high.push_back(i);
            if (keel && p.z < data.points[*keel].z - least)
                low.push_back(i);
        }
        const auto blame = [&](const std::vector<std::size_t>& odd, std::size_t line, bool height) {
            if (odd.size() >= 2)
                out.push_back({line, height});
            for (const std::size_t i : odd)
                if (odd.size() == 1 && (data.points[i].cell->kind == PointKind::Buttock) == height)
                    out.push_back({i, height});
        };
        blame(broad, *sheer, false);
        blame(high, *sheer, true);
        if (keel)
            blame(low, *keel, true);
    }
}

/// Numbers of the knuckle that can't be where they are printed.
void misplacedKnuckle(const HullTable& table, const LoftData& data, std::vector<CellRef>& out) {
    const auto plausible = plausibleKnuckle(table);
    for (std::size_t i = 0; i < data.points.size(); ++i) {
        const LoftPoint& p = data.points[i];
        if (p.kind != LoftPoint::Kind::Knuckle)
            continue;
        const TablePoint& fair = *plausible[static_cast<std::size_t>(p.station)];
        if (fair.halfBreadth != p.y)
            out.push_back({i, false});
        if (fair.height != p.z)
            out.push_back({i, true});
    }
}

} // namespace

std::vector<CellRef> standOut(const HullTable& table, const LoftData& data) {
    std::map<std::pair<int, long>, std::vector<Entry>> lines;
    std::map<int, std::vector<Entry>> sections;
    for (std::size_t i = 0; i < data.points.size(); ++i) {
        const LoftPoint& p = data.points[i];
        if (!p.cell || p.station < 0)
            continue;
        const double x = table.stations[static_cast<std::size_t>(p.station)].x;
        switch (p.cell->kind) {
        case PointKind::Waterline:
            lines[{0, std::lround(p.z * 100)}].push_back({{x, p.y}, {i, false}});
            sections[2 * p.station + (p.side > 0 ? 1 : 0)].push_back({{p.z, p.y}, {i, false}});
            break;
        case PointKind::Buttock:
            lines[{1, std::lround(p.y * 100)}].push_back({{x, p.z}, {i, true}});
            break;
        case PointKind::Sheer:
            lines[{2, 0}].push_back({{x, p.y}, {i, false}});
            lines[{3, 0}].push_back({{x, p.z}, {i, true}});
            break;
        case PointKind::Keel:
            lines[{4, 0}].push_back({{x, p.z}, {i, true}});
            break;
        case PointKind::Knuckle:
            lines[{5, 0}].push_back({{x, p.y}, {i, false}});
            lines[{6, 0}].push_back({{x, p.z}, {i, true}});
            break;
        case PointKind::Point:
            break;
        }
    }
    std::vector<std::vector<Entry>> along;
    std::vector<std::vector<Entry>> across;
    for (const auto& [key, line] : lines)
        along.push_back(line);
    for (const auto& [station, line] : sections)
        across.push_back(line);
    std::vector<CellRef> out;
    onStems(table, data, out);
    outOfOrder(table, data, out);
    misplacedKnuckle(table, data, out);
    std::vector<CellRef> once;
    for (const CellRef& c : out)
        if (std::find(once.begin(), once.end(), c) == once.end())
            once.push_back(c);
    out = std::move(once);
    worstOf(std::move(along), out);
    worstOf(std::move(across), out);
    return out;
}

} // namespace sheerlay::core

#include "core/hull/suspect_cells.hpp"

#include "core/hull/cell_checker.hpp"
#include "core/hull/line_check.hpp"

#include <algorithm>
#include <cmath>
#include <map>

namespace sheerlay::core {
namespace {

constexpr double threshold = 5.0; // spreads beyond which a cell is doubted
constexpr double grossUnits =
    6.0; // table units: beyond this, and grossSize, the loft is made without the cell
constexpr double grossSize = 15.0; // mm
constexpr double reportSize =
    4.0; // mm: what stations a foot apart can't carry looks like an error of this size
constexpr double reportUnits = 2.0;
constexpr std::size_t mostSuspects = 6;

} // namespace

CellSearch searchCells(const HullTable& table, LoftData& data) {
    const std::vector<LoftPoint> original = data.points;
    CellChecker checker(table, data);
    checker.setOut(standOut(table, data));
    std::map<std::size_t, int> readmitted;
    std::map<std::size_t, SuspectCell> verdicts;
    for (int round = 0; round < 8; ++round) {
        data.points = original;
        checker.startGirths();
        if (!checker.fit()) {
            data.points = original;
            return {};
        }
        verdicts = checker.judge();
        std::vector<CellRef> out;
        bool changed = false;
        for (const CellRef& c : checker.out()) {
            const std::size_t key = 2 * c.point + (c.height ? 1 : 0);
            if (verdicts.contains(key) && std::abs(verdicts[key].t) < threshold) {
                ++readmitted[key];
                changed = true;
            } else
                out.push_back(c);
        }
        if (!changed && out.size() < mostSuspects) {
            const SuspectCell* worst = nullptr;
            for (const auto& [key, c] : verdicts) {
                const CellRef ref{c.point, c.height};
                if (!checker.isOut(ref) && readmitted[key] < 2 && std::abs(c.t) > threshold &&
                    (!worst || std::abs(c.t) > std::abs(worst->t)))
                    worst = &c;
            }
            if (worst) {
                out.push_back({worst->point, worst->height});
                changed = true;
            }
        }
        if (!changed)
            break;
        checker.setOut(out);
    }
    CellSearch found;
    for (const auto& [key, c] : verdicts)
        found.ranked.push_back(c);
    std::stable_sort(
        found.ranked.begin(), found.ranked.end(), [](const SuspectCell& a, const SuspectCell& b) {
            return std::abs(a.t) > std::abs(b.t);
        });
    data.points = original;
    checker.startGirths();
    std::vector<SuspectCell>& suspects = found.suspects;
    for (const CellRef& c : checker.out()) {
        const std::size_t key = 2 * c.point + (c.height ? 1 : 0);
        if (!verdicts.contains(key))
            continue;
        SuspectCell s = verdicts[key];
        const double off = std::abs(s.printed - s.fair);
        if (off < std::max(reportUnits * table.roundedTo, reportSize))
            continue;
        s.setAside = off >= std::max(grossUnits * table.roundedTo, grossSize);
        LoftPoint& p = data.points[s.point];
        if (s.setAside) {
            if (p.kind != LoftPoint::Kind::Sheer)
                p.weightY = p.weightZ = 0;
            else
                (s.height ? p.weightZ : p.weightY) = 0;
        }
        suspects.push_back(s);
    }
    if (suspects.size() >= mostSuspects) {
        // so many speak against what all cells rest on, not against the cells: none is left out of the loft
        for (SuspectCell& c : suspects) {
            c.setAside = false;
            data.points[c.point].weightY = original[c.point].weightY;
            data.points[c.point].weightZ = original[c.point].weightZ;
        }
    }
    std::sort(suspects.begin(), suspects.end(), [](const SuspectCell& a, const SuspectCell& b) {
        return std::abs(a.t) > std::abs(b.t);
    });
    return found;
}

std::vector<SuspectCell> findSuspectCells(const HullTable& table, LoftData& data) {
    return searchCells(table, data).suspects;
}

} // namespace sheerlay::core

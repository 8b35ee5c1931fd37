#include "core/questions/siding_scan.hpp"

#include "core/hull/cell_checker.hpp"
#include "core/hull/loft_data.hpp"
#include "core/hull/surface_fit.hpp"
#include "core/hull/suspect_cells.hpp"

#include <algorithm>
#include <cstddef>
#include <utility>
#include <vector>

namespace sheerlay::core {
namespace {

constexpr double farthest = 20.0, step = 2.5; // mm
constexpr double middling = 10.0;             // mm: as near as may be to whatever the siding is
constexpr double fairness = 1e5;              // as the search for misprints weighs it

/// Misprints, looked for once: the search costs several lofts, and a siding that does not fit would have it
/// put the very numbers aside that speak against it.
class Misprints {
public:
    explicit Misprints(HullTable table) {
        table.halfSiding = middling;
        auto data = prepareLoft(table);
        if (!data)
            return;
        m_points = data->points.size();
        m_found = findSuspectCells(table, *data);
    }
    /// Makes the data ready to be fitted without them.
    void leaveOut(const HullTable& table, LoftData& data) const {
        if (data.points.size() != m_points) { // other points: theirs are not these
            static_cast<void>(findSuspectCells(table, data));
            return;
        }
        std::vector<CellRef> out;
        for (const SuspectCell& s : m_found)
            out.push_back({s.point, s.height});
        CellChecker checker(table, data); // for the girths the fit begins with
        checker.setOut(std::move(out));
        checker.startGirths();
        setAside(m_found, data);
    }

private:
    std::size_t m_points = 0;
    std::vector<SuspectCell> m_found;
};

} // namespace

bool sidingUntold(const HullTable& table) {
    return table.halfSiding == 0.0 &&
           std::none_of(table.stations.begin(), table.stations.end(), [](const Station& s) {
               return s.keel && s.keel->halfBreadth > 0.0;
           });
}

std::optional<SidingScan> scanSiding(const HullTable& table) {
    SidingScan scan;
    HullTable trial = table;
    const Misprints misprints(table);
    for (double siding = 0; siding <= farthest + 1e-9; siding += step) {
        trial.halfSiding = siding;
        auto data = prepareLoft(trial);
        if (!data)
            continue;
        misprints.leaveOut(trial, *data);
        if (const auto fit = fitSurface(*data, {.lambda = fairness}))
            scan.tried.push_back({siding, fit->rms});
    }
    if (scan.tried.size() < 3 || scan.tried.front()[0] != 0.0)
        return std::nullopt;
    const auto least = std::min_element(
        scan.tried.begin(), scan.tried.end(), [](const auto& a, const auto& b) { return a[1] < b[1]; });
    scan.best = (*least)[0];
    scan.bestResidual = (*least)[1];
    scan.residualAtZero = scan.tried.front()[1];
    if (least != scan.tried.begin() && least + 1 != scan.tried.end()) { // a parabola through three
        const double before = (*(least - 1))[1];
        const double after = (*(least + 1))[1];
        const double bend = before - 2 * scan.bestResidual + after;
        if (bend > 0)
            scan.best += 0.5 * step * (before - after) / bend;
    }
    return scan;
}

} // namespace sheerlay::core

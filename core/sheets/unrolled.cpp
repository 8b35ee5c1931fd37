#include "core/sheets/unrolled.hpp"

#include "core/sheets/flat_strip.hpp"
#include "core/sheets/pieces.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>

namespace sheerlay::core {

namespace {

// Place along the middle where the strip crosses x, none where it doesn't reach it.
std::optional<double> placeAtX(const Strip& strip, double x) {
    const std::vector<StationMark> marks = stationMarks(strip, {x});
    return marks.empty() ? std::nullopt : std::optional<double>(marks.front().along);
}

/// One row of one side while the planking is stacked up: which pieces it has and where its far edge runs.
struct Row {
    std::vector<const Strip*> pieces;
    std::vector<double> shifts;
    std::vector<double> nearEdge, farEdge; // girth on the grid, seen from the start
};

/// Stealers lie between the row before and the strip they are let in to.
struct Band {
    Row stealers, strips;
};

/// Grid along the strips that edges are kept on.
struct Grid {
    double first = 0.0, step = 25.0;
    std::size_t count = 2;

    [[nodiscard]] double at(std::size_t i) const { return first + step * static_cast<double>(i); }
    [[nodiscard]] double read(const std::vector<double>& values, double u) const {
        const double t = std::clamp((u - first) / step, 0.0, static_cast<double>(count - 1));
        const auto i = std::min(static_cast<std::size_t>(t), count - 2);
        const double part = t - static_cast<double>(i);
        return values[i] * (1.0 - part) + values[i + 1] * part;
    }
};

// A piece that doesn't reach the widest section is set against the row beside it, at the same place of the
// boat.
double shiftAgainst(const Strip& strip, const Row* beside, double widestX) {
    if (const std::optional<double> place = placeAtX(strip, widestX))
        return *place;
    const StripSample& own = strip.samples[strip.samples.size() / 2];
    if (beside != nullptr) {
        for (std::size_t i = 0; i < beside->pieces.size(); ++i)
            if (const std::optional<double> place = placeAtX(*beside->pieces[i], own.x))
                return own.s - (*place - beside->shifts[i]);
    }
    return own.s - (own.x - widestX);
}

/// @param beyond  mm, width of the row past the ends of its pieces
double rowWidthAt(const Row& row, double u, double beyond) {
    double nearest = 1e9, width = beyond;
    for (std::size_t i = 0; i < row.pieces.size(); ++i) {
        const double s = u + row.shifts[i], outside = std::max({0.0, -s, s - row.pieces[i]->length});
        if (outside < nearest) {
            nearest = outside;
            width = outside > 0.0 ? beyond : widthAt(*row.pieces[i], s);
        }
    }
    return width;
}

} // namespace

Eigen::Vector2d UnrolledStrip::at(double alongMiddle, double part) const {
    const double u = alongMiddle - shift;
    const auto after =
        std::lower_bound(middle.begin(), middle.end(), u, [](const Eigen::Vector2d& p, double value) {
            return p.x() < value;
        });
    double v = middle.empty() ? 0.0 : middle.back().y();
    if (after == middle.begin() && !middle.empty())
        v = middle.front().y();
    else if (after != middle.end()) {
        const Eigen::Vector2d& a = *(after - 1);
        v = a.y() + (after->y() - a.y()) * (u - a.x()) / std::max(1e-9, after->x() - a.x());
    }
    return {u, v + part * widthAt(*strip, alongMiddle) / 2};
}

std::vector<UnrolledStrip> unroll(const Plan& plan, const LoftedHull& hull, Side side) {
    std::map<int, Band> bands;
    double longest = 1000.0, coverWidth = 1.0;
    for (const Strip& strip : plan.strips) {
        const bool wanted = strip.side == side || (strip.side == Side::Centre && side == Side::Starboard);
        if (wanted && strip.samples.size() > 1) {
            Band& band = bands[strip.row];
            (strip.kind == StripKind::Stealer ? band.stealers : band.strips).pieces.push_back(&strip);
            longest = std::max(longest, strip.length);
        }
        for (const StripSample& sample : strip.samples)
            coverWidth = strip.kind == StripKind::Full ? std::max(coverWidth, sample.width) : coverWidth;
    }
    Grid grid;
    grid.first = -longest;
    grid.count = static_cast<std::size_t>(2 * longest / grid.step) + 2;

    std::vector<UnrolledStrip> unrolled;
    for (const int direction : {1, -1}) {
        const Row* beside = direction == -1 && bands.contains(1) ? &bands[1].strips : nullptr;
        std::vector<double> edge(grid.count, 0.0);
        const auto lay = [&](Row& row, double beyond) {
            for (const Strip* strip : row.pieces)
                row.shifts.push_back(shiftAgainst(*strip, beside, hull.laid.halfGirthMaxX));
            row.nearEdge = edge;
            for (std::size_t i = 0; i < grid.count; ++i)
                edge[i] += direction * rowWidthAt(row, grid.at(i), beyond);
            row.farEdge = edge;
            for (std::size_t i = 0; i < row.pieces.size(); ++i) {
                UnrolledStrip laid;
                laid.strip = row.pieces[i];
                laid.shift = row.shifts[i];
                const auto middleAt = [&](double s) {
                    // beyond its ends a strip goes on with the width it has there
                    const double inside = std::clamp(s, 0.0, laid.strip->length);
                    return grid.read(row.nearEdge, s - laid.shift) +
                           direction * widthAt(*laid.strip, inside) / 2;
                };
                for (const StripSample& sample : laid.strip->samples)
                    laid.middle.emplace_back(sample.s - laid.shift, middleAt(sample.s));
                for (const Eigen::Vector2d& p : layStraight(*laid.strip).straight)
                    laid.outline.emplace_back(p.x() - laid.shift, middleAt(p.x()) + p.y());
                unrolled.push_back(std::move(laid));
            }
            beside = &row;
        };
        for (int number = direction; number >= plan.firstRow && number <= plan.lastRow; number += direction) {
            const auto found = bands.find(number);
            if (found == bands.end())
                continue;
            if (!found->second.stealers.pieces.empty())
                lay(found->second.stealers, 0.0);
            if (!found->second.strips.pieces.empty())
                lay(found->second.strips, coverWidth);
        }
    }
    return unrolled;
}

} // namespace sheerlay::core

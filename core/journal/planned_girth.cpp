#include "core/journal/planned_girth.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {

namespace {

using Eigen::Vector3d;

constexpr int places = 12; // looked at along the last row, then halved about the widest
constexpr int halvings = 3;
constexpr double closed = 1.0; // mm left: the edge follows the centreline

/// The lines that make up a row's lower edge, starboard. Row 0 is the upper edge of the first row.
std::vector<const std::vector<Vector3d>*> lowerEdges(const Plan& plan, int row) {
    std::vector<const std::vector<Vector3d>*> edges;
    for (const Strip& strip : plan.strips) {
        if (strip.side != Side::Starboard || strip.kind == StripKind::Stealer)
            continue; // a stealer's lower edge is a seam inside its row
        if (row == 0 ? strip.row == 1 : strip.row == row)
            edges.push_back(row == 0 ? &strip.upperEdge : &strip.lowerEdge);
    }
    return edges;
}

struct Crossing {
    Vector3d point, along;
};

std::optional<Crossing> crossingOf(const std::vector<Vector3d>& line, double x) {
    for (std::size_t i = 1; i < line.size(); ++i) {
        const double a = line[i - 1].x() - x;
        const double b = line[i].x() - x;
        if (a * b > 0 || a == b)
            continue;
        return Crossing{line[i - 1] + a / (a - b) * (line[i] - line[i - 1]),
                        (line[i] - line[i - 1]).normalized()};
    }
    return std::nullopt;
}

} // namespace

std::optional<PlannedGirth> plannedGirthLeft(const Plan& plan, int row, const SectionTape& tape) {
    std::optional<PlannedGirth> least;
    if (tape.misses())
        return least;
    for (const auto* edge : lowerEdges(plan, row)) {
        const auto crossing = crossingOf(*edge, tape.x());
        if (!crossing)
            continue;
        const double left = tape.leftFrom(crossing->point);
        if (least && least->left <= left)
            continue;
        const double along = crossing->along.dot(tape.directionAt(crossing->point));
        least = PlannedGirth{left, std::sqrt(std::max(0.0, 1 - along * along))};
    }
    return least;
}

std::optional<PlannedGirth> plannedGirthLeft(const Plan& plan, const LoftedHull& hull, int row, double x) {
    return plannedGirthLeft(plan, row, SectionTape(hull.moulds, x));
}

std::optional<Reach> reachOf(const Plan& plan, int row) {
    std::optional<Reach> reach;
    for (const auto* edge : lowerEdges(plan, row))
        for (const Vector3d& p : *edge) {
            if (!reach)
                reach = Reach{p.x(), p.x()};
            reach->from = std::min(reach->from, p.x());
            reach->to = std::max(reach->to, p.x());
        }
    return reach;
}

std::optional<PlannedLastPlank> plannedLastPlank(const Plan& plan, const LoftedHull& hull) {
    if (plan.splitRow)
        return std::nullopt;
    int sides = 1;
    for (const Strip& strip : plan.strips)
        if (strip.side == Side::Centre)
            sides = 2;
    for (int row = plan.lastRow; row >= 1; --row) {
        const auto reach = reachOf(plan, row);
        if (!reach)
            continue;
        PlannedLastPlank plank{row, 0.0, 0.0, sides};
        const auto look = [&](double x) {
            const auto planned = plannedGirthLeft(plan, hull, row, x);
            if (planned && planned->left * planned->square > plank.width) {
                plank.x = x;
                plank.width = planned->left * planned->square;
            }
        };
        double step = (reach->to - reach->from) / places;
        for (int i = 1; i < places; ++i)
            look(reach->from + i * step);
        if (plank.width <= closed)
            continue;
        for (int i = 0; i < halvings; ++i) { // the widest place is flat
            step /= 2;
            const double x = plank.x;
            look(x - step);
            look(x + step);
        }
        if (plank.width > 1.5 * plan.coverWidth) // the plan stopped before the bottom was closed
            return std::nullopt;
        plank.width *= sides;
        return plank;
    }
    return std::nullopt;
}

} // namespace sheerlay::core

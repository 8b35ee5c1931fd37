#pragma once

#include "core/planking/start_line.hpp"
#include "tests/support/planked.hpp"

#include <Eigen/Core>

#include <algorithm>
#include <cmath>
#include <vector>

namespace sheerlay::test {

/// Points of a plan's rows, and how far from the start line the plan says each lies.
struct RowTargets {
    std::vector<Eigen::Vector3d> points;
    std::vector<double> planned; ///< mm
};

/// Parameters of the start line's points `spacing` mm apart, as far past the ends as the surface goes.
[[nodiscard]] inline std::vector<Eigen::Vector2d> startParameters(const Planked& boat, double spacing) {
    std::vector<Eigen::Vector2d> line;
    const auto nodes = core::startLine(boat.hull.laid, boat.plan.start, spacing);
    if (!nodes)
        throw std::runtime_error(nodes.error());
    for (const geometry::MasterNode& n : *nodes)
        line.push_back(n.uv);
    return line;
}

/// Every `every`-th point of every edge and middle line on starboard that lies at least `nearest` mm from the
/// start line. Points on a trim are left out, there an edge follows the trim or ends on it; and middles where
/// the strip is not whole, there they run halfway to the cut.
[[nodiscard]] inline RowTargets rowTargets(const Planked& boat, std::size_t every, double nearest) {
    RowTargets t;
    const double w = boat.plan.coverWidth;
    const auto& hull = boat.hull.laid;
    const auto onTrim = [&](const Eigen::Vector3d& p) {
        if (hull.trims.value(geometry::Trim::Centre, 0, p) < 3)
            return true;
        const auto& sheer = hull.sheer;
        const auto next =
            std::find_if(sheer.begin(), sheer.end(), [&](const auto& q) { return q.x() > p.x(); });
        if (next == sheer.begin() || next == sheer.end())
            return true;
        const Eigen::Vector3d a = *(next - 1);
        const Eigen::Vector3d b = *next;
        return (p - a).cross((b - a).normalized()).norm() < 3;
    };
    std::size_t counter = 0;
    const auto take = [&](const Eigen::Vector3d& p, double planned) {
        if (planned < nearest || counter++ % every != 0 || onTrim(p))
            return;
        t.points.push_back(p);
        t.planned.push_back(planned);
    };
    for (const core::Strip* s : stripsOf(boat.plan, core::Side::Starboard)) {
        const int k = std::abs(s->row);
        for (const Eigen::Vector3d& p : s->row > 0 ? s->upperEdge : s->lowerEdge)
            take(p, (k - 1) * w);
        for (const Eigen::Vector3d& p : s->row > 0 ? s->lowerEdge : s->upperEdge)
            take(p, k * w);
        for (std::size_t i = 0; i < s->middle.size(); ++i)
            if (s->samples[i].width > w - 0.01)
                take(s->middle[i], (k - 0.5) * w);
    }
    return t;
}

} // namespace sheerlay::test

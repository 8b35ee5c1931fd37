#include "core/planking/coverage.hpp"

#include "core/planking/trim_crossing.hpp"

#include <cmath>
#include <limits>

namespace sheerlay::core {
namespace {

constexpr std::size_t every = 12; // columns between samples
constexpr double unknown = std::numeric_limits<double>::quiet_NaN();

/// Where a square shot of half a width from the middle lands relative to the planned edge, mm away from the
/// middle.
double landing(const geometry::TensorSurface& surface,
               const geometry::RowNode& from,
               const Eigen::Vector3d& across,
               const geometry::RowNode& planned,
               double half) {
    const geometry::GeodesicState start{from.state.uv, geometry::parameterComponents(from.jet, across), 1, 0};
    const geometry::GeodesicState end = geometry::geodesicStep(surface, from.jet, start, half);
    const Eigen::Vector3d way = surface.point(end.uv.x(), end.uv.y()) - planned.jet.p;
    const double sign = across.dot(planned.frame.across) > 0 ? 1.0 : -1.0;
    return sign * way.dot(planned.frame.across);
}

} // namespace

void SeamCheck::add(const RowMesh& mesh, geometry::FanSide side) {
    if (mesh.tapered()) {
        m_before.clear(); // its middle is no parallel; the next row starts on its far edge
        return;
    }
    if (side != m_side || m_before.size() != mesh.parent.size()) {
        m_before.assign(mesh.parent.size(), unknown);
        m_side = side;
    }
    for (std::size_t i = 2; i + 2 < mesh.middle.size(); i += every) {
        double far = unknown;
        const geometry::RowNode& m = mesh.middle[i];
        bool whole = insideHull(*m_hull, m.state.uv, m.jet.p) && mesh.parent[i].alive && mesh.child[i].alive;
        for (std::size_t k = i - 2; k <= i + 2; ++k)
            whole = whole && mesh.middle[k].alive;
        if (whole) {
            // fourth-order difference over arc length, which is nearly equal from column to column
            const auto p = [&](std::size_t k) { return mesh.middle[k].jet.p; };
            const Eigen::Vector3d tangent = 8 * (p(i + 1) - p(i - 1)) - (p(i + 2) - p(i - 2));
            const geometry::Frame f = geometry::frameAlong(m.jet, tangent);
            const Eigen::Vector3d away =
                side == geometry::FanSide::TowardKeel ? f.across : Eigen::Vector3d(-f.across);
            const double near = landing(m_hull->surface, m, -away, mesh.parent[i], 0.5 * mesh.width);
            far = landing(m_hull->surface, m, away, mesh.child[i], 0.5 * mesh.width);
            if (!std::isnan(m_before[i])) {
                const double overlap = near + m_before[i]; // both reach beyond the shared edge
                m_overlap = std::max(m_overlap, overlap);
                m_gap = std::max(m_gap, -overlap);
            }
        }
        m_before[i] = far;
    }
}

} // namespace sheerlay::core

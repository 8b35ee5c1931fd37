#include "geometry/parallels.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::geometry {
namespace {

constexpr double foldedJacobi = 0.02; // below this neighbouring geodesics have all but met

} // namespace

ParallelFan::ParallelFan(const Surface& surface,
                         const std::vector<MasterNode>& master,
                         FanSide side,
                         const ParameterBox& box)
    : m_surface(&surface), m_side(side), m_box(box) {
    const double away = side == FanSide::TowardKeel ? 1.0 : -1.0;
    m_row.reserve(master.size());
    for (const MasterNode& m : master) {
        RowNode node;
        node.alive = box.contains(m.uv);
        if (!node.alive) {
            node.state = {Eigen::Vector2d::Zero(), Eigen::Vector2d::Zero()};
            m_row.push_back(node);
            continue;
        }
        node.jet = surface.jet(m.uv.x(), m.uv.y());
        const Frame f = frameAlong(node.jet, node.jet.u * m.velocity.x() + node.jet.v * m.velocity.y());
        node.state = {m.uv, parameterComponents(node.jet, away * f.across), 1.0, -away * m.edgeBend};
        node.frame = f;
        node.aft = parameterComponents(node.jet, f.tangent);
        node.edgeBend = m.edgeBend;
        m_row.push_back(node);
    }
}

void ParallelFan::complete(RowNode& node) const {
    node.jet = m_surface->jet(node.state.uv.x(), node.state.uv.y());
    const double away = m_side == FanSide::TowardKeel ? 1.0 : -1.0;
    const Eigen::Vector3d run = node.jet.u * node.state.velocity.x() +
                                node.jet.v * node.state.velocity.y(); // unit, away from the master
    node.frame.normal = node.jet.normal();
    node.frame.across = away * run.normalized();
    node.frame.tangent = node.frame.across.cross(node.frame.normal);
    node.aft = parameterComponents(node.jet, node.frame.tangent);
    node.edgeBend = -away * node.state.jacobiRate / node.state.jacobi;
}

void ParallelFan::step(RowNode& node, double distance) const {
    if (!node.alive)
        return;
    node.state = geodesicStep(*m_surface, node.jet, node.state, distance);
    node.alive =
        node.state.uv.allFinite() && m_box.contains(node.state.uv) && node.state.jacobi >= foldedJacobi;
    if (node.alive)
        complete(node);
}

void ParallelFan::advance(double distance) {
    for (RowNode& node : m_row)
        step(node, distance);
}

void ParallelFan::advance(const std::vector<double>& distances) {
    for (std::size_t i = 0; i < m_row.size(); ++i)
        step(m_row[i], distances[i]);
}

void ParallelFan::keepOnly(std::size_t first, std::size_t last) {
    for (std::size_t i = 0; i < m_row.size(); ++i)
        if (i < first || i >= last)
            m_row[i].alive = false;
}

double arcLength(const RowNode& a, const RowNode& b) {
    const double chord = (b.jet.p - a.jet.p).norm();
    // angle between the tangents: chord = 2 R sin(angle / 2), arc = R angle
    const double half = std::asin(std::min(1.0, 0.5 * (b.frame.tangent - a.frame.tangent).norm()));
    return half < 1e-9 ? chord : chord * half / std::sin(half);
}

Eigen::Vector2d ParameterArc::at(double f) const {
    const double f2 = f * f;
    const double f3 = f2 * f;
    return (2 * f3 - 3 * f2 + 1) * start + (f3 - 2 * f2 + f) * startRate + (3 * f2 - 2 * f3) * end +
           (f3 - f2) * endRate;
}

ParameterArc arcBetween(const RowNode& a, const RowNode& b) {
    const double length = arcLength(a, b);
    return {a.state.uv, a.aft * length, b.state.uv, b.aft * length};
}

ParameterArc arcAlong(const GeodesicState& a, const GeodesicState& b, double length) {
    return {a.uv, a.velocity * length, b.uv, b.velocity * length};
}

Eigen::Vector2d between(const RowNode& a, const RowNode& b, double f) {
    return arcBetween(a, b).at(f);
}

Eigen::Vector2d betweenAlong(const GeodesicState& a, const GeodesicState& b, double length, double f) {
    return arcAlong(a, b, length).at(f);
}

} // namespace sheerlay::geometry

#include "geometry/cubic_line.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <stdexcept>
#include <utility>

namespace sheerlay::geometry {
namespace {

constexpr double same = 1e-6; // mm

} // namespace

CubicLine::CubicLine(const std::vector<Eigen::Vector3d>& points) {
    for (const Eigen::Vector3d& p : points) {
        if (!m_points.empty()) {
            const double step = (p - m_points.back()).norm();
            if (step < same)
                continue;
            m_length += step;
        }
        m_points.push_back(p);
        m_t.push_back(m_length);
    }
    if (m_points.size() < 2)
        throw std::invalid_argument("CubicLine: a line needs two points that differ");
    for (double& t : m_t)
        t /= m_length;
    m_t.back() = 1.0;
    findSlopes();
}

CubicLine::CubicLine(std::vector<Eigen::Vector3d> points, std::vector<double> breaks)
    : m_points(std::move(points)), m_t(std::move(breaks)) {
    const bool rising = std::adjacent_find(m_t.begin(), m_t.end(), std::greater_equal<>()) == m_t.end();
    if (m_points.size() < 2 || m_points.size() != m_t.size() || !rising || m_t.front() != 0.0 ||
        m_t.back() != 1.0)
        throw std::invalid_argument("CubicLine: the breaks do not fit the points");
    for (std::size_t i = 1; i < m_points.size(); ++i)
        m_length += (m_points[i] - m_points[i - 1]).norm();
    findSlopes();
}

void CubicLine::findSlopes() {
    const std::size_t n = m_points.size();
    m_before.resize(n);
    m_after.resize(n);
    m_corner.assign(n, false);
    const auto slope = [&](std::size_t i) -> Eigen::Vector3d {
        return (m_points[i + 1] - m_points[i]) / (m_t[i + 1] - m_t[i]);
    };
    for (std::size_t i = 1; i + 1 < n; ++i) {
        const Eigen::Vector3d back = slope(i - 1);
        const Eigen::Vector3d on = slope(i);
        const double turn = std::acos(std::clamp(back.normalized().dot(on.normalized()), -1.0, 1.0));
        m_corner[i] = turn > corner;
        // the parabola through the three points: exact to second order, whatever the spacing
        const double h0 = m_t[i] - m_t[i - 1];
        const double h1 = m_t[i + 1] - m_t[i];
        m_before[i] = m_after[i] = (h1 * back + h0 * on) / (h0 + h1);
    }
    // at ends and corners the parabola goes on from the neighbour on the same side, or the chord where there
    // is none
    const auto oneSided = [&](std::size_t neighbour, const Eigen::Vector3d& chord) {
        const bool smooth = neighbour > 0 && neighbour + 1 < n && !m_corner[neighbour];
        return smooth ? Eigen::Vector3d(2.0 * chord - m_before[neighbour]) : chord;
    };
    for (std::size_t i = 0; i < n; ++i) {
        if (i > 0 && i + 1 < n && !m_corner[i])
            continue;
        if (i + 1 < n)
            m_after[i] = oneSided(i + 1, slope(i));
        if (i > 0)
            m_before[i] = oneSided(i - 1, slope(i - 1));
    }
    m_before.front() = m_after.front();
    m_after.back() = m_before.back();
}

CubicLine::Place CubicLine::at(double t) const {
    t = std::clamp(t, 0.0, 1.0);
    const auto next = std::lower_bound(m_t.begin(), m_t.end(), t);
    const auto j = static_cast<std::size_t>(next - m_t.begin());
    if (*next == t)
        return {m_points[j], m_before[j], m_after[j]};
    const std::size_t i = j - 1;
    const double h = m_t[j] - m_t[i];
    const double f = (t - m_t[i]) / h;
    const Place from{m_points[i], m_before[i], m_after[i]};
    const Place to{m_points[j], m_before[j], m_after[j]};
    const Eigen::Vector3d derivative = 6.0 * f * (1.0 - f) * (to.p - from.p) / h +
                                       (1.0 - f) * (1.0 - 3.0 * f) * from.after +
                                       f * (3.0 * f - 2.0) * to.before;
    return {between(from, to, h, f), derivative, derivative};
}

std::vector<double> CubicLine::corners() const {
    std::vector<double> list;
    for (std::size_t i = 0; i < m_t.size(); ++i)
        if (m_corner[i])
            list.push_back(m_t[i]);
    return list;
}

Eigen::Vector3d between(const CubicLine::Place& from, const CubicLine::Place& to, double h, double f) {
    const double g = 1.0 - f;
    return g * g * (1.0 + 2.0 * f) * from.p + f * f * (3.0 - 2.0 * f) * to.p + f * g * g * h * from.after -
           f * f * g * h * to.before;
}

} // namespace sheerlay::geometry

#include "geometry/tensor_surface.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <string>

namespace sheerlay::geometry {

std::vector<double> UniformKnots::fullVector() const {
    std::vector<double> knots;
    knots.reserve(static_cast<std::size_t>(poles()) + 6);
    for (int i = -5; i <= spans + 5; ++i)
        knots.push_back(first + step * i);
    return knots;
}

QuinticBasis quinticBasis(const UniformKnots& knots, double t) noexcept {
    QuinticBasis b;
    const double inSteps = (t - knots.first) / knots.step;
    b.span = std::clamp(static_cast<int>(std::floor(inSteps)), 0, knots.spans - 1);
    const double x = inSteps - b.span;
    constexpr double k = 1.0 / 120.0;
    const double x2 = x * x;
    const double x3 = x2 * x;
    const double x4 = x2 * x2;
    const double x5 = x4 * x;
    const double y = 1.0 - x;
    const double y2 = y * y;
    const double y3 = y2 * y;
    // the six segments of the uniform quintic B-spline, written out
    b.value = {k * y2 * y3,
               k * (26 - 50 * x + 20 * x2 + 20 * x3 - 20 * x4 + 5 * x5),
               k * (66 - 60 * x2 + 30 * x4 - 10 * x5),
               k * (26 + 50 * x + 20 * x2 - 20 * x3 - 20 * x4 + 10 * x5),
               k * (1 + 5 * x + 10 * x2 + 10 * x3 + 5 * x4 - 5 * x5),
               k * x5};
    const double k1 = k / knots.step;
    b.first = {-k1 * 5 * y2 * y2,
               k1 * (-50 + 40 * x + 60 * x2 - 80 * x3 + 25 * x4),
               k1 * (-120 * x + 120 * x3 - 50 * x4),
               k1 * (50 + 40 * x - 60 * x2 - 80 * x3 + 50 * x4),
               k1 * (5 + 20 * x + 30 * x2 + 20 * x3 - 25 * x4),
               k1 * 5 * x4};
    const double k2 = k1 / knots.step;
    b.second = {k2 * 20 * y3,
                k2 * (40 + 120 * x - 240 * x2 + 100 * x3),
                k2 * (-120 + 360 * x2 - 200 * x3),
                k2 * (40 - 120 * x - 240 * x2 + 200 * x3),
                k2 * (20 + 60 * x + 60 * x2 - 100 * x3),
                k2 * 20 * x3};
    return b;
}

TensorSurface::TensorSurface(UniformKnots u, UniformKnots v, std::vector<Eigen::Vector3d> poles)
    : m_u(u), m_v(v) {
    if (m_u.spans < 1 || m_v.spans < 1 || !(m_u.step > 0) || !(m_v.step > 0) ||
        poles.size() != static_cast<std::size_t>(m_u.poles()) * static_cast<std::size_t>(m_v.poles()))
        throw std::invalid_argument("TensorSurface: " + std::to_string(poles.size()) +
                                    " poles do not fit the knots");
    m_poles.reserve(poles.size());
    for (const Eigen::Vector3d& p : poles)
        m_poles.emplace_back(p.x(), p.y(), p.z(), 0.0);
}

SurfaceJet TensorSurface::jet(double u, double v) const {
    using Eigen::Array4d;
    const QuinticBasis bu = quinticBasis(m_u, u);
    const QuinticBasis bv = quinticBasis(m_v, v);
    Array4d p = Array4d::Zero(), du = p, dv = p, duu = p, duv = p, dvv = p;
    const auto stride = static_cast<std::size_t>(m_v.poles());
    const Array4d* row = m_poles.data() + static_cast<std::size_t>(bu.span) * stride + bv.span;
    for (std::size_t i = 0; i < 6; ++i, row += stride) {
        Array4d r0 = bv.value[0] * row[0], r1 = bv.first[0] * row[0], r2 = bv.second[0] * row[0];
        for (std::size_t j = 1; j < 6; ++j) {
            r0 += bv.value[j] * row[j];
            r1 += bv.first[j] * row[j];
            r2 += bv.second[j] * row[j];
        }
        p += bu.value[i] * r0;
        du += bu.first[i] * r0;
        duu += bu.second[i] * r0;
        dv += bu.value[i] * r1;
        duv += bu.first[i] * r1;
        dvv += bu.value[i] * r2;
    }
    const auto vec = [](const Array4d& a) { return Eigen::Vector3d(a[0], a[1], a[2]); };
    return {vec(p), vec(du), vec(dv), vec(duu), vec(duv), vec(dvv)};
}

Eigen::Vector3d TensorSurface::point(double u, double v) const {
    const QuinticBasis bu = quinticBasis(m_u, u);
    const QuinticBasis bv = quinticBasis(m_v, v);
    Eigen::Array4d p = Eigen::Array4d::Zero();
    const auto stride = static_cast<std::size_t>(m_v.poles());
    const Eigen::Array4d* row = m_poles.data() + static_cast<std::size_t>(bu.span) * stride + bv.span;
    for (std::size_t i = 0; i < 6; ++i, row += stride) {
        Eigen::Array4d r = bv.value[0] * row[0];
        for (std::size_t j = 1; j < 6; ++j)
            r += bv.value[j] * row[j];
        p += bu.value[i] * r;
    }
    return {p[0], p[1], p[2]};
}

} // namespace sheerlay::geometry

#include "geometry/tensor_surface.hpp"

#include <algorithm>
#include <array>
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

namespace {

/// Where a parameter lies among its knots: the span, and how far into it, 0 to 1 inside.
struct Place {
    int span = 0;
    double x = 0.0;
};

Place placeAt(const UniformKnots& knots, double t) noexcept {
    const double inSteps = (t - knots.first) / knots.step;
    const int span = std::clamp(static_cast<int>(inSteps), 0, knots.spans - 1);
    return {span, inSteps - span};
}

/// Weights of six poles at one place, or at two side by side.
template <class T> struct Weights { std::array<T, 6> value, first, second; };

/// The six segments of the uniform quintic B-spline, written out.
/// @param x     into the span
/// @param step  mm between knots
template <class T> Weights<T> weightsAt(const T& x, const T& step) noexcept {
    constexpr double k = 1.0 / 120.0;
    const T x2 = x * x;
    const T x3 = x2 * x;
    const T x4 = x2 * x2;
    const T x5 = x4 * x;
    const T y = 1.0 - x;
    const T y2 = y * y;
    const T y3 = y2 * y;
    Weights<T> b;
    b.value = {k * y2 * y3,
               k * (26 - 50 * x + 20 * x2 + 20 * x3 - 20 * x4 + 5 * x5),
               k * (66 - 60 * x2 + 30 * x4 - 10 * x5),
               k * (26 + 50 * x + 20 * x2 - 20 * x3 - 20 * x4 + 10 * x5),
               k * (1 + 5 * x + 10 * x2 + 10 * x3 + 5 * x4 - 5 * x5),
               k * x5};
    const T k1 = k / step;
    b.first = {-k1 * 5 * y2 * y2,
               k1 * (-50 + 40 * x + 60 * x2 - 80 * x3 + 25 * x4),
               k1 * (-120 * x + 120 * x3 - 50 * x4),
               k1 * (50 + 40 * x - 60 * x2 - 80 * x3 + 50 * x4),
               k1 * (5 + 20 * x + 30 * x2 + 20 * x3 - 25 * x4),
               k1 * 5 * x4};
    const T k2 = k1 / step;
    b.second = {k2 * 20 * y3,
                k2 * (40 + 120 * x - 240 * x2 + 100 * x3),
                k2 * (-120 + 360 * x2 - 200 * x3),
                k2 * (40 - 120 * x - 240 * x2 + 200 * x3),
                k2 * (20 + 60 * x + 60 * x2 - 100 * x3),
                k2 * 20 * x3};
    return b;
}

} // namespace

QuinticBasis quinticBasis(const UniformKnots& knots, double t) noexcept {
    const Place at = placeAt(knots, t);
    const Weights<double> w = weightsAt(at.x, knots.step);
    QuinticBasis b;
    b.span = at.span;
    b.value = w.value;
    b.first = w.first;
    b.second = w.second;
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
    using Eigen::Array2d, Eigen::Array4d;
    const Place inU = placeAt(m_u, u), inV = placeAt(m_v, v);
    const auto b = weightsAt<Array2d>({inU.x, inV.x}, {m_u.step, m_v.step}); // both ways in one go
    Array4d p = Array4d::Zero(), du = p, dv = p, duu = p, duv = p, dvv = p;
    const auto stride = static_cast<std::size_t>(m_v.poles());
    const Array4d* row = m_poles.data() + static_cast<std::size_t>(inU.span) * stride + inV.span;
    for (std::size_t i = 0; i < 6; ++i, row += stride) {
        Array4d r0 = b.value[0].y() * row[0], r1 = b.first[0].y() * row[0], r2 = b.second[0].y() * row[0];
        for (std::size_t j = 1; j < 6; ++j) {
            r0 += b.value[j].y() * row[j];
            r1 += b.first[j].y() * row[j];
            r2 += b.second[j].y() * row[j];
        }
        p += b.value[i].x() * r0;
        du += b.first[i].x() * r0;
        duu += b.second[i].x() * r0;
        dv += b.value[i].x() * r1;
        duv += b.first[i].x() * r1;
        dvv += b.value[i].x() * r2;
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

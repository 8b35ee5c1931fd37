#include "geometry/tensor_surface.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <stdexcept>
#include <string>

namespace sheerlay::geometry {

std::vector<double> UniformKnots::fullVector() const {
    std::vector<double> knots;
    knots.reserve(static_cast<std::size_t>(poles()) + 6);
    for (int i = -5; i <= spans + 5; ++i)
        knots.insert(knots.end(), crease > 0 && i == crease ? 5 : 1, first + step * i);
    return knots;
}

namespace {

constexpr int nearCrease = 4; // spans on each side whose basis functions feel its knots

using Polynomial = std::array<double, 6>;    // from the constant upward
using SpanBasis = std::array<Polynomial, 6>; // over x = 0 to 1 along a span of unit length

/// The basis on the span that ends `left` + 1 unit spans before five knots in one place.
SpanBasis basisBefore(int left) {
    // Cox and de Boor's recursion on polynomials; knot i of the span's own is 0, the next one 1
    const auto knot = [&](int i) { return static_cast<double>(std::min(i, left + 1)); };
    std::array<Polynomial, 6> b{};
    b[0][0] = 1;
    for (int p = 1; p <= 5; ++p) {
        std::array<Polynomial, 6> next{};
        for (int r = 0; r < p; ++r) {
            // function r of degree p - 1 feeds functions r and r + 1 of degree p
            const double lo = knot(r + 1 - p);
            const double hi = knot(r + 1);
            const Polynomial& from = b[static_cast<std::size_t>(r)];
            Polynomial& down = next[static_cast<std::size_t>(r)];
            Polynomial& up = next[static_cast<std::size_t>(r) + 1];
            for (std::size_t k = 0; k < 6; ++k) {
                const double f = from[k] / (hi - lo);
                down[k] += hi * f;
                up[k] -= lo * f;
                if (k + 1 < 6) {
                    down[k + 1] -= f;
                    up[k + 1] += f;
                }
            }
        }
        b = next;
    }
    return b;
}

const std::array<SpanBasis, nearCrease>& basesBefore() {
    static const std::array<SpanBasis, nearCrease> bases{
        basisBefore(0), basisBefore(1), basisBefore(2), basisBefore(3)};
    return bases;
}

double derivativeOf(const Polynomial& p, double x, int order) {
    double sum = 0;
    for (int k = 5; k >= order; --k) {
        double c = p[static_cast<std::size_t>(k)];
        for (int m = 0; m < order; ++m)
            c *= k - m;
        sum = sum * x + c;
    }
    return sum;
}

/// Where a parameter lies among its knots: the span, and how far into it, 0 to 1 inside.
struct Place {
    int span = 0;
    double x = 0.0;
};

Place placeAt(const UniformKnots& knots, double t) noexcept {
    const double inSteps = (t - knots.first) / knots.step;
    const int least = knots.side > 0 ? knots.crease : 0;
    const int most = (knots.side < 0 ? knots.crease : knots.spans) - 1;
    const int span = std::clamp(static_cast<int>(inSteps), least, most);
    return {span, inSteps - span};
}

/// First pole that a span's basis belongs to.
int firstPole(const UniformKnots& knots, int span) noexcept {
    return span + (knots.crease > 0 && span >= knots.crease ? 4 : 0);
}

/// Spans between this one and the crease; none where there is no crease within reach.
std::optional<int> toCrease(const UniformKnots& knots, int span) {
    if (knots.crease == 0)
        return std::nullopt;
    const int between = span < knots.crease ? knots.crease - 1 - span : span - knots.crease;
    return between < nearCrease ? std::optional(between) : std::nullopt;
}

/// Derivative of one order of the six functions near the crease; what lies after it mirrors what lies before.
std::array<double, 6> nearBasis(const UniformKnots& knots, const Place& at, int between, int order) {
    const SpanBasis& basis = basesBefore()[static_cast<std::size_t>(between)];
    const bool after = at.span >= knots.crease;
    const double scale = std::pow((after ? -1.0 : 1.0) / knots.step, order);
    std::array<double, 6> d{};
    for (std::size_t i = 0; i < 6; ++i)
        d[i] = scale * derivativeOf(basis[after ? 5 - i : i], after ? 1 - at.x : at.x, order);
    return d;
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
    QuinticBasis b;
    b.span = firstPole(knots, at.span);
    if (const auto between = toCrease(knots, at.span)) {
        b.value = nearBasis(knots, at, *between, 0);
        b.first = nearBasis(knots, at, *between, 1);
        b.second = nearBasis(knots, at, *between, 2);
        return b;
    }
    const Weights<double> w = weightsAt(at.x, knots.step);
    b.value = w.value;
    b.first = w.first;
    b.second = w.second;
    return b;
}

std::array<double, 6> quinticThird(const UniformKnots& knots, double t) noexcept {
    const Place at = placeAt(knots, t);
    if (const auto between = toCrease(knots, at.span))
        return nearBasis(knots, at, *between, 3);
    const double x = at.x;
    const double s = 1.0 / (120.0 * knots.step * knots.step * knots.step);
    return {-s * 60 * (1 - x) * (1 - x),
            s * (120 - 480 * x + 300 * x * x),
            s * (720 * x - 600 * x * x),
            s * (-120 - 480 * x + 600 * x * x),
            s * (60 + 120 * x - 300 * x * x),
            s * 60 * x * x};
}

TensorSurface::TensorSurface(UniformKnots u, UniformKnots v, std::vector<Eigen::Vector3d> poles)
    : m_u(u), m_v(v) {
    if (m_u.spans < 1 || m_v.spans < 1 || m_u.crease != 0 || m_v.crease < 0 || m_v.crease >= m_v.spans ||
        !(m_u.step > 0) || !(m_v.step > 0) ||
        poles.size() != static_cast<std::size_t>(m_u.poles()) * static_cast<std::size_t>(m_v.poles()))
        throw std::invalid_argument("TensorSurface: " + std::to_string(poles.size()) +
                                    " poles do not fit the knots");
    m_poles.reserve(poles.size());
    for (const Eigen::Vector3d& p : poles)
        m_poles.emplace_back(p.x(), p.y(), p.z(), 0.0);
}

TensorSurface TensorSurface::oneSide(int side) const {
    TensorSurface part = *this;
    part.m_v.side = m_v.crease > 0 ? side : 0;
    return part;
}

SurfaceJet TensorSurface::jet(double u, double v) const {
    using Eigen::Array2d, Eigen::Array4d;
    const Place inU = placeAt(m_u, u), inV = placeAt(m_v, v);
    auto b = weightsAt<Array2d>({inU.x, inV.x}, {m_u.step, m_v.step}); // both ways in one go
    if (toCrease(m_v, inV.span)) {
        const QuinticBasis near = quinticBasis(m_v, v);
        for (std::size_t j = 0; j < 6; ++j) {
            b.value[j].y() = near.value[j];
            b.first[j].y() = near.first[j];
            b.second[j].y() = near.second[j];
        }
    }
    Array4d p = Array4d::Zero(), du = p, dv = p, duu = p, duv = p, dvv = p;
    const auto stride = static_cast<std::size_t>(m_v.poles());
    const Array4d* row =
        m_poles.data() + static_cast<std::size_t>(inU.span) * stride + firstPole(m_v, inV.span);
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

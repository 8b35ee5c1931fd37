#include "core/afloat/float_body.hpp"

#include "core/afloat/simpson.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <stdexcept>

namespace sheerlay::core {

namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

/// Toward the keel along the section, from the outward normal.
Vector2d alongSection(const Vector3d& normal) {
    const Vector2d along(normal.z(), -normal.y());
    const double length = along.norm();
    return length > 1e-12 ? Vector2d(along / length) : Vector2d(0, -1);
}

double slantOf(const Vector3d& normal) {
    constexpr double leastSine = 1e-3; // where the surface lies in the section's plane, at the very ends
    return 1.0 / std::max(leastSine, std::sqrt(std::max(0.0, 1.0 - normal.x() * normal.x())));
}

SectionPiece pieceBetween(const SectionPoint& a, const SectionPoint& b) {
    SectionPiece piece;
    piece.from = {a.point.y(), a.point.z()};
    piece.to = {b.point.y(), b.point.z()};
    const Vector2d chord = piece.to - piece.from;
    const Vector2d first = alongSection(a.normal), second = alongSection(b.normal);
    // length of the derivatives with which a cubic follows a circular arc best: chord / cos^2 of a quarter
    // turn
    const double turn = std::acos(std::clamp(first.dot(second), -1.0, 1.0));
    constexpr double corner = 1.2; // rad, no smooth section turns as much between neighbouring points
    if (turn > corner || first.dot(chord) <= 0.0 || second.dot(chord) <= 0.0) {
        piece.leaving = piece.arriving = chord;
    } else {
        const double scale = chord.norm() / std::pow(std::cos(turn / 4), 2);
        piece.leaving = scale * first;
        piece.arriving = scale * second;
    }
    piece.slantFrom = slantOf(a.normal);
    piece.slantTo = slantOf(b.normal);
    piece.whole = piece.sums(0.0, 1.0);
    return piece;
}

/// Where the surface meets a transom's plane, from the sheer's end down to the profile's.
std::vector<Vector3d> transomEdge(const TrimmedSurface& outside,
                                  const geometry::TransomPlane& plane,
                                  const Vector2d& sheer,
                                  const Vector2d& keel) {
    constexpr int parts = 200;
    std::vector<Vector3d> edge;
    double u = sheer.x();
    for (int i = 0; i <= parts; ++i) {
        const double v = std::lerp(sheer.y(), keel.y(), static_cast<double>(i) / parts);
        geometry::SurfaceJet jet = outside.surface.jet(u, v);
        for (int round = 0; round < 20; ++round) {
            const double off = jet.p.x() - plane.xAt(jet.p.z()), rate = jet.u.x() - plane.slope * jet.u.z();
            if (std::abs(off) < 1e-7 || std::abs(rate) < 1e-6)
                break;
            u -= std::clamp(off / rate, -50.0, 50.0);
            jet = outside.surface.jet(u, v);
        }
        edge.push_back(jet.p);
    }
    return edge;
}

} // namespace

Vector2d SectionPiece::at(double t) const noexcept {
    const double s = 1 - t;
    return s * s * (1 + 2 * t) * from + t * t * (3 - 2 * t) * to + t * s * s * leaving - t * t * s * arriving;
}

Vector2d SectionPiece::slope(double t) const noexcept {
    const double s = 1 - t;
    return 6 * t * s * (to - from) + s * (1 - 3 * t) * leaving + t * (3 * t - 2) * arriving;
}

LineSums SectionPiece::sums(double first, double last) const noexcept {
    // five Gauss points: exact for the eighth degree that y z dz has on a cubic
    constexpr std::array<double, 5> place{
        0.046910077030668, 0.230765344947158, 0.5, 0.769234655052842, 0.953089922969332};
    constexpr std::array<double, 5> weight{
        0.118463442528095, 0.239314335249683, 0.284444444444444, 0.239314335249683, 0.118463442528095};
    LineSums sums;
    for (std::size_t k = 0; k < place.size(); ++k) {
        const double t = std::lerp(first, last, place[k]), w = weight[k] * (last - first);
        const Vector2d p = at(t), d = slope(t);
        sums.area += w * p.x() * d.y();
        sums.acrossMoment += w * 0.5 * p.x() * p.x() * d.y();
        sums.heightMoment += w * p.x() * p.y() * d.y();
        sums.skin += w * d.norm() * std::lerp(slantFrom, slantTo, t);
    }
    return sums;
}

FloatBody::FloatBody(const SectionAt& sectionAt,
                     double from,
                     double to,
                     std::vector<Vector3d> sheer,
                     std::vector<Vector3d> profile,
                     int intervals)
    : m_sheer(std::move(sheer)), m_profile(std::move(profile)) {
    if (intervals < 2 || intervals % 2 != 0 || !(to > from))
        throw std::invalid_argument("a body needs a length and an even count of intervals");
    std::vector<double> angle;
    for (int i = 0; i <= intervals; ++i)
        angle.push_back(std::numbers::pi * i / intervals);
    const std::vector<double> multipliers = simpsonMultipliers(angle);
    const double half = (to - from) / 2;
    for (std::size_t i = 1; i + 1 < angle.size(); ++i) { // the sine makes nothing of the end sections
        FloatSection section;
        section.x = from + half * (1 - std::cos(angle[i]));
        section.weight = multipliers[i] * half * std::sin(angle[i]);
        const std::vector<SectionPoint> points = sectionAt(section.x);
        for (std::size_t k = 1; k < points.size(); ++k)
            if ((points[k].point - points[k - 1].point).norm() > 1e-9)
                section.pieces.push_back(pieceBetween(points[k - 1], points[k]));
        m_sections.push_back(std::move(section));
    }
}

FloatBody floatBodyOf(const TrimmedSurface& outside, int intervals, int pointsOfSection) {
    double from = 1e300, to = -1e300;
    for (const auto* line : {&outside.sheer, &outside.profile})
        for (const Vector3d& p : *line) {
            from = std::min(from, p.x());
            to = std::max(to, p.x());
        }
    FloatBody body([&](double x) { return sectionWithNormals(outside, x, pointsOfSection); },
                   from,
                   to,
                   outside.sheer,
                   outside.profile,
                   intervals);
    const geometry::HullOutline& outline = outside.outline;
    if (outside.trims.bow && !outline.bowClosed)
        body.closeWith(
            transomEdge(outside, *outside.trims.bow, outline.sheer.front(), outline.profile.front()));
    if (outside.trims.stern && !outline.sternClosed)
        body.closeWith(
            transomEdge(outside, *outside.trims.stern, outline.sheer.back(), outline.profile.back()));
    return body;
}

} // namespace sheerlay::core

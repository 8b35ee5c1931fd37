#include "geometry/offset_surface.hpp"

#include <Eigen/Cholesky>
#include <Eigen/LU>

#include <algorithm>
#include <cmath>

namespace sheerlay::geometry {
namespace {

/// Matrix that turns samples at `sites` into poles, by least squares.
Eigen::MatrixXd samplesToPoles(const UniformKnots& knots, const std::vector<double>& sites) {
    const auto n = static_cast<Eigen::Index>(sites.size());
    Eigen::MatrixXd basis = Eigen::MatrixXd::Zero(n, knots.poles());
    for (Eigen::Index r = 0; r < n; ++r) {
        const QuinticBasis b = quinticBasis(knots, sites[static_cast<std::size_t>(r)]);
        for (int k = 0; k < 6; ++k)
            basis(r, b.span + k) = b.value[static_cast<std::size_t>(k)];
    }
    return (basis.transpose() * basis).llt().solve(basis.transpose());
}

std::vector<double> sitesOf(const UniformKnots& knots) {
    std::vector<double> sites;
    const int perSpan = 2;
    for (int i = 0; i < knots.spans * perSpan; ++i)
        sites.push_back(knots.first + knots.step * (i + 0.5) / perSpan);
    // the end spans carry five poles that only they see
    for (const double f : {0.0, 0.08, 0.16})
        for (const bool atEnd : {false, true})
            sites.push_back(atEnd ? knots.last() - f * knots.step : knots.first + f * knots.step);
    // so does each side of a crease, and both meet on it
    if (knots.crease > 0)
        for (const double f : {-0.16, -0.08, 0.0, 0.08, 0.16})
            sites.push_back(knots.creaseAt() + f * knots.step);
    return sites;
}

Eigen::Vector3d offsetPoint(const TensorSurface& surface, double u, double v, double distance) {
    const SurfaceJet jet = surface.jet(u, v);
    return jet.p + distance * jet.normal();
}

/// How far the parameters of both sides move until their offsets meet, at one place of the crease.
struct Meeting {
    Eigen::Vector2d before = Eigen::Vector2d::Zero();
    Eigen::Vector2d after = Eigen::Vector2d::Zero();
};

constexpr double softTurn = 0.02; // rad; so little of a corner is the same from both sides

/// Where the offsets of the two sides meet, in the plane square to the crease at u.
Meeting
meetingAt(const TensorSurface& before, const TensorSurface& after, double u, double crease, double distance) {
    const SurfaceJet corner = before.jet(u, crease);
    const Eigen::Vector3d tangent = corner.u.normalized();
    if (corner.normal().cross(after.jet(u, crease).normal()).norm() < softTurn)
        return {};
    const auto off = [&](const Eigen::Vector4d& m) {
        const Eigen::Vector3d a = offsetPoint(before, u + m[0], crease + m[1], distance);
        const Eigen::Vector3d b = offsetPoint(after, u + m[2], crease + m[3], distance);
        Eigen::Vector4d f;
        f << a - b, (a - corner.p).dot(tangent);
        return f;
    };
    Eigen::Vector4d m = Eigen::Vector4d::Zero();
    for (int i = 0; i < 20; ++i) {
        const Eigen::Vector4d f = off(m);
        if (f.norm() < 1e-10)
            break;
        Eigen::Matrix4d slope;
        constexpr double h = 1e-3;
        for (int k = 0; k < 4; ++k) {
            const Eigen::Vector4d by = h * Eigen::Vector4d::Unit(k);
            slope.col(k) = (off(m + by) - off(m - by)) / (2 * h);
        }
        m -= slope.fullPivLu().solve(f);
    }
    // far outside the boat the two sides may run anywhere
    const double most = 6 * std::abs(distance);
    if (!m.allFinite() || m.cwiseAbs().maxCoeff() > most)
        return {};
    return {m.head<2>(), m.tail<2>()};
}

} // namespace

TensorSurface offsetSurface(const TensorSurface& surface, double distance, int refine) {
    UniformKnots ku = surface.knotsU();
    UniformKnots kv = surface.knotsV();
    for (UniformKnots* k : {&ku, &kv}) {
        k->spans *= refine;
        k->crease *= refine;
        k->step /= refine;
    }
    const auto su = sitesOf(ku);
    const auto sv = sitesOf(kv);
    std::array<Eigen::MatrixXd, 3> samples;
    for (auto& m : samples)
        m.resize(static_cast<Eigen::Index>(su.size()), static_cast<Eigen::Index>(sv.size()));
    const std::optional<double> crease = surface.crease();
    const TensorSurface before = surface.oneSide(-1);
    const TensorSurface after = surface.oneSide(+1);
    for (std::size_t i = 0; i < su.size(); ++i) {
        const Meeting meeting = crease ? meetingAt(before, after, su[i], *crease, distance) : Meeting{};
        for (std::size_t j = 0; j < sv.size(); ++j) {
            Eigen::Vector2d uv(su[i], sv[j]);
            const bool isBefore = crease && sv[j] < *crease;
            if (isBefore) // all of the move at the crease, none at v = 0
                uv += meeting.before * (sv[j] / *crease);
            else
                uv += meeting.after;
            const Eigen::Vector3d p = offsetPoint(isBefore ? before : after, uv.x(), uv.y(), distance);
            for (std::size_t c = 0; c < 3; ++c)
                samples[c](static_cast<Eigen::Index>(i), static_cast<Eigen::Index>(j)) =
                    p[static_cast<Eigen::Index>(c)];
        }
    }
    const Eigen::MatrixXd mu = samplesToPoles(ku, su);
    const Eigen::MatrixXd mv = samplesToPoles(kv, sv);
    std::array<Eigen::MatrixXd, 3> poles;
    for (std::size_t c = 0; c < 3; ++c)
        poles[c] = mu * samples[c] * mv.transpose();
    std::vector<Eigen::Vector3d> flat;
    flat.reserve(static_cast<std::size_t>(ku.poles() * kv.poles()));
    for (Eigen::Index i = 0; i < ku.poles(); ++i)
        for (Eigen::Index j = 0; j < kv.poles(); ++j)
            flat.emplace_back(poles[0](i, j), poles[1](i, j), poles[2](i, j));
    return {ku, kv, std::move(flat)};
}

} // namespace sheerlay::geometry

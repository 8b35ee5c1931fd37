#include "core/afloat/equilibrium.hpp"

#include <Eigen/Eigenvalues>

#include <algorithm>
#include <array>
#include <cmath>

namespace sheerlay::core {

namespace {

using Eigen::Matrix2d;
using Eigen::Vector2d;
using Eigen::Vector3d;

constexpr double cubicMmPerCubicM = 1e9;
constexpr double steepestTrim = 0.6; // rad; no boat at rest trims as much

struct Reach {
    double lowest = 1e300, highest = -1e300; ///< of the body along a direction, mm
};

Reach reachAlong(const FloatBody& body, const Vector3d& up) {
    Reach reach;
    const auto see = [&](double x, const Vector2d& p) {
        for (const double side : {1.0, -1.0}) {
            const double h = up.dot(Vector3d(x, side * p.x(), p.y()));
            reach.lowest = std::min(reach.lowest, h);
            reach.highest = std::max(reach.highest, h);
        }
    };
    for (const FloatSection& section : body.sections())
        for (const SectionPiece& piece : section.pieces) {
            see(section.x, piece.from);
            see(section.x, piece.to);
        }
    return reach;
}

/// Height of the centre of weight over that of buoyancy at constant volume, with two derivatives by trim and
/// heel: the boat's energy over its weight. Its slope holds the moments, its curvature the metacentric
/// heights.
struct Energy {
    double height = 0.0;
    Vector2d slope = Vector2d::Zero();
    Matrix2d curvature = Matrix2d::Zero();
};

Energy energyOf(const Submerged& under, const WaterPlane& water, const Vector3d& weightCentre) {
    const double st = std::sin(water.trim), ct = std::cos(water.trim);
    const double sh = std::sin(water.heel), ch = std::cos(water.heel);
    const Vector3d arm = weightCentre - under.centre;
    const std::array<Vector3d, 2> first{water.upByTrim(), water.upByHeel()};
    const Vector3d trimTrim = -water.up(), heelHeel(0.0, ct * sh, -ct * ch), trimHeel(0.0, st * ch, st * sh);
    Energy e;
    e.height = water.up().dot(arm);
    e.slope = {first[0].dot(arm), first[1].dot(arm)};
    e.curvature << trimTrim.dot(arm), trimHeel.dot(arm), trimHeel.dot(arm), heelHeel.dot(arm);
    for (int i = 0; i < 2; ++i)
        for (int j = 0; j < 2; ++j)
            e.curvature(i, j) += first[static_cast<std::size_t>(i)].dot(under.planeInertia *
                                                                        first[static_cast<std::size_t>(j)]) /
                                 under.volume;
    return e;
}

/// A step downhill, by Newton where the energy curves upward; off a crest, where no slope says which way.
Vector2d stepDown(const Energy& e) {
    const Eigen::SelfAdjointEigenSolver<Matrix2d> solver(e.curvature);
    Vector2d step = Vector2d::Zero();
    for (int k = 0; k < 2; ++k) {
        constexpr double least = 1.0;  // mm of metacentric height, below which it counts as this much
        constexpr double crest = 1e-3; // rad
        const Vector2d along = solver.eigenvectors().col(k);
        const double curve = solver.eigenvalues()(k);
        double move = -along.dot(e.slope) / std::max(least, std::abs(curve));
        if (curve < -least && std::abs(move) < crest)
            move = std::copysign(crest, move);
        step += move * along;
    }
    constexpr double longest = 0.2; // rad
    const double size = step.norm();
    return size > longest ? Vector2d(step * (longest / size)) : step;
}

AfloatError swamping(const FloatBody& body, double density, AfloatError::Kind kind) {
    AfloatError error;
    error.kind = kind;
    error.most = levelDisplacement(body, density, 0.0);
    return error;
}

} // namespace

Burden together(const Burden& one, const Burden& other) {
    Burden both;
    both.mass = one.mass + other.mass;
    if (both.mass > 0.0)
        both.centre = (one.mass * one.centre + other.mass * other.centre) / both.mass;
    return both;
}

double volumeOf(const FloatBody& body) {
    WaterPlane above;
    above.level = reachAlong(body, above.up()).highest + 1.0;
    return submerged(body, above).volume;
}

WaterPlane levelFor(const FloatBody& body, double volume, const WaterPlane& near) {
    const Reach reach = reachAlong(body, near.up());
    double lo = reach.lowest, hi = reach.highest;
    WaterPlane water = near;
    if (!(water.level > lo && water.level < hi))
        water.level = 0.5 * (lo + hi);
    for (int i = 0; i < 80; ++i) {
        const Submerged under = submerged(body, water);
        const double excess = under.volume - volume;
        (excess > 0.0 ? hi : lo) = water.level;
        if (std::abs(excess) <= 1e-12 * volume || hi - lo < 1e-10)
            break;
        const double next = under.plane > 0.0 ? water.level - excess / under.plane : lo;
        water.level = next > lo && next < hi ? next : 0.5 * (lo + hi);
    }
    return water;
}

double levelDisplacement(const FloatBody& body, double density, double freeboard) {
    WaterPlane water;
    water.level = leastFreeboard(body, water).height - freeboard;
    return submerged(body, water).volume / cubicMmPerCubicM * density;
}

Expected<Rest, AfloatError>
rest(const FloatBody& body, const Burden& burden, double density, const WaterPlane& start) {
    const double volume = burden.mass / density * cubicMmPerCubicM;
    if (!(volume > 0.0) || volume >= volumeOf(body))
        return unexpected(swamping(body, density, AfloatError::Kind::TooHeavy));

    WaterPlane water = levelFor(body, volume, start);
    Submerged under = submerged(body, water);
    bool atRest = false;
    for (int i = 0; i < 200 && !atRest; ++i) {
        const Energy here = energyOf(under, water, burden.centre);
        Vector2d step = stepDown(here);
        atRest = step.norm() < 1e-10;
        for (int halving = 0; halving < 30; ++halving, step *= 0.5) {
            WaterPlane next = water;
            next.trim = std::clamp(water.trim + step.x(), -steepestTrim, steepestTrim);
            next.heel = water.heel + step.y();
            next = levelFor(body, volume, next);
            const Submerged there = submerged(body, next);
            constexpr double noise = 1e-9; // mm, of the energy
            if (energyOf(there, next, burden.centre).height <= here.height + noise) {
                water = next;
                under = there;
                break;
            }
        }
    }
    const Freeboard freeboard = leastFreeboard(body, water);
    if (!atRest || freeboard.height <= 0.0) {
        AfloatError error = swamping(
            body, density, freeboard.height <= 0.0 ? AfloatError::Kind::Swamped : AfloatError::Kind::NoRest);
        error.at = freeboard.at;
        error.depth = -freeboard.height;
        return unexpected(error);
    }
    Rest found;
    found.water = water;
    found.under = under;
    found.freeboard = freeboard.height;
    found.freeboardAt = freeboard.at;
    found.draught = draught(body, water);
    found.bm = water.across().dot(under.planeInertia * water.across()) / under.volume;
    found.gm = found.bm - water.up().dot(burden.centre - under.centre);
    return found;
}

WaterPlane
balancedAt(const FloatBody& body, const Burden& burden, double density, double heel, const WaterPlane& near) {
    const double volume = burden.mass / density * cubicMmPerCubicM;
    WaterPlane water = near;
    water.heel = heel;
    for (int i = 0; i < 60; ++i) {
        water = levelFor(body, volume, water);
        const Energy e = energyOf(submerged(body, water), water, burden.centre);
        const double stiff = std::max(1.0, std::abs(e.curvature(0, 0)));
        const double step = std::clamp(-e.slope.x() / stiff, -0.1, 0.1);
        if (std::abs(step) < 1e-10)
            break;
        water.trim = std::clamp(water.trim + step, -steepestTrim, steepestTrim);
    }
    return water;
}

} // namespace sheerlay::core

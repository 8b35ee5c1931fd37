#include "geometry/shortest_line.hpp"

#include "geometry/polyline.hpp"

#include <Eigen/Dense>

#include <cmath>
#include <stdexcept>

namespace sheerlay::geometry {
namespace {

using Eigen::Matrix2d;
using Eigen::Vector2d;
using Eigen::Vector3d;

constexpr int mostSteps = 60;
constexpr double settled = 1e-13;    // of the energy, in a step
constexpr double mostDamping = 1e12; // of the metric

std::vector<SurfaceJet> jetsAlong(const Surface& surface, const std::vector<Vector2d>& line) {
    std::vector<SurfaceJet> jets;
    jets.reserve(line.size());
    for (const Vector2d& uv : line)
        jets.push_back(surface.jet(uv.x(), uv.y()));
    return jets;
}

/// Half the sum of the squared chords: least where the line is straightest and the chords alike.
double energyOf(const std::vector<SurfaceJet>& jets) {
    double sum = 0.0;
    for (std::size_t i = 1; i < jets.size(); ++i)
        sum += 0.5 * (jets[i].p - jets[i - 1].p).squaredNorm();
    return sum;
}

Matrix2d metric(const SurfaceJet& a, const SurfaceJet& b) {
    Matrix2d m;
    m << a.u.dot(b.u), a.u.dot(b.v), a.v.dot(b.u), a.v.dot(b.v);
    return m;
}

/// Newton's step of the inner nodes, by elimination along the line; empty where the damped energy is not
/// convex there.
std::vector<Vector2d> newtonStep(const std::vector<SurfaceJet>& jets, double damping) {
    const std::size_t n = jets.size();
    std::vector<Matrix2d> diagonal(n, Matrix2d::Identity());
    std::vector<Vector2d> right(n, Vector2d::Zero());
    for (std::size_t i = 1; i + 1 < n; ++i) {
        const SurfaceJet& here = jets[i];
        const Vector3d pull = 2.0 * here.p - jets[i - 1].p - jets[i + 1].p;
        Matrix2d bent;
        bent << pull.dot(here.uu), pull.dot(here.uv), pull.dot(here.uv), pull.dot(here.vv);
        diagonal[i] = (2.0 + damping) * metric(here, here) + bent;
        right[i] = -Vector2d(pull.dot(here.u), pull.dot(here.v));
        if (i > 1) {
            const Matrix2d lower = -metric(here, jets[i - 1]) * diagonal[i - 1].inverse();
            diagonal[i] += lower * metric(jets[i - 1], here);
            right[i] -= lower * right[i - 1];
        }
        if (!(diagonal[i].determinant() > 0.0 && diagonal[i](0, 0) > 0.0))
            return {};
    }
    std::vector<Vector2d> step(n, Vector2d::Zero());
    for (std::size_t i = n - 1; i-- > 1;)
        step[i] = diagonal[i].inverse() * (right[i] + metric(jets[i], jets[i + 1]) * step[i + 1]);
    return step;
}

} // namespace

std::vector<Vector2d>
shortestLine(const Surface& surface, const Vector2d& from, const Vector2d& to, int pieces) {
    if (pieces < 1)
        throw std::invalid_argument("a line has at least one piece");
    std::vector<Vector2d> line;
    for (int i = 0; i <= pieces; ++i)
        line.push_back(from + (to - from) * i / pieces);
    std::vector<SurfaceJet> jets = jetsAlong(surface, line);
    double energy = energyOf(jets);
    double damping = 0.0;
    for (int i = 0; i < mostSteps && damping < mostDamping; ++i) {
        const std::vector<Vector2d> step = newtonStep(jets, damping);
        std::vector<Vector2d> tried = line;
        for (std::size_t k = 0; k < step.size(); ++k)
            tried[k] += step[k];
        const std::vector<SurfaceJet> there = jetsAlong(surface, tried);
        const double then = step.empty() ? energy : energyOf(there);
        if (step.empty() || then > energy) {
            if (!step.empty() && then - energy <= settled * energy)
                break;
            damping = std::max(1e-3, 8.0 * damping);
            continue;
        }
        const bool done = energy - then <= settled * energy;
        line = tried;
        jets = there;
        energy = then;
        damping = damping < 1e-3 ? 0.0 : damping / 8.0;
        if (done)
            break;
    }
    return line;
}

double smoothLength(const std::vector<Vector3d>& points) {
    const double fine = lengthOf(points);
    if (points.size() < 3 || points.size() % 2 == 0)
        return fine;
    double coarse = 0.0;
    for (std::size_t i = 2; i < points.size(); i += 2)
        coarse += (points[i] - points[i - 2]).norm();
    return (4.0 * fine - coarse) / 3.0;
}

Vector2d nearestPlace(const Surface& surface, const Vector3d& point, Vector2d guess) {
    constexpr int steps = 30;
    constexpr double near = 1e-7; // mm
    for (int i = 0; i < steps; ++i) {
        const SurfaceJet here = surface.jet(guess.x(), guess.y());
        const Vector3d off = point - here.p;
        // without the second derivatives: the point lies near the surface, and each step is downhill
        const Vector2d step = metric(here, here).ldlt().solve(Vector2d(off.dot(here.u), off.dot(here.v)));
        guess += step;
        if ((step.x() * here.u + step.y() * here.v).norm() < near)
            break;
    }
    return guess;
}

} // namespace sheerlay::geometry

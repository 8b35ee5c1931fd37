#include "core/fitout/cross_piece.hpp"

#include <Eigen/Cholesky>

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace sheerlay::core {

namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

constexpr int grid = 8; // parts of an end's width and height that are looked at

} // namespace

Vector2d CrossPiece::at(double a, double c) const {
    const double cosine = std::cos(tilt), sine = std::sin(tilt);
    return front + a * Vector2d(cosine, sine) + c * Vector2d(-sine, cosine);
}

double CrossPiece::halfAt(double a, double c) const {
    return 0.5 * frontTop + a * std::tan(plan) + c * std::tan(section);
}

std::optional<CrossPiece> fitAcross(const TrimmedSurface& inside, const CrossPlace& place) {
    CrossPiece piece;
    piece.front = place.front;
    piece.tilt = place.tilt;
    piece.width = place.width;
    piece.height = place.height;

    struct Sample {
        double a = 0.0, c = 0.0, half = 0.0,
               lean = 1.0; // lean: part of a gap across that is square to the hull
    };
    std::vector<Sample> samples;
    std::optional<Vector2d> near;
    Eigen::Matrix3d normal = Eigen::Matrix3d::Zero();
    Vector3d right = Vector3d::Zero();
    for (int i = 0; i <= grid; ++i)
        for (int j = 0; j <= grid; ++j) {
            const double a = place.width * i / grid;
            const double c =
                -place.height * (i % 2 == 0 ? j : grid - j) / grid; // back and forth: neighbours are near
            const Vector2d at = piece.at(a, c);
            auto found = acrossAt(inside, at.x(), at.y(), near);
            if (!found && near)
                found = acrossAt(inside, at.x(), at.y());
            if (!found)
                return std::nullopt;
            near = found->uv;
            samples.push_back({a, c, found->point.y(), found->normal.y()});
            const Vector3d row(1.0, a, c);
            normal += row * row.transpose();
            right += found->point.y() * row;
        }
    // the plane through the end in the mean, then moved in until it touches and is nowhere outside
    const Vector3d plane = normal.ldlt().solve(right);
    double outside = -1e300;
    for (const Sample& s : samples)
        outside = std::max(outside, plane.dot(Vector3d(1.0, s.a, s.c)) - s.half);
    const double half = plane.x() - outside;
    piece.frontTop = 2 * half;
    piece.backTop = 2 * (half + plane.y() * place.width);
    piece.frontBottom = 2 * (half - plane.z() * place.height);
    piece.backBottom = 2 * (half + plane.y() * place.width - plane.z() * place.height);
    piece.plan = std::atan(plane.y());
    piece.section = std::atan(plane.z());
    for (const Sample& s : samples)
        piece.gap = std::max(piece.gap, (s.half - piece.halfAt(s.a, s.c)) * s.lean);
    return piece;
}

} // namespace sheerlay::core

#pragma once

#include "geometry/surface.hpp"

#include <Eigen/Core>

#include <array>
#include <optional>
#include <vector>

namespace sheerlay::geometry {

/// One direction of a uniform quintic spline: equal spans, simple knots that run five spans past both ends.
/// One knot may stand five times: the spline is continuous there and may turn sharply, a crease.
struct UniformKnots {
    double first = 0.0; ///< start of the domain
    double step = 1.0;  ///< length of a span; > 0
    int spans = 1;      ///< number of spans; >= 1
    int crease = 0;     ///< spans before the crease, below `spans`; 0: none
    /// Which polynomials hold: 0 each on its own spans; -1 those before the crease, led on smoothly past it;
    /// +1 those after it.
    int side = 0;

    [[nodiscard]] int poles() const noexcept { return spans + (crease > 0 ? 9 : 5); }
    [[nodiscard]] double last() const noexcept { return first + step * spans; }
    /// Parameter of the crease. Only where there is one.
    [[nodiscard]] double creaseAt() const noexcept { return first + step * crease; }
    /// Only without a crease.
    [[nodiscard]] double greville(int i) const noexcept { return first + step * (i - 2); }
    [[nodiscard]] std::vector<double> fullVector() const; ///< poles() + 6 knots
};

/// The six quintic basis functions that are not zero at one parameter, with two derivatives.
struct QuinticBasis {
    int span = 0; ///< first pole they belong to
    std::array<double, 6> value, first, second;
};

/// Basis at t, which may lie outside the domain: the end spans' polynomials go on.
[[nodiscard]] QuinticBasis quinticBasis(const UniformKnots& knots, double t) noexcept;

/// Their third derivatives at t.
[[nodiscard]] std::array<double, 6> quinticThird(const UniformKnots& knots, double t) noexcept;

/// A tensor-product B-spline surface, quintic in both directions, uniform knots, not rational. It may have a
/// crease along one line of constant v; jets on that line are those of the side after it.
/// @complexity  jet: 36 poles, no allocation; see tests/bench
class TensorSurface final : public Surface {
public:
    static constexpr int degree = 5;

    TensorSurface() = default;
    /// @param poles  mm, u-major: poles[i * v.poles() + j]
    /// @throws std::invalid_argument  the number of poles does not fit the knots
    TensorSurface(UniformKnots u, UniformKnots v, std::vector<Eigen::Vector3d> poles);

    [[nodiscard]] SurfaceJet jet(double u, double v) const override;
    [[nodiscard]] Eigen::Vector3d point(double u, double v) const;

    /// v of the crease; none where the surface is smooth, or is one side of a creased one.
    [[nodiscard]] std::optional<double> crease() const noexcept {
        return m_v.crease > 0 && m_v.side == 0 ? std::optional(m_v.creaseAt()) : std::nullopt;
    }
    /// One side of the crease as a smooth surface that runs on past it: -1 before, +1 after.
    [[nodiscard]] TensorSurface oneSide(int side) const;

    [[nodiscard]] const UniformKnots& knotsU() const noexcept { return m_u; }
    [[nodiscard]] const UniformKnots& knotsV() const noexcept { return m_v; }
    [[nodiscard]] Eigen::Vector3d pole(int i, int j) const {
        return m_poles[static_cast<std::size_t>(i) * static_cast<std::size_t>(m_v.poles()) +
                       static_cast<std::size_t>(j)]
            .head<3>();
    }

private:
    UniformKnots m_u, m_v;
    std::vector<Eigen::Array4d> m_poles; // the fourth is 0: two at a time go through the processor
};

} // namespace sheerlay::geometry

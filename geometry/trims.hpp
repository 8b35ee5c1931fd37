#pragma once

#include "geometry/expected.hpp"
#include "geometry/hull_region.hpp"
#include "geometry/tensor_surface.hpp"

#include <Eigen/Core>

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace sheerlay::geometry {

/// What cuts a line off at the edge of the hull.
enum class Trim { None, Sheer, Centre, BowPlane, SternPlane };

/// A plane square to the centreplane: x = at + slope (z - level); the hull lies on the far side of it from
/// its own end.
struct TransomPlane {
    double at = 0.0;    ///< mm
    double slope = 0.0; ///< dx/dz
    double level = 0.0; ///< mm

    [[nodiscard]] double xAt(double z) const noexcept { return at + slope * (z - level); }
};

/// Half-breadth at which the planking ends, as a smooth function of x: constant, or through given points.
class HalfSiding {
public:
    HalfSiding() = default;
    explicit HalfSiding(double constant) : m_constant(constant) {}
    /// @param points  (x, half siding) mm, x strictly increasing; monotone cubic between, constant beyond
    explicit HalfSiding(std::vector<std::array<double, 2>> points);

    [[nodiscard]] double at(double x) const noexcept;
    [[nodiscard]] double slopeAt(double x) const noexcept;
    /// The same function moved by dx along x.
    [[nodiscard]] HalfSiding shifted(double dx) const;
    /// The same function with `dy` mm added everywhere.
    [[nodiscard]] HalfSiding widened(double dy) const;

private:
    double m_constant = 0.0;
    std::vector<std::array<double, 2>> m_points;
    std::vector<double> m_slopes;
};

/// A line across the hull that bounds a part of it instead of the sheer: v over x, cubic between nodes of
/// known slope, straight beyond the ends.
class UpperEdge {
public:
    struct Node {
        double x = 0.0, v = 0.0, slope = 0.0; ///< mm; dv/dx
    };
    /// @param nodes  two or more, x strictly increasing
    explicit UpperEdge(std::vector<Node> nodes) : m_nodes(std::move(nodes)) {}

    [[nodiscard]] double at(double x) const noexcept;
    [[nodiscard]] double slopeAt(double x) const noexcept;

private:
    std::vector<Node> m_nodes;
};

/// The functions whose zero lines bound the hull on its surface; each is positive inside, in mm.
class Trims {
public:
    HalfSiding siding;
    std::optional<TransomPlane> bow, stern;
    std::optional<UpperEdge> upper; ///< takes the sheer's place: of a bottom planked by itself

    [[nodiscard]] double value(Trim trim, double v, const Eigen::Vector3d& p) const noexcept;
    /// Derivatives of the value with respect to the surface's parameters.
    [[nodiscard]] Eigen::Vector2d gradient(Trim trim, const SurfaceJet& jet) const;
    /// The trim that is violated most at this point, or None.
    [[nodiscard]] Trim violated(double v, const Eigen::Vector3d& p) const noexcept;
};

/// The edge of the hull on its surface, found by marching along the zero lines from amidships outward, so
/// that the surface's extension, which may come back to the centreplane far outside, is never taken for hull.
struct HullOutline {
    std::vector<Eigen::Vector2d> sheer;   ///< (u, 0) bow to stern, u increasing
    std::vector<Eigen::Vector2d> profile; ///< (u, v) along the centreplane contour, bow to stern
    HullRegion region;
    bool bowClosed = true; ///< the contour meets the sheer there (no transom)
    bool sternClosed = true;
};

/// @return the outline, or in words why the surface has none (the contour does not close inside the domain)
[[nodiscard]] Expected<HullOutline, std::string> traceOutline(const TensorSurface& surface,
                                                              const Trims& trims);

/// Area of the hull inside its outline, mm2, by Green's theorem on the parameter polygon.
[[nodiscard]] double areaInside(const TensorSurface& surface, const HullRegion& region);

} // namespace sheerlay::geometry

#pragma once

#include "core/afloat/float_body.hpp"

#include <Eigen/Core>

namespace sheerlay::core {

/// Still water as the boat sees it: the plane n . P = level, with n = up(). Water lies where n . P < level.
struct WaterPlane {
    double level = 0.0; ///< mm above the base line's origin, along up()
    double trim = 0.0;  ///< rad, + stern down
    double heel = 0.0;  ///< rad, + starboard down

    [[nodiscard]] Eigen::Vector3d up() const noexcept;
    [[nodiscard]] Eigen::Vector3d upByTrim() const noexcept; ///< derivative of up() by trim
    [[nodiscard]] Eigen::Vector3d upByHeel() const noexcept; ///< derivative of up() by heel
    /// Across the boat, in the water's plane, to starboard.
    [[nodiscard]] Eigen::Vector3d across() const noexcept;
    /// Aft, in the water's plane, square to across().
    [[nodiscard]] Eigen::Vector3d aft() const noexcept;
    /// mm above the water.
    [[nodiscard]] double height(const Eigen::Vector3d& p) const noexcept { return up().dot(p) - level; }
};

/// What lies under water, and the water's plane inside the hull. Points and moments in the boat's own frame.
struct Submerged {
    double volume = 0.0;                                    ///< mm3
    Eigen::Vector3d centre = Eigen::Vector3d::Zero();       ///< mm, of buoyancy; zero without volume
    double wettedSkin = 0.0;                                ///< mm2, of the planking, both sides
    double wettedTransom = 0.0;                             ///< mm2, of transoms' own faces
    double largestSection = 0.0;                            ///< mm2, of the sections x = const
    double plane = 0.0;                                     ///< mm2, area of the waterplane
    Eigen::Vector3d planeCentre = Eigen::Vector3d::Zero();  ///< mm, centre of flotation
    Eigen::Matrix3d planeInertia = Eigen::Matrix3d::Zero(); ///< mm4, integral of r r^T about its centre
    double bowX = 0.0, sternX = 0.0; ///< mm, ends of the water line, in the boat's frame
    double length = 0.0;             ///< mm, of the water line, along the water
    double beam = 0.0;               ///< mm, largest across the water line
};

/// Integrates the body under a water plane.
/// @accuracy  tests/core/afloat/submerged_test.cpp: closed forms of five hulls
[[nodiscard]] Submerged submerged(const FloatBody& body, const WaterPlane& water);

/// mm above the water of the sheer where it is lowest, either side; negative where water comes over it.
struct Freeboard {
    double height = 0.0; ///< mm
    Eigen::Vector3d at = Eigen::Vector3d::Zero();
};
[[nodiscard]] Freeboard leastFreeboard(const FloatBody& body, const WaterPlane& water);

/// mm below the water of the hull's deepest point; 0 where nothing reaches the water.
[[nodiscard]] double draught(const FloatBody& body, const WaterPlane& water);

} // namespace sheerlay::core

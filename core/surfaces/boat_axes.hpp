#pragma once

#include "core/offsets/table_corrections.hpp"
#include "core/units/length.hpp"
#include "geometry/expected.hpp"
#include "geometry/mesh.hpp"

#include <Eigen/Core>

#include <string>
#include <vector>

namespace sheerlay::core {

/// How a boat lies in a designer's file.
struct BoatAxes {
    enum class Given { Whole, Half };

    Eigen::Vector3d aft = Eigen::Vector3d::UnitX(); ///< each along one axis of the file
    Eigen::Vector3d side =
        Eigen::Vector3d::UnitY(); ///< from the centreplane outward to the half that is used
    Eigen::Vector3d up = Eigen::Vector3d::UnitZ();
    double foremost = 0.0; ///< mm along `aft`: the boat's foremost point
    double centre = 0.0;   ///< mm along `side`: the centreplane
    Given given = Given::Whole;
    double uneven = 0.0;           ///< mm, the farthest that port and starboard differ; 0 for a half
    std::vector<std::string> said; ///< how it was found, in whole sentences

    /// Into the boat's own frame: x aft from the foremost point, y out from the centreplane, z up; heights
    /// stay the file's.
    [[nodiscard]] Eigen::Vector3d inBoat(const Eigen::Vector3d& p) const {
        return {p.dot(aft) - foremost, p.dot(side) - centre, p.dot(up)};
    }
};

/// Finds the boat in the mesh: length is the longest extent; the centreplane is the plane in whose image the
/// sections repeat, or the plane that every section of a half ends on; up is from there to the open side.
/// Where several ways remain, z is up, and the end with a transom, else the far end of the axis, is the
/// stern. What the builder says goes first.
/// @param corrections  bow, up and centre are heeded
/// @return  the axes, or what is neither a whole nor a half
[[nodiscard]] Expected<BoatAxes, LengthError> boatAxes(const geometry::Mesh& mesh,
                                                       const TableCorrections& corrections);

} // namespace sheerlay::core

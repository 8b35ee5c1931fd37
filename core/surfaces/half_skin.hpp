#pragma once

#include "core/project/message.hpp"
#include "core/surfaces/boat_axes.hpp"
#include "geometry/expected.hpp"
#include "geometry/given_faces.hpp"

#include <Eigen/Core>

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// A flat transom as the file gives it: x where its plane meets the sheer and the keel's line.
struct GivenTransom {
    double xAtSheer = 0.0, xAtKeel = 0.0; ///< mm
};

/// One half of a given hull in the boat's own frame (x aft, y outward, z up, mm), without decks, transoms and
/// what lies in the centreplane.
struct HalfSkin {
    geometry::Mesh mesh;                ///< one piece, no holes
    std::vector<Eigen::Vector3d> sheer; ///< its upper edge, bow to stern
    std::vector<Eigen::Vector3d> lower; ///< its lower edge along stem and keel, bow to stern
    std::optional<GivenTransom> bow, stern;
    std::vector<std::string> said; ///< which faces were taken and left out, in whole sentences
};

/// Takes the hull's skin out of a file's faces.
/// @param faces  those that count, by their place in the file from 0; empty: all, those recognised as deck,
/// transom or lying in the centreplane left out
/// @param siding  mm from the centreplane, where the planking ends; 0: on it
/// @return  the skin, or what is in the way: not a hull, open seams and holes with their size and place
[[nodiscard]] Expected<HalfSkin, LengthError> halfSkin(const geometry::GivenFaces& given,
                                                       const BoatAxes& axes,
                                                       const std::vector<std::size_t>& faces,
                                                       double siding = 0.0);

} // namespace sheerlay::core

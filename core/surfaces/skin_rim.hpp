#pragma once

#include "core/surfaces/half_skin.hpp"
#include "core/units/length.hpp"
#include "geometry/expected.hpp"

#include <Eigen/Core>

#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// The edge of half a hull, told apart.
struct SkinRim {
    std::vector<Eigen::Vector3d> sheer; ///< bow to stern
    std::vector<Eigen::Vector3d> lower; ///< along stem and keel, bow to stern
    std::optional<GivenTransom> bow, stern;
    std::vector<std::string> said; ///< of the transoms, in whole sentences
};

/// Splits the edge of half a hull into sheer, stem and keel, and transoms.
/// @param rim     closed: its last point is its first; boat's own frame, mm
/// @param length  mm, of the boat
/// @return        the parts, or what is in the way: an edge that is cut into, a transom that is not flat
[[nodiscard]] Expected<SkinRim, LengthError> splitRim(const std::vector<Eigen::Vector3d>& rim, double length);

} // namespace sheerlay::core

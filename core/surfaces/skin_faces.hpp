#pragma once

#include "geometry/given_faces.hpp"

#include <Eigen/Core>

#include <cstddef>
#include <string>
#include <vector>

namespace sheerlay::core {

/// What a face of a designer's file is to a boat.
enum class FaceRole { Skin, Deck, Transom, InCentreplane };

/// Tells each face's part by its shape and place.
/// @param given  its mesh already in the boat's own frame, x aft from 0, y out from the centreplane, z up
[[nodiscard]] std::vector<FaceRole> faceRoles(const geometry::GivenFaces& given);

/// "faces 2 and 5", counted from 1 as they stand in the file.
[[nodiscard]] std::string faceList(const std::vector<std::size_t>& faces);

} // namespace sheerlay::core

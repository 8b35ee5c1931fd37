#pragma once

#include "geometry/expected.hpp"
#include "geometry/given_faces.hpp"

#include <stop_token>
#include <string>
#include <string_view>

namespace sheerlay::geometry {

/// Why a file gave no faces.
struct SurfaceFileProblem {
    std::string found; ///< what was found
    std::string would; ///< what would do
};

/// Reads every face of a STEP or IGES file, told apart by what they begin with. The file's own unit is taken
/// into account. Edges that lie within 1/50000 of the boat's size of each other are joined; triangles follow
/// their surfaces to about a millionth of it. Prints nothing. The reading is done in a process of its own,
/// since a broken file can bring OpenCASCADE's readers down; it is given up after ten minutes, or when asked
/// to stop.
/// @return  the faces, or what stood in the way
/// @accuracy  tests/geometry/occt/surface_file_test.cpp: points on the surface, `chord` within 0.02 mm on a
/// hull of 4.7 m
[[nodiscard]] Expected<GivenFaces, SurfaceFileProblem> readSurfaceFile(const std::string& path,
                                                                       std::stop_token stop = {});

} // namespace sheerlay::geometry

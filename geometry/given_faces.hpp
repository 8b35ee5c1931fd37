#pragma once

#include "geometry/mesh.hpp"

#include <string>
#include <vector>

namespace sheerlay::geometry {

/// One face of a designer's file.
struct GivenFace {
    double area = 0.0; ///< mm2
    bool flat = false; ///< a plane
};

/// The faces of a file that describes surfaces, as triangles in the file's own axes. Points lie on the
/// surfaces; faces share their points along edges that were joined. Which way a triangle turns says nothing.
struct GivenFaces {
    Mesh mesh;                           ///< mm
    std::vector<int> faceOf;             ///< per triangle, index into `faces`
    std::vector<GivenFace> faces;        ///< in the order of the file
    double unit = 1.0;                   ///< mm of one unit as the file counts
    std::string unitName = "millimetre"; ///< as the file calls it
    double joinedWithin = 0.0;           ///< mm, edges nearer to each other than this were joined
    double chord = 0.0; ///< mm, the farthest that the middle of a triangle lies off its surface
    int solids = 0;     ///< closed bodies in the file
};

} // namespace sheerlay::geometry

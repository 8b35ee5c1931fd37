#pragma once

#include "geometry/given_faces.hpp"

#include <TopoDS_Shape.hxx>

namespace sheerlay::geometry {

/// Turns the faces of a shape into triangles and puts them into `given`, together with the faces' areas.
/// Faces that share an edge share its points.
/// @param size  mm, of the whole; triangles stay within about a quarter of a millionth of it
/// @return      whether there is a triangle
/// @throws Standard_Failure  from OpenCASCADE's mesher
[[nodiscard]] bool addTriangles(const TopoDS_Shape& shape, double size, GivenFaces& given);

} // namespace sheerlay::geometry

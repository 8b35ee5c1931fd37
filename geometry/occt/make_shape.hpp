#pragma once

#include "geometry/shapes.hpp"

#include <TopoDS_Shape.hxx>

namespace sheerlay::geometry {

/// The shape in OpenCASCADE's terms, mm: a face, or for a bar or a board a closed solid that faces outward.
/// @throws std::runtime_error  OpenCASCADE could not build it; what() says what and why
[[nodiscard]] TopoDS_Shape makeShape(const NamedShape& shape);

} // namespace sheerlay::geometry

#pragma once

#include "geometry/tensor_surface.hpp"

namespace sheerlay::geometry {

/// The surface at `distance` mm along the normal (outward positive), as a spline over the same parameters,
/// fitted by least squares through a fine grid of exact offset points. Both sides of a crease are led on or
/// cut back to the line where their offsets meet; the crease keeps its parameter v > 0, and v = 0 stays the
/// offset of v = 0.
/// @param refine  the result has `refine` times the spans of the original in each direction
/// @accuracy      tests/geometry/offset_surface_test.cpp
[[nodiscard]] TensorSurface offsetSurface(const TensorSurface& surface, double distance, int refine = 2);

} // namespace sheerlay::geometry

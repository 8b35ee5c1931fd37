#pragma once

#include "core/outlines/drawing.hpp"
#include "core/outlines/dxf_entities.hpp"

#include <span>
#include <vector>

namespace sheerlay::core {

/// Points on the curve that an entity draws, in the axes it stands in: LINE, ARC, ELLIPSE, SPLINE,
/// LWPOLYLINE, and POLYLINE by its vertices. Empty where it draws none.
/// @param vertices  the VERTEX entities that follow a POLYLINE
[[nodiscard]] std::vector<DrawnPoint> dxfCurve(const DxfEntity& entity,
                                               std::span<const DxfEntity> vertices = {});

/// Whether an entity is not drawn flat, seen along z.
[[nodiscard]] bool leavesThePlane(const DxfEntity& entity);

/// Drawn seen from behind: its x runs the other way.
[[nodiscard]] bool seenFromBehind(const DxfEntity& entity);

} // namespace sheerlay::core

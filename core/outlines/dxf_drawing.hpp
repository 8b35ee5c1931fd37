#pragma once

#include "core/outlines/drawing.hpp"
#include "core/project/message.hpp"
#include "geometry/expected.hpp"

#include <string>
#include <string_view>

namespace sheerlay::core {

/// The curves of a DXF text: lines, arcs, ellipses, polylines of both kinds with their bulges, splines, and
/// those of blocks wherever they are inserted. Everything else, and what stands on a layer that is off or
/// frozen, is counted as left out. A curve's groups are its layer, unless that is a block's 0, then
/// each block it stands in with the layer that was inserted on.
/// @param file  only for messages
/// @return      the drawing, or why the text is none (binary DXF, broken pairs, curves that leave the plane,
///              blocks without end)
[[nodiscard]] Expected<Drawing, FileMessage> readDxf(std::string_view text, const std::string& file);

} // namespace sheerlay::core

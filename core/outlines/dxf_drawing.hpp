#pragma once

#include "core/outlines/drawing.hpp"
#include "core/project/message.hpp"
#include "geometry/expected.hpp"

#include <string>
#include <string_view>

namespace sheerlay::core {

/// The curves of a DXF text: lines, arcs, polylines of both kinds with their bulges, splines. Everything
/// else, and what stands on a layer that is off or frozen, is counted as left out. Each curve's group is its
/// layer.
/// @param file  only for messages
/// @return      the drawing, or why the text is none (binary DXF, broken pairs, curves that leave the plane)
[[nodiscard]] Expected<Drawing, FileMessage> readDxf(std::string_view text, const std::string& file);

} // namespace sheerlay::core

#pragma once

#include "core/outlines/drawing.hpp"
#include "core/project/message.hpp"
#include "geometry/expected.hpp"

#include <string>
#include <string_view>

namespace sheerlay::core {

/// The curves of an SVG text: path, polyline, polygon and line with every transform around them, y turned
/// up. Everything else that would be seen is counted as left out. A curve's groups are the labels or ids of
/// itself and the groups around it. What is hidden is left out. Millimetres are known where the drawing's
/// width is in mm, cm or in.
/// @param file  only for messages
[[nodiscard]] Expected<Drawing, FileMessage> readSvg(std::string_view text, const std::string& file);

} // namespace sheerlay::core

#pragma once

#include "core/outlines/drawing.hpp"

#include <string_view>
#include <vector>

namespace sheerlay::core {

/// The curves of a path's `d` as SVG writes it, every command of it; each stretch that begins with a move is
/// one curve. y runs down as in the text. Reading ends where the text breaks the rules, as SVG asks.
/// @source  SVG 1.1 (W3C), 8.3 "Path data" and appendix F.6 for arcs
[[nodiscard]] std::vector<std::vector<DrawnPoint>> svgPath(std::string_view d);

/// Numbers with blanks or commas between them, as in `points` and `transform`.
[[nodiscard]] std::vector<double> svgNumbers(std::string_view text);

} // namespace sheerlay::core

#pragma once

#include "core/sheets/drawing.hpp"

#include <string>
#include <string_view>

namespace sheerlay::core {

/// A sheet as SVG, its size in mm and one user unit to the millimetre; text stays text, lines keep their
/// width and dashes. The same sheet gives the same bytes.
[[nodiscard]] std::string toSvg(const Sheet& sheet);

/// Text for an XML file: & < > and quotes written out.
[[nodiscard]] std::string xmlText(std::string_view text);

} // namespace sheerlay::core

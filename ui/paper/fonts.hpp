#pragma once

#include "core/sheets/drawing.hpp"

#include <QFont>

namespace sheerlay::ui {

/// Loads the built-in typeface into Qt's font database, once per process. Needs a QGuiApplication; platform
/// "minimal" has no fonts and fails here.
/// @throws std::runtime_error  the family is missing afterwards: every text would be a black box
void loadFonts();

/// The built-in typeface in one of its three weights.
/// @param pixels  size of type in units of the painter, >= 1
[[nodiscard]] QFont sheetFont(core::Weight weight, int pixels);

} // namespace sheerlay::ui

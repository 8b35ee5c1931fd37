#pragma once

#include "core/sheets/drawing.hpp"

#include <QImage>

class QPainter;

namespace sheerlay::ui {

/// Paints a sheet for print or preview. The painter's unit must be one millimetre, its origin the sheet's
/// upper left corner; the painter comes back as it was.
void paint(QPainter& painter, const core::Sheet& sheet);

/// A picture of a sheet on white.
/// @param pixelsPerMm  > 0
[[nodiscard]] QImage picture(const core::Sheet& sheet, double pixelsPerMm);

} // namespace sheerlay::ui

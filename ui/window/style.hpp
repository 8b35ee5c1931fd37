#pragma once

#include <QIcon>

class QApplication;

namespace sheerlay::ui {

/// Dresses the application: palette, typeface at 13 px, quiet controls. Call once, before widgets are made.
void dress(QApplication& application);

/// Our own small icons: 2 px lines on a 24 px grid.
enum class Icon { Lines, Moulds, Planking, Stock, Sheets, Folder, Picture, Journal, FittingOut };
[[nodiscard]] QIcon icon(Icon which);

} // namespace sheerlay::ui

#pragma once

#include <QStringList>

class QTableWidget;

namespace sheerlay::ui {

/// Makes a table one to read: words to the left in the first column, figures to the right in the others, each
/// head over what it heads. Nothing is edited in it; Tab reaches it and leaves it again.
void setFigures(QTableWidget& table, const QStringList& heads);

} // namespace sheerlay::ui

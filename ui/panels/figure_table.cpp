#include "ui/panels/figure_table.hpp"

#include <QHeaderView>
#include <QTableWidget>

namespace sheerlay::ui {

void setFigures(QTableWidget& table, const QStringList& heads) {
    table.setColumnCount(static_cast<int>(heads.size()));
    table.setHorizontalHeaderLabels(heads);
    for (int column = 0; column < table.columnCount(); ++column)
        table.horizontalHeaderItem(column)->setTextAlignment(Qt::AlignVCenter |
                                                             (column == 0 ? Qt::AlignLeft : Qt::AlignRight));
    table.horizontalHeader()->setHighlightSections(false);
    table.verticalHeader()->hide();
    table.setEditTriggers(QAbstractItemView::NoEditTriggers);
    table.setSelectionBehavior(QAbstractItemView::SelectRows);
    table.setSelectionMode(QAbstractItemView::SingleSelection);
    table.setTabKeyNavigation(false);
    table.setFocusPolicy(Qt::TabFocus);
    table.setShowGrid(false);
    table.setFrameShape(QFrame::NoFrame);
}

} // namespace sheerlay::ui

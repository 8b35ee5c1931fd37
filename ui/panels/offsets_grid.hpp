#pragma once

#include "core/table_edit/paste_cells.hpp"

#include <QString>
#include <QTableView>

#include <optional>

class QMenu;

namespace sheerlay::ui {

class OffsetsModel;

/// The grid of the table of offsets, worked like any spreadsheet: typing replaces, F2 or a double click
/// opens, Enter goes down, Tab along; Ctrl+C, Ctrl+X and Ctrl+V, Ctrl+D fills down, Ctrl+R along, Delete
/// clears.
class OffsetsGrid : public QTableView {
    Q_OBJECT
public:
    explicit OffsetsGrid(QWidget* parent = nullptr);

    [[nodiscard]] OffsetsModel* offsets() const noexcept { return m_model; }
    /// The chosen cells, as the block around them; none where nothing is chosen.
    [[nodiscard]] std::optional<core::GridBlock> block() const;

    void copy();
    void cut();
    void paste();
    void fill(core::FillWay way);
    /// Empties the chosen cells; of a cell with an entry that can't stand, that entry only.
    void clearCells();
    /// The fair value of a doubted number, kept beside the printed one.
    void takeFair();
    /// What was meant by the likeliest slip, kept beside the printed one.
    void takeLikely();
    /// The printed number of a corrected one again.
    void takePrinted();
    /// Goes to the next doubtful number, round and round; to the sheer of the first station where there is
    /// none.
    void chooseDoubtful();
    /// What the menu of a cell would hold; for tests too.
    void fillMenu(QMenu& menu);

Q_SIGNALS:
    /// The cell to tell of has changed, or what there is to tell of it.
    void told();
    /// What could not be done with the whole of what was asked, in words.
    void said(const QString& text);

protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;

private:
    void correct(const QString& text);

    OffsetsModel* m_model;
};

} // namespace sheerlay::ui

#include "ui/panels/offsets_grid.hpp"

#include "ui/panels/offsets_model.hpp"
#include "ui/scene/palette.hpp"
#include "ui/scene/words.hpp"

#include <QApplication>
#include <QClipboard>
#include <QContextMenuEvent>
#include <QHeaderView>
#include <QItemSelection>
#include <QKeyEvent>
#include <QMenu>
#include <QPainter>
#include <QStyledItemDelegate>

#include <algorithm>

namespace sheerlay::ui {
namespace {

/// Cells with their marks: "?" at a doubted number, "!" at an entry that can't stand, a line under a
/// corrected number, a frame about the one in hand.
class CellPainter : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void
    paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        QStyledItemDelegate::paint(painter, option, index);
        painter->save();
        if (index.data(OffsetsModel::DoubtfulRole).toBool() ||
            index.data(OffsetsModel::RefusedRole).toBool()) {
            QFont bold = option.font;
            bold.setBold(true);
            painter->setFont(bold);
            painter->setPen(QColor::fromRgb(palette::hard));
            painter->drawText(option.rect.adjusted(5, 0, 0, 0),
                              Qt::AlignLeft | Qt::AlignVCenter,
                              index.data(OffsetsModel::RefusedRole).toBool() ? QStringLiteral("!")
                                                                             : QStringLiteral("?"));
        }
        if (index.data(OffsetsModel::CorrectedRole).toBool()) {
            painter->setPen(QPen(QColor::fromRgb(palette::cedar), 1.5));
            const QRect r = option.rect.adjusted(4, 2, -4, -2);
            painter->drawLine(r.left() + r.width() / 3, r.bottom(), r.right(), r.bottom());
        }
        if (const auto* view = qobject_cast<const QTableView*>(parent());
            view && view->currentIndex() == index) {
            painter->setPen(QPen(QColor::fromRgb(palette::cedar), 2.0));
            painter->setBrush(Qt::NoBrush);
            painter->drawRect(option.rect.adjusted(1, 1, -1, -1));
        }
        painter->restore();
    }
};

/// Keys that belong to the grid while it has them, and not to the window.
bool isOurs(const QKeyEvent& key) {
    const auto modifiers = key.modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier);
    if (modifiers == Qt::ControlModifier)
        return key.key() == Qt::Key_C || key.key() == Qt::Key_X || key.key() == Qt::Key_V ||
               key.key() == Qt::Key_D || key.key() == Qt::Key_R || key.key() == Qt::Key_A;
    if (modifiers != Qt::NoModifier)
        return false;
    switch (key.key()) {
    case Qt::Key_Left:
    case Qt::Key_Right:
    case Qt::Key_Up:
    case Qt::Key_Down:
    case Qt::Key_Home:
    case Qt::Key_End:
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
    case Qt::Key_F2:
        return true;
    default:
        return !key.text().isEmpty() && key.text().front().isPrint();
    }
}

core::GridCell cellOf(const QModelIndex& index) {
    return {static_cast<std::size_t>(index.row()), static_cast<std::size_t>(index.column())};
}

} // namespace

OffsetsGrid::OffsetsGrid(QWidget* parent) : QTableView(parent), m_model(new OffsetsModel(this)) {
    setModel(m_model);
    setItemDelegate(new CellPainter(this));
    setSelectionMode(QAbstractItemView::ContiguousSelection);
    setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed |
                    QAbstractItemView::AnyKeyPressed);
    setFrameShape(QFrame::NoFrame);
    setAccessibleName(tr("Table of offsets"));
    setObjectName(QStringLiteral("offsets"));
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    verticalHeader()->setDefaultSectionSize(24);
    verticalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    horizontalHeader()->setDefaultSectionSize(64);
    horizontalHeader()->setHighlightSections(false);
    verticalHeader()->setHighlightSections(false);
    setCornerButtonEnabled(false);
    connect(m_model, &QAbstractItemModel::dataChanged, this, &OffsetsGrid::told);
    connect(m_model, &QAbstractItemModel::modelReset, this, &OffsetsGrid::told);
    connect(m_model, &OffsetsModel::refusedChanged, this, &OffsetsGrid::told);
}

std::optional<core::GridBlock> OffsetsGrid::block() const {
    const QItemSelection chosen = selectionModel()->selection();
    if (chosen.isEmpty()) {
        if (!currentIndex().isValid())
            return std::nullopt;
        return core::GridBlock{cellOf(currentIndex()), cellOf(currentIndex())};
    }
    core::GridBlock around{cellOf(chosen.front().topLeft()), cellOf(chosen.front().bottomRight())};
    for (const QItemSelectionRange& range : chosen) {
        const core::GridCell first = cellOf(range.topLeft());
        const core::GridCell last = cellOf(range.bottomRight());
        around.first = {std::min(around.first.line, first.line),
                        std::min(around.first.station, first.station)};
        around.last = {std::max(around.last.line, last.line), std::max(around.last.station, last.station)};
    }
    return around;
}

void OffsetsGrid::copy() {
    if (const auto chosen = block())
        QApplication::clipboard()->setText(
            toQString(core::copiedText(m_model->project(), m_model->lines(), *chosen)));
}

void OffsetsGrid::cut() {
    copy();
    clearCells();
}

void OffsetsGrid::paste() {
    const auto chosen = block();
    if (!chosen)
        return;
    const auto rows = core::pastedRows(QApplication::clipboard()->text().toStdString());
    if (!rows) {
        Q_EMIT said(tr("Nothing was pasted. Found: %1; what would do: %2.")
                        .arg(heardText(rows.error().found), heardText(rows.error().would)));
        return;
    }
    const core::LaidRows laid = core::layRows(*rows,
                                              *chosen,
                                              static_cast<std::size_t>(m_model->rowCount()),
                                              static_cast<std::size_t>(m_model->columnCount()));
    m_model->enter(laid.entries, tr("Paste"));
    if (laid.leftOff > 0)
        Q_EMIT said(tr("%1 of the pasted cells lie outside the table and were left off.").arg(laid.leftOff));
}

void OffsetsGrid::fill(core::FillWay way) {
    if (const auto chosen = block())
        m_model->enter(core::fillEntries(m_model->project(), m_model->lines(), *chosen, way), tr("Fill"));
}

void OffsetsGrid::clearCells() {
    const auto chosen = block();
    if (!chosen)
        return;
    std::vector<core::CellEntry> entries = core::blankEntries(m_model->project(), m_model->lines(), *chosen);
    for (std::size_t line = chosen->first.line; line <= chosen->last.line; ++line)
        for (std::size_t station = chosen->first.station; station <= chosen->last.station; ++station) {
            const QModelIndex cell = m_model->index(static_cast<int>(line), static_cast<int>(station));
            if (!cell.data(OffsetsModel::RefusedRole).toBool())
                continue;
            m_model->giveUp(cell);
            std::erase_if(entries, [&](const core::CellEntry& e) { return e.cell == cellOf(cell); });
        }
    if (!entries.empty())
        m_model->enter(entries, tr("Clear"));
}

void OffsetsGrid::correct(const QString& text) {
    m_model->enter({{cellOf(currentIndex()), text.toStdString(), true}}, QString());
}

void OffsetsGrid::takeFair() {
    if (const auto doubt = m_model->doubt(currentIndex()))
        correct(m_model->printedAs(doubt->fair, currentIndex()));
}

void OffsetsGrid::takeLikely() {
    if (const auto doubt = m_model->doubt(currentIndex()); doubt && doubt->likely)
        correct(m_model->printedAs(*doubt->likely, currentIndex()));
}

void OffsetsGrid::takePrinted() {
    if (const QString printed = m_model->replacedAt(currentIndex()); !printed.isEmpty())
        m_model->enter({{cellOf(currentIndex()), printed.toStdString()}}, QString());
}

void OffsetsGrid::chooseDoubtful() {
    const int columns = m_model->columnCount();
    const int cells = m_model->rowCount() * columns;
    const int from = currentIndex().isValid() ? currentIndex().row() * columns + currentIndex().column() : -1;
    for (int i = 1; i <= cells; ++i) {
        const int cell = (from + i) % cells;
        const QModelIndex at = m_model->index(cell / columns, cell % columns);
        if (at.data(OffsetsModel::DoubtfulRole).toBool()) {
            setCurrentIndex(at);
            return;
        }
    }
    if (cells > 0 && from < 0)
        setCurrentIndex(m_model->index(std::min(1, m_model->rowCount() - 1), 0));
}

void OffsetsGrid::fillMenu(QMenu& menu) {
    const QModelIndex at = currentIndex();
    if (!at.isValid())
        return;
    if (const auto doubt = m_model->doubt(at)) {
        menu.addAction(tr("Take the fair value, %1").arg(m_model->printedAs(doubt->fair, at)),
                       this,
                       &OffsetsGrid::takeFair);
        if (doubt->likely)
            menu.addAction(
                tr("Take %1 (%2)").arg(m_model->printedAs(*doubt->likely, at), toQString(doubt->slip)),
                this,
                &OffsetsGrid::takeLikely);
        menu.addSeparator();
    }
    if (const QString printed = m_model->replacedAt(at); !printed.isEmpty()) {
        menu.addAction(tr("Go back to the printed %1").arg(printed), this, &OffsetsGrid::takePrinted);
        menu.addSeparator();
    }
    const auto add = [&](const QString& text, const QKeySequence& keys, auto act) {
        menu.addAction(text, this, act)->setShortcut(keys);
    };
    add(tr("Copy"), QKeySequence::Copy, [this] { copy(); });
    add(tr("Cut"), QKeySequence::Cut, [this] { cut(); });
    add(tr("Paste"), QKeySequence::Paste, [this] { paste(); });
    add(tr("Fill down"), QKeySequence(Qt::CTRL | Qt::Key_D), [this] { fill(core::FillWay::Down); });
    add(tr("Fill along"), QKeySequence(Qt::CTRL | Qt::Key_R), [this] { fill(core::FillWay::Along); });
    add(tr("Clear"), QKeySequence(Qt::Key_Delete), [this] { clearCells(); });
}

bool OffsetsGrid::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride && isOurs(*static_cast<QKeyEvent*>(event))) {
        event->accept(); // else "3" would open a bench
        return true;
    }
    return QTableView::event(event);
}

void OffsetsGrid::keyPressEvent(QKeyEvent* event) {
    const bool control = event->modifiers() == Qt::ControlModifier;
    if (event->matches(QKeySequence::Copy))
        copy();
    else if (event->matches(QKeySequence::Cut))
        cut();
    else if (event->matches(QKeySequence::Paste))
        paste();
    else if (control && event->key() == Qt::Key_D)
        fill(core::FillWay::Down);
    else if (control && event->key() == Qt::Key_R)
        fill(core::FillWay::Along);
    else if (event->key() == Qt::Key_Delete || event->key() == Qt::Key_Backspace)
        clearCells();
    else
        QTableView::keyPressEvent(event);
}

void OffsetsGrid::contextMenuEvent(QContextMenuEvent* event) {
    QMenu menu(this);
    fillMenu(menu);
    if (!menu.isEmpty())
        menu.exec(event->globalPos());
}

void OffsetsGrid::closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) {
    QTableView::closeEditor(editor, hint);
    if (hint == QAbstractItemDelegate::SubmitModelCache && currentIndex().row() + 1 < m_model->rowCount())
        setCurrentIndex(currentIndex().siblingAtRow(currentIndex().row() + 1));
}

void OffsetsGrid::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QTableView::currentChanged(current, previous);
    Q_EMIT told();
}

} // namespace sheerlay::ui

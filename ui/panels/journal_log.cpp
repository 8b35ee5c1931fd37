#include "ui/panels/journal_log.hpp"

#include "core/project/laid_strips.hpp"
#include "ui/panels/figure_table.hpp"
#include "ui/scene/words.hpp"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace sheerlay::ui {
namespace {

enum Column { What, Day, Note };

QString roundText(const core::RowReading& round) {
    switch (round.side) {
    case core::ReadSide::Starboard:
        return JournalLog::tr("below row %1, starboard").arg(round.row);
    case core::ReadSide::Port:
        return JournalLog::tr("below row %1, port").arg(round.row);
    case core::ReadSide::Both:
        break;
    }
    return JournalLog::tr("below row %1").arg(round.row);
}

} // namespace

JournalLog::JournalLog(QWidget* parent)
    : QWidget(parent), m_none(new QLabel(tr("Nothing is laid or measured yet. Shop mode (F11) marks strips "
                                            "as they go on."))),
      m_lines(new QTableWidget), m_takeOut(new QPushButton(tr("Take out"))) {
    setFigures(*m_lines, {tr("Laid or measured"), tr("Day"), tr("Note, or what the tape said")});
    m_lines->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_lines->horizontalHeader()->setSectionResizeMode(Note, QHeaderView::Stretch);
    m_lines->horizontalHeaderItem(Note)->setTextAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    m_lines->verticalHeader()->setMinimumSectionSize(24);
    m_lines->verticalHeader()->setDefaultSectionSize(24);
    const auto wrapped = [this] { m_lines->resizeRowsToContents(); }; // long readings and notes
    connect(m_lines->horizontalHeader(), &QHeaderView::sectionResized, this, wrapped);
    connect(m_lines, &QTableWidget::cellChanged, this, wrapped);
    m_lines->setFocusPolicy(Qt::StrongFocus);
    m_lines->setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed |
                             QAbstractItemView::AnyKeyPressed);
    m_lines->setAccessibleName(tr("The journal so far"));
    m_none->setWordWrap(true);
    m_takeOut->setToolTip(tr("The line in hand goes out of the journal; Undo brings it back"));
    m_takeOut->setFocusPolicy(Qt::TabFocus);
    connect(m_takeOut, &QPushButton::clicked, this, &JournalLog::takeOut);
    connect(m_lines, &QTableWidget::cellChanged, this, &JournalLog::noted);
    connect(m_lines, &QTableWidget::itemSelectionChanged, this, [this] {
        m_takeOut->setEnabled(m_lines->currentRow() >= 0 && !m_lines->selectedItems().isEmpty());
    });
    m_none->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_none->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Expanding);
    auto* below = new QHBoxLayout;
    below->addStretch(1);
    below->addWidget(m_takeOut);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_none);
    layout->addWidget(m_lines, 1);
    layout->addLayout(below);
    refill();
}

void JournalLog::setJournal(const core::Journal& journal) {
    if (journal == m_journal)
        return;
    m_journal = journal;
    refill();
}

void JournalLog::setUnits(core::Units units) {
    m_units = units;
    refill();
}

bool JournalLog::isStrip(int line) const {
    return line < std::ssize(m_journal.laid);
}

void JournalLog::setLeftOut(WhyLeftOut why) {
    m_leftOut = std::move(why);
    refill();
}

JournalLog::Told JournalLog::told(const core::RowReading& round) const {
    QStringList read, why; // "2-0-0: 300 mm, 3-0-0: 12 mm (left out)"
    for (const core::GirthLeft& left : round.girthLeft) {
        const QString leftOut = m_leftOut ? m_leftOut(round, left) : QString();
        read << (leftOut.isEmpty() ? tr("%1: %2") : tr("%1: %2 (left out)"))
                    .arg(left.printedX.empty() ? lengthText(left.x, m_units) : markedText(left.printedX),
                         left.printedGirth.empty() ? lengthText(left.girth, m_units)
                                                   : markedText(left.printedGirth));
        if (!leftOut.isEmpty())
            why << leftOut;
    }
    return {read.join(QStringLiteral(", ")), why.join(QLatin1Char('\n'))};
}

void JournalLog::refill() {
    m_filling = true;
    m_lines->setRowCount(static_cast<int>(m_journal.laid.size() + m_journal.readings.size()));
    for (int line = 0; line < m_lines->rowCount(); ++line) {
        QStringList cells;
        QString why;
        if (isStrip(line)) {
            const core::LaidStrip& laid = m_journal.laid[static_cast<std::size_t>(line)];
            cells = {tr("%1 laid").arg(toQString(laid.strip)), toQString(laid.date), toQString(laid.note)};
        } else {
            const core::RowReading& round =
                m_journal.readings[static_cast<std::size_t>(line) - m_journal.laid.size()];
            const Told tape = told(round);
            why = tape.why;
            cells = {roundText(round), toQString(round.date), tape.readings};
        }
        for (int column = 0; column < cells.size(); ++column) {
            QTableWidgetItem* item = m_lines->item(line, column);
            if (item == nullptr) // else kept: it may be the one that is just being typed in
                m_lines->setItem(line, column, item = new QTableWidgetItem);
            item->setText(cells[column]);
            item->setToolTip(column != Note            ? QString()
                             : cells[column].isEmpty() ? tr("Type a note on this strip")
                             : why.isEmpty()           ? cells[column]
                                                       : why);
            item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable |
                           (column == Note && isStrip(line) ? Qt::ItemIsEditable : Qt::NoItemFlags));
        }
    }
    m_none->setVisible(m_lines->rowCount() == 0);
    m_lines->setVisible(m_lines->rowCount() > 0);
    m_takeOut->setVisible(m_lines->rowCount() > 0);
    m_lines->clearSelection();
    m_takeOut->setEnabled(false);
    m_filling = false;
}

void JournalLog::noted(int line, int column) {
    if (m_filling || column != Note || !isStrip(line))
        return;
    const core::LaidStrip& laid = m_journal.laid[static_cast<std::size_t>(line)];
    const std::string note = m_lines->item(line, column)->text().trimmed().toStdString();
    if (note == laid.note)
        return;
    const core::Journal next = core::noteOn(m_journal, laid.strip, note);
    Q_EMIT changed(tr("Note on %1").arg(toQString(laid.strip)), next);
}

void JournalLog::takeOut() {
    const int line = m_lines->currentRow();
    if (line < 0 || line >= m_lines->rowCount())
        return;
    core::Journal next = m_journal;
    if (isStrip(line)) {
        const std::string strip = m_journal.laid[static_cast<std::size_t>(line)].strip;
        Q_EMIT changed(tr("%1 not laid").arg(toQString(strip)), core::unmarkLaid(next, strip));
        return;
    }
    const auto at = line - std::ssize(m_journal.laid);
    const QString name =
        tr("Without the reading below row %1").arg(next.readings[static_cast<std::size_t>(at)].row);
    next.readings.erase(next.readings.begin() + at);
    Q_EMIT changed(name, next);
}

} // namespace sheerlay::ui

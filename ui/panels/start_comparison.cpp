#include "ui/panels/start_comparison.hpp"

#include "core/units/length.hpp"
#include "ui/panels/figure_table.hpp"
#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QTableWidget>
#include <QToolButton>
#include <QVBoxLayout>

#include <cmath>

namespace sheerlay::ui {
namespace {

QString lineName(const core::StartLine& line, core::Units units) {
    switch (line.kind) {
    case core::StartLine::Kind::Sheer:
        return Wording::tr("along the sheer");
    case core::StartLine::Kind::Knuckle:
        return Wording::tr("along the knuckle");
    case core::StartLine::Kind::Geodesic:
        return Wording::tr("unbent, %1 down").arg(lengthText(line.girth, units, {8, 0}));
    default:
        return Wording::tr("bent, %1 down").arg(lengthText(line.girth, units, {8, 0}));
    }
}

QString totalText(double millimetres, core::Units units) {
    return units == core::Units::Inches
               ? QStringLiteral("%1 ft").arg(std::round(millimetres / core::mmPerFoot))
               : QStringLiteral("%1 m").arg(std::round(millimetres / 1000.0));
}

} // namespace

StartComparison::StartComparison(QWidget* parent)
    : QWidget(parent), m_head(new QLabel), m_table(new QTableWidget), m_take(new QToolButton) {
    setFigures(*m_table,
               {Wording::tr("Start"),
                Wording::tr("Hardest edge bend"),
                Wording::tr("Rows to clamp"),
                Wording::tr("Pieces above"),
                Wording::tr("Rows to taper"),
                Wording::tr("Strip to cut"),
                Wording::tr("Last plank")});
    const QStringList meanings{
        Wording::tr("The line the first strip follows"),
        Wording::tr("Of any strip at full width, and the row it is in"),
        Wording::tr("Rows a side that need more than hands, tapers left out"),
        Wording::tr("Short pieces a side between the start and the sheer; in brackets those under 6 mm wide"),
        Wording::tr("Rows a side to plane narrower, so that no strip is bent past the limit"),
        Wording::tr("All pieces of both sides together"),
        Wording::tr("Where it is widest")};
    for (int i = 0; i < meanings.size(); ++i)
        m_table->horizontalHeaderItem(i)->setToolTip(meanings[i]);
    m_table->verticalHeader()->setDefaultSectionSize(24);
    m_table->setMinimumHeight(130); // four lines and their heads
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    for (const int words : {0, 1}) // the others hold a number each
        m_table->horizontalHeader()->setSectionResizeMode(words, QHeaderView::ResizeToContents);
    m_table->setAccessibleName(Wording::tr("Start lines side by side"));
    m_table->setToolTip(Wording::tr("What each start line asks of you; choose one, then Start here"));
    m_head->setStyleSheet(QStringLiteral("font-weight: 600;"));
    m_take->setText(Wording::tr("Start here"));
    m_take->setToolTip(Wording::tr("Plank her from the chosen line"));
    auto* close = new QToolButton;
    close->setText(Wording::tr("Put away"));
    close->setToolTip(Wording::tr("The start stays as it is"));
    for (QToolButton* button : {m_take, close})
        button->setFocusPolicy(Qt::TabFocus);
    connect(close, &QToolButton::clicked, this, &StartComparison::closed);
    connect(m_take, &QToolButton::clicked, this, [this] {
        const int row = m_table->currentRow();
        if (row >= 0 && row < std::ssize(m_rows))
            Q_EMIT chosen(m_rows[static_cast<std::size_t>(row)].line);
    });
    connect(m_table, &QTableWidget::itemSelectionChanged, this, [this] {
        m_take->setEnabled(!m_table->selectedItems().isEmpty());
    });
    auto* top = new QHBoxLayout;
    top->addWidget(m_head, 1);
    top->addWidget(m_take);
    top->addWidget(close);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(12, 6, 8, 6);
    layout->setSpacing(4);
    layout->addLayout(top);
    layout->addWidget(m_table, 1);
    wait(QString());
}

void StartComparison::wait(const QString& text) {
    m_rows.clear();
    m_table->setRowCount(0);
    m_head->setText(text);
    m_take->setEnabled(false);
}

void StartComparison::show(std::vector<core::StartTableRow> rows, const core::StartLine& inUse) {
    m_rows = std::move(rows);
    m_inUse = inUse;
    m_head->setText(Wording::tr("Start lines side by side, no strip tapered"));
    refill();
}

void StartComparison::setUnits(core::Units units) {
    m_units = units;
    refill();
}

void StartComparison::refill() {
    m_table->setRowCount(static_cast<int>(m_rows.size()));
    for (int i = 0; i < m_table->rowCount(); ++i) {
        const core::StartTableRow& row = m_rows[static_cast<std::size_t>(i)];
        const bool used = row.line == m_inUse;
        const QStringList cells{lineName(row.line, m_units) + (used ? Wording::tr(" · now") : QString()),
                                Wording::tr("%1, row %2").arg(sagText(row.worst, m_units)).arg(row.worstRow),
                                QString::number(row.rowsOverFree),
                                row.slivers > 0 ? QStringLiteral("%1 (%2)").arg(row.fillers).arg(row.slivers)
                                                : QString::number(row.fillers),
                                row.tapered ? QString::number(*row.tapered) : Wording::tr("can't be met"),
                                totalText(row.stripLength, m_units),
                                lengthText(row.shutter, m_units)};
        for (int column = 0; column < cells.size(); ++column) {
            auto* item = new QTableWidgetItem(cells[column]);
            item->setTextAlignment(Qt::AlignVCenter | (column == 0 ? Qt::AlignLeft : Qt::AlignRight));
            QFont font = m_table->font();
            font.setWeight(used ? QFont::DemiBold : QFont::Normal);
            item->setFont(font);
            m_table->setItem(i, column, item);
        }
    }
}

} // namespace sheerlay::ui

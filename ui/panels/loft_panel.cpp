#include "ui/panels/loft_panel.hpp"

#include "ui/panels/findings_list.hpp"
#include "ui/scene/boat.hpp"
#include "ui/scene/palette.hpp"
#include "ui/scene/words.hpp"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QTableWidget>
#include <QVBoxLayout>

#include <cmath>

namespace sheerlay::ui {
namespace {

/// Departures are told finer than lengths: tenths of a millimetre, or hundredths of an inch.
QString departure(double millimetres, core::Units units, bool sign) {
    const double value = units == core::Units::Inches ? millimetres / 25.4 : millimetres;
    const QString number = QString::number(std::abs(value), 'f', units == core::Units::Inches ? 3 : 1);
    const QString unit = units == core::Units::Inches ? QStringLiteral(" in") : QStringLiteral(" mm");
    const QString mark = !sign ? QString() : value < 0 ? QStringLiteral("−") : QStringLiteral("+");
    return mark + number + unit;
}

} // namespace

LoftPanel::LoftPanel(QWidget* parent)
    : QWidget(parent), m_summary(new QLabel(this)), m_table(new QTableWidget(this)),
      m_findingsHead(new QLabel(this)), m_findings(new FindingsList(this)) {
    m_summary->setWordWrap(true);
    m_summary->setStyleSheet(QStringLiteral("font-size: 15px;"));
    m_table->setColumnCount(5);
    m_table->setHorizontalHeaderLabels({QStringLiteral("Station"),
                                        QStringLiteral("From the bow"),
                                        QStringLiteral("Points"),
                                        QStringLiteral("Average off"),
                                        QStringLiteral("Most off")});
    m_table->verticalHeader()->hide();
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setFocusPolicy(Qt::NoFocus);
    m_table->setShowGrid(false);
    m_table->setAlternatingRowColors(true);
    m_table->setFrameShape(QFrame::NoFrame);
    m_findingsHead->setStyleSheet(QStringLiteral("font-size: 15px; font-weight: 600;"));

    auto* left = new QVBoxLayout;
    left->addWidget(m_summary);
    left->addSpacing(8);
    left->addWidget(m_table, 1);
    auto* rightSide = new QVBoxLayout;
    rightSide->addWidget(m_findingsHead);
    rightSide->addWidget(m_findings, 1);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(20, 16, 20, 16);
    layout->setSpacing(24);
    layout->addLayout(left, 3);
    layout->addLayout(rightSide, 2);
    refill();
}

void LoftPanel::setBoat(std::shared_ptr<const Boat> boat) {
    m_boat = std::move(boat);
    refill();
}

void LoftPanel::setUnits(core::Units units) {
    m_units = units;
    m_findings->setUnits(units);
    refill();
}

void LoftPanel::refill() {
    m_table->setRowCount(0);
    if (!m_boat) {
        m_summary->setText(
            QStringLiteral("Open a project, and this bench shows how its table of offsets was lofted."));
        m_findingsHead->clear();
        m_findings->setFindings({});
        return;
    }
    const core::LoftedHull& hull = m_boat->hull;
    m_summary->setText(
        QStringLiteral(
            "The lofted hull is %1 long and %2 wide. It runs within %3 of the table on average and %4 at "
            "most; rounding in the table alone accounts for %5. In the last column + is outside the loft, − "
            "inside.")
            .arg(lengthText(hull.drawn.length, m_units),
                 lengthText(hull.drawn.beam, m_units),
                 departure(hull.residualRms, m_units, false),
                 departure(std::abs(hull.residualMax), m_units, false),
                 departure(hull.roundingSigma, m_units, false)));
    m_table->setRowCount(static_cast<int>(hull.residuals.size()));
    int row = 0;
    for (const core::StationResidual& residual : hull.residuals) {
        const bool station = static_cast<std::size_t>(row) < hull.stationX.size();
        const QStringList cells{toQString(residual.station),
                                station ? lengthText(residual.x, m_units) : QString(),
                                QString::number(residual.points),
                                departure(residual.rms, m_units, false),
                                departure(residual.max, m_units, true)};
        for (int column = 0; column < cells.size(); ++column) {
            auto* item = new QTableWidgetItem(cells[column]);
            item->setTextAlignment(Qt::AlignVCenter | (column == 0 ? Qt::AlignLeft : Qt::AlignRight));
            if (column == 4 && std::abs(residual.max) > 4.0 * hull.roundingSigma && hull.roundingSigma > 0.0)
                item->setForeground(QColor::fromRgb(palette::hard));
            m_table->setItem(row, column, item);
        }
        ++row;
    }
    m_findings->setFindings(hull.findings);
    m_findingsHead->setText(hull.findings.empty()
                                ? QStringLiteral("Nothing odd was found in the table")
                                : QStringLiteral("Found in the table: %1").arg(m_findings->summary()));
}

} // namespace sheerlay::ui

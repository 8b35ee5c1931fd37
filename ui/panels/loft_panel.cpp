#include "ui/panels/loft_panel.hpp"

#include "ui/panels/figure_table.hpp"
#include "ui/panels/findings_list.hpp"
#include "ui/panels/typed_field.hpp"
#include "ui/scene/palette.hpp"
#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QTableWidget>
#include <QVBoxLayout>

#include <cmath>
#include <utility>

namespace sheerlay::ui {
LoftPanel::LoftPanel(QWidget* parent)
    : QWidget(parent), m_summary(new QLabel(this)), m_fairing(new TypedField(TypedField::Kind::Number)),
      m_table(new QTableWidget(this)), m_findingsHead(new QLabel(this)), m_findings(new FindingsList(this)) {
    m_summary->setWordWrap(true);
    setFigures(*m_table,
               {Wording::tr("Station"),
                Wording::tr("From bow"),
                Wording::tr("Points"),
                Wording::tr("Mean off"),
                Wording::tr("Most off")});
    m_table->setAccessibleName(tr("How the loft meets the table, station by station"));
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_table->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
    m_table->setAlternatingRowColors(true);
    m_findingsHead->setStyleSheet(QStringLiteral("font-size: 15px; font-weight: 600;"));

    m_table->verticalHeader()->setDefaultSectionSize(22);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 12, 12, 8);
    layout->setSpacing(8);
    layout->addWidget(m_summary);
    layout->addLayout(makeFairing());
    layout->addWidget(m_findingsHead);
    layout->addWidget(m_findings, 3);
    layout->addWidget(m_table, 4);
    refill();
}

QLayout* LoftPanel::makeFairing() {
    m_fairing->setAccessibleName(tr("Part of the rounding"));
    m_fairing->setToolTip(
        tr("How far the loft may miss the table on average, in parts of what rounding alone accounts for: %1 "
           "follows the numbers, %2 is as fair as their rounding allows")
            .arg(markedText(QString::number(core::leastFairing).toStdString()),
                 markedText(QString::number(core::mostFairing).toStdString())));
    m_fairing->setFixedWidth(64);
    connect(m_fairing, &TypedField::decided, this, [this](std::optional<double> value) {
        Q_EMIT fairingAsked(value.value_or(core::usualFairing));
    });
    connect(m_fairing, &TypedField::refused, this, &LoftPanel::refused);
    auto* row = new QHBoxLayout;
    row->addWidget(new QLabel(tr("Fair to within")));
    row->addWidget(m_fairing);
    row->addWidget(new QLabel(tr("of the rounding")));
    row->addStretch(1);
    return row;
}

void LoftPanel::setFairing(double fairing) {
    m_fairing->setValue(fairing);
}

void LoftPanel::setHull(std::shared_ptr<const core::LoftedHull> hull) {
    m_hull = std::move(hull);
    refill();
}

void LoftPanel::setAsides(std::vector<core::PutAside> asides) {
    m_asides = std::move(asides);
    refill();
}

void LoftPanel::setUnits(core::Units units) {
    m_units = units;
    m_findings->setUnits(units);
    refill();
}

void LoftPanel::refill() {
    m_table->setRowCount(0);
    if (!m_hull) {
        m_summary->setText(
            Wording::tr("Open a project, and this bench shows how its table of offsets was lofted."));
        m_findingsHead->clear();
        m_findings->setFindings({});
        return;
    }
    const core::LoftedHull& hull = *m_hull;
    m_summary->setText(
        Wording::tr(
            "The lofted hull is %1 long and %2 wide. It runs within %3 of the table on average and %4 at "
            "most; rounding in the table alone accounts for %5. In the last column + is outside the loft, − "
            "inside.")
            .arg(lengthText(hull.drawn.length, m_units),
                 lengthText(hull.drawn.beam, m_units),
                 departureText(hull.residualRms, m_units, false),
                 departureText(std::abs(hull.residualMax), m_units, false),
                 departureText(hull.roundingSigma, m_units, false)));
    m_table->setRowCount(static_cast<int>(hull.residuals.size()));
    int row = 0;
    for (const core::StationResidual& residual : hull.residuals) {
        const bool station = static_cast<std::size_t>(row) < hull.stationX.size();
        const QStringList cells{station ? toQString(residual.station) : Wording::tr("profile"),
                                station ? lengthText(residual.x, m_units) : QString(),
                                QString::number(residual.points),
                                departureText(residual.rms, m_units, false),
                                departureText(residual.max, m_units, true)};
        for (int column = 0; column < cells.size(); ++column) {
            auto* item = new QTableWidgetItem(cells[column]);
            item->setTextAlignment(Qt::AlignVCenter | (column == 0 ? Qt::AlignLeft : Qt::AlignRight));
            if (column == 4 && std::abs(residual.max) > 4.0 * hull.roundingSigma && hull.roundingSigma > 0.0)
                item->setForeground(QColor::fromRgb(palette::hard));
            m_table->setItem(row, column, item);
        }
        ++row;
    }
    m_findings->setFindings(core::withAsides(hull.findings, m_asides));
    m_findingsHead->setText(hull.findings.empty()
                                ? Wording::tr("Nothing odd was found in the table")
                                : Wording::tr("Found in the table: %1").arg(m_findings->summary()));
    m_findings->setVisible(!hull.findings.empty());
}

} // namespace sheerlay::ui

// The tape on the planking bench: two places of boat or map, and the way between them along the planking.
#include "ui/map2d/planking_map.hpp"
#include "ui/scene/palette.hpp"
#include "ui/scene/wording.hpp"
#include "ui/view3d/boat_view.hpp"
#include "ui/window/planking_bench.hpp"

#include <QAccessible>
#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>

namespace sheerlay::ui {
namespace {

constexpr double tapeAir = 3.0; // mm between the outer face and the tape

} // namespace

QWidget* PlankingBench::makeTapeBar() {
    auto* bar = new QWidget;
    bar->setObjectName(QStringLiteral("viewBar"));
    bar->setAttribute(Qt::WA_StyledBackground);
    bar->setAccessibleName(Wording::tr("What the tape says"));
    m_tapeWords = new QLabel;
    m_tapeWords->setWordWrap(true);
    m_tapeWords->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_tapeWords->setStyleSheet(
        QStringLiteral("font-size: 15px; color: %1;").arg(QColor::fromRgb(palette::ink).name()));
    auto* away = new QToolButton;
    away->setText(Wording::tr("Put the tape away"));
    away->setToolTip(Wording::tr("Back to the strips (Esc)"));
    connect(away, &QToolButton::clicked, this, [this] { measure(false); });
    auto* layout = new QHBoxLayout(bar);
    layout->setContentsMargins(12, 5, 8, 5);
    layout->addWidget(m_tapeWords, 1);
    layout->addWidget(away);
    bar->hide();
    return bar;
}

bool PlankingBench::measuring() const {
    return m_tapeButton->isChecked();
}

void PlankingBench::measure(bool measuring) {
    const bool on = measuring && m_boat;
    m_tapeButton->setChecked(on);
    if (m_map->measuring() == on)
        return;
    m_tape = {};
    m_map->setMeasuring(on);
    m_view->setMeasuring(on);
    m_tapeBar->setVisible(on);
    showTape(tapeText(m_tape, m_units));
}

void PlankingBench::putTapeEnd(const std::optional<core::HullPlace>& end) {
    if (!end) {
        showTape(
            Wording::tr("There is nothing to measure from there: click a strip that is laid, or any place "
                        "of the planking on the map."));
        return;
    }
    m_tape = withEnd(m_tape, *end, m_boat->hull.laid);
    showTape(tapeText(m_tape, m_units));
}

void PlankingBench::showTape(const QString& words) {
    m_tapeWords->setText(words);
    m_tapeBar->setAccessibleDescription(words);
    QAccessibleEvent told(m_tapeBar, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&told);
    if (!m_boat)
        return;
    const double outside = m_boat->project.strips.thickness - m_boat->hull.laidHeight;
    m_map->setTape(tapeOnMap(m_tape, m_boat->scene.map));
    m_view->setTape(tapeOnBoat(m_tape, outside + tapeAir));
}

} // namespace sheerlay::ui

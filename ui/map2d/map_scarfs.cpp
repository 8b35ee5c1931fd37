// The part of the map that shows where the strips are scarfed.
#include "ui/map2d/planking_map.hpp"
#include "ui/scene/palette.hpp"
#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"

#include <QPainter>

#include <algorithm>

namespace sheerlay::ui {
namespace {

constexpr double reach = 5.0; // pixels about a scarf in which the pointer means it

double distanceFrom(const QLineF& line, const QPointF& p) {
    const QPointF d = line.p2() - line.p1();
    const double square = std::max(QPointF::dotProduct(d, d), 1e-9);
    const double t = std::clamp(QPointF::dotProduct(p - line.p1(), d) / square, 0.0, 1.0);
    return QLineF(line.p1() + t * d, p).length();
}

} // namespace

void PlankingMap::setScarfs(std::vector<ScarfMark> scarfs) {
    m_scarfs = std::move(scarfs);
    update();
}

QLineF PlankingMap::strokeOf(const ScarfMark& scarf) const {
    return {m_toWidget.map(QPointF(scarf.upper.x(), scarf.upper.y())),
            m_toWidget.map(QPointF(scarf.lower.x(), scarf.lower.y()))};
}

void PlankingMap::paintScarfs(QPainter& painter) const {
    for (const ScarfMark& scarf : m_scarfs) {
        const bool laid = m_boat->plan.strips[scarf.strip].order <= m_laid;
        painter.setPen(QPen(QColor::fromRgb(laid ? palette::ink : palette::pencil), laid ? 1.8 : 1.2));
        painter.drawLine(strokeOf(scarf));
    }
}

QString PlankingMap::scarfTextAt(const QPointF& place) const {
    for (const ScarfMark& scarf : m_scarfs)
        if (distanceFrom(strokeOf(scarf), place) < reach)
            return Wording::tr("Scarf of %1: %2 along the strip from its bow end, %3.")
                .arg(toQString(m_boat->plan.strips[scarf.strip].id),
                     lengthText(scarf.along, m_units),
                     placeText(scarf.x, m_units));
    return {};
}

} // namespace sheerlay::ui

// The part of the map that shows the start line and lets it be moved.
#include "ui/map2d/planking_map.hpp"
#include "ui/scene/palette.hpp"
#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace sheerlay::ui {
namespace {

constexpr double radius = 8.0; // pixels

QPolygonF polyline(const std::vector<Eigen::Vector2d>& points, const QTransform& toWidget, double sign) {
    QPolygonF line;
    for (const Eigen::Vector2d& p : points)
        line << toWidget.map(QPointF(p.x(), sign * p.y()));
    return line;
}

/// Girth of a line at x; 0 for an empty one.
double girthAtX(const std::vector<Eigen::Vector2d>& line, double x) {
    const auto after = std::ranges::lower_bound(line, x, {}, [](const Eigen::Vector2d& p) { return p.x(); });
    if (after == line.end())
        return line.empty() ? 0.0 : line.back().y();
    if (after == line.begin())
        return after->y();
    const Eigen::Vector2d& before = *(after - 1);
    const double span = after->x() - before.x();
    const double part = span > 0.0 ? (x - before.x()) / span : 0.0;
    return before.y() + part * (after->y() - before.y());
}

} // namespace

void PlankingMap::setStartShown(bool shown) {
    m_startShown = shown;
    m_startHeld = false;
    update();
}

void PlankingMap::setStartPreview(std::optional<StartPreview> preview) {
    m_preview = std::move(preview);
    update();
}

double PlankingMap::handleX() const {
    const double widest = m_boat->hull.laid.halfGirthMaxX;
    const std::vector<Eigen::Vector2d>& line = m_boat->scene.mapStart;
    return widest > line.front().x() && widest < line.back().x() ? widest
                                                                 : 0.5 * (line.front().x() + line.back().x());
}

std::optional<QPointF> PlankingMap::startHandle() const {
    if (!m_startShown || !m_boat || m_boat->scene.mapStart.empty())
        return std::nullopt;
    const double x = handleX();
    return m_toWidget.map(QPointF(x, girthAtX(m_boat->scene.mapStart, x)));
}

double PlankingMap::girthAt(const QPointF& place) const {
    const double whole = m_boat->scene.map.halfGirth(handleX());
    return std::clamp(whole - m_toWidget.inverted().map(place).y(), 0.0, whole);
}

void PlankingMap::paintStart(QPainter& painter) const {
    const auto handle = startHandle();
    if (!handle)
        return;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(QColor::fromRgb(palette::cedar), 2.4));
    for (const double sign : {1.0, -1.0})
        painter.drawPolyline(polyline(m_boat->scene.mapStart, m_toWidget, sign));
    QPointF knob = *handle;
    QString text = Wording::tr("start: drag to move");
    if (m_preview) {
        painter.setPen(QPen(QColor::fromRgb(palette::lineBlue), 2.4, Qt::DashLine));
        for (const double sign : {1.0, -1.0})
            painter.drawPolyline(polyline(m_preview->onMap, m_toWidget, sign));
        if (!m_preview->onMap.empty())
            knob.setY(m_toWidget.map(QPointF(0.0, girthAtX(m_preview->onMap, handleX()))).y());
        text = lengthText(m_preview->line.girth, m_units) + Wording::tr(" below the sheer: ") +
               (m_preview->judged ? Wording::tr("hardest edge bend %1, row %2")
                                        .arg(sagText(m_preview->judged->worst, m_units))
                                        .arg(m_preview->judged->worstRow)
                                  : Wording::tr("no line can be laid from there"));
    }
    painter.setPen(QPen(QColor::fromRgb(palette::paper), 2.0));
    painter.setBrush(QColor::fromRgb(m_preview ? palette::lineBlue : palette::cedar));
    painter.drawEllipse(knob, radius, radius);
    const QFontMetricsF metrics(painter.font());
    QRectF box(0.0, 0.0, metrics.horizontalAdvance(text) + 14.0, 20.0);
    box.moveCenter({knob.x(), knob.y() + radius + 16.0});
    if (box.bottom() > height() - 4.0) // never over the knob
        box.moveBottom(knob.y() - radius - 6.0);
    painter.setPen(QPen(QColor::fromRgb(palette::rule), 1.0));
    painter.setBrush(QColor::fromRgb(palette::paper));
    painter.drawRoundedRect(box, 3, 3);
    painter.setPen(QColor::fromRgb(palette::ink));
    painter.drawText(box, Qt::AlignCenter, text);
}

} // namespace sheerlay::ui

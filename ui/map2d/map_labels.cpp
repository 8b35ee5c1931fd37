// The part of the map that names its stations, and where weave and closing of the bottom change.
#include "ui/map2d/planking_map.hpp"
#include "ui/scene/palette.hpp"
#include "ui/scene/wording.hpp"

#include <QPainter>

#include <algorithm>

namespace sheerlay::ui {

/// Marks stand in the margin at the keel line's end, clear of the strips: the planking is narrow there.
MapLabel PlankingMap::markOf(const core::StripEnd& end, const QString& text, bool above) const {
    const bool bow = end.end == core::End::Bow;
    const double wide = QFontMetricsF(font()).horizontalAdvance(text) + 12.0;
    const QPointF at = m_toWidget.map(QPointF(end.x, 0.0));
    const double x =
        bow ? std::max(4.0, at.x() - wide - 16.0) : std::min(width() - wide - 4.0, at.x() + 16.0);
    const QRectF box(x, above ? at.y() - 34.0 : at.y() + 16.0, wide, 18.0);
    return {text, box, QLineF(QPointF(bow ? box.right() : box.left(), above ? box.bottom() : box.top()), at)};
}

void PlankingMap::addMarks(std::vector<MapLabel>& labels) const {
    const core::Marks& marks = m_boat->plan.marks;
    const auto endOf = [&](int row, std::size_t which) -> const core::StripEnd* {
        for (const core::Strip& strip : m_boat->plan.strips) {
            if (strip.row == row && strip.side != core::Side::Port)
                return &strip.ends[which];
        }
        return nullptr;
    };
    for (const std::size_t which : {std::size_t{0}, std::size_t{1}}) {
        if (const auto& row = which == 0 ? marks.closingBow : marks.closingStern) {
            if (const core::StripEnd* end = endOf(*row, which))
                labels.push_back(markOf(*end, Wording::tr("closing from row %1").arg(*row), true));
        }
        if (const auto& rows = which == 0 ? marks.weaveBow : marks.weaveStern) {
            if (const core::StripEnd* end = endOf(rows->last, which))
                labels.push_back(markOf(*end, Wording::tr("woven to row %1").arg(rows->last), false));
        }
    }
}

void PlankingMap::addStations(std::vector<MapLabel>& labels) const {
    const double length = m_boat->hull.laid.length;
    const QFontMetricsF metrics(font());
    double widest = 1.0;
    for (const MapStation& station : m_boat->scene.stations)
        widest = std::max(widest, station.halfGirth);
    for (const MapStation& station : m_boat->scene.stations) {
        const QString name = QString::fromStdString(station.name);
        const QPointF top = m_toWidget.map(QPointF(station.x, -station.halfGirth));
        const double wide = metrics.horizontalAdvance(name) + 8.0;
        // where the planking narrows the name stands outward of its line, clear of the strips
        const double outward = std::min(0.5, 1.0 - station.halfGirth / widest) * wide;
        const double middle = top.x() + (station.x < 0.5 * length ? -outward : outward);
        double left = middle - 0.5 * wide;
        if (top.x() > 0.0 && top.x() < width()) // a line that is seen keeps its name whole
            left = std::clamp(left, 0.0, std::max(0.0, width() - wide));
        const QRectF box(left, std::max(2.0, top.y() - 19.0), wide, 16.0);
        if (std::ranges::none_of(labels, [&](const MapLabel& other) { return box.intersects(other.box); }))
            labels.push_back({name, box, std::nullopt});
    }
}

std::vector<MapLabel> PlankingMap::labels() const {
    std::vector<MapLabel> labels;
    if (m_boat) {
        addMarks(labels); // what there is less of comes first
        addStations(labels);
    }
    return labels;
}

void PlankingMap::paintLabels(QPainter& painter) const {
    for (const MapLabel& label : labels()) {
        if (label.leader) {
            painter.setPen(QPen(QColor::fromRgb(palette::cedar), 1.2));
            painter.drawLine(*label.leader);
            painter.setBrush(QColor::fromRgb(palette::paper));
            painter.drawRoundedRect(label.box, 3, 3);
            painter.setPen(QColor::fromRgb(palette::ink));
            painter.drawText(label.box, Qt::AlignCenter, label.text);
        } else {
            paintWord(painter, label.box, Qt::AlignCenter, label.text);
        }
    }
}

void PlankingMap::paintWord(QPainter& painter, const QRectF& box, int where, const QString& text) {
    QColor paper = QColor::fromRgb(palette::paper);
    paper.setAlphaF(0.85F); // strips lie below where the map is drawn larger
    painter.fillRect(painter.boundingRect(box, where, text).adjusted(-3, 0, 3, 0), paper);
    painter.setPen(QColor::fromRgb(palette::pencil));
    painter.drawText(box, where, text);
}

} // namespace sheerlay::ui

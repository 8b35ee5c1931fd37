// The part of the map that lays a tape on the planking.
#include "ui/map2d/planking_map.hpp"
#include "ui/scene/palette.hpp"
#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"

#include <QAccessible>
#include <QKeyEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace sheerlay::ui {
namespace {

constexpr double endRadius = 4.0, crossArm = 9.0; // pixels
constexpr double stepMm = 10.0, stridesMm = 100.0, stepInch = 12.7, stridesInch = 152.4;

bool movesMark(int key) {
    return key == Qt::Key_Left || key == Qt::Key_Right || key == Qt::Key_Up || key == Qt::Key_Down;
}

bool putsEnd(int key) {
    return key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Space;
}

} // namespace

void PlankingMap::setMeasuring(bool measuring) {
    m_measuring = measuring;
    m_tape.clear();
    m_mark.reset();
    if (measuring && m_boat) {
        const double x = m_boat->hull.laid.halfGirthMaxX;
        m_mark = QPointF(x, 0.5 * m_boat->scene.map.halfGirth(x));
        setFocus();
        tellMark();
    } else {
        setAccessibleDescription(QString());
    }
    setCursor(measuring ? Qt::CrossCursor : Qt::ArrowCursor);
    update();
}

void PlankingMap::setTape(std::vector<Eigen::Vector2d> line) {
    m_tape = std::move(line);
    update();
}

void PlankingMap::touchAt(const QPointF& mapPoint) {
    m_mark = mapPoint;
    Q_EMIT touched(mapPoint);
    update();
}

void PlankingMap::tellMark() {
    setAccessibleDescription(Wording::tr("The mark stands %1, %2 from the bottom's middle, %3.")
                                 .arg(placeText(m_mark->x(), m_units),
                                      lengthText(std::abs(m_mark->y()), m_units),
                                      m_mark->y() < 0.0 ? Wording::tr("port") : Wording::tr("starboard")));
    QAccessibleEvent told(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&told);
}

bool PlankingMap::keepsKey(const QKeyEvent& event) const {
    return m_measuring && m_mark && (movesMark(event.key()) || putsEnd(event.key()));
}

void PlankingMap::keyPressEvent(QKeyEvent* event) {
    if (!keepsKey(*event)) {
        QWidget::keyPressEvent(event);
        return;
    }
    if (putsEnd(event->key())) {
        touchAt(*m_mark);
        return;
    }
    const bool strides = event->modifiers().testFlag(Qt::ShiftModifier);
    const double by =
        m_units == core::Units::Inches ? (strides ? stridesInch : stepInch) : (strides ? stridesMm : stepMm);
    const int key = event->key();
    const double length = m_boat->hull.laid.length;
    m_mark->rx() += key == Qt::Key_Left ? -by : key == Qt::Key_Right ? by : 0.0;
    m_mark->rx() = std::clamp(m_mark->x(), 0.0, length);
    m_mark->ry() += key == Qt::Key_Up ? -by : key == Qt::Key_Down ? by : 0.0;
    const double half = m_boat->scene.map.halfGirth(m_mark->x());
    m_mark->ry() = std::clamp(m_mark->y(), -half, half);
    tellMark();
    update();
}

void PlankingMap::paintTape(QPainter& painter) const {
    if (!m_measuring)
        return;
    const QColor blue = QColor::fromRgb(palette::lineBlue);
    painter.setBrush(Qt::NoBrush);
    QPolygonF line;
    for (const Eigen::Vector2d& p : m_tape)
        line << m_toWidget.map(QPointF(p.x(), p.y()));
    for (const QPen& pen : {QPen(QColor::fromRgb(palette::paper), 5.0), QPen(blue, 2.4)}) {
        painter.setPen(pen);
        painter.drawPolyline(line);
    }
    painter.setBrush(QColor::fromRgb(palette::paper));
    if (!line.isEmpty())
        for (const QPointF& end : {line.front(), line.back()})
            painter.drawEllipse(end, endRadius, endRadius);
    if (!m_mark || !hasFocus())
        return;
    const QPointF at = m_toWidget.map(*m_mark);
    for (const QPen& pen : {QPen(QColor::fromRgb(palette::paper), 4.0), QPen(blue, 1.6)}) {
        painter.setPen(pen);
        painter.drawLine(at - QPointF(crossArm, 0.0), at + QPointF(crossArm, 0.0));
        painter.drawLine(at - QPointF(0.0, crossArm), at + QPointF(0.0, crossArm));
    }
}

} // namespace sheerlay::ui

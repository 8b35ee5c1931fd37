#include "ui/map2d/planking_map.hpp"

#include "ui/scene/palette.hpp"
#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace sheerlay::ui {
namespace {

constexpr double air = 14.0;    // pixels around the fitted planking
constexpr double topAir = 24.0; // pixels above: station names stand there
constexpr double zoomPerNotch = 1.2;
constexpr double handleRadius = 8.0;                        // pixels
constexpr int clickSlack = 4;                               // pixels
constexpr double smallestScale = 0.02, largestScale = 20.0; // pixels per mm

QPen cosmetic(QRgb colour, double width, Qt::PenStyle style = Qt::SolidLine) {
    QPen pen(QColor::fromRgb(colour), width, style);
    pen.setCosmetic(true);
    return pen;
}

/// ISO 128 long-dash-dot, for the centreline.
QPen centreLine() {
    QPen pen = cosmetic(palette::pencil, 1.0);
    pen.setDashPattern({14.0, 4.0, 2.0, 4.0});
    return pen;
}

} // namespace

PlankingMap::PlankingMap(QWidget* parent) : QWidget(parent) {
    setMouseTracking(true);
    setFocusPolicy(Qt::ClickFocus);
    setMinimumHeight(120);
    setAccessibleName(Wording::tr("The planking unrolled"));
}

void PlankingMap::setBoat(std::shared_ptr<const Boat> boat) {
    m_boat = std::move(boat);
    m_polygons.clear();
    m_scarfs.clear();
    if (m_boat) {
        for (const SceneStrip& strip : m_boat->scene.strips) {
            QPolygonF polygon;
            for (const Eigen::Vector2d& p : strip.mapOutline)
                polygon << QPointF(p.x(), p.y());
            m_polygons.push_back(std::move(polygon));
        }
        if (!m_boat->strip(m_selected))
            m_selected.clear();
    }
    if (m_fitted)
        fit();
    update();
}

void PlankingMap::setLaidCount(int count) {
    m_laid = count;
    update();
}

void PlankingMap::setSelected(const std::string& stripId) {
    m_selected = stripId;
    update();
}

void PlankingMap::setHovered(const std::string& stripId) {
    m_hovered = stripId;
    update();
}

void PlankingMap::setUnits(core::Units units) {
    m_units = units;
    update();
}

void PlankingMap::setColours(StripColours colours) {
    m_colours = colours;
    update();
}

void PlankingMap::setPlace(std::optional<double> x) {
    m_place = x;
    if (x) {
        const double at = m_toWidget.map(QPointF(*x, 0.0)).x();
        const double aside = at < air ? air - at : at > width() - air ? width() - air - at : 0.0;
        if (aside != 0.0) {
            m_fitted = false;
            m_toWidget *= QTransform::fromTranslate(aside, 0.0);
        }
    }
    update();
}

void PlankingMap::fit() {
    m_fitted = true;
    QRectF all;
    for (const QPolygonF& polygon : m_polygons)
        all = all.united(polygon.boundingRect());
    if (all.isEmpty())
        return;
    const double scale =
        std::min((width() - 2 * air) / all.width(), (height() - air - topAir) / all.height());
    const QPointF middle(0.5 * width(), 0.5 * (height() + topAir - air));
    m_toWidget = QTransform::fromTranslate(middle.x(), middle.y());
    m_toWidget.scale(std::max(scale, smallestScale), std::max(scale, smallestScale));
    m_toWidget.translate(-all.center().x(), -all.center().y());
    update();
}

void PlankingMap::zoom(double factor, const QPointF& about) {
    const double scale = m_toWidget.m11();
    const double wanted = std::clamp(scale * factor, smallestScale, largestScale) / scale;
    m_fitted = false;
    m_toWidget *= QTransform::fromTranslate(-about.x(), -about.y()) * QTransform::fromScale(wanted, wanted) *
                  QTransform::fromTranslate(about.x(), about.y());
    update();
}

std::optional<std::size_t> PlankingMap::indexAt(const QPointF& place) const {
    const QPointF at = m_toWidget.inverted().map(place);
    for (std::size_t i = 0; i < m_polygons.size(); ++i) {
        if (m_polygons[i].boundingRect().contains(at) && m_polygons[i].containsPoint(at, Qt::OddEvenFill))
            return i;
    }
    return std::nullopt;
}

std::string PlankingMap::stripAt(const QPointF& place) const {
    const auto index = indexAt(place);
    return index ? m_boat->plan.strips[*index].id : std::string();
}

void PlankingMap::paintStrips(QPainter& painter) const {
    const QPen seam = cosmetic(palette::seam, 0.6);
    const QPen ghost = cosmetic(0xFFC9C0AE, 0.8);
    std::vector<std::size_t> onTop;
    painter.setTransform(m_toWidget);
    for (std::size_t i = 0; i < m_polygons.size(); ++i) {
        const core::Strip& strip = m_boat->plan.strips[i];
        const bool laid = strip.order <= m_laid;
        painter.setPen(laid ? seam : ghost);
        painter.setBrush(laid ? QBrush(stripColour(*m_boat, i, m_colours)) : QBrush(Qt::NoBrush));
        painter.drawPolygon(m_polygons[i]);
        if (strip.id == m_selected || strip.id == m_hovered || strip.order == m_laid + 1)
            onTop.push_back(i);
    }
    for (const std::size_t i : onTop) {
        const core::Strip& strip = m_boat->plan.strips[i];
        if (strip.id == m_selected) {
            QColor tint = QColor::fromRgb(palette::lineBlue);
            tint.setAlpha(90);
            painter.setBrush(tint);
            painter.setPen(cosmetic(palette::lineBlue, 2.2));
        } else {
            painter.setBrush(Qt::NoBrush);
            painter.setPen(cosmetic(palette::cedar, strip.id == m_hovered ? 1.4 : 2.2));
        }
        painter.drawPolygon(m_polygons[i]);
    }
    painter.resetTransform();
}

void PlankingMap::paintDrawing(QPainter& painter) const {
    painter.setTransform(m_toWidget);
    painter.setBrush(Qt::NoBrush);
    QPolygonF starboard;
    QPolygonF port;
    for (const Eigen::Vector2d& p : m_boat->scene.mapSheer) {
        starboard << QPointF(p.x(), p.y());
        port << QPointF(p.x(), -p.y());
    }
    painter.setPen(cosmetic(palette::lineBlue, 1.6));
    painter.drawPolyline(starboard);
    painter.drawPolyline(port);
    painter.setPen(cosmetic(palette::lineBlue, 0.7));
    for (const MapStation& station : m_boat->scene.stations)
        painter.drawLine(QPointF(station.x, -station.halfGirth), QPointF(station.x, station.halfGirth));
    const double length = m_boat->hull.laid.length;
    painter.setPen(centreLine());
    painter.drawLine(QPointF(-0.03 * length, 0.0), QPointF(1.03 * length, 0.0));
    painter.resetTransform();
}

void PlankingMap::paintPlace(QPainter& painter) const {
    if (!m_place)
        return;
    const double x = m_toWidget.map(QPointF(*m_place, 0.0)).x();
    painter.setPen(QPen(QColor::fromRgb(palette::cedar), 1.6, Qt::DashLine));
    painter.drawLine(QPointF(x, topAir), QPointF(x, height() - 20.0));
    const QString text = placeText(*m_place, m_units);
    const double wide = QFontMetricsF(painter.font()).horizontalAdvance(text) + 12.0;
    const QRectF box(std::clamp(x - 0.5 * wide, 4.0, width() - wide - 4.0), height() - 22.0, wide, 18.0);
    painter.setPen(QPen(QColor::fromRgb(palette::cedar), 1.2));
    painter.setBrush(QColor::fromRgb(palette::paper));
    painter.drawRoundedRect(box, 3, 3);
    painter.setPen(QColor::fromRgb(palette::ink));
    painter.drawText(box, Qt::AlignCenter, text);
}

void PlankingMap::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), QColor::fromRgb(palette::paper));
    if (!m_boat)
        return;
    painter.setRenderHint(QPainter::Antialiasing);
    paintStrips(painter);
    paintScarfs(painter);
    paintDrawing(painter);
    paintStart(painter);
    paintLabels(painter);
    paintPlace(painter);
    paintTape(painter);
    const QRect inner = rect().adjusted(10, 6, -10, -6);
    paintWord(painter, inner, Qt::AlignLeft | Qt::AlignTop, Wording::tr("port"));
    paintWord(painter, inner, Qt::AlignLeft | Qt::AlignBottom, Wording::tr("starboard"));
    paintWord(painter, inner, Qt::AlignRight | Qt::AlignTop, Wording::tr("stations as in the table"));
}

void PlankingMap::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    if (m_fitted)
        fit();
}

void PlankingMap::mousePressEvent(QMouseEvent* event) {
    const auto handle = startHandle();
    m_startHeld = handle && !m_measuring && event->button() == Qt::LeftButton &&
                  QLineF(*handle, event->position()).length() < 1.5 * handleRadius;
    m_pressed = m_last = event->position();
    m_dragging = false;
    event->accept();
}

void PlankingMap::mouseMoveEvent(QMouseEvent* event) {
    event->accept();
    const QPointF at = event->position();
    if (m_startHeld) {
        Q_EMIT startDragged(girthAt(at));
        return;
    }
    if (event->buttons() == Qt::NoButton) {
        const auto handle = startHandle();
        const bool onHandle = handle && QLineF(*handle, at).length() < 1.5 * handleRadius;
        setCursor(m_measuring ? Qt::CrossCursor : onHandle ? Qt::SizeVerCursor : Qt::ArrowCursor);
        const std::string id = stripAt(at);
        if (id != m_hovered) {
            m_hovered = id;
            Q_EMIT stripHovered(QString::fromStdString(id));
            update();
        }
        return;
    }
    if (!m_dragging && (at - m_pressed).manhattanLength() < clickSlack)
        return;
    m_dragging = true;
    m_fitted = false;
    m_toWidget *= QTransform::fromTranslate(at.x() - m_last.x(), at.y() - m_last.y());
    m_last = at;
    update();
}

void PlankingMap::mouseReleaseEvent(QMouseEvent* event) {
    event->accept();
    if (m_startHeld) {
        m_startHeld = false;
        if ((event->position() - m_pressed).manhattanLength() >= clickSlack)
            Q_EMIT startDropped(girthAt(event->position()));
        return;
    }
    if (!m_dragging && event->button() == Qt::LeftButton && m_measuring)
        touchAt(m_toWidget.inverted().map(event->position()));
    else if (!m_dragging && event->button() == Qt::LeftButton)
        Q_EMIT stripClicked(QString::fromStdString(stripAt(event->position())));
    m_dragging = false;
}

void PlankingMap::mouseDoubleClickEvent(QMouseEvent* event) {
    event->accept();
    fit();
}

void PlankingMap::wheelEvent(QWheelEvent* event) {
    event->accept();
    zoom(std::pow(zoomPerNotch, event->angleDelta().y() / 120.0), event->position());
}

void PlankingMap::leaveEvent(QEvent* event) {
    QWidget::leaveEvent(event);
    if (m_hovered.empty())
        return;
    m_hovered.clear();
    Q_EMIT stripHovered(QString());
    update();
}

bool PlankingMap::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride && keepsKey(*static_cast<QKeyEvent*>(event))) {
        event->accept(); // the mark moves, no strip is laid
        return true;
    }
    if (event->type() != QEvent::ToolTip)
        return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    const auto index = m_boat ? indexAt(help->pos()) : std::nullopt;
    if (!index) {
        QToolTip::hideText();
        return true;
    }
    if (const QString scarf = scarfTextAt(help->pos()); !scarf.isEmpty()) {
        QToolTip::showText(help->globalPos(), scarf, this);
        return true;
    }
    const core::Strip& strip = m_boat->plan.strips[*index];
    QToolTip::showText(help->globalPos(),
                       Wording::tr("%1, %2. Edge bend %3: %4.")
                           .arg(toQString(strip.id),
                                rowText(strip),
                                sagText(strip.edgeBend.maxAbs, m_units),
                                heardText(core::toText(m_boat->difficulty[*index]))),
                       this);
    return true;
}

} // namespace sheerlay::ui

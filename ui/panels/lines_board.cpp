#include "ui/panels/lines_board.hpp"

#include "ui/paper/sheet_painter.hpp"
#include "ui/scene/palette.hpp"
#include "ui/scene/words.hpp"

#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace sheerlay::ui {
namespace {

constexpr double pixelsPerMm = 4.2; // small type on paper is small type on the screen
constexpr double mostZoom = 40.0;
constexpr double ring = 6.0; // px

/// Where a picture of this size stands in a room: in the middle where it is smaller, else between its edges.
double kept(double origin, double size, double room) {
    return size <= room ? 0.5 * (room - size) : std::clamp(origin, room - size, 0.0);
}

/// (a, b) of the boat that stands at a place on paper.
Eigen::Vector2d boatAt(const core::LinesView& view, const Eigen::Vector2d& paper) {
    const Eigen::Vector2d by = (paper - view.origin) / view.scale;
    return {by.x(), -by.y() / view.up};
}

} // namespace

LinesBoard::LinesBoard(QWidget* parent) : QWidget(parent) {
    setMinimumSize(200, 120);
    setAccessibleName(tr("Lines drawing"));
    setCursor(Qt::OpenHandCursor);
    setToolTip(
        tr("The wheel draws her larger or smaller, dragging moves the board, a double click shows all."));
}

void LinesBoard::setLines(std::shared_ptr<const core::DrawnLines> lines) {
    m_lines = std::move(lines);
    lay();
}

void LinesBoard::setUnits(core::Units units) {
    m_units = units;
    lay();
}

void LinesBoard::setPart(core::LinesPart part) {
    m_part = part;
    showAll();
}

void LinesBoard::setMark(const std::optional<Eigen::Vector3d>& mark) {
    m_mark = mark;
    update();
}

void LinesBoard::showAll() {
    m_zoom = 1.0;
    lay();
}

void LinesBoard::zoomBy(double by, const QPointF& about) {
    const double zoom = std::clamp(m_zoom * by, 1.0, mostZoom);
    if (zoom == m_zoom || !m_lines)
        return;
    const View view = viewAt(onPaper(about));
    const Eigen::Vector2d held = boatAt(*(m_picture.*view), onPaper(about));
    m_zoom = zoom;
    lay();
    const Eigen::Vector2d now = (m_picture.*view)->at(held.x(), held.y());
    m_origin = about - pixelsPerMm * QPointF(now.x(), now.y());
    keepOnBoard();
}

void LinesBoard::lay() {
    const core::Speaking speaking(windowLanguage());
    if (m_lines && width() > 0 && height() > 0)
        m_picture = core::linesPicture(
            *m_lines, m_part, m_units, Eigen::Vector2d(width(), height()) / pixelsPerMm, m_zoom);
    keepOnBoard();
}

void LinesBoard::keepOnBoard() {
    m_origin = {kept(m_origin.x(), m_picture.sheet.width * pixelsPerMm, width()),
                kept(m_origin.y(), m_picture.sheet.height * pixelsPerMm, height())};
    update();
}

/// The view that a place on the picture belongs to.
LinesBoard::View LinesBoard::viewAt(const Eigen::Vector2d& paper) const {
    constexpr double beside = 10.0; // mm; names of levels and stations belong to the view they are of
    if (m_picture.end && (!m_picture.side || paper.x() > m_picture.end->at(-m_lines->broad, 0).x() - beside))
        return &core::LinesPicture::end;
    if (m_picture.side && (!m_picture.above || paper.y() < m_picture.side->at(0, m_lines->low).y() + beside))
        return &core::LinesPicture::side;
    return &core::LinesPicture::above;
}

Eigen::Vector2d LinesBoard::onPaper(const QPointF& place) const {
    const QPointF paper = (place - m_origin) / pixelsPerMm;
    return {paper.x(), paper.y()};
}

QPointF LinesBoard::onWidget(const Eigen::Vector2d& paper) const {
    return m_origin + pixelsPerMm * QPointF(paper.x(), paper.y());
}

std::vector<QPointF> LinesBoard::rings() const {
    std::vector<QPointF> places;
    if (m_lines && m_mark)
        for (const Eigen::Vector2d& p : m_picture.placesOf(*m_mark))
            places.push_back(onWidget(p));
    return places;
}

void LinesBoard::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.fillRect(rect(), Qt::white);
    if (!m_lines)
        return;
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    painter.save();
    painter.translate(m_origin);
    painter.scale(pixelsPerMm, pixelsPerMm);
    paint(painter, m_picture.sheet);
    painter.restore();
    painter.setPen(QPen(QColor::fromRgb(palette::hard), 2.0));
    for (const QPointF& at : rings())
        painter.drawEllipse(at, ring, ring);
}

void LinesBoard::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    lay();
}

void LinesBoard::wheelEvent(QWheelEvent* event) {
    zoomBy(std::pow(step, event->angleDelta().y() / 120.0), event->position());
    event->accept();
}

void LinesBoard::mousePressEvent(QMouseEvent* event) {
    m_held = event->position() - m_origin;
    event->accept();
}

void LinesBoard::mouseMoveEvent(QMouseEvent* event) {
    if (!(event->buttons() & Qt::LeftButton))
        return;
    m_origin = event->position() - m_held;
    keepOnBoard();
    event->accept();
}

void LinesBoard::mouseDoubleClickEvent(QMouseEvent* event) {
    showAll();
    event->accept();
}

} // namespace sheerlay::ui

#include "ui/paper/sheet_painter.hpp"

#include "core/sheets/type.hpp"
#include "ui/paper/fonts.hpp"

#include <QPainter>
#include <QPainterPath>
#include <QPolygonF>

#include <cmath>
#include <numbers>
#include <stdexcept>

namespace sheerlay::ui {

namespace {

QColor toQt(const core::Colour& colour) {
    return {colour.red, colour.green, colour.blue};
}

QPen penFor(core::LineKind kind, const core::Colour& colour) {
    if (kind == core::LineKind::None)
        return {Qt::NoPen};
    QPen pen(toQt(colour));
    pen.setWidthF(core::lineWidth(kind));
    pen.setCapStyle(Qt::FlatCap);
    pen.setJoinStyle(Qt::MiterJoin);
    // dashes in line widths, ISO 128
    if (kind == core::LineKind::Centre)
        pen.setDashPattern({24.0, 3.0, 1.0, 3.0});
    else if (kind == core::LineKind::Hidden)
        pen.setDashPattern({8.0, 4.0});
    return pen;
}

void paintPath(QPainter& painter, const core::Path& path) {
    QPolygonF points;
    points.reserve(static_cast<qsizetype>(path.points.size()));
    for (const Eigen::Vector2d& p : path.points)
        points << QPointF(p.x(), p.y());
    painter.setPen(penFor(path.line, path.colour));
    painter.setBrush(path.fill ? QBrush(toQt(*path.fill)) : QBrush(Qt::NoBrush));
    if (path.closed) {
        painter.drawPolygon(points);
    } else if (path.fill) {
        QPainterPath open;
        open.addPolygon(points);
        painter.drawPath(open);
    } else {
        painter.drawPolyline(points);
    }
}

constexpr int fontPixels = 100; // fonts come in whole pixels; the painter's scale does the rest

void drawPlain(QPainter& painter, const QString& text, double size, double squeeze = 1.0) {
    painter.save();
    painter.scale(squeeze * size / fontPixels, size / fontPixels);
    painter.drawText(QPointF(0.0, 0.0), text);
    painter.restore();
}

// A fraction is seen as small digits, raised and lowered, and read as "5/16": readers of PDF take small
// raised digits for words of their own, out of order. So the digits are drawn as shapes, and the plain text
// lies over them unseen.
void drawFraction(QPainter& painter, const core::TextRun& fraction, double size, core::Weight weight) {
    QPainterPath shapes;
    for (const core::PlacedRun& part : core::place({fraction}, size, weight)) {
        QPainterPath glyphs;
        glyphs.addText(QPointF(0.0, 0.0), painter.font(), QString::fromStdString(part.text));
        const double scale = part.size / fontPixels;
        shapes.addPath(QTransform(scale, 0.0, 0.0, scale, part.offset, -part.raise).map(glyphs));
    }
    shapes.setFillRule(Qt::WindingFill); // the slash leans over the digits
    painter.fillPath(shapes, painter.pen().color());

    const double seen = core::textWidth(std::vector<core::TextRun>{fraction}, size, weight);
    const double plain = core::plainWidth(fraction.text, size, weight);
    painter.save();
    QColor unseen = painter.pen().color();
    unseen.setAlpha(0);
    painter.setPen(unseen);
    drawPlain(painter, QString::fromStdString(fraction.text), size, seen / plain);
    painter.restore();
}

void paintText(QPainter& painter, const core::Text& text) {
    const double width = core::textWidth(text.runs, text.size, text.weight);
    painter.save();
    painter.translate(text.at.x(), text.at.y());
    painter.rotate(text.rotation * 180.0 / std::numbers::pi);
    if (text.anchor != core::Anchor::Left)
        painter.translate(text.anchor == core::Anchor::Middle ? -width / 2 : -width, 0.0);
    painter.setPen(toQt(text.colour));
    painter.setFont(sheetFont(text.weight, fontPixels));
    for (const core::TextRun& run : text.runs) {
        if (run.kind == core::TextRun::Kind::Fraction)
            drawFraction(painter, run, text.size, text.weight);
        else
            drawPlain(painter, QString::fromStdString(run.text), text.size);
        painter.translate(core::textWidth(std::vector<core::TextRun>{run}, text.size, text.weight), 0.0);
    }
    painter.restore();
}

} // namespace

void paint(QPainter& painter, const core::Sheet& sheet) {
    loadFonts();
    painter.save();
    for (const core::Item& item : sheet.items) {
        if (const auto* path = std::get_if<core::Path>(&item))
            paintPath(painter, *path);
        else
            paintText(painter, std::get<core::Text>(item));
    }
    painter.restore();
}

QImage picture(const core::Sheet& sheet, double pixelsPerMm) {
    if (!(pixelsPerMm > 0.0))
        throw std::invalid_argument("picture: pixelsPerMm must be positive, not " +
                                    std::to_string(pixelsPerMm));
    QImage image(static_cast<int>(std::ceil(sheet.width * pixelsPerMm)),
                 static_cast<int>(std::ceil(sheet.height * pixelsPerMm)),
                 QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    painter.scale(pixelsPerMm, pixelsPerMm);
    paint(painter, sheet);
    return image;
}

} // namespace sheerlay::ui

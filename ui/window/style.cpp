#include "ui/window/style.hpp"

#include "ui/paper/fonts.hpp"
#include "ui/scene/palette.hpp"

#include <QApplication>
#include <QPainter>
#include <QPainterPath>
#include <QPalette>
#include <QStyleFactory>

#include <spdlog/spdlog.h>

#include <exception>

namespace sheerlay::ui {
namespace {

QString name(QRgb colour) {
    return QColor::fromRgb(colour).name();
}

QString sheet() {
    QString text = QStringLiteral(R"(
QToolButton, QPushButton {
    border: 1px solid @rule; border-radius: 5px; background: @paper; color: @ink; padding: 5px 10px; min-height: 20px;
}
QToolButton:hover, QPushButton:hover { background: #F5E9D8; border-color: @cedar; }
QToolButton:pressed, QPushButton:pressed { background: #EBD9C0; }
QToolButton:checked { background: @bench; color: @ink; border-color: @cedar; font-weight: 600; }
QToolButton:disabled, QPushButton:disabled { color: #B9B3A6; background: @bench; }
QToolButton:focus, QPushButton:focus { border-color: @line; }
QToolButton::menu-indicator { image: none; width: 0; }
QFileDialog QToolButton { padding: 2px; min-height: 16px; }
#benchStrip { background: @bench; border-bottom: 1px solid @rule; }
#foldHead:checked { background: @bench; color: @ink; border-color: @rule; font-weight: 600; }
#viewBar { background: @paper; border-bottom: 1px solid @rule; }
#viewBar QToolButton { padding: 2px 8px; border-color: transparent; min-height: 18px; }
#viewBar QToolButton:hover { border-color: @cedar; }
#viewBar QToolButton:focus { border-color: @line; }
#viewBar QToolButton:checked { background: @bench; color: @ink; border-color: @rule; font-weight: 600; }
#benchStrip QToolButton[bench="true"] { border-color: transparent; background: transparent; font-size: 14px;
    font-weight: 600; padding: 6px 7px; }
#benchStrip QToolButton { padding-left: 9px; padding-right: 9px; }
#benchStrip QToolButton[bench="true"]:checked { background: @paper; color: @cedar; border-color: @rule; }
#layingBar { background: @bench; border-top: 1px solid @rule; }
#side { background: @paper; border-left: 1px solid @rule; }
#sideHead { font-size: 15px; font-weight: 600; padding: 8px 12px 6px 16px; border-top: 1px solid @rule; }
QSplitter::handle { background: @rule; }
QSplitter::handle:vertical { height: 3px; }
QSplitter::handle:horizontal { width: 1px; }
QSlider::groove:horizontal { height: 6px; background: @rule; border-radius: 3px; }
QSlider::sub-page:horizontal { background: @cedar; border-radius: 3px; }
QSlider::handle:horizontal { width: 20px; margin: -8px 0; border-radius: 10px; background: @paper;
    border: 2px solid @cedar; }
QTableWidget { background: @paper; alternate-background-color: #F7F2E7; }
QHeaderView::section { background: @paper; border: none; border-bottom: 1px solid @rule; padding: 6px;
    color: @pencil; font-weight: 600; }
QTableView QTableCornerButton::section { background: @paper; border: none; border-bottom: 1px solid @rule; }
QTableView { gridline-color: @rule; }
#offsets QHeaderView::section { padding: 2px 6px; font-weight: 400; }
QListWidget { background: @paper; }
QScrollArea, QScrollArea > QWidget > QWidget { background: @paper; }
QToolTip { background: @paper; color: @ink; border: 1px solid @rule; padding: 4px; }
QScrollBar:vertical { background: transparent; width: 10px; }
QScrollBar::handle:vertical { background: #CFC6B4; border-radius: 4px; min-height: 30px; margin: 1px; }
QScrollBar:horizontal { background: transparent; height: 10px; }
QScrollBar::handle:horizontal { background: #CFC6B4; border-radius: 4px; min-width: 30px; margin: 1px; }
QScrollBar::add-line, QScrollBar::sub-line { height: 0; width: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
QAbstractScrollArea::corner { background: transparent; border: none; }
)");
    text.replace(QStringLiteral("@rule"), name(palette::rule));
    text.replace(QStringLiteral("@paper"), name(palette::paper));
    text.replace(QStringLiteral("@bench"), name(palette::bench));
    text.replace(QStringLiteral("@ink"), name(palette::ink));
    text.replace(QStringLiteral("@pencil"), name(palette::pencil));
    text.replace(QStringLiteral("@line"), name(palette::lineBlue));
    text.replace(QStringLiteral("@cedar"), name(palette::cedar));
    return text;
}

QPainterPath linesPath() {
    QPainterPath path;
    path.moveTo(2, 8);
    path.cubicTo(8, 14, 16, 14, 22, 7);
    path.moveTo(3, 17);
    path.lineTo(21, 17);
    for (const double x : {7.0, 12.0, 17.0}) {
        path.moveTo(x, 12);
        path.lineTo(x, 20);
    }
    return path;
}

QPainterPath plankingPath() {
    QPainterPath path;
    path.moveTo(2, 17);
    path.cubicTo(4, 2, 20, 2, 22, 17);
    path.lineTo(2, 17);
    path.moveTo(4, 12.5);
    path.cubicTo(9, 10.5, 15, 10.5, 20, 12.5);
    path.moveTo(6.5, 8.8);
    path.cubicTo(10, 7.4, 14, 7.4, 17.5, 8.8);
    return path;
}

/// A mould upside down on its strongback.
QPainterPath mouldsPath() {
    QPainterPath path;
    path.moveTo(3, 17);
    path.cubicTo(4, 8, 8, 5, 12, 5);
    path.cubicTo(16, 5, 20, 8, 21, 17);
    path.closeSubpath();
    path.moveTo(12, 5);
    path.lineTo(12, 17);
    path.addRect(8, 17, 8, 4);
    return path;
}

/// A board with strips ripped off it.
QPainterPath stockPath() {
    QPainterPath path;
    path.addRect(2, 4, 20, 8);
    for (const double y : {15.0, 18.0, 21.0}) {
        path.moveTo(2, y);
        path.lineTo(22, y);
    }
    return path;
}

/// A hull afloat with a seat across.
QPainterPath fittingOutPath() {
    QPainterPath path;
    path.moveTo(4, 6);
    path.cubicTo(5, 15, 9, 18, 12, 18);
    path.cubicTo(15, 18, 19, 15, 20, 6);
    path.moveTo(6, 10);
    path.lineTo(18, 10);
    path.moveTo(2, 21);
    path.lineTo(22, 21);
    return path;
}

QPainterPath sheetsPath() {
    QPainterPath path;
    path.addRect(5, 3, 14, 18);
    path.moveTo(8, 9);
    path.lineTo(16, 9);
    path.moveTo(8, 13);
    path.lineTo(16, 13);
    path.moveTo(8, 17);
    path.lineTo(13, 17);
    return path;
}

/// A pencil over a line.
QPainterPath journalPath() {
    QPainterPath path;
    path.moveTo(4, 20);
    path.lineTo(20, 20);
    path.moveTo(5, 16);
    path.lineTo(6, 12);
    path.lineTo(16, 3);
    path.lineTo(19, 6);
    path.lineTo(9, 15);
    path.closeSubpath();
    return path;
}

QPainterPath folderPath() {
    QPainterPath path;
    path.moveTo(3, 19);
    path.lineTo(3, 6);
    path.lineTo(10, 6);
    path.lineTo(12, 8.5);
    path.lineTo(21, 8.5);
    path.lineTo(21, 19);
    path.closeSubpath();
    return path;
}

QPainterPath picturePath() {
    QPainterPath path;
    path.addRect(3, 5, 18, 14);
    path.moveTo(4, 17);
    path.cubicTo(9, 9, 13, 9, 20, 15);
    return path;
}

} // namespace

QIcon icon(Icon which) {
    QPixmap pixmap(48, 48);
    pixmap.setDevicePixelRatio(2.0);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(QColor::fromRgb(palette::ink), 2.0, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    switch (which) {
    case Icon::Lines:
        painter.drawPath(linesPath());
        break;
    case Icon::Planking:
        painter.drawPath(plankingPath());
        break;
    case Icon::Moulds:
        painter.drawPath(mouldsPath());
        break;
    case Icon::Stock:
        painter.drawPath(stockPath());
        break;
    case Icon::Sheets:
        painter.drawPath(sheetsPath());
        break;
    case Icon::Journal:
        painter.drawPath(journalPath());
        break;
    case Icon::FittingOut:
        painter.drawPath(fittingOutPath());
        break;
    case Icon::Folder:
        painter.drawPath(folderPath());
        break;
    case Icon::Picture:
        painter.drawPath(picturePath());
        break;
    }
    return QIcon(pixmap);
}

void dress(QApplication& application) {
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    QPalette colours;
    colours.setColor(QPalette::Window, QColor::fromRgb(palette::paper));
    colours.setColor(QPalette::WindowText, QColor::fromRgb(palette::ink));
    colours.setColor(QPalette::Base, QColor::fromRgb(palette::paper));
    colours.setColor(QPalette::AlternateBase, QColor::fromRgb(palette::bench));
    colours.setColor(QPalette::Text, QColor::fromRgb(palette::ink));
    colours.setColor(QPalette::Button, QColor::fromRgb(palette::bench));
    colours.setColor(QPalette::ButtonText, QColor::fromRgb(palette::ink));
    colours.setColor(QPalette::Highlight, QColor(0xE6, 0xDC, 0xC8));
    colours.setColor(QPalette::HighlightedText, QColor::fromRgb(palette::ink));
    colours.setColor(QPalette::ToolTipBase, QColor::fromRgb(palette::paper));
    colours.setColor(QPalette::ToolTipText, QColor::fromRgb(palette::ink));
    colours.setColor(QPalette::Link, QColor::fromRgb(palette::lineBlue));
    colours.setColor(QPalette::Disabled, QPalette::Base, QColor::fromRgb(palette::bench));
    for (const auto role : {QPalette::Text, QPalette::WindowText, QPalette::ButtonText})
        colours.setColor(QPalette::Disabled, role, QColor(0x8F, 0x89, 0x7C));
    QApplication::setPalette(colours);
    try {
        loadFonts();
        QFont font(sheetFont(core::Weight::Regular, 13).family());
        font.setPixelSize(13);
        QApplication::setFont(font);
    } catch (const std::exception& problem) {
        spdlog::warn("the typeface is missing, the window uses another: {}", problem.what());
    }
    application.setStyleSheet(sheet());
}

} // namespace sheerlay::ui

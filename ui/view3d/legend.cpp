#include "ui/view3d/legend.hpp"

#include "ui/scene/palette.hpp"

#include <QEvent>
#include <QPainter>

#include <algorithm>
#include <utility>

namespace sheerlay::ui {
namespace {

constexpr int rowHeight = 21;
constexpr int margin = 10;
constexpr int swatch = 26;

} // namespace

Legend::Legend(QWidget* parent) : QWidget(parent) {
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setAttribute(Qt::WA_NoSystemBackground);
    fitText();
}

void Legend::setUnits(core::Units units) {
    m_units = units;
    fitText();
    update();
}

void Legend::setColours(StripColours colours) {
    m_colours = colours;
    fitText();
    update();
}

void Legend::setBoat(std::shared_ptr<const Boat> boat) {
    m_boat = std::move(boat);
    fitText();
    update();
}

void Legend::fitText() {
    QFont strong = font();
    strong.setWeight(QFont::DemiBold);
    m_lines = colourLines(m_boat.get(), m_colours, m_units);
    int words = 0, limits = 0, count = 1;
    for (const ColourLine& line : m_lines) {
        words = std::max(words, fontMetrics().horizontalAdvance(line.word));
        limits = std::max(limits, fontMetrics().horizontalAdvance(line.limit));
        ++count;
    }
    m_words = words + 14;
    const int wide = std::max(swatch + 10 + m_words + limits + 4,
                              QFontMetrics(strong).horizontalAdvance(colourHeading(m_colours)));
    setFixedSize(2 * margin + wide, rowHeight * count + 2 * margin);
}

void Legend::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        fitText();
}

void Legend::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    QColor sheet = QColor::fromRgb(palette::paper);
    sheet.setAlpha(225);
    painter.setPen(QPen(QColor::fromRgb(palette::rule), 1.0));
    painter.setBrush(sheet);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 5, 5);

    painter.setPen(QColor::fromRgb(palette::ink));
    QFont strong = font();
    strong.setWeight(QFont::DemiBold);
    painter.setFont(strong);
    int y = margin;
    painter.drawText(QRect(margin, y, width() - 2 * margin, rowHeight),
                     Qt::AlignVCenter | Qt::AlignLeft,
                     colourHeading(m_colours));
    painter.setFont(font());
    for (const ColourLine& line : m_lines) {
        y += rowHeight;
        painter.setPen(QPen(QColor::fromRgb(palette::seam), 1.0));
        painter.setBrush(line.colour);
        painter.drawRect(QRectF(margin + 0.5, y + 5.5, swatch, rowHeight - 10));
        painter.setPen(QColor::fromRgb(palette::ink));
        const int left = margin + swatch + 10;
        painter.drawText(QRect(left, y, m_words, rowHeight), Qt::AlignVCenter | Qt::AlignLeft, line.word);
        painter.setPen(QColor::fromRgb(palette::pencil));
        painter.drawText(QRect(left + m_words, y, width() - left - m_words, rowHeight),
                         Qt::AlignVCenter | Qt::AlignLeft,
                         line.limit);
    }
}

} // namespace sheerlay::ui

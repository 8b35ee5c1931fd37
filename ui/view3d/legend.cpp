#include "ui/view3d/legend.hpp"

#include "core/planking/difficulty.hpp"
#include "core/project/wood.hpp"
#include "ui/scene/palette.hpp"
#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"

#include <QEvent>
#include <QPainter>

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>

namespace sheerlay::ui {
namespace {

constexpr int rowHeight = 21;
constexpr int margin = 10;
constexpr int swatch = 26;

struct Row {
    core::Difficulty difficulty;
    double limit; // 1/mm
    bool above = false;
};

std::array<Row, 4> rowsOf(double stripWidth) {
    const core::BendLimits limits = core::bendLimits(stripWidth);
    return {{{core::Difficulty::Free, limits.free},
             {core::Difficulty::Clamp, limits.clamp},
             {core::Difficulty::Hard, limits.hard},
             {core::Difficulty::Taper, limits.hard, true}}};
}

QString limitText(const Row& row, core::Units units) {
    const QString pattern =
        !row.above ? Wording::tr("up to %1 (radius %2)") : Wording::tr("over %1 (radius %2)");
    return pattern.arg(sagText(row.limit, units), radiusText(1.0 / row.limit, units));
}

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

void Legend::setStripWidth(double width) {
    m_stripWidth = width;
    fitText();
    update();
}

void Legend::setWoods(std::vector<std::string> woods) {
    std::ranges::sort(woods);
    const auto twice = std::ranges::unique(woods);
    woods.erase(twice.begin(), twice.end());
    m_woods = std::move(woods);
    fitText();
    update();
}

QString Legend::heading() const {
    return m_colours == StripColours::Wood ? tr("Woods") : Wording::tr("Edge bend of the uncut edge");
}

std::vector<Legend::Line> Legend::lines() const {
    std::vector<Line> lines;
    if (m_colours == StripColours::Bend) {
        for (const Row& row : rowsOf(m_stripWidth))
            lines.push_back({difficultyColour(row.difficulty),
                             toQString(core::toText(row.difficulty)),
                             limitText(row, m_units)});
        return lines;
    }
    for (const std::string& id : m_woods) {
        const core::Wood* wood = core::findWood(id);
        lines.push_back({woodColour(id), toQString(wood != nullptr ? wood->commonName : id), QString()});
    }
    return lines;
}

void Legend::fitText() {
    QFont strong = font();
    strong.setWeight(QFont::DemiBold);
    int words = 0, limits = 0, count = 1;
    for (const Line& line : lines()) {
        words = std::max(words, fontMetrics().horizontalAdvance(line.word));
        limits = std::max(limits, fontMetrics().horizontalAdvance(line.limit));
        ++count;
    }
    m_words = words + 14;
    const int wide =
        std::max(swatch + 10 + m_words + limits + 4, QFontMetrics(strong).horizontalAdvance(heading()));
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
    painter.drawText(
        QRect(margin, y, width() - 2 * margin, rowHeight), Qt::AlignVCenter | Qt::AlignLeft, heading());
    painter.setFont(font());
    for (const Line& line : lines()) {
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

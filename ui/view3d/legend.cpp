#include "ui/view3d/legend.hpp"

#include "core/planking/difficulty.hpp"
#include "ui/scene/palette.hpp"
#include "ui/scene/words.hpp"

#include <QEvent>
#include <QPainter>

#include <algorithm>
#include <array>

namespace sheerlay::ui {
namespace {

constexpr int rowHeight = 21;
constexpr int margin = 10;
constexpr int swatch = 26;

struct Row {
    core::Difficulty difficulty;
    double upTo; // 1/mm; 0 for the last, which has no end
};

constexpr std::array<Row, 4> rows{{{core::Difficulty::Free, core::freeEdgeBend},
                                   {core::Difficulty::Clamp, core::clampEdgeBend},
                                   {core::Difficulty::Hard, core::hardEdgeBend},
                                   {core::Difficulty::Taper, 0.0}}};

QString limitText(const Row& row, core::Units units) {
    const double kappa = row.upTo > 0.0 ? row.upTo : core::hardEdgeBend;
    const QString pattern =
        row.upTo > 0.0 ? QStringLiteral("up to %1 (radius %2)") : QStringLiteral("over %1 (radius %2)");
    return pattern.arg(sagText(kappa, units), radiusText(1.0 / kappa, units));
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

void Legend::fitText() {
    int words = 0;
    int limits = 0;
    for (const Row& row : rows) {
        words = std::max(words, fontMetrics().horizontalAdvance(toQString(core::toText(row.difficulty))));
        limits = std::max(limits, fontMetrics().horizontalAdvance(limitText(row, m_units)));
    }
    m_words = words + 14;
    setFixedSize(2 * margin + swatch + 10 + m_words + limits + 4, rowHeight * 5 + 2 * margin);
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
                     QStringLiteral("Edge bend of the uncut edge"));
    painter.setFont(font());
    for (const Row& row : rows) {
        y += rowHeight;
        painter.setPen(QPen(QColor::fromRgb(palette::seam), 1.0));
        painter.setBrush(difficultyColour(row.difficulty));
        painter.drawRect(QRectF(margin + 0.5, y + 5.5, swatch, rowHeight - 10));
        painter.setPen(QColor::fromRgb(palette::ink));
        const int left = margin + swatch + 10;
        painter.drawText(QRect(left, y, m_words, rowHeight),
                         Qt::AlignVCenter | Qt::AlignLeft,
                         toQString(core::toText(row.difficulty)));
        painter.setPen(QColor::fromRgb(palette::pencil));
        painter.drawText(QRect(left + m_words, y, width() - left - m_words, rowHeight),
                         Qt::AlignVCenter | Qt::AlignLeft,
                         limitText(row, m_units));
    }
}

} // namespace sheerlay::ui

#include "ui/panels/laying_bar.hpp"

#include "ui/scene/palette.hpp"
#include "ui/scene/wording.hpp"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QSignalBlocker>
#include <QSlider>
#include <QStyle>
#include <QStyleOptionSlider>
#include <QTimer>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace sheerlay::ui {
namespace {

constexpr int playInterval = 110; // ms per piece: a whole canoe in some eight seconds

enum class Glyph { First, Back, Play, Pause, Next, Last };

/// The buttons' signs, drawn as the icons are: plain strokes and wedges.
QIcon glyph(Glyph which) {
    constexpr int size = 24;
    QPixmap pixmap(size * 2, size * 2);
    pixmap.setDevicePixelRatio(2.0);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(QColor::fromRgb(palette::ink));
    const bool back = which == Glyph::First || which == Glyph::Back;
    if (back) {
        painter.translate(size, 0);
        painter.scale(-1, 1);
    }
    if (which == Glyph::Pause) {
        painter.drawRect(QRectF(6.5, 5, 4, 14));
        painter.drawRect(QRectF(13.5, 5, 4, 14));
    } else {
        painter.drawPolygon(QPolygonF({{7, 5}, {17.5, 12}, {7, 19}}));
        if (which != Glyph::Play)
            painter.drawRect(QRectF(17.5, 5, 2.5, 14));
        if (which == Glyph::First || which == Glyph::Last)
            painter.drawRect(QRectF(21.5, 5, 2.5, 14));
    }
    return QIcon(pixmap);
}

} // namespace

LayingBar::LayingBar(QWidget* parent)
    : QWidget(parent), m_label(new QLabel(this)), m_slider(new QSlider(Qt::Horizontal, this)),
      m_landmarkRow(new QWidget(this)), m_timer(new QTimer(this)) {
    const auto button = [this](Glyph which, const QString& words, void (LayingBar::*act)()) {
        auto* made = new QToolButton(this);
        made->setIcon(glyph(which));
        made->setIconSize({24, 24});
        made->setFixedSize(52, 46);
        made->setToolTip(words);
        made->setAccessibleName(words);
        made->setFocusPolicy(Qt::NoFocus);
        connect(made, &QToolButton::clicked, this, [this, act] { (this->*act)(); });
        return made;
    };
    m_firstButton = button(Glyph::First, Wording::tr("Lift everything (Home)"), &LayingBar::first);
    m_backButton =
        button(Glyph::Back, Wording::tr("Lift the last piece (Left; Shift for the row)"), &LayingBar::lift);
    m_playButton = button(Glyph::Play, Wording::tr("Lay piece after piece (Space)"), &LayingBar::play);
    m_nextButton =
        button(Glyph::Next, Wording::tr("Lay the next piece (Right; Shift for the row)"), &LayingBar::lay);
    m_lastButton = button(Glyph::Last, Wording::tr("Lay everything (End)"), &LayingBar::last);

    m_label->setFixedWidth(320); // the slider keeps its place whatever the words
    m_label->setStyleSheet(QStringLiteral("font-size: 16px; font-weight: 600;"));
    m_slider->setFocusPolicy(Qt::NoFocus);
    m_slider->setAccessibleName(Wording::tr("Pieces laid"));
    m_slider->setToolTip(Wording::tr("Lay or lift to anywhere (arrows)"));
    m_landmarkRow->setFixedHeight(22);
    m_landmarkRow->installEventFilter(this);
    m_slider->setMinimumHeight(28);
    connect(m_slider, &QSlider::valueChanged, this, &LayingBar::setLaid);
    connect(m_slider, &QSlider::sliderPressed, this, [this] { // the hand on it goes before playing
        if (playing())
            play();
    });

    auto* along = new QVBoxLayout;
    along->setSpacing(0);
    along->addWidget(m_slider);
    along->addWidget(m_landmarkRow);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(14, 8, 14, 6);
    layout->setSpacing(6);
    for (QToolButton* one : {m_firstButton, m_backButton, m_playButton, m_nextButton, m_lastButton})
        layout->addWidget(one);
    layout->addSpacing(10);
    layout->addWidget(m_label);
    layout->addLayout(along, 1);

    m_timer->setInterval(playInterval);
    connect(m_timer, &QTimer::timeout, this, [this] {
        lay();
        if (m_boat && m_laid >= m_boat->pieces())
            play();
    });
    refresh();
}

void LayingBar::setBoat(std::shared_ptr<const Boat> boat) {
    m_boat = std::move(boat);
    for (QToolButton* old : m_landmarkButtons)
        old->deleteLater();
    m_landmarkButtons.clear();
    m_landmarks = m_boat ? landmarks(*m_boat) : std::vector<Landmark>();
    for (const Landmark& landmark : m_landmarks) {
        auto* made = new QToolButton(m_landmarkRow);
        made->setText(landmark.name);
        made->setToolTip(Wording::tr("Lay up to here"));
        made->setAutoRaise(true);
        made->setFocusPolicy(Qt::TabFocus);
        made->setStyleSheet(
            QStringLiteral(
                "QToolButton { font-size: 12px; color: %1; padding: 1px 3px; border: none; "
                "min-height: 0; } QToolButton:hover, QToolButton:focus { text-decoration: underline; }")
                .arg(QColor::fromRgb(palette::lineBlue).name()));
        connect(made, &QToolButton::clicked, this, [this, laid = landmark.laid] { setLaid(laid); });
        made->show();
        m_landmarkButtons.push_back(made);
    }
    const QSignalBlocker quiet(m_slider);
    m_slider->setRange(0, m_boat ? m_boat->pieces() : 0);
    m_laid = std::clamp(m_laid, 0, m_boat ? m_boat->pieces() : 0);
    m_slider->setValue(m_laid);
    refresh();
    placeLandmarks();
    Q_EMIT laidChanged(m_laid);
}

void LayingBar::placeLandmarks() {
    if (!m_boat || m_boat->pieces() == 0)
        return;
    const int handle = m_slider->style()->pixelMetric(QStyle::PM_SliderLength, nullptr, m_slider);
    const int run = m_landmarkRow->width() - handle;
    constexpr int apart = 4;
    const std::size_t count = m_landmarkButtons.size();
    std::vector<int> left(count);
    std::vector<int> width(count);
    // each word stands under its place; where two would meet the later one is pushed on …
    int free = 0;
    for (std::size_t i = 0; i < count; ++i) {
        width[i] = m_landmarkButtons[i]->sizeHint().width();
        const int centre = handle / 2 + run * m_landmarks[i].laid / m_boat->pieces();
        left[i] = std::max(free, centre - width[i] / 2);
        free = left[i] + width[i] + apart;
    }
    // … and what then runs off the end pushes the others back
    int end = m_landmarkRow->width();
    for (std::size_t i = count; i-- > 0;) {
        left[i] = std::min(left[i], end - width[i]);
        end = left[i] - apart;
        m_landmarkButtons[i]->setGeometry(left[i], 0, width[i], m_landmarkRow->height());
        m_landmarkButtons[i]->setVisible(left[i] >= 0); // a narrow window keeps those nearest the end
    }
}

bool LayingBar::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_landmarkRow && event->type() == QEvent::Resize)
        placeLandmarks();
    return QWidget::eventFilter(watched, event);
}

QString LayingBar::text() const {
    return m_label->text();
}

bool LayingBar::playing() const {
    return m_timer->isActive();
}

void LayingBar::refresh() {
    const int pieces = m_boat ? m_boat->pieces() : 0;
    m_label->setText(m_boat ? layingText(*m_boat, m_laid) : QString());
    m_firstButton->setEnabled(m_laid > 0);
    m_backButton->setEnabled(m_laid > 0);
    m_playButton->setEnabled(pieces > 0);
    m_nextButton->setEnabled(m_laid < pieces);
    m_lastButton->setEnabled(m_laid < pieces);
}

void LayingBar::setLaid(int count) {
    const int wanted = std::clamp(count, 0, m_boat ? m_boat->pieces() : 0);
    if (wanted == m_laid)
        return;
    m_laid = wanted;
    const QSignalBlocker quiet(m_slider);
    m_slider->setValue(wanted);
    refresh();
    Q_EMIT laidChanged(m_laid);
}

void LayingBar::layRow() {
    if (m_boat)
        setLaid(afterRow(*m_boat, m_laid, true));
}

void LayingBar::liftRow() {
    if (m_boat)
        setLaid(afterRow(*m_boat, m_laid, false));
}

void LayingBar::last() {
    if (m_boat)
        setLaid(m_boat->pieces());
}

void LayingBar::play() {
    if (m_timer->isActive()) {
        m_timer->stop();
    } else if (m_boat && m_boat->pieces() > 0) {
        if (m_laid >= m_boat->pieces())
            first();
        m_timer->start();
    }
    m_playButton->setIcon(glyph(m_timer->isActive() ? Glyph::Pause : Glyph::Play));
}

} // namespace sheerlay::ui

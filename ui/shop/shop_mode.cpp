#include "ui/shop/shop_mode.hpp"

#include "core/project/laid_strips.hpp"
#include "ui/paper/fonts.hpp"
#include "ui/paper/sheet_painter.hpp"
#include "ui/scene/palette.hpp"
#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"
#include "ui/shop/girth_panel.hpp"

#include <QKeyEvent>
#include <QPainter>
#include <QToolButton>

#include <algorithm>

namespace sheerlay::ui {
namespace {

constexpr QRgb nightGround = 0xFF26292D, nightInk = 0xFFE9E4D8, nightPencil = 0xFFA8A59C;

QFont sized(const QFont& base, double pixels, int weight = QFont::Normal) {
    QFont font = base;
    font.setPixelSize(std::max(8, static_cast<int>(pixels)));
    font.setWeight(static_cast<QFont::Weight>(weight));
    return font;
}

/// Of the big targets: a gloved hand's breadth.
int targetHeight(int screen) {
    return std::max(64, screen / 9);
}

/// The largest size up to `most` at which the text fits.
QFont fitting(const QFont& base, const QString& text, const QRectF& room, double most, int weight) {
    double pixels = most;
    while (pixels > 10.0) {
        const QRectF taken =
            QFontMetricsF(sized(base, pixels, weight)).boundingRect(room, Qt::TextWordWrap, text);
        if (taken.width() <= room.width() && taken.height() <= room.height())
            break;
        pixels *= 0.93;
    }
    return sized(base, pixels, weight);
}

} // namespace

ShopMode::ShopMode(QWidget* parent)
    : QWidget(parent, Qt::Window), m_back(new QToolButton(this)), m_next(new QToolButton(this)),
      m_undo(new QToolButton(this)), m_girth(new QToolButton(this)), m_light(new QToolButton(this)),
      m_leave(new QToolButton(this)), m_girths(new GirthPanel(this)) {
    setWindowTitle(Wording::tr("Sheerlay: shop mode"));
    setAccessibleName(Wording::tr("Shop mode"));
    setFocusPolicy(Qt::StrongFocus);
    setMinimumSize(640, 400);
    m_back->setToolTip(Wording::tr("The strip before (left arrow)"));
    m_next->setToolTip(Wording::tr("Mark as laid, with today's date, and go on (Enter)"));
    m_undo->setToolTip(Wording::tr("Take the mark back (Backspace)"));
    m_light->setToolTip(Wording::tr("Dark on light, or light on dark (L)"));
    m_leave->setToolTip(Wording::tr("Back to the benches (Esc)"));
    m_back->setText(Wording::tr("Back"));
    m_undo->setText(Wording::tr("Not laid after all"));
    m_leave->setText(Wording::tr("Leave the shop"));
    m_girth->setText(Wording::tr("Girth…"));
    m_girth->setToolTip(Wording::tr("Write down what the tape says below this row (G)"));
    for (QToolButton* button : {m_back, m_next, m_undo, m_girth, m_light, m_leave}) {
        button->setFocusPolicy(Qt::NoFocus);
        button->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    }
    connect(m_back, &QToolButton::clicked, this, [this] { step(-1); });
    connect(m_next, &QToolButton::clicked, this, &ShopMode::layAndGoOn);
    connect(m_undo, &QToolButton::clicked, this, [this] {
        if (const core::Strip* s = strip())
            Q_EMIT notLaid(toQString(s->id));
    });
    connect(m_girth, &QToolButton::clicked, this, &ShopMode::askGirth);
    connect(m_girths, &GirthPanel::noted, this, &ShopMode::measured);
    connect(m_girths, &GirthPanel::left, this, &ShopMode::leaveGirths);
    connect(m_girths, &GirthPanel::taken, this, [this] {
        leaveGirths();
        Q_EMIT trialTaken();
    });
    connect(m_light, &QToolButton::clicked, this, [this] { setNight(!m_night); });
    connect(m_leave, &QToolButton::clicked, this, &QWidget::close);
    refresh();
}

const core::Strip* ShopMode::strip() const {
    if (!m_boat || m_boat->pieces() == 0)
        return nullptr;
    const int index = std::clamp(m_index, 0, m_boat->pieces() - 1);
    return &m_boat->plan.strips[m_boat->byOrder[static_cast<std::size_t>(index)]];
}

std::string ShopMode::inHand() const {
    const core::Strip* s = strip();
    return s != nullptr ? s->id : std::string();
}

void ShopMode::setBoat(std::shared_ptr<const Boat> boat) {
    const std::string held = inHand();
    m_boat = std::move(boat);
    if (m_boat && m_boat->strip(held) != nullptr)
        m_index = m_boat->strip(held)->order - 1;
    m_girths->backToReadings(Wording::tr("The plan has changed meanwhile. Work it out again."));
    refresh();
}

void ShopMode::setJournal(const core::Journal& journal) {
    m_journal = journal;
    refresh();
}

void ShopMode::setUnits(core::Units units) {
    m_units = units;
    m_girths->setUnits(units);
    refresh();
}

void ShopMode::setNight(bool night) {
    const bool changed = night != m_night;
    m_night = night;
    refresh();
    if (changed)
        Q_EMIT nightChanged(night);
}

void ShopMode::goTo(const std::string& stripId) {
    if (!m_boat)
        return;
    if (const core::Strip* wanted = m_boat->strip(stripId)) {
        m_index = wanted->order - 1;
    } else {
        m_index = 0;
        while (m_index + 1 < m_boat->pieces() && core::laidEntry(m_journal, inHand()) != nullptr)
            ++m_index;
    }
    refresh();
    Q_EMIT placeChanged(toQString(inHand()));
}

void ShopMode::step(int by) {
    if (!m_boat)
        return;
    m_index = std::clamp(m_index + by, 0, std::max(0, m_boat->pieces() - 1));
    refresh();
    Q_EMIT placeChanged(toQString(inHand()));
}

void ShopMode::askGirth() {
    const core::Strip* s = strip();
    if (s != nullptr && !m_girths->weighing())
        m_girths->ask(m_boat, *s);
}

void ShopMode::tellTrial(const TrialText& trial) {
    m_girths->decide(trial);
}

void ShopMode::tellRefused(const QString& why) {
    m_girths->backToReadings(why);
}

void ShopMode::leaveGirths() {
    m_girths->leave();
    setFocus();
}

QString ShopMode::placeWords(const core::Strip& strip) const {
    QString words = m_text.place;
    if (const core::LaidStrip* entry = core::laidEntry(m_journal, strip.id))
        words += entry->date.empty() ? Wording::tr(" · laid")
                                     : Wording::tr(" · laid %1").arg(toQString(entry->date));
    std::size_t read = 0;
    for (const core::RowReading& round : m_journal.readings)
        if (round.row == strip.row &&
            (round.side == core::ReadSide::Both ||
             (round.side == core::ReadSide::Port) == (strip.side == core::Side::Port)))
            read += round.girthLeft.size();
    if (read > 0)
        words += Wording::tr(" · girth read at %1 stations").arg(read);
    return words;
}

void ShopMode::layAndGoOn() {
    const core::Strip* s = strip();
    if (s == nullptr)
        return;
    if (core::laidEntry(m_journal, s->id) == nullptr)
        Q_EMIT laid(toQString(s->id));
    step(1);
}

void ShopMode::refresh() {
    const core::Strip* s = strip();
    m_text = s != nullptr ? shopText(*m_boat, *s, m_units) : ShopText();
    const bool down = s != nullptr && core::laidEntry(m_journal, s->id) != nullptr;
    const bool last = m_boat && m_index + 1 >= m_boat->pieces();
    m_next->setText(down   ? Wording::tr("Next")
                    : last ? Wording::tr("Laid: the last one")
                           : Wording::tr("Laid, next"));
    m_next->setEnabled(s != nullptr && !(down && last));
    m_back->setEnabled(s != nullptr && m_index > 0);
    m_undo->setVisible(down);
    m_girth->setEnabled(s != nullptr && s->row > 0 && s->row < m_boat->plan.lastRow);
    m_light->setText(m_night ? Wording::tr("Light") : Wording::tr("Dark"));
    setAccessibleDescription(
        Wording::tr("%1, %2, length to cut %3").arg(m_text.name, m_text.place, m_text.length));
    place();
    update();
}

void ShopMode::place() {
    const int h = height(), margin = h / 40, tall = targetHeight(h);
    const QString ground = QColor::fromRgb(m_night ? nightGround : palette::paper).name();
    const QString ink = QColor::fromRgb(m_night ? nightInk : palette::ink).name();
    const auto dress = [&](QToolButton* button, int pixels, const QString& back, const QString& front) {
        button->setStyleSheet(
            QStringLiteral("QToolButton { font-size: %1px; font-weight: 600; background: %2; color: %3; "
                           "border: 2px solid %4; border-radius: 8px; padding: 2px 14px; }"
                           "QToolButton:disabled { color: #8C877C; border-color: #8C877C; background: %5; }")
                .arg(pixels)
                .arg(back, front, front == ink ? front : back, ground));
    };
    dress(m_back, tall / 3, ground, ink);
    dress(m_next, tall / 3, QColor::fromRgb(palette::cedar).name(), QStringLiteral("#FFFFFF"));
    const int wide = (width() - 3 * margin) / 3;
    m_back->setFixedSize(wide, tall);
    m_next->setFixedSize(width() - 3 * margin - wide, tall);
    m_back->move(margin, h - margin - tall);
    m_next->move(2 * margin + wide, h - margin - tall);
    int x = width() - margin;
    for (QToolButton* button : {m_leave, m_light, m_girth, m_undo}) {
        dress(button, std::max(13, h / 45), ground, ink);
        button->setFixedSize(button->sizeHint().width() + 8, std::max(32, h / 18));
        x -= button->width();
        button->move(x, margin);
        x -= margin / 2;
    }
    m_girths->dress(std::max(14, h / 32), ground, ink, QColor::fromRgb(palette::cedar).name());
    m_girths->setGeometry(width() / 8, h / 10, width() * 3 / 4, h * 7 / 10);
}

void ShopMode::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    place();
}

void ShopMode::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QColor ink = QColor::fromRgb(m_night ? nightInk : palette::ink);
    const QColor pencil = QColor::fromRgb(m_night ? nightPencil : palette::pencil);
    painter.fillRect(rect(), QColor::fromRgb(m_night ? nightGround : palette::paper));
    const core::Strip* s = strip();
    const double h = height(), margin = h / 40.0, wide = width() - 2.0 * margin;
    const auto write = [&](const QRectF& room,
                           const QString& text,
                           double most,
                           int weight,
                           const QColor& colour,
                           int align) {
        painter.setFont(fitting(font(), text, room, most, weight));
        painter.setPen(colour);
        painter.drawText(room, align | Qt::TextWordWrap, text);
    };
    if (s == nullptr) {
        write({margin, 0.3 * h, wide, 0.3 * h},
              Wording::tr("There is no plan to lay strips by. Open a project first."),
              h / 16.0,
              QFont::DemiBold,
              ink,
              Qt::AlignCenter);
        return;
    }
    // name a sixth of the height: what the eye looks for first from the other side of the boat
    const QColor cedar = m_night ? QColor(0xE0, 0x93, 0x66) : QColor::fromRgb(palette::cedar);
    write({margin, 0.05 * h, 0.46 * wide, 0.285 * h},
          m_text.name,
          h / 6.0 / 0.727,
          QFont::Bold,
          cedar,
          Qt::AlignLeft | Qt::AlignVCenter);
    write({margin + 0.48 * wide, 0.105 * h, 0.52 * wide, 0.05 * h},
          Wording::tr("length to cut"),
          h / 26.0,
          QFont::Normal,
          pencil,
          Qt::AlignRight | Qt::AlignVCenter);
    write({margin + 0.48 * wide, 0.145 * h, 0.52 * wide, 0.14 * h},
          m_text.length,
          h / 8.0,
          QFont::Bold,
          ink,
          Qt::AlignRight | Qt::AlignVCenter);
    write({margin, 0.02 * h, 0.55 * wide, 0.055 * h},
          placeWords(*s),
          h / 28.0,
          QFont::DemiBold,
          pencil,
          Qt::AlignLeft | Qt::AlignVCenter);

    const QRectF picture(margin, 0.31 * h, wide, 0.2 * h);
    const double drawingWidth = shopDrawingWidth(picture.width(), picture.height());
    const double pixelsPerMm = wide / drawingWidth;
    painter.save();
    painter.translate(picture.topLeft());
    painter.scale(pixelsPerMm, pixelsPerMm);
    paint(painter, shopDrawing(*m_boat, *s, drawingWidth, picture.height() / pixelsPerMm, m_night));
    painter.restore();
    write({margin, 0.515 * h, wide, 0.03 * h},
          m_text.caption,
          h / 48.0,
          QFont::Normal,
          pencil,
          Qt::AlignLeft | Qt::AlignVCenter);
    write({margin, 0.55 * h, wide, 0.055 * h},
          m_text.ends,
          h / 24.0,
          QFont::DemiBold,
          ink,
          Qt::AlignLeft | Qt::AlignVCenter);
    const double top = 0.615 * h, bottom = h - 1.5 * margin - targetHeight(height());
    const double small = 0.056 * h; // two lines, to be read from two metres off
    const double each = (bottom - small - top) / 3.0;
    for (int i = 0; i < m_text.watch.size(); ++i) {
        const QRectF row(margin, top + i * each, wide, each - margin / 3.0);
        painter.fillRect(QRectF(row.left(), row.top() + 3.0, margin / 3.0, row.height() - 6.0),
                         i == m_text.edgeBendAt ? difficultyColour(core::difficultyOf(*s)) : pencil);
        write(row.adjusted(margin, 0.0, 0.0, 0.0),
              m_text.watch[i],
              h / 28.0,
              QFont::Normal,
              ink,
              Qt::AlignLeft | Qt::AlignVCenter);
    }
    write({margin, bottom - small, wide, small},
          m_text.caution,
          h / 34.0,
          QFont::Normal,
          pencil,
          Qt::AlignLeft | Qt::AlignVCenter);
}

void ShopMode::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
        if (m_next->isEnabled() && !event->isAutoRepeat()) // a key that is held down lays one strip
            layAndGoOn();
        break;
    case Qt::Key_Right:
    case Qt::Key_PageDown:
        step(1);
        break;
    case Qt::Key_Left:
    case Qt::Key_PageUp:
        step(-1);
        break;
    case Qt::Key_Backspace:
        if (m_undo->isVisible())
            m_undo->click();
        break;
    case Qt::Key_G:
        askGirth();
        break;
    case Qt::Key_L:
        setNight(!m_night);
        break;
    case Qt::Key_Escape:
    case Qt::Key_F11:
        close();
        break;
    default:
        QWidget::keyPressEvent(event);
    }
}

void ShopMode::closeEvent(QCloseEvent* event) {
    QWidget::closeEvent(event);
    Q_EMIT left();
}

} // namespace sheerlay::ui

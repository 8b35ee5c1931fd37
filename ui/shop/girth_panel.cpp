#include "ui/shop/girth_panel.hpp"

#include "core/journal/planned_girth.hpp"
#include "core/journal/typed_round.hpp"
#include "core/journal/what_was_laid.hpp"
#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"

#include <QDate>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QToolButton>

#include <algorithm>
#include <cmath>
#include <utility>

namespace sheerlay::ui {
namespace {

constexpr double nothingLeft = 1.0; // mm: the edge follows the centreline
constexpr int columns = 8, placeRow = 1, saidRow = 5;

QLabel* wrapped() {
    auto* label = new QLabel;
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    return label;
}

} // namespace

GirthPanel::GirthPanel(QWidget* parent)
    : QFrame(parent), m_grid(new QGridLayout(this)), m_head(wrapped()), m_place(wrapped()), m_said(wrapped()),
      m_field(new QLineEdit) {
    setAccessibleName(Wording::tr("What the tape says"));
    setFocusPolicy(Qt::ClickFocus);
    m_field->setAlignment(Qt::AlignCenter);
    m_field->setAccessibleName(accessibleName());
    m_field->setToolTip(Wording::tr("Along the mould, from the row's lower edge to the centreline"));
    m_place->setAlignment(Qt::AlignCenter);
    m_grid->addWidget(m_head, 0, 0, 1, columns);
    m_before = target(QStringLiteral("‹"), Wording::tr("The station before"), 1, 0);
    m_grid->addWidget(m_place, placeRow, 1, 1, columns - 2);
    m_next = target(QStringLiteral("›"), Wording::tr("The next station"), 1, columns - 1);
    m_grid->addWidget(m_field, 2, 0, 1, columns);
    makeKeypad();
    m_grid->addWidget(m_said, saidRow, 0, 1, columns);
    m_away = target(Wording::tr("Leave it"), Wording::tr("Leave it (Esc)"), 6, 0, 3);
    m_write = target(
        Wording::tr("Work it out"), tr("What the readings would change; nothing is changed yet"), 6, 3, 5);
    m_typing.insert(m_typing.end(), {m_before, m_next, m_field, m_away, m_write});
    m_later = target(tr("Decide later"), tr("The readings wait on the Journal bench (Esc)"), 7, 0, 4);
    m_take =
        target(tr("Take the new plan"), tr("The round goes into the journal, and the boat follows"), 7, 4, 4);
    connect(m_before, &QToolButton::clicked, this, [this] { step(-1); });
    connect(m_next, &QToolButton::clicked, this, [this] { step(1); });
    connect(m_away, &QToolButton::clicked, this, &GirthPanel::left);
    connect(m_write, &QToolButton::clicked, this, &GirthPanel::writeDown);
    connect(m_later, &QToolButton::clicked, this, &GirthPanel::left);
    connect(m_take, &QToolButton::clicked, this, &GirthPanel::taken);
    showTargets(false, false);
    hide();
}

QToolButton*
GirthPanel::target(const QString& text, const QString& spoken, int row, int column, int columnSpan) {
    auto* button = new QToolButton;
    button->setText(text);
    button->setAccessibleName(spoken);
    button->setToolTip(spoken);
    button->setFocusPolicy(Qt::TabFocus);
    button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    m_grid->addWidget(button, row, column, 1, columnSpan);
    return button;
}

void GirthPanel::makeKeypad() {
    const QStringList keys{QStringLiteral("1"),
                           QStringLiteral("2"),
                           QStringLiteral("3"),
                           QStringLiteral("4"),
                           QStringLiteral("5"),
                           QStringLiteral("/"),
                           QStringLiteral("'"),
                           QStringLiteral("\""),
                           QStringLiteral("6"),
                           QStringLiteral("7"),
                           QStringLiteral("8"),
                           QStringLiteral("9"),
                           QStringLiteral("0"),
                           QStringLiteral("."),
                           QStringLiteral("␣"),
                           QStringLiteral("⌫")};
    for (int i = 0; i < keys.size(); ++i) {
        const QString key = keys[i];
        const bool space = i == 14, back = i == 15;
        QToolButton* button = target(key,
                                     space  ? Wording::tr("Space")
                                     : back ? Wording::tr("Take back the last sign (Backspace)")
                                            : key,
                                     3 + i / columns,
                                     i % columns);
        button->setFocusPolicy(Qt::NoFocus); // the field keeps the keys
        m_typing.push_back(button);
        connect(button, &QToolButton::clicked, this, [this, key, space, back] {
            if (back)
                m_field->backspace();
            else
                m_field->insert(space ? QStringLiteral(" ") : key);
        });
    }
}

bool GirthPanel::ask(const std::shared_ptr<const Boat>& boat, const core::Strip& strip) {
    std::vector<Place> places;
    const std::vector<std::string> names = boat->stationNames();
    for (std::size_t i = 0; strip.row > 0 && i < boat->project.hull.stations.size(); ++i) {
        const core::Station& station = boat->project.hull.stations[i];
        const auto planned =
            core::plannedGirthLeft(boat->plan, boat->hull, strip.row, station.x + boat->hull.xShift);
        if (planned && planned->left > nothingLeft)
            places.push_back(
                {station, i < names.size() ? toQString(names[i]) : QString(), planned->left, {}, {}});
    }
    if (places.empty())
        return false;
    m_boat = boat;
    m_row = strip.row;
    m_side = strip.side == core::Side::Port ? core::ReadSide::Port : core::ReadSide::Starboard;
    m_places = std::move(places);
    m_at = 0;
    m_below = rowText(strip);
    say(QString());
    m_field->clear();
    showTargets(false, false);
    refill();
    show();
    raise();
    m_field->setFocus();
    return true;
}

void GirthPanel::setUnits(core::Units units) {
    m_units = units;
    refill();
}

QString GirthPanel::station() const {
    return m_places.empty() ? QString() : m_places[m_at].name;
}

QString GirthPanel::said() const {
    return m_said->text();
}

void GirthPanel::say(const QString& words) {
    m_said->setText(words);
    setAccessibleDescription(words);
}

void GirthPanel::refill() {
    if (m_places.empty())
        return;
    const Place& place = m_places[m_at];
    m_place->setText(
        Wording::tr("station %1: the plan leaves %2").arg(place.name, lengthText(place.planned, m_units)));
    m_field->setText(place.typed);
    m_field->setAccessibleName(Wording::tr("Girth left at station %1").arg(place.name));
    m_before->setEnabled(m_at > 0);
    m_next->setEnabled(m_at + 1 < m_places.size());
}

bool GirthPanel::farOff(const core::GirthLeft& girth) const {
    core::RowReading soFar = round();
    std::erase_if(soFar.girthLeft, [&](const core::GirthLeft& other) { return other.x == girth.x; });
    soFar.girthLeft.push_back(girth);
    const double x = girth.x + m_boat->hull.xShift;
    return std::ranges::any_of(core::doubtsAbout(soFar, m_boat->project.journal, m_boat->hull, m_boat->plan),
                               [x](const core::LeftOutReading& doubt) { return doubt.x == x; });
}

QString GirthPanel::besideThePlan(const Place& place, const core::GirthLeft& girth) const {
    const double less = place.planned - girth.girth;
    const QString off = lengthText(std::abs(less), m_units);
    if (off == lengthText(0.0, m_units))
        return tr("Station %1: as planned.").arg(place.name);
    return less > 0 ? tr("Station %1: %2 less than planned.").arg(place.name, off)
                    : tr("Station %1: %2 more than planned.").arg(place.name, off);
}

bool GirthPanel::keep() {
    Place& place = m_places[m_at];
    const QString typed = m_field->text().trimmed();
    if (typed.isEmpty()) {
        place.typed.clear();
        say(QString());
        return true;
    }
    const auto read = core::readGirth(place.station, typed.toStdString(), m_units, m_boat->project.units);
    if (!read) {
        say(Wording::tr("Station %1: %2; %3 would do.")
                .arg(place.name, heardText(read.error().found), heardText(read.error().would)));
        return false;
    }
    if (farOff(*read) && place.doubted != typed) {
        place.doubted = typed;
        m_field->selectAll(); // what is read anew takes its place
        say(tr("Station %1: %2 was read where the plan leaves %3, and strips and moulds are not so far off. "
               "Read it once more; Enter again keeps it.")
                .arg(place.name, lengthText(read->girth, m_units), lengthText(place.planned, m_units)));
        return false;
    }
    place.typed = typed;
    say(besideThePlan(place, *read));
    return true;
}

core::RowReading GirthPanel::round() const {
    core::RowReading round;
    round.row = m_row;
    round.side = m_side;
    round.date = QDate::currentDate().toString(Qt::ISODate).toStdString();
    for (const Place& place : m_places)
        if (!place.typed.isEmpty())
            if (const auto read =
                    core::readGirth(place.station, place.typed.toStdString(), m_units, m_boat->project.units))
                round.girthLeft.push_back(*read);
    return round;
}

void GirthPanel::step(int by) {
    if (m_places.empty() || !keep())
        return;
    const auto last = static_cast<std::ptrdiff_t>(m_places.size()) - 1;
    m_at =
        static_cast<std::size_t>(std::clamp<std::ptrdiff_t>(static_cast<std::ptrdiff_t>(m_at) + by, 0, last));
    refill();
    m_field->setFocus();
}

void GirthPanel::writeDown() {
    if (m_places.empty() || !keep())
        return;
    const core::RowReading typed = round();
    if (typed.girthLeft.empty()) {
        say(Wording::tr("Nothing is typed yet. The tape at two or three stations would do for a start."));
        return;
    }
    showTargets(true, false);
    m_place->clear();
    say(Wording::tr("Planning the rows to come…"));
    setFocus();
    Q_EMIT noted(typed);
}

void GirthPanel::decide(const TrialText& trial) {
    if (!m_weighing)
        return;
    m_take->setText(trial.planned ? tr("Take the new plan") : tr("Write them down"));
    showTargets(true, true);
    m_place->setText(QString(trial.change).replace(QStringLiteral(" · "), QStringLiteral("\n")));
    constexpr qsizetype most = 2; // sentences that have room
    QStringList words = trial.leftOut.mid(0, most);
    if (trial.leftOut.size() > most)
        words << tr("Left out besides: %1.").arg(trial.leftOut.size() - most);
    if (words.isEmpty() && !trial.planned)
        words = trial.told.mid(0, most);
    say(words.join(QLatin1Char('\n')));
    setAccessibleDescription(m_place->text() + QLatin1Char('\n') + said());
}

void GirthPanel::backToReadings(const QString& why) {
    if (!m_weighing)
        return;
    showTargets(false, false);
    refill();
    say(why);
    m_field->setFocus();
}

void GirthPanel::leave() {
    showTargets(false, false);
    hide();
}

void GirthPanel::showTargets(bool deciding, bool trialThere) {
    m_weighing = deciding;
    for (QWidget* part : m_typing)
        part->setVisible(!deciding);
    m_later->setVisible(deciding);
    m_take->setVisible(deciding && trialThere);
    for (const int words : {placeRow, saidRow}) // the room that the keys took
        m_grid->setRowStretch(words, deciding ? 1 : 0);
    m_head->setText(deciding ? tr("Below %1: what the new plan would change").arg(m_below)
                             : Wording::tr("Below %1: what does the tape say along the mould, from the row's "
                                           "lower edge to the centreline?")
                                   .arg(m_below));
}

void GirthPanel::dress(int pixels, const QString& ground, const QString& ink, const QString& accent) {
    setStyleSheet(
        QStringLiteral("sheerlay--ui--GirthPanel { background: %1; border: 3px solid %3; "
                       "border-radius: 10px; }"
                       "QLabel { color: %2; font-size: %4px; }"
                       "QLineEdit { color: %2; background: %1; border: 2px solid %2; border-radius: "
                       "6px; font-size: %5px; font-weight: 600; padding: 4px; }"
                       "QToolButton { color: %2; background: %1; border: 2px solid %2; "
                       "border-radius: 8px; font-size: %5px; font-weight: 600; padding: 4px 10px; }"
                       "QToolButton:focus { border-color: %3; }"
                       "QToolButton:disabled { color: #8C877C; border-color: #8C877C; }")
            .arg(ground, ink, accent)
            .arg(pixels)
            .arg(pixels * 3 / 2));
    for (QToolButton* button : {m_later, m_take})
        button->setFixedHeight(4 * pixels);
    m_take->setStyleSheet(QStringLiteral("QToolButton { background: %1; color: #FFFFFF; border-color: %1; }"
                                         "QToolButton:focus { border-color: %2; }")
                              .arg(accent, ink));
    m_grid->setContentsMargins(pixels, pixels, pixels, pixels);
    m_grid->setSpacing(std::max(4, pixels / 3));
}

void GirthPanel::keyPressEvent(QKeyEvent* event) {
    if (m_weighing && event->key() != Qt::Key_Escape)
        return; // one of the two targets decides, never an Enter too many
    switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (m_at + 1 < m_places.size())
            step(1);
        else
            writeDown();
        break;
    case Qt::Key_PageUp:
    case Qt::Key_Up:
        step(-1);
        break;
    case Qt::Key_PageDown:
    case Qt::Key_Down:
        step(1);
        break;
    case Qt::Key_Escape:
        Q_EMIT left();
        break;
    default:
        break; // the strip behind the panel stays in hand
    }
}

} // namespace sheerlay::ui

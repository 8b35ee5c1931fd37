#include "ui/window/journal_bench.hpp"

#include "core/hull/station_names.hpp"
#include "core/journal/compare_plans.hpp"
#include "core/journal/planned_girth.hpp"
#include "core/journal/typed_round.hpp"
#include "core/journal/what_was_laid.hpp"
#include "core/project/project_edit.hpp"
#include "core/units/both_units.hpp"
#include "ui/panels/figure_table.hpp"
#include "ui/panels/journal_log.hpp"
#include "ui/scene/palette.hpp"
#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"
#include "ui/window/project_memory.hpp"

#include <QComboBox>
#include <QDate>
#include <QGridLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QSpinBox>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace sheerlay::ui {
namespace {

QLabel* words(const QString& text, int pixels, QRgb colour, bool strong = false) {
    auto* label = new QLabel(text);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setStyleSheet(QStringLiteral("font-size: %1px; color: %2; font-weight: %3;")
                             .arg(pixels)
                             .arg(QColor::fromRgb(colour).name())
                             .arg(strong ? 600 : 400));
    return label;
}

QString nothingYet() {
    return Wording::tr("Lay some rows, then measure along each mould from the row's lower edge to the "
                       "centreline. Type what the "
                       "tape says at a few stations, and work it out: you see what it does to the rows to "
                       "come before anything "
                       "changes.");
}

} // namespace

JournalBench::JournalBench(TaskRunner::Mode mode, QWidget* parent)
    : QWidget(parent), m_runner(new TaskRunner(mode, this)), m_row(new QSpinBox), m_side(new QComboBox),
      m_grid(new QGridLayout), m_said(words(nothingYet(), 15, palette::ink)), m_changes(new QTableWidget),
      m_work(new QPushButton(Wording::tr("Work it out"))),
      m_accept(new QPushButton(Wording::tr("Accept the new plan"))), m_soFar(new QWidget),
      m_log(new JournalLog) {
    m_row->setRange(0, 999);
    m_row->setAccessibleName(Wording::tr("Row"));
    m_changes->setAccessibleName(tr("What the new plan changes"));
    m_row->setToolTip(Wording::tr("The row whose lower edge was measured from; 0 for the bare moulds"));
    m_side->addItems({Wording::tr("both sides"), Wording::tr("starboard"), Wording::tr("port")});
    m_side->setAccessibleName(Wording::tr("Side"));
    m_side->setToolTip(Wording::tr("The sides that were measured; both where the tape says their mean"));
    m_work->setToolTip(Wording::tr("Plans the rows to come from what the tape says; nothing is changed yet"));
    m_accept->setToolTip(Wording::tr("Writes the round into the journal, and the boat follows"));
    connect(m_row, &QSpinBox::valueChanged, this, [this] {
        keep();
        forgetTrial();
        refillPlanned();
    });
    connect(m_side, &QComboBox::currentIndexChanged, this, [this] {
        keep();
        forgetTrial();
    });

    auto* ask = new QGridLayout;
    ask->addWidget(new QLabel(Wording::tr("Measured below row")), 0, 0);
    ask->addWidget(m_row, 0, 1);
    ask->addWidget(new QLabel(Wording::tr("on")), 0, 2);
    ask->addWidget(m_side, 0, 3);
    ask->setColumnStretch(4, 1);
    m_grid->setHorizontalSpacing(20);
    auto* stations = new QWidget;
    auto* stationsLayout = new QVBoxLayout(stations);
    stationsLayout->setContentsMargins(0, 0, 8, 0);
    stationsLayout->addLayout(m_grid);
    stationsLayout->addStretch(1);
    auto* scroll = new QScrollArea;
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidget(stations);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_work->setMinimumHeight(34);
    connect(m_work, &QPushButton::clicked, this, &JournalBench::workOut);
    m_accept->setMinimumHeight(34);
    m_accept->setEnabled(false);
    connect(m_accept, &QPushButton::clicked, this, &JournalBench::accept);
    auto* left = new QVBoxLayout;
    left->addWidget(words(Wording::tr("A round with the tape"), 18, palette::ink, true));
    left->addLayout(ask);
    left->addWidget(scroll, 1);
    left->addWidget(m_work);

    setFigures(*m_changes,
               {Wording::tr("Strip"),
                Wording::tr("Length to cut, was"),
                Wording::tr("now"),
                Wording::tr("Edge bend, was"),
                Wording::tr("now")});
    m_changes->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    m_changes->setAlternatingRowColors(true);
    m_changes->hide();
    auto* right = new QVBoxLayout;
    right->addWidget(words(Wording::tr("What it says"), 18, palette::ink, true));
    right->addWidget(m_said);
    right->addWidget(m_changes, 1);
    right->addWidget(m_accept);
    auto* soFar = new QVBoxLayout(m_soFar);
    soFar->setContentsMargins(0, 12, 0, 0);
    soFar->addWidget(words(tr("The journal so far"), 18, palette::ink, true));
    soFar->addWidget(m_log, 1);
    right->addWidget(m_soFar, 1);
    connect(m_log, &JournalLog::changed, this, &JournalBench::accepted);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(20, 16, 20, 16);
    layout->setSpacing(28);
    layout->addLayout(left, 2);
    layout->addLayout(right, 3);
    right->setAlignment(m_said, Qt::AlignTop);
}

void JournalBench::setBoat(std::shared_ptr<const Boat> boat) {
    m_boat = std::move(boat);
    if (m_boat && m_row->value() == 0 && m_boat->plan.lastRow >= 5)
        m_row->setValue(5); // as early as a reading says something
    refillStations();
    if (m_boat && !m_opened) {
        m_opened = true;
        if (const auto round = openRoundOf(m_path))
            fill(*round);
    }
    forgetTrial();
    m_log->setLeftOut([boat = m_boat, this](const core::RowReading& round, const core::GirthLeft& girth) {
        const core::Finding* why = boat ? core::leftOutFinding(boat->plan.findings,
                                                               round.row,
                                                               girth.x + boat->hull.xShift,
                                                               girth.girth,
                                                               boat->hull,
                                                               core::stationNames(boat->project, boat->hull))
                                        : nullptr;
        return why != nullptr ? heardText(why->text, m_units) : QString();
    });
}

void JournalBench::setPath(const QString& path) {
    m_path = path;
    m_opened = false;
}

void JournalBench::moveTo(const QString& path) {
    if (m_opened)
        rememberOpenRound(m_path, {});
    m_path = path;
    keep();
}

void JournalBench::setProject(const core::Project& project) {
    m_project = project;
    forgetTrial();
    m_log->setJournal(project.journal);
}

void JournalBench::setUnits(core::Units units) {
    const core::RowReading typed = open();
    m_units = units;
    if (!typed.girthLeft.empty())
        fill(typed); // a plain number stays what it was
    refillPlanned();
    m_log->setUnits(units);
}

QString JournalBench::said() const {
    return m_said->text();
}

void JournalBench::forgetTrial() {
    m_runner->cancel();
    m_tried.reset();
    m_accept->setEnabled(false);
    m_changes->hide();
    m_soFar->show();
    m_said->setText(open().girthLeft.empty()
                        ? nothingYet()
                        : tr("The readings below row %1 are typed and not part of the journal yet: work out "
                             "what they change. Until you accept or clear them, they wait here.")
                              .arg(m_row->value()));
}

void JournalBench::refuse(const QString& why) {
    m_said->setText(why);
    Q_EMIT refused(why);
}

core::RowReading JournalBench::open() const {
    core::RowReading round;
    round.row = m_row->value();
    round.side = static_cast<core::ReadSide>(m_side->currentIndex());
    const core::Units other = m_units == core::Units::Inches ? core::Units::Millimetres : core::Units::Inches;
    for (std::size_t i = 0; i < m_fields.size(); ++i) {
        const std::string text = m_fields[i]->text().trimmed().toStdString();
        if (text.empty())
            continue;
        core::Station station;
        station.x = m_stations[i].x;
        const auto read = core::readGirth(station, text, m_units, other);
        round.girthLeft.push_back({station.x, 0.0, "", read ? read->printedGirth : text, 0});
    }
    return round;
}

void JournalBench::fill(const core::RowReading& round) {
    m_row->setValue(round.row);
    m_side->setCurrentIndex(static_cast<int>(round.side));
    for (std::size_t i = 0; i < m_fields.size(); ++i)
        for (const core::GirthLeft& girth : round.girthLeft)
            if (girth.x == m_stations[i].x)
                m_fields[i]->setText(toQString(girth.printedGirth));
    keep();
}

void JournalBench::keep() {
    if (m_opened) // else what is kept was not looked at yet
        rememberOpenRound(m_path, open());
}

QString JournalBench::take(const core::RowReading& round) {
    const core::RowReading waiting = open();
    if (!waiting.girthLeft.empty() && (waiting.row != round.row || waiting.side != round.side))
        return tr("Readings below row %1 still wait on the Journal bench. Accept or clear them there first.")
            .arg(waiting.row);
    fill(round);
    return {};
}

void JournalBench::refillStations() {
    std::vector<StationRow> wanted;
    std::vector<std::string> names;
    if (m_boat) {
        names = m_boat->stationNames();
        for (const core::Station& station : m_boat->project.hull.stations)
            wanted.push_back({station.x, station.printedX, station.x + m_boat->hull.xShift});
    }
    const auto same = [](const StationRow& a, const StationRow& b) {
        return a.x == b.x && a.printed == b.printed;
    };
    if (std::ranges::equal(wanted, m_stations, same)) {
        m_stations = std::move(wanted); // what is typed stays
        refillPlanned();
        return;
    }
    const core::RowReading typed = open();
    m_stations = std::move(wanted);
    while (QLayoutItem* item = m_grid->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    m_planned.clear();
    m_fields.clear();
    if (m_stations.empty())
        return;
    m_grid->addWidget(words(Wording::tr("Station"), 12, palette::pencil, true), 0, 0);
    m_grid->addWidget(words(Wording::tr("Left by the plan"), 12, palette::pencil, true), 0, 1);
    m_grid->addWidget(words(Wording::tr("The tape says"), 12, palette::pencil, true), 0, 2);
    for (std::size_t i = 0; i < m_stations.size(); ++i) {
        const QString name = i < names.size() ? toQString(names[i]) : QString();
        const int row = static_cast<int>(i) + 1;
        auto* field = new QLineEdit;
        field->setAccessibleName(Wording::tr("Girth left at station %1").arg(name));
        field->setToolTip(Wording::tr("Along the mould, from the row's lower edge to the centreline"));
        connect(field, &QLineEdit::textEdited, this, [this] {
            keep();
            forgetTrial();
        });
        connect(field, &QLineEdit::returnPressed, this, [this] { focusNextChild(); });
        auto* planned = new QLabel;
        m_grid->addWidget(new QLabel(name), row, 0);
        m_grid->addWidget(planned, row, 1);
        m_grid->addWidget(field, row, 2);
        m_planned.push_back(planned);
        m_fields.push_back(field);
    }
    if (m_opened && !typed.girthLeft.empty())
        fill(typed); // where the station is still there
    refillPlanned();
}

void JournalBench::refillPlanned() {
    for (std::size_t i = 0; i < m_planned.size(); ++i) {
        const auto planned =
            core::plannedGirthLeft(m_boat->plan, m_boat->hull, m_row->value(), m_stations[i].fromBow);
        m_planned[i]->setText(planned ? lengthText(planned->left, m_units) : Wording::tr("not there"));
        m_fields[i]->setEnabled(planned.has_value());
    }
}

std::optional<core::RowReading> JournalBench::typed() {
    core::RowReading round;
    round.row = m_row->value();
    round.side = static_cast<core::ReadSide>(m_side->currentIndex());
    round.date = QDate::currentDate().toString(Qt::ISODate).toStdString();
    for (std::size_t i = 0; i < m_fields.size(); ++i) {
        const std::string text = m_fields[i]->text().trimmed().toStdString();
        if (text.empty() || !m_fields[i]->isEnabled())
            continue;
        const core::Station& station = m_boat->project.hull.stations[i];
        const auto read = core::readGirth(station, text, m_units, m_project->units);
        if (!read) {
            refuse(Wording::tr("%1: %2; %3 would do.")
                       .arg(m_fields[i]->accessibleName(),
                            heardText(read.error().found),
                            heardText(read.error().would)));
            m_fields[i]->setFocus();
            return std::nullopt;
        }
        round.girthLeft.push_back(*read);
    }
    if (!round.girthLeft.empty())
        return round;
    refuse(Wording::tr("Nothing is typed yet. The tape at two or three stations would do for a start."));
    return std::nullopt;
}

void JournalBench::workOut() {
    forgetTrial();
    if (!m_boat || !m_project)
        return;
    const auto round = typed();
    if (!round)
        return;
    core::Project project = *m_project;
    project.journal = core::withRound(project.journal, *round);
    if (const auto judged = core::checked(project); !judged) {
        const core::FileMessage& first = judged.error().front();
        refuse(Wording::tr("%1; %2 would do.").arg(heardText(first.found), heardText(first.would)));
        return;
    }
    m_said->setText(Wording::tr("Planning the rows to come…"));
    m_runner->run(
        [project, boat = m_boat](std::stop_token, const TaskRunner::Progress&) {
            return std::make_shared<const Expected<core::PlanAsLaid, core::PlanError>>(
                core::plankAsLaid(project, boat->hull));
        },
        [this, project, row = round->row](
            const std::shared_ptr<const Expected<core::PlanAsLaid, core::PlanError>>& tried) {
            if (!*tried) {
                refuse(toQString(core::unitsFirst(tried->error().text, m_units)));
                return;
            }
            m_tried = project;
            m_triedRow = row;
            show(tried->value(), row);
        },
        [this](const QString& text) { refuse(text); });
}

void JournalBench::show(const core::PlanAsLaid& tried, int row) {
    const TrialText text = trialText(*m_boat, tried, row, m_units);
    m_said->setText((QStringList{text.change} + text.told).join(QStringLiteral("\n\n")));
    const auto changes = core::changesBelow(m_boat->plan, tried.plan, row);
    m_changes->setRowCount(static_cast<int>(changes.size()));
    const QString none = Wording::tr("none");
    const auto cut = [&](const std::optional<double>& length) {
        return length ? cutLengthText(*length, m_units) : none;
    };
    const auto bend = [&](const std::optional<double>& kappa) {
        return kappa ? sagText(*kappa, m_units) : none;
    };
    for (int i = 0; i < m_changes->rowCount(); ++i) {
        const core::StripChange& change = changes[static_cast<std::size_t>(i)];
        const QStringList cells{toQString(change.strip),
                                cut(change.cutBefore),
                                cut(change.cutAfter),
                                bend(change.bendBefore),
                                bend(change.bendAfter)};
        for (int column = 0; column < cells.size(); ++column) {
            auto* item = new QTableWidgetItem(cells[column]);
            item->setTextAlignment(Qt::AlignVCenter | (column == 0 ? Qt::AlignLeft : Qt::AlignRight));
            const bool differs = (column == 2 || column == 4) && cells[column] != cells[column - 1];
            if (differs) {
                QFont strong = m_changes->font();
                strong.setWeight(QFont::DemiBold);
                item->setFont(strong);
            }
            m_changes->setItem(i, column, item);
        }
    }
    m_changes->setVisible(!changes.empty());
    m_soFar->setVisible(changes.empty()); // old and new side by side take the room until it is decided
    m_accept->setEnabled(true);
    Q_EMIT weighed(text);
}

bool JournalBench::accept() {
    if (!m_tried)
        return false;
    const core::Journal journal = m_tried->journal;
    for (QLineEdit* field : m_fields)
        field->setText(QString()); // nothing left there for Undo
    keep();
    Q_EMIT accepted(Wording::tr("Reading below row %1").arg(m_triedRow), journal);
    return true;
}

} // namespace sheerlay::ui

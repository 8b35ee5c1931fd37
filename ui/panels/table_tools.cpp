#include "ui/panels/table_tools.hpp"

#include "core/table_edit/line_edit.hpp"
#include "core/table_edit/station_edit.hpp"
#include "core/table_edit/table_grid.hpp"
#include "core/units/length.hpp"
#include "ui/scene/words.hpp"

#include <QFrame>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>

#include <utility>

namespace sheerlay::ui {
namespace {

constexpr int fieldWidth = 92; // px

QString refusalText(const core::LengthError& why) {
    return TableTools::tr("Found: %1; what would do: %2.").arg(heardText(why.found), heardText(why.would));
}

QString stationName(const core::Project& project, std::size_t station) {
    return markedText(core::cellText(project.hull.stations.at(station), {}, project.units));
}

} // namespace

TableTools::TableTools(QWidget* parent)
    : QWidget(parent), m_place(new QLineEdit), m_level(new QLineEdit), m_length(new QLineEdit),
      m_spacing(new QLineEdit), m_beam(new QLineEdit), m_depth(new QLineEdit),
      m_putIn(new QPushButton(tr("Put in"))), m_takeOut(new QPushButton),
      m_waterline(new QPushButton(tr("Waterline"))), m_buttock(new QPushButton(tr("Buttock"))),
      m_scale(new QPushButton(tr("Scale her"))), m_scaleToggle(new QToolButton), m_scaleForm(new QFrame),
      m_preview(new QLabel) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(makeStations());
    layout->addWidget(makeScale());
    refreshStations();
}

QWidget* TableTools::makeStations() {
    auto* row = new QWidget;
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    auto* name = new QLabel(tr("New station at"));
    layout->addWidget(name);
    m_place->setFixedWidth(fieldWidth);
    m_place->setAccessibleName(name->text());
    m_place->setToolTip(
        tr("From the table's own zero, as the other stations; its numbers are read off the loft."));
    layout->addWidget(m_place);
    m_takeOut->setToolTip(tr("The station of the cell in hand; at least three stay."));
    const auto addButton = [layout](QPushButton* button) {
        button->setFocusPolicy(Qt::TabFocus);
        layout->addWidget(button);
    };
    addButton(m_putIn);
    addButton(m_takeOut);
    auto* line = new QLabel(tr("New line at"));
    layout->addSpacing(10);
    layout->addWidget(line);
    m_level->setFixedWidth(fieldWidth);
    m_level->setAccessibleName(line->text());
    m_level->setToolTip(tr("A waterline's height above the base line, or a buttock's distance from the "
                           "centreline; its numbers are read off the loft."));
    layout->addWidget(m_level);
    addButton(m_waterline);
    addButton(m_buttock);
    connect(m_waterline, &QPushButton::clicked, this, &TableTools::putInWaterline);
    connect(m_buttock, &QPushButton::clicked, this, &TableTools::putInButtock);
    connect(m_level, &QLineEdit::textChanged, this, &TableTools::refreshStations);
    layout->addStretch(1);
    m_scaleToggle->setText(tr("Scale…"));
    m_scaleToggle->setCheckable(true);
    m_scaleToggle->setFocusPolicy(Qt::TabFocus);
    m_scaleToggle->setToolTip(tr("Draw the whole boat longer, wider or deeper"));
    layout->addWidget(m_scaleToggle);
    connect(m_putIn, &QPushButton::clicked, this, &TableTools::putIn);
    connect(m_place, &QLineEdit::returnPressed, this, &TableTools::putIn);
    connect(m_place, &QLineEdit::textChanged, this, &TableTools::refreshStations);
    connect(m_takeOut, &QPushButton::clicked, this, &TableTools::takeOut);
    connect(m_scaleToggle, &QToolButton::toggled, this, &TableTools::showScale);
    return row;
}

QWidget* TableTools::makeScale() {
    auto* layout = new QVBoxLayout(m_scaleForm);
    layout->setContentsMargins(0, 2, 0, 2);
    auto* fields = new QHBoxLayout;
    const auto add = [&](const QString& text, QLineEdit* field, const QString& meaning) {
        auto* name = new QLabel(text);
        name->setBuddy(field);
        field->setFixedWidth(fieldWidth);
        field->setAccessibleName(text);
        field->setToolTip(meaning);
        fields->addWidget(name);
        fields->addWidget(field);
    };
    add(tr("Length"), m_length, tr("Everything along the boat: stations, stems, transoms"));
    add(tr("Station spacing"),
        m_spacing,
        tr("Moves the stations apart or together; stems beyond them, and transoms, keep their form. Length "
           "instead stretches everything."));
    add(tr("Beam"), m_beam, tr("All half-breadths; half sidings stay"));
    add(tr("Depth"), m_depth, tr("All heights above the base line"));
    fields->addStretch(1);
    m_scale->setFocusPolicy(Qt::TabFocus);
    fields->addWidget(m_scale);
    layout->addLayout(fields);
    m_preview->setWordWrap(true);
    layout->addWidget(m_preview);
    m_scaleForm->hide();
    const auto measures = [this] { return core::measuresOf(m_project.hull); };
    connect(m_length, &QLineEdit::textEdited, this, [this, measures] {
        typed(m_length, measures().length, [this](double by) {
            m_wanted.length = by;
            m_wanted.spacing = 1.0;
        });
    });
    connect(m_spacing, &QLineEdit::textEdited, this, [this, measures] {
        typed(m_spacing, measures().spacing, [this](double by) {
            m_wanted.length = 1.0;
            m_wanted.spacing = by;
        });
    });
    connect(m_beam, &QLineEdit::textEdited, this, [this, measures] {
        typed(m_beam, measures().beam, [this](double by) { m_wanted.beam = by; });
    });
    connect(m_depth, &QLineEdit::textEdited, this, [this, measures] {
        typed(m_depth, measures().depth, [this](double by) { m_wanted.depth = by; });
    });
    connect(m_scale, &QPushButton::clicked, this, &TableTools::scale);
    return m_scaleForm;
}

void TableTools::setProject(const core::Project& project) {
    m_project = project;
    if (m_station && *m_station >= m_project.hull.stations.size())
        m_station.reset();
    refreshStations();
    refillScale();
}

void TableTools::setLoft(const core::Project& project, std::shared_ptr<const core::LoftedHull> hull) {
    m_hull = std::move(hull);
    m_loftedTable = project.hull;
    refreshStations();
}

void TableTools::setUnits(core::Units units) {
    m_units = units;
    refillScale();
}

void TableTools::setStation(std::optional<std::size_t> station) {
    m_station = station && *station < m_project.hull.stations.size() ? station : std::nullopt;
    refreshStations();
}

void TableTools::refreshStations() {
    const bool lofted = m_hull && m_loftedTable == m_project.hull;
    m_putIn->setEnabled(lofted && !m_place->text().trimmed().isEmpty());
    for (QPushButton* button : {m_waterline, m_buttock})
        button->setEnabled(lofted && !m_level->text().trimmed().isEmpty());
    m_takeOut->setEnabled(m_station && m_project.hull.stations.size() > 3);
    m_takeOut->setText(m_station ? tr("Take out station %1").arg(stationName(m_project, *m_station))
                                 : tr("Take out a station"));
}

void TableTools::putIn() {
    if (!m_putIn->isEnabled())
        return;
    const auto edited = core::insertStation(m_project, *m_hull, m_place->text().toStdString());
    if (!edited) {
        Q_EMIT said(refusalText(edited.error()));
        return;
    }
    const QString name = tr("Station put in at %1").arg(m_place->text().trimmed());
    m_place->setText(QString()); // nothing left there for Undo
    Q_EMIT this->edited(name, *edited);
}

void TableTools::putInWaterline() {
    putInLine(core::GridLine::Kind::Waterline, tr("Waterline put in at %1"));
}

void TableTools::putInButtock() {
    putInLine(core::GridLine::Kind::Buttock, tr("Buttock put in at %1"));
}

void TableTools::putInLine(core::GridLine::Kind kind, const QString& name) {
    if (!m_waterline->isEnabled())
        return;
    const auto edited = core::insertLine(m_project, *m_hull, kind, m_level->text().toStdString());
    if (!edited) {
        Q_EMIT said(refusalText(edited.error()));
        return;
    }
    const QString said = name.arg(m_level->text().trimmed());
    m_level->setText(QString());
    Q_EMIT this->edited(said, *edited);
}

void TableTools::takeOut() {
    if (!m_station)
        return;
    const auto edited = core::removeStation(m_project, *m_station);
    if (!edited) {
        Q_EMIT said(refusalText(edited.error()));
        return;
    }
    Q_EMIT this->edited(tr("Station %1 taken out").arg(stationName(m_project, *m_station)), *edited);
}

void TableTools::showScale(bool shown) {
    m_scaleToggle->setChecked(shown);
    m_scaleForm->setVisible(shown);
    refillScale();
}

/// The measures as they are; nothing is wanted yet.
void TableTools::refillScale() {
    m_wanted = {};
    const core::TableMeasures now = core::measuresOf(m_project.hull);
    const std::pair<QLineEdit*, double> fields[] = {
        {m_length, now.length}, {m_spacing, now.spacing}, {m_beam, now.beam}, {m_depth, now.depth}};
    for (const auto& [field, value] : fields)
        field->setText(typedLengthText(value, m_units));
    tryScale();
}

void TableTools::typed(QLineEdit* field, double now, const std::function<void(double)>& take) {
    const auto read = core::parseLength(field->text().toStdString(), m_units);
    if (!read || now <= 0.0) {
        m_scaled.reset();
        m_scale->setEnabled(false);
        m_preview->setText(read ? tr("The table has no such measure to scale.") : refusalText(read.error()));
        return;
    }
    take(read->millimetres / now);
    tryScale();
    if (!m_scaled) // as she is, or as she can't be
        return;
    // two ways to make her longer: the one that is not in hand shows what it comes to
    const core::TableMeasures measures = core::measuresOf(m_scaled->hull);
    if (field == m_length)
        m_spacing->setText(typedLengthText(measures.spacing, m_units));
    if (field == m_spacing)
        m_length->setText(typedLengthText(measures.length, m_units));
}

void TableTools::tryScale() {
    m_scaled.reset();
    m_scale->setEnabled(false);
    if (!m_scaleForm->isVisibleTo(this) || m_project.hull.stations.empty())
        return;
    const QString now = tr("By the table she is %1.")
                            .arg(heardText(core::measuresText(core::measuresOf(m_project.hull), m_units)));
    if (m_wanted == core::TableScale{}) {
        m_preview->setText(now + QLatin1Char(' ') + tr("Change a measure to see what she would become."));
        return;
    }
    const auto scaled = core::scaleTable(m_project, m_wanted);
    if (!scaled) {
        m_preview->setText(refusalText(scaled.error()));
        return;
    }
    m_scaled = *scaled;
    m_scale->setEnabled(true);
    m_preview->setText(
        now + QLatin1Char(' ') +
        tr("She would be %1. Numbers are rounded as the table is; fittings and loads stay where they are.")
            .arg(heardText(core::measuresText(core::measuresOf(scaled->hull), m_units))));
}

void TableTools::scale() {
    if (!m_scaled)
        return;
    const core::Project scaled = *m_scaled;
    showScale(false);
    Q_EMIT edited(tr("Scale the boat"), scaled);
}

QString TableTools::preview() const {
    return m_preview->text();
}

} // namespace sheerlay::ui

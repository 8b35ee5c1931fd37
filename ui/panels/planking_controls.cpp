#include "ui/panels/planking_controls.hpp"

#include "core/planking/uncertainty_text.hpp"
#include "core/summary/plan_summary.hpp"
#include "ui/panels/accent_fields.hpp"
#include "ui/panels/number_box.hpp"
#include "ui/panels/quiet_wheel.hpp"
#include "ui/panels/refusal_line.hpp"
#include "ui/panels/typed_field.hpp"
#include "ui/scene/boat.hpp"
#include "ui/scene/palette.hpp"
#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"

#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <array>

namespace sheerlay::ui {
namespace {

using core::ClosingMethod;
using core::EndStyle;
using core::StartLine;
using core::Taper;

QString startHint(StartLine::Kind kind) {
    switch (kind) {
    case StartLine::Kind::Sheer:
        return Wording::tr("The first strip follows the sheer, and every strip below runs parallel to it.");
    case StartLine::Kind::Geodesic:
        return Wording::tr("The first strip lies as a strip wants to lie, without edge bend. Above it come "
                           "short fillers. Type how far below the sheer, or drag the line in the map.");
    case StartLine::Kind::Bent:
        return Wording::tr("As the unbent line, but held to a bend: amidships, and growing toward the ends "
                           "with the square and the fourth power of the way there; + toward the keel.");
    case StartLine::Kind::Knuckle:
        return Wording::tr("Both ways from the knuckle: the bottom below it, the sides above. For hulls that "
                           "have one.");
    case StartLine::Kind::Easiest:
        break;
    }
    return Wording::tr(
        "Searches the line from which the hardest strip comes out easiest. This takes a while.");
}

QLabel* quiet(QLabel* label, QRgb colour) {
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setStyleSheet(QStringLiteral("color: %1;").arg(QColor::fromRgb(colour).name()));
    return label;
}

/// What a builder asks first of a way of planking.
QString figuresOf(const Boat& boat, core::Units units) {
    const core::PlanSummary summary = core::summarize(boat.project, boat.hull, boat.plan);
    QStringList lines;
    lines << (summary.worst
                  ? Wording::tr("hardest strip %1, edge bend %2")
                            .arg(toQString(summary.worst->strip), sagText(summary.worst->edgeBend, units)) +
                        (summary.uncertainty
                             ? QStringLiteral(", ") + sagPlusMinusText(summary.uncertainty->edgeBend, units)
                             : QString())
                  : Wording::tr("no strip is bent edgewise"));
    lines << (summary.rowsAbove > 0 ? Wording::tr("%1 rows below the start, %2 above")
                                          .arg(summary.rowsBelow)
                                          .arg(summary.rowsAbove)
                                    : Wording::tr("%1 rows").arg(summary.rowsBelow));
    if (boat.plan.tapers)
        lines << (boat.plan.tapers->touched == 0
                      ? Wording::tr("no strip needs a taper")
                      : Wording::tr("%1 rows a side tapered").arg(boat.plan.tapers->touched));
    if (!summary.shutters.empty()) {
        const auto deviation =
            summary.uncertainty ? summary.uncertainty->shutterWidth : std::optional<double>();
        lines << Wording::tr("last plank %1 wide")
                         .arg(lengthText(summary.shutters.front().widest, units, {16, 1})) +
                     (deviation
                          ? QStringLiteral(", ") + plusMinusText(core::lengthPlusMinus(*deviation, units))
                          : QString());
    }
    return lines.join(QStringLiteral("\n"));
}

} // namespace

PlankingControls::PlankingControls(QWidget* parent)
    : QWidget(parent), m_grid(new QGridLayout), m_start(new QComboBox), m_taper(new QComboBox),
      m_bowEnds(new QComboBox), m_sternEnds(new QComboBox), m_closing(new QComboBox),
      m_girth(new TypedField(TypedField::Kind::Length)), m_radius(new TypedField(TypedField::Kind::Length)),
      m_narrowest(new TypedField(TypedField::Kind::Length)), m_bends(new QWidget), m_shutter(new QCheckBox),
      m_least(new NumberBox), m_most(new NumberBox), m_accents(new AccentFields), m_startHint(new QLabel),
      m_figures(new QLabel), m_problem(new RefusalLine) {
    auto* form = new QWidget;
    auto* outer = new QVBoxLayout(form);
    outer->setContentsMargins(16, 10, 12, 12);
    m_grid->setVerticalSpacing(7);
    m_grid->setHorizontalSpacing(10);
    m_grid->setColumnStretch(1, 1);
    outer->addLayout(m_grid);
    addHead(Wording::tr("What it comes to"));
    quiet(m_figures, palette::ink);
    m_grid->addWidget(m_figures, m_grid->rowCount(), 0, 1, 2);
    makeStart();
    makeLimits();
    addHead(Wording::tr("Rows that stand out"));
    m_grid->addWidget(m_accents, m_grid->rowCount(), 0, 1, 2);
    connect(m_accents, &AccentFields::refused, this, [this](const QString& why) {
        m_problem->about(m_accents->inHand(), [&] { say(why); });
    });
    connect(m_accents, &AccentFields::decided, this, [this](const std::vector<core::Accent>& accents) {
        m_problem->about(m_accents->inHand(),
                         [&] { decide([&](core::Planking& p) { p.accents = accents; }); });
    });
    makeEnds();
    outer->addStretch(1);
    layOut(form);
    auto* wheel = new QuietWheel(this);
    for (QWidget* field : findChildren<QWidget*>()) {
        if (qobject_cast<QComboBox*>(field) == nullptr && qobject_cast<QDoubleSpinBox*>(field) == nullptr)
            continue;
        wheel->guard(field);
    }
}

/// What is wrong stands below the form, in sight however far it is scrolled.
void PlankingControls::layOut(QWidget* form) {
    auto* scroll = new QScrollArea;
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setWidget(form);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(scroll, 1);
    layout->addWidget(m_problem);
}

QLabel* PlankingControls::addHead(const QString& text) {
    auto* head = new QLabel(text);
    head->setStyleSheet(QStringLiteral("font-weight: 600; padding-top: 6px;"));
    m_grid->addWidget(head, m_grid->rowCount(), 0, 1, 2);
    return head;
}

QLabel* PlankingControls::addRow(const QString& name, QWidget* field, const QString& meaning) {
    auto* label = new QLabel(name);
    label->setBuddy(field);
    label->setToolTip(meaning);
    field->setToolTip(meaning);
    field->setAccessibleName(name);
    field->setMinimumWidth(90);
    const int row = m_grid->rowCount();
    m_grid->addWidget(label, row, 0);
    m_grid->addWidget(field, row, 1);
    return label;
}

void PlankingControls::makeStart() {
    m_start->addItems({Wording::tr("along the sheer"),
                       Wording::tr("an unbent line"),
                       Wording::tr("a bent line"),
                       Wording::tr("the easiest line"),
                       Wording::tr("the knuckle")});
    addHead(Wording::tr("Where the planking starts"));
    addRow(Wording::tr("First strip"), m_start, Wording::tr("The line the upper edge of row 1 follows"));
    addRow(Wording::tr("Below the sheer"),
           m_girth,
           Wording::tr("Girth from the sheer down to the line, around the widest section"));
    auto* bends = new QGridLayout(m_bends);
    bends->setContentsMargins(0, 0, 0, 0);
    bends->setHorizontalSpacing(4);
    const std::array names{Wording::tr("amidships"), Wording::tr("square"), Wording::tr("fourth")};
    for (int i = 0; i < 3; ++i) {
        auto* box = m_bend[i] = new NumberBox;
        box->setRange(-1.0, 1.0);
        box->setDecimals(3);
        box->setSingleStep(0.01);
        box->setKeyboardTracking(false);
        box->setButtonSymbols(QAbstractSpinBox::NoButtons);
        box->setAccessibleName(
            Wording::tr("Edge bend per metre, %1").arg(names[static_cast<std::size_t>(i)]));
        bends->addWidget(new QLabel(names[static_cast<std::size_t>(i)]), 0, i);
        bends->addWidget(box, 1, i);
        connect(box, &QDoubleSpinBox::valueChanged, this, [this, i](double value) {
            decide([&](core::Planking& p) { p.start.edgeBend[static_cast<std::size_t>(i)] = value; });
        });
    }
    m_bendsLabel = addRow(Wording::tr("Bend per metre"),
                          m_bends,
                          Wording::tr("One over the radius in metres; + toward the keel"));
    quiet(m_startHint, palette::pencil);
    m_grid->addWidget(m_startHint, m_grid->rowCount(), 0, 1, 2);
    auto* compare = new QPushButton(Wording::tr("Set start lines side by side"));
    compare->setFocusPolicy(Qt::TabFocus);
    compare->setToolTip(
        Wording::tr("Searches good lines, planks the boat from each, and shows what they ask of you"));
    m_grid->addWidget(compare, m_grid->rowCount(), 0, 1, 2);
    connect(compare, &QPushButton::clicked, this, &PlankingControls::comparisonAsked);
    connect(m_start, &QComboBox::activated, this, &PlankingControls::startChosen);
    connectLength(
        m_girth, [](core::Planking& p, std::optional<double> girth) { p.start.girth = girth.value_or(0.0); });
}

void PlankingControls::makeLimits() {
    m_taper->addItems({Wording::tr("none, all at full width"),
                       Wording::tr("toward the ends only"),
                       Wording::tr("anywhere along it")});
    m_radius->setPlaceholderText(Wording::tr("from wood and strip"));
    m_narrowest->setPlaceholderText(Wording::tr("from the strip"));
    addHead(Wording::tr("Tapers and their limits"));
    addRow(Wording::tr("Tapers"),
           m_taper,
           Wording::tr("Planing a few strips narrower takes edge bend out of those below"));
    addRow(Wording::tr("Tightest bend"), m_radius, Wording::tr("Smallest radius of edge bend you allow"));
    addRow(Wording::tr("Narrowest strip"), m_narrowest, Wording::tr("No strip is planed narrower than this"));
    connect(m_taper, &QComboBox::activated, this, [this](int index) {
        decide([&](core::Planking& p) { p.taper = static_cast<Taper>(index); });
    });
    connectLength(m_radius,
                  [](core::Planking& p, std::optional<double> radius) { p.edgeBendRadius = radius; });
    connectLength(m_narrowest, [](core::Planking& p, std::optional<double> width) { p.narrowest = width; });
}

void PlankingControls::makeEnds() {
    for (QComboBox* ends : {m_bowEnds, m_sternEnds})
        ends->addItems({Wording::tr("woven"), Wording::tr("mitred"), Wording::tr("on a stem piece")});
    m_closing->addItems({Wording::tr("both sides together"),
                         Wording::tr("run over, then fit"),
                         Wording::tr("herringbone"),
                         Wording::tr("split bottom")});
    addHead(Wording::tr("Ends and bottom"));
    addRow(Wording::tr("Ends at the bow"), m_bowEnds, Wording::tr("How port and starboard meet at the bow"));
    addRow(Wording::tr("Ends at the stern"),
           m_sternEnds,
           Wording::tr("How port and starboard meet at the stern"));
    addRow(Wording::tr("Closing"),
           m_closing,
           Wording::tr("How the strips of both sides meet on the centreline"));
    m_shutter->setText(Wording::tr("Last plank of a wished width"));
    m_shutter->setToolTip(
        Wording::tr("Moves the start so that the last plank comes out between these parts of a strip"));
    m_grid->addWidget(m_shutter, m_grid->rowCount(), 0, 1, 2);
    auto* parts = new QWidget;
    auto* layout = new QGridLayout(parts);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setHorizontalSpacing(4);
    for (QDoubleSpinBox* box : {m_least, m_most}) {
        box->setRange(0.05, 1.0);
        box->setDecimals(2);
        box->setSingleStep(0.05);
        box->setKeyboardTracking(false);
        connect(box, &QDoubleSpinBox::valueChanged, this, [this] {
            decide([&](core::Planking& p) { p.shutter = {{m_least->value(), m_most->value()}}; });
        });
    }
    m_least->setAccessibleName(Wording::tr("Least part of a strip"));
    m_most->setAccessibleName(Wording::tr("Most part of a strip"));
    layout->addWidget(m_least, 0, 0);
    layout->addWidget(new QLabel(Wording::tr("to")), 0, 1);
    layout->addWidget(m_most, 0, 2);
    layout->setColumnStretch(0, 1);
    layout->setColumnStretch(2, 1);
    addRow(Wording::tr("Parts of a strip"), parts, m_shutter->toolTip());
    for (QComboBox* ends : {m_bowEnds, m_sternEnds}) {
        const auto member = ends == m_bowEnds ? &core::Planking::bowEnds : &core::Planking::sternEnds;
        connect(ends, &QComboBox::activated, this, [this, member](int index) {
            decide([&](core::Planking& p) { p.*member = static_cast<EndStyle>(index); });
        });
    }
    connect(m_closing, &QComboBox::activated, this, [this](int index) {
        decide([&](core::Planking& p) { p.closing = static_cast<ClosingMethod>(index); });
    });
    connect(m_shutter, &QCheckBox::toggled, this, [this](bool on) {
        decide([&](core::Planking& p) {
            p.shutter.reset();
            if (on)
                p.shutter = {{m_least->value(), m_most->value()}};
        });
    });
}

void PlankingControls::setProject(const core::Project& project) {
    m_project = project;
    say(QString());
    show(project.planking);
}

void PlankingControls::show(const core::Planking& p) {
    m_filling = true;
    const StartLine::Kind kind = p.start.kind;
    const bool placed = kind == StartLine::Kind::Geodesic || kind == StartLine::Kind::Bent;
    m_start->setCurrentIndex(static_cast<int>(kind));
    m_girth->setValue(placed ? std::optional(p.start.girth) : std::nullopt);
    m_girth->setEnabled(placed);
    for (std::size_t i = 0; i < 3; ++i)
        m_bend[i]->setValue(p.start.edgeBend[i]);
    m_bends->setVisible(kind == StartLine::Kind::Bent);
    m_bendsLabel->setVisible(kind == StartLine::Kind::Bent);
    m_startHint->setText(startHint(kind));
    m_taper->setCurrentIndex(static_cast<int>(p.taper));
    m_radius->setValue(p.edgeBendRadius);
    m_narrowest->setValue(p.narrowest);
    m_narrowest->setEnabled(p.taper != Taper::None);
    m_accents->setAccents(p.accents);
    m_bowEnds->setCurrentIndex(static_cast<int>(p.bowEnds));
    m_sternEnds->setCurrentIndex(static_cast<int>(p.sternEnds));
    m_closing->setCurrentIndex(static_cast<int>(p.closing));
    m_shutter->setChecked(p.shutter.has_value());
    m_least->setValue(p.shutter ? (*p.shutter)[0] : 0.6);
    m_most->setValue(p.shutter ? (*p.shutter)[1] : 1.0);
    m_least->setEnabled(p.shutter.has_value());
    m_most->setEnabled(p.shutter.has_value());
    m_filling = false;
}

void PlankingControls::setBoat(const Boat* boat) {
    const QString figures = boat != nullptr ? figuresOf(*boat, m_units) : QString();
    if (boat == nullptr)
        m_before.clear();
    else if (!m_now.isEmpty() && figures != m_now)
        m_before = m_now;
    m_now = figures;
    m_figures->setText(m_before.isEmpty() || m_now.isEmpty()
                           ? m_now
                           : Wording::tr("%1\n\nbefore the last change:\n%2").arg(m_now, m_before));
}

void PlankingControls::setUnits(core::Units units) {
    if (units == m_units)
        return;
    m_units = units;
    for (TypedField* field : {m_girth, m_radius, m_narrowest})
        field->setUnits(units);
    m_accents->setUnits(units);
    m_before.clear(); // told in the old units
    m_now.clear();
    show(m_project.planking);
}

void PlankingControls::say(const QString& text) {
    m_problem->tell(text, [this] {
        if (m_accents->inHand() == nullptr) // else the field would be made anew
            show(m_project.planking);
    });
}

QString PlankingControls::said() const {
    return m_problem->text();
}

QString PlankingControls::figures() const {
    return m_figures->text();
}

void PlankingControls::startChosen() {
    const auto kind = static_cast<StartLine::Kind>(m_start->currentIndex());
    decide([&](core::Planking& p) {
        if (p.start.kind != kind && kind == StartLine::Kind::Geodesic)
            p.start.edgeBend = {};
        p.start.kind = kind;
    });
}

void PlankingControls::connectLength(TypedField* field,
                                     const std::function<void(core::Planking&, std::optional<double>)>& put) {
    connect(field, &TypedField::refused, this, [this, field](const QString& why) {
        m_problem->about(field, [&] { say(why); });
    });
    connect(field, &TypedField::decided, this, [this, field, put](std::optional<double> length) {
        m_problem->about(field, [&] { decide([&](core::Planking& p) { put(p, length); }); });
    });
}

void PlankingControls::decide(const std::function<void(core::Planking&)>& change) {
    if (m_filling)
        return;
    core::Planking next = m_project.planking;
    change(next);
    say(QString());
    if (!(next == m_project.planking))
        Q_EMIT changed(next);
}

} // namespace sheerlay::ui

#include "ui/window/planking_bench.hpp"

#include "core/planking/start_search.hpp"
#include "core/planking/start_table.hpp"
#include "ui/map2d/planking_map.hpp"
#include "ui/panels/findings_list.hpp"
#include "ui/panels/findings_pane.hpp"
#include "ui/panels/laying_bar.hpp"
#include "ui/panels/planking_controls.hpp"
#include "ui/panels/start_comparison.hpp"
#include "ui/panels/strip_card.hpp"
#include "ui/scene/start_preview.hpp"
#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"
#include "ui/view3d/boat_view.hpp"

#include <QApplication>
#include <QButtonGroup>
#include <QCursor>
#include <QHBoxLayout>
#include <QLabel>
#include <QSplitter>
#include <QStackedWidget>
#include <QTimer>
#include <QToolButton>
#include <QToolTip>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>
#include <utility>

namespace sheerlay::ui {
namespace {

constexpr int afterPainting = 30; // ms

} // namespace

PlankingBench::PlankingBench(TaskRunner::Mode mode, QWidget* parent)
    : QWidget(parent), m_mode(mode), m_trying(new TaskRunner(mode, this)),
      m_comparing(new TaskRunner(mode, this)), m_planningShop(new TaskRunner(mode, this)),
      m_shopSoon(new QTimer(this)), m_comparison(new StartComparison), m_view(new BoatView),
      m_map(new PlankingMap), m_card(new StripCard), m_controls(new PlankingControls),
      m_sidePages(new QStackedWidget), m_stripButton(new QToolButton), m_controlsButton(new QToolButton),
      m_tapeButton(new QToolButton), m_findings(new FindingsPane), m_bar(new LayingBar),
      m_boatPane(new QWidget), m_middle(new QSplitter(Qt::Vertical)) {
    auto* boatLayout = new QVBoxLayout(m_boatPane);
    boatLayout->setContentsMargins(0, 0, 0, 0);
    boatLayout->setSpacing(0);
    boatLayout->addWidget(makeViewBar());
    boatLayout->addWidget(m_view, 1);
    m_middle->addWidget(m_boatPane);
    m_middle->addWidget(m_map);
    m_middle->addWidget(m_comparison);
    m_comparison->hide();
    m_middle->setStretchFactor(0, 3);
    m_middle->setStretchFactor(1, 2);
    m_middle->setChildrenCollapsible(false);
    m_middle->setSizes({520, 300});

    QWidget* side = makeSide();
    auto* across = new QSplitter(Qt::Horizontal);
    across->addWidget(m_middle);
    across->addWidget(side);
    across->setStretchFactor(0, 1);
    across->setStretchFactor(1, 0);
    across->setSizes({960, 330});
    across->setChildrenCollapsible(false);
    m_bar->setObjectName(QStringLiteral("layingBar"));
    m_bar->setAttribute(Qt::WA_StyledBackground);

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(across, 1);
    layout->addWidget(m_tapeBar = makeTapeBar());
    layout->addWidget(m_bar);

    const auto clicked = [this](const QString& id) { select(id.toStdString()); };
    connect(m_view, &BoatView::stripClicked, this, clicked);
    connect(m_view, &BoatView::stripHovered, this, [this](const QString& id) {
        m_map->setHovered(id.toStdString());
        const core::Strip* strip = m_boat ? m_boat->strip(id.toStdString()) : nullptr;
        if (strip != nullptr)
            QToolTip::showText(QCursor::pos(), QStringLiteral("%1, %2").arg(id, rowText(*strip)), m_view);
        else
            QToolTip::hideText();
    });
    connect(m_map, &PlankingMap::stripClicked, this, clicked);
    connect(m_map, &PlankingMap::touched, this, [this](const QPointF& at) {
        putTapeEnd(core::placeAtGirth(m_boat->hull.laid, at.x(), at.y()));
    });
    connect(m_view, &BoatView::touched, this, [this](const std::optional<Eigen::Vector3d>& at) {
        putTapeEnd(at ? core::placeNear(m_boat->hull.laid, *at) : std::nullopt);
    });
    connect(m_controls, &PlankingControls::comparisonAsked, this, &PlankingBench::compareStarts);
    connect(m_comparison, &StartComparison::chosen, this, &PlankingBench::startMoved);
    connect(m_comparison, &StartComparison::closed, this, [this] {
        m_comparing->cancel();
        m_comparison->hide();
    });
    connect(m_comparing, &TaskRunner::progress, m_comparison, &StartComparison::wait);
    m_shopSoon->setSingleShot(true);
    m_shopSoon->setInterval(800);
    connect(m_shopSoon, &QTimer::timeout, this, &PlankingBench::planShop);
    connect(m_map, &PlankingMap::startDragged, this, &PlankingBench::tryStart);
    connect(m_map, &PlankingMap::startDropped, this, [this](double girth) {
        m_nextTry.reset();
        Q_EMIT startMoved(startAt(girth));
    });
    connect(m_bar, &LayingBar::laidChanged, this, &PlankingBench::laidChanged);
    connect(m_findings, &FindingsPane::chosen, this, &PlankingBench::choose);
    m_findings->setBenchOf([this](const core::Finding& finding) { return benchOf(finding); });
}

QWidget* PlankingBench::makeSide() {
    auto* top = new QWidget;
    auto* topLayout = new QVBoxLayout(top);
    topLayout->setContentsMargins(0, 0, 0, 0);
    topLayout->setSpacing(0);
    auto* bar = new QWidget;
    bar->setObjectName(QStringLiteral("viewBar"));
    bar->setAttribute(Qt::WA_StyledBackground);
    auto* barLayout = new QHBoxLayout(bar);
    barLayout->setContentsMargins(8, 3, 8, 3);
    barLayout->setSpacing(2);
    auto* which = new QButtonGroup(this);
    const auto page = [&](QToolButton* button, const QString& text, const QString& tip) {
        button->setText(text);
        button->setToolTip(tip);
        button->setCheckable(true);
        button->setFocusPolicy(Qt::TabFocus);
        which->addButton(button);
        barLayout->addWidget(button);
    };
    page(m_stripButton,
         Wording::tr("Strip in hand"),
         Wording::tr("What there is to know about the strip in hand"));
    page(m_controlsButton,
         Wording::tr("How she is planked"),
         Wording::tr("Start, tapers, ends and closing (P)"));
    barLayout->addStretch(1);
    m_stripButton->setChecked(true);
    connect(m_controlsButton, &QToolButton::toggled, this, [this](bool on) {
        if (m_sidePages->isAncestorOf(QApplication::focusWidget()))
            m_map->setFocus(); // else it would pass to a button, which space presses instead of playing
        m_sidePages->setCurrentIndex(on ? 1 : 0);
        m_map->setStartShown(on);
    });
    m_sidePages->addWidget(m_card);
    m_sidePages->addWidget(m_controls);
    topLayout->addWidget(bar);
    topLayout->addWidget(m_sidePages, 1);

    auto* side = new QSplitter(Qt::Vertical);
    side->setObjectName(QStringLiteral("side"));
    side->addWidget(top);
    side->addWidget(m_findings);
    side->setStretchFactor(0, 3);
    side->setStretchFactor(1, 2);
    side->setChildrenCollapsible(false);
    side->setSizes({480, 320});
    side->setMinimumWidth(300);
    return side;
}

core::StartLine PlankingBench::startAt(double girth) const {
    using Kind = core::StartLine::Kind;
    core::StartLine line = m_boat->project.planking.start;
    if (line.kind != Kind::Bent) {
        line.kind = Kind::Geodesic;
        line.edgeBend = {};
    }
    line.shift = 0.0;
    const double step = m_units == core::Units::Inches ? 25.4 / 16 : 1.0; // a hand on the mouse is no finer
    line.girth = std::round(girth / step) * step;
    return line;
}

void PlankingBench::compareStarts() {
    if (!m_boat)
        return;
    m_comparison->wait(Wording::tr("Searching for good lines…"));
    m_comparison->setVisible(true);
    m_comparing->run(
        [boat = m_boat](std::stop_token stop, const TaskRunner::Progress& progress) {
            const auto told = [&](double part) {
                progress(Wording::tr("Searching for good lines: %1 percent").arg(std::round(100.0 * part)));
            };
            const auto search = core::searchStart(boat->hull, boat->project.strips, 2, told, stop);
            if (stop.stop_requested())
                return std::vector<core::StartTableRow>();
            const std::vector<core::StartLine> lines =
                core::linesToCompare(search.candidates, boat->plan.start);
            progress(Wording::tr("Planking her from each of %1 lines…").arg(lines.size()));
            return core::compareStarts(boat->project, boat->hull, lines, boat->plan.edgeBendLimit);
        },
        [this, inUse = m_boat->plan.start](std::vector<core::StartTableRow> rows) {
            m_comparison->show(std::move(rows), inUse);
        },
        [this](const QString& text) { m_comparison->wait(text); });
}

void PlankingBench::tryStart(double girth) {
    if (!m_boat)
        return;
    if (m_trying->busy()) {
        m_nextTry = girth; // the newest place counts, those between are passed over
        return;
    }
    m_trying->run([boat = m_boat, line = startAt(girth)](
                      std::stop_token, const TaskRunner::Progress&) { return previewStart(*boat, line); },
                  [this](StartPreview preview) {
                      m_map->setStartPreview(std::move(preview));
                      if (const auto next = std::exchange(m_nextTry, std::nullopt))
                          QMetaObject::invokeMethod(
                              this, [this, girth = *next] { tryStart(girth); }, Qt::QueuedConnection);
                  },
                  [](const QString&) {});
}

void PlankingBench::showControls(bool shown) {
    (shown ? m_controlsButton : m_stripButton)->setChecked(true);
}

bool PlankingBench::controlsShown() const {
    return m_controlsButton->isChecked();
}

void PlankingBench::setBoat(std::shared_ptr<const Boat> boat) {
    const bool sameTable = m_boat && boat && m_boat->project.hull == boat->project.hull &&
                           m_boat->project.strips == boat->project.strips;
    m_boat = std::move(boat);
    if (!sameTable)
        cutAt(std::nullopt); // its stations may be gone
    m_trying->cancel();
    if (m_comparing->busy() || !sameTable) {
        m_comparing->cancel(); // of a boat that is no more
        m_comparison->wait(QString());
        m_comparison->hide();
    } else if (!m_comparison->rows().empty()) {
        m_comparison->show(m_comparison->rows(), m_boat->plan.start);
    }
    m_nextTry.reset();
    m_map->setStartPreview(std::nullopt);
    measure(false); // of a boat that is no more
    if (!m_boat || !m_boat->strip(m_selected))
        m_selected.clear();
    if (m_boat)
        m_asides = m_boat->project.putAside;
    showFindings();
    showPlace(std::nullopt);
    m_card->setBoat(m_boat);
    m_controls->setBoat(m_boat.get());
    m_map->setBoat(m_boat);
    m_planningShop->cancel();
    m_shopSoon->start();
    if (m_mode == TaskRunner::Mode::SameThread)
        m_view->setBoat(m_boat);
    else // the meshes of all strips go to the screen: a turn by itself, when the rest has been painted
        QTimer::singleShot(afterPainting, m_view, [this, boat = m_boat] {
            if (boat == m_boat)
                m_view->setBoat(boat);
        });
    const std::string selected = m_selected;
    m_bar->setBoat(m_boat); // tells by laidChanged, which passes the place of the work on
    select(selected);
}

void PlankingBench::setUnits(core::Units units) {
    m_units = units;
    if (measuring())
        showTape(tapeText(m_tape, m_units));
    m_view->setUnits(units);
    m_map->setUnits(units);
    m_comparison->setUnits(units);
    m_card->setUnits(units);
    m_controls->setUnits(units);
    m_controls->setBoat(m_boat.get());
    m_findings->setUnits(units);
}

void PlankingBench::setStale(bool stale) {
    m_view->setStale(stale);
}

std::string PlankingBench::inHand() const {
    if (!m_selected.empty() || !m_boat || m_boat->pieces() == 0)
        return m_selected;
    const int next = std::min(m_bar->laid(), m_boat->pieces() - 1);
    return m_boat->plan.strips[m_boat->byOrder[static_cast<std::size_t>(next)]].id;
}

void PlankingBench::select(const std::string& stripId) {
    m_selected = stripId;
    showPlace(std::nullopt); // another thing is in hand
    m_view->setSelected(stripId);
    m_map->setSelected(stripId);
    m_card->setStrip(inHand());
}

void PlankingBench::laidChanged(int count) {
    m_view->setLaidCount(count);
    m_map->setLaidCount(count);
    select(std::string()); // going on with the work: the next strip is the one in hand
}

void PlankingBench::boatAlone() {
    const bool alone = !m_map->isHidden();
    m_boatPane->show();
    m_map->setVisible(!alone);
}

void PlankingBench::mapAlone() {
    const bool alone = !m_boatPane->isHidden();
    m_map->show();
    m_boatPane->setVisible(!alone);
}

} // namespace sheerlay::ui

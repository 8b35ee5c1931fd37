#include "ui/window/lines_bench.hpp"

#include "core/project/project_edit.hpp"
#include "ui/panels/findings_list.hpp"
#include "ui/panels/lines_board.hpp"
#include "ui/panels/loft_panel.hpp"
#include "ui/panels/offsets_grid.hpp"
#include "ui/panels/offsets_model.hpp"
#include "ui/panels/table_tools.hpp"
#include "ui/scene/words.hpp"

#include <QHBoxLayout>
#include <QItemSelectionModel>
#include <QLabel>
#include <QSplitter>
#include <QToolButton>
#include <QVBoxLayout>

#include <spdlog/spdlog.h>

#include <algorithm>
#include <utility>

namespace sheerlay::ui {
namespace {

constexpr int sideWidth = 380; // px
constexpr int toldLines = 3;

constexpr double unseen = 0.05; // mm; two hulls nearer than this make one drawing

bool near(const std::vector<Eigen::Vector3d>& a, const std::vector<Eigen::Vector3d>& b) {
    return std::ranges::equal(
        a, b, [](const Eigen::Vector3d& p, const Eigen::Vector3d& q) { return (p - q).norm() < unseen; });
}

bool near(const geometry::TensorSurface& a, const geometry::TensorSurface& b) {
    if (a.knotsU().fullVector() != b.knotsU().fullVector() ||
        a.knotsV().fullVector() != b.knotsV().fullVector())
        return false;
    for (int i = 0; i < a.knotsU().poles(); ++i)
        for (int j = 0; j < a.knotsV().poles(); ++j)
            if ((a.pole(i, j) - b.pole(i, j)).norm() >= unseen)
                return false;
    return true;
}

/// The lines of one would cover those of the other.
bool drawnAlike(const core::LoftedHull& a, const core::LoftedHull& b) {
    return &a == &b || (near(a.drawn.sheer, b.drawn.sheer) && near(a.drawn.profile, b.drawn.profile) &&
                        near(a.drawn.surface, b.drawn.surface));
}

} // namespace

LinesBench::LinesBench(TaskRunner::Mode mode, QWidget* parent)
    : QWidget(parent), m_drawing(new TaskRunner(mode, this)), m_board(new LinesBoard),
      m_grid(new OffsetsGrid), m_tools(new TableTools), m_loft(new LoftPanel), m_told(new QLabel),
      m_said(new QLabel), m_fair(new QToolButton), m_likely(new QToolButton) {
    auto* middle = new QSplitter(Qt::Vertical);
    middle->addWidget(makeBoard());
    middle->addWidget(makeTable());
    middle->setStretchFactor(0, 1);
    middle->setStretchFactor(1, 1);
    middle->setChildrenCollapsible(false);
    m_loft->setObjectName(QStringLiteral("side"));
    m_loft->setAttribute(Qt::WA_StyledBackground);
    m_loft->setFixedWidth(sideWidth);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(middle, 1);
    layout->addWidget(m_loft);

    connect(m_grid, &OffsetsGrid::told, this, &LinesBench::tell);
    // what was said holds until the builder goes on, not until the next loft comes in
    connect(m_grid->selectionModel(), &QItemSelectionModel::currentChanged, this, [this] { say({}); });
    connect(m_grid, &OffsetsGrid::said, this, &LinesBench::say);
    connect(m_tools, &TableTools::said, this, &LinesBench::say);
    const auto pass = [this](const QString& name, const core::Project& project) {
        say({});
        Q_EMIT edited(name, project);
    };
    connect(m_grid->offsets(), &OffsetsModel::edited, this, pass);
    connect(m_tools, &TableTools::edited, this, pass);
    connect(m_loft->findings(), &FindingsList::chosen, this, &LinesBench::goTo);
    connect(m_loft, &LoftPanel::refused, this, &LinesBench::say);
    connect(m_loft, &LoftPanel::fairingAsked, this, &LinesBench::askFairing);
    connect(m_fair, &QToolButton::clicked, m_grid, &OffsetsGrid::takeFair);
    connect(m_likely, &QToolButton::clicked, m_grid, &OffsetsGrid::takeLikely);
    showPart(core::LinesPart::Whole);
    say({});
    tell();
}

QWidget* LinesBench::makeBoard() {
    auto* box = new QWidget;
    auto* layout = new QVBoxLayout(box);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    auto* bar = new QWidget;
    bar->setObjectName(QStringLiteral("viewBar"));
    bar->setAttribute(Qt::WA_StyledBackground);
    auto* row = new QHBoxLayout(bar);
    row->setContentsMargins(10, 3, 10, 3);
    const auto add = [&](const QString& text, const QString& tip) {
        auto* button = new QToolButton;
        button->setText(text);
        button->setToolTip(tip);
        button->setFocusPolicy(Qt::TabFocus);
        row->addWidget(button);
        return button;
    };
    const std::pair<QString, QString> parts[] = {
        {tr("All"), tr("Profile, half-breadths and body plan")},
        {tr("Profile"), tr("From the side, with the buttocks")},
        {tr("Half-breadths"), tr("From above, with the waterlines; diagonals below the centreline")},
        {tr("Body plan"), tr("From the end: forward sections to the right, after ones to the left")}};
    for (const auto& [text, tip] : parts) {
        QToolButton* button = add(text, tip);
        button->setCheckable(true);
        const auto part = static_cast<core::LinesPart>(m_parts.size());
        connect(button, &QToolButton::clicked, this, [this, part] { showPart(part); });
        m_parts.push_back(button);
    }
    row->addStretch(1);
    connect(add(QStringLiteral("−"), tr("Smaller")), &QToolButton::clicked, m_board, &LinesBoard::zoomOut);
    connect(add(QStringLiteral("+"), tr("Larger")), &QToolButton::clicked, m_board, &LinesBoard::zoomIn);
    connect(add(tr("Show all"), tr("The whole drawing again")),
            &QToolButton::clicked,
            m_board,
            &LinesBoard::showAll);
    layout->addWidget(bar);
    layout->addWidget(m_board, 1);
    return box;
}

QWidget* LinesBench::makeTable() {
    auto* table = new QWidget;
    auto* layout = new QVBoxLayout(table);
    layout->setContentsMargins(12, 6, 12, 6);
    layout->setSpacing(4);
    layout->addWidget(m_tools);
    layout->addWidget(m_grid, 1);
    m_told->setWordWrap(true);
    m_told->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_told->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_told->setFixedHeight(toldLines * m_told->fontMetrics().lineSpacing() + 4); // the grid stays put
    m_said->setWordWrap(true);
    m_said->setStyleSheet(QStringLiteral("color: #C4532F;"));
    auto* row = new QHBoxLayout;
    row->addWidget(m_told, 1);
    for (QToolButton* button : {m_fair, m_likely}) {
        button->setFocusPolicy(Qt::TabFocus);
        button->hide();
        row->addWidget(button, 0, Qt::AlignTop);
    }
    layout->addLayout(row);
    layout->addWidget(m_said);
    return table;
}

void LinesBench::showPart(core::LinesPart part) {
    for (std::size_t i = 0; i < m_parts.size(); ++i)
        m_parts[i]->setChecked(i == static_cast<std::size_t>(part));
    m_board->setPart(part);
}

void LinesBench::setProject(const core::Project& project) {
    m_grid->offsets()->setProject(project);
    m_tools->setProject(project);
    m_loft->setAsides(project.putAside);
    m_loft->setFairing(project.hull.fairing);
    tell();
}

void LinesBench::setLoft(const core::Project& project, std::shared_ptr<const core::LoftedHull> hull) {
    const bool same = m_hull && hull && m_loftedProject.hull == project.hull && drawnAlike(*m_hull, *hull);
    m_loftedProject = project;
    m_hull = std::move(hull);
    m_loft->setHull(m_hull);
    m_grid->offsets()->setLoft(project, m_hull);
    m_tools->setLoft(project, m_hull);
    if (!same) // an edit brings its hull up to three times: lofted quickly, lofted, and planked
        draw();
    tell();
}

void LinesBench::setBoat(const std::shared_ptr<const Boat>& boat) {
    if (!boat) { // another project is on its way
        setProject({});
        setLoft({}, nullptr);
        return;
    }
    // the hull lives as long as the boat it is part of
    setLoft(boat->project, std::shared_ptr<const core::LoftedHull>(boat, &boat->hull));
}

void LinesBench::setUnits(core::Units units) {
    m_units = units;
    m_loft->setUnits(units);
    m_grid->offsets()->setUnits(units);
    m_tools->setUnits(units);
    m_board->setUnits(units);
    draw();
    tell();
}

/// The lines of the hull, reckoned beside the window; the ones before stay until then.
void LinesBench::draw() {
    if (!m_hull) {
        m_drawing->cancel();
        m_board->setLines(nullptr);
        return;
    }
    m_drawing->run(
        [project = m_loftedProject, hull = m_hull, units = m_units](std::stop_token,
                                                                    const TaskRunner::Progress&) {
            return std::make_shared<const core::DrawnLines>(core::drawnLines(project, *hull, units));
        },
        [this](std::shared_ptr<const core::DrawnLines> lines) { m_board->setLines(std::move(lines)); },
        [](const QString& text) { spdlog::error("the lines could not be drawn: {}", text.toStdString()); });
}

QString LinesBench::told() const {
    return m_told->text();
}

QString LinesBench::said() const {
    return m_said->text();
}

void LinesBench::say(const QString& text) {
    m_said->setText(text);
    m_said->setVisible(!text.isEmpty());
}

void LinesBench::askFairing(double fairing) {
    core::Project next = m_grid->offsets()->project();
    if (next.hull.stations.empty())
        return;
    next.hull.fairing = fairing;
    if (const auto judged = core::checked(next); !judged) {
        const core::FileMessage& first = judged.error().front();
        say(tr("%1: %2 would do.").arg(heardText(first.found), heardText(first.would)));
        m_loft->setFairing(m_grid->offsets()->project().hull.fairing);
        return;
    }
    say({});
    Q_EMIT edited(tr("How closely the loft follows the table"), next);
}

/// Takes the number in hand that a finding doubts.
void LinesBench::goTo(const core::Finding& finding) {
    if (finding.code != "doubtful-cell" || !finding.x || !m_hull)
        return;
    const OffsetsModel& offsets = *m_grid->offsets();
    for (int column = 0; column < offsets.columnCount(); ++column)
        for (int row = 0; row < offsets.rowCount(); ++row) {
            const QModelIndex at = offsets.index(row, column);
            const auto doubt = offsets.doubt(at);
            if (doubt && m_hull->stationX.at(doubt->station) == *finding.x &&
                toQString(finding.text).contains(QStringLiteral(": %1 is").arg(at.data().toString()))) {
                m_grid->setCurrentIndex(at);
                return;
            }
        }
}

std::optional<Eigen::Vector3d> LinesBench::cellInHand() const {
    const QModelIndex at = m_grid->currentIndex();
    if (!at.isValid() || !m_hull)
        return std::nullopt;
    const OffsetsModel& offsets = *m_grid->offsets();
    const core::Station& station = offsets.project().hull.stations.at(static_cast<std::size_t>(at.column()));
    const core::TablePoint* point =
        core::pointOf(station, offsets.lines().at(static_cast<std::size_t>(at.row())));
    if (point == nullptr)
        return std::nullopt;
    return Eigen::Vector3d(station.x + m_hull->xShift, point->halfBreadth, point->height);
}

void LinesBench::tell() {
    const OffsetsModel& offsets = *m_grid->offsets();
    const QModelIndex at = m_grid->currentIndex();
    const auto doubt = at.isValid() ? offsets.doubt(at) : std::nullopt;
    m_fair->setVisible(doubt.has_value());
    m_likely->setVisible(doubt && doubt->likely);
    if (doubt)
        m_fair->setText(tr("Take the fair value, %1").arg(offsets.printedAs(doubt->fair, at)));
    if (doubt && doubt->likely) {
        m_likely->setText(tr("Take %1").arg(offsets.printedAs(*doubt->likely, at)));
        m_likely->setToolTip(tr("Likeliest: %1").arg(toQString(doubt->slip)));
    }
    QString text = at.isValid()
                       ? offsets.words(at)
                       : tr("A cell that stands off the loft is coloured: blue outside it, brown inside, the "
                            "deeper the farther. “?” marks a number the rest of the table contradicts.");
    const int refused =
        offsets.refusedCount() - (at.isValid() && at.data(OffsetsModel::RefusedRole).toBool() ? 1 : 0);
    if (refused > 0)
        text +=
            QLatin1Char(' ') + (refused == 1 ? tr("One entry, marked “!”, can't stand yet.")
                                             : tr("%1 entries, marked “!”, can't stand yet.").arg(refused));
    m_told->setText(text);
    m_tools->setStation(at.isValid() ? std::optional(static_cast<std::size_t>(at.column())) : std::nullopt);
    m_board->setMark(cellInHand());
}

} // namespace sheerlay::ui

#include "ui/window/load_panel.hpp"

#include "core/hull/outside_surface.hpp"
#include "ui/paper/sheet_painter.hpp"
#include "ui/scene/words.hpp"

#include <QMouseEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>
#include <utility>

namespace sheerlay::ui {
namespace {

constexpr double reach = 14.0;       // pixels round a mark in which it is taken hold of
constexpr double paperWidth = 240.0; // mm, what the sheet is laid out on whatever the panel's size
constexpr double leastPaper = 150.0; // mm high

struct Prepared {
    std::shared_ptr<const core::AfloatTrial> trial;
    std::optional<core::AfloatReport> report;
};

Prepared preparedFor(const Boat& boat) {
    Prepared made;
    // not the whole shop plan, whose boards take seconds
    const core::AfterPlanking after = core::afterPlanking(boat.project, boat.hull, boat.plan);
    const auto outside = core::outsideSurface(boat.project, boat.hull);
    if (!after.afloat || !after.weights || !outside)
        return made;
    made.trial = std::make_shared<const core::AfloatTrial>(
        *boat.project.afloat, boat.project.units, *outside, *after.weights);
    made.report = after.afloat;
    return made;
}

} // namespace

LoadPanel::LoadPanel(TaskRunner::Mode mode, QWidget* parent)
    : QWidget(parent), m_runner(new TaskRunner(mode, this)) {
    setMouseTracking(true);
    setMinimumSize(400, 300);
    setAccessibleName(tr("Afloat"));
}

void LoadPanel::setBoat(std::shared_ptr<const Boat> boat) {
    m_boat = std::move(boat);
    m_runner->cancel();
    m_floating = m_again = false;
    m_held.reset();
    m_trial.reset();
    if (!m_boat)
        m_report.reset();
    if (isVisible())
        prepare();
    update();
}

void LoadPanel::setUnits(core::Units units) {
    m_units = units;
    layOut();
}

void LoadPanel::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    prepare();
}

void LoadPanel::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    layOut();
}

/// What does not hang on the loads, once for a boat.
void LoadPanel::prepare() {
    if (!m_boat || m_trial || m_runner->busy())
        return;
    m_words = tr("Floating her…");
    m_runner->run(
        [boat = m_boat](std::stop_token, const TaskRunner::Progress&) { return preparedFor(*boat); },
        [this](Prepared made) {
            m_trial = std::move(made.trial);
            m_report = std::move(made.report);
            m_loads = m_report ? m_report->loads : std::vector<core::WeightItem>();
            m_words = tr("Nothing is asked of her afloat. Add a paddler under “What she gets”.");
            layOut();
        },
        [this](const QString& text) {
            m_words = tr("She could not be floated: %1.").arg(text);
            update();
        });
}

/// The newest loads on the worker; what is moved meanwhile comes next.
void LoadPanel::refloat() {
    if (m_floating) {
        m_again = true;
        return;
    }
    m_floating = true;
    m_again = false;
    m_runner->run([trial = m_trial, loads = m_loads](
                      std::stop_token, const TaskRunner::Progress&) { return trial->with(loads); },
                  [this](core::AfloatReport report) {
                      m_floating = false;
                      m_report = std::move(report);
                      layOut();
                      if (m_again)
                          refloat();
                  },
                  [this](const QString& text) {
                      m_floating = false;
                      m_words = tr("She could not be floated: %1.").arg(text);
                      m_report.reset();
                      update();
                  });
}

double LoadPanel::pixelsPerMm() const {
    return std::max(0.1, width() / paperWidth);
}

void LoadPanel::layOut() {
    const core::Speaking speaking(windowLanguage());
    if (m_report)
        m_board =
            core::loadBoard(*m_report, m_units, paperWidth, std::max(leastPaper, height() / pixelsPerMm()));
    update();
}

QPointF LoadPanel::markOf(std::size_t load) const {
    const Eigen::Vector3d& centre = m_loads.at(load).centre;
    const Eigen::Vector2d at = pixelsPerMm() * m_board.onPaper(centre.x(), centre.z());
    return {at.x(), at.y()};
}

std::optional<std::size_t> LoadPanel::loadAt(const QPointF& place) const {
    std::optional<std::size_t> nearest;
    double least = reach;
    for (std::size_t i = 0; m_report && m_trial && i < m_loads.size(); ++i) {
        const QPointF off = markOf(i) - place;
        if (const double distance = std::hypot(off.x(), off.y()); distance < least) {
            least = distance;
            nearest = i;
        }
    }
    return nearest;
}

void LoadPanel::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    if (!m_report) {
        painter.drawText(rect().adjusted(40, 40, -40, -40), Qt::AlignCenter | Qt::TextWordWrap, m_words);
        return;
    }
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), Qt::white);
    painter.save();
    painter.scale(pixelsPerMm(), pixelsPerMm());
    paint(painter, m_board.sheet);
    painter.restore();
    if (m_held) { // where it is now; the sheet follows
        painter.setBrush(Qt::NoBrush);
        painter.drawEllipse(markOf(*m_held), reach, reach);
    }
}

void LoadPanel::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton)
        m_held = loadAt(event->position());
    update();
}

void LoadPanel::mouseMoveEvent(QMouseEvent* event) {
    if (!m_held) {
        setCursor(loadAt(event->position()) ? Qt::SizeHorCursor : Qt::ArrowCursor);
        return;
    }
    const auto [from, to] =
        std::ranges::minmax(m_report->profile, {}, [](const Eigen::Vector3d& p) { return p.x(); });
    const Eigen::Vector2d paper =
        Eigen::Vector2d(event->position().x(), event->position().y()) / pixelsPerMm();
    m_loads[*m_held].centre.x() = std::clamp(m_board.onBoat(paper).x(), from.x(), to.x());
    refloat();
    update();
}

void LoadPanel::mouseReleaseEvent(QMouseEvent*) {
    if (!m_held)
        return;
    const std::size_t load = *m_held;
    m_held.reset();
    update();
    const double x = m_loads[load].centre.x() - m_boat->hull.xShift;
    if (std::abs(x - m_boat->project.afloat->loads.at(load).x) > 0.5) // else only touched
        Q_EMIT moved(load, x);
}

} // namespace sheerlay::ui

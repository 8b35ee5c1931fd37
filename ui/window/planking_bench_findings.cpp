// The part of the Planking bench that lists what was found, of boards and fit-out too, and leads there.
#include "ui/map2d/planking_map.hpp"
#include "ui/panels/findings_list.hpp"
#include "ui/panels/findings_pane.hpp"
#include "ui/scene/scarf_marks.hpp"
#include "ui/scene/wording.hpp"
#include "ui/view3d/boat_view.hpp"
#include "ui/window/planking_bench.hpp"

#include <utility>

namespace sheerlay::ui {

void PlankingBench::choose(const core::Finding& finding) {
    if (finding.strip && m_boat && m_boat->strip(*finding.strip) != nullptr)
        select(*finding.strip);
    showPlace(finding.x);
}

void PlankingBench::showPlace(std::optional<double> x) {
    if (!x && !m_map->place())
        return;
    m_map->setPlace(x);
    m_view->setPlace(x);
}

void PlankingBench::nextFinding() {
    m_findings->list()->next();
}

FindingsList* PlankingBench::findings() const {
    return m_findings->list();
}

void PlankingBench::setAsides(std::vector<core::PutAside> asides) {
    m_asides = std::move(asides);
    showFindings();
}

QString PlankingBench::benchOf(const core::Finding& finding) const {
    switch (m_boat ? m_boat->foundIn(finding) : FoundIn::Planking) {
    case FoundIn::FitOut:
        return Wording::tr("Fitting out");
    case FoundIn::Boards:
        return Wording::tr("Stock");
    case FoundIn::Planking:
        break;
    }
    return {};
}

void PlankingBench::planShop() {
    m_map->setScarfs({});
    if (!m_boat || (m_boat->allFound() && !m_boat->project.stock))
        return;
    m_planningShop->run(
        [boat = m_boat](std::stop_token, const TaskRunner::Progress&) {
            const auto& stock = boat->shop().stock;
            return stock && !boat->project.stock->lots.empty()
                       ? scarfMarks(boat->plan, *stock, boat->scene.map)
                       : std::vector<ScarfMark>();
        },
        [this](std::vector<ScarfMark> scarfs) {
            if (m_scarfs)
                m_map->setScarfs(std::move(scarfs));
            showFindings();
        },
        [](const QString&) {}); // the benches of boards and fit-out tell what is wrong with them
}

void PlankingBench::showFindings() {
    if (m_boat)
        m_findings->setFindings(m_boat->findings(), m_asides, m_boat->allFound());
    else
        m_findings->setFindings({}, {});
}

} // namespace sheerlay::ui

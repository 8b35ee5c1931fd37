#include "ui/scene/boat.hpp"

#include "core/hull/station_names.hpp"
#include "core/planking/plan_findings.hpp"
#include "core/stock/row_woods.hpp"
#include "core/words/language.hpp"
#include "ui/scene/mould_mesh.hpp"
#include "ui/scene/words.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace sheerlay::ui {
namespace {

constexpr double underSheer = 220.0; // mm between the highest sheer and the strongback: room for a clamp

std::vector<Eigen::Vector3d> mirrored(std::vector<Eigen::Vector3d> line) {
    for (Eigen::Vector3d& p : line)
        p.y() = -p.y();
    return line;
}

void addPoints(std::vector<Eigen::Vector3d>& shape, const TriangleMesh& mesh) {
    for (const Eigen::Vector3f& p : mesh.points)
        shape.push_back(p.cast<double>());
}

// An edge on the map, thinned there and not on the boat: near a plumb stem an edge that is all but straight
// bends sharply on the map.
std::vector<Eigen::Vector3d> edgeOnMap(const std::vector<Eigen::Vector3d>& edge, const GirthMap& map) {
    std::vector<Eigen::Vector3d> line;
    for (const Eigen::Vector3d& p : edge) {
        const Eigen::Vector2d there = map.place(p);
        line.emplace_back(there.x(), there.y(), 0.0);
    }
    return core::thinned(line, 0.3);
}

std::vector<Eigen::Vector2d> outlineOnMap(const core::Strip& strip, const GirthMap& map) {
    std::vector<Eigen::Vector2d> outline;
    for (const Eigen::Vector3d& p : edgeOnMap(strip.upperEdge, map))
        outline.push_back(p.head<2>());
    const std::vector<Eigen::Vector3d> lower = edgeOnMap(strip.lowerEdge, map);
    for (auto p = lower.rbegin(); p != lower.rend(); ++p)
        outline.push_back(p->head<2>());
    if (strip.side == core::Side::Port) {
        for (Eigen::Vector2d& p : outline)
            p.y() = -std::abs(p.y()); // points on the centreplane have no sign of their own
    }
    return outline;
}

void addFrame(BoatScene& scene, const Boat& boat, const HullSections& sections) {
    if (boat.hull.laid.sheer.empty())
        return;
    FrameSizes sizes;
    double highest = boat.hull.laid.sheer.front().z();
    double widest = 0.0;
    for (const Eigen::Vector3d& p : boat.hull.laid.sheer) {
        highest = std::max(highest, p.z());
        widest = std::max(widest, p.y());
    }
    sizes.strongbackTop = highest + underSheer;
    sizes.legHalfWidth = std::min(sizes.legHalfWidth, 0.45 * widest);
    const double middle = 0.5 * (boat.hull.laid.sheer.front().x() + boat.hull.laid.sheer.back().x());
    std::vector<double> standing;
    for (const double x : boat.hull.stationX) {
        const std::vector<Eigen::Vector3d> section = sections.moulds(x);
        if (section.size() < 2)
            continue;
        scene.moulds.push_back(mouldPlate(section, sizes, x < middle));
        standing.push_back(x);
    }
    scene.strongback = strongback(standing, sizes);
}

} // namespace

const core::Strip* Boat::strip(std::string_view id) const {
    const auto found = std::find_if(
        plan.strips.begin(), plan.strips.end(), [&](const core::Strip& s) { return s.id == id; });
    return found == plan.strips.end() ? nullptr : &*found;
}

std::vector<std::string> Boat::stationNames() const {
    const core::Speaking speaking(windowLanguage());
    return core::stationNames(project, hull);
}

std::vector<core::Finding> Boat::findings() const {
    return core::allFindings(hull, planned->ready() ? shop().plan : plan);
}

bool Boat::allFound() const {
    return planned->ready() ||
           !(project.stock || project.fitout || project.covering || project.afloat); // nothing is to follow
}

FoundIn Boat::foundIn(const core::Finding& finding) const {
    if (!planned->ready())
        return FoundIn::Planking;
    const auto among = [&finding](const std::vector<core::Finding>& findings) {
        return std::ranges::any_of(findings, [&](core::Finding one) {
            one.aside = finding.aside;
            return one == finding;
        });
    };
    if (among(shop().after.findings))
        return FoundIn::FitOut;
    return shop().stock && among(shop().stock->findings) ? FoundIn::Boards : FoundIn::Planking;
}

std::shared_ptr<const Boat>
makeBoat(core::Project project, core::LoftedHull hull, core::Plan plan, const HullSections& sections) {
    auto boat = std::make_shared<Boat>();
    boat->project = std::move(project);
    boat->hull = std::move(hull);
    boat->plan = std::move(plan);
    BoatScene& scene = boat->scene;

    const std::vector<Eigen::Vector3d>& sheer = boat->hull.laid.sheer;
    const std::vector<Eigen::Vector3d>& profile = boat->hull.laid.profile;
    scene.lines = {sheer, mirrored(sheer), profile};

    double first = 0.0;
    double last = boat->hull.laid.length;
    for (const auto* line : {&sheer, &profile}) {
        for (const Eigen::Vector3d& p : *line) {
            first = std::min(first, p.x());
            last = std::max(last, p.x());
        }
    }
    const GirthMap map(sections.laid, first, last);
    const core::StripFaces faces{-boat->hull.laidHeight,
                                 boat->project.strips.thickness - boat->hull.laidHeight};
    const auto woods = core::rowWoods(boat->project, boat->plan);
    for (const core::Strip& strip : boat->plan.strips) {
        boat->wood.push_back(woods.at(strip.row));
        SceneStrip drawn;
        drawn.fine = barShape(strip, faces, fineThinning);
        drawn.coarse = barShape(strip, faces, coarseThinning);
        drawn.mapOutline = outlineOnMap(strip, map);
        scene.shape.insert(scene.shape.end(), drawn.coarse.loop.begin(), drawn.coarse.loop.end());
        scene.strips.push_back(std::move(drawn));
        boat->difficulty.push_back(core::difficultyOf(strip));
    }
    for (const Eigen::Vector3d& p : sheer)
        scene.mapSheer.push_back(map.place(p));
    for (const core::Strip& strip : boat->plan.strips) {
        if (strip.row == 1 && strip.side == core::Side::Starboard)
            for (const Eigen::Vector3d& p : strip.upperEdge)
                scene.mapStart.push_back(map.place(p));
    }
    std::ranges::stable_sort(scene.mapStart, {}, [](const Eigen::Vector2d& p) { return p.x(); });
    scene.map = map;
    const std::vector<std::string> names = boat->stationNames();
    for (std::size_t i = 0; i < names.size(); ++i) {
        const double x = boat->hull.stationX[i];
        if (x >= first && x <= last)
            scene.stations.push_back({x, map.halfGirth(x), names[i]});
    }
    addFrame(scene, *boat, sections);
    addPoints(scene.frame, scene.strongback);

    boat->byOrder.resize(boat->plan.strips.size());
    std::iota(boat->byOrder.begin(), boat->byOrder.end(), std::size_t{0});
    std::stable_sort(boat->byOrder.begin(), boat->byOrder.end(), [&](std::size_t a, std::size_t b) {
        return boat->plan.strips[a].order < boat->plan.strips[b].order;
    });
    return boat;
}

std::shared_ptr<const Boat> makeBoat(core::Project project, core::LoftedHull hull, core::Plan plan) {
    // the functions below are only called before this returns, and look at the hull that is moved into the
    // boat: hand them one of their own
    const auto surfaces = std::make_shared<const core::LoftedHull>(hull);
    HullSections sections;
    sections.moulds = [surfaces](double x) { return core::sectionAt(surfaces->moulds, x, 60); };
    sections.laid = [surfaces](double x) { return core::sectionAt(surfaces->laid, x, 40); };
    return makeBoat(std::move(project), std::move(hull), std::move(plan), sections);
}

} // namespace sheerlay::ui

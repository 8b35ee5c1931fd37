#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/difficulty.hpp"
#include "core/planking/plan.hpp"
#include "core/project/project.hpp"
#include "ui/scene/girth_map.hpp"
#include "ui/scene/shop_on_demand.hpp"
#include "ui/scene/strip_mesh.hpp"
#include "ui/scene/triangle_mesh.hpp"

#include <Eigen/Core>

#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace sheerlay::ui {

/// One strip as the pictures need it; belongs to the strip of the plan with the same index.
struct SceneStrip {
    BarShape fine, coarse;                   ///< to be seen from near, and with the whole boat
    std::vector<Eigen::Vector2d> mapOutline; ///< on the map: x, girth from the centreline (+ starboard), mm
};

/// A station on the map.
struct MapStation {
    double x = 0.0;         ///< mm from the bow
    double halfGirth = 0.0; ///< mm
    std::string name;       ///< as the table and the sheets call it
};

/// The boat as meshes and outlines: what the pictures show, made once per plan, on any thread.
struct BoatScene {
    std::vector<SceneStrip> strips;   ///< as Plan::strips
    std::vector<TriangleMesh> moulds; ///< one per station inside the hull
    TriangleMesh strongback;
    std::vector<std::vector<Eigen::Vector3d>> lines; ///< sheer starboard, sheer port, profile
    std::vector<MapStation> stations;
    std::vector<Eigen::Vector2d> mapSheer; ///< starboard, bow to stern: x, girth
    std::vector<Eigen::Vector2d> mapStart; ///< the line the planking starts from, likewise
    GirthMap map;                          ///< of the laid surface
    std::vector<Eigen::Vector3d>
        frame; ///< points of the building frame that have to be in the picture with it
    std::vector<Eigen::Vector3d> shape; ///< points that have to be in the picture
};

/// What a finding is about.
enum class FoundIn { Planking, Boards, FitOut };

/// A planned boat with its pictures: one immutable value that all panels share.
struct Boat {
    core::Project project;
    core::LoftedHull hull;
    core::Plan plan;
    BoatScene scene;
    std::vector<core::Difficulty> difficulty; ///< as Plan::strips
    std::vector<std::string> wood;            ///< as Plan::strips
    std::vector<std::size_t> byOrder;         ///< index of the piece laid first, second, …
    std::shared_ptr<ShopOnDemand> planned = std::make_shared<ShopOnDemand>(); ///< see shop()

    /// The strip of that name, or none.
    [[nodiscard]] const core::Strip* strip(std::string_view id) const;
    /// Boards, fit-out and all that follows. Takes seconds when it is first asked for, so ask on a worker.
    [[nodiscard]] const core::ShopPlan& shop() const { return planned->of(project, hull, plan); }
    /// As the table names them, with the decimal mark of the window's language.
    [[nodiscard]] std::vector<std::string> stationNames() const;
    /// All findings known so far, heaviest first: those of boards and fit-out once shop() is planned.
    [[nodiscard]] std::vector<core::Finding> findings() const;
    /// Nothing will join findings() any more.
    [[nodiscard]] bool allFound() const;
    /// What a finding is about. Planking until shop() is planned.
    [[nodiscard]] FoundIn foundIn(const core::Finding& finding) const;
    [[nodiscard]] int pieces() const { return static_cast<int>(plan.strips.size()); }
};

/// Where the hull is cut: on the moulds and on the laid surface.
struct HullSections {
    SectionAt moulds;
    SectionAt laid;
};

/// Puts a boat together with its pictures. Pure; takes some 0.1 s for a canoe, so call it on a worker.
[[nodiscard]] std::shared_ptr<const Boat>
makeBoat(core::Project project, core::LoftedHull hull, core::Plan plan);

/// Same with the sections given: for surfaces that are known in closed form.
[[nodiscard]] std::shared_ptr<const Boat>
makeBoat(core::Project project, core::LoftedHull hull, core::Plan plan, const HullSections& sections);

} // namespace sheerlay::ui

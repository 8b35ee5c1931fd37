#include "core/journal/replan.hpp"
#include "core/project/project_file.hpp"
#include "tests/support/catch.hpp"
#include "ui/scene/start_preview.hpp"

#include <chrono>
#include <cmath>

using namespace sheerlay;

TEST_CASE("a start line that is tried lies where it was asked for, and is judged fast enough to drag it") {
    auto read = core::readProject(SHEERLAY_REFERENCE "/formula_canoe.sheerlay");
    REQUIRE(read.has_value());
    auto hull = core::loft(read->project);
    REQUIRE(hull.has_value());
    auto plan = core::plankAsLaid(read->project, *hull);
    REQUIRE(plan.has_value());
    const auto boat = ui::makeBoat(read->project, *hull, plan->plan);
    const double widest = boat->hull.laid.halfGirthMaxX;
    const double whole = boat->scene.map.halfGirth(widest);
    const core::StartLine line{core::StartLine::Kind::Geodesic, 200.0, 0.0, {}};
    const auto began = std::chrono::steady_clock::now();
    const ui::StartPreview preview = ui::previewStart(*boat, line);
    const double milliseconds =
        std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - began).count();
    WARN("a start line was judged in " << milliseconds << " ms");
    CHECK(milliseconds < 1000.0); // 100 on a quiet machine; this one may be busy
    REQUIRE(preview.judged.has_value());
    CHECK(preview.judged->rowsToSheer > 0);
    bool passed = false;
    for (const Eigen::Vector2d& p : preview.onMap) {
        if (std::abs(p.x() - widest) > 30.0)
            continue;
        passed = true;
        CHECK(std::abs(whole - p.y() - 200.0) < 1.0); // tangent to x there
    }
    CHECK(passed);
    // below the keel there is no line
    CHECK(!ui::previewStart(*boat, {core::StartLine::Kind::Geodesic, whole + 500.0, 0.0, {}}).judged);
}

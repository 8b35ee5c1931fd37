#include "core/moulds/mould_set.hpp"
#include "core/moulds/transom_form.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <cmath>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;
using Eigen::Vector2d;

namespace {

/// A quarter of a pipe, its stern cut askew.
LoftedHull askew(double radius, double length, double slope) {
    geometry::Trims trims;
    trims.bow = geometry::TransomPlane{0, 0, 0};
    trims.stern = geometry::TransomPlane{length, slope, 0};
    LoftedHull hull = test::quarterPipe(radius, length + 300);
    return test::exactHull(hull.moulds.surface, trims);
}

} // namespace

TEST_CASE("a pipe cut askew has an ellipse for a transom, and edges beveled as its plane leans") {
    constexpr double radius = 400.0;
    for (const double slope : {0.0, 0.25, -0.4}) {
        INFO("slope " << slope);
        const auto form = transomForm(Project{}, askew(radius, 2000.0, slope), End::Stern);
        REQUIRE(form);
        const double steep = std::hypot(1.0, slope);
        CHECK(form->rake() == Approx(std::atan(-slope)).margin(1e-12));
        CHECK_THAT(form->xAtSheer, WithinAbs(2000.0, 0.02));
        CHECK_THAT(form->edge.front().at.x(), WithinAbs(radius, 0.02));
        CHECK_THAT(form->edge.back().at.x(), WithinAbs(0.0, 0.02));
        for (const EdgePoint& e : form->edge) {
            // y^2 + z^2 = r^2, and up along the board z grows by 1 / steep a millimetre
            CHECK_THAT(std::hypot(e.at.x(), e.at.y() / steep), WithinAbs(radius, 0.02));
            // the pipe's normal (0, y, z) / r against the way into the hull, (-1, 0, slope) / steep
            CHECK_THAT(std::sin(e.bevel), WithinAbs(slope / steep * (e.at.y() / steep) / radius, 1e-4));
        }
        // the inner face's edge: the same pipe seen along its own lean
        const double t = form->thickness;
        for (const Vector2d& p : form->inside) {
            const double z = p.y() / steep + t * slope / steep; // along the board, then into the hull
            CHECK_THAT(std::hypot(p.x(), z), WithinAbs(radius, 0.02));
        }
        CHECK_FALSE(transomForm(Project{}, test::quarterSphere(300.0), End::Stern));
    }
}

TEST_CASE("the skiff's transom is as broad at the sheer as her hull is there, and told with her moulds") {
    const Project project = test::projectAt(SHEERLAY_EXAMPLES "/sedgewren/sedgewren.sheerlay");
    const auto hull = loft(project);
    REQUIRE(hull);
    const auto set = mouldsOf(project, *hull);
    REQUIRE(set);
    REQUIRE(set->transoms.size() == 1);
    const TransomForm& form = set->transoms.front();
    CHECK(form.end == End::Stern);
    CHECK_THAT(form.edge.front().at.x(), WithinAbs(hull->moulds.sheer.back().y(), 0.05));
    CHECK_THAT(form.xAtSheer, WithinAbs(hull->moulds.sheer.back().x(), 0.05));
    CHECK_THAT(form.sheerHeight, WithinAbs(hull->moulds.sheer.back().z(), 0.05));
    CHECK_THAT(form.level + form.edge.back().at.y(), WithinAbs(hull->moulds.profile.back().z(), 0.5));
    CHECK(form.fullerInside()); // she narrows toward the stern
    CHECK(form.inside.front().x() > form.edge.front().at.x());
}

#include "core/moulds/mould_set.hpp"
#include "core/moulds/stem_form.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/formula_hull.hpp"
#include "tests/support/planked.hpp"
#include "tests/support/surfaces.hpp"

#include <algorithm>
#include <cmath>

using namespace sheerlay;
using namespace sheerlay::core;
using Eigen::Vector2d;

namespace {

struct Boat {
    Project project;
    LoftedHull hull;
};

const Boat& canoe() {
    static const Boat boat = [] {
        Project project = test::doubleEnder(test::formulaCanoe(), 0.1);
        auto hull = loft(project);
        REQUIRE(hull);
        return Boat{project, std::move(*hull)};
    }();
    return boat;
}

} // namespace

TEST_CASE("a mould stands at every station that has room, each with the fuller face on it") {
    const Boat& boat = canoe();
    const auto set = mouldsOf(boat.project, boat.hull);
    REQUIRE(set);
    CHECK(set->moulds.size() + set->leftOut.size() == boat.project.hull.stations.size());
    REQUIRE(set->moulds.size() >= 15);
    for (const Mould& m : set->moulds) {
        INFO(m.name);
        CHECK(m.forward == (m.x <= boat.hull.moulds.halfGirthMaxX));
        CHECK(m.foot > m.sheer);
        // the fuller face governs: wood is planed off and never wanting, but for the flat of the middle body
        double least = 1.0;
        for (const EdgePoint& e : m.edge)
            least = std::min(least, e.bevel);
        CHECK(least > -0.02);
        CHECK(std::isfinite(least));
    }
}

TEST_CASE("stem forms reach from the head to a whole mould, on the formula's own centreline") {
    const Boat& boat = canoe();
    const test::FormulaHull formula = test::formulaCanoe();
    const auto set = mouldsOf(boat.project, boat.hull);
    REQUIRE(set);
    REQUIRE(set->stemForms.size() == 2);
    for (const StemForm& form : set->stemForms) {
        double worst = 0.0;
        for (const EdgePoint& e : form.edge)
            worst = std::max(worst, formula.distance({e.at.x() - boat.hull.xShift, 0.0, e.at.y()}));
        INFO("worst " << worst);
        CHECK(worst < 1.0); // the loft's own fit of the stem
        CHECK(form.edge.back().at.x() == Approx(form.endsAt).margin(1e-9));
        const auto against = std::find_if(
            set->moulds.begin(), set->moulds.end(), [&](const Mould& m) { return m.name == form.mould; });
        REQUIRE(against != set->moulds.end());
        CHECK(against->farFace() == Approx(form.endsAt));
        CHECK(against->stemCut == 0.0);
        // the bevel line lies inside the edge, by half a board over the bevel's tangent where the stem is
        // straight
        REQUIRE(form.bevelLine.size() > 3);
        for (const Vector2d& p : form.bevelLine) {
            double nearest = 1e9;
            std::size_t at = 0;
            for (std::size_t i = 0; i < form.edge.size(); ++i)
                if ((form.edge[i].at - p).norm() < nearest) {
                    nearest = (form.edge[i].at - p).norm();
                    at = i;
                }
            CHECK((p - form.edge[at].at).dot(form.edge[at].outward) < 0.5);
        }
    }
    for (const Mould& m : set->moulds) {
        bool within = false;
        for (const StemForm& form : set->stemForms)
            within = within || (form.end == End::Bow ? m.x < form.endsAt : m.x > form.endsAt);
        CHECK((m.stemCut > 0.0) == within);
    }
}

TEST_CASE("a plane wedge has the stem form of its closed form") {
    // sides y = (x + z/4) / 3 meet on the raked line x = -z/4: normal (1, -3, 1/4) up to sign, length
    // sqrt(161)/4
    LoftedHull hull;
    hull.moulds.surface = test::splineOf(
        [](double u, double v) {
            const double z = 300 - v;
            return Eigen::Vector3d(u, (u + z / 4) / 3, z);
        },
        {-400, 60, 30},
        {-60, 40, 14});
    for (int i = 0; i <= 40; ++i) {
        const double v = 8.0 * i;
        hull.moulds.outline.profile.emplace_back(-(300 - v) / 4, v);
        hull.moulds.profile.emplace_back(-(300 - v) / 4, 0, 300 - v);
    }
    Mould against;
    against.x = -30 + 20;
    against.thickness = 20;
    against.foot = 400;
    Project project;
    project.moulds.thickness = 20;
    const auto form = stemForm(project, hull, End::Bow, against);
    REQUIRE(form);
    for (const EdgePoint& e : form->edge) {
        CHECK(e.at.x() == Approx(-e.at.y() / 4).margin(1e-6));
        CHECK(e.bevel == Approx(std::asin(3.0 / std::sqrt(161.0) * 4.0)).margin(1e-6));
    }
    CHECK(form->edge.back().at.x() == Approx(-30).margin(1e-9));
    CHECK(form->outline[form->outline.size() - 2].y() == Approx(400));
}

TEST_CASE("the strongback carries every mould where its station is") {
    Boat boat = canoe();
    boat.project.moulds.strongback = {200, 150, 80};
    const auto set = mouldsOf(boat.project, boat.hull);
    REQUIRE(set);
    const StrongbackPlan& plan = set->strongback;
    REQUIRE(plan.places.size() == set->moulds.size());
    for (std::size_t i = 0; i < plan.places.size(); ++i) {
        const Mould& m = set->moulds[i];
        CHECK(plan.from + plan.places[i].along == Approx(m.x));
        CHECK(plan.places[i].keel == Approx(plan.top - m.keel));
        CHECK(plan.places[i].sheer == Approx(plan.top - m.sheer));
        CHECK(plan.places[i].sheer >= 80 - 1e-6);
        CHECK(plan.places[i].along > 0);
        CHECK(plan.places[i].along < plan.length);
    }
    CHECK(plan.diagonal * plan.diagonal ==
          Approx(plan.length * plan.length + plan.width * plan.width).epsilon(1e-12));
    CHECK(plan.checkDiagonal > plan.checkLength);
}

TEST_CASE("moulds stand where the project asks for them, and what has no room is told") {
    Boat boat = canoe();
    boat.project.moulds.spacing = 400;
    auto set = mouldsOf(boat.project, boat.hull);
    REQUIRE(set);
    for (const Mould& m : set->moulds)
        CHECK(std::fmod(m.x + 1e-6, 400) < 1e-3);
    boat.project.moulds.spacing.reset();
    boat.project.moulds.stations = {-3000, -300, 300};
    set = mouldsOf(boat.project, boat.hull);
    REQUIRE(set);
    CHECK(set->moulds.size() == 2);
    REQUIRE(set->leftOut.size() == 1);
    boat.project.moulds.stations = {-9000};
    CHECK_FALSE(mouldsOf(boat.project, boat.hull));
}

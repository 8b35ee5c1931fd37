#include "core/project/wood.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"
#include "ui/scene/palette.hpp"
#include "ui/scene/strip_colour.hpp"

#include <set>

using namespace sheerlay;
using namespace sheerlay::ui;

TEST_CASE("every wood of the table has a tone of its own, and walnut is the darkest") {
    std::set<QRgb> seen;
    for (const core::Wood& wood : core::allWoods()) {
        INFO(wood.id);
        CHECK(seen.insert(woodColour(wood.id).rgb()).second);
        CHECK(woodColour(wood.id).lightness() >= woodColour("black-walnut").lightness());
    }
    CHECK(woodColour("moonwood") == QColor::fromRgb(palette::free));
}

TEST_CASE("strips are coloured by their row's wood, port like starboard") {
    core::Project project = test::projectAt(SHEERLAY_EXAMPLES "/sedgewren/sedgewren.sheerlay");
    project.stock = core::Stock{};
    project.stock->woodRules = {{"black-walnut", 2, 4, 2, {}, 0}};
    test::Planked planked = test::planked(project);
    const auto boat = makeBoat(planked.project, planked.hull, planked.plan);
    for (std::size_t i = 0; i < boat->plan.strips.size(); ++i) {
        const core::Strip& strip = boat->plan.strips[i];
        INFO(strip.id);
        const bool walnut = strip.row == 2 || strip.row == 4;
        CHECK(stripColour(*boat, i, StripColours::Wood) ==
              woodColour(walnut ? "black-walnut" : project.strips.wood));
        CHECK(stripColour(*boat, i, StripColours::Bend) == difficultyColour(boat->difficulty[i]));
    }
}

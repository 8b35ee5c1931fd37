#include "core/project/wood.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fake_boat.hpp"
#include "tests/support/planked.hpp"
#include "ui/scene/palette.hpp"
#include "ui/scene/strip_colour.hpp"

#include <algorithm>
#include <array>
#include <memory>
#include <numbers>
#include <set>
#include <utility>
#include <vector>

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

namespace {

/// The place of a value among the limits: how many of them it is over.
template <std::size_t Size> std::size_t over(double value, const std::array<double, Size>& limits) {
    return static_cast<std::size_t>(
        std::ranges::count_if(limits, [&](double limit) { return value > limit; }));
}

} // namespace

TEST_CASE("each strip has the colour of its class in the legend, by every measure") {
    const auto boat = test::fakeBoat();
    constexpr double deg = std::numbers::pi / 180.0;
    const auto lines = [&](StripColours colours) {
        return colourLines(boat.get(), colours, core::Units::Millimetres);
    };
    for (std::size_t i = 0; i < boat->plan.strips.size(); ++i) {
        const core::Strip& strip = boat->plan.strips[i];
        INFO(strip.id);
        const auto colour = [&](StripColours colours) { return stripColour(*boat, i, colours); };
        // the limits the legend names: 10, 20, 40 degrees a metre; radius 4, 2, 1 m; half, 3/4, all it bears
        CHECK(colour(StripColours::Twist) ==
              lines(StripColours::Twist)[over(strip.twistMax * 1000.0 / deg, std::array{10.0, 20.0, 40.0})]
                  .colour);
        const double bend = strip.bendMinRadius ? 1000.0 / *strip.bendMinRadius : 0.0;
        CHECK(colour(StripColours::HullBend) ==
              lines(StripColours::HullBend)[over(bend, std::array{0.25, 0.5, 1.0})].colour);
        CHECK(colour(StripColours::Strain) ==
              lines(StripColours::Strain)[over(strip.strainMax, std::array{0.5, 0.75, 1.0})].colour);
        CHECK(colour(StripColours::Laid) == lines(StripColours::Laid)[1].colour);
    }
}

TEST_CASE("the measures' colours fall in lightness, so that they are told apart without hue") {
    for (const StripColours colours : {StripColours::Bend,
                                       StripColours::Twist,
                                       StripColours::HullBend,
                                       StripColours::Strain,
                                       StripColours::Width}) {
        INFO(colourHeading(colours).toStdString());
        const std::vector<ColourLine> lines = colourLines(nullptr, colours, core::Units::Inches);
        REQUIRE(lines.size() == 4);
        for (std::size_t i = 1; i < lines.size(); ++i)
            CHECK(qGray(lines[i].colour.rgb()) + 20 < qGray(lines[i - 1].colour.rgb()));
    }
}

TEST_CASE("what the journal has on the boat is coloured as laid, and narrow strips stand out") {
    auto boat = std::make_shared<Boat>(*test::fakeBoat());
    boat->project.journal.laid.push_back({boat->plan.strips[3].id, "2026-05-02", {}, 0});
    const std::vector<ColourLine> laid =
        colourLines(boat.get(), StripColours::Laid, core::Units::Millimetres);
    CHECK(stripColour(*boat, 3, StripColours::Laid) == laid[0].colour);
    CHECK(stripColour(*boat, 4, StripColours::Laid) == laid[1].colour);

    core::Strip& strip = boat->plan.strips[3];
    const auto widths = colourLines(boat.get(), StripColours::Width, core::Units::Millimetres);
    boat->plan.coverWidth = 20.0;
    for (const auto& [width, line] :
         {std::pair{20.0, 0}, std::pair{18.0, 1}, std::pair{14.0, 2}, std::pair{8.0, 3}}) {
        strip.samples.assign(2, {});
        strip.samples.back().width = width;
        CHECK(stripColour(*boat, 3, StripColours::Width) == widths[static_cast<std::size_t>(line)].colour);
    }
    strip.kind = core::StripKind::Stealer;
    bool told = false;
    for (const ColourLine& line : colourLines(boat.get(), StripColours::Shape, core::Units::Millimetres))
        told = told || line.colour == stripColour(*boat, 3, StripColours::Shape);
    CHECK(told);
}

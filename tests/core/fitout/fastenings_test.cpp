#include "core/fitout/fastenings.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fitout_hulls.hpp"

#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

Project wanted() {
    Project p = test::bareFitout();
    p.strips.thickness = 6;
    p.fitout->gunwales = GunwaleChoices{};
    p.fitout->gunwales->inner = {20, 18};
    p.fitout->gunwales->outer = {21, 18};
    p.fitout->seats.resize(1);
    p.fitout->seats[0].name = "seat";
    p.fitout->seats[0].x = 1500;
    p.fitout->seats[0].belowSheer = 90;
    return p;
}

std::vector<Fastening> of(const Project& project) {
    const auto fitout =
        planFitout(project, test::quarterPipe(400, 3000), Plan{}, [](const Fitout&) { return 1500.0; });
    REQUIRE(fitout);
    return planFastenings(project, **fitout);
}

} // namespace

TEST_CASE("screws reach two thirds into the outer gunwale, bolts through gunwale, hanger and rail") {
    Project project = wanted();
    const auto all = of(project);
    REQUIRE(all.size() == 3);
    const Fastening& screws = all[0];
    CHECK(screws.kind == Fastening::Kind::Screw);
    CHECK(screws.length == Approx(20 + 6 + 14 - 6)); // its head 6 mm under a plug
    CHECK(screws.count == 36);                       // 3000 mm at most 177.8 apart, both sides
    CHECK(screws.centre.x() == Approx(1500).margin(5));
    CHECK(screws.mass ==
          Approx(36 * 0.75 * std::numbers::pi / 4 * 4.2 * 4.2 * 34 * 7.9e-6)); // steel of 7900 kg/m3
    const Fastening& front = all[1];
    CHECK(front.kind == Fastening::Kind::Bolt);
    CHECK(front.what == "front rail of the seat");
    CHECK(front.count == 2);
    // from the gunwale's top, 18 of it, 72 of hanger, the rail's 19.05, nut and washer 12
    CHECK(front.length == Approx(18 + 72 + 19.05 + 12).margin(0.05));
    project.fitout->gunwales->plugs = false;
    CHECK(of(project)[0].length == Approx(20 + 6 + 14));
}

TEST_CASE("without gunwales nothing is fastened to them") {
    Project project = wanted();
    project.fitout->gunwales.reset();
    CHECK(of(project).empty());
}

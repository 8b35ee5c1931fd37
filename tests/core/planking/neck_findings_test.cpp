#include "core/planking/neck_findings.hpp"
#include "core/planking/planking.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <string>
#include <utility>
#include <vector>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

std::vector<Finding> told(const std::vector<double>& widths, Side side = Side::Starboard) {
    Plan plan;
    Strip strip;
    strip.id = "S-19";
    strip.side = side;
    for (std::size_t i = 0; i < widths.size(); ++i) {
        StripSample sample;
        sample.s = 100.0 * static_cast<double>(i);
        sample.x = 300.0 + sample.s;
        sample.width = widths[i];
        strip.samples.push_back(sample);
    }
    plan.strips.push_back(std::move(strip));
    findNecks(plan);
    return plan.findings;
}

} // namespace

TEST_CASE("a piece thin between its ends is told where it is thinnest, once") {
    const auto findings = told({6.7, 3.9, 2.0, 1.0, 0.9, 1.3, 2.1, 3.2, 7.0, 13.9});
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].code == "thin-neck");
    CHECK(findings[0].level == Level::Caution);
    CHECK(findings[0].strip == "S-19");
    CHECK(findings[0].x == 700.0);
    CHECK(findings[0].text.find("only 0.9 mm") != std::string::npos);
}

TEST_CASE("pieces that run out to points, thin ones throughout and wide waists are no necks") {
    CHECK(told({0.0, 4.0, 9.0, 12.0, 9.0, 3.0, 0.0}).empty());
    CHECK(told({0.5, 1.0, 5.0, 12.0}).empty());
    CHECK(told({1.5, 1.2, 1.4, 1.8}).empty());
    CHECK(told({16.0, 9.0, 3.5, 9.0, 16.0}).empty());
    CHECK(told({6.0, 0.9, 6.0}, Side::Port).empty()); // starboard tells for both
    CHECK(told({}).empty());
}

TEST_CASE("a plan tells the neck it has") {
    const Planked boat = planked(projectAt(SHEERLAY_EXAMPLES "/tanglepike/tanglepike.sheerlay"));
    bool found = false;
    for (const Finding& finding : boat.plan.findings)
        found = found || (finding.code == "thin-neck" && finding.strip == "S-19");
    CHECK(found);
}

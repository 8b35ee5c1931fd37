#include "core/fairness/fairness_findings.hpp"
#include "tests/support/catch.hpp"

#include <string>
#include <vector>

using namespace sheerlay::core;

namespace {

StationBump bump(const std::string& name, double x, double by, bool unfair) {
    StationBump b;
    b.station = name;
    b.x = x;
    b.bump = by;
    b.spread = 0.7;
    b.judged = true;
    b.unfair = unfair;
    return b;
}

} // namespace

TEST_CASE("only what is unfair is told, with place, size and side") {
    std::vector<StationBump> bumps{bump("5-0-0", 1524, 0.4, false), bump("6-0-0", 1828.8, -3.1, true)};
    const std::vector<Finding> findings = fairnessFindings(bumps);
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].level == Level::Caution);
    CHECK(findings[0].code == "unfair-station");
    CHECK_FALSE(findings[0].strip.has_value());
    CHECK_THAT(findings[0].x.value(), WithinAbs(1828.8, 1e-9));
    CHECK(findings[0].text.find("x 6-0-0 lies about 3 mm (1/8\") inside") != std::string::npos);
    CHECK(findings[0].text.find("5-0-0") == std::string::npos);

    bumps[1].rival = 0;
    CHECK(fairnessFindings(bumps)[0].text.find("the one at x 5-0-0 lies outside") != std::string::npos);
    bumps[1].unfair = false;
    CHECK(fairnessFindings(bumps).empty());
}

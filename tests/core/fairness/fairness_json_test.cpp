#include "core/fairness/fairness_json.hpp"
#include "tests/support/catch.hpp"

#include <nlohmann/json.hpp>

#include <stdexcept>

using namespace sheerlay::core;

TEST_CASE("stations and their bumps stand beside the findings") {
    StationBump b;
    b.station = "6-0-0 \"middle\"";
    b.x = 1828.8;
    b.bump = -2.9876;
    b.spread = 0.7;
    b.judged = b.unfair = true;
    const auto json = nlohmann::json::parse(withFairness("{\"findings\":[]}", {b, StationBump{}}));
    CHECK(json["findings"].empty());
    REQUIRE(json["fairness"]["stations"].size() == 2);
    const auto& first = json["fairness"]["stations"][0];
    CHECK(first["station"] == "6-0-0 \"middle\"");
    CHECK_THAT(first["bump"].get<double>(), WithinAbs(-2.99, 1e-9));
    CHECK(first["unfair"] == true);
    CHECK(json["fairness"]["stations"][1]["judged"] == false);
    CHECK_THROWS_AS(withFairness("[]", {}), std::invalid_argument);
}

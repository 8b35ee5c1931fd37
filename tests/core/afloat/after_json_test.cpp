#include "core/afloat/after_json.hpp"
#include "core/fitout/fitout_json.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/loaded_boat.hpp"

#include <nlohmann/json.hpp>

#include <stdexcept>

using namespace sheerlay;
using namespace sheerlay::core;

TEST_CASE("plan.json gains weights, covering and afloat, with what was reckoned") {
    const auto& [bare, hull, plan] = test::canoeToLoad();
    const AfterPlanking after = afterPlanking(test::loaded(bare), hull, plan);
    const auto json = nlohmann::json::parse(withAfterPlanking(R"({"version":1})", after));
    CHECK(json["version"] == 1);
    CHECK_THAT(json["weights"]["kg"].get<double>(), WithinAbs(after.weights->mass, 1e-4));
    CHECK(json["weights"]["items"].size() == after.weights->items.size());
    CHECK(json["covering"]["faces"].size() == 2);
    CHECK_THAT(json["covering"]["litres"].get<double>(), WithinAbs(after.covering->litres, 1e-4));
    const auto& rest = json["afloat"]["rest"];
    CHECK_THAT(rest["draught"].get<double>(), WithinAbs(after.afloat->rest->draught, 1e-4));
    CHECK_THAT(rest["gm"].get<double>(), WithinAbs(after.afloat->rest->gm, 1e-4));
    CHECK(json["afloat"]["righting_starboard"]["arms_deg_mm"].size() ==
          after.afloat->toStarboard->arms.size());
    CHECK(json["afloat"]["righting_port"].is_null());
}

TEST_CASE("the fit-out stands beside them under its own key") {
    const auto& [bare, hull, plan] = test::canoeToLoad();
    Project project = bare;
    project.fitout = FitoutChoices{};
    project.fitout->bulkheads.resize(1);
    const AfterPlanking after = afterPlanking(project, hull, plan);
    const auto json = nlohmann::json::parse(withAfterPlanking(R"({"version":1})", after));
    CHECK(json["fitout"] == nlohmann::json::parse(fitoutToJson(*after.fitout)));
    CHECK(json["weights"]["items"][1]["name"] == "bulkheads");
    CHECK_FALSE(json.contains("covering"));
}

TEST_CASE("glue and fastenings stand under their own keys") {
    AfterPlanking after;
    after.glue = {{"fillets", true, 0.0, 0.25, 0.2, {}}};
    after.fastenings = {{Fastening::Kind::Bolt, "yoke", 6.35, 70, 2, 0.05, {}}};
    const auto json = nlohmann::json::parse(withAfterPlanking(R"({"a":0})", after));
    CHECK(json["glue"][0]["litres"] == 0.25);
    CHECK(json["glue"][0]["epoxy"] == true);
    CHECK(json["fastenings"][0]["kind"] == "bolt");
    CHECK(json["fastenings"][0]["count"] == 2);
}

TEST_CASE("nothing asked, nothing added; a boat that swamps has no rest") {
    CHECK(withAfterPlanking(R"({"version":1})", AfterPlanking{}) == R"({"version":1})");
    const auto& [bare, hull, plan] = test::canoeToLoad();
    Project project = test::loaded(bare);
    project.covering.reset();
    project.afloat->loads[0].mass = 2000;
    const auto json =
        nlohmann::json::parse(withAfterPlanking(R"({"a":0})", afterPlanking(project, hull, plan)));
    CHECK(json["afloat"]["rest"].is_null());
    CHECK_FALSE(json.contains("covering"));
    CHECK_THROWS_AS(withAfterPlanking("[]", afterPlanking(project, hull, plan)), std::invalid_argument);
}

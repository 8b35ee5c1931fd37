#include "core/planking/taper_findings.hpp"
#include "core/planking/tapered_boat.hpp"
#include "tests/support/catch.hpp"

#include <algorithm>
#include <string>
#include <vector>

using namespace sheerlay::core;

namespace {

/// Starboard strips of rows 1, 2, … with these edge bends, 1/m; the third one planed narrower.
Plan planOf(const std::vector<double>& bends) {
    Plan plan;
    plan.edgeBendLimit = 0.2e-3;
    plan.tapers = Tapers{};
    plan.tapers->touched = 1;
    plan.tapers->plainWorst = 0.4e-3;
    for (std::size_t i = 0; i < bends.size(); ++i) {
        Strip s;
        s.row = static_cast<int>(i) + 1;
        s.id = "S0" + std::to_string(s.row);
        s.length = 4000;
        s.edgeBend.maxAbs = bends[i] * 1e-3;
        s.planed = i == 2 ? PlanedEdge::Lower : PlanedEdge::None;
        plan.strips.push_back(s);
    }
    noteMet(plan);
    tellTapers(plan);
    return plan;
}

bool has(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

std::string textOf(const Plan& plan, const std::string& code) {
    const auto found = std::ranges::find(plan.findings, code, &Finding::code);
    return found == plan.findings.end() ? std::string() : found->text;
}

} // namespace

TEST_CASE("tapers that keep the limit are told with their rows and what they gain") {
    const Plan plan = planOf({0.1, 0.15, 0.2, 0.2});
    CHECK(plan.findings.size() == 1);
    CHECK(has(textOf(plan, "tapered"),
              "1 row is planed narrower on each side (3) so that no strip longer than"));
    CHECK(has(textOf(plan, "tapered"), "without tapers the worst would be"));
}

TEST_CASE(
    "rows that stay over the limit below an easy start are named, and nothing is claimed for the others") {
    const Plan plan = planOf({0.1, 0.3, 0.2, 0.25, 0.26});
    CHECK_FALSE(has(textOf(plan, "tapered"), "so that no strip longer than"));
    CHECK(textOf(plan, "taper-met-later").empty());
    CHECK(has(textOf(plan, "taper-not-met"), "Rows 2, 4 to 5 below the start"));
    CHECK(has(textOf(plan, "taper-not-met"), "S02 still bends to a radius of"));
}

TEST_CASE("a start line bent over the limit is to blame where its own row is over") {
    const Plan plan = planOf({0.3, 0.25, 0.2, 0.1});
    CHECK(has(textOf(plan, "taper-met-later"), "below it the limit is met from row 3 on"));
    CHECK(textOf(plan, "taper-not-met").empty());
}

TEST_CASE("no taper is called unneeded where a strip is over the limit") {
    Plan plan = planOf({0.1, 0.15});
    plan.findings.clear();
    plan.tapers->touched = 0;
    tellTapers(plan);
    CHECK_FALSE(textOf(plan, "no-taper-needed").empty());
    plan.findings.clear();
    plan.strips[1].edgeBend.maxAbs = 0.3e-3;
    tellTapers(plan);
    CHECK(textOf(plan, "no-taper-needed").empty());
    CHECK_FALSE(textOf(plan, "taper-not-met").empty());
}

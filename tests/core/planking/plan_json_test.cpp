#include "core/planking/plan_json.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <nlohmann/json.hpp>

#include <cmath>
#include <initializer_list>
#include <numbers>
#include <set>
#include <string>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;
using nlohmann::json;

namespace {

const Planked& boat() {
    static const Planked b = planked(projectAt(SHEERLAY_REFERENCE "/formula_canoe_geodesic.sheerlay"));
    return b;
}

const json& document() {
    static const json j = json::parse(planToJson(boat().project, boat().hull, boat().plan));
    return j;
}

void requireKeys(const json& object, std::initializer_list<const char*> keys, const std::string& where) {
    REQUIRE(object.is_object());
    for (const char* key : keys) {
        INFO(where << " needs " << key);
        CHECK(object.contains(key));
    }
}

/// Every number finite; null only where the contract has it.
void walk(const json& value, const std::string& path, const std::string& key) {
    static const std::set<std::string> mayBeNull = {
        "min_radius", "strip", "x", "bow", "stern", "split_row", "herringbone_row"};
    if (value.is_object())
        for (const auto& [name, child] : value.items())
            walk(child, path + "." + name, name);
    else if (value.is_array())
        for (const auto& child : value)
            walk(child, path, key);
    else if (value.is_number())
        CHECK(std::isfinite(value.get<double>()));
    else if (value.is_null()) {
        INFO(path);
        CHECK(mayBeNull.contains(key));
    }
}

} // namespace

TEST_CASE("how far the table's rounding moves the figures is told where it was worked out") {
    CHECK_FALSE(document().contains("uncertainty"));
    Plan plan = boat().plan;
    PlanUncertainty u;
    u.rows = {{-2, 0.00001, 0.0001, 1.5}, {1, 0.00002, 0.0002, 2.5}};
    u.edgeBend = 0.00002;
    u.twist = 0.0002;
    u.length = 2.5;
    u.lengthTypical = 1.5;
    u.halfGirth = 0.25;
    u.draws = 24;
    plan.uncertainty = u;
    const json told = json::parse(planToJson(boat().project, boat().hull, plan)).at("uncertainty");
    CHECK(told.at("draws") == 24);
    CHECK(told.at("edge_bend") == 0.00002);
    CHECK_THAT(told.at("twist_deg_per_m").get<double>(), WithinRel(0.2 * 180 / std::numbers::pi, 1e-6));
    CHECK(told.at("length") == 2.5);
    CHECK(told.at("length_typical") == 1.5);
    CHECK(told.at("half_girth") == 0.25);
    CHECK_FALSE(told.contains("shutter_width"));
    REQUIRE(told.at("rows").size() == 2);
    CHECK(told.at("rows")[0].at("row") == -2);
    CHECK(told.at("rows")[1].at("length") == 2.5);
}

TEST_CASE("plan.json has the contract's keys") {
    const json& j = document();
    CHECK(j.at("format") == "sheerlay-plan");
    CHECK(j.at("version") == 1);
    CHECK(j.at("project") == boat().project.name);
    CHECK(j.at("program").is_string());
    requireKeys(j.at("stock"), {"thickness", "width", "cover_width"}, "stock");
    requireKeys(
        j.at("hull"),
        {"length", "beam", "half_area", "half_girth_max", "half_girth_max_x", "surface", "sheer", "profile"},
        "hull");
    requireKeys(j.at("hull").at("surface"), {"degree", "knots_u", "knots_v", "poles"}, "surface");
    for (const json& s : j.at("strips")) {
        requireKeys(s,
                    {"id",
                     "side",
                     "row",
                     "kind",
                     "upper_edge",
                     "lower_edge",
                     "length",
                     "cut_length",
                     "widths",
                     "edge_bend",
                     "twist",
                     "bend",
                     "strain",
                     "ends",
                     "outline",
                     "order"},
                    s.at("id").get<std::string>());
        requireKeys(s.at("edge_bend"),
                    {"max_abs", "signed_min", "signed_max", "min_radius", "at_x", "force_n"},
                    "edge_bend");
        requireKeys(s.at("twist"), {"max_deg_per_m", "at_x"}, "twist");
        requireKeys(s.at("bend"), {"min_radius", "at_x"}, "bend");
        requireKeys(s.at("strain"), {"max", "at_x"}, "strain");
        REQUIRE(s.at("ends").size() == 2);
        for (const json& e : s.at("ends"))
            requireKeys(e,
                        {"end",
                         "on",
                         "x",
                         "z",
                         "cut_deg",
                         "bevel_deg",
                         "dihedral_deg",
                         "lap_inner",
                         "lap_outer",
                         "lap",
                         "weave",
                         "run_inner",
                         "run_outer",
                         "landing"},
                        "end");
    }
    requireKeys(j.at("marks"), {"weave", "closing"}, "marks");
    requireKeys(j.at("marks").at("weave"), {"bow", "stern"}, "weave");
    requireKeys(j.at("marks").at("closing"), {"bow", "stern"}, "closing");
    requireKeys(j.at("coverage"), {"strips_area", "hull_area", "largest_gap", "largest_overlap"}, "coverage");
    requireKeys(j.at("timing_ms"), {"loft", "plan"}, "timing");
    for (const json& f : j.at("findings"))
        requireKeys(f, {"level", "code", "strip", "x", "text"}, "finding");
}

TEST_CASE("every number is finite, and null stands only where the contract says") {
    walk(document(), "plan", "");
}

TEST_CASE("words, ids and orders are those of the contract") {
    std::set<std::string> ids;
    std::set<int> orders;
    const std::set<std::string> kinds = {"full", "tapered", "stealer", "filler", "shutter"};
    const std::set<std::string> sides = {"port", "starboard", "centre"};
    const std::set<std::string> lands = {"stem", "keel", "transom", "sheer", "strip", "nib"};
    for (const json& s : document().at("strips")) {
        CHECK(ids.insert(s.at("id").get<std::string>()).second);
        CHECK(orders.insert(s.at("order").get<int>()).second);
        CHECK(kinds.contains(s.at("kind").get<std::string>()));
        CHECK(sides.contains(s.at("side").get<std::string>()));
        CHECK(s.at("ends")[0].at("end") == "bow");
        CHECK(s.at("ends")[1].at("end") == "stern");
        for (const json& e : s.at("ends")) {
            CHECK(lands.contains(e.at("on").get<std::string>()));
            CHECK(e.at("cut_deg").get<double>() >= 0);
            CHECK(e.at("cut_deg").get<double>() <= 90.0001);
        }
    }
    CHECK(ids.size() == boat().plan.strips.size());
    CHECK(*orders.rbegin() == static_cast<int>(ids.size()));
}

TEST_CASE("angles are degrees, lengths millimetres, bends one over millimetres") {
    const json& j = document();
    for (std::size_t i = 0; i < boat().plan.strips.size(); ++i) {
        const Strip& s = boat().plan.strips[i];
        const json& o = j.at("strips").at(i);
        CHECK(o.at("id") == s.id);
        CHECK_THAT(o.at("length").get<double>(), WithinAbs(s.length, 1e-5));
        CHECK_THAT(o.at("edge_bend").at("max_abs").get<double>(), WithinRel(s.edgeBend.maxAbs, 1e-9));
        CHECK_THAT(o.at("twist").at("max_deg_per_m").get<double>(),
                   WithinRel(s.twistMax * 180 / std::numbers::pi * 1000, 1e-5));
        CHECK_THAT(o.at("ends")[0].at("cut_deg").get<double>(),
                   WithinAbs(s.ends[0].cut * 180 / std::numbers::pi, 1e-5));
        CHECK(o.at("upper_edge").size() == s.upperEdge.size());
        CHECK(o.at("outline").size() == s.outline.size());
    }
    CHECK_THAT(j.at("hull").at("length").get<double>(), WithinAbs(4876.8, 1.5));
    CHECK_THAT(j.at("coverage").at("hull_area").get<double>(), WithinRel(2.3847e6, 1e-3));
}

TEST_CASE("the written surface is the laid one: rebuilt from knots and poles it gives the same points") {
    const json& s = document().at("hull").at("surface");
    CHECK(s.at("degree") == json::array({5, 5}));
    const auto ku = s.at("knots_u").get<std::vector<double>>(),
               kv = s.at("knots_v").get<std::vector<double>>();
    const json& poles = s.at("poles");
    REQUIRE(ku.size() == poles.size() + 6);
    REQUIRE(kv.size() == poles[0].size() + 6);
    // de Boor's recurrence, from the definition
    const auto basis =
        [](const std::vector<double>& t, std::size_t i, std::size_t p, double x, auto&& self) -> double {
        if (p == 0)
            return x >= t[i] && x < t[i + 1] ? 1.0 : 0.0;
        return (x - t[i]) / (t[i + p] - t[i]) * self(t, i, p - 1, x, self) +
               (t[i + p + 1] - x) / (t[i + p + 1] - t[i + 1]) * self(t, i + 1, p - 1, x, self);
    };
    for (const auto& [u, v] : {std::pair{200.0, 100.0}, std::pair{2438.0, 10.0}, std::pair{4300.0, 450.0}}) {
        Eigen::Vector3d p(0, 0, 0);
        for (std::size_t i = 0; i < poles.size(); ++i) {
            const double bu = basis(ku, i, 5, u, basis);
            if (bu == 0.0)
                continue;
            for (std::size_t k = 0; k < poles[i].size(); ++k)
                p += bu * basis(kv, k, 5, v, basis) *
                     Eigen::Vector3d(poles[i][k][0], poles[i][k][1], poles[i][k][2]);
        }
        CHECK((p - boat().hull.laid.surface.point(u, v)).norm() < 1e-5);
    }
}

TEST_CASE("findings alone: the check document") {
    const json j =
        json::parse(findingsToJson({{Level::Caution, "odd-cell", std::nullopt, 12.5, "Look \"here\"."}}));
    CHECK(j.at("format") == "sheerlay-check");
    CHECK(j.at("version") == 1);
    REQUIRE(j.at("findings").size() == 1);
    CHECK(j.at("findings")[0].at("level") == "caution");
    CHECK(j.at("findings")[0].at("strip").is_null());
    CHECK(j.at("findings")[0].at("x") == 12.5);
    CHECK(j.at("findings")[0].at("text") == "Look \"here\".");
    CHECK(json::parse(findingsToJson({})).at("findings").is_array());
}

#include "core/planking/difficulty.hpp"
#include "core/planking/plan_findings.hpp"
#include "core/planking/strength.hpp"
#include "tests/support/catch.hpp"

#include <cmath>
#include <fstream>
#include <limits>
#include <map>
#include <numbers>
#include <sstream>
#include <stdexcept>
#include <string>
#include <vector>

using namespace sheerlay::core;

// Figures of mechanics.md sections 1 to 4: western redcedar, 6.35 x 19.05 mm (1/4 x 3/4 in).

namespace {

constexpr double thickness = 6.35, width = 19.05, bay = 305.0;

const Wood& redcedar() {
    const Wood* w = findWood("western-redcedar");
    REQUIRE(w != nullptr);
    return *w;
}

/// Rows of a reference table by column.
std::vector<std::map<std::string, std::string>> table(const std::string& name) {
    std::ifstream file(SHEERLAY_REFERENCE "/" + name);
    REQUIRE(file);
    std::vector<std::string> heads;
    std::vector<std::map<std::string, std::string>> rows;
    for (std::string line; std::getline(file, line);) {
        if (line.empty() || line.front() == '#')
            continue;
        std::vector<std::string> cells;
        std::istringstream text(line);
        for (std::string cell; std::getline(text, cell, ',');)
            cells.push_back(cell);
        if (heads.empty()) {
            heads = cells;
            continue;
        }
        REQUIRE(cells.size() == heads.size());
        auto& row = rows.emplace_back();
        for (std::size_t i = 0; i < heads.size(); ++i)
            row[heads[i]] = cells[i];
    }
    REQUIRE_FALSE(rows.empty());
    return rows;
}

} // namespace

TEST_CASE("the handbook's figures for a redcedar strip") {
    const Strength s(redcedar(), thickness, width);
    CHECK_THAT(redcedar().alongModulus, WithinAbs(8.42, 0.01));
    CHECK_THAT(s.edgeBendRadius(), WithinAbs(3100, 10)); // half of the modulus of rupture
    CHECK_THAT(s.holdingForce(1.0 / 5000, bay), WithinAbs(121, 1));
    CHECK_THAT(s.holdingForce(1.0 / 5000, 406), WithinAbs(91, 1));
    CHECK(s.holdingForce(-1.0 / 5000, bay) == s.holdingForce(1.0 / 5000, bay));
    CHECK_THAT(Strength(redcedar(), thickness, 22.225).edgeBendRadius(), WithinAbs(3620, 10)); // 7/8 in
}

TEST_CASE("strain: both bends add at a corner, twist counts by its square") {
    const Strength s(redcedar(), thickness, width);
    const double k = 1 / s.edgeBendRadius();
    CHECK_THAT(s.strain(k, 0, 0), WithinRel(1.0, 1e-12));
    CHECK_THAT(s.strain(-k, 0, 0), WithinRel(1.0, 1e-12));
    // flatwise 1/4 in: 1.03 m
    CHECK_THAT(1 / s.strain(0, 1.0, 0), WithinAbs(1 / 1030.0, 0.01 / 1030));
    CHECK_THAT(s.strain(0.3 * k, -0.2 * k * width / thickness, 0), WithinRel(0.5, 1e-12));
    const double twist = 5 * std::numbers::pi / 180 / 304.8;
    CHECK_THAT(s.strain(0, 0, 2 * twist), WithinRel(4 * s.strain(0, 0, twist), 1e-12));
    CHECK_THAT(s.strain(0.5 * k, 0, twist), WithinRel(0.5 + s.strain(0, 0, twist), 1e-12));
    CHECK(s.strain(0, 0, 0) == 0.0);
}

TEST_CASE("shear of a twisted strip: tau = c G t theta', c(3) = 0.9854") {
    // 0.26 MPa per degree per foot against 0.77 of 6.8 MPa
    const double twist = std::numbers::pi / 180 / 304.8;
    const auto c = [&](double ratio) {
        const double t = 6.0;
        const Strength s(redcedar(), t, ratio * t);
        const double tau =
            std::sqrt(s.strain(0, 0, twist)) * Strength::allowedShearPart * redcedar().shearStrength;
        return tau / (redcedar().shearModulus * t * twist);
    };
    // mechanics.md section 3, Saint-Venant's series
    CHECK_THAT(c(1), WithinAbs(0.6753, 6e-5));
    CHECK_THAT(c(1.5), WithinAbs(0.8476, 6e-5));
    CHECK_THAT(c(2), WithinAbs(0.9301, 6e-5));
    CHECK_THAT(c(3), WithinAbs(0.9854, 6e-5));
    CHECK_THAT(c(5), WithinAbs(0.9994, 6e-5));
    const Strength s(redcedar(), thickness, width);
    CHECK_THAT(std::sqrt(s.strain(0, 0, twist)) * Strength::allowedShearPart * redcedar().shearStrength,
               WithinAbs(0.26, 0.005));
}

TEST_CASE("the woods are the handbook's, converted") {
    constexpr double psi = 6.894757e-3; // MPa
    int seen = 0;
    for (const auto& row : table("wood_handbook.csv")) {
        INFO(row.at("id"));
        const Wood* wood = findWood(row.at("id"));
        REQUIRE(wood != nullptr);
        ++seen;
        const auto value = [&](const char* key) { return std::stod(row.at(key)); };
        CHECK_THAT(wood->bendingStrength, WithinAbs(value("mor_psi") * psi, 0.051));
        CHECK_THAT(wood->bendingModulus, WithinAbs(value("moe_million_psi") * psi * 1000, 0.0051));
        CHECK_THAT(wood->alongModulus, WithinAbs(1.1 * value("moe_million_psi") * psi * 1000, 0.0051));
        CHECK_THAT(wood->shearStrength, WithinAbs(value("shear_psi") * psi, 0.0051));
        CHECK_THAT(wood->density, WithinAbs(1120 * value("sg"), 0.51));
        CHECK_THAT(wood->shearModulus, WithinRel(wood->alongModulus * 1000 * value("glt_over_el"), 2e-3));
        // smallest radius over width, at half of the modulus of rupture and where dry wood stops being
        // elastic
        const double radius = Strength(*wood, thickness, width).edgeBendRadius() / width;
        CHECK_THAT(radius, WithinAbs(value("r_over_t_50"), 0.6));
        CHECK_THAT(radius * 0.50 / 0.65, WithinAbs(value("r_over_t_65"), 0.6));
    }
    CHECK(seen == static_cast<int>(allWoods().size()));
}

TEST_CASE("a twisted rectangle: stiffness and shear of Saint-Venant's series, for every shape") {
    const double twist = std::numbers::pi / 180 / 304.8, t = 6.0;
    for (const auto& row : table("rectangle_torsion.csv")) {
        const double n = std::stod(row.at("n"));
        INFO("n " << n);
        for (const Strength& s : {Strength(redcedar(), t, n * t), Strength(redcedar(), n * t, t)}) {
            const double j = s.twistingCouple(twist) / redcedar().shearModulus / twist;
            CHECK_THAT(j / (n * t * t * t * t), WithinAbs(std::stod(row.at("beta")), 6e-5));
            const double tau =
                std::sqrt(s.strain(0, 0, twist)) * Strength::allowedShearPart * redcedar().shearStrength;
            CHECK_THAT(tau / (redcedar().shearModulus * t * twist), WithinAbs(std::stod(row.at("c")), 6e-5));
            // tau = T / (alpha w t^2)
            CHECK_THAT(s.twistingCouple(-twist) / (tau * n * t * t * t),
                       WithinAbs(std::stod(row.at("alpha")), 1e-4));
        }
    }
    // mechanics.md section 3: 0.053 N m per degree per foot
    CHECK_THAT(Strength(redcedar(), thickness, width).twistingCouple(twist), WithinAbs(53, 0.5));
}

TEST_CASE("the force over a bay is that of a beam on two supports, sprung by hand at the middle") {
    const Strength s(redcedar(), thickness, width);
    const double kappa = 0.25e-3, force = s.holdingForce(kappa, bay);
    // deflection by integrating M / E I twice, from the middle, where the beam is level, to a support
    const double stiffness = redcedar().alongModulus * 1000 * thickness * std::pow(width, 3) / 12;
    const int steps = 20000;
    const double dx = bay / 2 / steps;
    double slope = 0, deflection = 0;
    for (int i = 0; i < steps; ++i) {
        const double toSupport = bay / 2 - (i + 0.5) * dx;
        slope += force / 2 * toSupport / stiffness * dx;
        deflection += slope * dx;
    }
    CHECK_THAT(deflection, WithinRel(kappa * bay * bay / 8, 1e-3)); // the sag of an even bend over the bay
    CHECK_THAT(s.edgeCouple(kappa), WithinRel(stiffness * kappa, 1e-12));
    CHECK_THAT(s.edgeCouple(1.0 / 5000), WithinAbs(6200, 50)); // mechanics.md section 2: 6.2 N m
    CHECK_THAT(100 / newtonsPerPound, WithinAbs(22.4809, 1e-4));
}

TEST_CASE("a strip bent edgewise rolls out sideways between the moulds") {
    const Strength s(redcedar(), thickness, width);
    // mechanics.md section 2: 0.00060 /mm, R 1.7 m
    CHECK_THAT(s.rollingEdgeBend(305), WithinAbs(0.00060, 0.5e-5));
    CHECK_THAT(1 / s.rollingEdgeBend(305), WithinAbs(1700, 50));
    CHECK_THAT(s.rollingEdgeBend(610), WithinRel(s.rollingEdgeBend(305) / 2, 1e-12));
    CHECK_THAT(s.rolling(-s.rollingEdgeBend(bay), bay), WithinRel(1.0, 1e-12));
    CHECK_FALSE(s.rollsOut(0.99 * s.rollingEdgeBend(bay), bay));
    CHECK(s.rollsOut(-1.01 * s.rollingEdgeBend(bay), bay));
    // the textbook's short form for a thin rectangle: M = pi b t^3 / (6 L) sqrt(E G (1 - 0.63 t/b))
    for (const Wood& wood : allWoods())
        for (const double t : {4.8, 6.35, 7.9})
            for (const double b : {16.0, 19.05, 25.4}) {
                const Strength strip(wood, t, b);
                const double modulus = wood.alongModulus * 1000;
                const double couple = std::numbers::pi * b * std::pow(t, 3) / (6 * bay) *
                                      std::sqrt(modulus * wood.shearModulus * (1 - 0.63 * t / b));
                INFO(wood.id << ", " << t << " x " << b);
                CHECK_THAT(strip.edgeCouple(strip.rollingEdgeBend(bay)), WithinRel(couple, 2e-3));
            }
    CHECK(std::isinf(Strength(redcedar(), 10, 10).rollingEdgeBend(bay)));
    CHECK(Strength(redcedar(), 10, 10).rolling(0.01, bay) == 0.0);
}

TEST_CASE("a plan says which strips roll out, and how close they must be held") {
    Project project;
    project.strips.thickness = thickness;
    project.strips.width = width;
    Plan plan;
    plan.edgeBendLimit = 1;
    plan.coverWidth = 16;
    plan.mouldBay = 305;
    for (const double kappa : {0.30e-3, 0.70e-3, 0.65e-3}) {
        Strip strip;
        strip.row = static_cast<int>(plan.strips.size()) + 1;
        strip.id = "S0" + std::to_string(strip.row);
        strip.edgeBend.maxAbs = kappa;
        strip.edgeBend.atX = 2000;
        plan.strips.push_back(strip);
    }
    const auto told = [&] {
        plan.findings.clear();
        findInPlan(project, plan);
        const Finding* found = nullptr;
        for (const Finding& f : plan.findings)
            if (f.code == "strip-rolls-out")
                found = &f;
        return found;
    };
    const Finding* finding = told();
    REQUIRE(finding != nullptr);
    CHECK(finding->strip == "S02");
    CHECK(finding->x == 2000);
    CHECK(finding->text.starts_with("2 strips a side roll out"));
    CHECK(finding->text.find("1.4 m") != std::string::npos); // 1 / 0.70 per metre
    const auto every = finding->text.find("at least every ");
    REQUIRE(every != std::string::npos);
    const double held = std::stod(finding->text.substr(every + 15)); // mm
    CHECK(held < 305);
    CHECK_THAT(Strength(redcedar(), thickness, width).rollingEdgeBend(held), WithinRel(0.70e-3, 3e-3));
    plan.mouldBay = 250; // moulds close enough
    CHECK(told() == nullptr);
}

TEST_CASE("classes of what the wood is asked to bear: half and 65 percent of its strength") {
    CHECK(Strength::woodUse(0.0) == WoodUse::ByHand);
    CHECK(Strength::woodUse(1.0) == WoodUse::ByHand);
    CHECK(Strength::woodUse(1.01) == WoodUse::PickStraight);
    CHECK(Strength::woodUse(1.30) == WoodUse::PickStraight);
    CHECK(Strength::woodUse(1.31) == WoodUse::SteamIt);
    // mechanics.md section 4: a redcedar strip bent flat, 1/4 in, to 1.03 m and to 0.79 m
    const Strength s(redcedar(), thickness, width);
    CHECK(Strength::woodUse(s.strain(0, 1 / 1040.0, 0)) == WoodUse::ByHand);
    CHECK(Strength::woodUse(s.strain(0, 1 / 1025.0, 0)) == WoodUse::PickStraight);
    CHECK(Strength::woodUse(s.strain(0, 1 / 785.0, 0)) == WoodUse::SteamIt);
}

TEST_CASE("a strip without thickness or width is refused") {
    for (const double bad : {0.0, -1.0, std::numeric_limits<double>::quiet_NaN()}) {
        CHECK_THROWS_AS(Strength(redcedar(), bad, width), std::invalid_argument);
        CHECK_THROWS_AS(Strength(redcedar(), thickness, bad), std::invalid_argument);
    }
}

TEST_CASE("classes of edge bend: each limit belongs to the easier one, sign does not count") {
    const auto classOf = [](double bend) { return classify(bend, 19.05); };
    CHECK(classOf(0.0) == Difficulty::Free);
    CHECK(classOf(0.15e-3) == Difficulty::Free);
    CHECK(classOf(-0.1501e-3) == Difficulty::Clamp);
    CHECK(classOf(0.30e-3) == Difficulty::Clamp);
    CHECK(classOf(0.3001e-3) == Difficulty::Hard);
    CHECK(classOf(-0.45e-3) == Difficulty::Hard);
    CHECK(classOf(0.4501e-3) == Difficulty::Taper);
}

TEST_CASE("a strip belongs to a class by the strain at its edge, so half the width bears twice the bend") {
    const Wood& redcedar = *findWood("western-redcedar");
    const double width = GENERATE(9.525, 15.875, 25.4); // mm
    const BendLimits here = bendLimits(width), common = bendLimits(19.05);
    const Strength narrow(redcedar, 6.35, width), wide(redcedar, 6.35, 19.05);
    CHECK_THAT(narrow.strain(here.free, 0, 0), WithinRel(wide.strain(common.free, 0, 0), 1e-12));
    CHECK_THAT(narrow.strain(here.hard, 0, 0), WithinRel(wide.strain(common.hard, 0, 0), 1e-12));
    CHECK(bendLimits(9.525).clamp == 2 * common.clamp);
    Strip strip;
    strip.milledWidth = width;
    strip.edgeBend.maxAbs = 0.2e-3;
    CHECK(difficultyOf(strip) == (width < 15 ? Difficulty::Free : Difficulty::Clamp));
}

TEST_CASE("sag over a straight edge is an arc's, short by under a percent") {
    for (const double k : {0.05e-3, 0.3e-3, -0.3e-3}) {
        const double size = std::abs(k), exact = (1 - std::cos(size * 1000)) / size; // half of 2 m each way
        CHECK_THAT(sagOver(k, sagBaseMillimetres), WithinRel(exact, 0.01));
    }
    CHECK(sagBaseInches == 8 * 304.8);
}

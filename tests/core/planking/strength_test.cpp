#include "core/planking/difficulty.hpp"
#include "core/planking/strength.hpp"
#include "tests/support/catch.hpp"

#include <cmath>
#include <limits>
#include <numbers>
#include <stdexcept>

using namespace sheerlay::core;

// Figures of mechanics.md sections 1 to 4: western redcedar, 6.35 x 19.05 mm (1/4 x 3/4 in).

namespace {

constexpr double thickness = 6.35, width = 19.05, bay = 305.0;

const Wood& redcedar() {
    const Wood* w = findWood("western-redcedar");
    REQUIRE(w != nullptr);
    return *w;
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

TEST_CASE("a strip without thickness or width is refused") {
    for (const double bad : {0.0, -1.0, std::numeric_limits<double>::quiet_NaN()}) {
        CHECK_THROWS_AS(Strength(redcedar(), bad, width), std::invalid_argument);
        CHECK_THROWS_AS(Strength(redcedar(), thickness, bad), std::invalid_argument);
    }
}

TEST_CASE("classes of edge bend: each limit belongs to the easier one, sign does not count") {
    CHECK(classify(0.0) == Difficulty::Free);
    CHECK(classify(0.15e-3) == Difficulty::Free);
    CHECK(classify(-0.1501e-3) == Difficulty::Clamp);
    CHECK(classify(0.30e-3) == Difficulty::Clamp);
    CHECK(classify(0.3001e-3) == Difficulty::Hard);
    CHECK(classify(-0.45e-3) == Difficulty::Hard);
    CHECK(classify(0.4501e-3) == Difficulty::Taper);
}

TEST_CASE("sag over a straight edge is an arc's, short by under a percent") {
    for (const double k : {0.05e-3, 0.3e-3, -0.3e-3}) {
        const double size = std::abs(k), exact = (1 - std::cos(size * 1000)) / size; // half of 2 m each way
        CHECK_THAT(sagOver(k, sagBaseMillimetres), WithinRel(exact, 0.01));
    }
    CHECK(sagBaseInches == 8 * 304.8);
}

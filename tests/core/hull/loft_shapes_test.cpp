#include "core/hull/hull.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/formula_tables.hpp"
#include "tests/support/loft_error.hpp"

#include <algorithm>
#include <cmath>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;
using Eigen::Vector3d;

// Other ends than the canoe's, each from a formula, its table rounded to whole millimetres.

namespace {

/// Against the formula, x in the table's datum.
test::LoftError against(const FormulaHull& f, const LoftedHull& hull, double from, double to) {
    const test::LoftError e = loftError(
        hull, [&](const Vector3d& p) { return f.distance(p); }, from, to);
    REQUIRE(e.points > 100);
    return e;
}

void checkResidual(const LoftedHull& h) {
    CHECK_THAT(h.roundingSigma, WithinRel(1 / std::sqrt(12.0), 1e-12));
    CHECK(h.residualRms / h.roundingSigma > 0.7);
    CHECK(h.residualRms / h.roundingSigma < 0.9);
}

/// Largest |x| of the stem's own line, and the height it stands at.
Vector3d foremost(const FormulaHull& f) {
    Vector3d best(0, 0, 0);
    for (double t = -f.half; t < -0.6 * f.half; t += 0.2) {
        const double z = f.keel(t), x = f.pushed(t, z);
        if (x < best.x())
            best = {x, 0, z};
    }
    return best;
}

} // namespace

TEST_CASE("raked, upright, near plumb and recurved stems all loft and close at their own heads") {
    for (const double push : {0.0, 150.0, 380.0, 520.0, 560.0}) {
        FormulaHull f = formulaCanoe();
        f.stemPush = push;
        const Vector3d tip = foremost(f);
        INFO("stems pushed out by " << push << ", foremost " << tip.transpose());
        if (push == 0.0)
            CHECK(tip.x() > -2438.5);
        if (push == 560.0)
            CHECK(tip.x() < -2438.4 - 10); // truly recurved
        const auto h = loft(doubleEnder(f, 1));
        REQUIRE(h.has_value());
        checkResidual(*h);
        const test::LoftError body = against(f, *h, -2110, 2110);
        INFO("rms " << body.rms << ", max " << body.max);
        CHECK(body.rms < 0.8);
        CHECK(body.max < 2.5);
        // both heads of the sheer, and the length over a stem that bulges past them
        CHECK_THAT(h->drawn.sheer.front().x() - h->xShift, WithinAbs(-2438.4, 2.0));
        CHECK_THAT(h->drawn.sheer.back().x() - h->xShift, WithinAbs(2438.4, 2.0));
        CHECK_THAT(h->drawn.length, WithinAbs(-2 * tip.x(), 4.0));
        CHECK(h->xShift >= -tip.x() - 3.0);
        double least = 1e9;
        for (const Vector3d& p : h->drawn.profile)
            least = std::min(least, p.x());
        CHECK_THAT(least, WithinAbs(0, 2.5)); // x counts from the foremost point
    }
}

TEST_CASE("a transom stern: plumb and raked, cut by its plane") {
    for (const double atKeel : {3657.6, 3560.0}) {
        const auto h = loft(skiffTable(1, 50, atKeel));
        REQUIRE(h.has_value());
        checkResidual(*h);
        const test::LoftError body = against(formulaSkiff(), *h, 310, std::min(atKeel, 3640.0));
        INFO("keel of the transom at " << atKeel << ": rms " << body.rms << ", max " << body.max);
        CHECK(body.rms < 0.8);
        CHECK(body.max < 3.0);
        REQUIRE(h->drawn.trims.stern.has_value());
        CHECK_FALSE(h->drawn.trims.bow.has_value());
        CHECK_FALSE(h->drawn.outline.sternClosed);
        CHECK(h->drawn.outline.bowClosed);
        CHECK_THAT(h->drawn.sheer.back().x() - h->xShift, WithinAbs(3657.6, 0.01));
        CHECK_THAT(h->drawn.profile.back().x() - h->xShift, WithinAbs(atKeel, 0.01));
        CHECK_THAT(h->drawn.sheer.back().y(), WithinAbs(formulaSkiff().halfBreadth(3657.6, 430), 1.5));
        CHECK_THAT(h->drawn.profile.back().z(), WithinAbs(formulaSkiff().keel(atKeel), 1.5));
        CHECK_THAT(h->drawn.sheer.front().x(), WithinAbs(0, 2.0));
    }
}

TEST_CASE("planking that ends on a keel and stem of some breadth stops there") {
    // the same canoe with everything nearer than 9 mm to the centreplane taken up by keel and stems
    constexpr double siding = 9.0;
    const FormulaHull f = formulaCanoe();
    Project p = doubleEnder(f, 1);
    p.hull.halfSiding = siding;
    const auto heightAt = [&](double x) {
        double lo = f.keel(x), hi = f.sheer(x);
        for (int i = 0; i < 60; ++i) {
            const double m = 0.5 * (lo + hi);
            (f.halfBreadth(x, m) < siding ? lo : hi) = m;
        }
        return hi;
    };
    for (Station& s : p.hull.stations) {
        s.keel = TablePoint{PointKind::Keel, siding, rounded(heightAt(s.x), 1), "9", "", 0};
        std::erase_if(s.points, [&](const TablePoint& q) { return q.halfBreadth < siding + 5; });
    }
    p.hull.profile.clear();
    // where the side is 9 mm from the centreplane, from 60 mm up to the sheer
    for (const int end : {-1, 1}) {
        double x = 0, z = 0;
        const auto along = [&](double height) {
            double lo = 0, hi = 2438.4; // half-breadth falls toward the end
            for (int i = 0; i < 60; ++i) {
                const double m = 0.5 * (lo + hi);
                (f.halfBreadth(m, height) > siding ? lo : hi) = m;
            }
            return lo;
        };
        for (z = 80; z < 440; z += 40)
            p.hull.profile.push_back({rounded(end * along(z), 1), z, {}, 0});
        for (int i = 0; i < 100; ++i) { // the head: on the sheer
            x = along(f.sheer(x));
        }
        p.hull.profile.push_back({rounded(end * x, 1), rounded(f.sheer(x), 1), {}, 0});
    }
    const auto h = loft(p);
    REQUIRE(h.has_value());
    CHECK(h->residualRms / h->roundingSigma < 1.2);
    for (const Vector3d& q : h->drawn.profile)
        CHECK_THAT(q.y(), WithinAbs(siding, 1e-6));
    for (const double x : {-1500.0, 0.0, 900.0}) {
        const auto section = sectionAt(h->drawn, x + h->xShift, 40);
        CHECK_THAT(section.back().y(), WithinAbs(siding, 1e-4));
        CHECK_THAT(section.back().z(), WithinAbs(heightAt(x), 1.5));
    }
}

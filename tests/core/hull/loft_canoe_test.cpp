#include "core/hull/hull.hpp"
#include "core/hull/trimmed_surface.hpp"
#include "core/project/project_file.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/formula_hull.hpp"
#include "tests/support/loft_error.hpp"

#include <algorithm>
#include <cmath>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;
using Eigen::Vector3d;

// The reference canoe: its table, rounded to 1/16 in, lofted and compared with the formula it was taken from.

namespace {

constexpr double midships = 2438.4; // mm from the bow's stem head

const Project& canoe() {
    static const Project p = readProject(SHEERLAY_REFERENCE "/formula_canoe.sheerlay").value().project;
    return p;
}
const LoftedHull& lofted() {
    static const LoftedHull h = loft(canoe()).value();
    return h;
}

/// Distance of the drawn surface from the formula over a stretch of x from amidships.
test::LoftError against(const LoftedHull& hull, double from, double to) {
    const FormulaHull f = formulaCanoe();
    const test::LoftError e = loftError(
        hull,
        [&](Vector3d p) {
            p.x() -= midships; // this table counts from the stem head
            return f.distance(p);
        },
        midships + from,
        midships + to);
    REQUIRE(e.points > 100);
    return e;
}

} // namespace

TEST_CASE("between the stations the loft is within two millimetres of the true hull") {
    const test::LoftError body = against(lofted(), -2130, 2130); // 84 in either way
    INFO("rms " << body.rms << " mm, max " << body.max << " mm");
    CHECK(body.rms <= 0.8);
    CHECK(body.max <= 2.0);
}

TEST_CASE("in the last foot, with a half station, it is within four") {
    for (const auto& [from, to] : {std::pair{-2400.0, -2130.0}, std::pair{2130.0, 2400.0}}) {
        const test::LoftError end = against(lofted(), from, to);
        INFO("rms " << end.rms << " mm, max " << end.max << " mm");
        CHECK(end.rms <= 1.5);
        CHECK(end.max <= 4.0);
    }
}

TEST_CASE("a loft asked to follow the table more closely, or less, does so and stays the boat") {
    for (const double fairing : {0.6, 1.0}) {
        Project project = canoe();
        project.hull.fairing = fairing;
        const auto hull = loft(project);
        REQUIRE(hull.has_value());
        CHECK_THAT(hull->residualRms / hull->roundingSigma, WithinAbs(fairing, 0.05));
        CHECK((hull->fairing > lofted().fairing) == (fairing > usualFairing));
        CHECK_THAT(hull->drawn.halfGirthMax, WithinAbs(lofted().drawn.halfGirthMax, 2.0));
    }
}

TEST_CASE("the table is honoured to what its rounding says, neither closer nor looser") {
    const LoftedHull& h = lofted();
    CHECK_THAT(h.roundingSigma, WithinRel(25.4 / 16 / std::sqrt(12.0), 1e-12));
    INFO("residual " << h.residualRms << " mm of sigma " << h.roundingSigma);
    CHECK(h.residualRms / h.roundingSigma >= 0.75);
    CHECK(h.residualRms / h.roundingSigma <= 0.85);
    CHECK(h.residualMax < 2.5);
    // one entry per station and the profile; the largest of them is the hull's
    REQUIRE(h.residuals.size() == canoe().hull.stations.size() + 1);
    double largest = 0;
    double squares = 0;
    int points = 0;
    for (std::size_t i = 0; i < h.residuals.size(); ++i) {
        const StationResidual& r = h.residuals[i];
        largest = std::max(largest, std::abs(r.max));
        CHECK(std::abs(r.max) >= r.rms - 1e-9);
        squares += r.rms * r.rms * r.points;
        points += r.points;
        if (i < canoe().hull.stations.size()) {
            CHECK(r.station == canoe().hull.stations[i].printedX);
            CHECK_THAT(r.x, WithinAbs(h.stationX[i], 1e-9));
            CHECK(r.points >= 2);
        }
    }
    CHECK_THAT(h.residualMax, WithinAbs(largest, 1e-9));
    // sheer points count in two directions there and once here, so only about the same
    CHECK_THAT(std::sqrt(squares / points), WithinRel(h.residualRms, 0.1));
}

TEST_CASE("length, beam and girth are the formula's") {
    const LoftedHull& h = lofted();
    const FormulaHull f = formulaCanoe();
    CHECK_THAT(h.drawn.length, WithinAbs(2 * midships, 1.0));
    double half = 0;
    for (double z = 150; z <= 300; z += 0.5)
        half = std::max(half, f.halfBreadth(0, z));
    CHECK_THAT(h.drawn.beam, WithinAbs(2 * half, 1.5));
    // girth amidships by chords of the formula; planking.md has 614.9
    double girth = 0;
    Vector3d before = f.point(0, 0);
    for (int i = 1; i <= 4000; ++i) {
        const Vector3d p = f.point(0, f.q(0, 300) * i / 4000);
        girth += (p - before).norm();
        before = p;
    }
    CHECK_THAT(girth, WithinAbs(614.9, 1.0));
    CHECK_THAT(h.drawn.halfGirthMax, WithinAbs(girth, 1.0));
    CHECK_THAT(h.drawn.halfGirthMaxX, WithinAbs(midships, 40));
    CHECK_THAT(halfGirthAt(h.drawn, midships), WithinAbs(girth, 1.0));
}

TEST_CASE("sheer and keel end where the stem heads stand") {
    const TrimmedSurface& d = lofted().drawn;
    for (const auto* line : {&d.sheer, &d.profile}) {
        CHECK((line->front() - Vector3d(0, 0, 500)).norm() < 1.5);
        CHECK((line->back() - Vector3d(2 * midships, 0, 500)).norm() < 1.5);
    }
    const FormulaHull f = formulaCanoe();
    for (const Vector3d& p : d.profile) {
        CHECK_THAT(p.y(), WithinAbs(0, 1e-6));
        if (std::abs(p.x() - midships) < 2130)
            CHECK_THAT(p.z(), WithinAbs(f.keel(p.x() - midships), 1.2));
    }
    for (const Vector3d& p : d.sheer)
        if (std::abs(p.x() - midships) < 2130)
            CHECK_THAT(p.z(), WithinAbs(f.sheer(p.x() - midships), 1.2));
}

TEST_CASE("a table mirrored fore and aft gives a loft mirrored fore and aft") {
    const TrimmedSurface& d = lofted().drawn;
    for (const double x : {300.0, 900.0, 1700.0, 2300.0}) {
        const auto a = sectionAt(d, midships - x, 30), b = sectionAt(d, midships + x, 30);
        REQUIRE(a.size() == b.size());
        for (std::size_t i = 0; i < a.size(); ++i)
            CHECK((a[i] - b[i]).tail<2>().norm() < 0.02);
    }
}

TEST_CASE("the table's datum does not matter") {
    Project moved = canoe();
    for (Station& s : moved.hull.stations)
        s.x += 1000;
    for (ProfilePoint& p : moved.hull.profile)
        p.x += 1000;
    const LoftedHull h = loft(moved).value();
    CHECK_THAT(h.xShift, WithinAbs(lofted().xShift - 1000, 0.01));
    CHECK_THAT(lofted().xShift, WithinAbs(0, 0.01));
    REQUIRE(h.stationX.size() == lofted().stationX.size());
    for (std::size_t i = 0; i < h.stationX.size(); ++i)
        CHECK_THAT(h.stationX[i], WithinAbs(lofted().stationX[i], 0.01));
    const auto a = sectionAt(h.drawn, 1500, 30), b = sectionAt(lofted().drawn, 1500, 30);
    REQUIRE(a.size() == b.size());
    for (std::size_t i = 0; i < a.size(); ++i)
        CHECK((a[i] - b[i]).norm() < 0.02);
}

TEST_CASE("turned end for end, the loft is the mirror image") {
    Project turned = canoe();
    std::reverse(turned.hull.stations.begin(), turned.hull.stations.end());
    for (Station& s : turned.hull.stations)
        s.x = 2 * midships - s.x;
    for (ProfilePoint& p : turned.hull.profile)
        p.x = 2 * midships - p.x;
    const LoftedHull h = loft(turned).value();
    CHECK_THAT(h.drawn.halfArea, WithinRel(lofted().drawn.halfArea, 1e-5));
    CHECK_THAT(h.residualRms, WithinRel(lofted().residualRms, 1e-2));
    for (const double x : {100.0, 1111.0, 2700.0}) {
        const auto a = sectionAt(h.drawn, x, 30), b = sectionAt(lofted().drawn, 2 * midships - x, 30);
        REQUIRE(a.size() == b.size());
        for (std::size_t i = 0; i < a.size(); ++i)
            CHECK((a[i] - b[i]).tail<2>().norm() < 0.05);
    }
}

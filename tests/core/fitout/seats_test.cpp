#include "core/fitout/seats.hpp"
#include "core/sheets/words.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fitout_hulls.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

constexpr double exact = 0.05; // mm, issue 8
constexpr double degree = std::numbers::pi / 180;

bool has(const std::vector<Finding>& findings, const std::string& code) {
    return std::any_of(findings.begin(), findings.end(), [&](const Finding& f) { return f.code == code; });
}

/// A quarter pipe of 400 mm with square gunwales 20 by 18 inside.
struct Pipe {
    HullFaces faces;
    std::optional<InnerGunwale> gunwale;

    Pipe() {
        auto made = facesOf(test::bareFitout(), test::quarterPipe(400, 3000));
        REQUIRE(made);
        faces = std::move(*made);
        gunwale = InnerGunwale{{20, 18}, sheerLine(faces.inside, GunwaleChoices::Stand::Square)};
    }
};

SeatChoice seatAt(double x, double below, double tilt) {
    SeatChoice c;
    c.name = "seat";
    c.x = x;
    c.belowSheer = below;
    c.tilt = tilt;
    c.depth = 260;
    c.rail = {40, 20};
    return c;
}

} // namespace

TEST_CASE("in a pipe a seat's widths, hangers and bolts are what the circle says") {
    const Pipe pipe;
    for (const double tilt : {0.0, 3 * degree}) {
        const SeatPlan plan = planSeat(seatAt(1500, 90, tilt), pipe.faces, 0.0, pipe.gunwale);
        REQUIRE(plan.seat);
        const Seat& s = *plan.seat;
        CHECK(s.top == Approx(-90).margin(exact));
        CHECK(s.aboveBottom == Approx(310).margin(exact));
        const auto circle = [](double z) { return 2 * std::sqrt(400.0 * 400 - z * z); };
        CHECK(s.widthFront == Approx(circle(-90 - 130 * std::sin(tilt))).margin(exact));
        CHECK(s.widthBack == Approx(circle(-90 + 130 * std::sin(tilt))).margin(exact));
        // bolts through the rails' middles, which lie 110 mm fore and aft of the seat's
        REQUIRE(s.front.bolt);
        REQUIRE(s.back.bolt);
        CHECK(s.front.bolt->x == Approx(1500 - 110 * std::cos(tilt)).margin(exact));
        CHECK(s.front.bolt->halfBreadth == Approx(400 - 10).margin(exact));
        CHECK(s.front.bolt->hanger == Approx(90 - 18 + 110 * std::sin(tilt)).margin(exact));
        CHECK(s.back.bolt->hanger == Approx(90 - 18 - 110 * std::sin(tilt)).margin(exact));
        CHECK(s.back.bolt->fromEnd == Approx(s.back.piece.halfAt(20, 0) - 390).margin(exact));
        CHECK(s.sideRail == Approx(180));
        CHECK(s.footRoom == Approx(310 - 20 - (tilt > 0 ? 130 * std::sin(tilt) : 0)).margin(0.2));
    }
}

TEST_CASE("a bolt near a rail's end, a seat too high and a seat beyond the ends are told") {
    const Pipe pipe;
    // at 90 mm under the sheer the pipe is 389.7 mm wide a side: a bolt at 390 misses the rail
    CHECK(has(planSeat(seatAt(1500, 90, 0), pipe.faces, 0, pipe.gunwale).findings, "bolt-near-end"));
    SeatChoice clear = seatAt(1500, 90, 0);
    clear.boltInset = 0;
    clear.footRoom = 300;
    const SeatPlan narrow = planSeat(clear, pipe.faces, 0, InnerGunwale{{40, 18}, pipe.gunwale->line});
    CHECK_FALSE(has(narrow.findings, "bolt-near-end"));
    CHECK(has(narrow.findings, "foot-room"));
    CHECK_FALSE(has(narrow.findings, "seat-opening"));
    clear.opening = 720; // with two rails of 40 beside it as wide as the pipe there
    CHECK(has(planSeat(clear, pipe.faces, 0, pipe.gunwale).findings, "seat-opening"));
    CHECK(has(planSeat(seatAt(1500, 10, 0), pipe.faces, 0, pipe.gunwale).findings, "seat-above-gunwale"));
    for (const SeatChoice& c : {seatAt(3500, 90, 0), seatAt(1500, 396, 0)}) {
        const SeatPlan plan = planSeat(c, pipe.faces, 0, pipe.gunwale);
        CHECK_FALSE(plan.seat);
        CHECK(has(plan.findings, "seat-outside"));
    }
    CHECK(
        has(planSeat(seatAt(1500, 90, 0), pipe.faces, 0, std::nullopt).findings, "seat-hangs-from-nothing"));
}

TEST_CASE("cleats lie down the side by the arc to the rail's underside") {
    const Pipe pipe;
    SeatChoice c = seatAt(1500, 90, 0);
    c.on = SeatChoice::On::Cleats;
    const SeatPlan plan = planSeat(c, pipe.faces, 0, std::nullopt);
    REQUIRE(plan.seat);
    CHECK(plan.seat->cleatFront == Approx(400 * std::asin(110.0 / 400)).margin(exact));
    CHECK(plan.seat->cleatBack == Approx(plan.seat->cleatFront).margin(exact));
    CHECK(plan.seat->cleatLength == Approx(260).margin(exact));
    CHECK_FALSE(plan.seat->front.bolt);
}

TEST_CASE("a thwart lies along the gunwale's underside, its ends against the side") {
    const Pipe pipe;
    ThwartChoice choice;
    choice.name = "thwart";
    choice.size = {60, 20};
    const ThwartPlan plan = planThwart(choice, 1200, pipe.faces, *pipe.gunwale);
    REQUIRE(plan.thwart);
    const CrossPiece& bar = plan.thwart->bar.piece;
    CHECK(bar.front.x() == Approx(1170).margin(exact));
    CHECK(bar.front.y() == Approx(-18).margin(exact));
    CHECK(bar.tilt == Approx(0).margin(1e-6));
    CHECK(bar.frontTop == Approx(2 * std::sqrt(400.0 * 400 - 18 * 18)).margin(exact));
    CHECK(plan.thwart->bar.bolt->hanger == 0.0);
    CHECK(plan.thwart->kneeRoom == Approx(400 - 18 - 20).margin(exact));
    CHECK(has(planThwart(choice, 2990, pipe.faces, *pipe.gunwale).findings, "thwart-outside"));
}

TEST_CASE("seats cut by the printed figures fit the examples to 0.3 mm all round") {
    // a seat and a thwart on each example, forward, amidships and aft; heights and tilt as builders use them
    for (const std::string boat : {"brindlewick", "marsh-hen", "sedgewren"}) {
        Project project = test::projectAt(std::string(SHEERLAY_REFERENCE) + "/../../examples/" + boat + "/" +
                                          boat + ".sheerlay");
        project.fitout = FitoutChoices{};
        const auto hull = loft(project);
        REQUIRE(hull);
        const auto faces = facesOf(project, *hull);
        REQUIRE(faces);
        const double length = faces->aft - faces->forward;
        const auto line = sheerLine(faces->inside, GunwaleChoices::Stand::Square);
        int fitted = 0;
        double most = 0.0, least = 0.0;
        for (const double part : {0.3, 0.45, 0.6, 0.72}) {
            SeatChoice choice;
            choice.name = "seat";
            choice.x = part * length - hull->xShift;
            choice.belowSheer = 80;
            choice.tilt = 3 * degree;
            const SeatPlan plan = planSeat(choice, *faces, hull->xShift, InnerGunwale{{19, 19}, line});
            if (!plan.seat)
                continue;
            for (const CrossPiece& rail : {plan.seat->front.piece, plan.seat->back.piece}) {
                ++fitted;
                // what a builder reads: the forward upper edge to 0.1 mm, both angles to 0.1 degrees
                CrossPiece cut = rail;
                cut.frontTop = std::stod(widthText(rail.frontTop, Units::Millimetres));
                cut.plan = std::round(rail.plan / degree * 10) / 10 * degree;
                cut.section = std::round(rail.section / degree * 10) / 10 * degree;
                Eigen::Vector2d near = acrossAt(faces->inside, rail.at(0, 0).x(), rail.at(0, 0).y())->uv;
                for (int i = 0; i <= 12; ++i)
                    for (int j = 0; j <= 12; ++j) {
                        const double a = rail.width * i / 12, c = -rail.height * j / 12;
                        const Eigen::Vector2d at = cut.at(a, c);
                        const Eigen::Vector3d end(at.x(), cut.halfAt(a, c), at.y());
                        // measured on the moulds' own surface, less the cloth: not on what the seat was
                        // fitted to
                        const FacePoint foot = nearestOn(hull->moulds, end, near);
                        near = foot.uv;
                        const double gap = (foot.point - end).dot(foot.normal) - project.fitout->glassInside;
                        most = std::max(most, gap);
                        least = std::min(least, gap);
                    }
            }
        }
        INFO(boat << ": " << fitted << " rails, gap " << least << " to " << most);
        CHECK(fitted >= 4);
        CHECK(most <= 0.3);
        CHECK(least >= -0.1); // rounding of the printed figures
    }
}

TEST_CASE("a high rail on a round side, cut flat, leaves the circle's rise open, and it is told") {
    const Pipe pipe;
    SeatChoice c = seatAt(1500, 200, 0);
    CHECK_FALSE(has(planSeat(c, pipe.faces, 0, pipe.gunwale).findings, "end-gap"));
    c.rail.height = 60;
    const SeatPlan plan = planSeat(c, pipe.faces, 0, pipe.gunwale);
    REQUIRE(plan.seat);
    // rise of the arc from 200 to 260 mm under the axis: chord squared over 8 radii
    const double chord = 2 * 400 * std::sin((std::asin(260.0 / 400) - std::asin(200.0 / 400)) / 2);
    CHECK(plan.seat->front.piece.gap == Approx(chord * chord / (8 * 400)).epsilon(0.05));
    CHECK(has(plan.findings, "end-gap"));
}

TEST_CASE("a thwart too low for knees is told, by the room that the builder wants") {
    const Pipe pipe;
    ThwartChoice choice;
    choice.name = "thwart";
    choice.size = {60, 20};
    choice.kneeRoom = 361; // 400 less 18 of gunwale and 20 of thwart is 362
    CHECK_FALSE(has(planThwart(choice, 1200, pipe.faces, *pipe.gunwale).findings, "knee-room"));
    choice.kneeRoom = 363;
    CHECK(has(planThwart(choice, 1200, pipe.faces, *pipe.gunwale).findings, "knee-room"));
}

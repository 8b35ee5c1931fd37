#include "core/planking/laying_order.hpp"
#include "core/planking/plan_json.hpp"
#include "core/planking/stealer_bands.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/plan_proof.hpp"
#include "tests/support/planked.hpp"

#include <Eigen/Geometry>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <map>
#include <sstream>
#include <string>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;
using Eigen::Vector2d;

// Worked layouts of closing.md section 2 (formula canoe, w 17, limit 0.15 /m). Its pieces stand in
// tests/reference/stealer_layout.csv; where the stealers go was searched for there by other steps, so what
// must agree are the limit kept, the joint's sizes and roughly the lengths.

namespace {

Planked canoeWith(double narrowest, Taper taper = Taper::Anywhere) {
    Project p = projectAt(std::string(SHEERLAY_REFERENCE) + "/formula_canoe.sheerlay");
    p.strips.coverWidth = 17;
    p.planking.start.kind = StartLine::Kind::Geodesic;
    p.planking.start.girth = 0;
    p.planking.taper = taper;
    p.planking.edgeBendRadius = 1000 / 0.15;
    p.planking.narrowest = narrowest;
    return planked(std::move(p));
}

const Planked& geodesicBoat() {
    static const Planked boat = canoeWith(14);
    return boat;
}

const Planked& wideBoat() {
    static const Planked boat = canoeWith(15.5);
    return boat;
}

struct Joint {
    const Strip* stealer = nullptr;
    const Strip* beside = nullptr;
};

std::vector<Joint> jointsOf(const Plan& plan, Side side = Side::Starboard) {
    std::vector<Joint> joints;
    for (const Strip& s : plan.strips)
        if (s.kind == StripKind::Stealer && s.side == side)
            for (const Strip& b : plan.strips)
                if (b.row == s.row && b.side == side && b.kind != StripKind::Stealer)
                    joints.push_back({&s, &b});
    return joints;
}

/// One column of the pieces of one kind in the reference layouts.
std::vector<double> layout(const std::string& name, const std::string& kind, int column) {
    std::ifstream file(std::string(SHEERLAY_REFERENCE) + "/stealer_layout.csv");
    std::vector<double> values;
    for (std::string line; std::getline(file, line);) {
        if (line.find(name) == std::string::npos || line.find("," + kind + ",") == std::string::npos)
            continue;
        std::stringstream rest(line.substr(line.find("," + kind + ",") + kind.size() + 2));
        std::string cell;
        for (int i = 0; i <= column; ++i)
            std::getline(rest, cell, ',');
        values.push_back(std::stod(cell));
    }
    REQUIRE(!values.empty());
    return values;
}
constexpr int lengthColumn = 2, narrowestColumn = 3;

double narrowest(const Strip& s) {
    double w = 1e9;
    for (const StripSample& sample : s.samples)
        w = std::min(w, sample.width);
    return w;
}

std::vector<Vector2d> flatUpper(const Strip& s) {
    return {s.outline.begin(), s.outline.begin() + static_cast<std::ptrdiff_t>(s.outlineUpperCount)};
}
std::vector<Vector2d> flatLower(const Strip& s) {
    std::vector<Vector2d> line(s.outline.begin() + static_cast<std::ptrdiff_t>(s.outlineUpperCount),
                               s.outline.end());
    std::reverse(line.begin(), line.end());
    return line;
}

/// Worst distance between two lists of points after the second was laid on the first as well as can be.
double misfit(const std::vector<Vector2d>& a, const std::vector<Vector2d>& b) {
    const auto n = static_cast<double>(a.size());
    Vector2d ca = Vector2d::Zero();
    Vector2d cb = Vector2d::Zero();
    for (std::size_t i = 0; i < a.size(); ++i) {
        ca += a[i] / n;
        cb += b[i] / n;
    }
    double cosine = 0;
    double sine = 0;
    for (std::size_t i = 0; i < a.size(); ++i) {
        const Vector2d p = b[i] - cb;
        const Vector2d q = a[i] - ca;
        cosine += p.dot(q);
        sine += p.x() * q.y() - p.y() * q.x();
    }
    const Eigen::Rotation2Dd turn(std::atan2(sine, cosine));
    double worst = 0;
    for (std::size_t i = 0; i < a.size(); ++i)
        worst = std::max(worst, (turn * (b[i] - cb) - (a[i] - ca)).norm());
    return worst;
}

} // namespace

TEST_CASE("the geodesic layout with wide strips keeps its limit by a stealer or two") {
    const Plan& plan = geodesicBoat().plan;
    const auto joints = jointsOf(plan);
    REQUIRE(!joints.empty());
    CHECK(joints.size() <= 2);
    REQUIRE(plan.tapers.has_value());
    CHECK(plan.tapers->touched <= 29);
    CHECK(plan.tapers->metFromBelow == 1);
    for (const Strip& s : plan.strips) {
        INFO(s.id);
        CHECK(s.edgeBend.maxAbs <= 0.155e-3);
        if (s.kind == StripKind::Tapered && s.row > 0 && s.planed == PlanedEdge::Lower &&
            s.ends[0].on == EndsOn::Stem && s.ends[1].on == EndsOn::Stem)
            CHECK(narrowest(s) >= 13.9);
    }
    CHECK_THAT(plan.coverage.stripsArea, WithinRel(plan.coverage.hullArea, 1e-4));
}

TEST_CASE("the layout of hardly narrowed strips keeps its limit but for one edge") {
    const Plan& plan = wideBoat().plan;
    CHECK(jointsOf(plan).size() >= 2);
    CHECK(jointsOf(plan).size() <= 5);
    int over = 0;
    for (const Strip& s : plan.strips) {
        INFO(s.id);
        CHECK(s.edgeBend.maxAbs <= 0.164e-3); // closing.md: 0.160 in the chart, 2.5 percent more when laid
        over += s.side == Side::Starboard && s.edgeBend.maxAbs > 0.155e-3;
    }
    CHECK(over <= 1);
    CHECK_THAT(plan.coverage.stripsArea, WithinRel(plan.coverage.hullArea, 1e-4));
}

TEST_CASE("stealer and strip beside it have the joint's sizes") {
    const Planked& boat = GENERATE(true, false) ? geodesicBoat() : wideBoat();
    const std::string name = "geodesic start";
    for (const Joint& joint : jointsOf(boat.plan)) {
        const Strip& s = *joint.stealer;
        const Strip& b = *joint.beside;
        INFO(s.id << " " << s.length);
        CHECK(s.length > 0.75 * layout(name, "stealer", lengthColumn)[0]);
        CHECK(s.length < 1.2 * layout(name, "stealer", lengthColumn).back());
        CHECK_THAT(narrowest(s), WithinAbs(layout(name, "stealer", narrowestColumn)[0], 0.7));
        CHECK(narrowest(b) >= 10.9); // of the stealer's 5 mm nothing is taken twice
        CHECK(s.planed == PlanedEdge::Lower);
        CHECK(b.planed == PlanedEdge::Upper);
        for (const StripSample& sample : s.samples)
            CHECK(sample.width <= 17.001);
        for (const StripSample& sample : b.samples)
            CHECK(sample.width <= 17.001);
        for (const StripEnd& end : s.ends) {
            REQUIRE(end.on == EndsOn::Nib);
            CHECK(end.cut == Approx(std::acos(0.0)));
            CHECK(end.lap == 0.0);
            bool told = false;
            for (const Finding& f : boat.plan.findings)
                told = told || (f.code == "stealer-ends-at-mould" && f.x && std::abs(*f.x - end.x) < 1);
            for (const double mould : boat.hull.stationX)
                CHECK((told || std::abs(end.x - mould) >= nibClear));
        }
        CHECK_THAT(s.cutLength, WithinAbs(s.length + 20, 0.01)); // square ends, a little to saw off
    }
}

TEST_CASE("the seam is one line, and nib and notch fit in the flattened plane") {
    const Planked& boat = GENERATE(true, false) ? geodesicBoat() : wideBoat();
    for (const Joint& joint : jointsOf(boat.plan)) {
        const Strip& s = *joint.stealer;
        const Strip& b = *joint.beside;
        INFO(s.id);
        // vertices of the seam, which both edges share
        std::vector<std::array<std::size_t, 2>> seam;
        for (std::size_t i = 0; i < s.lowerEdge.size(); ++i)
            for (std::size_t k = 0; k < b.upperEdge.size(); ++k)
                if ((s.lowerEdge[i] - b.upperEdge[k]).norm() < 1e-6)
                    seam.push_back({i, k});
        REQUIRE(seam.size() == s.lowerEdge.size());
        const std::size_t first = seam.front()[1];
        const std::size_t last = seam.back()[1];
        REQUIRE(first > 0);
        // the notches' corners are the nib's upper ends
        CHECK((b.upperEdge[first - 1] - s.upperEdge.front()).norm() < 1e-6);
        CHECK((b.upperEdge[last + 1] - s.upperEdge.back()).norm() < 1e-6);

        const auto lower = flatLower(s);
        const auto upper = flatUpper(s);
        const auto notched = flatUpper(b);
        REQUIRE(notched.size() == b.upperEdge.size());
        // in stretches of 200 mm: each piece is laid flat along its own good edge, so in the bilge, where the
        // hull is bent both ways, their flat seams differ in bend by K times both widths (here 5e-5 /mm)
        constexpr std::size_t stretch = 10;
        for (std::size_t i = 0; i + stretch <= seam.size(); i += stretch / 2) {
            std::vector<Vector2d> a;
            std::vector<Vector2d> c;
            for (std::size_t j = i; j < i + stretch; ++j) {
                a.push_back(lower[seam[j][0]]);
                c.push_back(notched[seam[j][1]]);
            }
            if (i == 0) {
                a.push_back(upper.front());
                c.push_back(notched[first - 1]);
            }
            CHECK(misfit(a, c) < 0.2);
        }
        std::vector<Vector2d> a = {upper.back()};
        std::vector<Vector2d> c = {notched[last + 1]};
        for (std::size_t j = seam.size() - stretch; j < seam.size(); ++j) {
            a.push_back(lower[seam[j][0]]);
            c.push_back(notched[seam[j][1]]);
        }
        CHECK(misfit(a, c) < 0.2);
        // the notch is square to the strip within the slope of the seam
        const Vector2d face = (notched[first] - notched[first - 1]).normalized();
        const Vector2d along = (notched[first - 1] - notched[first - 2]).normalized();
        CHECK(std::abs(face.dot(along)) < 0.06);
        CHECK_THAT((notched[first] - notched[first - 1]).norm(), WithinAbs(nibWidth, 0.7));
    }
}

TEST_CASE("a stealer is laid before the strip beside it, and both sides alike") {
    const Plan& plan = geodesicBoat().plan;
    const auto starboard = jointsOf(plan);
    const auto port = jointsOf(plan, Side::Port);
    REQUIRE(starboard.size() == port.size());
    for (std::size_t i = 0; i < port.size(); ++i) {
        CHECK(starboard[i].stealer->order < starboard[i].beside->order);
        CHECK(port[i].stealer->order < port[i].beside->order);
        CHECK(starboard[i].stealer->id.substr(1) == port[i].stealer->id.substr(1));
        CHECK((starboard[i].stealer->id.find(".1")) != std::string::npos);
    }
    for (const Dependency& d : dependencies(plan, ClosingMethod::BothSides))
        CHECK(plan.strips[d.first].order < plan.strips[d.then].order);
    const auto told = std::count_if(
        plan.findings.begin(), plan.findings.end(), [](const Finding& f) { return f.code == "stealer"; });
    CHECK(static_cast<std::size_t>(told) == starboard.size());
    const std::string json = planToJson(geodesicBoat().project, geodesicBoat().hull, plan);
    CHECK(json.find("\"stealer\"") != std::string::npos);
    CHECK(json.find("\"nib\"") != std::string::npos);
}

TEST_CASE("plain rows and plain tapers lay no stealer") {
    const Taper taper = GENERATE(Taper::None, Taper::Anywhere);
    const Planked boat = canoeWith(11, taper);
    for (const Strip& s : boat.plan.strips)
        CHECK(s.kind != StripKind::Stealer);
}

TEST_CASE("a stealer that runs out of the hull has one nib, and ends on the rim there") {
    // closing.md section 2, single-pointed: two strips' room to the end on one side of the nib
    Project p = projectAt(std::string(SHEERLAY_REFERENCE) + "/formula_skiff.sheerlay");
    p.planking.start = {StartLine::Kind::Geodesic, 0, {}};
    p.planking.taper = Taper::Anywhere;
    p.planking.edgeBendRadius = 5500;
    p.planking.narrowest = 16;
    const Planked boat = planked(std::move(p));
    const PlanProof proof(boat.project, boat.hull, boat.plan);
    for (const std::string& breach : proof.breaches)
        UNSCOPED_INFO(breach);
    CHECK(proof.breaches.empty());
    int onePointed = 0;
    for (const Joint& joint : jointsOf(boat.plan)) {
        const auto &bow = joint.stealer->ends[0], &stern = joint.stealer->ends[1];
        if ((bow.on == EndsOn::Nib) == (stern.on == EndsOn::Nib))
            continue;
        ++onePointed;
        INFO(joint.stealer->id);
        CHECK(bow.on == EndsOn::Nib);
        CHECK(stern.on == EndsOn::Sheer);                  // the rising sheer cuts its row
        CHECK(joint.stealer->samples.front().width < 7.0); // the nib
        CHECK(joint.stealer->order < joint.beside->order);
        // one notch in the strip beside it: its upper edge steps once by what the nib is wide
        int steps = 0;
        const auto& edge = joint.beside->upperEdge;
        for (std::size_t i = 2; i < edge.size(); ++i) {
            const Eigen::Vector3d a = (edge[i - 1] - edge[i - 2]).normalized(),
                                  b = (edge[i] - edge[i - 1]).normalized();
            steps += a.dot(b) < 0.5 ? 1 : 0;
        }
        CHECK(steps == 2); // into the notch's end and along it again
    }
    CHECK(onePointed == 1);
}

#include "core/hull/knuckle.hpp"
#include "core/planking/knuckle_rows.hpp"
#include "core/planking/planking.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/chine_hull.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <string>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

struct Built {
    LoftedHull hull;
    Plan plan;
};

Built build(const Project& project) {
    auto hull = loft(project);
    if (!hull)
        throw std::runtime_error(hull.error().text);
    auto plan = plank(project, *hull);
    if (!plan)
        throw std::runtime_error(plan.error().text);
    return {std::move(*hull), std::move(*plan)};
}

std::string refusal(const Project& project) {
    const auto hull = loft(project);
    if (!hull)
        return hull.error().text;
    const auto plan = plank(project, *hull);
    return plan ? std::string() : plan.error().text;
}

const Finding* findingOf(const Plan& plan, const std::string& code) {
    const auto f = std::find_if(
        plan.findings.begin(), plan.findings.end(), [&](const Finding& told) { return told.code == code; });
    return f == plan.findings.end() ? nullptr : &*f;
}

/// Starboard's strips, and centre pieces, of one row.
std::vector<const Strip*> rowOf(const Plan& plan, int row) {
    std::vector<const Strip*> list;
    for (const Strip& s : plan.strips)
        if (s.row == row && s.side != Side::Port)
            list.push_back(&s);
    return list;
}

double farthest(const std::vector<Vector3d>& edge, const std::vector<Vector3d>& line) {
    double most = 0;
    for (const Vector3d& p : edge) {
        double least = 1e300;
        for (std::size_t i = 1; i < line.size(); ++i) {
            const Vector3d d = line[i] - line[i - 1];
            const double f = std::clamp((p - line[i - 1]).dot(d) / d.squaredNorm(), 0.0, 1.0);
            least = std::min(least, (p - line[i - 1] - f * d).norm());
        }
        most = std::max(most, least);
    }
    return most;
}

std::vector<Vector3d> knuckleOf(const LoftedHull& hull) {
    std::vector<Vector3d> line;
    for (const KnucklePlace& k : knuckleLine(hull.laid, 5.0))
        line.push_back(k.p);
    return line;
}

void portMirrors(const Plan& plan) {
    std::map<std::string, const Strip*> of;
    for (const Strip& s : plan.strips)
        of[s.id] = &s;
    int pairs = 0;
    for (const auto& [id, s] : of)
        if (id.front() == 'S') {
            const Strip& port = *of.at("P" + id.substr(1));
            REQUIRE(port.upperEdge.size() == s->upperEdge.size());
            for (std::size_t i = 0; i < port.upperEdge.size(); ++i)
                CHECK((port.upperEdge[i] - s->upperEdge[i].cwiseProduct(Vector3d(1, -1, 1))).norm() == 0);
            ++pairs;
        }
    CHECK(pairs > 20);
}

} // namespace

TEST_CASE("plane panels take straight strips of full width, both ways from the knuckle") {
    Project p = prismProject();
    p.planking.layOn = LayOn::Moulds;
    const auto [hull, plan] = build(p);
    const ChineSection s = prismSection(0);
    const double w = 16;
    const double side = (s[0] - s[1]).norm(), bottom = (s[1] - s[2]).norm();
    CHECK(plan.firstRow == -static_cast<int>(std::ceil(side / w)));
    CHECK(plan.lastRow == static_cast<int>(std::ceil(bottom / w)));
    for (const Strip& strip : plan.strips) {
        INFO(strip.id);
        CHECK(strip.edgeBend.maxAbs < 1e-8);
        CHECK(strip.twistMax < 1e-8);
        if (strip.side == Side::Centre)
            continue;
        CHECK_THAT(strip.length, WithinAbs(2400, 0.05));
        const bool top = strip.row == plan.firstRow, last = strip.row == plan.lastRow;
        CHECK((strip.kind == StripKind::Full) == !(top || last));
        const double width = top ? side + w * (strip.row + 1) : last ? bottom - w * (strip.row - 1) : w;
        for (const StripSample& sample : strip.samples)
            CHECK_THAT(sample.width, WithinAbs(width, 0.05));
    }
    // the edges on the knuckle, and every edge where its row says
    for (const Vector3d& q : rowOf(plan, 1).front()->upperEdge)
        CHECK((q.tail<2>() - s[1]).norm() < 0.05);
    for (const Vector3d& q : rowOf(plan, -1).front()->lowerEdge)
        CHECK((q.tail<2>() - s[1]).norm() < 0.05);
    for (const Vector3d& q : rowOf(plan, 7).front()->lowerEdge)
        CHECK((q.tail<2>() - (s[1] + 7 * w / bottom * (s[2] - s[1]))).norm() < 0.05);
    for (const Vector3d& q : rowOf(plan, -7).front()->upperEdge)
        CHECK((q.tail<2>() - (s[1] + 7 * w / side * (s[0] - s[1]))).norm() < 0.05);
    CHECK_THAT(plan.coverage.hullArea, WithinRel(2400 * (side + bottom), 1e-4));
    CHECK_THAT(plan.coverage.stripsArea, WithinRel(plan.coverage.hullArea, 1e-4));
    CHECK(plan.coverage.largestGap < 0.05);
    CHECK(plan.coverage.largestOverlap < 0.05);
    portMirrors(plan);

    const double turn = std::atan2(400, 100) - std::atan2(100, 250);
    CHECK_THAT(knuckleBevel(hull, 1000).value(), WithinAbs(turn / 2, 1e-3));
    CHECK_FALSE(knuckleBevel(hull, 2600));
    const Finding* bevel = findingOf(plan, "knuckle-bevel");
    REQUIRE(bevel);
    CHECK(bevel->text.find("1200: " + std::to_string(std::lround(turn / 2 * 180 / 3.14159265358979))) !=
          std::string::npos);
}

TEST_CASE("a skiff is planked from its knuckle without gap or overlap") {
    for (const Taper taper : {Taper::None, Taper::Anywhere}) {
        Project p = skiffProject();
        p.planking.taper = taper;
        const auto [hull, plan] = build(p);
        const auto line = knuckleOf(hull);
        INFO("rows " << plan.firstRow << " to " << plan.lastRow << ", area "
                     << plan.coverage.stripsArea / plan.coverage.hullArea << ", gap "
                     << plan.coverage.largestGap << ", overlap " << plan.coverage.largestOverlap
                     << ", edge bend " << worstEdgeBend(plan) * 1e3);
        CHECK_THAT(plan.coverage.stripsArea, WithinRel(plan.coverage.hullArea, 1e-3));
        CHECK(plan.coverage.largestGap < 0.05);
        CHECK(plan.coverage.largestOverlap < 0.05);
        CHECK(plan.firstRow < -10);
        CHECK(plan.lastRow > 20);
        for (const Strip* s : rowOf(plan, 1))
            CHECK(farthest(s->upperEdge, line) < 0.05);
        for (const Strip* s : rowOf(plan, -1))
            CHECK(farthest(s->lowerEdge, line) < 0.05);
        // no strip lies across the knuckle
        for (const Strip& s : plan.strips)
            for (const Vector3d& q : s.middle) {
                const KnucklePlace k = knuckleAt(hull.laid, knuckleLine(hull.laid), q.x());
                if (q.x() > 400)
                    CHECK((q.z() > k.p.z()) == (s.row < 0));
            }
        portMirrors(plan);
        CHECK(findingOf(plan, "knuckle-bevel"));
        CHECK_FALSE(findingOf(plan, "uncovered"));
        CHECK_FALSE(findingOf(plan, "rows-fold"));
    }
}

TEST_CASE("what can't be done with a knuckle is refused or told in words") {
    Project p = prismProject();
    p.planking.start.kind = StartLine::Kind::Sheer;
    CHECK(refusal(p).find("planking.start = { line = \"knuckle\" }") != std::string::npos);
    p.planking.start.kind = StartLine::Kind::Easiest;
    CHECK(refusal(p).find("planking.start") != std::string::npos);
    p = prismProject();
    p.planking.closing = ClosingMethod::SplitBottom;
    CHECK(refusal(p).find("planking.closing") != std::string::npos);
    p = prismProject();
    p.planking.accents = {{Accent::By::Girth, 100}};
    CHECK(refusal(p).find("planking.accents") != std::string::npos);
    p = prismProject();
    for (Station& s : p.hull.stations)
        s.knuckle.reset();
    CHECK(refusal(p).find("the hull has none") != std::string::npos);
    p = prismProject();
    p.planking.shutter = {{0.6, 1.0}};
    CHECK(findingOf(build(p).plan, "shutter-not-aimed"));
}

TEST_CASE("a knuckle's number that folds the hull over is refused, not planked for minutes") {
    Project p = skiffProject();
    p.hull.stations[6].knuckle->halfBreadth -= 300; // gross, but the loft is asked to believe it
    const auto hull = loft(p);
    REQUIRE(hull);
    CHECK(refusal(p).empty()); // found and left out of the loft, it hinders nothing
    LoftedHull folded = *hull;
    const geometry::TensorSurface& s = hull->laid.surface;
    std::vector<Vector3d> poles;
    for (int i = 0; i < s.knotsU().poles(); ++i)
        for (int j = 0; j < s.knotsV().poles(); ++j) {
            poles.push_back(s.pole(i, j));
            if (s.point(s.knotsU().greville(i), *s.crease()).z() > poles.back().z())
                poles.back().y() += 600 *
                                    (s.point(s.knotsU().greville(i), *s.crease()).z() - poles.back().z()) /
                                    100; // the bottom runs outward instead of in
        }
    folded.laid.surface = geometry::TensorSurface(s.knotsU(), s.knotsV(), std::move(poles));
    const auto plan = plank(p, folded);
    REQUIRE_FALSE(plan);
    CHECK(plan.error().text.find("folds the hull over") != std::string::npos);
}

#include "core/planking/planking.hpp"
#include "geometry/geodesic.hpp"
#include "geometry/surface_frame.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <map>
#include <set>
#include <string>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;
using Eigen::Vector3d;

namespace {

constexpr double vertexGap = 25.0; // mm, contract: vertices at most this far apart
constexpr double meeting = 1e-3;   // mm

/// Three boats of different make-up.
const Planked& boat(const std::string& name) {
    static std::map<std::string, Planked> boats;
    if (const auto it = boats.find(name); it != boats.end())
        return it->second;
    if (name == "mid-thickness") {
        Project p = projectAt(SHEERLAY_REFERENCE "/formula_canoe.sheerlay");
        p.planking.layOn = LayOn::MidThickness;
        p.planking.start = {StartLine::Kind::Geodesic, 255, {}};
        return boats.emplace(name, planked(p)).first->second;
    }
    if (name == "brindlewick")
        return boats.emplace(name, planked(projectAt(SHEERLAY_EXAMPLES "/brindlewick/brindlewick.sheerlay")))
            .first->second;
    return boats.emplace(name, planked(projectAt(SHEERLAY_REFERENCE "/" + name))).first->second;
}

#define FOR_EVERY_BOAT                                                                                       \
    const std::string name =                                                                                 \
        GENERATE(as<std::string>{}, "formula_canoe.sheerlay", "mid-thickness", "brindlewick");               \
    INFO(name);                                                                                              \
    const Planked& b = boat(name);

double nearestVertex(const Vector3d& p, const std::vector<Vector3d>& line) {
    double least = 1e300;
    for (const Vector3d& q : line)
        least = std::min(least, (p - q).norm());
    return least;
}

/// Parameters of the surface's point nearest to p, starting where u is about x.
Eigen::Vector2d footOn(const geometry::TensorSurface& s, const Vector3d& p, double v) {
    Eigen::Vector2d uv(p.x(), v);
    for (int i = 0; i < 30; ++i) {
        const geometry::SurfaceJet j = s.jet(uv.x(), uv.y());
        Eigen::Matrix2d a;
        a << j.u.dot(j.u), j.u.dot(j.v), j.u.dot(j.v), j.v.dot(j.v);
        Eigen::Vector2d step = a.inverse() * Eigen::Vector2d(j.u.dot(p - j.p), j.v.dot(p - j.p));
        if (step.norm() > 60)
            step *= 60 / step.norm();
        uv += step;
    }
    return uv;
}

} // namespace

TEST_CASE("ids are unique and say side and row") {
    FOR_EVERY_BOAT
    std::set<std::string> ids;
    std::map<std::pair<int, Side>, int> pieces;
    for (const Strip& s : b.plan.strips) {
        CHECK(ids.insert(s.id).second);
        ++pieces[{s.row, s.side}];
        CHECK(s.row != 0);
        CHECK(s.row >= b.plan.firstRow);
        CHECK(s.row <= b.plan.lastRow);
    }
    for (const Strip& s : b.plan.strips) {
        char wanted[16];
        std::snprintf(wanted,
                      sizeof wanted,
                      "%c%s%02d",
                      s.side == Side::Port        ? 'P'
                      : s.side == Side::Starboard ? 'S'
                                                  : 'C',
                      s.row < 0 ? "-" : "",
                      std::abs(s.row));
        CHECK(s.id.substr(0, s.id.find('.')) == wanted);
        CHECK((s.id.find('.') != std::string::npos) == (pieces[{s.row, s.side}] > 1));
    }
}

TEST_CASE("port mirrors starboard, point for point") {
    FOR_EVERY_BOAT
    const auto port = stripsOf(b.plan, Side::Port), starboard = stripsOf(b.plan, Side::Starboard);
    REQUIRE(port.size() == starboard.size());
    for (std::size_t i = 0; i < port.size(); ++i) {
        const Strip &p = *port[i], &s = *starboard[i];
        CHECK(p.id.substr(1) == s.id.substr(1));
        REQUIRE(p.upperEdge.size() == s.upperEdge.size());
        REQUIRE(p.middle.size() == s.middle.size());
        REQUIRE(p.outline.size() == s.outline.size());
        for (std::size_t k = 0; k < p.upperEdge.size(); ++k)
            CHECK(p.upperEdge[k] == Vector3d(s.upperEdge[k].x(), -s.upperEdge[k].y(), s.upperEdge[k].z()));
        for (std::size_t k = 0; k < p.outline.size(); ++k)
            CHECK(p.outline[k] == Eigen::Vector2d(s.outline[k].x(), -s.outline[k].y()));
        CHECK(p.length == s.length);
        CHECK(p.edgeBend.signedMin == s.edgeBend.signedMin);
        CHECK(p.ends[0].lap == s.ends[0].lap);
    }
}

TEST_CASE("strips run from bow to stern with close vertices, and measure what they say") {
    FOR_EVERY_BOAT
    for (const Strip& s : b.plan.strips) {
        INFO(s.id);
        for (const auto* line : {&s.upperEdge, &s.lowerEdge}) {
            REQUIRE(line->size() >= 2);
            CHECK(line->front().x() < line->back().x());
            for (std::size_t i = 1; i < line->size(); ++i)
                CHECK(((*line)[i] - (*line)[i - 1]).norm() <= vertexGap);
        }
        REQUIRE(s.samples.size() == s.middle.size());
        REQUIRE(s.middleNormal.size() == s.middle.size());
        CHECK_THAT(s.length, WithinAbs(lengthOf(s.middle), 0.05));
        double most = 0, least = 1e9, low = 1e9, high = -1e9, twist = 0;
        for (const StripSample& q : s.samples) {
            most = std::max(most, std::abs(q.edgeBend));
            low = std::min(low, q.edgeBend);
            high = std::max(high, q.edgeBend);
            twist = std::max(twist, std::abs(q.twist));
            least = std::min(least, q.width);
        }
        CHECK(s.edgeBend.maxAbs == most);
        CHECK(s.edgeBend.signedMin == low);
        CHECK(s.edgeBend.signedMax == high);
        CHECK(s.twistMax == twist);
        CHECK(least >= 0.0);
        CHECK(s.widths.front()[0] == 0.0);
        CHECK_THAT(s.widths.back()[0], WithinAbs(s.length, 0.05));
        const double widest = s.side == Side::Centre ? 2.0 : 1.0;
        for (const auto& w : s.widths)
            CHECK(w[1] <= widest * b.project.strips.coverWidth + 1e-6);
    }
}

TEST_CASE("whole strips keep the cover width everywhere, measured square on the surface") {
    FOR_EVERY_BOAT
    // independent of the fan: from a middle vertex walk half a width along a geodesic squarely to each side
    const double w = b.project.strips.coverWidth;
    const geometry::TensorSurface& surface = b.hull.laid.surface;
    int checked = 0;
    for (const Strip* s : stripsOf(b.plan, Side::Starboard)) {
        if (s->kind != StripKind::Full || s->row % 5 != 0)
            continue;
        for (std::size_t i = 12; i + 12 < s->middle.size(); i += 40) {
            const Eigen::Vector2d uv = footOn(surface, s->middle[i], (s->row > 0 ? s->row : 1) * w);
            const geometry::SurfaceJet j = surface.jet(uv.x(), uv.y());
            if ((j.p - s->middle[i]).norm() > 1e-5)
                continue; // the foot found another sheet
            const geometry::Frame f = geometry::frameAlong(j, s->middle[i + 1] - s->middle[i - 1]);
            for (const double side : {-1.0, 1.0}) {
                geometry::GeodesicState g{uv, geometry::parameterComponents(j, side * f.across), 1, 0};
                for (int k = 0; k < 4; ++k)
                    g = geometry::geodesicStep(surface, surface.jet(g.uv.x(), g.uv.y()), g, w / 8);
                const Vector3d edge = surface.point(g.uv.x(), g.uv.y());
                const auto& line = side < 0 ? s->upperEdge : s->lowerEdge;
                double least = 1e300;
                for (std::size_t q = 1; q < line.size(); ++q) {
                    const Vector3d d = line[q] - line[q - 1];
                    const double t = std::clamp((edge - line[q - 1]).dot(d) / d.squaredNorm(), 0.0, 1.0);
                    least = std::min(least, (edge - line[q - 1] - t * d).norm());
                }
                INFO(s->id << " at x " << s->middle[i].x());
                CHECK(least < 0.05); // chords of 16 mm on a bend of 1 m sag 0.03 mm
                ++checked;
            }
        }
    }
    CHECK(checked > 50);
}

TEST_CASE("neighbours meet: the lower edge of one row is the upper edge of the next") {
    FOR_EVERY_BOAT
    std::map<int, std::vector<const Strip*>> rows;
    for (const Strip* s : stripsOf(b.plan, Side::Starboard))
        rows[s->row].push_back(s);
    int pairs = 0;
    for (const auto& [row, here] : rows) {
        const int below = row == -1 ? 1 : row + 1;
        if (!rows.contains(below) || rows[below].size() != 1)
            continue;
        const Strip& next = *rows[below].front();
        for (const Strip* s : here) {
            INFO(s->id << " over " << next.id);
            // edges that follow sheer or keel lie on no neighbour; near the ends vertices are set apart
            const double from = std::max(s->lowerEdge.front().x(), next.upperEdge.front().x()) + 120;
            const double to = std::min(s->lowerEdge.back().x(), next.upperEdge.back().x()) - 120;
            for (const Vector3d& p : s->lowerEdge)
                if (p.x() > from && p.x() < to) {
                    CHECK(nearestVertex(p, next.upperEdge) < meeting);
                    ++pairs;
                }
        }
    }
    CHECK(pairs > 2000);
    CHECK(b.plan.coverage.largestGap < 0.02);
    CHECK(b.plan.coverage.largestOverlap < 0.02);
}

TEST_CASE("the strips' area is the hull's") {
    FOR_EVERY_BOAT
    CHECK_THAT(b.plan.coverage.hullArea, WithinRel(b.hull.laid.halfArea, 1e-12));
    CHECK_THAT(b.plan.coverage.stripsArea, WithinRel(b.plan.coverage.hullArea, 5e-4));
    // independently: ribbons of triangles between each strip's edges
    double sum = 0;
    for (const Strip& s : b.plan.strips) {
        if (s.side == Side::Port)
            continue;
        const auto &u = s.upperEdge, &l = s.lowerEdge;
        std::size_t i = 0, k = 0;
        double area = 0;
        while (i + 1 < u.size() || k + 1 < l.size()) {
            const bool upper = k + 1 == l.size() || (i + 1 < u.size() && u[i + 1].x() <= l[k + 1].x());
            const Vector3d& third = upper ? u[i + 1] : l[k + 1];
            area += 0.5 * (u[i] - l[k]).cross(third - l[k]).norm();
            (upper ? i : k)++;
        }
        sum += s.side == Side::Centre ? area / 2 : area;
    }
    // a chord across the strip is short by w^2 / 24 R^2: 5e-4 in a bilge of 150 mm
    CHECK_THAT(sum, WithinRel(b.plan.coverage.hullArea, 1e-3));
    CHECK(sum < b.plan.coverage.hullArea);
}

TEST_CASE("findings are whole sentences, heaviest first, about strips that exist") {
    FOR_EVERY_BOAT
    std::set<std::string> ids;
    for (const Strip& s : b.plan.strips)
        ids.insert(s.id);
    for (std::size_t i = 0; i < b.plan.findings.size(); ++i) {
        const Finding& f = b.plan.findings[i];
        if (i > 0)
            CHECK(b.plan.findings[i - 1].level >= f.level);
        CHECK_FALSE(f.text.empty());
        CHECK((f.text.back() == '.' || f.text.back() == '!'));
        if (f.strip)
            CHECK(ids.contains(*f.strip));
    }
}

TEST_CASE("planking is a pure function of project and hull") {
    const Planked& b = boat("formula_canoe.sheerlay");
    const Plan again = plank(b.project, b.hull).value();
    REQUIRE(again.strips.size() == b.plan.strips.size());
    for (std::size_t i = 0; i < again.strips.size(); ++i) {
        CHECK(again.strips[i].id == b.plan.strips[i].id);
        CHECK(again.strips[i].lowerEdge == b.plan.strips[i].lowerEdge);
        CHECK(again.strips[i].outline == b.plan.strips[i].outline);
    }
}

TEST_CASE("no wood of that name, a start below the keel: told in words") {
    const Planked& b = boat("formula_canoe.sheerlay");
    Project p = b.project;
    p.strips.wood = "moonwood";
    const auto noWood = plank(p, b.hull);
    REQUIRE_FALSE(noWood.has_value());
    CHECK(noWood.error().text.find("moonwood") != std::string::npos);
    p = b.project;
    p.planking.start = {StartLine::Kind::Geodesic, 640, {}};
    const auto tooLow = plank(p, b.hull);
    REQUIRE_FALSE(tooLow.has_value());
    CHECK(tooLow.error().text.find("640") != std::string::npos);
}

#include "core/planking/start_line.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <cmath>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;
using Eigen::Vector3d;

namespace {

const LoftedHull& canoe() {
    static const LoftedHull h = loft(projectAt(SHEERLAY_REFERENCE "/formula_canoe.sheerlay")).value();
    return h;
}

Vector3d place(const TrimmedSurface& h, const geometry::MasterNode& n) {
    return h.surface.point(n.uv.x(), n.uv.y());
}

} // namespace

TEST_CASE("from the sheer: equal steps along v = 0, aft, past both heads, with its own edge bend") {
    const TrimmedSurface& h = canoe().laid;
    const auto nodes = startLine(h, {StartLine::Kind::Sheer, 0, {}}, 16).value();
    REQUIRE(nodes.size() > 300);
    CHECK(place(h, nodes.front()).x() < h.sheer.front().x() - 50);
    CHECK(place(h, nodes.back()).x() > h.sheer.back().x() + 50);
    for (std::size_t i = 1; i + 1 < nodes.size(); ++i) {
        CHECK(nodes[i].uv.y() == 0.0);
        const Vector3d a = place(h, nodes[i - 1]), b = place(h, nodes[i]), c = place(h, nodes[i + 1]);
        CHECK_THAT((c - b).norm(), WithinAbs(16, 2e-3));
        const geometry::SurfaceJet j = h.surface.jet(nodes[i].uv.x(), 0);
        CHECK_THAT((j.u * nodes[i].velocity.x() + j.v * nodes[i].velocity.y()).norm(), WithinAbs(1, 1e-9));
        // edge bend by differences of the line itself
        const geometry::Frame f = geometry::frameAlong(j, j.u);
        CHECK_THAT((a - 2 * b + c).dot(f.across) / 256, WithinAbs(nodes[i].edgeBend, 3e-6));
    }
    // a sheer that curves up toward the ends bends away from the keel: planking.md section 4, 0.43 /m
    double most = 0;
    for (const auto& n : nodes)
        if (std::abs(place(h, n).x() - 2438.4) < 2400)
            most = std::min(most, n.edgeBend);
    CHECK_THAT(most * 1e3, WithinAbs(-0.43, 0.02));
}

TEST_CASE("a geodesic starts at its girth on the widest section, tangent to x, straight in the surface") {
    const TrimmedSurface& h = canoe().laid;
    for (const double girth : {0.0, 100.0, 255.0}) {
        const auto nodes = startLine(h, {StartLine::Kind::Geodesic, girth, {}}, 16).value();
        // the node on the widest section
        std::size_t mid = 0;
        for (std::size_t i = 0; i < nodes.size(); ++i)
            if (std::abs(place(h, nodes[i]).x() - h.halfGirthMaxX) <
                std::abs(place(h, nodes[mid]).x() - h.halfGirthMaxX))
                mid = i;
        const Vector3d p = place(h, nodes[mid]);
        CHECK_THAT(p.x(), WithinAbs(h.halfGirthMaxX, 1e-3));
        double walked = 0;
        const auto section = sectionAt(h, p.x(), 300);
        double nearest = 1e9, at = 0;
        for (std::size_t i = 0; i < section.size(); ++i) {
            if (i > 0)
                walked += (section[i] - section[i - 1]).norm();
            if ((section[i] - p).norm() < nearest) {
                nearest = (section[i] - p).norm();
                at = walked;
            }
        }
        CHECK_THAT(at, WithinAbs(girth, 2.5)); // nearest of points 2 mm apart
        const geometry::SurfaceJet j = h.surface.jet(nodes[mid].uv.x(), nodes[mid].uv.y());
        const Vector3d t = j.u * nodes[mid].velocity.x() + j.v * nodes[mid].velocity.y();
        const Vector3d n = j.normal();
        const Vector3d wanted = (Vector3d::UnitX() - n.x() * n).normalized();
        CHECK((t - wanted).norm() < 1e-6);
        for (const auto& node : nodes)
            CHECK(node.edgeBend == 0.0);
    }
}

TEST_CASE("a bent start carries its profile, per metre, over half the length") {
    const TrimmedSurface& h = canoe().laid;
    const StartLine bent{
        StartLine::Kind::Bent, 255, 0.0, {0.069, 0.112, -0.145}}; // planking.md, the bilge line
    const auto nodes = startLine(h, bent, 16).value();
    std::size_t mid = 0;
    for (std::size_t i = 0; i < nodes.size(); ++i)
        if (std::abs(place(h, nodes[i]).x() - h.halfGirthMaxX) <
            std::abs(place(h, nodes[mid]).x() - h.halfGirthMaxX))
            mid = i;
    for (std::size_t i = 0; i < nodes.size(); i += 10) {
        const double s = 16.0 * (static_cast<double>(i) - static_cast<double>(mid)), xi = s / (h.length / 2);
        CHECK_THAT(nodes[i].edgeBend * 1e3,
                   WithinAbs(0.069 + 0.112 * xi * xi - 0.145 * std::pow(xi, 4), 1e-9));
    }
}

TEST_CASE("a start below the keel is refused with both figures") {
    const TrimmedSurface& h = canoe().laid;
    const auto line = startLine(h, {StartLine::Kind::Geodesic, 700, {}}, 16);
    REQUIRE_FALSE(line.has_value());
    CHECK(line.error().find("700") != std::string::npos);
    CHECK(line.error().find(std::to_string(std::lround(h.halfGirthMax))) != std::string::npos);
}

TEST_CASE("rows may run over the whole surface") {
    const TrimmedSurface& h = canoe().laid;
    const geometry::ParameterBox box = rowBox(h);
    CHECK(box.u0 == h.surface.knotsU().first);
    CHECK(box.v1 == h.surface.knotsV().last());
    for (const Eigen::Vector2d& uv : h.outline.region.boundary())
        CHECK(box.contains(uv));
}

#include "core/planking/recovery.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>
#include <stop_token>
#include <thread>
#include <vector>

using namespace sheerlay;
using core::Remedy;

namespace {

/// A pram with a tight bilge carried into a rising bow: formula of closing.md section 10, read off like a
/// table. Both ends are cut by plumb transoms.
core::Project pram(double rise, double narrowing) {
    core::Project p;
    p.strips.thickness = 6.35;
    p.strips.width = 19.05;
    p.strips.coverWidth = 17.0;
    p.planking.layOn = core::LayOn::Moulds;
    p.planking.edgeBendRadius = 1 / 0.45e-3;
    p.planking.narrowest = 11.0;
    p.hull.roundedTo = 0.1;
    constexpr double half = 1200, cut = 1080;
    for (double x = -1200; x <= 1201; x += 120) {
        const double xi = x / half;
        const double zk = 30 * xi * xi + rise * std::pow(xi, 6), zs = 430 + 60 * xi * xi;
        const double b = 540 * (1 - narrowing * xi * xi);
        const auto at = [&](double q) {
            const double over = std::max(q - 0.8 * b, 0.0);
            return std::array<double, 2>{q / std::pow(1 + std::pow(q / b, 6), 1.0 / 6),
                                         zk + 0.03 * q + q * q / 4400 + over * over / 400};
        };
        core::Station s;
        s.x = x + cut;
        s.keel = core::TablePoint{core::PointKind::Keel, 0, zk, "", "", 0};
        double top = 0;
        while (at(top)[1] < zs)
            top += 0.05;
        s.sheer = {core::PointKind::Sheer, at(top)[0], zs, "", "", 0};
        for (double q = 40; q < top - 8; q += 20)
            s.points.push_back({core::PointKind::Point, at(q)[0], at(q)[1], "", "", 0});
        p.hull.stations.push_back(std::move(s));
    }
    p.hull.transoms = {{core::End::Bow, 0, 0, 0}, {core::End::Stern, 2 * cut, 2 * cut, 0}};
    return p;
}

double worst(const core::Plan& plan) {
    double most = 0;
    for (const core::Strip& s : plan.strips)
        most = std::max(most, s.edgeBend.maxAbs);
    return most;
}

} // namespace

TEST_CASE("A pram whose rows can't be forced round the bilge is cured by tapers") {
    const test::Planked boat = test::planked(pram(60, 0.2));
    // closing.md section 7: 50 rows from the sheer, worst edge bend 1.2 per metre
    INFO("worst " << 1e3 * worst(boat.plan) << " rows " << boat.plan.lastRow);
    CHECK(std::abs(boat.plan.lastRow - 50) <= 1);
    CHECK(worst(boat.plan) == Approx(1.2e-3).epsilon(0.2));
    REQUIRE(core::breaksDown(boat.plan));
    const auto tried = core::findRemedy(boat.project, boat.hull, boat.plan);
    for (const auto& t : tried)
        UNSCOPED_INFO(int(t.remedy) << " worst " << 1e3 * t.worst << " limit " << 1e3 * t.limit << " touched "
                                    << t.touched << " covers " << t.covers);
    REQUIRE(tried.size() == 1);
    CHECK(tried[0].remedy == Remedy::Taper);
    CHECK(tried[0].helps());
    // 2 strips there, in the chart and not laid; as true strips, whose ends outside the hull count for the
    // rows below, it takes more
    CHECK(tried[0].touched <= 12);
    CHECK_THAT(core::tellRemedy(tried).text, Catch::Contains("Tapers would do"));
    core::Plan plan = boat.plan;
    core::proposeRemedy(boat.project, boat.hull, plan);
    const auto told = std::find_if(plan.findings.begin(), plan.findings.end(), [](const core::Finding& f) {
        return f.code == "what-would-do";
    });
    REQUIRE(told != plan.findings.end());
    CHECK(told->text == core::tellRemedy(tried).text);
}

TEST_CASE("Beyond strips of this width the builder is told so, and what would do") {
    const test::Planked boat = test::planked(pram(240, 0.35));
    INFO("worst " << 1e3 * worst(boat.plan) << " rows " << boat.plan.lastRow);
    REQUIRE(core::breaksDown(boat.plan));
    const auto tried = core::findRemedy(boat.project, boat.hull, boat.plan);
    for (const auto& t : tried)
        UNSCOPED_INFO(int(t.remedy) << " worst " << 1e3 * t.worst << " limit " << 1e3 * t.limit << " touched "
                                    << t.touched << " covers " << t.covers);
    UNSCOPED_INFO(core::tellRemedy(tried).text);
    REQUIRE(tried.size() == 4);
    CHECK(tried.back().remedy == Remedy::NarrowerStrips);
    CHECK(tried.back().limit == Approx(0.9e-3)); // half as wide bears twice the bend
    for (std::size_t i = 0; i < 3; ++i)
        CHECK_FALSE(tried[i].helps());
    CHECK_THAT(core::tellRemedy(tried).text, Catch::Contains("Strips of this width can't cover this hull"));
}

TEST_CASE("The search for a remedy is stopped in the midst of one, not after it") {
    const test::Planked boat = test::planked(pram(240, 0.35));
    REQUIRE(core::breaksDown(boat.plan));
    std::stop_source stop;
    std::jthread impatient([&stop] {
        std::this_thread::sleep_for(std::chrono::milliseconds(20)); // tapers alone take a second and more
        stop.request_stop();
    });
    CHECK(core::findRemedy(boat.project, boat.hull, boat.plan, stop.get_token()).empty());
}

TEST_CASE("A plan that two people can clamp down needs no remedy") {
    core::Plan plan;
    plan.edgeBendLimit = 0.2e-3;
    plan.strips.resize(1);
    plan.strips[0].edgeBend.maxAbs = 0.44e-3;
    CHECK_FALSE(core::breaksDown(plan));
    plan.findings.push_back({core::Level::Stop, "rows-fold", {}, {}, ""});
    CHECK(core::breaksDown(plan));
}

#include "core/project/project_file.hpp"
#include "core/questions/table_questions.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/formula_tables.hpp"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

std::vector<Finding> asked(const Project& p) {
    const auto hull = loft(p);
    REQUIRE(hull.has_value());
    return tableQuestions(p, *hull);
}

const Finding* find(const std::vector<Finding>& findings, const std::string& code) {
    const auto at =
        std::find_if(findings.begin(), findings.end(), [&](const Finding& f) { return f.code == code; });
    return at == findings.end() ? nullptr : &*at;
}

Project stephens() {
    return readProject(SHEERLAY_REFERENCE "/stephens_1889_corrected.sheerlay").value().project;
}

} // namespace

TEST_CASE("a table that tells enough is asked nothing") {
    for (const char* path : {SHEERLAY_EXAMPLES "/brindlewick/brindlewick.sheerlay",
                             SHEERLAY_EXAMPLES "/sedgewren/sedgewren.sheerlay",
                             SHEERLAY_EXAMPLES "/marsh-hen/marsh-hen.sheerlay",
                             SHEERLAY_REFERENCE "/formula_canoe.sheerlay",
                             SHEERLAY_REFERENCE "/formula_skiff.sheerlay",
                             SHEERLAY_REFERENCE "/formula_narrow.sheerlay"}) {
        INFO(path);
        for (const Finding& f : asked(readProject(path).value().project))
            UNSCOPED_INFO(f.text);
        CHECK(asked(readProject(path).value().project).empty());
    }
}

TEST_CASE("the canoe of 1889 is asked for a buttock and for her stems") {
    const auto findings = asked(stephens());
    const Finding* bottom = find(findings, "bottom-open");
    REQUIRE(bottom);
    CHECK(bottom->level == Level::Caution);
    CHECK(bottom->text.find("buttock") != std::string::npos);
    CHECK(bottom->text.find("the keel, at x 7-0-0 over 55 percent") !=
          std::string::npos); // table_checks.md 1
    CHECK(bottom->text.find("litres") != std::string::npos);
    CHECK(bottom->text.find("displacement to 5") != std::string::npos);
    CHECK(bottom->text.find("the shutter's width as unknown") != std::string::npos);
    CHECK(std::count_if(findings.begin(), findings.end(), [](const Finding& f) {
              return f.code == "stem-sparse";
          }) == 2);
    // she gives her half siding, and her sections do not hang: neither is spoken of
    CHECK_FALSE(find(findings, "half-siding-untold"));
    CHECK_FALSE(find(findings, "section-below-keel"));
}

TEST_CASE("the bottom's lack is spoken of once, by the question that says more") {
    const std::vector<Finding> ofLoft = loft(stephens())->findings;
    REQUIRE(find(ofLoft, "bottom-not-given"));
    const auto beside = besideQuestions(ofLoft, asked(stephens()));
    CHECK_FALSE(find(beside, "bottom-not-given"));
    CHECK(beside.size() + 1 == ofLoft.size());
    CHECK(besideQuestions(ofLoft, {}).size() == ofLoft.size());
}

TEST_CASE("a station whose x was reckoned is named by its number") {
    Project p = stephens();
    for (Station& s : p.hull.stations)
        s.printedX.clear();
    const auto findings = asked(p);
    const Finding* stem = find(findings, "stem-sparse");
    REQUIRE(stem);
    CHECK(stem->text.find("beyond the station at x 2,") != std::string::npos);
}

TEST_CASE("where the half siding is left out the one that fits best is offered, not taken") {
    Project p = stephens();
    p.hull.halfSiding = 0;
    const auto findings = asked(p);
    const Finding* siding = find(findings, "half-siding-untold");
    REQUIRE(siding);
    CHECK(siding->text.find("half-siding under [hull.profile]") != std::string::npos);
    CHECK(loft(p)->drawn.trims.siding.at(2000) < 1.0); // the loft keeps to the file
}

TEST_CASE("points of a stem are counted beyond the last station with a keel") {
    Project p = footStations(formulaCanoe(), sixteenth, 50.8);
    CHECK_FALSE(find(asked(p), "stem-sparse"));
    // leave the bow its head and one point more
    std::vector<ProfilePoint> kept;
    int forward = 0;
    for (const ProfilePoint& q : p.hull.profile)
        if (q.x > 0 || q.height > 480 || (q.x < p.hull.stations.front().x && forward++ == 0))
            kept.push_back(q);
    p.hull.profile = kept;
    const auto findings = asked(p);
    const Finding* stem = find(findings, "stem-sparse");
    REQUIRE(stem);
    CHECK(stem->text.find("The bow's stem is told by two points") != std::string::npos);
}

TEST_CASE("a loft that hangs below its own keel is told, with how far and where") {
    // keel and stems 20 mm too high: the buttocks hold the bottom down beside them
    Project p = footStations(formulaCanoe(), sixteenth, 50.8);
    CHECK_FALSE(find(asked(p), "section-below-keel"));
    for (Station& s : p.hull.stations)
        if (s.keel)
            s.keel->height += 20;
    for (ProfilePoint& q : p.hull.profile)
        q.height += 20;
    const auto findings = asked(p);
    const Finding* hangs = find(findings, "section-below-keel");
    REQUIRE(hangs);
    INFO(hangs->text);
    double least = 0.0; // what the table's own buttocks say already
    for (const Station& st : p.hull.stations)
        for (const TablePoint& q : st.points)
            if (st.keel)
                least = std::max(least, st.keel->height - q.height);
    REQUIRE(least > 10);
    const double most = std::stod(hangs->text.substr(hangs->text.find("by up to ") + 9)); // whole mm
    CHECK(most > least - 1.5);
    CHECK(most < 22); // the true bottom is 20 mm below
}

TEST_CASE("a chine is told, with where it turns and by how much") {
    // flat sides and a flat bottom that meet at (b - 100, 80), b the sheer's half-breadth
    Project p = footStations(formulaCanoe(), sixteenth, 50.8);
    for (std::size_t i = 5; i < 12; ++i) {
        Station& s = p.hull.stations[i];
        const double b = s.sheer.halfBreadth, h = s.sheer.height;
        s.points.clear();
        for (const double z : {230.0, 180.0, 130.0, 80.0})
            s.points.push_back({PointKind::Waterline, b - 100 * (h - z) / (h - 80), z, "", "", 0});
        for (const double y : {200.0, 100.0})
            s.points.push_back({PointKind::Buttock, y, 80 * y / (b - 100), "", "", 0});
        s.keel->height = 0;
    }
    const auto findings = asked(p);
    const Finding* knuckle = find(findings, "knuckle-rounded");
    REQUIRE(knuckle);
    INFO(knuckle->text);
    CHECK(knuckle->text.find("a chine, it seems") != std::string::npos);
    const double b = p.hull.stations[8].sheer.halfBreadth, h = p.hull.stations[8].sheer.height;
    const double turn = (std::atan2(h - 80, 100) - std::atan2(80, b - 100)) * 180 / std::acos(-1.0);
    const double told = std::stod(knuckle->text.substr(knuckle->text.find(" by ") + 4));
    CHECK_THAT(told, WithinAbs(turn, 5)); // the sharpest of the stations
}

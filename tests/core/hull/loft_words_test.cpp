#include "core/hull/hull.hpp"
#include "core/project/project_file.hpp"
#include "tests/support/catch.hpp"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <string>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

Project canoe() {
    return readProject(SHEERLAY_REFERENCE "/formula_canoe.sheerlay").value().project;
}

bool has(const LoftedHull& hull, const std::string& code) {
    return std::any_of(
        hull.findings.begin(), hull.findings.end(), [&](const Finding& f) { return f.code == code; });
}

std::string reason(const Project& p) {
    const auto hull = loft(p);
    REQUIRE_FALSE(hull.has_value());
    CHECK(hull.error().text.size() > 20); // a sentence, not a code
    return hull.error().text;
}

} // namespace

TEST_CASE("without keel heights there is no hull, and it says what to give") {
    Project p = canoe();
    for (Station& s : p.hull.stations)
        s.keel.reset();
    p.hull.profile.clear();
    CHECK(reason(p).find("keel") != std::string::npos);
}

TEST_CASE("two stations are too few") {
    Project p = canoe();
    p.hull.stations.resize(2);
    CHECK(reason(p).find("station") != std::string::npos);
    p.hull.stations.clear();
    CHECK(reason(p).find("station") != std::string::npos);
}

TEST_CASE("a hull whose ends are nowhere told names the end that stays open") {
    Project p = canoe();
    p.hull.profile.clear();
    p.hull.stations.erase(p.hull.stations.begin(), p.hull.stations.begin() + 6);
    p.hull.stations.resize(6); // five feet amidships
    const std::string text = reason(p);
    CHECK((text.find("bow") != std::string::npos || text.find("stern") != std::string::npos));
}

TEST_CASE("the last gap is pointed out without a half station and not with one") {
    const Project p = canoe();
    CHECK_FALSE(has(*loft(p), "last-gap-wide"));
    Project coarse = p;
    coarse.hull.stations.erase(coarse.hull.stations.begin());
    coarse.hull.stations.pop_back();
    const auto hull = loft(coarse);
    REQUIRE(hull.has_value());
    int bow = 0, stern = 0;
    for (const Finding& f : hull->findings)
        if (f.code == "last-gap-wide") {
            CHECK(f.level == Level::Caution);
            REQUIRE(f.x.has_value());
            (*f.x < 2438 ? bow : stern)++;
            CHECK((*f.x < 310 || *f.x > 4876 - 310)); // inside the gap it speaks of
            CHECK(f.text.back() == '.');
        }
    CHECK(bow == 1);
    CHECK(stern == 1);
}

TEST_CASE("cut off by a transom, a clean table stays clean, whatever of it still stands beyond") {
    Project p = readProject(SHEERLAY_EXAMPLES "/brindlewick/brindlewick.sheerlay").value().project;
    constexpr double foot = 304.8;
    p.hull.transoms = {{End::Stern, 14.5 * foot, (14 + 1 / 6.0) * foot, 0}};
    const auto clean = [&] {
        const auto hull = loft(p);
        return hull.has_value() && !has(*hull, "doubtful-cell");
    };
    CHECK(clean()); // stern stem, and a station between it and the transom
    p.hull.stations.pop_back();
    CHECK(clean());
    std::erase_if(p.hull.profile, [&](const ProfilePoint& q) { return q.x > 10 * foot; });
    CHECK(clean());
}

TEST_CASE("findings come heaviest first, with codes fit for a script") {
    Project p = canoe();
    p.hull.stations[4].points[2].halfBreadth += 25.4; // a misread inch
    p.hull.stations.erase(p.hull.stations.begin());
    const auto hull = loft(p);
    REQUIRE(hull.has_value());
    CHECK(std::is_sorted(hull->findings.begin(), hull->findings.end(), [](const auto& a, const auto& b) {
        return a.level > b.level;
    }));
    REQUIRE_FALSE(hull->findings.empty());
    for (const Finding& f : hull->findings)
        for (const char c : f.code)
            CHECK((std::islower(static_cast<unsigned char>(c)) || c == '-'));
}

TEST_CASE("lofting is a pure function: twice the same table, twice the same surface") {
    const Project p = canoe();
    const auto a = loft(p), b = loft(p);
    REQUIRE(a.has_value());
    REQUIRE(b.has_value());
    for (int i = 0; i < a->drawn.surface.knotsU().poles(); ++i)
        for (int j = 0; j < a->drawn.surface.knotsV().poles(); ++j)
            CHECK(a->drawn.surface.pole(i, j) == b->drawn.surface.pole(i, j));
}

TEST_CASE("every doubtful number is told as a place, too, and by what it should be") {
    Project p = canoe();
    constexpr double inch = 25.4;
    TablePoint& cell = p.hull.stations[6].points[3];
    cell.halfBreadth -= 3 * inch; // "0-10-…" printed for "1-1-…"
    const double fair = canoe().hull.stations[6].points[3].halfBreadth;
    cell.line = 0; // as of a table that was edited
    const auto hull = loft(p);
    REQUIRE(hull.has_value());
    REQUIRE(hull->doubtful.size() == 1);
    const DoubtfulCell& doubt = hull->doubtful.front();
    CHECK(doubt.station == 6);
    CHECK(doubt.kind == cell.kind);
    CHECK(doubt.point == 3);
    CHECK(doubt.height == (cell.kind == PointKind::Buttock));
    CHECK(doubt.printed == cell.halfBreadth);
    CHECK(std::abs(doubt.fair - fair) < 3.0); // mm
    CHECK(doubt.spread > 0.0);
    CHECK(doubt.setAside);
    const auto told = std::find_if(hull->findings.begin(), hull->findings.end(), [](const Finding& f) {
        return f.code == "doubtful-cell";
    });
    REQUIRE(told != hull->findings.end());
    CHECK(told->text.find("(line ") == std::string::npos);
    CHECK(loft(canoe())->doubtful.empty());
}

TEST_CASE("six numbers that contradict the rest point to the table's own places") {
    Project p = canoe();
    constexpr double inch = 25.4;
    const std::size_t middle = p.hull.stations.size() / 2;
    for (const std::size_t station : {middle - 4, middle - 2, middle, middle + 2, middle + 4})
        p.hull.stations[station].points[2].halfBreadth -= 2 * inch;
    for (const std::size_t station : {middle - 3, middle + 3})
        p.hull.stations[station].points[1].halfBreadth += 2 * inch;
    const auto hull = loft(p);
    REQUIRE(hull.has_value());
    CHECK(hull->doubtful.size() >= 6);
    CHECK(has(*hull, "many-doubtful-cells"));
    CHECK_FALSE(has(*loft(canoe()), "many-doubtful-cells"));
}

#include "core/table_edit/scale_table.hpp"
#include "core/table_edit/table_grid.hpp"
#include "tests/support/planked.hpp"
#include "tests/support/project_text.hpp"

#include <cmath>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;
using Kind = GridLine::Kind;

namespace {

constexpr double same = 1e-9; // mm; one rounding of a double

std::string refusal(const Expected<Project, LengthError>& edited) {
    REQUIRE_FALSE(edited.has_value());
    return edited.error().found + "; " + edited.error().would;
}

Project canoe() {
    return projectAt(SHEERLAY_REFERENCE "/formula_canoe.sheerlay");
}

} // namespace

TEST_CASE("measures come from the table's own numbers") {
    const TableMeasures measures = measuresOf(canoe().hull);
    CHECK_THAT(measures.length, WithinAbs(16 * mmPerFoot, same)); // stem head to stem head
    CHECK_THAT(measures.spacing, WithinAbs(mmPerFoot, same));
    CHECK(says(measuresText(measures, Units::Inches), "16' 0\" long"));
    CHECK(says(measuresText(measures, Units::Millimetres), "stations 305 mm apart"));
    // a station past the transom does not count
    HullTable table = canoe().hull;
    table.transoms.push_back({End::Stern, 3000.0, 2900.0, 0});
    table.profile.clear();
    CHECK_THAT(measuresOf(table).length, WithinAbs(3000.0 - table.stations.front().x, same));
}

TEST_CASE("every number scales along its own direction, within half a unit") {
    const Project project = canoe();
    const TableScale scale{1.1, 0.95, 1.04};
    const auto scaled = scaleTable(project, scale);
    REQUIRE(scaled.has_value());
    const double half = 0.5 * project.hull.roundedTo + same;
    for (std::size_t i = 0; i < project.hull.stations.size(); ++i) {
        const Station& a = project.hull.stations[i];
        const Station& b = scaled->hull.stations[i];
        CHECK_THAT(b.x, WithinAbs(1.1 * a.x, half));
        CHECK(b.printedX.find('-') != std::string::npos);
        REQUIRE(a.points.size() == b.points.size());
        for (std::size_t j = 0; j < a.points.size(); ++j) {
            CHECK_THAT(b.points[j].halfBreadth, WithinAbs(0.95 * a.points[j].halfBreadth, half));
            CHECK_THAT(b.points[j].height, WithinAbs(1.04 * a.points[j].height, half));
        }
    }
    for (std::size_t i = 0; i < project.hull.profile.size(); ++i) {
        CHECK_THAT(scaled->hull.profile[i].x, WithinAbs(1.1 * project.hull.profile[i].x, half));
        CHECK_THAT(scaled->hull.profile[i].height, WithinAbs(1.04 * project.hull.profile[i].height, half));
    }
    // volume goes with all three; rounding leaves a few in a thousand
    const auto before = loft(project);
    const auto after = loft(*scaled);
    REQUIRE(before.has_value());
    REQUIRE(after.has_value());
    CHECK_THAT(after->drawn.length, WithinRel(1.1 * before->drawn.length, 2e-3));
    CHECK_THAT(after->drawn.beam, WithinRel(0.95 * before->drawn.beam, 4e-3));
}

TEST_CASE("what does not change keeps its writing") {
    const Project project = canoe();
    const auto wider = scaleTable(project, {1.0, 1.05, 1.0});
    REQUIRE(wider.has_value());
    Project back = *wider;
    for (std::size_t i = 0; i < project.hull.stations.size(); ++i) {
        CHECK(back.hull.stations[i].printedX == project.hull.stations[i].printedX);
        CHECK(back.hull.stations[i].keel == project.hull.stations[i].keel);
        back.hull.stations[i] = project.hull.stations[i];
    }
    CHECK(back == project);
    CHECK(scaleTable(project, {}).value() == project);
}

TEST_CASE("a diagonal's angle and distance follow beam and depth") {
    Project project = canoe();
    TablePoint p;
    DiagonalReading d;
    d.height = 300.0;
    d.angle = 45.0;
    d.distance = 200.0;
    d.printedDistance = "200 mm";
    p.diagonal = d;
    p.halfBreadth = 200 * std::sqrt(0.5);
    p.height = 300 - 200 * std::sqrt(0.5);
    project.hull.stations[6].points.push_back(p);
    const auto scaled = scaleTable(project, {1.0, 1.2, 0.9});
    REQUIRE(scaled.has_value());
    const TablePoint& moved = scaled->hull.stations[6].points.back();
    CHECK_THAT(*moved.diagonal->angle, WithinAbs(std::atan2(0.9, 1.2) * 180 / std::acos(-1.0), 1e-9));
    const double unit = project.hull.roundedTo;
    CHECK_THAT(moved.halfBreadth, WithinAbs(1.2 * p.halfBreadth, unit));
    CHECK_THAT(moved.height, WithinAbs(0.9 * p.height, unit));
}

TEST_CASE("moulds at places of their own go along; half sidings and the rest stay") {
    Project project = canoe();
    project.moulds.stations = {600.0, 1200.0};
    project.hull.halfSiding = 9.5;
    const auto scaled = scaleTable(project, {1.25, 1.1, 1.0});
    REQUIRE(scaled.has_value());
    CHECK_THAT(scaled->moulds.stations[1], WithinAbs(1500.0, 0.5 * project.hull.roundedTo));
    CHECK(scaled->hull.halfSiding == 9.5);
    CHECK(scaled->strips == project.strips);
}

TEST_CASE("another boat, or one half planked, is not scaled") {
    CHECK(says(refusal(scaleTable(canoe(), {2.5, 1.0, 1.0})), "half and twice"));
    CHECK(says(refusal(scaleTable(canoe(), {1.0, std::nan(""), 1.0})), "half and twice"));
    Project begun = canoe();
    begun.journal.laid.push_back({"S01", "", "", 0});
    CHECK(says(refusal(scaleTable(begun, {1.1, 1.0, 1.0})), "before the first strip"));
}

TEST_CASE("spacing moves the stations apart and leaves stems and transoms their form") {
    Project project = canoe();
    HullTable& table = project.hull;
    const double first = table.stations.front().x, last = table.stations.back().x;
    table.transoms.push_back({End::Stern, last - 20, last - 120, 0});
    TableScale scale;
    scale.spacing = 1.1;
    const auto spaced = scaleTable(project, scale);
    REQUIRE(spaced.has_value());
    const double half = 0.5 * table.roundedTo + same, apart = 0.1 * (last - first);
    CHECK_THAT(spaced->hull.stations.front().x, WithinAbs(first, same));
    for (std::size_t i = 0; i < table.stations.size(); ++i) {
        CHECK_THAT(spaced->hull.stations[i].x, WithinAbs(first + 1.1 * (table.stations[i].x - first), half));
        CHECK(spaced->hull.stations[i].points == table.stations[i].points);
    }
    int beyond = 0;
    for (std::size_t i = 0; i < table.profile.size(); ++i) {
        const ProfilePoint &a = table.profile[i], &b = spaced->hull.profile[i];
        CHECK(b.height == a.height);
        if (a.x < first || a.x > last) {
            CHECK_THAT(b.x - a.x, WithinAbs(a.x < first ? 0.0 : apart, half));
            ++beyond;
        }
    }
    CHECK(beyond > 0); // the stems stand out beyond the stations
    const Transom& t = spaced->hull.transoms.back();
    CHECK_THAT(t.xAtKeel - t.xAtSheer, WithinAbs(-100, same));
    CHECK_THAT(t.xAtSheer, WithinAbs(first + 1.1 * (last - 20 - first), half));
    // both at once: spaced first, then stretched
    scale.length = 1.2;
    CHECK_THAT(scaleTable(project, scale)->hull.stations.back().x, WithinAbs(1.2 * (last + apart), half));
    scale.length = 1.9; // with 1.1 more than twice the spacing
    CHECK(says(refusal(scaleTable(project, scale)), "twice"));
}

TEST_CASE("a knuckle scales with beam and depth") {
    const Project project = projectAt(SHEERLAY_EXAMPLES "/tanglepike/tanglepike.sheerlay");
    const auto scaled = scaleTable(project, {.length = 1.0, .beam = 1.5, .depth = 1.2});
    REQUIRE(scaled);
    const Station &before = project.hull.stations[5], &after = scaled->hull.stations[5];
    CHECK_THAT(after.knuckle->halfBreadth, WithinAbs(1.5 * before.knuckle->halfBreadth, 0.5));
    CHECK_THAT(after.knuckle->height, WithinAbs(1.2 * before.knuckle->height, 0.5));
}

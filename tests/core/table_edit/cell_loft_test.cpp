#include "core/table_edit/cell_loft.hpp"
#include "tests/support/chine_hull.hpp"
#include "tests/support/planked.hpp"
#include "tests/support/project_text.hpp"

#include <cmath>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;
using Kind = GridLine::Kind;

namespace {

constexpr double radius = 300.0; // mm
// a fine spline through the pipe
constexpr double splineError = 1e-3; // mm

TablePoint at(PointKind kind, double halfBreadth, double height) {
    TablePoint p;
    p.kind = kind;
    p.halfBreadth = halfBreadth;
    p.height = height;
    p.printedHalfBreadth = std::to_string(halfBreadth);
    return p;
}

} // namespace

TEST_CASE("on a quarter pipe every kind of cell reads what the circle has") {
    const LoftedHull hull = quarterPipe(radius, 2000.0);
    const LoftedSection section(hull, 900.0);
    Station station;
    station.x = 900.0;
    station.sheer = at(PointKind::Sheer, radius + 2.0, 1.0);
    station.keel = TablePoint{};
    station.keel->kind = PointKind::Keel;
    station.keel->height = -radius - 3.0;
    // 4 mm wide of the circle at 60 degrees below the sheer
    const double angle = std::acos(-1.0) / 3;
    station.points.push_back(
        at(PointKind::Waterline, radius * std::cos(angle) + 4.0, -radius * std::sin(angle)));
    const std::vector<GridLine> lines{{Kind::Place},
                                      {Kind::SheerHeight},
                                      {Kind::SheerBreadth},
                                      {Kind::KeelHeight},
                                      {Kind::KeelBreadth},
                                      {Kind::Waterline, station.points[0].height},
                                      {Kind::Buttock, 180.0},
                                      {Kind::Waterline, -180.0}};
    CHECK_FALSE(section.at(station, lines[0]).has_value());
    CHECK_FALSE(section.at(station, lines[4]).has_value());
    CHECK_THAT(section.at(station, lines[1])->off, WithinAbs(1.0, splineError));
    CHECK_THAT(section.at(station, lines[2])->off, WithinAbs(2.0, splineError));
    const auto keel = section.at(station, lines[3]);
    REQUIRE(keel.has_value());
    CHECK_THAT(keel->lofted, WithinAbs(-radius, splineError));
    CHECK_THAT(keel->off, WithinAbs(-3.0, splineError));
    CHECK_THAT(keel->normal, WithinAbs(3.0, splineError)); // lower is outside
    const auto waterline = section.at(station, lines[5]);
    REQUIRE(waterline.has_value());
    CHECK_THAT(waterline->off, WithinAbs(4.0, splineError));
    CHECK_THAT(waterline->normal, WithinAbs(4.0 * std::cos(angle), splineError)); // the circle's normal
    // blank cells: 3-4-5 triangles
    CHECK_THAT(section.at(station, lines[6])->lofted, WithinAbs(-240.0, splineError));
    CHECK(section.at(station, lines[6])->off == 0.0);
    CHECK_THAT(section.at(station, lines[7])->lofted, WithinAbs(240.0, splineError));
    CHECK_FALSE(section.at(station, {Kind::Buttock, radius + 20.0}).has_value());
}

TEST_CASE("a diagonal is read along its plane, a single point both ways") {
    const LoftedHull hull = quarterPipe(radius, 2000.0);
    const LoftedSection section(hull, 900.0);
    Station station;
    DiagonalReading diagonal;
    diagonal.angle = 35.0;
    diagonal.distance = 310.0;
    TablePoint p = at(PointKind::Point, 0, 0);
    p.diagonal = diagonal;
    station.points = {p, at(PointKind::Point, 185.0, -240.0)};
    GridLine line{Kind::Diagonal, 0.0, "", 0, diagonal};
    // from the circle's own centre the distance is the radius
    const auto along = section.at(station, line);
    REQUIRE(along.has_value());
    CHECK_THAT(along->lofted, WithinAbs(radius, splineError));
    CHECK_THAT(along->normal, WithinAbs(10.0, splineError));
    CHECK_THAT(section.at(station, {Kind::PointBreadth})->off, WithinAbs(5.0, splineError));
    CHECK_THAT(section.at(station, {Kind::PointHeight})->off,
               WithinAbs(-240.0 + std::sqrt(radius * radius - 185.0 * 185.0), splineError));
}

TEST_CASE("the loft of a real table stays near all its cells") {
    const Planked boat = planked(projectAt(SHEERLAY_REFERENCE "/formula_canoe.sheerlay"));
    const auto lines = gridLines(boat.project.hull);
    const auto cells = loftOfCells(boat.project.hull, boat.hull, lines);
    REQUIRE(cells.size() == boat.project.hull.stations.size());
    int given = 0;
    double sum = 0.0;
    for (std::size_t s = 0; s < cells.size(); ++s)
        for (std::size_t i = 0; i < lines.size(); ++i) {
            const bool number = cellValue(boat.project.hull.stations[s], lines[i]).has_value() &&
                                lines[i].kind != Kind::Place && lines[i].kind != Kind::KeelBreadth;
            INFO(cellName(boat.project, lines, {i, s}));
            CHECK(cells[s][i].has_value() == number);
            if (!number)
                continue;
            ++given;
            sum += cells[s][i]->normal * cells[s][i]->normal;
            CHECK(std::abs(cells[s][i]->normal) < 3.0); // mm; the loft's own bound on this table
        }
    CHECK(given > 120);
    // the fit leaves about 0.8 of the rounding over; some of it shows along both coordinates of one point
    CHECK(std::sqrt(sum / given) < 1.2 * boat.hull.roundingSigma);
}

TEST_CASE("numbers are printed as the table prints them") {
    HullTable table;
    table.roundedTo = 25.4 / 8;
    CHECK(textLike(101.6, "0-3-0", table, Units::Millimetres) == "0-4-0");
    CHECK(textLike(102.5, "0-3-0", table, Units::Inches) == "0-4-0"); // 4.04 in, to an eighth
    table.roundedTo = 0.5;
    CHECK(textLike(101.7, "88", table, Units::Millimetres) == "101.5");
    table.roundedTo = 1.0;
    CHECK(textLike(101.7, "", table, Units::Millimetres) == "102");
    table.stations.resize(1);
    table.stations[0].sheer.printedHeight = "1-0-0";
    table.roundedTo = 25.4 / 16;
    CHECK(textLike(101.7, "", table, Units::Millimetres) == "0-4-0");
}

TEST_CASE("a knuckle's cells are read on the hull's corner") {
    const Project project = prismProject();
    const LoftedHull hull = loft(project).value();
    const LoftedSection section(hull, 900.0);
    Station station = project.hull.stations[3];
    const auto corner = prismSection(0)[1];
    station.knuckle->height = corner.y() + 7;
    station.knuckle->halfBreadth = corner.x() - 4;
    const auto height = section.at(station, {Kind::KnuckleHeight});
    const auto breadth = section.at(station, {Kind::KnuckleBreadth});
    REQUIRE(height);
    REQUIRE(breadth);
    CHECK_THAT(height->off, WithinAbs(7, 0.05)); // planes are lofted so closely: knuckle_test
    CHECK_THAT(breadth->off, WithinAbs(-4, 0.05));
    station.knuckle.reset();
    CHECK_FALSE(section.at(station, {Kind::KnuckleHeight}).has_value());
}

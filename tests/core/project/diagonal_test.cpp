#include "core/project/diagonal.hpp"
#include "core/project/project_writer.hpp"
#include "core/units/length.hpp"
#include "tests/support/project_text.hpp"

#include <cmath>
#include <numbers>

using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

/// The small project with a diagonal at its first station.
std::string withDiagonal(const std::string& diagonal) {
    return replaced(
        smallProject(), "[[hull.station]]\n", "[[hull.station]]\ndiagonals = [" + diagonal + "]\n");
}

const TablePoint& firstDiagonal(const Project& project) {
    for (const TablePoint& point : project.hull.stations.front().points)
        if (point.diagonal)
            return point;
    FAIL("no diagonal was read");
    return project.hull.stations.front().sheer;
}

std::vector<FileMessage> refused(const std::string& text) {
    const auto read = parseProject(text, "trial.sheerlay");
    REQUIRE_FALSE(read.has_value());
    return read.error();
}

} // namespace

TEST_CASE("a diagonal of 3-4-5 lies where the triangle says") {
    DiagonalReading reading;
    reading.height = 700;
    reading.throughBreadth = 400; // 300 down over 400 out: 5 along is 4 out and 3 down
    reading.throughHeight = 400;
    reading.distance = 250;
    reading.printedDistance = "250";
    const auto point = pointOnDiagonal(reading, Units::Millimetres);
    REQUIRE(point.has_value());
    CHECK(point->kind == PointKind::Point);
    CHECK(point->halfBreadth == Approx(200).margin(1e-9));
    CHECK(point->height == Approx(550).margin(1e-9));
    CHECK(point->printedHalfBreadth == "200.0");
    CHECK(point->printedHeight == "550.0");
}

TEST_CASE("a circle about the diagonal's foot has the same distance along every diagonal") {
    for (const double degrees : {5.0, 30.0, 45.0, 60.0, 85.0}) {
        DiagonalReading reading;
        reading.height = 500;
        reading.angle = degrees;
        reading.distance = 320;
        const auto point = pointOnDiagonal(reading, Units::Inches);
        REQUIRE(point.has_value());
        CHECK(std::hypot(point->halfBreadth, point->height - 500) == Approx(320).margin(1e-9));
        CHECK(std::atan2(500 - point->height, point->halfBreadth) * 180 / std::numbers::pi ==
              Approx(degrees).margin(1e-9));
    }
}

TEST_CASE("a diagonal that does not run down and out is none") {
    DiagonalReading reading;
    reading.distance = 10;
    for (const double degrees : {0.0, -10.0, 90.0, 120.0}) {
        reading.angle = degrees;
        CHECK_FALSE(pointOnDiagonal(reading, Units::Millimetres).has_value());
    }
    reading.angle.reset();
    reading.throughBreadth = 100;
    reading.throughHeight = 0; // level with its height of 0
    CHECK_FALSE(slopeOf(reading).has_value());
}

TEST_CASE("diagonals are read from a project and written back as diagonals") {
    const std::string text =
        withDiagonal("{ height = \"1-2-0\", angle = 40, distance = \"0-6-3+\" }, "
                     "{ height = \"14 in\", through = { half-breadth = \"12 in\" }, distance = \"5 in\" }");
    const Project project = parsed(text);
    const TablePoint& point = firstDiagonal(project);
    CHECK(point.kind == PointKind::Point);
    const double distance = 6.4375 * 25.4;
    const double slope = 40 * std::numbers::pi / 180;
    CHECK(point.halfBreadth == Approx(distance * std::cos(slope)).margin(1e-9));
    CHECK(point.height == Approx(14 * 25.4 - distance * std::sin(slope)).margin(1e-9));
    CHECK(point.line > 0);
    CHECK(point.printedHeight == toFeetInchesEighths(point.height));

    const std::string written = writeProject(project);
    CHECK(written.find("diagonals = [") != std::string::npos);
    CHECK(written.find("\"0-6-3+\"") != std::string::npos);
    const Project again = parsed(written);
    CHECK(writeProject(again) == written);
    CHECK(firstDiagonal(again).halfBreadth == Approx(point.halfBreadth).margin(1e-7));
    CHECK(firstDiagonal(again).height == Approx(point.height).margin(1e-7));
    CHECK(again.hull.stations.front().points.size() == project.hull.stations.front().points.size());
}

TEST_CASE("a diagonal's direction is asked for where it is missing, doubled or wrong") {
    const auto said = [](const std::string& diagonal) {
        const auto messages = refused(withDiagonal(diagonal));
        REQUIRE(messages.size() == 1);
        return toText(messages.front());
    };
    CHECK(said("{ height = 300, distance = 100 }").find("neither an angle nor a point") != std::string::npos);
    CHECK(said("{ height = 300, angle = 40, through = { half-breadth = 200 }, distance = 100 }")
              .find("an angle and a point") != std::string::npos);
    CHECK(said("{ height = 300, angle = 95, distance = 100 }").find("does not run down and out") !=
          std::string::npos);
    CHECK(said("{ height = 300, through = { half-breadth = 200, height = 350 }, distance = 100 }")
              .find("lower than") != std::string::npos);
    CHECK(said("{ height = 300, angle = 40, distance = -100 }").find("negative") != std::string::npos);
    CHECK(said("{ height = 300, angle = 40 }").find("distance") != std::string::npos);
}

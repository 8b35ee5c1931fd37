#include "core/tables/hull_tables.hpp"
#include "core/units/length.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/csv_reading.hpp"
#include "tests/support/planked.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace sheerlay;
using namespace sheerlay::test;

TEST_CASE("offsets re-read from a pipe are a circle's") {
    const double radius = 437.0;
    const core::LoftedHull pipe = quarterPipe(radius, 2000.0);
    const CsvTable table = readCsv(core::offsetTable({}, pipe, core::Units::Millimetres));
    REQUIRE(table.rows.size() >= 6);
    for (std::size_t row = 1; row < table.rows.size(); ++row) {
        CHECK_THAT(table.number(row, "sheer half-breadth mm"), WithinAbs(radius, 0.06));
        CHECK_THAT(table.number(row, "keel height mm"), WithinAbs(-radius, 0.06));
        for (const double z : {-50.0, -200.0, -400.0})
            CHECK_THAT(
                table.number(row, "half-breadth at height " + std::to_string(static_cast<int>(z)) + ".0 mm"),
                WithinAbs(std::sqrt(radius * radius - z * z), 0.06)); // half of the last digit
        for (const double y : {100.0, 300.0, 400.0})
            CHECK_THAT(
                table.number(row, "height at half-breadth " + std::to_string(static_cast<int>(y)) + ".0 mm"),
                WithinAbs(-std::sqrt(radius * radius - y * y), 0.06));
    }
}

TEST_CASE("asked for at other lines, offsets stand there, to the table's own digit") {
    core::Project project;
    project.hull.roundedTo = 2.0;
    const double radius = 437.0;
    core::OffsetLines lines;
    lines.stations = core::Levels{{250.0, 1333.0}, 0.0};
    lines.waterlines = core::Levels{{-325.0, -125.0}, 0.0};
    lines.buttocks = core::Levels{{}, 150.0};
    const CsvTable table =
        readCsv(core::offsetTable(project, quarterPipe(radius, 2000.0), core::Units::Millimetres, lines));
    REQUIRE(table.rows.size() == 3);
    CHECK(table.cell(2, "station") == "1333.0");
    CHECK(table.cell(2, "x mm") == "1333.0");
    CHECK(table.cell(1, "sheer half-breadth mm").find('.') == std::string::npos);
    for (const double z : {-325.0, -125.0}) {
        const double read =
            table.number(1, "half-breadth at height " + std::to_string(static_cast<int>(z)) + ".0 mm");
        CHECK_THAT(std::fmod(read, 2.0), WithinAbs(0, 1e-9));
        CHECK_THAT(read, WithinAbs(std::sqrt(radius * radius - z * z), 1.05));
    }
    for (const int y : {150, 300})
        CHECK_THAT(table.number(1, "height at half-breadth " + std::to_string(y) + ".0 mm"),
                   WithinAbs(-std::sqrt(radius * radius - y * y), 1.05));
    CHECK(std::find(table.rows[0].begin(), table.rows[0].end(), "height at half-breadth 450.0 mm") ==
          table.rows[0].end()); // past the pipe
}

TEST_CASE("a boat lofted from its own re-read offsets is the same boat") {
    core::Project project = projectAt(SHEERLAY_EXAMPLES "/sedgewren/sedgewren.sheerlay");
    const auto hull = core::loft(project);
    REQUIRE(hull);
    const CsvTable table = readCsv(core::offsetTable(project, *hull, core::Units::Millimetres));
    const auto level = [](const std::string& head, const std::string& before) {
        return std::stod(head.substr(before.size()));
    };
    core::Project again = project;
    again.hull.stations.clear();
    again.hull.roundedTo = 0.1;
    for (std::size_t row = 1; row < table.rows.size(); ++row) {
        core::Station station;
        station.x = table.number(row, "x mm") - hull->xShift;
        station.printedX = table.cell(row, "station");
        station.sheer = {core::PointKind::Sheer,
                         table.number(row, "sheer half-breadth mm"),
                         table.number(row, "sheer height mm"),
                         "",
                         "",
                         0};
        station.keel = core::TablePoint{core::PointKind::Keel,
                                        table.number(row, "keel half-breadth mm"),
                                        table.number(row, "keel height mm"),
                                        "",
                                        "",
                                        0};
        for (std::size_t k = 0; k < table.rows[0].size(); ++k) {
            const std::string& head = table.rows[0][k];
            if (table.rows[row][k].empty())
                continue;
            const double value = std::stod(table.rows[row][k]);
            const std::string breadth = "half-breadth at height ";
            const std::string height = "height at half-breadth ";
            if (head.starts_with(breadth))
                station.points.push_back(
                    {core::PointKind::Waterline, value, level(head, breadth), "", "", 0});
            else if (head.starts_with(height))
                station.points.push_back({core::PointKind::Buttock, level(head, height), value, "", "", 0});
        }
        again.hull.stations.push_back(std::move(station));
    }
    const auto second = core::loft(again);
    REQUIRE(second);
    double worst = 0.0;
    for (const double x : hull->stationX) {
        const auto one = core::sectionAt(hull->drawn, x, 40);
        const auto two = core::sectionAt(second->drawn, x + second->xShift - hull->xShift, 800);
        if (one.size() < 3 || two.size() < 3)
            continue;
        for (const Eigen::Vector3d& p : one) {
            double nearest = 1e9;
            for (std::size_t i = 0; i + 1 < two.size(); ++i) {
                const Eigen::Vector2d a = two[i].tail<2>();
                const Eigen::Vector2d chord = two[i + 1].tail<2>() - a;
                const double t = std::clamp((p.tail<2>() - a).dot(chord) / chord.squaredNorm(), 0.0, 1.0);
                nearest = std::min(nearest, (p.tail<2>() - a - t * chord).norm());
            }
            worst = std::max(worst, nearest);
        }
    }
    CHECK(worst < 0.5); // cells rounded to 0.1 mm, fairing weighed by that
}

TEST_CASE("the moulds' table runs along each section from the sheer") {
    const core::LoftedHull pipe = quarterPipe(300.0, 2000.0);
    const CsvTable table = readCsv(core::mouldTable({}, pipe, core::Units::Inches));
    double last = 0.0;
    std::size_t stations = 0;
    for (std::size_t row = 1; row < table.rows.size(); ++row) {
        const double y = table.number(row, "half-breadth in") * core::mmPerInch;
        const double z = table.number(row, "height in") * core::mmPerInch;
        CHECK_THAT(std::hypot(y, z), WithinAbs(300.0, 0.2));
        if (table.cell(row, "point") == "1") {
            ++stations;
            if (row > 1)
                CHECK_THAT(last, WithinAbs(300.0 * std::numbers::pi / 2, 0.3));
        }
        last = table.number(row, "girth from the sheer in") * core::mmPerInch;
    }
    CHECK(stations >= 5);
}

#include "core/offsets/table_project.hpp"
#include "core/project/project_file.hpp"
#include "tests/support/made_project.hpp"

#include <cmath>
#include <random>
#include <sstream>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

MadeText tried(const std::string& text, const std::vector<std::string>& takes = {}) {
    return readTable(text, "trial.csv", "Trial", corrected(takes));
}
Project made(const std::string& text, const std::vector<std::string>& takes = {}) {
    return projectOf(tried(text, takes));
}
std::string refusedWith(const std::string& text, const std::vector<std::string>& takes = {}) {
    return refusalOf(tried(text, takes));
}

/// Same lengths everywhere, within the last bit of a length times 25.4.
void checkSameTable(const Project& a, const Project& b) {
    constexpr double tolerance = 1e-7; // mm
    REQUIRE(a.hull.stations.size() == b.hull.stations.size());
    for (std::size_t i = 0; i < a.hull.stations.size(); ++i) {
        const Station& s = a.hull.stations[i];
        const Station& t = b.hull.stations[i];
        INFO("station " << i);
        CHECK(s.x == Approx(t.x).margin(tolerance));
        CHECK(s.sheer.height == Approx(t.sheer.height).margin(tolerance));
        CHECK(s.sheer.halfBreadth == Approx(t.sheer.halfBreadth).margin(tolerance));
        REQUIRE(s.keel.has_value() == t.keel.has_value());
        if (s.keel)
            CHECK(s.keel->height == Approx(t.keel->height).margin(tolerance));
        REQUIRE(s.points.size() == t.points.size());
        for (std::size_t k = 0; k < s.points.size(); ++k) {
            CHECK(s.points[k].kind == t.points[k].kind);
            CHECK(s.points[k].height == Approx(t.points[k].height).margin(tolerance));
            CHECK(s.points[k].halfBreadth == Approx(t.points[k].halfBreadth).margin(tolerance));
        }
    }
}

std::string stephens() {
    return fileText(std::string(SHEERLAY_REFERENCE) + "/stephens_american_cruising_canoe_fie.csv");
}

/// The table with rows and columns exchanged and another sign between its cells.
std::string turned(const std::string& csv, const std::string& mark) {
    std::vector<std::vector<std::string>> columns;
    std::istringstream rows(csv);
    for (std::string row; std::getline(rows, row);) {
        if (row.starts_with('#'))
            continue;
        std::istringstream cells(row + ",");
        std::size_t column = 0;
        for (std::string cell; std::getline(cells, cell, ','); ++column) {
            columns.resize(std::max(columns.size(), column + 1));
            columns[column].push_back(cell);
        }
    }
    std::string text;
    for (const auto& column : columns) {
        for (std::size_t i = 0; i < column.size(); ++i)
            text += (i > 0 ? mark : "") + column[i];
        text += "\n";
    }
    return text;
}

/// A boat of half-circles: at height z above the keel half-breadth sqrt(r^2 - (r - z)^2), all round.
double breadthOfCircle(double r, double z) {
    return std::sqrt(r * r - (r - z) * (r - z));
}

std::string number(double value, char decimal = '.') {
    std::ostringstream text;
    text.precision(10);
    text << value;
    std::string result = text.str();
    for (char& c : result)
        c = c == '.' ? decimal : c;
    return result;
}

const std::string small = "Station;0;1;2\nPosition (mm);0;600;1200\nSheer height;450;400;450\n"
                          "Sheer half-breadth;10;400;10\nKeel;50;0;50\nWL 200;8;380;8\n";

} // namespace

TEST_CASE("the published table of 1889 becomes the project that was made from it by another way") {
    // tests/reference/make_projects.py wrote the expected file in another language, from the same CSV.
    const Project expected =
        parsed(fileText(std::string(SHEERLAY_REFERENCE) + "/stephens_1889_as_printed.sheerlay"));
    const auto read = tried(stephens());
    REQUIRE(read.has_value());
    const Project project = parsed(read->projectText);
    checkSameTable(project, expected);
    CHECK(project.hull.roundedTo == Approx(25.4 / 8));
    CHECK(read->notes.size() == 5); // four doubtful cells, and the rabbet that is dots
}

TEST_CASE("turned, with tabs or semicolons, the table says the same") {
    const Project expected = made(stephens());
    for (const char* mark : {"\t", ";", ","})
        checkSameTable(made(turned(stephens(), mark)), expected);
}

TEST_CASE("decimal commas, centimetres and a table read from the stern") {
    std::string head = "Mall";
    std::string lines[4] = {"x (cm)", "Sheer height", "Sheer half-breadth", "Keel height"};
    std::string waterline = "WL 10";
    const std::vector<double> radius{20.25, 30.5, 25.75};
    for (std::size_t i = 0; i < radius.size(); ++i) {
        const auto add = [](std::string& line, double value) { line.append(";").append(number(value, ',')); };
        add(head, static_cast<double>(i));
        add(lines[0], 300.0 - 100.5 * static_cast<double>(i));
        add(lines[1], radius[i]);
        add(lines[2], radius[i]);
        add(lines[3], 0.0);
        add(waterline, breadthOfCircle(radius[i], 10.0));
    }
    const auto read = tried(head + "\n" + lines[0] + "\n" + lines[1] + "\n" + lines[2] + "\n" + lines[3] +
                                "\n" + waterline + "\n",
                            {"row 1 = station names"});
    REQUIRE(read.has_value());
    CHECK(read->notes.size() == 1);
    const Project project = parsed(read->projectText);
    REQUIRE(project.hull.stations.size() == 3);
    for (std::size_t i = 0; i < 3; ++i) {
        const Station& station = project.hull.stations[2 - i];
        CHECK(station.x == Approx(3000 - 1005 * static_cast<double>(i)));
        CHECK(station.sheer.height == Approx(10 * radius[i]));
        REQUIRE(station.points.size() == 1);
        CHECK(station.points[0].height == Approx(100));
        CHECK(station.points[0].halfBreadth == Approx(10 * breadthOfCircle(radius[i], 10.0)).epsilon(1e-9));
    }
}

TEST_CASE("depths below the load waterline come out below it") {
    const Project project =
        made("Station;0;1;2\nPosition (mm);0;600;1200\n"
             "Heights above LWL;;;\nSheer;300;250;300\n"
             "Depths below LWL;;;\nKeel;100;150;100\nButtock 100;90;140;90\n"
             "Half-breadths;;;\nSheer;210;400;210\nWL 50 below LWL;8;380;8\nLWL 0;9;390;9\n");
    const Station& middle = project.hull.stations[1];
    CHECK(middle.sheer.height == Approx(250));
    REQUIRE(middle.keel.has_value());
    CHECK(middle.keel->height == Approx(-150));
    REQUIRE(middle.points.size() == 3);
    CHECK(middle.points[0].height == Approx(-50));
    CHECK(middle.points[1].height == Approx(0).margin(1e-12));
    CHECK(middle.points[2].height == Approx(-140));
}

TEST_CASE("a table that lists one end for both is unfolded") {
    const Project project =
        made("Station;0 & 4;1 & 3;2\nSheer height (mm);450;410;400\nSheer half-breadth;10;300;400\n"
             "Keel;50;10;0\nWL 200;8;280;380\n",
             {"spacing = 600 mm"});
    REQUIRE(project.hull.stations.size() == 5);
    for (std::size_t i = 0; i < 5; ++i) {
        const Station& station = project.hull.stations[i];
        const Station& mirrored = project.hull.stations[4 - i];
        CHECK(station.x == Approx(600.0 * static_cast<double>(i)).margin(1e-9));
        CHECK(station.sheer.halfBreadth == mirrored.sheer.halfBreadth);
        CHECK(station.points.front().halfBreadth == mirrored.points.front().halfBreadth);
    }
    CHECK(project.hull.stations[2].sheer.halfBreadth == Approx(400));
}

TEST_CASE("a diagonal's cells are distances along it") {
    const Project project = made(small + "Diagonal 300 at 30°;;250;\n");
    const auto& points = project.hull.stations[1].points;
    REQUIRE(points.size() == 2);
    REQUIRE(points[1].diagonal.has_value());
    CHECK(points[1].height == Approx(300 - 125));                     // sin 30 degrees is a half
    CHECK(points[1].halfBreadth == Approx(250 * std::sqrt(3.0) / 2)); // cos 30 degrees
    CHECK(project.hull.stations[0].points.size() == 1);
}

TEST_CASE("a list of points becomes half sections from sheer to keel") {
    std::string text = "station,x (mm),half-breadth,height\n";
    for (int station = 0; station < 3; ++station)
        for (int k = 0; k <= 6; ++k) {
            const double angle = std::acos(-1.0) / 12 * k; // from the keel up
            text += std::string(k == 0 ? std::to_string(station) : "") + "," +
                    (k == 0 ? number(700.0 * station) : "") + "," + number(300 * std::sin(angle)) + "," +
                    number(300 - 300 * std::cos(angle)) + "\n";
        }
    const Project project = made(text);
    REQUIRE(project.hull.stations.size() == 3);
    for (const Station& station : project.hull.stations) {
        CHECK(station.sheer.height == Approx(300));
        CHECK(station.sheer.halfBreadth == Approx(300));
        REQUIRE(station.keel.has_value());
        CHECK(station.keel->height == Approx(0).margin(1e-9));
        REQUIRE(station.points.size() == 5);
        for (const TablePoint& point : station.points)
            CHECK(std::hypot(point.halfBreadth, 300 - point.height) == Approx(300).epsilon(1e-8));
    }
    CHECK(project.hull.stations[1].x == Approx(700));
}

TEST_CASE("half siding and what the table is drawn to go into the project") {
    const Project project = made(small, {"half-siding = 3/8 in", "drawn-to = outside"});
    CHECK(project.hull.halfSiding == Approx(9.525));
    CHECK(project.hull.drawnTo == DrawnTo::Outside);
}

TEST_CASE("every cell that can't be read is named by row and column") {
    const std::string said = refusedWith(small + "WL 300;7;3x0;-5\n");
    CHECK(said.find("trial.csv:7: row 7, column 3 (C): \"3x0\"") != std::string::npos);
    CHECK(said.find("trial.csv:7: row 7, column 4 (D): \"-5\", which is negative") != std::string::npos);
    CHECK(refusedWith(replaced(small, "10;400;10", "10;;10")).find("no half-breadth of the sheer") !=
          std::string::npos);
    CHECK(refusedWith(replaced(small, "0;600;1200", "0;600;500")).find("in order") != std::string::npos);
    CHECK(refusedWith(replaced(small, "50;0;50", ";;")).find("no keel or rabbet heights at all") !=
          std::string::npos);
    CHECK(refusedWith(small, {"half-siding = -3 mm"}).find("half-siding") != std::string::npos);
    CHECK(refusedWith("x (mm);half-breadth;height\n0;10;20\n0;11;\n600;12;40\n")
              .find("one number of a point") != std::string::npos);
    // What only the project's reader sees is told by station.
    CHECK(refusedWith(replaced(replaced(small, "50;0;50", "50;0;"), "10;400;10", "10;400;300"))
              .find("station 3") != std::string::npos);
}

TEST_CASE("a boat of a size no boat has is refused, as its unit is mistaken") {
    CHECK(refusedWith(small, {"units = in"}).find("the boat's size") !=
          std::string::npos);                                  // 400 in of half-breadth
    const std::string metres = replaced(small, "(mm)", "(m)"); // the positions' unit, taken for all
    CHECK(refusedWith(metres).find("units = mm") != std::string::npos);
    const std::string inches =
        replaced(replaced(small, "10;400;10", "0.1;1.5;0.1"), "8;380;8", "0.1;1.4;0.1");
    CHECK(refusedWith(inches).find("the boat's size") != std::string::npos); // 1.5 mm
}

TEST_CASE("cut and spoilt tables never harm the reader") {
    constexpr unsigned seed = 20261125;
    INFO("seed " << seed);
    std::mt19937 random(seed);
    const std::vector<std::string> tables{stephens(), turned(stephens(), "\t"), small};
    for (int i = 0; i < 600; ++i) {
        std::string text = tables[random() % tables.size()];
        if (random() % 3 == 0)
            text.resize(random() % text.size());
        for (auto spoilt = random() % 6; spoilt > 0 && !text.empty(); --spoilt) {
            constexpr std::string_view signs = ";,\t\n\"-0189x?.&/ \x80";
            text[random() % text.size()] = signs[random() % signs.size()];
        }
        const auto read = tried(text);
        if (read)
            CHECK(parseProject(read->projectText, "trial.sheerlay").has_value());
        else
            for (const FileMessage& message : read.error()) {
                CHECK_FALSE(message.found.empty());
                CHECK_FALSE(message.would.empty());
            }
    }
}

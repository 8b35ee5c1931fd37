#include "core/fairness/battens_text.hpp"
#include "core/project/project_file.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/formula_hull.hpp"

#include <cmath>
#include <sstream>
#include <string>
#include <vector>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

/// The row of a block that starts with this station.
std::vector<std::string>
rowOf(const std::string& text, const std::string& block, const std::string& station) {
    std::istringstream lines(text.substr(text.find(block)));
    for (std::string line; std::getline(lines, line);) {
        std::istringstream words(line);
        std::vector<std::string> row;
        for (std::string word; words >> word;)
            row.push_back(word);
        if (!row.empty() && row[0] == station)
            return row;
    }
    return {};
}

} // namespace

TEST_CASE("curvature is read between a line's points, and nowhere past its ends") {
    HullLine line;
    line.points = {{{0, 1, 0}, 0.001}, {{10, 1, 0}, 0.003}, {{20, 1, 0}, 0.002}};
    CHECK_THAT(curvatureAt(line, 5).value(), WithinAbs(0.002, 1e-12));
    CHECK_THAT(curvatureAt(line, 20).value(), WithinAbs(0.002, 1e-12));
    CHECK_FALSE(curvatureAt(line, 21).has_value());
    CHECK_FALSE(curvatureAt(HullLine{}, 0).has_value());
}

TEST_CASE("amidships the canoe's waterlines and keel bend as her formula does") {
    const Project p = readProject(SHEERLAY_REFERENCE "/formula_canoe.sheerlay").value().project;
    const LoftedHull hull = loft(p).value();
    const std::vector<StationBump> bumps = stationBumps(p, hull).value();
    const std::string text = battensText(p, hull, bumps, Units::Inches);
    const std::string middle = p.hull.stations[p.hull.stations.size() / 2].printedX;
    REQUIRE_THAT(p.hull.stations[p.hull.stations.size() / 2].x + hull.xShift, WithinAbs(2438.4, 1.0));
    const FormulaHull f = formulaCanoe();
    // second differences of the formula, whose lines run straight fore and aft there
    const auto bend = [](auto line) { return -1000 * (line(50) - 2 * line(0) + line(-50)) / (50.0 * 50.0); };
    const auto sheer = rowOf(text, "Sheer and keel", middle);
    REQUIRE(sheer.size() == 4);
    CHECK_THAT(std::stod(sheer[1]),
               WithinAbs(bend([&](double x) { return f.halfBreadth(x, f.sheer(x)); }), 0.06));
    CHECK_THAT(std::stod(sheer[2]), WithinAbs(bend(f.sheer), 0.06));
    CHECK_THAT(std::stod(sheer[3]), WithinAbs(-bend(f.keel), 0.06));
    const auto waterlines = rowOf(text, "Waterlines", middle);
    REQUIRE(waterlines.size() >= 4);
    const double step = 25.4 * std::stod(text.substr(text.find("x", text.find("Waterlines")) + 1));
    for (std::size_t i = 1; i < waterlines.size(); ++i)
        CHECK_THAT(
            std::stod(waterlines[i]),
            WithinAbs(bend([&](double x) { return f.halfBreadth(x, step * static_cast<double>(i)); }), 0.12));
    // every station has its bump
    for (const StationBump& b : bumps)
        CHECK(rowOf(text, "How far", b.station).size() >= 3);
}

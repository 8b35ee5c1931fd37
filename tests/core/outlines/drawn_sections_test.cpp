#include "core/outlines/drawn_sections.hpp"
#include "core/project/project_writer.hpp"
#include "tests/support/dxf_text.hpp"
#include "tests/support/made_project.hpp"

#include <algorithm>
#include <cmath>
#include <random>
#include <sstream>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

MadeText tried(const std::string& text, const std::vector<std::string>& takes = {}) {
    return readSections(text, "trial", "Trial", corrected(takes));
}
Project made(const std::string& text, const std::vector<std::string>& takes = {}) {
    return projectOf(tried(text, takes));
}
std::string refusedWith(const std::string& text, const std::vector<std::string>& takes = {}) {
    return refusalOf(tried(text, takes));
}

// A boat of quarter circles: radii in mm at x = 0, 600, 1200; all sheers level with the circles' centres.
constexpr std::array<double, 3> radius{200, 400, 300};

/// Digits after the point in the longest number among the file's points.
std::size_t mostDecimals(const std::string& text) {
    std::size_t most = 0;
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) {
        if (line.find("half-breadth") == std::string::npos)
            continue;
        for (std::size_t at = line.find('.'); at != std::string::npos; at = line.find('.', at + 1)) {
            const std::size_t end = std::min(line.find_first_not_of("0123456789", at + 1), line.size());
            most = std::max(most, end - at - 1);
        }
    }
    return most;
}

void checkQuarterCircles(const Project& project) {
    CHECK(mostDecimals(writeProject(project)) <= (project.units == Units::Inches ? 4 : 3));
    REQUIRE(project.hull.stations.size() == 3);
    for (std::size_t i = 0; i < 3; ++i) {
        const Station& station = project.hull.stations[i];
        INFO("station " << i);
        CHECK(station.x == Approx(600.0 * static_cast<double>(i)).margin(1e-6));
        CHECK(station.sheer.halfBreadth == Approx(radius[i]).epsilon(1e-5));
        CHECK(station.sheer.height == Approx(400).epsilon(1e-5)); // above the lowest keel
        REQUIRE(station.keel.has_value());
        CHECK(station.keel->height == Approx(400 - radius[i]).margin(4e-3));
        CHECK(station.points.size() == 22);
        for (const TablePoint& p : station.points)
            CHECK(std::hypot(p.halfBreadth, p.height - 400) == Approx(radius[i]).epsilon(1e-5));
    }
}

/// The boat as SVG paths; `scale` user units to the millimetre, the centreline at `centre`.
std::string svgBoat(double scale, double centre, const std::string& attributes, bool whole = false) {
    std::string text = "<svg xmlns=\"http://www.w3.org/2000/svg\" " + attributes + ">";
    for (std::size_t i = 0; i < 3; ++i) {
        const double r = radius[i] * scale;
        const std::string size = std::to_string(r);
        text += "<g id=\"station_" + std::to_string(600 * i) + "mm\"><path d=\"M" +
                std::to_string(centre + r) + " 50 A" + size + " " + size + " 0 0 1 " +
                std::to_string(whole ? centre - r : centre) + " " + std::to_string(whole ? 50.0 : 50 + r) +
                "\"/></g>";
    }
    return text + "<text>Lines of a boat of circles</text></svg>";
}

std::string dxfBoat(int unit, double scale) {
    std::string entities;
    for (std::size_t i = 0; i < 3; ++i)
        entities += dxfText({{0, "ARC"},
                             {8, "X-" + std::to_string(600 * i) + "MM"},
                             {10, "0"},
                             {20, "700"},
                             {40, std::to_string(radius[i] * scale)},
                             {50, "270"},
                             {51, "360"}});
    return dxfFile(entities, unit);
}

} // namespace

TEST_CASE("names that tell a station's place are told from those that do not") {
    CHECK(stationInName("station 900 mm") == "900 mm");
    CHECK(stationInName("X-300") == "300");
    CHECK(stationInName("st_1-0-0") == "1-0-0");
    CHECK(stationInName("1-0-4+") == "1-0-4+");
    CHECK(stationInName("ST 3") == "3");
    for (const char* name :
         {"g1234", "path815", "Layer 1", "0 frames of 3", "", "station", "sheer 3", "x 1 2"})
        CHECK_FALSE(stationInName(name).has_value());
}

TEST_CASE("a boat of quarter circles comes back from SVG, whatever its scale and place") {
    checkQuarterCircles(made(svgBoat(1, 0, "width=\"500mm\" viewBox=\"0 0 500 500\"")));
    checkQuarterCircles(made(svgBoat(0.5, 130, "width=\"500mm\" viewBox=\"0 0 250 250\"")));
    checkQuarterCircles(made(svgBoat(1, 130, ""), {"units = mm"}));
    checkQuarterCircles(made(svgBoat(96 / 25.4, 900, ""), {"beam = 800 mm"})); // pixels
    checkQuarterCircles(made(svgBoat(1, 500, "width=\"1000mm\" viewBox=\"0 0 1000 500\"", true)));
}

TEST_CASE("a boat of quarter circles comes back from DXF") {
    checkQuarterCircles(made(dxfBoat(4, 1)));
    checkQuarterCircles(made(dxfBoat(1, 1 / 25.4)));
    checkQuarterCircles(made(dxfBoat(0, 0.1), {"beam = 800 mm"}));
    // far from 0, 0 as surveyors' drawings stand: ends meet by the drawing's size, not by its place
    std::string far = dxfBoat(4, 1);
    for (int i = 0; i < 3; ++i)
        far = replaced(far, "20\n700", "20\n10000700");
    const std::string stray =
        dxfText({{0, "LINE"}, {8, "X-600MM"}, {10, "410"}, {20, "10000700"}, {11, "450"}, {21, "10000710"}});
    checkQuarterCircles(made(far));
    CHECK(refusedWith(replaced(far, "0\nENDSEC\n0\nEOF", stray + "0\nENDSEC\n0\nEOF"))
              .find("2 curves that do not meet") != std::string::npos);
}

TEST_CASE("pieces of one section are joined; both sides of a body plan are used") {
    std::string entities;
    for (std::size_t i = 0; i < 3; ++i) {
        const double r = i == 0 ? -radius[i] : radius[i]; // the bow's on the left
        const auto line = [&](double x, double y, double u, double v) {
            entities += dxfText({{0, "LINE"},
                                 {8, std::to_string(600 * i)},
                                 {10, std::to_string(x)},
                                 {20, std::to_string(y)},
                                 {11, std::to_string(u)},
                                 {21, std::to_string(v)}});
        };
        line(r, 400, r, 100);
        line(0, 0, r, 100);
    }
    const Project project = made(dxfFile(entities, 4));
    REQUIRE(project.hull.stations.size() == 3);
    for (std::size_t i = 0; i < 3; ++i) {
        const Station& station = project.hull.stations[i];
        REQUIRE(station.points.size() == 1); // the chine: corners only
        CHECK(station.points[0].halfBreadth == Approx(radius[i]));
        CHECK(station.points[0].height == Approx(100));
        CHECK(station.keel->height == Approx(0).margin(1e-9));
    }
}

TEST_CASE("numbers of stations want their spacing; a listed end is unfolded; the base may be given") {
    std::string numbered = dxfBoat(4, 1);
    for (std::size_t i = 0; i < 3; ++i)
        numbered = replaced(numbered, "X-" + std::to_string(600 * i) + "MM", "ST-" + std::to_string(i));
    CHECK(refusedWith(numbered).find("spacing") != std::string::npos);
    checkQuarterCircles(made(numbered, {"spacing = 600 mm"}));
    CHECK(made(numbered, {"spacing = 600 mm", "mirror = 1200 mm"}).hull.stations.size() == 5);
    const Project based = made(dxfBoat(4, 1), {"base = 200", "half-siding = 10 mm", "drawn-to = outside"});
    CHECK(based.hull.stations[1].sheer.height == Approx(500));
    CHECK(based.hull.halfSiding == Approx(10));
    CHECK(based.hull.drawnTo == DrawnTo::Outside);
}

TEST_CASE("a wrong scale, a missing unit, stray and closed curves are told") {
    CHECK(refusedWith(dxfBoat(4, 1), {"beam = 900 mm"}).find("800 mm") != std::string::npos);
    CHECK(refusedWith(dxfBoat(0, 1)).find("beam") != std::string::npos);
    CHECK(refusedWith(dxfFile("", 4)).find("at least three") != std::string::npos);
    CHECK(refusedWith("<svg/>").find("at least three") != std::string::npos);
    CHECK(refusedWith("nothing of the kind").find("DXF") != std::string::npos);
    std::string crowd;
    for (int i = 0; i < 2001; ++i)
        crowd += dxfText({{0, "LINE"}, {8, "a"}, {10, "0"}, {20, "0"}, {11, "1"}, {21, "1"}});
    const auto crowded = tried(dxfFile(crowd, 4));
    REQUIRE_FALSE(crowded.has_value());
    CHECK(crowded.error().size() == 1); // it was not looked at further
    const std::string stray =
        dxfText({{0, "LINE"}, {8, "X-600MM"}, {10, "900"}, {20, "0"}, {11, "950"}, {21, "9"}});
    CHECK(refusedWith(replaced(dxfBoat(4, 1), "0\nENDSEC\n0\nEOF", stray + "0\nENDSEC\n0\nEOF"))
              .find("2 curves that do not meet") != std::string::npos);
    CHECK(refusedWith(replaced(dxfBoat(4, 1), "51\n360", "51\n270")).find("closed") != std::string::npos);
    const auto read = tried(svgBoat(1, 0, "width=\"500mm\" viewBox=\"0 0 500 500\""));
    REQUIRE(read.has_value());
    std::string notes;
    for (const std::string& note : read->notes)
        notes += note + "\n";
    CHECK(notes.find("1 text") != std::string::npos);
    CHECK(notes.find("800 mm (31.5 in) across") != std::string::npos);
    CHECK(notes.find("\"station_600mm\": 24 of 91 points") != std::string::npos);
}

TEST_CASE("cut and spoilt drawings never harm the reader") {
    constexpr unsigned seed = 20261125;
    INFO("seed " << seed);
    std::mt19937 random(seed);
    const std::vector<std::string> drawings{dxfBoat(4, 1),
                                            svgBoat(1, 0, "width=\"500mm\" viewBox=\"0 0 500 500\"")};
    for (int i = 0; i < 400; ++i) {
        std::string text = drawings[random() % drawings.size()];
        if (random() % 3 == 0)
            text.resize(random() % text.size());
        for (auto spoilt = random() % 6; spoilt > 0 && !text.empty(); --spoilt) {
            constexpr std::string_view signs = "\n<>/\"=-0189.eAMLXZ \x80";
            text[random() % text.size()] = signs[random() % signs.size()];
        }
        const auto read = tried(text);
        if (read)
            CHECK(parseProject(read->projectText, "trial.sheerlay").has_value());
        else
            CHECK_FALSE(read.error().empty());
    }
}

#include "core/project/finding.hpp"
#include "core/project/project_file.hpp"
#include "core/project/project_writer.hpp"
#include "core/project/wood.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/project_text.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <set>
#include <sstream>
#include <string>
#include <vector>

using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

const std::string reference = SHEERLAY_REFERENCE;
constexpr double exactly = 1e-9; // mm; the values below are single roundings of exact fractions

struct Row {
    std::string file;
    int line = 0;
    std::string key;
};

/// The table of a README: | file | line | key | what |
std::vector<Row> rowsOf(const std::string& readme) {
    std::vector<Row> rows;
    std::istringstream stream(fileText(readme));
    for (std::string line; std::getline(stream, line);) {
        std::vector<std::string> cells;
        std::istringstream parts(line);
        for (std::string cell; std::getline(parts, cell, '|');) {
            cell.erase(0, cell.find_first_not_of(' '));
            cell.erase(cell.find_last_not_of(' ') + 1);
            cells.push_back(cell);
        }
        if (cells.size() >= 4 && cells[1].ends_with(".sheerlay"))
            rows.push_back({cells[1], std::stoi(cells[2]), cells[3]});
    }
    return rows;
}

std::set<std::string> projectsIn(const std::string& folder) {
    std::set<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(folder))
        if (entry.path().extension() == ".sheerlay")
            names.insert(entry.path().filename().string());
    return names;
}

void requireMessages(const std::vector<FileMessage>& messages,
                     const std::vector<Row>& rows,
                     const std::string& file) {
    std::vector<Row> wanted;
    std::copy_if(rows.begin(), rows.end(), std::back_inserter(wanted), [&](const Row& row) {
        return row.file == file;
    });
    for (const FileMessage& message : messages)
        UNSCOPED_INFO(toText(message));
    REQUIRE(messages.size() == wanted.size());
    for (std::size_t i = 0; i < messages.size(); ++i) {
        CHECK(messages[i].line == wanted[i].line);
        CHECK(messages[i].key == wanted[i].key);
        CHECK_FALSE(messages[i].found.empty());
        CHECK_FALSE(messages[i].would.empty());
        CHECK(toText(messages[i]).find('\n') == std::string::npos);
    }
}

} // namespace

TEST_CASE("reference projects read without a word") {
    for (const char* name :
         {"formula_canoe", "formula_canoe_geodesic", "stephens_1889_as_printed", "stephens_1889_corrected"}) {
        INFO(name);
        const auto read = readProject(reference + "/" + name + ".sheerlay");
        REQUIRE(read.has_value());
        CHECK(read->warnings.empty());
    }
}

TEST_CASE("the formula canoe's cells come through as the table has them") {
    const auto read = readProject(reference + "/formula_canoe.sheerlay");
    REQUIRE(read.has_value());
    const Project& project = read->project;
    CHECK(project.name == "Formula canoe");
    CHECK(project.hull.drawnTo == DrawnTo::Moulds);
    CHECK(project.hull.roundedTo == 1.5875);
    CHECK(project.hull.profile.size() == 24);
    CHECK(project.planking.layOn == LayOn::Moulds);
    CHECK(project.planking.start.kind == StartLine::Kind::Sheer);
    CHECK(project.strips.coverWidth == 17.0);

    // The column value_mm_rounded of the CSV was computed in another language.
    std::istringstream csv(fileText(reference + "/formula_canoe_offsets.csv"));
    int cells = 0;
    for (std::string line; std::getline(csv, line);) {
        std::vector<std::string> cell;
        std::istringstream parts(line);
        for (std::string part; std::getline(parts, part, ',');)
            cell.push_back(part);
        if (line.starts_with("#") || cell.size() != 8 || cell[0] == "station" || cell[0] == "stem")
            continue;
        const double offset = std::stod(cell[1]);
        const double value = std::stod(cell[6]);
        for (const double side : {-1.0, 1.0}) {
            const auto& stations = project.hull.stations;
            const auto station = std::find_if(stations.begin(), stations.end(), [&](const Station& s) {
                return std::abs(s.x - (2438.4 + side * offset)) < exactly;
            });
            REQUIRE(station != stations.end());
            double found = -1.0;
            if (cell[4] == "keel") {
                found = station->keel->height;
            } else if (cell[4] == "sheer") {
                found = cell[3] == "height" ? station->sheer.height : station->sheer.halfBreadth;
            } else {
                const bool waterline = cell[4].starts_with("WL");
                const double where = 25.4 * std::stod(cell[4].substr(waterline ? 2 : 3));
                for (const TablePoint& point : station->points) {
                    if (waterline && point.kind == PointKind::Waterline &&
                        std::abs(point.height - where) < exactly)
                        found = point.halfBreadth;
                    if (!waterline && point.kind == PointKind::Buttock &&
                        std::abs(point.halfBreadth - where) < exactly)
                        found = point.height;
                }
            }
            INFO(line);
            REQUIRE_THAT(found, WithinAbs(value, exactly));
            ++cells;
        }
    }
    CHECK(cells == 2 * 117); // 129 rows, 12 of them on the stem
}

TEST_CASE("every bad file is refused with its lines and keys") {
    const std::string folder = reference + "/../cli/bad/";
    const std::vector<Row> rows = rowsOf(folder + "README.md");
    const std::set<std::string> files = projectsIn(folder);
    REQUIRE(files.size() >= 20);
    for (const Row& row : rows)
        CHECK(files.count(row.file) == 1);
    for (const std::string& file : files) {
        INFO(file);
        const auto read = readProject(folder + file);
        REQUIRE_FALSE(read.has_value());
        requireMessages(read.error(), rows, file);
    }
}

TEST_CASE("every odd file is read with its warnings") {
    const std::string folder = reference + "/../cli/odd/";
    const std::vector<Row> rows = rowsOf(folder + "README.md");
    const std::set<std::string> files = projectsIn(folder);
    REQUIRE(files.size() >= 8);
    for (const std::string& file : files) {
        INFO(file);
        const auto read = readProject(folder + file);
        REQUIRE(read.has_value());
        requireMessages(read->warnings, rows, file);
    }
}

TEST_CASE("what stays unsaid takes the contract's defaults") {
    std::string text = smallProject();
    text = text.substr(0, text.find("[planking]"));
    text = replaced(text, "cover-width = 15.875\n", "");
    text = replaced(text, "wood = \"western-redcedar\"\n", "");
    text = replaced(text, "drawn-to = \"moulds\"\n", "");
    text = replaced(text, "name = \"Trial hull\"\n", "");
    const Project project = parsed(text);
    CHECK(project.name == "trial"); // the file's own name
    CHECK(project.planking == Planking{});
    CHECK(project.planking.layOn == LayOn::MidThickness);
    CHECK(project.strips.wood == "western-redcedar");
    CHECK_THAT(project.strips.coverWidth, WithinAbs(19.05 - 25.4 / 8, exactly));
    CHECK(project.hull.drawnTo == DrawnTo::Moulds);
    CHECK(project.hull.halfSiding == 0.0);
}

TEST_CASE("the table's last digit is taken from what is written") {
    const std::string text = smallProject();
    CHECK(parsed(text).hull.roundedTo == 3.175); // eighths only
    CHECK(parsed(replaced(text, "\"0-11-2\"", "\"0-11-2+\"")).hull.roundedTo == 1.5875);
    CHECK(parsed(replaced(text, "drawn-to = \"moulds\"", "rounded-to = \"1/4 in\"")).hull.roundedTo == 6.35);
    // Waterline heights and station places are set, not lifted: how finely they are written says nothing.
    CHECK(parsed(replaced(text, "height = \"0-8-0\"", "height = \"0-8-0+\"")).hull.roundedTo == 3.175);
    CHECK_THAT(parsed(replaced(text, "\"0-11-2\"", "285.7")).hull.roundedTo, WithinAbs(0.1, exactly));
    CHECK_THAT(parsed(replaced(text, "\"0-11-2\"", "285.7512")).hull.roundedTo, WithinAbs(0.1, exactly));
    CHECK_THAT(parsed(replaced(text, "\"0-11-2\"", "285")).hull.roundedTo, WithinAbs(1.0, exactly));
}

TEST_CASE("how closely the loft follows the table may be said, within what its rounding accounts for") {
    const std::string text = smallProject();
    const auto saying = [&](const std::string& fairing) {
        return replaced(text, "drawn-to = \"moulds\"", "fairing = " + fairing);
    };
    CHECK(parsed(text).hull.fairing == usualFairing);
    CHECK(parsed(saying("0.55")).hull.fairing == 0.55);
    CHECK(parsed(writeProject(parsed(saying("0.55")))).hull.fairing == 0.55);
    for (const char* outside : {"0.49", "1.01", "\"fair\""}) {
        const auto read = parseProject(saying(outside), "trial.sheerlay");
        REQUIRE_FALSE(read.has_value());
        CHECK(toText(read.error().front()).find("0.5 to 1") != std::string::npos);
        CHECK(toText(read.error().front()).find("hull.fairing") != std::string::npos);
    }
}

TEST_CASE("plain numbers are in the file's units and are quoted as written") {
    std::string text = replaced(smallProject(), "units = \"mm\"", "units = \"in\"");
    text = replaced(text,
                    "thickness = 6.35\nwidth = 19.05\ncover-width = 15.875",
                    "thickness = 0.25\nwidth = \"19.05 mm\"\ncover-width = \"5/8\"");
    text = replaced(text, "x = \"3-0-0\"", "x = 36");
    text = replaced(text, "half-breadth = \"0-11-0\"", "half-breadth = 11.00");
    const Project project = parsed(text);
    CHECK(project.units == Units::Inches);
    CHECK(project.strips.thickness == 6.35);
    CHECK(project.strips.width == 19.05);
    CHECK(project.strips.coverWidth == 15.875);
    const Station& station = project.hull.stations[1];
    CHECK_THAT(station.x, WithinAbs(914.4, exactly));
    CHECK(station.printedX == "36");
    CHECK_THAT(station.sheer.halfBreadth, WithinAbs(279.4, exactly));
    CHECK(station.sheer.printedHalfBreadth == "11.00");
    CHECK(station.sheer.printedHeight == "1-0-0");
    CHECK(station.line == 17);
    CHECK(station.sheer.line == 19);
    CHECK(station.points[1].line == 23);
}

TEST_CASE("every word of the planking table is understood") {
    const std::string text = smallProject();
    const std::string start = "start = { line = \"sheer\" }";
    const auto with = [&](const std::string& line) { return parsed(replaced(text, start, line)).planking; };
    CHECK(with("start = { line = \"geodesic\", girth = 0 }").start ==
          StartLine{StartLine::Kind::Geodesic, 0.0, {}});
    CHECK(with("start = { line = \"easiest\" }").start.kind == StartLine::Kind::Easiest);
    CHECK(with("start = { line = \"bent\", girth = \"10 in\", edge-bend = [0.069, 0.112, -0.145] }").start ==
          StartLine{StartLine::Kind::Bent, 254.0, 0.0, {0.069, 0.112, -0.145}});
    CHECK(with("taper = \"ends\"").taper == Taper::Ends);
    CHECK(with("taper = \"anywhere\"").taper == Taper::Anywhere);
    CHECK(with("ends = { bow = \"mitre\", stern = \"stem\" }").bowEnds == EndStyle::Mitre);
    CHECK(with("ends = { bow = \"mitre\", stern = \"stem\" }").sternEnds == EndStyle::Stem);
    CHECK(with("closing = { method = \"run-over\" }").closing == ClosingMethod::RunOver);
    CHECK(with("closing = { method = \"herringbone\" }").closing == ClosingMethod::Herringbone);
    CHECK(with("closing = { method = \"split-bottom\" }").closing == ClosingMethod::SplitBottom);
    const Planking accents = with("accents = [{ girth = 60 }, { height = -20.5 }]");
    CHECK(accents.accents == std::vector<Accent>{{Accent::By::Girth, 60}, {Accent::By::Height, -20.5}});
    const Planking closing = with("closing = { shutter = [0.6, 1] }");
    REQUIRE(closing.shutter.has_value());
    CHECK(*closing.shutter == std::array<double, 2>{0.6, 1.0});
    CHECK(closing.closing == ClosingMethod::BothSides);
    const Planking limits = with("limits = { edge-bend-radius = \"3 m\", narrowest = 11 }");
    CHECK(limits.edgeBendRadius == 3000.0);
    CHECK(limits.narrowest == 11.0);
    CHECK(parsed(replaced(text, "\"mid-thickness\"", "\"outside\"")).planking.layOn == LayOn::Outside);
    CHECK(parsed(replaced(text, "\"moulds\"", "\"inside\"")).hull.drawnTo == DrawnTo::Moulds);
    CHECK(parsed(replaced(text, "\"moulds\"", "\"outside\"")).hull.drawnTo == DrawnTo::Outside);
}

TEST_CASE("profile and transom are read, and a profile under a station stands for its keel") {
    std::string text = replaced(
        smallProject(),
        "[[hull.station]]",
        "[hull.profile]\nhalf-siding = \"1/4 in\"\n"
        "points = [[0, 355.6], [100, \"0-2-0\", \"1/8 in\"], [900, 0], [1700, 40], [1800, 350]]\n\n"
        "[[hull.transom]]\nend = \"stern\"\nx-at-sheer = 1790\nx-at-keel = \"5-7-0\"\n\n[[hull.station]]");
    text = replaced(text, "keel = { height = \"0-0-0\" }\n", "");
    const Project project = parsed(text);
    CHECK(project.hull.halfSiding == 6.35);
    REQUIRE(project.hull.profile.size() == 5);
    CHECK(project.hull.profile[1] == ProfilePoint{100.0, 50.8, 3.175, 10});
    CHECK_FALSE(project.hull.profile[2].halfSiding.has_value());
    CHECK_FALSE(project.hull.stations[1].keel.has_value());
    REQUIRE(project.hull.transoms.size() == 1);
    CHECK(project.hull.transoms[0] == Transom{End::Stern, 1790.0, 1701.8, 12});
}

TEST_CASE("two stem heads alone do not say where the keel is amidships") {
    std::string text =
        replaced(smallProject(),
                 "[[hull.station]]",
                 "[hull.profile]\npoints = [[0, \"1-4-0\"], [\"6-0-0\", \"1-4-0\"]]\n\n[[hull.station]]");
    text = replaced(text, "keel = { height = \"0-0-0\" }\n", "");
    const auto read = parseProject(text, "trial.sheerlay");
    REQUIRE_FALSE(read.has_value());
    REQUIRE(read.error().size() == 1);
    CHECK(read.error()[0].key == "hull.station[2].keel");
}

TEST_CASE("a profile may give the half siding alone") {
    const Project project = parsed(replaced(
        smallProject(), "[[hull.station]]", "[hull.profile]\nhalf-siding = \"1/8 in\"\n\n[[hull.station]]"));
    CHECK(project.hull.halfSiding == 3.175);
    CHECK(project.hull.profile.empty());
}

TEST_CASE("a station on the stem needs no keel height") {
    // Half-breadth 1/8 in: no more than the half siding and one digit of the table.
    std::string text = replaced(smallProject(),
                                "[[hull.station]]",
                                "[[hull.station]]\nx = 0\nsheer = { height = \"1-4-0\", half-breadth = "
                                "\"0-0-1\" }\n\n[[hull.station]]");
    CHECK_FALSE(parsed(text).hull.stations.front().keel.has_value());
    text = replaced(text, "\"0-0-1\"", "\"0-0-2\"");
    const auto read = parseProject(text, "trial.sheerlay");
    REQUIRE_FALSE(read.has_value());
    CHECK(read.error().front().key == "hull.station[1].keel");
}

TEST_CASE("a length without quotes is named as such, wherever it stands in its line") {
    for (const std::string bare : {"0-11-0", "11 in", "3/8 in", "1' 2\""}) {
        const auto read =
            parseProject(replaced(smallProject(), "half-breadth = \"0-11-0\"", "half-breadth = " + bare),
                         "trial.sheerlay");
        INFO(bare);
        REQUIRE_FALSE(read.has_value());
        REQUIRE(read.error().size() == 1);
        CHECK(read.error().front().line == 19);
        CHECK(read.error().front().found.find("without quotes") != std::string::npos);
    }
}

TEST_CASE("missing units do not bring a second message about every plain number") {
    std::string text = replaced(smallProject(), "units = \"mm\"\n", "");
    text = replaced(text,
                    "thickness = 6.35\nwidth = 19.05\ncover-width = 15.875",
                    "thickness = 0.25\nwidth = 0.75\ncover-width = 0.625");
    const auto read = parseProject(text, "trial.sheerlay");
    REQUIRE_FALSE(read.has_value());
    REQUIRE(read.error().size() == 1);
    CHECK(read.error().front().key == "units");
}

TEST_CASE("a file that can't be read is one message") {
    for (const std::string& path : {reference + "/no_such_file.sheerlay", reference}) {
        const auto read = readProject(path);
        REQUIRE_FALSE(read.has_value());
        REQUIRE(read.error().size() == 1);
        CHECK(read.error()[0].file == path);
        CHECK(read.error()[0].line == 0);
    }
}

TEST_CASE("messages and findings keep their form") {
    CHECK(toText(FileMessage{"a.sheerlay", 7, "hull.station[2].x", "nan", "a length"}) ==
          "a.sheerlay:7: hull.station[2].x: nan; a length");
    CHECK(toText(Finding{Level::Caution, "edge-bend", "S07", 2319.6, "It bends hard."}) ==
          "caution edge-bend S07 x=2320: It bends hard.");
    CHECK(toText(Finding{Level::Stop, "no-keel", std::nullopt, std::nullopt, "There is none."}) ==
          "stop no-keel: There is none.");
    CHECK(std::string(toText(Level::Note)) == "note");
}

TEST_CASE("the woods agree with the handbook's inch-pound table") {
    constexpr double psi = 6.894757e-3; // MPa
    REQUIRE(allWoods().size() == 13);
    std::set<std::string_view> ids;
    for (const Wood& wood : allWoods()) {
        INFO(wood.id);
        ids.insert(wood.id);
        CHECK(findWood(wood.id) == &wood);
        CHECK_THAT(wood.alongModulus, WithinAbs(1.10 * wood.bendingModulus, 0.011)); // both rounded to 0.01
        CHECK(wood.shearModulus > 0.03 * 1000 * wood.alongModulus);
        CHECK(wood.shearModulus < 0.25 * 1000 * wood.alongModulus);
        CHECK(woodNames().find(wood.id) != std::string::npos);
    }
    CHECK(ids.size() == allWoods().size());
    // FPL-GTR-282 Table 5-3b at 12 %: western redcedar 7,500 psi, 1.11 Mpsi, 990 psi, 0.32; white ash
    // 15,400, 1.74, 1,910, 0.60.
    const Wood* cedar = findWood("western-redcedar");
    REQUIRE(cedar != nullptr);
    CHECK_THAT(cedar->bendingStrength, WithinAbs(7500 * psi, 0.06));
    CHECK_THAT(cedar->bendingModulus, WithinAbs(1.11e3 * psi, 0.006));
    CHECK_THAT(cedar->shearStrength, WithinAbs(990 * psi, 0.006));
    CHECK_THAT(cedar->density, WithinAbs(1000 * 0.32 * 1.12, 0.6));
    const Wood* ash = findWood("white-ash");
    REQUIRE(ash != nullptr);
    CHECK_THAT(ash->bendingStrength, WithinAbs(15400 * psi, 0.06));
    CHECK_THAT(ash->bendingModulus, WithinAbs(1.74e3 * psi, 0.006));
    CHECK(findWood("western_redcedar") == nullptr);
    CHECK(findWood("") == nullptr);
}

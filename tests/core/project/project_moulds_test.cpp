#include "core/project/project_file.hpp"
#include "core/project/project_writer.hpp"
#include "tests/support/catch.hpp"

#include <string>

using namespace sheerlay::core;

namespace {

std::string withMoulds(const std::string& lines) {
    return "format = 1\nunits = \"in\"\n[hull]\ndrawn-to = \"moulds\"\n"
           "[[hull.station]]\nx = 0\nsheer = { height = 12, half-breadth = 5 }\nkeel = { height = 1 }\n"
           "waterlines = [{ height = 6, half-breadth = 4 }, { height = 3, half-breadth = 2 }]\n"
           "[[hull.station]]\nx = 36\nsheer = { height = 12, half-breadth = 15 }\nkeel = { height = 0 }\n"
           "waterlines = [{ height = 6, half-breadth = 14 }, { height = 3, half-breadth = 11 }]\n"
           "[[hull.station]]\nx = 72\nsheer = { height = 12, half-breadth = 5 }\nkeel = { height = 1 }\n"
           "waterlines = [{ height = 6, half-breadth = 4 }, { height = 3, half-breadth = 2 }]\n"
           "[strips]\nthickness = \"1/4 in\"\nwidth = \"3/4 in\"\n[moulds]\n" +
           lines;
}

} // namespace

TEST_CASE("what the builder says of moulds is read in the file's units and written again") {
    const auto read = parseProject(withMoulds("thickness = 0.5\nspacing = \"1-0-0\"\nshape = \"whole\"\n"
                                              "strongback = { width = 10, clear = \"3 in\" }\n"
                                              "holes = { pitch = 4, inset = 1 }\n"),
                                   "boat.sheerlay");
    REQUIRE(read);
    CHECK(read->warnings.empty());
    const MouldChoices& moulds = read->project.moulds;
    CHECK(moulds.thickness == Approx(12.7));
    REQUIRE(moulds.spacing);
    CHECK(*moulds.spacing == Approx(304.8));
    CHECK(moulds.shape == MouldChoices::Shape::Whole);
    CHECK(moulds.strongback.width == Approx(254));
    CHECK(moulds.strongback.clear == Approx(76.2));
    REQUIRE(moulds.holes);
    CHECK(moulds.holes->pitch == Approx(101.6));
    const auto again = parseProject(writeProject(read->project), "boat.sheerlay");
    REQUIRE(again);
    CHECK(again->project.moulds.strongback.height == Approx(moulds.strongback.height));
    CHECK(*again->project.moulds.spacing == Approx(*moulds.spacing));
    CHECK(again->project.moulds.holes->diameter == Approx(moulds.holes->diameter));
    CHECK(again->project.moulds.shape == moulds.shape);
}

TEST_CASE("stations of moulds stand in the table's x and rise") {
    const auto read = parseProject(withMoulds("stations = [\"1-0-0\", 30]\n"), "boat.sheerlay");
    REQUIRE(read);
    REQUIRE(read->project.moulds.stations.size() == 2);
    CHECK(read->project.moulds.stations[1] == Approx(762));
    const auto again = parseProject(writeProject(read->project), "boat.sheerlay");
    REQUIRE(again);
    CHECK(again->project.moulds.stations[0] == Approx(304.8));
}

TEST_CASE("sheets that moulds are sawn from are read, the longer side as length, and written again") {
    const auto plain = parseProject(withMoulds("shape = \"half\"\n"), "boat.sheerlay");
    REQUIRE(plain);
    CHECK(plain->project.moulds.sheets == std::vector<SheetSize>{{2438.4, 1219.2, {}}});
    CHECK(plain->project.moulds.kerf == Approx(9.525)); // 3/8 in, which reads well in the file's units
    std::string metric = withMoulds("");
    metric.replace(metric.find("\"in\""), 4, "\"mm\"");
    const auto millimetres = parseProject(metric, "boat.sheerlay");
    REQUIRE(millimetres);
    CHECK(millimetres->project.moulds.kerf == 10.0);
    CHECK(millimetres->project.moulds.strongback == Strongback{200, 150, 100});
    CHECK(millimetres->project.moulds.sheets == std::vector<SheetSize>{{2440, 1220, {}}});
    const auto inches = parseProject(withMoulds(""), "boat.sheerlay");
    REQUIRE(inches);
    for (const Project& usual : {millimetres->project, inches->project}) // nothing is said of it then
        CHECK(writeProject(usual).find("[moulds]") == std::string::npos);
    const auto read = parseProject(withMoulds("kerf = \"1/8 in\"\n[[moulds.sheet]]\nlength = \"2 ft\"\n"
                                              "width = \"4 ft\"\ncount = 2\n[[moulds.sheet]]\n"
                                              "length = \"5 ft\"\nwidth = \"5 ft\"\n"),
                                   "boat.sheerlay");
    REQUIRE(read);
    CHECK(read->warnings.empty());
    const MouldChoices& moulds = read->project.moulds;
    CHECK(moulds.kerf == Approx(3.175));
    REQUIRE(moulds.sheets.size() == 2);
    CHECK(moulds.sheets[0].length == Approx(1219.2));
    CHECK(moulds.sheets[0].width == Approx(609.6));
    CHECK(moulds.sheets[0].count == 2);
    CHECK(moulds.sheets[1].width == Approx(1524));
    CHECK_FALSE(moulds.sheets[1].count);
    const auto again = parseProject(writeProject(read->project), "boat.sheerlay");
    REQUIRE(again);
    CHECK(again->project.moulds.kerf == Approx(moulds.kerf));
    REQUIRE(again->project.moulds.sheets.size() == 2);
    for (std::size_t i = 0; i < 2; ++i) {
        CHECK(again->project.moulds.sheets[i].length == Approx(moulds.sheets[i].length));
        CHECK(again->project.moulds.sheets[i].width == Approx(moulds.sheets[i].width));
        CHECK(again->project.moulds.sheets[i].count == moulds.sheets[i].count);
    }
}

TEST_CASE("moulds that can't be sawn or placed are refused by key") {
    for (const auto& [lines, key] :
         {std::pair{"thickness = 19\n", "moulds.thickness"},
          std::pair{"stations = [30, 20]\n", "moulds.stations[2]"},
          std::pair{"stations = []\n", "moulds.stations"},
          std::pair{"spacing = 12\nstations = [30]\n", "moulds.stations"},
          std::pair{"shape = \"quarter\"\n", "moulds.shape"},
          std::pair{"strongback = { width = -3 }\n", "moulds.strongback.width"},
          std::pair{"holes = { pitch = 0 }\n", "moulds.holes.pitch"},
          std::pair{"kerf = 0\n", "moulds.kerf"},
          std::pair{"sheet = []\n", "moulds.sheet"},
          std::pair{"sheet = 8\n", "moulds.sheet"},
          std::pair{"[[moulds.sheet]]\nlength = 96\n", "moulds.sheet[1].width"},
          std::pair{"[[moulds.sheet]]\nlength = 96\nwidth = 48\ncount = 0.5\n", "moulds.sheet[1].count"},
          std::pair{"[[moulds.sheet]]\nlength = 1\nwidth = 48\n", "moulds.sheet[1].length"}}) {
        const auto read = parseProject(withMoulds(lines), "boat.sheerlay");
        INFO(lines);
        REQUIRE_FALSE(read);
        CHECK(read.error().front().key == key);
        CHECK(read.error().front().line > 0);
    }
    const auto odd = parseProject(withMoulds("colour = \"red\"\n"), "boat.sheerlay");
    REQUIRE(odd);
    CHECK(odd->warnings.size() == 1);
}

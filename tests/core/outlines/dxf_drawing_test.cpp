#include "core/outlines/dxf_drawing.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/dxf_text.hpp"

#include <cmath>

using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

Drawing drawn(const std::string& text) {
    const auto drawing = readDxf(text, "trial.dxf");
    REQUIRE(drawing.has_value());
    return *drawing;
}

DrawnCurve only(const DxfPairs& entity) {
    const Drawing drawing = drawn(dxfFile(dxfText(entity)));
    REQUIRE(drawing.curves.size() == 1);
    return drawing.curves.front();
}

} // namespace

TEST_CASE("lines and layers") {
    const DrawnCurve line = only({{0, "LINE"}, {8, "X-300"}, {10, "1"}, {20, "2"}, {11, "3.5"}, {21, "-4"}});
    CHECK(line.groups == std::vector<std::string>{"X-300"});
    CHECK(line.points == std::vector<DrawnPoint>{{1, 2}, {3.5, -4}});
}

TEST_CASE("arcs run counter-clockwise from their first angle to their second") {
    const DrawnCurve arc = only({{0, "ARC"}, {10, "5"}, {20, "6"}, {40, "2"}, {50, "270"}, {51, "0"}});
    CHECK(arc.points.front().y == Approx(4));
    CHECK(arc.points.back().x == Approx(7));
    for (const DrawnPoint& p : arc.points) {
        CHECK(std::hypot(p.x - 5, p.y - 6) == Approx(2));
        CHECK(p.x >= 5 - 1e-9);
        CHECK(p.y <= 6 + 1e-9);
    }
}

TEST_CASE("a bulge of tan of a quarter of the angle makes that arc, in both kinds of polyline") {
    const std::string eighth = std::to_string(std::tan(std::acos(-1.0) / 8)); // a quarter circle
    const DrawnCurve light =
        only({{0, "LWPOLYLINE"}, {70, "0"}, {10, "1"}, {20, "0"}, {42, eighth}, {10, "0"}, {20, "1"}});
    const DrawnCurve heavy = [&] {
        const Drawing drawing = drawn(dxfFile(dxfText({{0, "POLYLINE"},
                                                       {8, "a"},
                                                       {70, "0"},
                                                       {0, "VERTEX"},
                                                       {10, "1"},
                                                       {20, "0"},
                                                       {42, eighth},
                                                       {0, "VERTEX"},
                                                       {10, "0"},
                                                       {20, "1"},
                                                       {0, "SEQEND"}})));
        REQUIRE(drawing.curves.size() == 1);
        return drawing.curves.front();
    }();
    CHECK(heavy.groups == std::vector<std::string>{"a"});
    CHECK(light.points.size() == heavy.points.size());
    CHECK(light.points.size() > 80);
    for (const DrawnPoint& p : light.points) {
        CHECK(std::hypot(p.x, p.y) == Approx(1).epsilon(1e-5)); // the bulge is written with six decimals
        CHECK(p.x >= -1e-9);
    }
    const DrawnCurve clockwise =
        only({{0, "LWPOLYLINE"}, {10, "0"}, {20, "1"}, {42, "-1"}, {10, "0"}, {20, "-1"}});
    for (const DrawnPoint& p : clockwise.points) {
        CHECK(std::hypot(p.x, p.y) == Approx(1));
        CHECK(p.x >= -1e-9); // over the right
    }
    const DrawnCurve closed = only(
        {{0, "LWPOLYLINE"}, {70, "1"}, {10, "0"}, {20, "0"}, {10, "1"}, {20, "0"}, {10, "1"}, {20, "1"}});
    CHECK(closed.points.size() == 4);
    CHECK(closed.points.back() == closed.points.front());
}

TEST_CASE("splines by their poles, or by the points they were drawn through") {
    const DrawnCurve poles = only({{0, "SPLINE"},
                                   {71, "2"},
                                   {40, "0"},
                                   {40, "0"},
                                   {40, "0"},
                                   {40, "1"},
                                   {40, "1"},
                                   {40, "1"},
                                   {10, "0"},
                                   {20, "0"},
                                   {10, "0.5"},
                                   {20, "0"},
                                   {10, "1"},
                                   {20, "1"}});
    for (const DrawnPoint& p : poles.points)
        CHECK(p.y == Approx(p.x * p.x).margin(1e-12));
    const DrawnCurve through = only({{0, "SPLINE"}, {71, "3"}, {11, "0"}, {21, "0"}, {11, "2"}, {21, "4"}});
    CHECK(through.points == std::vector<DrawnPoint>{{0, 0}, {2, 4}});
}

TEST_CASE("the unit is the header's, and what is no curve is counted") {
    const std::string text =
        dxfText({{0, "TEXT"}, {1, "hello"}, {0, "TEXT"}, {0, "INSERT"}, {0, "SPLINE"}, {71, "3"}});
    const Drawing inches = drawn(dxfFile(text, 1));
    CHECK(inches.millimetres == 25.4);
    CHECK(inches.curves.empty());
    CHECK(inches.leftOut == std::vector<std::string>{"1 INSERT", "1 SPLINE", "2 TEXT"});
    CHECK(drawn(dxfFile(text, 4)).millimetres == 1.0);
    CHECK(drawn(dxfFile(text, 6)).millimetres == 1000.0);
    CHECK_FALSE(drawn(dxfFile(text, 13)).millimetres.has_value());
    CHECK_FALSE(drawn(dxfFile(text)).millimetres.has_value());
}

namespace {

const DxfPairs aLine = {{0, "LINE"}, {8, "0"}, {10, "1"}, {20, "2"}, {11, "3"}, {21, "2"}};

std::string blockOf(const std::string& name, const std::string& entities, const DxfPairs& base = {}) {
    return dxfText({{0, "BLOCK"}, {8, "0"}, {2, name}}) + dxfText(base) + entities + dxfText({{0, "ENDBLK"}});
}

std::string withBlocks(const std::string& blocks, const std::string& entities) {
    return dxfText({{0, "SECTION"}, {2, "BLOCKS"}}) + blocks + dxfText({{0, "ENDSEC"}}) + dxfFile(entities);
}

void checkNear(const DrawnPoint& p, double x, double y) {
    CHECK(p.x == Approx(x).margin(1e-12));
    CHECK(p.y == Approx(y).margin(1e-12));
}

} // namespace

TEST_CASE("a block that is not inserted is not drawn") {
    CHECK(drawn(withBlocks(blockOf("a", dxfText(aLine)), dxfText(aLine))).curves.size() == 1);
}

TEST_CASE("a block is drawn where it is inserted: its base there, made larger, then turned") {
    const std::string block = blockOf("a", dxfText(aLine), {{10, "1"}, {20, "2"}});
    const Drawing drawing = drawn(withBlocks(
        block,
        dxfText({{0, "INSERT"}, {8, "X-300"}, {2, "a"}, {10, "10"}, {20, "20"}, {41, "2"}, {50, "90"}})));
    REQUIRE(drawing.curves.size() == 1);
    checkNear(drawing.curves[0].points[0], 10, 20);
    checkNear(drawing.curves[0].points[1], 10, 24); // 2 to the right, doubled, turned to upward
    CHECK(drawing.curves[0].groups == std::vector<std::string>{"a", "X-300"});
    CHECK(drawing.leftOut.empty());
}

TEST_CASE("mirrored blocks: a scale below 0, and one seen from behind") {
    const std::string block = blockOf("a", dxfText(aLine));
    const Drawing drawing = drawn(withBlocks(block,
                                             dxfText({{0, "INSERT"},
                                                      {2, "a"},
                                                      {10, "5"},
                                                      {41, "-1"},
                                                      {0, "INSERT"},
                                                      {2, "a"},
                                                      {10, "5"},
                                                      {230, "-1"}})));
    REQUIRE(drawing.curves.size() == 2);
    checkNear(drawing.curves[0].points[1], 2, 2);
    checkNear(drawing.curves[1].points[1], -8, 2);
}

TEST_CASE("rows and columns of a block, and blocks in blocks") {
    const std::string inner = blockOf("inner", dxfText(aLine));
    const std::string outer = blockOf(
        "outer",
        dxfText({{0, "INSERT"}, {8, "X-1"}, {2, "inner"}, {70, "2"}, {71, "3"}, {44, "10"}, {45, "100"}}));
    const Drawing drawing =
        drawn(withBlocks(inner + outer, dxfText({{0, "INSERT"}, {8, "b"}, {2, "outer"}, {10, "1000"}})));
    REQUIRE(drawing.curves.size() == 6);
    checkNear(drawing.curves[0].points[0], 1001, 2);
    checkNear(drawing.curves[1].points[0], 1011, 2);
    checkNear(drawing.curves[5].points[0], 1011, 202);
    CHECK(drawing.curves[0].groups == std::vector<std::string>{"inner", "X-1", "outer", "b"});
}

TEST_CASE("blocks without end are refused") {
    const std::string own = blockOf("a", dxfText({{0, "INSERT"}, {8, "0"}, {2, "a"}}));
    const auto itself = readDxf(withBlocks(own, dxfText({{0, "INSERT"}, {8, "s"}, {2, "a"}})), "trial.dxf");
    REQUIRE_FALSE(itself.has_value());
    CHECK(toText(itself.error()).find("more than 12 deep") != std::string::npos);
    const auto many = readDxf(
        withBlocks(
            blockOf("a", dxfText(aLine)),
            dxfText({{0, "INSERT"}, {8, "s"}, {2, "a"}, {70, "1000"}, {71, "1000"}, {44, "1"}, {45, "1"}})),
        "trial.dxf");
    REQUIRE_FALSE(many.has_value());
    CHECK(toText(many.error()).find("more than 20000 insertions") != std::string::npos);
}

TEST_CASE("layers that are off or frozen are left out, and counted") {
    const auto layer = [](const char* name, const char* colour, const char* flags) {
        return dxfText({{0, "LAYER"}, {2, name}, {70, flags}, {62, colour}});
    };
    std::string lines;
    for (const char* name : {"seen", "off", "frozen", "locked", "in no table"})
        lines += dxfText({{0, "LINE"}, {8, name}, {10, "1"}, {20, "2"}, {11, "3"}, {21, "4"}});
    const Drawing drawing = drawn(dxfText({{0, "SECTION"}, {2, "TABLES"}}) + layer("seen", "7", "0") +
                                  layer("off", "-7", "0") + layer("frozen", "7", "1") +
                                  layer("locked", "7", "4") + dxfText({{0, "ENDSEC"}}) + dxfFile(lines));
    REQUIRE(drawing.curves.size() == 3);
    CHECK(drawing.curves[1].groups == std::vector<std::string>{"locked"});
    CHECK(drawing.leftOut == std::vector<std::string>{"2 hidden"});
}

TEST_CASE("what is no flat DXF text is refused") {
    CHECK_FALSE(readDxf("hello\nworld\n", "trial.dxf").has_value());
    CHECK_FALSE(readDxf(std::string("0\nSEC\0TION", 9), "trial.dxf").has_value());
    const auto solid = readDxf(
        dxfFile(dxfText(
            {{0, "LINE"}, {8, "bow"}, {10, "1"}, {20, "2"}, {30, "0"}, {11, "3"}, {21, "4"}, {31, "5"}})),
        "trial.dxf");
    REQUIRE_FALSE(solid.has_value());
    CHECK(toText(solid.error()).find("leaves the plane") != std::string::npos);
}

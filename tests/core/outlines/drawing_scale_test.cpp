#include "core/outlines/drawing_scale.hpp"
#include "tests/support/catch.hpp"

using namespace sheerlay::core;

namespace {

TableCorrections said(const std::vector<std::string>& takes) {
    const auto read = readCorrections(takes);
    REQUIRE(read.has_value());
    return *read;
}

} // namespace

TEST_CASE("the builder's unit wins over the file's, the file's over a guess") {
    CHECK(drawingScale(1.0, 800, {})->millimetres == 1.0);
    CHECK_FALSE(drawingScale(1.0, 800, {})->inches);
    const auto inches = drawingScale(1.0, 33, said({"units = in"}));
    CHECK(inches->millimetres == 25.4);
    CHECK(inches->inches);
}

TEST_CASE("a beam alone tells the unit") {
    CHECK(drawingScale({}, 838, said({"beam = 33 in"}))->millimetres == 1.0);
    CHECK(drawingScale({}, 33, said({"beam = 33 in"}))->millimetres == 25.4);
    CHECK(drawingScale({}, 83.8, said({"beam = 838 mm"}))->millimetres == 10.0);
    CHECK(drawingScale({}, 3168, said({"beam = 33 in"}))->millimetres == Approx(25.4 / 96));
    CHECK(drawingScale({}, 2376, said({"beam = 33 in"}))->millimetres == Approx(25.4 / 72));
}

TEST_CASE("a beam that is said is checked to two percent") {
    CHECK(drawingScale(1.0, 850, said({"beam = 838 mm"})).has_value());
    const auto wrong = drawingScale(1.0, 33, said({"beam = 33 in"}));
    REQUIRE_FALSE(wrong.has_value());
    CHECK(wrong.error().found.find("33 mm") != std::string::npos);
    CHECK(wrong.error().found.find("838 mm") != std::string::npos);
    const auto small = drawingScale({}, 419, said({"beam = 838 mm"})); // half size: no unit makes it right
    REQUIRE_FALSE(small.has_value());
    CHECK(small.error().would.find("2.0000 mm") != std::string::npos);
}

TEST_CASE("nothing said is asked for, and nonsense refused") {
    CHECK(drawingScale({}, 800, {}).error().would.find("beam") != std::string::npos);
    CHECK_FALSE(drawingScale(1.0, 800, said({"beam = -3 mm"})).has_value());
    CHECK_FALSE(drawingScale(1.0, 800, said({"beam = broad"})).has_value());
}

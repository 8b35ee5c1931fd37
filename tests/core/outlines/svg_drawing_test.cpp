#include "core/outlines/svg_drawing.hpp"
#include "tests/support/catch.hpp"

using namespace sheerlay::core;

namespace {

Drawing drawn(const std::string& inner, const std::string& attributes = "") {
    const auto drawing = readSvg(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" " + attributes + ">" + inner + "</svg>", "trial.svg");
    REQUIRE(drawing.has_value());
    return *drawing;
}

/// Where the transform takes the point (1, 2), y turned up.
DrawnPoint moved(const std::string& transform) {
    const Drawing drawing =
        drawn("<g transform=\"" + transform + "\"><line x1=\"1\" y1=\"2\" x2=\"9\" y2=\"9\"/></g>");
    REQUIRE(drawing.curves.size() == 1);
    return drawing.curves.front().points.front();
}

void checkAt(const DrawnPoint& p, double x, double y) {
    CHECK(p.x == Approx(x).margin(1e-12));
    CHECK(p.y == Approx(y).margin(1e-12));
}

} // namespace

TEST_CASE("transforms move, turn and stretch as SVG says") {
    checkAt(moved(""), 1, -2);
    checkAt(moved("translate(10,20)"), 11, -22);
    checkAt(moved("translate(10)"), 11, -2);
    checkAt(moved("scale(2 3)"), 2, -6);
    checkAt(moved("scale(2)"), 2, -4);
    checkAt(moved("rotate(90)"), -2, -1);     // clockwise on the screen
    checkAt(moved("rotate(180 1 2)"), 1, -2); // about itself
    checkAt(moved("skewX(45)"), 3, -2);
    checkAt(moved("skewY(45)"), 1, -3);
    checkAt(moved("matrix(1 2 3 4 5 6)"), 12, -16);     // 1+6+5, 2+8+6
    checkAt(moved("translate(10 0) scale(2)"), 12, -4); // the last is applied first
}

TEST_CASE("groups within groups give their names and transforms") {
    const Drawing drawing =
        drawn("<g id=\"all\" transform=\"translate(100 0)\"><g id=\"g1\" inkscape:label=\"x 300 mm\" "
              "transform=\"scale(2)\"><polyline id=\"p\" points=\"0,0 1,1 2,0\"/></g></g>",
              "xmlns:inkscape=\"http://www.inkscape.org/namespaces/inkscape\"");
    REQUIRE(drawing.curves.size() == 1);
    const DrawnCurve& curve = drawing.curves.front();
    CHECK(curve.groups == std::vector<std::string>{"p", "x 300 mm", "g1", "all"});
    checkAt(curve.points[1], 102, -2);
}

TEST_CASE("every shape that is a curve is read, others are counted") {
    const Drawing drawing =
        drawn("<path d=\"M0 0 L1 1\"/><polygon points=\"0 0 1 0 1 1\"/><rect/><text>x</text><text/>"
              "<polyline points=\"1 1\"/>");
    REQUIRE(drawing.curves.size() == 2);
    CHECK(drawing.curves[1].points.size() == 4); // closed
    CHECK(drawing.leftOut == std::vector<std::string>{"1 rect", "2 text"});
}

TEST_CASE("what is hidden in the drawing is left out, and counted") {
    const std::string line = "<line x2=\"1\"/></g>";
    const Drawing drawing = drawn("<g style=\"fill:none; display: none\">" + line + "<g display=\"none\">" +
                                  line + "<g style=\"display:inline\">" + line);
    CHECK(drawing.curves.size() == 1);
    CHECK(drawing.leftOut == std::vector<std::string>{"2 hidden"});
}

TEST_CASE("the scale is known from a width in true units only") {
    CHECK(drawn("", "width=\"210mm\" viewBox=\"0 0 420 594\"").millimetres == 0.5);
    CHECK(*drawn("", "width=\"10in\" viewBox=\"0 0 10 10\"").millimetres == Approx(25.4));
    CHECK_FALSE(drawn("", "width=\"800\" viewBox=\"0 0 800 600\"").millimetres.has_value());
    CHECK_FALSE(drawn("", "width=\"210mm\"").millimetres.has_value());
    CHECK_FALSE(drawn("", "width=\"-1mm\" viewBox=\"0 0 1 1\"").millimetres.has_value());
}

TEST_CASE("what is no SVG is refused with its line") {
    const auto broken = readSvg("<svg>\n<g>\n</svg>", "trial.svg");
    REQUIRE_FALSE(broken.has_value());
    CHECK(toText(broken.error()).find("trial.svg:3: ") != std::string::npos);
    CHECK_FALSE(readSvg("<html/>", "trial.svg").has_value());
    CHECK_FALSE(readSvg("", "trial.svg").has_value());
}

#include "core/sheets/compose.hpp"
#include "core/sheets/sheet_svg.hpp"
#include "tests/support/catch.hpp"

#include <string>

using namespace sheerlay::core;

namespace {

std::size_t countOf(const std::string& text, const std::string& part) {
    std::size_t count = 0;
    for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + 1))
        ++count;
    return count;
}

} // namespace

TEST_CASE("a sheet as SVG has its size in millimetres and its items in place") {
    Sheet sheet;
    sheet.width = 420;
    sheet.height = 297;
    sheet.title = "Grey <Teal> & \"Co\"";
    sheet.items.emplace_back(makeLine({10, 20}, {30.5, 20}, LineKind::Centre, colours::lineBlue));
    sheet.items.emplace_back(makeBox({1, 2, 3, 4}, LineKind::None, colours::white));
    sheet.items.emplace_back(makeText({50, 60}, "15 3/4 < 16", {.size = 4, .rotation = 1.5707963267948966}));
    const std::string svg = toSvg(sheet);
    CHECK(countOf(svg, "width=\"420.000mm\" height=\"297.000mm\" viewBox=\"0 0 420.000 297.000\"") == 1);
    CHECK(countOf(svg, "<title>Grey &lt;Teal&gt; &amp; &quot;Co&quot;</title>") == 1);
    CHECK(countOf(svg, "<polyline points=\"10.000,20.000 30.500,20.000\" fill=\"none\" stroke=\"#2f5d8a\"") ==
          1);
    // a quarter of a millimetre wide; long dash of 24 widths after ISO 128, as ui/paper paints it
    CHECK(countOf(svg, "stroke-width=\"0.250\" stroke-dasharray=\"6.000 0.750 0.250 0.750\"") == 1);
    CHECK(countOf(svg,
                  "<polygon points=\"1.000,2.000 3.000,2.000 3.000,4.000 1.000,4.000\" fill=\"#ffffff\"/>") ==
          1);
    CHECK(countOf(svg, "translate(50.000 60.000) rotate(90.000)") == 1);
    CHECK(countOf(svg, "&lt; 16") == 1);
    CHECK(countOf(svg, ">3<") == 1); // the fraction's numerator, small and raised
    CHECK(countOf(svg, "<g ") == countOf(svg, "</g>"));
    CHECK(svg == toSvg(sheet));
}

#include "core/table_edit/cell_loft.hpp"
#include "core/table_edit/line_edit.hpp"
#include "tests/support/planked.hpp"
#include "tests/support/project_text.hpp"

#include <algorithm>
#include <cmath>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

std::string refusal(GridLine::Kind kind, const std::string& level) {
    const auto edited = insertLine(plankedCanoe().project, plankedCanoe().hull, kind, level);
    REQUIRE_FALSE(edited.has_value());
    return edited.error().found + "; " + edited.error().would;
}

} // namespace

TEST_CASE("a new waterline or buttock lies on the loft, to half a unit, at every station it crosses") {
    for (const auto& [kind, level, millimetres] : {std::tuple{GridLine::Kind::Waterline, "0-5-0", 127.0},
                                                   std::tuple{GridLine::Kind::Buttock, "0-7-4", 190.5}}) {
        const auto edited = insertLine(plankedCanoe().project, plankedCanoe().hull, kind, level);
        REQUIRE(edited.has_value());
        const auto lines = gridLines(edited->hull);
        CHECK(lines.size() == gridLines(plankedCanoe().project.hull).size() + 1);
        const auto line = std::ranges::find_if(lines, [&, k = kind, mm = millimetres](const GridLine& l) {
            return l.kind == k && l.level == mm;
        });
        REQUIRE(line != lines.end());
        int given = 0;
        for (const Station& s : edited->hull.stations) {
            const auto loft =
                LoftedSection(plankedCanoe().hull, s.x + plankedCanoe().hull.xShift).at(s, *line);
            CHECK((cellValue(s, *line).has_value() == loft.has_value()));
            if (!loft)
                continue;
            ++given;
            CHECK(std::abs(loft->off) <= 0.5 * edited->hull.roundedTo + 1e-6);
        }
        CHECK(given >= 9);
        const auto lofted = loft(*edited);
        REQUIRE(lofted.has_value());
        CHECK_THAT(lofted->drawn.halfGirthMax, WithinAbs(plankedCanoe().hull.drawn.halfGirthMax, 0.5)); // mm
    }
}

TEST_CASE("lines that can't be put in are refused in words") {
    using Kind = GridLine::Kind;
    CHECK(refusal(Kind::Waterline, "0-6-0").find("which the table has") != std::string::npos);
    CHECK(refusal(Kind::Waterline, "9-0-0").find("between keel and sheer") != std::string::npos);
    CHECK(refusal(Kind::Buttock, "9-0-0").find("inside the sheer's") != std::string::npos);
    CHECK_FALSE(refusal(Kind::Buttock, "wide").empty());
}

#include "core/patterns/strongback_sheet.hpp"
#include "core/units/length.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"
#include "tests/support/sheet_reading.hpp"

#include <cmath>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

std::size_t count(const std::string& words, const std::string& wanted) {
    std::size_t times = 0;
    for (std::size_t at = words.find(wanted); at != std::string::npos; at = words.find(wanted, at + 1))
        ++times;
    return times;
}

} // namespace

TEST_CASE("the set-out sheet keeps its margins and tells each mould's place and heights on one line") {
    for (const std::string name : {"brindlewick", "marsh-hen", "sedgewren"}) {
        const Project project =
            test::projectAt(std::string(SHEERLAY_EXAMPLES) + "/" + name + "/" + name + ".sheerlay");
        const auto hull = loft(project);
        REQUIRE(hull);
        const auto set = mouldsOf(project, *hull);
        REQUIRE(set);
        for (const PageSize size : {PageSize::A4, PageSize::Letter, PageSize::Tabloid})
            for (const Units units : {Units::Millimetres, Units::Inches}) {
                const std::vector<Sheet> sheets = strongbackSheets(project, *set, units, size);
                std::string words;
                for (const Sheet& sheet : sheets) {
                    INFO(name << ", " << sheet.title);
                    CHECK(test::outside(sheet, 7.0) == "");
                    CHECK(test::overlapping(sheet) == "");
                    words += test::wordsOf(sheet);
                }
                for (const StrongbackPlan::Place& place : set->strongback.places) {
                    const std::string line =
                        place.mould + " " + formatLength(place.along, units, 16) + " " +
                        (place.forward ? "after face; cleat abaft" : "forward face; cleat forward") + " " +
                        formatLength(place.cleat, units, 16) + " " + formatLength(place.sheer, units, 16) +
                        " " + formatLength(place.keel, units, 16);
                    INFO(line);
                    CHECK(count(words, line) == 1);
                }
            }
    }
}

TEST_CASE("the diagonals told are those of the rectangles they cross") {
    const Project project = test::projectAt(SHEERLAY_EXAMPLES "/brindlewick/brindlewick.sheerlay");
    const auto hull = loft(project);
    REQUIRE(hull);
    const auto set = mouldsOf(project, *hull);
    REQUIRE(set);
    std::string words;
    for (const Sheet& sheet : strongbackSheets(project, *set, Units::Millimetres, PageSize::A4))
        words += test::wordsOf(sheet);
    const StrongbackPlan& plan = set->strongback;
    const double between = plan.places.back().along - plan.places.front().along;
    const auto millimetres = [](double value) { return std::to_string(std::lround(value)) + " mm"; };
    CHECK(count(words, "corner to corner are " + millimetres(std::hypot(plan.length, plan.width))) == 1);
    CHECK(count(words, "from side to side, are " + millimetres(std::hypot(between, plan.width))) == 1);
    // and every part is counted: as many cleats as moulds
    CHECK(count(words, "cleat abaft") + count(words, "cleat forward") >= set->moulds.size());
}

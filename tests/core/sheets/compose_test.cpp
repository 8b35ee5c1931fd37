#include "core/sheets/compose.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/sheet_reading.hpp"

#include <random>

using namespace sheerlay::core;
using sheerlay::test::lineOf;
using sheerlay::test::textsOf;

namespace {

struct Pages {
    std::vector<Sheet> sheets{Sheet{}};
    Flow flow{sheets, columns(), [this] {
                  sheets.emplace_back();
                  return columns();
              }};
    static std::vector<Box> columns() { return {{10, 20, 100, 120}, {110, 50, 200, 120}}; }
};

Slice slice(double height, const std::string& words, bool keep = false) {
    return {height, {makeText({0.0, height}, words)}, keep};
}

} // namespace

TEST_CASE("slices fill a column, the next, then a new page, in order and inside their boxes") {
    Pages pages;
    std::vector<Slice> slices;
    for (int i = 0; i < 100; ++i)
        slices.push_back(slice(7.0, std::to_string(i)));
    pages.flow.add(slices);
    CHECK(pages.sheets.size() == 5); // 14 and 10 slices a page
    int expected = 0;
    for (const Sheet& sheet : pages.sheets)
        for (const Text& text : textsOf(sheet)) {
            CHECK(lineOf(text) == std::to_string(expected++));
            const bool first = text.at.x() == 10.0;
            CHECK(text.at.y() <= 120.0 + 1e-6);
            CHECK(text.at.y() - 7.0 >= (first ? 20.0 : 50.0) - 1e-6);
        }
    CHECK(expected == 100);
}

TEST_CASE("a heading stays with what follows it") {
    Pages pages;
    pages.flow.add({slice(95.0, "filler")});
    pages.flow.add({slice(4.0, "heading", true), slice(8.0, "text")});
    const std::vector<Text> texts = textsOf(pages.sheets.front());
    REQUIRE(texts.size() == 3);
    CHECK(texts[1].at.x() == 110.0);
    CHECK(texts[2].at.x() == 110.0);
}

TEST_CASE("a block goes whole into the first column with room") {
    Pages pages;
    pages.flow.addTogether({slice(80.0, "a")});
    pages.flow.addTogether({slice(30.0, "b1"), slice(10.0, "b2")}); // 20 left in the first column: second
    pages.flow.addTogether({slice(15.0, "c")});                     // back to the first
    pages.flow.addTogether({slice(60.0, "d")});                     // nowhere: new page
    REQUIRE(pages.sheets.size() == 2);
    const std::vector<Text> texts = textsOf(pages.sheets.front());
    CHECK(texts[1].at.x() == 110.0);
    CHECK(texts[2].at.x() == 110.0);
    CHECK(texts[3].at.x() == 10.0);
    CHECK(lineOf(textsOf(pages.sheets.back()).front()) == "d");
}

TEST_CASE("what is higher than any column neither hangs nor gets lost") {
    Pages pages;
    pages.flow.add({slice(500.0, "tower")});
    pages.flow.addTogether({slice(300.0, "x"), slice(300.0, "y")});
    std::size_t found = 0;
    for (const Sheet& sheet : pages.sheets)
        found += textsOf(sheet).size();
    CHECK(found == 3);
    CHECK(pages.sheets.size() < 8);
}

TEST_CASE("random blocks never overlap in a column") {
    std::mt19937 random(7);
    std::uniform_real_distribution<double> height(2.0, 40.0);
    Pages pages;
    for (int i = 0; i < 200; ++i) {
        const double h = height(random);
        Slice s{h, {makeBox({0.0, 0.0, 90.0, h}, LineKind::None)}, false};
        if (i % 2 == 0)
            pages.flow.add({s});
        else
            pages.flow.addTogether({s});
        pages.flow.gap(1.5);
    }
    std::size_t count = 0;
    for (const Sheet& sheet : pages.sheets) {
        std::vector<Box> boxes;
        for (const Item& item : sheet.items)
            boxes.push_back(extentOf(item));
        for (std::size_t i = 0; i < boxes.size(); ++i)
            for (std::size_t j = i + 1; j < boxes.size(); ++j)
                CHECK_FALSE(boxes[i].overlaps(boxes[j]));
        count += boxes.size();
    }
    CHECK(count == 200);
}

TEST_CASE("the part of a way that lies inside a box, and whether a path comes into it") {
    const Box box{10.0, 20.0, 30.0, 40.0};
    const auto through = partInside({0.0, 30.0}, {40.0, 30.0}, box); // 10 mm before it, 20 in it, 10 behind
    REQUIRE(through);
    CHECK_THAT(through->first, WithinAbs(0.25, 1e-12));
    CHECK_THAT(through->second, WithinAbs(0.75, 1e-12));
    const auto from = partInside({20.0, 30.0}, {20.0, 50.0}, box);
    REQUIRE(from);
    CHECK_THAT(from->first, WithinAbs(0.0, 1e-12));
    CHECK_THAT(from->second, WithinAbs(0.5, 1e-12));
    CHECK_FALSE(partInside({0.0, 10.0}, {40.0, 10.0}, box)); // above it
    CHECK_FALSE(partInside({0.0, 25.0}, {20.0, 5.0}, box));  // past its corner

    Path hook;
    hook.points = {{0.0, 0.0}, {50.0, 0.0}, {50.0, 60.0}, {0.0, 60.0}};
    CHECK_FALSE(enters(hook, box)); // around it
    hook.points.front() = {0.0, 30.0};
    hook.points[1] = {5.0, 0.0};
    hook.points[2] = {20.0, 60.0};
    CHECK(enters(hook, box)); // 5 to 20 mm across, right through its left part
    hook.points = {{0.0, 10.0}, {40.0, 10.0}, {40.0, 60.0}};
    CHECK_FALSE(enters(hook, box));
    hook.closed = true; // from the lower right back to the upper left
    CHECK(enters(hook, box));
    CHECK_FALSE(enters({}, box));
}

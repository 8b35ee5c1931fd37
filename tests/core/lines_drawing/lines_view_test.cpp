#include "core/lines_drawing/lines_view.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/sheet_reading.hpp"

#include <vector>

using namespace sheerlay::core;
using namespace sheerlay::test;

TEST_CASE("a view puts the boat on paper to its scale, up or down") {
    const LinesView up{{100, 50}, 0.1};
    CHECK((up.at(200, 30) - Eigen::Vector2d(120, 47)).norm() < 1e-12);
    const LinesView down{{100, 50}, 0.1, -1.0};
    CHECK((down.at(200, 30) - Eigen::Vector2d(120, 53)).norm() < 1e-12);
}

TEST_CASE("labels keep clear of one another and on their lines") {
    std::vector<Item> items;
    LinesPen pen(items);
    CHECK(pen.label({50, 50}, "first", {.size = 3}));
    CHECK_FALSE(pen.label({51, 50.5}, "second", {.size = 3}));
    PaperLine line;
    for (int i = 0; i <= 100; ++i)
        line.push_back({i, 50.0});
    for (int k = 0; k < 4; ++k)
        pen.labelOn(line, "6 in", 0.5, colours::ink);
    Sheet sheet;
    sheet.items = items;
    const auto texts = textsOf(sheet);
    CHECK(texts.size() >= 4);
    CHECK(overlapping(sheet) == "");
    for (const Text& t : texts)
        if (lineOf(t) == "6 in")
            CHECK_THAT(t.at.y() - capHeight * t.size / 2, WithinAbs(50, 1e-9)); // centred on the line
}

TEST_CASE("labels keep clear of the visible lines drawn before") {
    std::vector<Item> items;
    LinesPen pen(items);
    pen.line({{50, 0}, {50, 100}}, LineKind::Visible);
    CHECK_FALSE(pen.label({48, 30}, "station", {.size = 3}));
    CHECK(pen.label({52, 30}, "station", {.size = 3}));
    PaperLine level;
    for (int i = 0; i <= 100; ++i)
        level.push_back({i, 60.0});
    pen.line(level, LineKind::Thin);
    pen.labelOn(level, "6 in", 0.5, colours::ink);
    Sheet sheet;
    sheet.items = items;
    CHECK(textsOf(sheet).size() == 2);
    CHECK(crossed(sheet) == "");
}

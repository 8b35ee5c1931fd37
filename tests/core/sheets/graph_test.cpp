#include "core/sheets/compose.hpp"
#include "core/sheets/graph.hpp"
#include "tests/support/catch.hpp"

#include <algorithm>
#include <variant>

using namespace sheerlay;
using namespace sheerlay::core;

TEST_CASE("steps of an axis are 1, 2 or 5 and divide it into four to nine") {
    CHECK(roundStep(9) == Approx(1));
    CHECK(roundStep(28) == Approx(5));
    CHECK(roundStep(1.8) == Approx(0.2));
    CHECK(roundStep(1500) == Approx(200));
    for (double range = 0.01; range < 5000; range *= 1.37) {
        const double parts = range / roundStep(range);
        CHECK(parts <= 9 + 1e-9);
        CHECK(parts >= 3.6 - 1e-9); // 9 / 2.5, the widest gap between 2 and 5
    }
}

TEST_CASE("a graph stays in its box, keeps proportion and tells its marks") {
    Graph graph{"How it runs", "across, kg", "up, mm", {{0, 0}, {10, 40}, {20, 80}}, {{15, "here"}}};
    const std::vector<Item> items = drawGraph(graph, 180, 60, 3.4);
    const Path* curve = nullptr;
    std::vector<std::string> words;
    for (const Item& item : items) {
        const Box box = extentOf(item);
        CHECK(box.left > -0.3);
        CHECK(box.top > -0.3);
        CHECK(box.right < 180.3);
        CHECK(box.bottom < 60.3);
        if (const auto* path = std::get_if<Path>(&item); path != nullptr && path->points.size() == 3)
            curve = path;
        if (const auto* text = std::get_if<Text>(&item))
            words.push_back(text->runs.front().text);
    }
    REQUIRE(curve != nullptr);
    const Eigen::Vector2d first = curve->points[1] - curve->points[0],
                          second = curve->points[2] - curve->points[1];
    CHECK((first - second).norm() < 1e-9); // a straight line stays straight
    CHECK(first.x() > 0);
    CHECK(first.y() < 0); // up the page
    for (const char* said : {"How it runs", "across, kg", "up, mm", "here", "20", "80"})
        CHECK(std::find(words.begin(), words.end(), said) != words.end());
    CHECK(drawGraph({"", "", "", {{0, 0}}, {}}, 100, 50, 3).empty());
}

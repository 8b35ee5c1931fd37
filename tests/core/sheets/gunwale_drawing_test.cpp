#include "core/sheets/gunwale_drawing.hpp"
#include "tests/support/catch.hpp"

#include <algorithm>
#include <cmath>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

Gunwales sticks() {
    Gunwales g;
    for (Gunwale* one : {&g.outer, &g.inner}) {
        one->sheerLength = 4900;
        one->cutLength = 5000;
        one->scarf = 200;
        one->scarfs = {2000};
    }
    g.screws = {40, 2450, 4860};
    g.scuppers = Scuppers{3, 450, 100, 40, 450};
    g.bevels = {{"1", 500, 505, 503, 0}, {"2", 520, 526, 524, 0}, {"14", 4000, 4020, 4015, 0}};
    return g;
}

} // namespace

TEST_CASE("the sticks fill the width; screws, scuppers and scarfs stand where they go") {
    const double width = 180, type = 3;
    const GunwaleDrawing drawing = drawGunwales(sticks(), width, type);
    const double scale = (width - 0.4) / 5000, left = 0.2 + 50 * scale;
    double low = 0, right = 0;
    int boxes = 0;
    std::vector<double> upright, slanted;
    for (const Item& item : drawing.items) {
        const Box box = extentOf(item);
        low = std::max(low, box.bottom);
        right = std::max(right, box.right);
        if (const auto* path = std::get_if<Path>(&item)) {
            boxes += path->closed ? 1 : 0;
            if (path->closed || path->line != LineKind::Visible)
                continue;
            const double run = path->points[1].x() - path->points[0].x();
            (std::abs(run) < 1e-9 ? upright : slanted).push_back(path->points[0].x());
        }
    }
    CHECK(right <= width + 0.5);
    CHECK(low <= drawing.height);
    CHECK(boxes == 2 + 3); // two sticks, three scuppers
    REQUIRE(upright.size() == 3);
    CHECK(upright[1] == Approx(left + 2450 * scale));
    REQUIRE(slanted.size() == 2);
    CHECK(slanted[0] == Approx(left + 1900 * scale));
}

TEST_CASE("a station's name that would lie over its neighbour's is left out") {
    const auto names = [](double width) {
        const auto items = drawGunwales(sticks(), width, 3).items;
        return std::ranges::count_if(items, [](const Item& i) {
            const auto* text = std::get_if<Text>(&i);
            return text != nullptr && text->anchor == Anchor::Middle;
        });
    };
    CHECK(names(180) == 2 * 2);
    CHECK(names(5000) == 2 * 3);
}

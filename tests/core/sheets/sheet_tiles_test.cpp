#include "core/sheets/sheet_tiles.hpp"
#include "core/sheets/wall_map.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fake_plan.hpp"
#include "tests/support/sheet_reading.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

using namespace sheerlay;
using namespace sheerlay::core;
using Catch::Matchers::WithinAbs;

namespace {

/// A dot every 10 mm over an A1 lying.
Sheet dotted() {
    Sheet sheet;
    sheet.width = 841.0;
    sheet.height = 594.0;
    sheet.title = "dots";
    for (int x = 20; x <= 820; x += 10)
        for (int y = 20; y <= 570; y += 10)
            sheet.items.emplace_back(makeText({x, y}, ".", {.size = 3.0}));
    return sheet;
}

/// Box of the large sheet that a tile shows.
Box shownBy(const SheetTile& tile) {
    return {tile.window.left - tile.origin.x(),
            tile.window.top - tile.origin.y(),
            tile.window.right - tile.origin.x(),
            tile.window.bottom - tile.origin.y()};
}

} // namespace

TEST_CASE("tiles show every place of the large sheet at its size, and neighbours share a band") {
    const Sheet large = dotted();
    for (const PageSize size : {PageSize::A4, PageSize::Letter, PageSize::A3, PageSize::Tabloid}) {
        const std::vector<SheetTile> tiles = tilesOf(large, size);
        INFO(tiles.size());
        CHECK(static_cast<double>(tiles.size()) * tiles[0].sheet.width * tiles[0].sheet.height <
              2.0 * large.width * large.height);
        for (const Item& item : large.items) {
            const Eigen::Vector2d at = std::get<Text>(item).at;
            const bool shown = std::ranges::any_of(tiles, [&](const SheetTile& tile) {
                const Eigen::Vector2d there = at + tile.origin;
                const bool inside = there.x() >= tile.window.left && there.x() <= tile.window.right &&
                                    there.y() >= tile.window.top && there.y() <= tile.window.bottom;
                return inside && std::ranges::any_of(tile.sheet.items, [&](const Item& here) {
                           const auto* text = std::get_if<Text>(&here);
                           return text != nullptr && (text->at - there).norm() < 1e-9;
                       });
            });
            CHECK(shown);
        }
        for (const SheetTile& a : tiles)
            for (const SheetTile& b : tiles) {
                if (b.row == a.row && b.column == a.column + 1)
                    CHECK_THAT(shownBy(a).right - shownBy(b).left, WithinAbs(pageOverlap, 1e-9));
                if (b.column == a.column && b.row == a.row + 1)
                    CHECK_THAT(shownBy(a).bottom - shownBy(b).top, WithinAbs(pageOverlap, 1e-9));
            }
    }
}

TEST_CASE("the same letters stand on both sides of a joint, and nowhere else") {
    CHECK(jointLetters(0) == "A");
    CHECK(jointLetters(25) == "Z");
    CHECK(jointLetters(26) == "AA");
    CHECK(jointLetters(27) == "AB");
    std::map<std::string, std::vector<Eigen::Vector2d>> places; // on the large sheet
    const std::vector<SheetTile> tiles = tilesOf(dotted(), PageSize::A4);
    for (const SheetTile& tile : tiles)
        for (const Item& item : tile.sheet.items)
            if (const auto* text = std::get_if<Text>(&item); text != nullptr && text->weight == Weight::Bold)
                places[text->runs.front().text].push_back(text->at - tile.origin);
    CHECK(places.size() > 10);
    for (const auto& [letter, at] : places) {
        INFO(letter);
        REQUIRE(at.size() == 2);
        CHECK((at[0] - at[1]).norm() < 1e-9);
    }
}

TEST_CASE("blank pages are left out, and a page says where it belongs") {
    Sheet large = dotted();
    std::erase_if(large.items, [](const Item& item) { // nothing in the middle
        const Eigen::Vector2d& at = std::get<Text>(item).at;
        return std::abs(at.x() - 420) < 300 && std::abs(at.y() - 297) < 230;
    });
    const std::vector<SheetTile> all = tilesOf(dotted(), PageSize::A4), some = tilesOf(large, PageSize::A4);
    CHECK(some.size() < all.size());
    std::set<std::string> titles;
    for (const SheetTile& tile : some)
        titles.insert(tile.sheet.title);
    CHECK(titles.size() == some.size());
    CHECK(titles.contains("dots, page 1 of " + std::to_string(some.size())));
}

TEST_CASE("the wall map goes on common paper") {
    const test::FakeBoat boat = test::makeFakeBoat();
    const Sheet map = wallMap(boat.project, boat.hull, boat.plan, Units::Millimetres);
    const std::vector<SheetTile> tiles = tilesOf(map, PageSize::A3);
    CHECK(tiles.size() > 1);
    std::string words;
    for (const SheetTile& tile : tiles)
        words += test::wordsOf(tile.sheet);
    for (const Strip& strip : boat.plan.strips) {
        INFO(strip.id);
        CHECK(test::timesIn(words, strip.id) >= 1);
    }
    CHECK(test::timesIn(words, "Lay crosses over crosses") == tiles.size());
    std::vector<Box> names; // on the map
    for (const Item& item : map.items)
        if (const auto* text = std::get_if<Text>(&item))
            names.push_back(inkBox(*text));
    std::map<std::string, int> crosses; // by place on the map: each is on two pages
    int covered = 0;
    for (const SheetTile& tile : tiles)
        for (const Item& item : tile.sheet.items) {
            const auto* path = std::get_if<Path>(&item);
            if (path == nullptr || path->points.size() != 2 || path->points[0].y() != path->points[1].y() ||
                std::abs((path->points[1] - path->points[0]).norm() - 2 * crossArm) > 1e-9)
                continue;
            const Eigen::Vector2d middle = 0.5 * (path->points[0] + path->points[1]) - tile.origin;
            ++crosses[std::to_string(std::lround(10 * middle.x())) + " " +
                      std::to_string(std::lround(10 * middle.y()))];
            const Box box{
                middle.x() - crossArm, middle.y() - crossArm, middle.x() + crossArm, middle.y() + crossArm};
            covered +=
                std::ranges::any_of(names, [&](const Box& name) { return name.overlaps(box); }) ? 1 : 0;
        }
    CHECK(crosses.size() > 3);
    for (const auto& [place, pages] : crosses)
        CHECK(pages == 2);
    CHECK(covered == 0);
}

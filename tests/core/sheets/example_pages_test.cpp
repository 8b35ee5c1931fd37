#include "core/lines_drawing/curvature_sheet.hpp"
#include "core/lines_drawing/lines_sheet.hpp"
#include "core/materials/materials.hpp"
#include "core/materials/materials_sheet.hpp"
#include "core/patterns/pattern_set.hpp"
#include "core/patterns/strongback_sheet.hpp"
#include "core/sheets/boat_sheets.hpp"
#include "core/sheets/cut_sheets.hpp"
#include "core/sheets/fitout_sheets.hpp"
#include "core/sheets/shop_plan.hpp"
#include "core/sheets/stock_sheets.hpp"
#include "core/sheets/wall_map.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"
#include "tests/support/sheet_reading.hpp"

#include <cmath>
#include <string>
#include <utility>
#include <vector>

using namespace sheerlay;
using namespace sheerlay::core;

// Every page that is composed of every example, in both languages and on every size of paper.

namespace {

struct Boat {
    Project project;
    LoftedHull hull;
    ShopPlan shop;
};

Boat boatOf(const std::string& name) {
    test::Planked boat =
        test::planked(test::projectAt(SHEERLAY_EXAMPLES "/" + name + "/" + name + ".sheerlay"));
    ShopPlan shop = planShop(boat.project, boat.hull, boat.plan);
    return {std::move(boat.project), std::move(boat.hull), std::move(shop)};
}

int checkPages(const std::vector<Sheet>& sheets, double margin = 7.5) {
    for (const Sheet& sheet : sheets) {
        INFO(sheet.title);
        CHECK(test::outside(sheet, margin) == "");
        CHECK(test::overlapping(sheet) == "");
        CHECK(test::crossed(sheet) == "");
    }
    return static_cast<int>(sheets.size());
}

/// The first text that one of a page's crosses covers: "" when none does.
std::string underCrosses(const Sheet& sheet) {
    constexpr double across = 8.0; // mm
    for (const Text& text : test::textsOf(sheet))
        for (const Item& item : sheet.items) {
            const auto* path = std::get_if<Path>(&item);
            if (path != nullptr && path->line == LineKind::Thin && path->points.size() == 2 &&
                std::abs((path->points[1] - path->points[0]).norm() - across) < 1e-6 &&
                enters(*path, inkBox(text)))
                return test::lineOf(text);
        }
    return {};
}

/// @return how many pages were looked at
int checkTiles(const std::vector<Sheet>& sheets) {
    for (const Sheet& sheet : sheets) {
        INFO(sheet.title);
        CHECK(underCrosses(sheet) == "");
    }
    return checkPages(sheets, 0.0);
}

/// @return how many pages were looked at
int checkSheets(const Boat& boat, Units units, PageSize size) {
    const auto& [project, hull, shop] = boat;
    const StockPlan* stock = shop.stock ? &*shop.stock : nullptr;
    int pages = checkPages(cutSheets(project, hull, shop.plan, units, size, stock));
    pages += checkPages({wallMap(project, hull, shop.plan, units, stock)});
    if (stock != nullptr)
        pages += checkPages(stockSheets(project, hull, shop.plan, *stock, units, size));
    pages += checkPages({materialsSheet(project, materialsOf(project, hull, shop, units), units, size)});
    if (shop.after.fitout)
        pages += checkPages(fitoutSheets(project, *shop.after.fitout, units, size));
    if (shop.after.covering)
        pages += checkPages(coveringSheets(project, shop.after, units, size));
    if (shop.after.weights)
        pages += checkPages(afloatSheets(project, shop.after, units, size));
    pages += checkPages({linesSheet(project, hull, units), curvatureSheet(project, hull, units)});
    return pages;
}

int checkPatterns(const Boat& boat, Units units, PageSize size) {
    const auto set = patternSet(boat.project, boat.hull, boat.shop.plan, units, boat.shop.after.fitout);
    REQUIRE(set);
    int pages = checkPages(strongbackSheets(boat.project, set->frame, units, size));
    pages += checkPages(nestedPages(boat.project, set->boards, units, size));
    for (const auto* patterns : {&set->moulds, &set->strips, &set->parts}) {
        pages += checkTiles(tiledPages(*patterns, size, boat.project.name));
        pages += checkPages(rollPages(*patterns, boat.project.name), 0.0);
    }
    return pages;
}

} // namespace

TEST_CASE(
    "no page of any example lets words cover words, lines run through them, or either leave the paper") {
    int pages = 0;
    for (const char* name : {"brindlewick", "marsh-hen", "sedgewren", "tanglepike"}) {
        Boat boat = boatOf(name);
        for (const Language language : {Language::English, Language::German}) {
            boat.project.language = language;
            for (const PageSize size : {PageSize::A4, PageSize::Letter, PageSize::A3, PageSize::Tabloid}) {
                const Units units =
                    size == PageSize::A4 || size == PageSize::A3 ? Units::Millimetres : Units::Inches;
                INFO(name << (language == Language::German ? ", German" : ", English") << ", paper "
                          << static_cast<int>(size));
                boat.project.paper.severalRows = size == PageSize::A3 || size == PageSize::Tabloid;
                pages += checkSheets(boat, units, size);
                if (size == PageSize::A4 || size == PageSize::Letter)
                    pages += checkPatterns(boat, units, size);
            }
        }
    }
    CHECK(pages > 1500);
}

#include "core/sheets/boat_sheets.hpp"
#include "core/sheets/compose.hpp"
#include "core/sheets/page_frame.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/loaded_boat.hpp"

#include <algorithm>
#include <string>
#include <variant>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

struct Loaded {
    Project project;
    AfterPlanking after;
};

Loaded loadedCanoe() {
    const auto& [bare, hull, plan] = test::canoeToLoad();
    Project project = test::loaded(bare);
    AfterPlanking after = afterPlanking(project, hull, plan);
    return {std::move(project), std::move(after)};
}

std::string wordsOf(const std::vector<Sheet>& sheets) {
    std::string words;
    for (const Sheet& sheet : sheets)
        for (const Item& item : sheet.items)
            if (const auto* text = std::get_if<Text>(&item)) {
                for (const TextRun& run : text->runs)
                    words += run.text;
                words += ' ';
            }
    return words;
}

void staysOnPaper(const std::vector<Sheet>& sheets) {
    for (const Sheet& sheet : sheets)
        for (const Item& item : sheet.items) {
            const Box box = extentOf(item);
            CHECK(box.left > pageMargin - 1);
            CHECK(box.right < sheet.width - pageMargin + 1);
            CHECK(box.top > pageMargin - 1);
            CHECK(box.bottom < sheet.height - pageMargin + 1);
        }
}

} // namespace

TEST_CASE("cloth and resin on paper: pieces, coats, mix, what to buy, cautions") {
    const auto [project, after] = loadedCanoe();
    for (const PageSize size : {PageSize::A4, PageSize::Letter, PageSize::A3})
        for (const Units units : {Units::Inches, Units::Millimetres}) {
            const std::vector<Sheet> sheets = coveringSheets(project, after, units, size);
            REQUIRE_FALSE(sheets.empty());
            staysOnPaper(sheets);
            const std::string words = wordsOf(sheets);
            for (const char* said : {"Cloth, outside",
                                     "Cloth, inside",
                                     "wet-out",
                                     "coat 3",
                                     "hardener",
                                     "varnish",
                                     "allergy",
                                     "pot"})
                CHECK(words.find(said) != std::string::npos);
        }
}

TEST_CASE("how she floats on paper: figures, curves, weights, cautions") {
    const auto [project, after] = loadedCanoe();
    for (const PageSize size : {PageSize::A4, PageSize::Letter, PageSize::Tabloid})
        for (const Units units : {Units::Inches, Units::Millimetres}) {
            const std::vector<Sheet> sheets = afloatSheets(project, after, units, size);
            REQUIRE_FALSE(sheets.empty());
            staysOnPaper(sheets);
            const std::string words = wordsOf(sheets);
            for (const char* said : {"no approval",
                                     "draught",
                                     "freeboard",
                                     "Righting arm",
                                     "What she displaces",
                                     "What she weighs",
                                     "planking",
                                     "stern paddler",
                                     "life jacket",
                                     "metacentre"})
                CHECK(words.find(said) != std::string::npos);
        }
}

TEST_CASE("a boat that swamps gets the reason and no figures of a rest she hasn't") {
    auto [project, after] = loadedCanoe();
    project.afloat->loads[0].mass = 2000;
    const auto& [bare, hull, plan] = test::canoeToLoad();
    after = afterPlanking(project, hull, plan);
    const std::vector<Sheet> sheets = afloatSheets(project, after, Units::Inches, PageSize::A4);
    staysOnPaper(sheets);
    const std::string words = wordsOf(sheets);
    CHECK(words.find("Take weight out") != std::string::npos);
    CHECK(words.find("to the deepest point") == std::string::npos);
    CHECK(words.find("largest load") != std::string::npos);
}

TEST_CASE("what is not asked for has no page") {
    const auto& [bare, hull, plan] = test::canoeToLoad();
    const AfterPlanking after = afterPlanking(bare, hull, plan);
    CHECK(coveringSheets(bare, after, Units::Inches, PageSize::A4).empty());
    CHECK(afloatSheets(bare, after, Units::Inches, PageSize::A4).empty());
}

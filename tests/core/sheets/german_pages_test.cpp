#include "core/hull/hull.hpp"
#include "core/lines_drawing/curvature_sheet.hpp"
#include "core/lines_drawing/lines_sheet.hpp"
#include "core/patterns/pattern_files.hpp"
#include "core/patterns/pattern_set.hpp"
#include "core/patterns/strongback_sheet.hpp"
#include "core/planking/planking.hpp"
#include "core/project/project_file.hpp"
#include "core/sheets/cut_sheets.hpp"
#include "core/sheets/shop_plan.hpp"
#include "core/sheets/stock_sheets.hpp"
#include "core/sheets/strip_notes.hpp"
#include "core/sheets/wall_map.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/sheet_reading.hpp"

#include <array>
#include <cctype>
#include <string>
#include <string_view>
#include <vector>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

/// The first English word of a text that no German text has; "" where there is none.
std::string englishIn(const std::string& text) {
    constexpr std::array<std::string_view, 35> words{
        "the",   "of",     "and",  "to",      "with",   "from",    "is",    "are",  "its",
        "by",    "it",     "at",   "for",     "or",     "on",      "where", "each", "than",
        "that",  "this",   "be",   "cut",     "length", "width",   "row",   "edge", "strip",
        "board", "boards", "long", "station", "about",  "degrees", "feet",  "you"};
    std::string word;
    for (const char c : text + " ") {
        if (c == '-' || std::isalpha(static_cast<unsigned char>(c)) != 0 ||
            (static_cast<unsigned char>(c) & 0x80U) != 0) {
            word += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
            continue;
        }
        for (const std::string_view english : words)
            if (word == english)
                return word;
        word.clear();
    }
    return {};
}

struct Boat {
    Project project;
    LoftedHull hull;
    ShopPlan shop;
};

/// An example in German; what is found of it is told in English, and left out here.
Boat germanBoat(const std::string& path) {
    auto read = readProject(path);
    REQUIRE(read);
    read->project.language = Language::German;
    auto hull = loft(read->project);
    REQUIRE(hull);
    hull->findings.clear();
    const auto plan = plank(read->project, *hull);
    REQUIRE(plan);
    ShopPlan shop = planShop(read->project, *hull, *plan);
    shop.plan.findings.clear();
    return {read->project, *hull, shop};
}

void checkGerman(const std::vector<Sheet>& sheets) {
    CHECK_FALSE(sheets.empty());
    for (const Sheet& sheet : sheets) {
        INFO(sheet.title);
        CHECK(englishIn(sheet.title) == "");
        CHECK(test::outside(sheet, 7.5) == ""); // the strongback's centreline runs 2 mm into the margin
        CHECK(test::overlapping(sheet) == "");
        for (const Text& text : test::textsOf(sheet)) {
            INFO(test::lineOf(text));
            CHECK(englishIn(test::lineOf(text)) == "");
        }
    }
}

} // namespace

TEST_CASE("German sheets say no English, keep their margins and cover no words with others") {
    const Boat boat = germanBoat(SHEERLAY_EXAMPLES "/brindlewick/brindlewick.sheerlay");
    REQUIRE(boat.shop.stock);
    for (const PageSize size : {PageSize::A4, PageSize::Letter}) {
        const Units units = size == PageSize::A4 ? Units::Millimetres : Units::Inches;
        checkGerman(cutSheets(boat.project, boat.hull, boat.shop.plan, units, size, &*boat.shop.stock));
        checkGerman({wallMap(boat.project, boat.hull, boat.shop.plan, units, &*boat.shop.stock)});
        checkGerman(stockSheets(boat.project, boat.hull, boat.shop.plan, *boat.shop.stock, units, size));
    }
}

TEST_CASE("German moulds, patterns and lines say no English; their files keep name and numbers") {
    const Boat boat = germanBoat(SHEERLAY_EXAMPLES "/sedgewren/sedgewren.sheerlay"); // it has a transom
    for (const PageSize size : {PageSize::A4, PageSize::Letter}) {
        const Units units = size == PageSize::A4 ? Units::Millimetres : Units::Inches;
        const auto set = patternSet(boat.project, boat.hull, boat.shop.plan, units);
        REQUIRE(set);
        checkGerman(strongbackSheets(boat.project, set->frame, units, size));
        checkGerman(nestedPages(boat.project, set->boards, units, size));
        checkGerman(
            {linesSheet(boat.project, boat.hull, units), curvatureSheet(boat.project, boat.hull, units)});
        for (const auto* patterns : {&set->moulds, &set->strips})
            for (const Sheet& sheet : tiledPages(*patterns, size, boat.project.name))
                for (const Text& text : test::textsOf(sheet)) {
                    INFO(test::lineOf(text));
                    CHECK(englishIn(test::lineOf(text)) == "");
                }
        Project english = boat.project;
        english.language = Language::English;
        const auto same = patternSet(english, boat.hull, boat.shop.plan, units);
        REQUIRE(same);
        REQUIRE(same->moulds.size() == set->moulds.size());
        for (std::size_t i = 0; i < set->moulds.size(); ++i) {
            CHECK(set->moulds[i].file == same->moulds[i].file);
            CHECK(set->moulds[i].title != same->moulds[i].title);
            const std::string dxf = toDxf(set->moulds[i]);
            CHECK(dxf.find('?') == std::string::npos); // what R12 has no letter for
            if (set->moulds[i].title.find("Fläche") != std::string::npos)
                CHECK(dxf.find("Flaeche") != std::string::npos);
            CHECK(dxf.substr(0, dxf.find("TEXT")) == toDxf(same->moulds[i]).substr(0, dxf.find("TEXT")));
        }
    }
}

TEST_CASE("numbers on German sheets have a decimal comma, and English is back afterwards") {
    const Boat boat = germanBoat(SHEERLAY_EXAMPLES "/brindlewick/brindlewick.sheerlay");
    const auto words = [&](const Project& project) {
        std::string all;
        for (const Sheet& sheet :
             cutSheets(project, boat.hull, boat.shop.plan, Units::Millimetres, PageSize::A4))
            all += test::wordsOf(sheet);
        return all;
    };
    const std::string german = words(boat.project);
    Project english = boat.project;
    english.language = Language::English;
    const std::string before = words(english);
    CHECK(german.find("15,9") != std::string::npos);
    CHECK(german.find("15.9") == std::string::npos);
    CHECK(before.find("15.9") != std::string::npos);
    CHECK(words(boat.project) == german);
    CHECK(words(english) == before);
}

TEST_CASE("what is found of the planking and its boards is told in German, and kept in English") {
    auto read = readProject(SHEERLAY_EXAMPLES "/brindlewick/brindlewick.sheerlay");
    REQUIRE(read);
    read->project.language = Language::German;
    const auto hull = loft(read->project);
    REQUIRE(hull);
    const auto plan = plank(read->project, *hull);
    REQUIRE(plan);
    REQUIRE_FALSE(plan->findings.empty());
    std::vector<Finding> findings = plan->findings;
    if (const auto stock = planStock(read->project, *hull, *plan))
        findings.insert(findings.end(), stock->findings.begin(), stock->findings.end());
    for (const Finding& finding : findings) {
        INFO(finding.text);
        CHECK(englishIn(finding.text) != "");
        const Speaking german(Language::German);
        CHECK(englishIn(toSentence(finding)) == "");
    }
}

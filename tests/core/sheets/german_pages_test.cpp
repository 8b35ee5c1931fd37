#include "core/fairness/fairness_findings.hpp"
#include "core/hull/hull.hpp"
#include "core/lines_drawing/curvature_sheet.hpp"
#include "core/lines_drawing/lines_sheet.hpp"
#include "core/materials/materials.hpp"
#include "core/materials/materials_sheet.hpp"
#include "core/patterns/pattern_files.hpp"
#include "core/patterns/pattern_set.hpp"
#include "core/patterns/strongback_sheet.hpp"
#include "core/planking/plan_findings.hpp"
#include "core/planking/planking.hpp"
#include "core/project/project_file.hpp"
#include "core/questions/table_questions.hpp"
#include "core/sheets/boat_sheets.hpp"
#include "core/sheets/cut_sheets.hpp"
#include "core/sheets/fitout_sheets.hpp"
#include "core/sheets/shop_plan.hpp"
#include "core/sheets/stock_sheets.hpp"
#include "core/sheets/strip_notes.hpp"
#include "core/sheets/wall_map.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/sheet_reading.hpp"

#include <array>
#include <cctype>
#include <regex>
#include <sstream>
#include <string>
#include <string_view>
#include <vector>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

/// The first English word of a text that no German text has; "" where there is none.
std::string englishIn(const std::string& text) {
    constexpr std::array<std::string_view, 60> words{
        "the",      "of",    "and",     "to",    "with",     "from",  "is",    "are",   "its",    "by",
        "it",       "at",    "for",     "or",    "on",       "where", "each",  "than",  "that",   "this",
        "be",       "cut",   "length",  "width", "row",      "edge",  "strip", "board", "boards", "long",
        "station",  "about", "degrees", "feet",  "you",      "bow",   "stern", "keel",  "sheer",  "gunwale",
        "gunwales", "seat",  "thwart",  "yoke",  "bulkhead", "cloth", "resin", "glue",  "inside", "outside",
        "inner",    "outer", "wide",    "high",  "thick",    "piece", "wood",  "plank", "screws", "percent"};
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

/// The first word of a text with a decimal point; "" where there is none. A strip's name may have one
/// ("S-03.2"): it is a name, not a number.
std::string pointIn(const std::string& text) {
    static const std::regex number(R"([0-9]\.[0-9])"), name(R"(^[^A-Za-z0-9]*[SPC]-?[0-9]+\.[0-9])");
    std::istringstream words(text);
    for (std::string word; words >> word;)
        if (std::regex_search(word, number) && !std::regex_search(word, name))
            return word;
    return {};
}

struct Boat {
    Project project;
    LoftedHull hull;
    ShopPlan shop;
};

/// What the builder of an example named in English gets names without words.
void rename(Project& project) {
    auto number = [n = 0](std::string& name) mutable {
        name = "N";
        name += std::to_string(++n);
    };
    if (project.fitout) {
        for (SeatChoice& seat : project.fitout->seats)
            number(seat.name);
        for (ThwartChoice& thwart : project.fitout->thwarts)
            number(thwart.name);
    }
    if (project.afloat)
        for (auto* weights : {&project.afloat->loads, &project.afloat->parts})
            for (PlacedWeight& weight : *weights)
                number(weight.name);
}

Boat germanBoat(const std::string& name) {
    auto read = readProject(SHEERLAY_EXAMPLES "/" + name + "/" + name + ".sheerlay");
    REQUIRE(read);
    read->project.language = Language::German;
    rename(read->project);
    auto hull = loft(read->project);
    REQUIRE(hull);
    const auto plan = plank(read->project, *hull);
    REQUIRE(plan);
    ShopPlan shop = planShop(read->project, *hull, *plan);
    return {read->project, *hull, shop};
}

constexpr std::array examples{"brindlewick", "marsh-hen", "sedgewren", "tanglepike"};

void checkGerman(const std::vector<Sheet>& sheets) {
    CHECK_FALSE(sheets.empty());
    for (const Sheet& sheet : sheets) {
        INFO(sheet.title);
        CHECK(englishIn(sheet.title) == "");
        CHECK(pointIn(sheet.title) == "");
        CHECK(test::outside(sheet, 7.5) == ""); // the strongback's centreline runs 2 mm into the margin
        CHECK(test::overlapping(sheet) == "");
        for (const Text& text : test::textsOf(sheet)) {
            INFO(test::lineOf(text));
            CHECK(englishIn(test::lineOf(text)) == "");
            CHECK(pointIn(test::lineOf(text)) == "");
        }
    }
}

} // namespace

TEST_CASE("German sheets say no English, keep their margins and cover no words with others") {
    for (const char* name : examples) {
        INFO(name);
        const Boat boat = germanBoat(name);
        const AfterPlanking& after = boat.shop.after;
        for (const PageSize size : {PageSize::A4, PageSize::Letter}) {
            const Units units = size == PageSize::A4 ? Units::Millimetres : Units::Inches;
            const StockPlan* stock = boat.shop.stock ? &*boat.shop.stock : nullptr;
            checkGerman(cutSheets(boat.project, boat.hull, boat.shop.plan, units, size, stock));
            checkGerman({wallMap(boat.project, boat.hull, boat.shop.plan, units, stock)});
            if (stock != nullptr)
                checkGerman(stockSheets(boat.project, boat.hull, boat.shop.plan, *stock, units, size));
            checkGerman({materialsSheet(
                boat.project, materialsOf(boat.project, boat.hull, boat.shop, units), units, size)});
            if (after.fitout)
                checkGerman(fitoutSheets(boat.project, *after.fitout, units, size));
            if (after.covering)
                checkGerman(coveringSheets(boat.project, after, units, size));
            if (after.weights)
                checkGerman(afloatSheets(boat.project, after, units, size));
            checkGerman(
                {linesSheet(boat.project, boat.hull, units), curvatureSheet(boat.project, boat.hull, units)});
        }
    }
}

TEST_CASE("German moulds and patterns say no English; their files keep name and numbers") {
    for (const char* name : examples) {
        INFO(name);
        const Boat boat = germanBoat(name);
        for (const PageSize size : {PageSize::A4, PageSize::Letter}) {
            const Units units = size == PageSize::A4 ? Units::Millimetres : Units::Inches;
            const auto set =
                patternSet(boat.project, boat.hull, boat.shop.plan, units, boat.shop.after.fitout);
            REQUIRE(set);
            checkGerman(strongbackSheets(boat.project, set->frame, units, size));
            checkGerman(nestedPages(boat.project, set->boards, units, size));
            for (const auto* patterns : {&set->moulds, &set->strips, &set->parts})
                for (const Sheet& sheet : tiledPages(*patterns, size, boat.project.name))
                    for (const Text& text : test::textsOf(sheet)) {
                        INFO(test::lineOf(text));
                        CHECK(englishIn(test::lineOf(text)) == "");
                        CHECK(pointIn(test::lineOf(text)) == "");
                    }
            Project english = boat.project;
            english.language = Language::English;
            const auto same = patternSet(english, boat.hull, boat.shop.plan, units, boat.shop.after.fitout);
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
            REQUIRE(same->parts.size() == set->parts.size());
            for (std::size_t i = 0; i < set->parts.size(); ++i)
                CHECK(set->parts[i].file == same->parts[i].file);
        }
    }
}

TEST_CASE("numbers on German sheets have a decimal comma, and English is back afterwards") {
    const Boat boat = germanBoat("brindlewick");
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

TEST_CASE("what is found of any example is kept in English and told in German") {
    std::size_t told = 0;
    for (const char* name : examples) {
        const Boat boat = germanBoat(name);
        std::vector<Finding> findings = allFindings(boat.hull, boat.shop.plan);
        const auto join = [&](const std::vector<Finding>& more) {
            findings.insert(findings.end(), more.begin(), more.end());
        };
        join(tableQuestions(boat.project, boat.hull));
        const auto bumps = stationBumps(boat.project, boat.hull);
        REQUIRE(bumps);
        join(fairnessFindings(*bumps));
        told += findings.size();
        for (const Finding& finding : findings) {
            INFO(name << ": " << finding.text);
            CHECK(englishIn(finding.text) != "");
            const Speaking german(Language::German);
            CHECK(englishIn(toSentence(finding, boat.project.units)) == "");
            CHECK(pointIn(toSentence(finding, boat.project.units)) == "");
        }
    }
    CHECK(told > 5);
}

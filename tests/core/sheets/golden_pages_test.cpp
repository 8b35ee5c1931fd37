#include "core/moulds/mould_set.hpp"
#include "core/patterns/mould_pattern.hpp"
#include "core/patterns/pattern_set.hpp"
#include "core/patterns/strip_pattern.hpp"
#include "core/sheets/cut_sheets.hpp"
#include "core/sheets/wall_map.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fake_plan.hpp"
#include "tests/support/planked.hpp"
#include "tests/support/sheet_reading.hpp"

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

using namespace sheerlay;
using namespace sheerlay::core;

// The pages of an invented plan as somebody looked at them and found them good: what stands where, in words
// and whole tenths of a millimetre. A change to a layout fails here until it is looked at and accepted:
// tests/accept-pages.

namespace {

constexpr double sameplace = 0.3; // mm; what the eye doesn't see, and more than rounding moves

/// A page as lines of text: its size and title, how many lines are drawn and how far they reach, every text.
std::vector<std::string> written(const Sheet& sheet) {
    const auto line = [](const char* kind, std::initializer_list<double> numbers, const std::string& words) {
        std::string text = kind;
        for (const double number : numbers) {
            char digits[32];
            std::snprintf(digits, sizeof digits, " %.1f", number);
            text += digits;
        }
        return text + " | " + words;
    };
    std::vector<std::string> lines{line("page", {sheet.width, sheet.height}, sheet.title)};
    Box reach{1e9, 1e9, -1e9, -1e9};
    double paths = 0;
    for (const Item& item : sheet.items)
        if (std::holds_alternative<Path>(item)) {
            const Box box = extentOf(item);
            reach = {std::min(reach.left, box.left),
                     std::min(reach.top, box.top),
                     std::max(reach.right, box.right),
                     std::max(reach.bottom, box.bottom)};
            ++paths;
        }
    lines.push_back(line("drawn", {paths, reach.left, reach.top, reach.right, reach.bottom}, ""));
    for (const Text& text : test::textsOf(sheet))
        lines.push_back(line("text", {text.at.x(), text.at.y(), text.size}, test::lineOf(text)));
    return lines;
}

/// Same kind, same words, numbers that lie as near as makes no difference.
bool alike(const std::string& a, const std::string& b) {
    const std::size_t wordsA = a.find(" | "), wordsB = b.find(" | ");
    if (wordsA == std::string::npos || wordsB == std::string::npos || a.substr(wordsA) != b.substr(wordsB))
        return false;
    std::istringstream one(a.substr(0, wordsA)), other(b.substr(0, wordsB));
    std::string kindA, kindB;
    one >> kindA;
    other >> kindB;
    double x = 0, y = 0;
    bool same = kindA == kindB;
    while (same && one >> x)
        same = (other >> y) && std::abs(x - y) <= sameplace;
    return same && !(other >> y);
}

std::vector<std::string> linesIn(const std::string& path) {
    std::vector<std::string> lines;
    std::ifstream file(path);
    for (std::string line; std::getline(file, line);)
        lines.push_back(line);
    return lines;
}

void compare(const std::string& name, const std::vector<Sheet>& sheets) {
    std::vector<std::string> found;
    for (const Sheet& sheet : sheets)
        for (std::string& line : written(sheet))
            found.push_back(std::move(line));
    const std::string path = std::string(SHEERLAY_GOLDEN) + "/" + name + ".txt";
    if (std::getenv("SHEERLAY_ACCEPT_PAGES") != nullptr) {
        std::ofstream file(path);
        for (const std::string& line : found)
            file << line << '\n';
        REQUIRE(file.good());
        return;
    }
    const std::vector<std::string> accepted = linesIn(path);
    INFO(path << ": look at the pages, then tests/accept-pages");
    REQUIRE_FALSE(accepted.empty());
    for (std::size_t i = 0; i < std::min(found.size(), accepted.size()); ++i)
        if (!alike(found[i], accepted[i])) {
            INFO("line " << i + 1 << "\n  accepted: " << accepted[i] << "\n  found:    " << found[i]);
            FAIL_CHECK("a page is not as it was accepted");
            return; // the rest would only follow from it
        }
    CHECK(found.size() == accepted.size());
}

} // namespace

TEST_CASE("the pages are as they were looked at and accepted") {
    const test::FakeBoat boat = test::makeFakeBoat(4);
    compare("cut-sheets-a4-mm",
            cutSheets(boat.project, boat.hull, boat.plan, Units::Millimetres, PageSize::A4));
    compare("cut-sheets-letter-in",
            cutSheets(boat.project, boat.hull, boat.plan, Units::Inches, PageSize::Letter));
    compare("wall-map-in", {wallMap(boat.project, boat.hull, boat.plan, Units::Inches)});

    test::FakeBoat german = test::makeFakeBoat(1);
    german.project.language = Language::German;
    compare("cut-sheets-german-a4-mm",
            cutSheets(german.project, german.hull, german.plan, Units::Millimetres, PageSize::A4));

    // a stealer that runs out to points: its cut sheet, and the pages it is marked out by
    test::FakeStrip form;
    form.kind = StripKind::Stealer;
    form.length = 620.0;
    form.firstX = 300.0;
    form.endWidth = 2.0;
    form.cut = 0.2;
    test::FakeBoat stealer = test::makeFakeBoat(1);
    stealer.plan.strips = {test::makeFakeStrip(form)};
    const std::vector<Sheet> sheets =
        cutSheets(stealer.project, stealer.hull, stealer.plan, Units::Inches, PageSize::Letter);
    compare("stealer-letter-in", {sheets.back()});
    compare("stealer-pattern-letter-in",
            tiledPages(stripPatterns(stealer.project, stealer.hull, stealer.plan, Units::Inches),
                       PageSize::Letter,
                       stealer.project.name));

    const LoftedHull sphere = test::quarterSphere(300.0);
    Project moulded;
    moulded.name = "Reed Warbler";
    moulded.moulds.stations = {300.0};
    const auto set = mouldsOf(moulded, sphere);
    REQUIRE(set);
    const std::vector<Pattern> mould = mouldPatterns(moulded, *set, Units::Millimetres);
    compare("mould-a4-mm", tiledPages({mould.front()}, PageSize::A4, moulded.name));
}

TEST_CASE("what moved, changed its words or is missing is not alike; what rounding moves is") {
    const std::string line = "text 10.0 20.0 4.5 | Cut to 900 mm";
    CHECK(alike(line, line));
    CHECK(alike(line, "text 10.1 19.9 4.5 | Cut to 900 mm"));
    CHECK_FALSE(alike(line, "text 10.0 21.0 4.5 | Cut to 900 mm"));
    CHECK_FALSE(alike(line, "text 10.0 20.0 4.5 | Cut to 905 mm"));
    CHECK_FALSE(alike(line, "drawn 10.0 20.0 4.5 | Cut to 900 mm"));
    CHECK_FALSE(alike(line, "text 10.0 20.0 | Cut to 900 mm"));
    CHECK_FALSE(alike("text 10.0 20.0 | Cut to 900 mm", line));
}

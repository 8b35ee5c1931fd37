#include "core/patterns/pattern_set.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"
#include "tests/ui/paper/paper_support.hpp"
#include "ui/paper/pattern_files.hpp"

#include <algorithm>

using namespace sheerlay;

namespace {

struct Skiff {
    test::Planked boat = test::planked(test::projectAt(SHEERLAY_EXAMPLES "/sedgewren/sedgewren.sheerlay"));
    core::PatternSet set =
        core::patternSet(boat.project, boat.hull, boat.plan, core::Units::Millimetres).value();

    [[nodiscard]] ui::WrittenFiles write(const std::string& folder) const {
        return ui::writePatternFiles(boat.project, set, core::Units::Millimetres, core::PageSize::A4, folder);
    }
};

} // namespace

TEST_CASE("PDFs of both kinds, and every pattern as DXF and SVG, the same bytes each time") {
    const Skiff skiff;
    const test::Folder folder;
    const auto first = skiff.write(folder.file("new/one")), second = skiff.write(folder.file("two"));
    REQUIRE(first);
    REQUIRE(second);
    const auto has = [&](const std::string& name) {
        return std::ranges::find(first->files, folder.file("new/one/") + name) != first->files.end();
    };
    for (const char* name : {"moulds-tiled.pdf",
                             "moulds-roll.pdf",
                             "strips-tiled.pdf",
                             "strips-roll.pdf",
                             "moulds-on-sheets.pdf",
                             "moulds-on-sheet-01-mm.dxf",
                             "moulds-on-sheet-01-mm.svg"})
        CHECK(has(name));
    std::size_t patterns = skiff.set.boards.nesting.sheets.size();
    for (const auto* list : {&skiff.set.moulds, &skiff.set.strips})
        for (const core::Pattern& pattern : *list) {
            ++patterns;
            CHECK(has(pattern.file + "-mm.dxf"));
            CHECK(has(pattern.file + "-mm.svg"));
        }
    CHECK(first->files.size() == 5 + 2 * patterns);
    REQUIRE(first->files.size() == second->files.size());
    for (std::size_t i = 0; i < first->files.size(); ++i)
        CHECK(test::bytesOf(first->files[i]) == test::bytesOf(second->files[i]));
}

TEST_CASE("parts alone are written in tiles, on a roll and for machines; without parts nothing is") {
    core::Pattern square;
    square.file = "bulkhead-bow";
    square.title = "Bulkhead, bow";
    square.lines = {
        {core::Layer::Cut, {{0, 0}, {300, 0}, {300, 300}, {0, 300}}, true, core::LineKind::Visible, {}}};
    const test::Folder folder;
    const auto files = ui::writePartPatterns({square}, core::PageSize::A4, "Trial", folder.file("parts"));
    REQUIRE(files);
    std::vector<std::string> expected;
    for (const char* name :
         {"parts-tiled.pdf", "parts-roll.pdf", "bulkhead-bow-mm.dxf", "bulkhead-bow-mm.svg"})
        expected.push_back(folder.file("parts/") + name);
    CHECK(*files == expected);
    const auto none = ui::writePartPatterns({}, core::PageSize::A4, "Trial", folder.file("none"));
    REQUIRE(none);
    CHECK(none->empty());
}

TEST_CASE("patterns with nowhere to go are told in words") {
    const Skiff skiff;
    const test::Folder folder;
    REQUIRE(ui::writeBytes("mine", folder.file("taken")));
    const auto result = skiff.write(folder.file("taken"));
    REQUIRE_FALSE(result);
    CHECK(result.error().text.find("could not be made") != std::string::npos);
    CHECK(test::bytesOf(folder.file("taken")) == "mine");
    REQUIRE(ui::makeFolder(folder.file("half/strips-roll.pdf"))); // a folder where a file should go
    CHECK_FALSE(skiff.write(folder.file("half")));
}

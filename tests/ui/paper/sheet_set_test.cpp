#include "core/hull/hull.hpp"
#include "core/planking/planking.hpp"
#include "core/project/project_file.hpp"
#include "core/sheets/pieces.hpp"
#include "core/sheets/words.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fake_plan.hpp"
#include "tests/support/planked.hpp"
#include "tests/ui/paper/paper_support.hpp"
#include "ui/paper/sheet_set.hpp"

#include <algorithm>
#include <regex>

using namespace sheerlay;

TEST_CASE("the example's whole set is written, searchable and the same twice") {
    const auto read = core::readProject(SHEERLAY_EXAMPLES "/brindlewick/brindlewick.sheerlay");
    REQUIRE(read);
    const auto hull = core::loft(read->project);
    REQUIRE(hull);
    const auto plan = core::plank(read->project, *hull);
    REQUIRE(plan);
    const test::Folder folder;
    const core::ShopPlan shop = core::planShop(read->project, *hull, *plan);
    const auto write = [&](const core::ShopPlan& planned, const char* to, const std::string& before = {}) {
        return ui::writeSheetSet(read->project,
                                 *hull,
                                 planned,
                                 core::Units::Inches,
                                 core::PageSize::Letter,
                                 folder.file(to),
                                 before);
    };
    const auto first = write(shop, "shop/set one");
    REQUIRE(first);
    CHECK(first->files.front() == folder.file("shop/set one/cut-sheets.pdf"));
    const auto has = [&](const std::string& name) {
        return std::ranges::find(first->files, folder.file(("shop/set one/" + name).c_str())) !=
               first->files.end();
    };
    for (const char* name : {"wall-map.pdf",
                             "wall-map-tiles.pdf",
                             "strongback.pdf",
                             "lines.pdf",
                             "stock.pdf",
                             "fitout.pdf",
                             "cut-sheets-record.txt"})
        CHECK(has(name));
    CHECK_FALSE(has("changed-sheets.pdf")); // the first set is all new
    const auto wordsIn = [&](const char* name) {
        return test::run("pdftotext",
                         {QStringLiteral("-layout"),
                          QString::fromStdString(folder.file((std::string("shop/set one/") + name).c_str())),
                          QStringLiteral("-")});
    };

    const std::string text = wordsIn("cut-sheets.pdf");
    const std::string map = wordsIn("wall-map.pdf");
    const std::string tiles = wordsIn("wall-map-tiles.pdf");
    for (const core::Strip& strip : plan->strips) {
        INFO(strip.id);
        CHECK(text.find(strip.id) != std::string::npos);
        CHECK(text.find(core::cutLengthText(strip.cutLength, core::Units::Inches)) != std::string::npos);
        CHECK(map.find(strip.id) != std::string::npos);
        CHECK(tiles.find(strip.id) != std::string::npos);
    }
    const std::string info = test::run("pdfinfo", {QString::fromStdString(first->files.front())});
    std::smatch pages;
    REQUIRE(std::regex_search(info, pages, std::regex("Pages: +([0-9]+)")));
    CHECK(std::stoul(pages[1]) >= core::piecesOf(*plan).size() + 2); // cover and laying order
    CHECK(text.find("page 1 of " + pages[1].str()) != std::string::npos);
    CHECK(text.find("page " + pages[1].str() + " of " + pages[1].str()) != std::string::npos);

    const std::string stock = wordsIn("stock.pdf");
    for (const char* words : {"boards to buy", "from boards to strips", "scarfs", "Labels for the pieces"})
        CHECK(stock.find(words) != std::string::npos);

    const std::string lines = wordsIn("lines.pdf");
    for (const char* words : {"Lines, 1:", "base line", "diagonal A"})
        CHECK(lines.find(words) != std::string::npos);

    const auto second = write(shop, "again");
    REQUIRE(second);
    for (std::size_t i = 0; i < first->files.size(); ++i)
        CHECK(test::bytesOf(first->files[i]) == test::bytesOf(second->files[i]));

    // a strip cut longer: its sheet, and the sheets that list it, come once more by themselves
    core::ShopPlan longer = shop;
    for (core::Strip& strip : longer.plan.strips)
        if (strip.row == 9)
            strip.cutLength += 25.4;
    const auto third = write(longer, "third", folder.file("again"));
    REQUIRE(third);
    const std::string changed = test::run(
        "pdftotext", {QString::fromStdString(folder.file("third/changed-sheets.pdf")), QStringLiteral("-")});
    CHECK(changed.find("S09 P09") != std::string::npos);
    CHECK(changed.find("revision 2") != std::string::npos);
    const std::string few =
        test::run("pdfinfo", {QString::fromStdString(folder.file("third/changed-sheets.pdf"))});
    std::smatch fewPages;
    REQUIRE(std::regex_search(few, fewPages, std::regex("Pages: +([0-9]+)")));
    CHECK(std::stoul(fewPages[1]) < std::stoul(pages[1]));
}

TEST_CASE("changed sheets of an earlier set go with its record, and that it is lost is told") {
    test::Planked boat =
        test::planked(test::projectAt(SHEERLAY_EXAMPLES "/brindlewick/brindlewick.sheerlay"));
    boat.plan.strips.resize(6); // enough to change one
    const test::Folder folder;
    const std::string set = folder.file("set"), changed = set + "/changed-sheets.pdf";
    const auto write = [&] {
        const auto written = ui::writeSheetSet(boat.project,
                                               boat.hull,
                                               {boat.plan, {}, {}, {}},
                                               core::Units::Millimetres,
                                               core::PageSize::A4,
                                               set);
        REQUIRE(written);
        return std::ranges::any_of(written->findings,
                                   [](const core::Finding& f) { return f.code == "print-record-lost"; });
    };
    CHECK_FALSE(write());
    for (const bool spoilt : {true, false}) {
        boat.plan.strips.front().cutLength += 25.4;
        CHECK_FALSE(write());
        REQUIRE(QFile::exists(QString::fromStdString(changed)));
        CHECK_FALSE(write()); // nothing changed since: they are still what changed last
        CHECK(QFile::exists(QString::fromStdString(changed)));
        QFile record(QString::fromStdString(set + "/cut-sheets-record.txt"));
        if (spoilt) {
            REQUIRE(record.open(QIODevice::WriteOnly));
            record.write("no record");
            record.close();
        } else {
            REQUIRE(record.remove());
        }
        CHECK(write());
        CHECK_FALSE(QFile::exists(QString::fromStdString(changed)));
        CHECK_FALSE(write());
    }
}

TEST_CASE("a folder that can't be made is told in words") {
    const test::FakeBoat boat = test::makeFakeBoat(2);
    const test::Folder folder;
    const std::string file = folder.file("plain-file");
    QFile blocker(QString::fromStdString(file));
    REQUIRE(blocker.open(QIODevice::WriteOnly));
    const auto result = ui::writeSheetSet(boat.project,
                                          boat.hull,
                                          {boat.plan, {}, {}, {}},
                                          core::Units::Millimetres,
                                          core::PageSize::A4,
                                          file + "/set");
    REQUIRE_FALSE(result);
    CHECK(result.error().text.find("could not be made") != std::string::npos);
}

TEST_CASE("no paper is left out without a word: moulds, and parts of the fit-out") {
    core::Project project = test::projectAt(SHEERLAY_EXAMPLES "/brindlewick/brindlewick.sheerlay");
    project.moulds.stations = {-5000.0}; // before the bow
    project.fitout->seats[0].x = 9000.0; // abaft the stern
    project.stock.reset();
    const test::Planked boat = test::planked(project);
    const test::Folder folder;
    const auto written = ui::writeSheetSet(boat.project,
                                           boat.hull,
                                           core::planShop(boat.project, boat.hull, boat.plan),
                                           core::Units::Inches,
                                           core::PageSize::Letter,
                                           folder.file("set"));
    REQUIRE(written);
    CHECK(std::ranges::none_of(written->files, [](const std::string& file) {
        return file.find("strongback.pdf") != std::string::npos;
    }));
    for (const char* code : {"no-moulds", "seat-outside"})
        CHECK(std::ranges::any_of(written->findings, [&](const core::Finding& f) { return f.code == code; }));
    CHECK(written->findings.front().level == core::Level::Stop);
}

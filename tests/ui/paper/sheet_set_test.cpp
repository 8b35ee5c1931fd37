#include "core/hull/hull.hpp"
#include "core/planking/planking.hpp"
#include "core/project/project_file.hpp"
#include "core/sheets/pieces.hpp"
#include "core/sheets/words.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fake_plan.hpp"
#include "tests/ui/paper/paper_support.hpp"
#include "ui/paper/sheet_set.hpp"

#include <ctime>
#include <regex>

using namespace sheerlay;

TEST_CASE("the example's whole set is written within three seconds, searchable and the same twice") {
    const auto read = core::readProject(SHEERLAY_EXAMPLES "/brindlewick/brindlewick.sheerlay");
    REQUIRE(read);
    const auto hull = core::loft(read->project);
    REQUIRE(hull);
    const auto plan = core::plank(read->project, *hull);
    REQUIRE(plan);
    const test::Folder folder;
    const std::clock_t start = std::clock(); // processor's time: other work on the machine doesn't count
    const auto first = ui::writeSheetSet(read->project,
                                         *hull,
                                         *plan,
                                         core::Units::Inches,
                                         core::PageSize::Letter,
                                         folder.file("shop/set one"));
    const double taken = static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
    REQUIRE(first);
#if defined(NDEBUG)
    CHECK(taken < 3.0);
#endif
    REQUIRE(first->size() == 6);
    CHECK(first->front() == folder.file("shop/set one/cut-sheets.pdf"));
    CHECK((*first)[1] == folder.file("shop/set one/wall-map.pdf"));
    CHECK((*first)[2] == folder.file("shop/set one/strongback.pdf"));
    CHECK((*first)[3] == folder.file("shop/set one/lines.pdf"));
    CHECK((*first)[4] == folder.file("shop/set one/stock.pdf"));
    CHECK(first->back() == folder.file("shop/set one/fitout.pdf"));

    const std::string text =
        test::run("pdftotext",
                  {QStringLiteral("-layout"), QString::fromStdString(first->front()), QStringLiteral("-")});
    const std::string map = test::run(
        "pdftotext", {QStringLiteral("-layout"), QString::fromStdString((*first)[1]), QStringLiteral("-")});
    for (const core::Strip& strip : plan->strips) {
        INFO(strip.id);
        CHECK(text.find(strip.id) != std::string::npos);
        CHECK(text.find(core::cutLengthText(strip.cutLength, core::Units::Inches)) != std::string::npos);
        CHECK(map.find(strip.id) != std::string::npos);
    }
    const std::string info = test::run("pdfinfo", {QString::fromStdString(first->front())});
    std::smatch pages;
    REQUIRE(std::regex_search(info, pages, std::regex("Pages: +([0-9]+)")));
    CHECK(std::stoul(pages[1]) >= core::piecesOf(*plan).size() + 2); // cover and laying order
    CHECK(text.find("page 1 of " + pages[1].str()) != std::string::npos);
    CHECK(text.find("page " + pages[1].str() + " of " + pages[1].str()) != std::string::npos);

    const std::string stock = test::run(
        "pdftotext", {QStringLiteral("-layout"), QString::fromStdString((*first)[4]), QStringLiteral("-")});
    for (const char* words : {"boards to buy", "from boards to strips", "scarfs", "Labels for the pieces"})
        CHECK(stock.find(words) != std::string::npos);

    const std::string lines =
        test::run("pdftotext", {QString::fromStdString((*first)[3]), QStringLiteral("-")});
    for (const char* words : {"Lines, 1:", "base line", "diagonal A"})
        CHECK(lines.find(words) != std::string::npos);

    const auto second = ui::writeSheetSet(
        read->project, *hull, *plan, core::Units::Inches, core::PageSize::Letter, folder.file("again"));
    REQUIRE(second);
    for (std::size_t i = 0; i < first->size(); ++i)
        CHECK(test::bytesOf((*first)[i]) == test::bytesOf((*second)[i]));
}

TEST_CASE("a folder that can't be made is told in words") {
    const test::FakeBoat boat = test::makeFakeBoat(2);
    const test::Folder folder;
    const std::string file = folder.file("plain-file");
    QFile blocker(QString::fromStdString(file));
    REQUIRE(blocker.open(QIODevice::WriteOnly));
    const auto result = ui::writeSheetSet(
        boat.project, boat.hull, boat.plan, core::Units::Millimetres, core::PageSize::A4, file + "/set");
    REQUIRE_FALSE(result);
    CHECK(result.error().text.find("could not be made") != std::string::npos);
}

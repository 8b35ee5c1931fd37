#include "core/sheets/compose.hpp"
#include "core/sheets/page_frame.hpp"
#include "tests/support/catch.hpp"
#include "tests/ui/paper/paper_support.hpp"
#include "ui/paper/pdf_writer.hpp"

#include <QFileInfo>

#include <algorithm>
#include <regex>

using namespace sheerlay;

namespace {

core::Sheet sheetOf(double width, double height, std::vector<core::Item> items) {
    core::Sheet sheet;
    sheet.width = width;
    sheet.height = height;
    sheet.title = "Check";
    sheet.items = std::move(items);
    return sheet;
}

} // namespace

TEST_CASE("a line of 100 mm is 100 mm on paper of any size") {
    const test::Folder folder;
    for (const auto& [width, height] :
         {std::pair{210.0, 297.0}, std::pair{215.9, 279.4}, std::pair{841.0, 594.0}}) {
        const std::string path = folder.file("bar.pdf");
        REQUIRE(ui::writePdf(
            {sheetOf(width, height, core::scaleBar({20.0, 50.0}, core::Units::Millimetres, 3.0))}, path));
        double longest = 0.0;
        for (const auto& line : test::polylines(test::svgOf(path)))
            if (line.size() == 2)
                longest = std::max(longest, (line[1] - line[0]).norm());
        CHECK(longest == Approx(100.0).margin(0.01));
    }
}

TEST_CASE("pages keep their own sizes, in whole points") {
    const test::Folder folder;
    const std::string path = folder.file("pages.pdf");
    REQUIRE(ui::writePdf({sheetOf(210, 297, {}), sheetOf(841, 594, {}), sheetOf(215.9, 279.4, {})}, path));
    const std::string info =
        test::run("pdfinfo", {QStringLiteral("-l"), QStringLiteral("9"), QString::fromStdString(path)});
    const auto has = [&](const char* pattern) { return std::regex_search(info, std::regex(pattern)); };
    CHECK(has("Pages: +3"));
    CHECK(has("Page +1 size: +595 x 842"));
    CHECK(has("Page +2 size: +2384 x 1684"));
    CHECK(has("Page +3 size: +612 x 792"));
}

TEST_CASE("words, fractions and stations can be searched for") {
    const test::Folder folder;
    const std::string path = folder.file("text.pdf");
    std::vector<core::Item> items;
    const char* lines[] = {"Cut to 17' 10 5/16\"",
                           "station 3-0-0",
                           "Twists 14.5 degrees, 52\u00B0",
                           "width 13/16\"",
                           "Ren\u00E9e's fl\u00F8te"};
    double y = 40.0;
    for (const char* line : lines) {
        items.emplace_back(core::makeText({20.0, y}, line, {.size = 6.0}));
        y += 15.0;
    }
    items.emplace_back(
        core::makeText({20.0, y + 10.0}, "15' 3 3/4\"", {.size = 19.0, .weight = core::Weight::Bold}));
    items.emplace_back(
        core::makeText({190.0, y + 40.0}, "1 7/8\"", {.size = 4.5, .anchor = core::Anchor::Right}));
    REQUIRE(ui::writePdf({sheetOf(210, 297, items)}, path));
    for (const char* option : {"-layout", "-raw"}) {
        const std::string text = test::run(
            "pdftotext", {QString::fromUtf8(option), QString::fromStdString(path), QStringLiteral("-")});
        for (const char* line : lines)
            CHECK(text.find(line) != std::string::npos);
        CHECK(text.find("15' 3 3/4\"") != std::string::npos);
        CHECK(text.find("1 7/8\"") != std::string::npos);
    }
    const std::string fonts = test::run("pdffonts", {QString::fromStdString(path)});
    CHECK(fonts.find("Inter") != std::string::npos);
    CHECK(fonts.find("yes no  yes") != std::string::npos); // embedded, with a map back to text
}

TEST_CASE("the same sheets give the same bytes, in any time zone, and a sound file") {
    const test::Folder folder;
    const std::vector<core::Sheet> sheets{
        sheetOf(210, 297, core::scaleBar({20.0, 50.0}, core::Units::Inches, 3.0)), sheetOf(297, 420, {})};
    const QByteArray zone = qgetenv("TZ");
    std::vector<std::string> files;
    for (const char* place : {"UTC", "Asia/Kolkata", "America/St_Johns"}) {
        qputenv("TZ", place);
        const std::string path = folder.file("same.pdf");
        REQUIRE(ui::writePdf(sheets, path));
        files.push_back(test::bytesOf(path));
        // poppler tells on standard error when it has to mend a table of objects
        CHECK(test::run("sh",
                        {QStringLiteral("-c"),
                         QStringLiteral("pdfinfo \"$1\" 2>&1"),
                         QStringLiteral("sh"),
                         QString::fromStdString(path)})
                  .find("rror") == std::string::npos);
    }
    if (zone.isEmpty())
        qunsetenv("TZ");
    else
        qputenv("TZ", zone);
    CHECK(files[0] == files[1]);
    CHECK(files[0] == files[2]);
    CHECK(files[0].find("/CreationDate (D:20000101000000Z)") != std::string::npos);
}

TEST_CASE("every entry of the table of objects points at its object after the date was changed") {
    const test::Folder folder;
    const std::string path = folder.file("table.pdf");
    REQUIRE(ui::writePdf({sheetOf(210, 297, {core::makeText({20, 30}, "keel")})}, path));
    const std::string pdf = test::bytesOf(path);
    const std::size_t tail = pdf.rfind("startxref");
    const std::size_t table = std::stoul(pdf.substr(tail + 10));
    REQUIRE(pdf.compare(table, 4, "xref") == 0);
    std::size_t line = pdf.find('\n', table + 5) + 1;
    int number = 0, sound = 0;
    for (; pdf[line + 17] == 'n' || pdf[line + 17] == 'f'; line += 20, ++number)
        if (pdf[line + 17] == 'n') {
            const std::size_t offset = std::stoul(pdf.substr(line, 10));
            const std::string wanted = std::to_string(number) + " 0 obj";
            CHECK(pdf.compare(offset, wanted.size(), wanted) == 0);
            ++sound;
        }
    CHECK(sound > 4);
}

TEST_CASE("bytes that are no PDF of ours come back as they are") {
    for (const char* bytes :
         {"", "startxref", "/CreationDate (D:2024", "/CreationDate (x) startxref\n99999\n%%EOF"})
        CHECK(ui::withFixedDate(bytes) == bytes);
}

TEST_CASE("a file that can't be written is told in words and leaves nothing behind") {
    const test::Folder folder;
    const std::string path = folder.file("nowhere/sheet.pdf");
    const ui::Written result = ui::writePdf({sheetOf(210, 297, {})}, path);
    REQUIRE_FALSE(result);
    CHECK(result.error().text.find(path) == 0);
    CHECK(result.error().text.find("could not be written") != std::string::npos);
    CHECK_FALSE(ui::writePdf({}, folder.file("none.pdf")));
    CHECK_FALSE(QFileInfo::exists(QString::fromStdString(folder.file("none.pdf"))));
    const std::string taken = folder.file("taken"); // a folder where the file should go stays a folder
    REQUIRE(QDir().mkpath(QString::fromStdString(taken)));
    CHECK_FALSE(ui::writePdf({sheetOf(210, 297, {})}, taken));
    CHECK(QFileInfo(QString::fromStdString(taken)).isDir());
}

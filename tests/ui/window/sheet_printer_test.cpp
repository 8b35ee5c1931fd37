#include "tests/support/catch.hpp"
#include "tests/support/window_workshop.hpp"
#include "ui/window/page_set.hpp"
#include "ui/window/sheet_printer.hpp"
#include "ui/window/sheets_bench.hpp"

#include <QApplication>
#include <QFile>
#include <QPrintPreviewDialog>
#include <QPrintPreviewWidget>
#include <QPrinter>
#include <QPushButton>
#include <QScreen>
#include <QTest>
#include <QTimer>

#include <algorithm>

using namespace sheerlay;
using namespace sheerlay::ui;
using namespace sheerlay::test;

namespace {

const QByteArray tables = "\n[stock]\n[[stock.lot]]\nnominal = \"1x6\"\nlength = \"12 ft\"\n"
                          "[fitout.gunwales]\nstand = \"square\"\n";

QPushButton* buttonWith(const QWidget& bench, const QString& text) {
    for (QPushButton* button : bench.findChildren<QPushButton*>())
        if (button->text() == text)
            return button;
    return nullptr;
}

/// Closes the next modal dialog without printing. @return  set once it was a preview
std::shared_ptr<bool> dismissPreview(QTimer& watch) {
    auto seen = std::make_shared<bool>(false);
    QObject::connect(&watch, &QTimer::timeout, &watch, [seen] {
        if (auto* dialog = qobject_cast<QPrintPreviewDialog*>(QApplication::activeModalWidget())) {
            *seen = true;
            // a whole page in a small window would be too small for its fractions
            CHECK(dialog->width() >= 0.9 * dialog->screen()->availableSize().width());
            for (const QPrintPreviewWidget* pages : dialog->findChildren<QPrintPreviewWidget*>()) {
                CHECK(pages->zoomMode() == QPrintPreviewWidget::FitToWidth);
                CHECK(pages->zoomFactor() > 0.85); // 800 pixels offscreen
            }
            dialog->reject();
        }
    });
    watch.start(20);
    return seen;
}

} // namespace

TEST_CASE_METHOD(App, "every bench of pages prints, one page a sheet") {
    Workshop shop;
    shop.rewrite(shop.good + tables);
    for (const PageSet& set : {mouldPages(), stockPages(), wallPages(), fittingOutPages()}) {
        const auto pages = set.printed(*shop.window.boat(), core::Units::Millimetres, core::PageSize::A4);
        REQUIRE_FALSE(pages.empty());
        // one paper for the whole set: a printer can't change it between two pages, only the sheet be turned
        for (const core::Sheet& page : pages) {
            CHECK_THAT(std::min(page.width, page.height), WithinAbs(210.0, 0.5));
            CHECK_THAT(std::max(page.width, page.height), WithinAbs(297.0, 0.5));
        }
        QPrinter printer(QPrinter::HighResolution);
        printer.setOutputFormat(QPrinter::PdfFormat);
        const QString path = shop.folder.filePath(QStringLiteral("printed.pdf"));
        printer.setOutputFileName(path);
        std::vector<int> told;
        REQUIRE(printSheets(printer, pages, [&](int done) {
                    told.push_back(done);
                    return true;
                }) == Printed::Taken);
        CHECK(told.size() == pages.size());
        CHECK(told.back() + 1 == static_cast<int>(pages.size()));
        const QByteArray pdf = bytesOf(path);
        CHECK(pdf.startsWith("%PDF-"));
        CHECK(pdf.count("/Type /Page\n") == static_cast<qsizetype>(pages.size()));
        QFile::remove(path);
    }
    const auto pages = wallPages().printed(*shop.window.boat(), core::Units::Inches, core::PageSize::Letter);
    QPrinter nowhere(QPrinter::HighResolution);
    nowhere.setOutputFormat(QPrinter::PdfFormat);
    nowhere.setOutputFileName(shop.folder.filePath(QStringLiteral("no such folder/printed.pdf")));
    CHECK(printSheets(nowhere, pages) == Printed::Refused);
}

TEST_CASE_METHOD(App, "every page is printed by itself, one larger than the paper in pages to be joined") {
    Workshop shop;
    shop.rewrite(shop.good + tables);
    const Boat& boat = *shop.window.boat();
    const auto onPaper = [](const core::Sheet& page) {
        return std::max(page.width, page.height) < 298 && std::min(page.width, page.height) < 211;
    };
    for (const PageSet& set : {mouldPages(), stockPages(), wallPages(), fittingOutPages()}) {
        INFO(set.name.toStdString());
        const auto shown = set.show(boat, core::Units::Millimetres, core::PageSize::A4).sheets;
        const auto alone = [&](std::size_t i) {
            return set.alone(boat, core::Units::Millimetres, core::PageSize::A4, {}, i);
        };
        std::size_t large = 0;
        while (large < shown.size() && onPaper(shown[large]))
            ++large;
        for (const std::size_t i : {std::size_t(0), shown.size() / 2, large, shown.size() - 1}) {
            if (i == shown.size())
                continue; // nothing larger than the paper here
            INFO(i << ": " << shown[i].title);
            const auto pages = alone(i);
            REQUIRE_FALSE(pages.empty());
            for (const core::Sheet& page : pages)
                CHECK(onPaper(page));
            CHECK((pages.size() > 1) == !onPaper(shown[i]));
            const std::string_view what = shown[i].title;
            for (const core::Sheet& page : pages)
                CHECK(page.title.starts_with(what.substr(0, what.find(" (")))); // the pattern's own name
            if (onPaper(shown[i])) {
                CHECK(pages.front().items.size() == shown[i].items.size());
            }
        }
        CHECK(alone(shown.size()).empty());
    }
}

TEST_CASE_METHOD(App, "a sheet that lies across is turned on the paper of the first") {
    core::Sheet upright, across;
    upright.width = across.height = 210.0;
    upright.height = across.width = 297.0;
    const QTemporaryDir folder;
    QPrinter printer(QPrinter::HighResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    const QString path = folder.filePath(QStringLiteral("both.pdf"));
    printer.setOutputFileName(path);
    REQUIRE(printSheets(printer, {upright, across, upright}) == Printed::Taken);
    const QByteArray pdf = bytesOf(path);
    CHECK(pdf.count("/Type /Page\n") == 3);
    CHECK(pdf.count("/MediaBox [0 0 595.000000 842.000000]") == 3);
}

TEST_CASE_METHOD(App, "painting stops between two pages when the builder says so") {
    Workshop shop;
    const auto pages = wallPages().printed(*shop.window.boat(), core::Units::Inches, core::PageSize::Letter);
    REQUIRE(pages.size() > 3);
    QPrinter printer(QPrinter::HighResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(shop.folder.filePath(QStringLiteral("part.pdf")));
    int asked = 0;
    CHECK(printSheets(printer, pages, [&](int done) {
              ++asked;
              return done < 2;
          }) == Printed::GivenUp);
    CHECK(asked == 3);
    CHECK(printSheets(printer, pages, [](int) { return false; }) == Printed::GivenUp);
}

TEST_CASE_METHOD(
    App, "the print button lays out beside the window, can be taken back, and shows the pages first") {
    Workshop shop;
    SheetsBench bench(TaskRunner::Mode::Thread, wallPages());
    bench.setBoat(shop.window.boat());
    bench.resize(1000, 700);
    bench.show();
    REQUIRE(QTest::qWaitFor([&] { return !bench.sheets().empty(); }, patience));
    QTimer watch;
    const auto seen = dismissPreview(watch);
    const QString name = wallPages().print;
    QPushButton* print = buttonWith(bench, name);
    REQUIRE(print != nullptr);
    print->click();
    CHECK(print->text().toStdString() == "Stop");
    CHECK(bench.status().toStdString() == "Laying out the pages for the printer…");
    print->click();
    CHECK(print->text() == name);
    CHECK(bench.status().toStdString() == "Nothing was printed.");
    QTest::qWait(300); // what still ran comes to nothing
    CHECK_FALSE(*seen);

    print->click();
    REQUIRE(QTest::qWaitFor([&] { return *seen && print->text() == name; }, patience));
    CHECK(
        QTest::qWaitFor([&] { return bench.status() == QStringLiteral("Nothing was printed."); }, patience));

    // a page by itself is no printing of the set: what counts as changed stays
    QSignalSpy printed(&bench, &SheetsBench::printed);
    *seen = false;
    auto* alone = bench.findChild<QPushButton*>(QStringLiteral("printAlone"));
    REQUIRE(alone != nullptr);
    CHECK(alone->isEnabled());
    alone->click();
    CHECK_FALSE(alone->isEnabled()); // until this one is laid out
    REQUIRE(QTest::qWaitFor([&] { return *seen && alone->isEnabled(); }, patience));
    CHECK(printed.isEmpty());
}

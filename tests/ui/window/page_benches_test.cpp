#include "core/moulds/mould_set.hpp"
#include "core/patterns/pattern_set.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/window_workshop.hpp"
#include "ui/choices/choices_panel.hpp"
#include "ui/panels/planking_controls.hpp"
#include "ui/paper/pattern_files.hpp"
#include "ui/window/main_window.hpp"
#include "ui/window/page_set.hpp"
#include "ui/window/planking_bench.hpp"
#include "ui/window/project_desk.hpp"
#include "ui/window/sheets_bench.hpp"

#include <QFile>
#include <QFileInfo>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>
#include <string>

using namespace sheerlay;
using namespace sheerlay::ui;
using namespace sheerlay::test;

namespace {

QString project(const QTemporaryDir& folder, const QByteArray& added) {
    QFile reference(QStringLiteral(SHEERLAY_REFERENCE "/formula_canoe.sheerlay"));
    REQUIRE(reference.open(QIODevice::ReadOnly));
    const QString path = folder.filePath(QStringLiteral("canoe.sheerlay"));
    QFile file(path);
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write(reference.readAll() + added);
    return path;
}

qsizetype titled(const SheetsBench& bench, const std::string& word) {
    return std::count_if(bench.sheets().begin(), bench.sheets().end(), [&](const core::Sheet& s) {
        return s.title.find(word) != std::string::npos;
    });
}

} // namespace

TEST_CASE_METHOD(App, "the moulds bench shows every mould whole and writes strongback and patterns") {
    QTemporaryDir folder;
    MainWindow window(TaskRunner::Mode::SameThread);
    window.open(project(folder, {}));
    REQUIRE(window.boat() != nullptr);
    window.show();
    window.showBench(MainWindow::Bench::Moulds);
    SheetsBench& bench = *window.moulds();
    const auto set = core::mouldsOf(window.boat()->project, window.boat()->hull);
    REQUIRE(set.has_value());
    CHECK(bench.sheets().size() > set->moulds.size()); // set-out and stem forms besides
    CHECK(titled(bench, "trongback") >= 1);
    CHECK(titled(bench, "moulds on sheets") >= 1);
    CHECK(titled(bench, "ointed strip") >= 1);
    CHECK(bench.findChild<QListWidget*>()->count() == static_cast<int>(bench.sheets().size()));
    bench.write(folder.filePath(QStringLiteral("out")));
    QFile pdf(folder.filePath(QStringLiteral("out/strongback.pdf")));
    REQUIRE(pdf.open(QIODevice::ReadOnly));
    CHECK(pdf.read(5) == "%PDF-");

    // besides, what the command writes, byte for byte
    const Boat& boat = *window.boat();
    const auto patterns = core::patternSet(boat.project, boat.hull, boat.plan, boat.project.units);
    REQUIRE(patterns);
    const core::PageSize paper =
        boat.project.units == core::Units::Inches ? core::PageSize::Letter : core::PageSize::A4;
    const std::string command = folder.filePath(QStringLiteral("command")).toStdString();
    const auto files = writePatternFiles(boat.project, *patterns, boat.project.units, paper, command);
    REQUIRE(files);
    CHECK(files->files.size() > 20);
    for (const std::string& file : files->files) {
        INFO(file);
        const QString path = QString::fromStdString(file);
        CHECK(bytesOf(folder.filePath(QStringLiteral("out/")) + QFileInfo(path).fileName()) == bytesOf(path));
    }
    CHECK(bench.status().contains(QStringLiteral("files written into")));
}

TEST_CASE_METHOD(App, "the page is drawn anew to the room that is left, as when a notice comes") {
    QTemporaryDir folder;
    MainWindow window(TaskRunner::Mode::SameThread);
    window.open(project(folder, {}));
    window.resize(1280, 860);
    window.show();
    REQUIRE(QTest::qWaitForWindowExposed(&window, patience));
    window.showBench(MainWindow::Bench::Moulds);
    const QScrollArea* scroll = nullptr;
    const QLabel* picture = nullptr;
    for (const QScrollArea* area : window.moulds()->findChildren<QScrollArea*>())
        if (const auto* label = qobject_cast<QLabel*>(area->widget())) {
            scroll = area;
            picture = label;
        }
    REQUIRE(picture != nullptr);
    for (const int height : {860, 780, 900}) {
        window.resize(1280, height);
        QTest::qWait(20);
        const double drawn = picture->pixmap().deviceIndependentSize().height();
        const int room = scroll->viewport()->height();
        INFO(height << ": " << drawn << " in " << room);
        CHECK(drawn <= room);
        CHECK(drawn > 0.9 * room);
    }
}

TEST_CASE_METHOD(App, "benches say what was left out and why") {
    QTemporaryDir folder;
    MainWindow window(TaskRunner::Mode::SameThread);
    window.open(project(folder,
                        "\n[moulds]\nstations = [-5000]\n\n[[fitout.seat]]\nname = \"far seat\"\n"
                        "x = 90000\nabove-bottom = 200\n"));
    REQUIRE(window.boat() != nullptr);
    window.show();
    window.showBench(MainWindow::Bench::Moulds);
    CHECK(window.moulds()->sheets().empty());
    CHECK(window.moulds()->status().contains(QStringLiteral("no mould stands inside the hull")));
    window.showBench(MainWindow::Bench::FittingOut);
    CHECK(window.fittingOut()->status().contains(QStringLiteral("far seat")));
}

TEST_CASE_METHOD(App, "without boards the stock bench says what would make it useful") {
    QTemporaryDir folder;
    MainWindow window(TaskRunner::Mode::SameThread);
    window.open(project(folder, {}));
    window.show();
    window.showBench(MainWindow::Bench::Stock);
    CHECK(window.stock()->sheets().empty());
    CHECK(window.stock()->status().contains(QStringLiteral("[stock]")));
    const auto* form = window.stock()->findChild<ChoicesPanel*>(); // where boards are told
    REQUIRE(form != nullptr);
    CHECK(form->isVisible()); // offered once, where there is nothing else
    window.stock()->showChoices(false);
    window.showBench(MainWindow::Bench::Moulds);
    window.showBench(MainWindow::Bench::Stock);
    CHECK_FALSE(form->isVisible());
    for (const QPushButton* button : window.stock()->findChildren<QPushButton*>())
        CHECK(button->isEnabled() == form->isAncestorOf(button)); // nothing to write, nothing to print
}

TEST_CASE_METHOD(App, "with boards the stock bench holds what to buy and how to mill it") {
    QTemporaryDir folder;
    MainWindow window(TaskRunner::Mode::SameThread);
    window.open(project(folder, "\n[stock]\n[[stock.lot]]\nnominal = \"1x6\"\nlength = \"12 ft\"\n"));
    REQUIRE(window.boat() != nullptr);
    window.show();
    window.showBench(MainWindow::Bench::Stock);
    CHECK(window.stock()->sheets().size() >= 4);
    window.stock()->write(folder.filePath(QStringLiteral("out")));
    CHECK(QFile::exists(folder.filePath(QStringLiteral("out/stock.pdf"))));
    // the wall's set holds them, too, with the map last
    window.showBench(MainWindow::Bench::Sheets);
    CHECK(window.sheets()->sheets().size() > window.stock()->sheets().size());
    CHECK(window.sheets()->sheets().back().width > 420);
    const QListWidget* list = window.sheets()->findChild<QListWidget*>();
    CHECK(list->item(0)->text() == QStringLiteral("Cover"));
    CHECK(list->item(list->count() - 1)->text() == QStringLiteral("Wall map"));
}

TEST_CASE_METHOD(
    App, "the fitting-out bench shows what the project asks for, and says so where it asks for nothing") {
    QTemporaryDir folder;
    MainWindow window(TaskRunner::Mode::SameThread);
    window.open(project(folder, {}));
    REQUIRE(window.boat() != nullptr);
    window.show();
    window.showBench(MainWindow::Bench::FittingOut);
    CHECK(window.fittingOut()->sheets().empty());
    CHECK(window.fittingOut()->status().contains(QStringLiteral("[fitout]")));
    window.open(
        project(folder, "\n[fitout.gunwales]\ninner = { width = \"3/4 in\", height = \"3/4 in\" }\n"));
    REQUIRE(window.boat() != nullptr);
    window.showBench(MainWindow::Bench::FittingOut);
    CHECK(titled(*window.fittingOut(), "unwale") >= 1);
    window.fittingOut()->write(folder.filePath(QStringLiteral("out")));
    CHECK(QFile::exists(folder.filePath(QStringLiteral("out/fitout.pdf"))));
}

TEST_CASE_METHOD(App, "a second printing marks what changed since the first, and can leave out the rest") {
    Workshop shop;
    const PageSet set = wallPages();
    const auto printed = [&](const std::string& before) {
        return set.revised(*shop.window.boat(), core::Units::Millimetres, core::PageSize::A4, before);
    };
    const RevisedPages first = printed({});
    CHECK(first.changed.empty());
    CHECK(first.all.size() > 20);
    CHECK(printed(first.record).changed.empty()); // the same boat once more
    core::Planking planking = shop.window.desk()->project().planking;
    planking.bowEnds = core::EndStyle::Mitre;
    Q_EMIT shop.bench().controls()->changed(planking);
    const RevisedPages second = printed(first.record);
    const auto marked = [](const std::vector<core::Sheet>& sheets) {
        return std::ranges::count_if(sheets, [](const core::Sheet& sheet) {
            return std::ranges::any_of(sheet.items, [](const core::Item& item) {
                const auto* text = std::get_if<core::Text>(&item);
                return text != nullptr && std::ranges::any_of(text->runs, [](const core::TextRun& run) {
                           return run.text.find("revision 2") != std::string::npos;
                       });
            });
        });
    };
    CHECK(!second.changed.empty());
    CHECK(marked(second.changed) == static_cast<long>(second.changed.size()));
    CHECK(marked(second.all) == marked(second.changed));
    CHECK(second.all.size() > second.changed.size()); // materials and boards go with them
    CHECK(shop.window.sheets()->findChild<QPushButton*>(QStringLiteral("printChanged"))->isHidden());
    shop.window.sheets()->setPrintRecord(first.record);
    CHECK_FALSE(shop.window.sheets()->findChild<QPushButton*>(QStringLiteral("printChanged"))->isHidden());
}

TEST_CASE_METHOD(App, "all benches fit a screen of 1280 by 800") {
    QTemporaryDir folder;
    MainWindow window(TaskRunner::Mode::SameThread);
    window.open(project(folder, {}));
    window.show();
    CHECK(window.minimumSizeHint().width() <= 1280);
    CHECK(window.minimumSizeHint().height() <= 800);
}

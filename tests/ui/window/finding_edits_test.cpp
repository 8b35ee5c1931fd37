#include "tests/support/catch.hpp"
#include "tests/support/window_workshop.hpp"
#include "ui/map2d/planking_map.hpp"
#include "ui/panels/findings_list.hpp"
#include "ui/panels/findings_pane.hpp"
#include "ui/panels/laying_bar.hpp"
#include "ui/window/main_window.hpp"
#include "ui/window/planking_bench.hpp"
#include "ui/window/project_desk.hpp"
#include "ui/window/sheets_bench.hpp"

#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QUndoStack>

#include <algorithm>

using namespace sheerlay;
using namespace sheerlay::ui;
using namespace sheerlay::test;

TEST_CASE_METHOD(App, "a finding leads to its place along the boat, until something else is in hand") {
    Workshop shop;
    core::Finding finding{core::Level::Note, "fake", std::nullopt, 1200.0, "Here."};
    Q_EMIT shop.bench().findingsPane()->chosen(finding);
    CHECK(shop.bench().map()->place() == 1200.0);
    shop.bench().bar()->lay();
    CHECK_FALSE(shop.bench().map()->place());
    finding.strip = shop.window.boat()->plan.strips.front().id;
    Q_EMIT shop.bench().findingsPane()->chosen(finding);
    CHECK(shop.bench().selected() == *finding.strip);
    CHECK(shop.bench().map()->place() == 1200.0);
    finding.x.reset();
    Q_EMIT shop.bench().findingsPane()->chosen(finding);
    CHECK_FALSE(shop.bench().map()->place());
}

TEST_CASE_METHOD(App, "a finding put aside is an edit that is saved, undone and plans nothing anew") {
    Workshop shop;
    FindingsPane& pane = *shop.bench().findingsPane();
    const auto& findings = pane.list()->findings();
    const auto light =
        std::ranges::find_if(findings, [](const core::Finding& f) { return f.level != core::Level::Stop; });
    REQUIRE(light != findings.end());
    const core::Finding finding = *light;
    QSignalSpy planned(&shop.window, &MainWindow::loaded);
    pane.list()->setCurrentRow(static_cast<int>(light - findings.begin()));
    pane.reason()->setText(QStringLiteral("Seen to."));
    const int before = pane.list()->count();
    pane.act()->click();
    CHECK(pane.list()->count() == before - 1);
    CHECK(shop.window.desk()->undoStack()->undoText() == QStringLiteral("Put a finding aside"));
    CHECK(shop.window.boat()->project.putAside.size() == 1); // as paper tells it
    CHECK(planned.count() == 0);
    REQUIRE(shop.window.save());
    CHECK(bytesOf(shop.path).contains("[[put-aside]]"));
    CHECK(bytesOf(shop.path).startsWith(shop.good));
    shop.window.desk()->undoStack()->undo();
    CHECK(pane.list()->count() == before);
    CHECK(shop.window.boat()->project.putAside.empty());
    shop.window.desk()->undoStack()->redo();
    REQUIRE(shop.window.save());
    MainWindow next(TaskRunner::Mode::SameThread);
    next.open(shop.path);
    CHECK(next.planking()->findings()->count() == before - 1);
}

TEST_CASE_METHOD(App,
                 "findings of the fit-out stand in the same list, lead to their part and are put aside") {
    Workshop shop;
    shop.rewrite(shop.good + "\n[fitout]\n[fitout.gunwales]\nstock-length = \"5 ft\"\n"
                             "inner = { width = \"2 in\", height = \"7/8 in\" }\n");
    FindingsPane& pane = *shop.bench().findingsPane();
    const auto bends = [&] {
        return std::ranges::find(pane.list()->findings(), "gunwale-bend", &core::Finding::code);
    };
    const auto listed = [&] { return bends() != pane.list()->findings().end(); };
    REQUIRE(QTest::qWaitFor(listed, patience)); // it is planned when she has stood still a while
    const core::Finding finding = *bends();
    REQUIRE(finding.level != core::Level::Stop);
    CHECK(shop.window.boat()->foundIn(finding) == FoundIn::FitOut);

    pane.list()->returnTo(finding);
    pane.reason()->setText(QStringLiteral("half written"));
    CHECK(pane.goThere()->text().contains(QStringLiteral("Fitting out")));
    pane.goThere()->click();
    const SheetsBench& bench = *shop.window.fittingOut();
    CHECK(shop.window.planking()->isHidden());
    CHECK_FALSE(bench.isHidden());
    shop.window.show();
    REQUIRE(QTest::qWaitFor([&] { return !bench.sheets().empty(); }, patience));
    const auto shownTitle = [&] {
        return bench.sheets()
            .at(static_cast<std::size_t>(bench.findChild<QListWidget*>()->currentRow()))
            .title;
    };
    CHECK(shownTitle().ends_with(", gunwales"));

    shop.window.showBench(MainWindow::Bench::Planking);
    CHECK(pane.reason()->text() == QStringLiteral("half written")); // going there lost nothing
    pane.reason()->setText(QStringLiteral("Steamed."));
    const QString told = bench.status();
    CHECK_FALSE(told.contains(QStringLiteral("Steamed.")));
    pane.act()->click();
    REQUIRE(bends()->aside);
    CHECK(shop.window.desk()->undoStack()->undoText() == QStringLiteral("Put a finding aside"));
    shop.window.showBench(MainWindow::Bench::FittingOut);
    if (finding.level == core::Level::Caution)
        CHECK(bench.status().contains(QStringLiteral("Steamed.")));
    shop.window.desk()->undoStack()->undo();
    CHECK_FALSE(bends()->aside);
    shop.window.desk()->undoStack()->redo();
    REQUIRE(shop.window.save());

    // opened again, the entry is not said to cover nothing before the fit-out is planned
    MainWindow next(TaskRunner::Mode::SameThread);
    next.open(shop.path);
    const FindingsPane& again = *next.planking()->findingsPane();
    const auto unmet = [&] {
        return std::ranges::any_of(again.list()->findings(), [](const core::Finding& f) {
            return f.text.starts_with("Not found any more");
        });
    };
    CHECK_FALSE(unmet());
    REQUIRE(QTest::qWaitFor([&] { return next.boat()->allFound(); }, patience));
    REQUIRE(QTest::qWaitFor(
        [&] {
            return std::ranges::any_of(again.list()->findings(), [](const core::Finding& f) {
                return f.code == "gunwale-bend" && f.aside && f.aside->reason == "Steamed.";
            });
        },
        patience));
    CHECK_FALSE(unmet());
}

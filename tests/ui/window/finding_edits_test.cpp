#include "tests/support/catch.hpp"
#include "tests/support/window_workshop.hpp"
#include "ui/map2d/planking_map.hpp"
#include "ui/panels/findings_list.hpp"
#include "ui/panels/findings_pane.hpp"
#include "ui/panels/laying_bar.hpp"
#include "ui/window/main_window.hpp"
#include "ui/window/planking_bench.hpp"
#include "ui/window/project_desk.hpp"

#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
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

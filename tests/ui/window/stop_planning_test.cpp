#include "tests/support/catch.hpp"
#include "tests/support/window_workshop.hpp"
#include "ui/panels/planking_controls.hpp"
#include "ui/window/main_window.hpp"
#include "ui/window/planking_bench.hpp"
#include "ui/window/project_desk.hpp"

#include <QComboBox>
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>
#include <QUndoStack>

using namespace sheerlay;
using namespace sheerlay::ui;
using namespace sheerlay::test;

TEST_CASE_METHOD(App, "a plan that takes too long is given up, and the change that asked for it taken back") {
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("canoe.sheerlay"));
    REQUIRE(QFile::copy(QStringLiteral(SHEERLAY_REFERENCE "/formula_canoe.sheerlay"), path));
    MainWindow window(TaskRunner::Mode::Thread);
    QSignalSpy loaded(&window, &MainWindow::loaded);
    window.open(path);
    REQUIRE(loaded.wait(patience));
    const auto boat = window.boat();
    REQUIRE(boat != nullptr);
    auto* stop = window.findChild<QToolButton*>(QStringLiteral("stopPlanning"));
    REQUIRE(stop != nullptr);
    CHECK_FALSE(stop->isVisibleTo(&window));

    QComboBox* start = window.planking()->controls()->start();
    const auto searchEasiest = [&] {
        const int easiest = static_cast<int>(core::StartLine::Kind::Easiest);
        start->setCurrentIndex(easiest);
        Q_EMIT start->activated(easiest);
    };
    searchEasiest();
    REQUIRE(window.busy());
    CHECK_FALSE(stop->isVisibleTo(&window)); // not for every plan of a blink
    REQUIRE(QTest::qWaitFor([&] { return stop->isVisibleTo(&window); }, patience));
    stop->click();
    CHECK_FALSE(window.busy());
    CHECK_FALSE(stop->isVisibleTo(&window));
    CHECK(window.boat() == boat);
    CHECK_FALSE(window.stale());
    CHECK(window.desk()->project().planking.start.kind == core::StartLine::Kind::Sheer);
    CHECK(start->currentIndex() == static_cast<int>(core::StartLine::Kind::Sheer));
    QTest::qWait(300); // what still ran comes to nothing
    CHECK(window.boat() == boat);
    CHECK(window.desk()->undoStack()->canRedo());

    // asked for again it runs to its end
    searchEasiest();
    REQUIRE(loaded.wait(patience));
    CHECK(window.boat() != boat);
    CHECK(window.desk()->project().planking.start.kind == core::StartLine::Kind::Easiest);
}

TEST_CASE_METHOD(App, "stopping the plan of something undone does it again") {
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("canoe.sheerlay"));
    REQUIRE(QFile::copy(QStringLiteral(SHEERLAY_REFERENCE "/formula_canoe.sheerlay"), path));
    MainWindow window(TaskRunner::Mode::Thread);
    QSignalSpy loaded(&window, &MainWindow::loaded);
    window.open(path);
    REQUIRE(loaded.wait(patience));
    QComboBox* start = window.planking()->controls()->start();
    const auto choose = [&](core::StartLine::Kind kind) {
        start->setCurrentIndex(static_cast<int>(kind));
        Q_EMIT start->activated(static_cast<int>(kind));
    };
    choose(core::StartLine::Kind::Easiest);
    REQUIRE(loaded.wait(patience));
    choose(core::StartLine::Kind::Geodesic);
    REQUIRE(loaded.wait(patience));
    const auto boat = window.boat();
    window.desk()->undoStack()->undo(); // back to the easiest, which takes its time
    REQUIRE(window.busy());
    auto* stop = window.findChild<QToolButton*>(QStringLiteral("stopPlanning"));
    REQUIRE(QTest::qWaitFor([&] { return stop->isVisibleTo(&window); }, patience));
    stop->click();
    CHECK(window.boat() == boat);
    CHECK(window.desk()->project().planking.start.kind == core::StartLine::Kind::Geodesic);
    CHECK(window.desk()->undoStack()->index() == 2);
}

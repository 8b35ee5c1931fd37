#include "tests/support/catch.hpp"
#include "tests/support/window_workshop.hpp"
#include "ui/window/project_desk.hpp"
#include "ui/window/work_slip.hpp"

#include <QSignalSpy>
#include <QTest>
#include <QToolButton>

#include <cstdlib>

using namespace sheerlay;
using namespace sheerlay::ui;
using namespace sheerlay::test;

TEST_CASE_METHOD(App, "the slip hangs from the strip above, in the middle, and goes along with the window") {
    QWidget window;
    auto* strip = new QWidget(&window);
    strip->setGeometry(0, 0, 900, 48);
    WorkSlip slip(&window, strip);
    window.resize(900, 600);
    window.show();
    REQUIRE(QTest::qWaitForWindowExposed(&window, patience)); // a window manager has its say first
    CHECK_FALSE(slip.isVisible());
    slip.setText(QStringLiteral("Searching the easiest start… 40 %"));
    slip.hang(true);
    CHECK(slip.isVisible());
    CHECK(slip.y() == 47);
    CHECK(std::abs(slip.geometry().center().x() - 450) <= 1);
    const QRect before = slip.geometry();
    slip.setText(QStringLiteral("Searching the easiest start… 100 %"));
    CHECK(slip.geometry() == before); // what grows must not jump
    window.resize(1200, 600);
    CHECK(QTest::qWaitFor([&] { return std::abs(slip.geometry().center().x() - 600) <= 1; }, patience));

    auto* stop = slip.findChild<QToolButton*>(QStringLiteral("stopPlanning"));
    REQUIRE(stop != nullptr);
    const QSignalSpy stopped(&slip, &WorkSlip::stopped);
    stop->click();
    CHECK(stopped.count() == 1);
    slip.hang(false); // nothing to go back to
    CHECK_FALSE(stop->isVisible());
}

TEST_CASE_METHOD(App, "neither a change that is not saved nor long work moves what stands in the window") {
    Workshop workshop;
    MainWindow& window = workshop.window;
    window.resize(window.minimumSizeHint());
    window.show();
    REQUIRE(QTest::qWaitForWindowExposed(&window, patience));
    QCoreApplication::processEvents();
    const QSize size = window.size();
    const QRect boat = workshop.bench().geometry();
    auto* slip = window.findChild<WorkSlip*>();
    REQUIRE(slip != nullptr);
    slip->hang(true);
    core::Project next = window.desk()->project();
    next.name = "Teasel";
    window.desk()->edit(QStringLiteral("Another name"), next);
    REQUIRE(window.isWindowModified());
    QCoreApplication::processEvents();
    CHECK(window.size() == size);
    CHECK(workshop.bench().geometry() == boat);
}

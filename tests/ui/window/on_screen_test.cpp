#include "tests/support/catch.hpp"
#include "tests/support/qt_app.hpp"
#include "ui/window/on_screen.hpp"

#include <QCoreApplication>
#include <QEvent>
#include <QScreen>
#include <QTest>
#include <QWidget>

using namespace sheerlay::ui;
using namespace sheerlay::test;

TEST_CASE("a framed window that is too large for the screen loses what its frame takes") {
    const QRect screen(0, 0, 1280, 800);
    // a title of 24 and edges of 3 pixels, which pushed the bottom off
    const QRect inner(3, 24, 1280, 800), frame(0, 0, 1286, 827);
    const QRect place = onScreen(inner, frame, screen);
    CHECK(place == QRect(3, 24, 1274, 773));
    CHECK(onScreen(place, place.adjusted(-3, -24, 3, 3), screen) == place); // and then rests
}

TEST_CASE("a window that fits is moved onto the screen, or left where it is") {
    const QRect screen(60, 30, 1380, 870); // a bar at the left and one above
    const QRect inside(200, 100, 900, 700);
    CHECK(onScreen(inside, inside.adjusted(-2, -20, 2, 2), screen) == inside);
    const QRect over(800, 400, 900, 700);
    const QRect brought = onScreen(over, over.adjusted(-2, -20, 2, 2), screen);
    CHECK(brought.size() == over.size());
    CHECK(screen.contains(brought.adjusted(-2, -20, 2, 2)));
    const QRect under(0, 0, 900, 700);
    CHECK(screen.contains(onScreen(under, under.adjusted(-2, -20, 2, 2), screen)));
}

TEST_CASE("a window is brought onto its screen once, when it is first active") {
    qtApp();
    QWidget window;
    new OnScreen(window);
    const QRect screen = window.screen()->availableGeometry();
    window.setGeometry(screen.adjusted(100, 100, 200, 200));
    window.show();
    REQUIRE(QTest::qWaitForWindowExposed(&window));
    QEvent active(QEvent::WindowActivate);
    QCoreApplication::sendEvent(&window, &active);
    QTest::qWait(1);
    CHECK(screen.contains(window.frameGeometry()));
    const QRect mine = screen.adjusted(300, 300, 100, 100); // the builder may move it where he wants
    window.setGeometry(mine);
    QCoreApplication::sendEvent(&window, &active);
    QTest::qWait(1);
    CHECK(window.geometry() == mine);
}

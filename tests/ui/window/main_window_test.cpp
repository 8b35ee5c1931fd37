#include "tests/support/catch.hpp"
#include "tests/support/window_workshop.hpp"
#include "ui/map2d/planking_map.hpp"
#include "ui/panels/findings_list.hpp"
#include "ui/panels/laying_bar.hpp"
#include "ui/panels/strip_card.hpp"
#include "ui/scene/words.hpp"
#include "ui/view3d/boat_view.hpp"
#include "ui/window/main_window.hpp"
#include "ui/window/notice.hpp"
#include "ui/window/planking_bench.hpp"
#include "ui/window/sheets_bench.hpp"

#include <QFile>
#include <QSignalSpy>
#include <QTest>

#include <algorithm>
#include <cmath>

using namespace sheerlay;
using namespace sheerlay::ui;
using namespace sheerlay::test;

TEST_CASE_METHOD(App, "where there is no OpenGL the rest of the window works on", "[offscreen]") {
    Workshop shop;
    CHECK(!shop.bench().boatView()->drawing());
    CHECK(!shop.bench().boatView()->savePicture(shop.folder.filePath(QStringLiteral("none.png"))));
    shop.bench().bar()->setLaid(5);
    CHECK(shop.bench().bar()->laid() == 5);
}

TEST_CASE_METHOD(App, "one strip in hand is shown everywhere") {
    Workshop shop;
    const Boat& boat = *shop.window.boat();
    const auto piece = [&](std::size_t order) { return boat.plan.strips[boat.byOrder[order]].id; };
    CHECK(shop.bench().inHand() == piece(0));
    shop.bench().bar()->setLaid(12);
    CHECK(shop.bench().inHand() == piece(12));
    CHECK(shop.bench().card()->text().title.toStdString() == piece(12));

    // a click on the map or in space selects; going on with the work takes up the next strip again
    const QString clicked = QString::fromStdString(piece(3));
    Q_EMIT shop.bench().map()->stripClicked(clicked);
    CHECK(shop.bench().selected() == piece(3));
    CHECK(shop.bench().card()->text().title == clicked);
    Q_EMIT shop.bench().boatView()->stripClicked(QString::fromStdString(piece(30)));
    CHECK(shop.bench().card()->text().title.toStdString() == piece(30));
    Q_EMIT shop.bench().boatView()->stripClicked(QString());
    CHECK(shop.bench().inHand() == piece(12));
    shop.bench().select(piece(3));
    shop.bench().bar()->lay();
    CHECK(shop.bench().inHand() == piece(13));
}

TEST_CASE_METHOD(App, "the tape tells the way between two places in both units, and Esc puts it away") {
    Workshop shop;
    shop.window.resize(1280, 800);
    shop.window.show();
    REQUIRE(QTest::qWaitForWindowExposed(&shop.window, patience));
    shop.window.activateWindow();
    PlankingBench& bench = shop.bench();
    QTest::keyClick(&shop.window, Qt::Key_T);
    REQUIRE(bench.measuring());
    CHECK(bench.tapeBar()->isVisible());
    const core::TrimmedSurface& laid = shop.window.boat()->hull.laid;
    const double x = laid.halfGirthMaxX;
    Q_EMIT bench.map()->touched({x, 150.0});
    Q_EMIT bench.map()->touched({x + 900.0, -120.0});
    REQUIRE(bench.tape().line);
    // amidships she is all but a pipe there: the map's straight way is a little long or short
    CHECK_THAT(bench.tape().line->length, WithinRel(std::hypot(900.0, 270.0), 0.02));
    CHECK_THAT(bench.tape().line->around, WithinAbs(270.0, 1.0));
    const QString told = bench.tapeBar()->accessibleDescription();
    for (const core::Units units : {core::Units::Millimetres, core::Units::Inches})
        CHECK(told.contains(lengthText(bench.tape().line->length, units)));
    for (const core::Units units :
         {core::Units::Millimetres, core::Units::Inches}) { // as the window has them
        if (shop.window.units() != units)
            QTest::keyClick(&shop.window, Qt::Key_U);
        CHECK(bench.tapeBar()->accessibleDescription().startsWith(
            lengthText(bench.tape().line->length, units)));
    }
    // a place on the boat's outer face belongs to the same surface
    const auto end = core::placeAtGirth(laid, x, 150.0);
    REQUIRE(end);
    Q_EMIT bench.boatView()->touched(Eigen::Vector3d(end->point + 3.0 * end->normal));
    REQUIRE(bench.tape().from);
    CHECK((bench.tape().from->point - end->point).norm() < 0.05);
    Q_EMIT bench.boatView()->touched(std::nullopt);
    CHECK(bench.tape().from); // a click beside her changes nothing, and says so
    CHECK(bench.tapeBar()->accessibleDescription() != told);
    QTest::keyClick(&shop.window, Qt::Key_Escape);
    CHECK_FALSE(bench.measuring());
    CHECK_FALSE(bench.tapeBar()->isVisible());
    // arrows lay strips again, and while measuring they move the mark
    bench.bar()->setLaid(5);
    bench.measure(true);
    QTest::keyClick(bench.map(), Qt::Key_Right);
    CHECK(bench.bar()->laid() == 5);
    QTest::keyClick(bench.map(), Qt::Key_Escape);
    CHECK_FALSE(bench.measuring());
    QTest::keyClick(&shop.window, Qt::Key_Right);
    CHECK(bench.bar()->laid() == 6);
}

TEST_CASE_METHOD(App, "a finding leads to its strip") {
    Workshop shop;
    FindingsList* list = shop.bench().findings();
    REQUIRE(!list->findings().empty());
    for (std::size_t i = 0; i < list->findings().size(); ++i) {
        shop.bench().nextFinding();
        if (const auto& strip = list->findings()[i].strip; strip && shop.window.boat()->strip(*strip))
            CHECK(shop.bench().selected() == *strip);
    }
}

TEST_CASE_METHOD(App, "a broken file leaves the old boat, marked as old, and says what and where") {
    Workshop shop;
    const auto before = shop.window.boat();
    CHECK(shop.window.notice()->isHidden());
    QByteArray broken = shop.good;
    broken.replace("format = 1", "format = 1\nunits = 7\nbroken = = 2");
    shop.rewrite(broken);
    CHECK(shop.window.boat() == before);
    CHECK(shop.window.stale());
    CHECK(!shop.window.notice()->isHidden());
    CHECK(shop.window.notice()->text().contains(QStringLiteral("line ")));
    CHECK(shop.window.notice()->text().contains(QStringLiteral("the one from before the change")));

    // nothing is written of a boat that is out of date
    shop.window.sheets()->write(shop.folder.filePath(QStringLiteral("old")));
    CHECK(!QFile::exists(shop.folder.filePath(QStringLiteral("old"))));
    CHECK(shop.window.sheets()->status().contains(QStringLiteral("before the change")));

    shop.rewrite(shop.good);
    CHECK(!shop.window.stale());
    CHECK(shop.window.notice()->isHidden());
    shop.window.sheets()->write(shop.folder.filePath(QStringLiteral("new")));
    CHECK(QFile::exists(shop.folder.filePath(QStringLiteral("new/cut-sheets.pdf"))));
}

TEST_CASE_METHOD(App, "a saved file is taken up and the place is kept") {
    Workshop shop;
    shop.bench().bar()->setLaid(20);
    shop.bench().select("S04");
    QByteArray changed = shop.good;
    const qsizetype name = changed.indexOf("name");
    REQUIRE(name >= 0);
    const qsizetype end = changed.indexOf('\n', name);
    changed.replace(name, end - name, "name = \"Changed\"");
    shop.rewrite(changed);
    CHECK(shop.window.boat()->project.name == "Changed");
    CHECK(shop.window.windowTitle().startsWith(QStringLiteral("Changed")));
    CHECK(shop.bench().bar()->laid() == 20);
    CHECK(shop.bench().selected() == "S04");
}

TEST_CASE_METHOD(App, "a file that an editor puts in the old one's place is taken up, twice") {
    Workshop shop;
    for (const char* name : {"First", "Second"}) {
        QByteArray changed = shop.good;
        const qsizetype at = changed.indexOf("name");
        changed.replace(at, changed.indexOf('\n', at) - at, QByteArray("name = \"") + name + "\"");
        const QString other = shop.folder.filePath(QStringLiteral("canoe.new"));
        write(other, changed);
        QSignalSpy loaded(&shop.window, &MainWindow::loaded);
        REQUIRE(QFile::remove(shop.path));
        REQUIRE(QFile::rename(other, shop.path));
        REQUIRE(loaded.wait(patience));
        CHECK(shop.window.boat()->project.name == name);
    }
}

TEST_CASE_METHOD(App, "unknown keys are named without standing in the way") {
    Workshop shop;
    shop.rewrite("colour-of-canvas = \"green\"\n" + shop.good);
    CHECK(!shop.window.stale());
    CHECK(!shop.window.notice()->isHidden());
    CHECK(shop.window.notice()->text().contains(QStringLiteral("colour-of-canvas")));
}

TEST_CASE_METHOD(App, "a file that isn't there says so and shows no boat") {
    MainWindow window(TaskRunner::Mode::SameThread);
    window.open(QStringLiteral("no-such-folder/no-such.sheerlay"));
    CHECK(window.boat() == nullptr);
    CHECK(!window.notice()->isHidden());
    CHECK(window.notice()->text().contains(QStringLiteral("no-such.sheerlay")));
}

TEST_CASE_METHOD(App, "units come from the project until one is chosen by hand") {
    Workshop shop;
    CHECK(shop.window.units() == shop.window.boat()->project.units);
    const QString before = shop.bench().card()->text().lines.front().figure;
    shop.window.show();
    REQUIRE(QTest::qWaitForWindowActive(&shop.window, patience));
    QTest::keyClick(&shop.window, Qt::Key_U);
    CHECK(shop.window.units() != shop.window.boat()->project.units);
    CHECK(shop.bench().card()->text().lines.front().figure != before);
    const core::Units chosen = shop.window.units();
    shop.rewrite(shop.good + "\n");
    CHECK(shop.window.units() == chosen);
}

TEST_CASE_METHOD(App, "the keys lay, lift, jump and play") {
    Workshop shop;
    shop.window.show();
    REQUIRE(QTest::qWaitForWindowActive(&shop.window, patience));
    LayingBar& bar = *shop.bench().bar();
    const int pieces = shop.window.boat()->pieces();
    const auto press = [&](Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) {
        QTest::keyClick(&shop.window, key, with);
    };
    press(Qt::Key_Right);
    CHECK(bar.laid() == 1);
    press(Qt::Key_Right, Qt::ShiftModifier);
    CHECK(bar.laid() == 2);
    press(Qt::Key_Left);
    CHECK(bar.laid() == 1);
    press(Qt::Key_End);
    CHECK(bar.laid() == pieces);
    press(Qt::Key_Home);
    CHECK(bar.laid() == 0);
    press(Qt::Key_Space);
    CHECK(bar.playing());
    press(Qt::Key_Space);
    CHECK(!bar.playing());
    shop.bench().card()->setFocus();
    press(Qt::Key_P); // hides what had the focus; space goes on playing
    press(Qt::Key_Space);
    CHECK(bar.playing());
    press(Qt::Key_Space);
    CHECK(!bar.playing());
    press(Qt::Key_P);
    press(Qt::Key_Home);
    press(Qt::Key_F);
    CHECK(shop.bench().findings()->currentRow() == 0);
    press(Qt::Key_M);
    CHECK(shop.bench().map()->isVisible());
    CHECK(!shop.bench().boatView()->isVisible());
    press(Qt::Key_M);
    CHECK(shop.bench().boatView()->isVisible());
    press(Qt::Key_B);
    CHECK(!shop.bench().map()->isVisible());
    press(Qt::Key_B);
    CHECK(shop.bench().map()->isVisible());
    press(Qt::Key_5);
    CHECK(shop.window.sheets()->isVisible());
    press(Qt::Key_Right); // nothing is laid where it can't be seen
    CHECK(bar.laid() == 0);
    press(Qt::Key_3);
    CHECK(shop.bench().isVisible());
}

TEST_CASE_METHOD(App, "the sheets bench lays out one sheet or more per row and writes the PDFs") {
    Workshop shop;
    shop.window.show();
    shop.window.showBench(MainWindow::Bench::Sheets);
    REQUIRE(QTest::qWaitForWindowExposed(&shop.window, patience));
    CHECK(static_cast<int>(shop.window.sheets()->sheets().size()) > shop.window.boat()->plan.lastRow);
    // the paper goes with the units, as on the command line
    const auto width = [&] { return shop.window.sheets()->sheets().front().width; };
    shop.window.sheets()->setUnits(core::Units::Inches);
    CHECK(std::abs(std::min(width(), shop.window.sheets()->sheets().front().height) - 215.9) < 0.5);
    shop.window.sheets()->setUnits(core::Units::Millimetres);
    CHECK(std::abs(std::min(width(), shop.window.sheets()->sheets().front().height) - 210) < 0.5);
    shop.window.sheets()->write(shop.folder.filePath(QStringLiteral("out")));
    for (const char* name : {"out/cut-sheets.pdf", "out/wall-map.pdf"}) {
        const QByteArray pdf = bytesOf(shop.folder.filePath(QString::fromUtf8(name)));
        CHECK(pdf.startsWith("%PDF"));
        CHECK(pdf.size() > 10000);
    }
    CHECK(shop.window.sheets()->status().contains(QStringLiteral("wall-map.pdf")));
    // a folder that can't be made is told in a sentence
    write(shop.folder.filePath(QStringLiteral("taken")), "a file");
    shop.window.sheets()->write(shop.folder.filePath(QStringLiteral("taken")));
    CHECK(!shop.window.sheets()->status().startsWith(QStringLiteral("Written")));
    CHECK(!shop.window.sheets()->status().isEmpty());
}

TEST_CASE_METHOD(App, "the window stays free while a boat is planned on the worker") {
    MainWindow window(TaskRunner::Mode::Thread);
    QSignalSpy loaded(&window, &MainWindow::loaded);
    window.open(referenceProject());
    CHECK(window.busy());
    CHECK(window.boat() == nullptr);
    window.open(referenceProject()); // again at once: the first is dropped
    REQUIRE(loaded.wait(patience));
    QTest::qWait(100);
    CHECK(loaded.count() == 1);
    CHECK(window.boat() != nullptr);
}

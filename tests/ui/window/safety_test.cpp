#include "tests/support/catch.hpp"
#include "tests/support/window_workshop.hpp"
#include "ui/panels/planking_controls.hpp"
#include "ui/window/file_watch.hpp"
#include "ui/window/journal_bench.hpp"
#include "ui/window/main_window.hpp"
#include "ui/window/notice.hpp"
#include "ui/window/planking_bench.hpp"
#include "ui/window/project_desk.hpp"

#include <QFile>
#include <QLineEdit>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTest>
#include <QToolButton>
#include <QUndoStack>

#include <algorithm>

using namespace sheerlay;
using namespace sheerlay::ui;
using namespace sheerlay::test;

TEST_CASE_METHOD(App, "changes here and on disk are brought together, or discarded, as the builder says") {
    Workshop shop;
    const auto decide = [&] {
        core::Planking planking = shop.window.desk()->project().planking;
        planking.taper = core::Taper::Ends;
        Q_EMIT shop.bench().controls()->changed(planking);
    };
    const auto changeFile = [&](const QByteArray& bytes) {
        write(shop.path, bytes);
        REQUIRE(QTest::qWaitFor([&] { return shop.window.notice()->answers().size() == 2; }, patience));
    };
    decide();
    changeFile("# by hand\n" + shop.good);
    shop.window.notice()->answers()[0]->click();
    CHECK(shop.window.boat()->project.planking.taper == core::Taper::Ends);
    REQUIRE(shop.window.save());
    CHECK(bytesOf(shop.path).startsWith("# by hand"));
    CHECK(bytesOf(shop.path).contains("ends"));
    shop.rewrite(shop.good);
    decide();
    changeFile("# again\n" + shop.good);
    shop.window.notice()->answers()[1]->click();
    CHECK(shop.window.boat()->project.planking.taper == core::Taper::None);
    CHECK(!shop.window.desk()->dirty());
}

TEST_CASE_METHOD(App, "a file that vanishes is told, and saving writes it again") {
    Workshop shop;
    const QString elsewhere = shop.folder.filePath(QStringLiteral("elsewhere.sheerlay"));
    const auto toldGone = [&] {
        return QTest::qWaitFor(
            [&] { return shop.window.notice()->text().contains(QStringLiteral("no longer where it was")); },
            patience);
    };
    REQUIRE(QFile::rename(shop.path, elsewhere));
    REQUIRE(toldGone());
    CHECK(shop.window.desk()->dirty()); // closing asks
    CHECK(QFile::exists(shop.window.desk()->keptPath()));
    // put back: nothing is left to do
    REQUIRE(QFile::rename(elsewhere, shop.path));
    REQUIRE(QTest::qWaitFor([&] { return !shop.window.desk()->dirty(); }, patience));
    CHECK_FALSE(shop.window.notice()->isVisibleTo(&shop.window));
    CHECK(!QFile::exists(shop.window.desk()->keptPath()));
    CHECK(shop.window.boat() != nullptr);
    // deleted: saved there again, with what was decided meanwhile
    REQUIRE(QFile::remove(shop.path));
    REQUIRE(toldGone());
    REQUIRE(shop.window.notice()->answers().size() == 1);
    shop.window.notice()->answers()[0]->click();
    CHECK(bytesOf(shop.path) == shop.good);
    CHECK(!shop.window.desk()->dirty());
    REQUIRE(QFile::remove(shop.path));
    REQUIRE(toldGone());
    REQUIRE(shop.window.save()); // by its key as well, and nothing is said to be gone any more
    CHECK_FALSE(shop.window.notice()->isVisibleTo(&shop.window));
    // an editor that deletes and writes anew is no such thing
    QSignalSpy loaded(&shop.window, &MainWindow::loaded);
    QSignalSpy gone(shop.window.watch(), &FileWatch::gone);
    REQUIRE(QFile::remove(shop.path));
    QTest::qWait(600);
    write(shop.path, "# anew\n" + shop.good);
    REQUIRE(loaded.wait(patience));
    CHECK(gone.isEmpty());
    CHECK(!shop.window.desk()->dirty());
}

TEST_CASE_METHOD(App, "work that was not saved is offered at the next opening") {
    Workshop shop;
    core::Planking planking = shop.window.desk()->project().planking;
    planking.taper = core::Taper::Ends;
    Q_EMIT shop.bench().controls()->changed(planking);
    MainWindow next(TaskRunner::Mode::SameThread); // the first one is gone without a word
    next.open(shop.path);
    CHECK(next.boat()->project.planking.taper == core::Taper::None);
    REQUIRE(next.notice()->answers().size() == 2);
    next.notice()->answers()[0]->click();
    CHECK(next.boat()->project.planking.taper == core::Taper::Ends);
    CHECK(next.desk()->undoStack()->undoText() == QStringLiteral("Changes from last time"));
}

TEST_CASE_METHOD(App, "a round that is typed and not accepted is there again after the window was closed") {
    Workshop shop;
    shop.window.setUnits(core::Units::Inches);
    shop.window.showBench(MainWindow::Bench::Journal);
    JournalBench& bench = *shop.window.journal();
    bench.row()->setValue(7);
    std::vector<QLineEdit*> open;
    std::ranges::copy_if(bench.fields(), std::back_inserter(open), &QWidget::isEnabled);
    REQUIRE(open.size() > 2);
    QTest::keyClicks(open[0], QStringLiteral("12 1/2"));
    QTest::keyClicks(open[1], QStringLiteral("abou"));
    const QString said = bench.said();
    CHECK(said.contains(QStringLiteral("row 7")));
    CHECK(shop.window.close()); // nothing is asked: nothing is lost
    const auto again = [&](core::Units units) {
        auto window = std::make_unique<MainWindow>(TaskRunner::Mode::SameThread);
        window->setUnits(units);
        window->open(shop.path);
        return window;
    };
    for (const core::Units units : {core::Units::Millimetres, core::Units::Inches}) {
        const auto window = again(units);
        CHECK(window->journal()->row()->value() == 7);
        CHECK(window->journal()->said() == said);
        QStringList texts;
        for (const QLineEdit* field : window->journal()->fields())
            if (!field->text().isEmpty())
                texts << field->text();
        CHECK(texts == QStringList{QStringLiteral("12 1/2 in"), QStringLiteral("abou")});
    }
    // cleared by hand, it is gone for good
    {
        const auto window = again(core::Units::Inches);
        for (QLineEdit* field : window->journal()->fields())
            while (!field->text().isEmpty())
                QTest::keyClick(field, Qt::Key_Backspace);
    }
    const auto window = again(core::Units::Inches);
    for (const QLineEdit* field : window->journal()->fields())
        CHECK(field->text().isEmpty());
}

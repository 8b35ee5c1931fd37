#include "core/journal/planned_girth.hpp"
#include "core/project/laid_strips.hpp"
#include "core/project/project_file.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/window_workshop.hpp"
#include "ui/map2d/planking_map.hpp"
#include "ui/panels/accent_fields.hpp"
#include "ui/panels/journal_log.hpp"
#include "ui/panels/laying_bar.hpp"
#include "ui/panels/planking_controls.hpp"
#include "ui/panels/start_comparison.hpp"
#include "ui/panels/typed_field.hpp"
#include "ui/scene/words.hpp"
#include "ui/shop/girth_panel.hpp"
#include "ui/shop/shop_mode.hpp"
#include "ui/window/journal_bench.hpp"
#include "ui/window/main_window.hpp"
#include "ui/window/notice.hpp"
#include "ui/window/planking_bench.hpp"
#include "ui/window/project_desk.hpp"

#include <QComboBox>
#include <QDate>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTableWidget>
#include <QTest>
#include <QToolButton>
#include <QUndoStack>

#include <algorithm>
#include <cmath>
#include <map>
#include <string>

using namespace sheerlay;
using namespace sheerlay::ui;
using namespace sheerlay::test;

TEST_CASE_METHOD(App, "a decision about the planking is planned, named, undone and saved") {
    Workshop shop;
    const auto first = shop.window.boat();
    PlankingControls& controls = *shop.bench().controls();
    const auto choose = [](QComboBox* box, int index) {
        box->setCurrentIndex(index);
        Q_EMIT box->activated(index);
    };
    choose(controls.start(), static_cast<int>(core::StartLine::Kind::Geodesic));
    controls.girth()->clear();
    QTest::keyClicks(controls.girth(), QStringLiteral("200 mm"));
    QTest::keyClick(controls.girth(), Qt::Key_Return);
    CHECK(shop.window.boat()->project.planking.start.girth == 200.0);
    CHECK(shop.window.boat()->plan.firstRow < 0); // fillers above a line below the sheer
    CHECK(controls.figures().contains(QStringLiteral("before the last change")));
    QUndoStack& undo = *shop.window.desk()->undoStack();
    CHECK(undo.count() == 2);
    CHECK(undo.undoText() == QStringLiteral("Move the start"));
    CHECK(shop.window.isWindowModified());

    // a length that is none, and one that the boat refuses, are told in place and change nothing
    controls.girth()->clear();
    QTest::keyClicks(controls.girth(), QStringLiteral("about so"));
    QTest::keyClick(controls.girth(), Qt::Key_Return);
    CHECK(!controls.said().isEmpty());
    CHECK(undo.count() == 2);
    choose(controls.taper(), static_cast<int>(core::Taper::Ends));
    controls.narrowest()->clear();
    QTest::keyClicks(controls.narrowest(), QStringLiteral("300 mm"));
    QTest::keyClick(controls.narrowest(), Qt::Key_Return);
    CHECK(controls.said().contains(QStringLiteral("wider than the strip")));
    CHECK(undo.count() == 3);

    CHECK(shop.window.save());
    CHECK(bytesOf(shop.path).contains("geodesic"));
    CHECK(!shop.window.isWindowModified());
    while (undo.canUndo())
        undo.undo();
    CHECK(shop.window.boat()->project.planking == first->project.planking);
    CHECK(shop.window.boat()->plan.strips.size() == first->plan.strips.size());
    CHECK(controls.start()->currentIndex() == static_cast<int>(core::StartLine::Kind::Sheer));
    REQUIRE(shop.window.save());
    shop.window.close();
}

TEST_CASE_METHOD(App, "rows that stand out are put in, moved, taken out, undone and saved") {
    Workshop shop;
    auto* accents = shop.bench().controls()->findChild<AccentFields*>();
    REQUIRE(accents != nullptr);
    const auto asked = [&] { return shop.window.desk()->project().planking.accents; };
    const auto type = [&](const QString& text) {
        auto* field = accents->findChildren<TypedField*>().back();
        field->clear();
        QTest::keyClicks(field, text);
        QTest::keyClick(field, Qt::Key_Return);
    };
    const auto press = [&](QAbstractButton* button) {
        button->click();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete); // the rows from before
    };
    press(accents->findChild<QPushButton*>());
    REQUIRE(asked().size() == 1);
    CHECK(asked()[0].by == core::Accent::By::Girth);
    type(QStringLiteral("150 mm"));
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    CHECK(asked()[0].at == 150.0);
    CHECK(shop.window.desk()->undoStack()->undoText() == QStringLiteral("Rows that stand out"));
    CHECK_FALSE(shop.window.boat()->plan.accentRows.empty());
    type(QStringLiteral("about so"));
    CHECK_FALSE(shop.bench().controls()->said().isEmpty());
    CHECK(asked()[0].at == 150.0);
    REQUIRE(shop.window.save());
    const auto read = core::readProject(shop.path.toStdString());
    REQUIRE(read.has_value());
    CHECK(read->project.planking.accents == asked());
    press(accents->findChild<QToolButton*>());
    CHECK(asked().empty());
    shop.window.desk()->undoStack()->undo();
    CHECK(asked().size() == 1);
}

TEST_CASE_METHOD(App, "a start below the keel is told, and can be taken back") {
    Workshop shop;
    core::Planking below = shop.window.desk()->project().planking;
    below.start = {core::StartLine::Kind::Geodesic, 5000.0, 0.0, {}};
    Q_EMIT shop.bench().controls()->changed(below);
    CHECK(shop.window.stale());
    CHECK(shop.window.notice()->text().contains(QStringLiteral("from before the change")));
    shop.window.desk()->undoStack()->undo();
    CHECK(!shop.window.stale());
}

TEST_CASE_METHOD(App, "the start line is dragged in the map, judged as it moves, and one edit when dropped") {
    Workshop shop;
    shop.window.resize(1280, 800);
    shop.window.show();
    REQUIRE(QTest::qWaitForWindowExposed(&shop.window, patience));
    PlankingMap& map = *shop.bench().map();
    CHECK(!map.startHandle().has_value());
    shop.bench().showControls(true);
    REQUIRE(map.startHandle().has_value());
    const QPointF from = *map.startHandle();
    // from the sheer toward the keel: up on the starboard half
    const double scale = map.toWidget({1.0, 0.0}).x() - map.toWidget({0.0, 0.0}).x();
    const QPointF to = from - QPointF(0.0, std::round(150.0 * scale));
    QSignalSpy dragged(&map, &PlankingMap::startDragged);
    QTest::mousePress(&map, Qt::LeftButton, Qt::NoModifier, from.toPoint());
    QTest::mouseMove(&map, to.toPoint());
    QTest::mouseRelease(&map, Qt::LeftButton, Qt::NoModifier, to.toPoint());
    REQUIRE(dragged.count() > 0);
    const core::StartLine& start = shop.window.desk()->project().planking.start;
    CHECK(start.kind == core::StartLine::Kind::Geodesic);
    CHECK(std::abs(start.girth - std::round(150.0 * scale) / scale) < 2.0 / scale);   // as near as pixels say
    const double step = shop.window.units() == core::Units::Inches ? 25.4 / 16 : 1.0; // reads well
    CHECK(std::abs(std::remainder(start.girth, step)) < 1e-9);
    CHECK(shop.window.desk()->undoStack()->count() == 1);
    // and the line of the new plan lies where it was dropped
    CHECK(std::abs(map.startHandle()->y() - to.y()) < 3.0);
}

TEST_CASE_METHOD(App, "what is laid in the shop stands in the journal, and the place is remembered") {
    Workshop shop;
    const auto plan = shop.window.boat();
    shop.window.show();
    shop.bench().select("S30"); // looked at, not laid next
    shop.window.enterShop();
    const std::string first = shop.window.shop()->inHand();
    CHECK(plan->strip(first)->order == 1);
    QTest::keyClick(shop.window.shop(), Qt::Key_Return);
    QTest::keyClick(shop.window.shop(), Qt::Key_Return);
    const core::Journal& journal = shop.window.desk()->project().journal;
    REQUIRE(journal.laid.size() == 2);
    CHECK(journal.laid.front().strip == first);
    CHECK(QDate::fromString(QString::fromStdString(journal.laid.front().date), Qt::ISODate).isValid());
    CHECK(shop.window.boat() == plan); // nothing is planned anew for a mark
    CHECK(shop.bench().bar()->laid() == 2);
    CHECK(shop.window.desk()->undoStack()->undoText().endsWith(QStringLiteral("laid")));
    shop.window.desk()->undoStack()->undo();
    CHECK(shop.window.desk()->project().journal.laid.size() == 1);
    QTest::keyClick(shop.window.shop(), Qt::Key_Right);
    const std::string place = shop.window.shop()->inHand();
    REQUIRE(shop.window.save());
    CHECK(bytesOf(shop.path).contains("[[journal.laid]]"));
    MainWindow next(TaskRunner::Mode::SameThread);
    next.open(shop.path);
    next.enterShop();
    CHECK(next.shop()->inHand() == place);
    core::Project more = next.desk()->project();
    more.journal = core::markLaid(more.journal, place, "2026-11-29");
    next.desk()->edit(QStringLiteral("laid on the bench"), more);
    next.enterShop();
    const auto* hand = next.boat()->strip(next.shop()->inHand());
    REQUIRE(hand != nullptr);
    CHECK(core::laidEntry(more.journal, hand->id) == nullptr); // what is down is not in hand
}

TEST_CASE_METHOD(App, "a round with the tape is weighed before it is accepted, and then is what was shown") {
    Workshop shop;
    shop.window.setUnits(core::Units::Millimetres);
    shop.window.showBench(MainWindow::Bench::Journal);
    JournalBench& journal = *shop.window.journal();
    const auto before = shop.window.boat();
    journal.workOut();
    CHECK(journal.said().contains(QStringLiteral("Nothing is typed")));
    constexpr int row = 10;
    journal.row()->setValue(row);
    // every strip has covered 0.4 mm more than planned
    int read = 0;
    for (std::size_t i = 0; i < journal.fields().size(); ++i) {
        const double x = before->project.hull.stations[i].x + before->hull.xShift;
        const auto left = core::plannedGirthLeft(before->plan, before->hull, row, x);
        CHECK(journal.fields()[i]->isEnabled() == left.has_value());
        if (!left)
            continue;
        journal.fields()[i]->setText(QStringLiteral("%1 mm").arg(left->left - 0.4 * row, 0, 'f', 1));
        ++read;
    }
    REQUIRE(read > 3);
    QLineEdit& first = **std::ranges::find_if(journal.fields(), &QWidget::isEnabled);
    const QString good = first.text();
    first.setText(QStringLiteral("long"));
    journal.workOut();
    CHECK(journal.said().startsWith(QStringLiteral("Girth left at station")));
    CHECK(!journal.acceptButton()->isEnabled());
    first.setText(good);
    journal.workOut();
    REQUIRE(journal.acceptButton()->isEnabled());
    CHECK(shop.window.boat() == before); // only weighed so far
    CHECK(journal.changes()->rowCount() > 10);
    CHECK(journal.changes()->isVisibleTo(&journal));
    CHECK_FALSE(journal.log()->isVisibleTo(&journal)); // leaves its room to the new plan
    const QString said = journal.said();
    std::map<std::string, QString> shown;
    for (int i = 0; i < journal.changes()->rowCount(); ++i)
        shown[journal.changes()->item(i, 0)->text().toStdString()] = journal.changes()->item(i, 2)->text();

    journal.acceptButton()->click();
    CHECK(shop.window.desk()->project().journal.readings.size() == 1);
    CHECK(shop.window.desk()->undoStack()->undoText() == QStringLiteral("Reading below row 10"));
    CHECK(journal.log()->lines()->rowCount() == 1);
    CHECK(journal.log()->isVisibleTo(&journal));
    int told = 0;
    for (const core::Finding& finding : shop.window.boat()->plan.findings) {
        if (!finding.code.starts_with("journal-"))
            continue;
        ++told;
        CHECK(said.contains(QString::fromStdString(finding.text)));
    }
    CHECK(told >= 2);
    journal.log()->lines()->selectRow(0);
    journal.log()->takeOutButton()->click();
    CHECK(shop.window.desk()->project().journal.readings.empty());
    CHECK(shop.window.boat()->project.journal.readings.empty()); // planned without it
    shop.window.desk()->undoStack()->undo();
    CHECK(journal.log()->lines()->rowCount() == 1);
    for (const core::Strip& strip : shop.window.boat()->plan.strips)
        if (strip.row > row && strip.side != core::Side::Port)
            CHECK(shown[strip.id] == cutLengthText(strip.cutLength, core::Units::Millimetres));
    REQUIRE(shop.window.save());
    CHECK(bytesOf(shop.path).contains("[[journal.reading]]"));
    shop.window.desk()->undoStack()->undo();
    CHECK(shop.window.boat()->plan.strips.size() == before->plan.strips.size());
    REQUIRE(shop.window.save());
}

TEST_CASE_METHOD(App, "start lines stand side by side as core compares them, and one is taken as an edit") {
    Workshop shop;
    StartComparison& table = *shop.bench().comparison();
    CHECK(table.isHidden());
    shop.bench().compareStarts();
    const auto before = shop.window.boat();
    REQUIRE(table.rows().size() >= 2);
    CHECK(table.rows().front().line == before->plan.start); // the sheer, marked
    CHECK(table.table()->item(0, 0)->text().endsWith(QStringLiteral("now")));
    CHECK(!table.table()->item(1, 0)->text().endsWith(QStringLiteral("now")));
    CHECK(!table.takeButton()->isEnabled());
    const core::StartLine other = table.rows()[1].line;
    const double promised = table.rows()[1].worst;
    table.table()->selectRow(1);
    table.takeButton()->click();
    CHECK(shop.window.desk()->project().planking.start == other);
    // the plan keeps what the table promised
    double worst = 0.0;
    for (const core::Strip& strip : shop.window.boat()->plan.strips)
        worst = std::max(worst, strip.edgeBend.maxAbs);
    CHECK(std::abs(worst - promised) < 1e-9);
    CHECK(table.table()->item(1, 0)->text().endsWith(QStringLiteral("now")));
    shop.window.desk()->undoStack()->undo();
    CHECK(shop.window.boat()->plan.start == before->plan.start);
}

TEST_CASE_METHOD(App, "a girth measured in shop mode is weighed first, and is an edit once it is taken") {
    Workshop shop;
    shop.window.setUnits(core::Units::Millimetres);
    const Boat& boat = *shop.window.boat();
    ShopMode& mode = *shop.window.shop();
    JournalBench& bench = *shop.window.journal();
    GirthPanel& panel = *mode.girths();
    const auto& journal = [&]() -> const core::Journal& { return shop.window.desk()->project().journal; };
    const core::Strip& strip = *boat.strip("S05");
    // three stations: one far off, where the next two are all but as planned
    const auto measure = [&] {
        mode.goTo(strip.id);
        QTest::keyClick(&mode, Qt::Key_G);
        REQUIRE(panel.isVisible());
        std::size_t station = 0;
        for (int typed = 0; typed < 3; ++station) {
            const core::Station& at = boat.project.hull.stations[station];
            const auto left = core::plannedGirthLeft(boat.plan, boat.hull, 5, at.x + boat.hull.xShift);
            if (!left || left->left <= 1.0)
                continue;
            const double off = typed == 0 ? -219.0 : 2.0;
            panel.field()->setText(QStringLiteral("%1 mm").arg(left->left - off, 0, 'f', 1));
            QTest::keyClick(panel.field(), Qt::Key_Return);
            if (typed++ == 0)
                QTest::keyClick(panel.field(), Qt::Key_Return); // it stays as it was read
        }
        panel.writeTarget()->click();
    };
    mode.resize(1280, 800);
    mode.show();
    measure();
    CHECK(journal().readings.empty());
    CHECK(shop.window.boat().get() == &boat);
    INFO(panel.said().toStdString());
    REQUIRE(panel.takeTarget()->isVisible());
    CHECK(panel.said().contains(QStringLiteral("was left out")));
    CHECK(panel.accessibleDescription().contains(QStringLiteral("pieces")));
    CHECK(bench.said().contains(panel.said())); // the same stands on the bench
    CHECK(bench.acceptButton()->isEnabled());
    panel.laterTarget()->click();
    CHECK(journal().readings.empty());
    CHECK(bench.row()->value() == 5);
    CHECK(std::ranges::count_if(bench.fields(), [](const QLineEdit* f) { return !f->text().isEmpty(); }) ==
          3);

    mode.goTo("S06"); // another row, while that one waits
    QTest::keyClick(&mode, Qt::Key_G);
    panel.field()->setText(QStringLiteral("400 mm"));
    panel.writeDown();
    panel.writeDown(); // far off or not
    CHECK_FALSE(panel.weighing());
    CHECK(panel.said().contains(QStringLiteral("row 5")));
    QTest::keyClick(&panel, Qt::Key_Escape);

    measure(); // the same once more
    REQUIRE(panel.takeTarget()->isVisible());
    panel.takeTarget()->click();
    REQUIRE(journal().readings.size() == 1);
    CHECK(journal().readings[0].row == 5);
    CHECK(journal().readings[0].girthLeft.size() == 3);
    QUndoStack& undo = *shop.window.desk()->undoStack();
    CHECK(undo.undoText() == QStringLiteral("Reading below row 5"));
    CHECK(shop.window.boat()->project.journal.readings.size() == 1); // planned with it
    const QTableWidgetItem& line = *bench.log()->lines()->item(0, 2);
    CHECK(line.text().count(QStringLiteral("(left out)")) == 1);
    CHECK(line.toolTip().contains(QStringLiteral("was left out")));
    CHECK(std::ranges::all_of(bench.fields(), [](const QLineEdit* f) { return f->text().isEmpty(); }));
    undo.undo();
    CHECK(journal().readings.empty());
}

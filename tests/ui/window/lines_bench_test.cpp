#include "core/units/length.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/window_workshop.hpp"
#include "ui/panels/findings_list.hpp"
#include "ui/panels/lines_board.hpp"
#include "ui/panels/loft_panel.hpp"
#include "ui/panels/offsets_grid.hpp"
#include "ui/panels/offsets_model.hpp"
#include "ui/panels/table_tools.hpp"
#include "ui/panels/typed_field.hpp"
#include "ui/window/lines_bench.hpp"
#include "ui/window/load_boat.hpp"
#include "ui/window/notice.hpp"
#include "ui/window/project_desk.hpp"

#include <QClipboard>
#include <QGuiApplication>
#include <QLineEdit>
#include <QPushButton>
#include <QTableWidget>
#include <QTest>
#include <QToolButton>
#include <QUndoStack>

#include <cmath>
#include <string>

using namespace sheerlay;
using namespace sheerlay::ui;
using namespace sheerlay::test;

namespace {

QModelIndex cellAt(const LinesBench& bench, const QString& label, int column) {
    const OffsetsModel& model = *bench.grid()->offsets();
    for (int row = 0; row < model.rowCount(); ++row)
        if (model.headerData(row, Qt::Vertical).toString() == label)
            return model.index(row, column);
    FAIL("no line " << label.toStdString());
    return {};
}

} // namespace

TEST_CASE_METHOD(App, "a cell typed in the grid is lofted, planned, named, undone and saved") {
    Workshop shop;
    LinesBench& bench = *shop.window.lines();
    OffsetsModel& model = *bench.grid()->offsets();
    REQUIRE(model.columnCount() == static_cast<int>(shop.window.boat()->project.hull.stations.size()));
    const QModelIndex sheer = cellAt(bench, QStringLiteral("Height · sheer"), 6);
    const QString before = sheer.data().toString();
    const double girth = shop.window.boat()->hull.drawn.halfGirthMax;
    bench.grid()->setCurrentIndex(sheer);
    CHECK(bench.told().contains(QStringLiteral("the loft ")));
    model.setData(sheer, QStringLiteral("1-0-4+"));
    CHECK(shop.window.boat()->project.hull.stations[6].sheer.printedHeight == "1-0-4+");
    CHECK(std::abs(shop.window.boat()->hull.drawn.halfGirthMax - girth) > 0.05);
    QUndoStack& undo = *shop.window.desk()->undoStack();
    CHECK(undo.undoText().endsWith(QStringLiteral(", sheer height")));
    CHECK(bench.told().contains(QStringLiteral("1-0-4+")));
    CHECK(bench.told().contains(QStringLiteral("the loft ")));
    REQUIRE(shop.window.save());
    CHECK(bytesOf(shop.path).contains("\"1-0-4+\""));
    CHECK(bytesOf(shop.path).startsWith("# Made by")); // the file's own text
    undo.undo();
    CHECK(sheer.data().toString() == before);
    CHECK(shop.window.boat()->hull.drawn.halfGirthMax == girth);
}

TEST_CASE_METHOD(App, "how closely the loft follows the table is chosen, refused past its rounding, undone") {
    Workshop shop;
    LinesBench& bench = *shop.window.lines();
    const auto type = [&](const QString& text) {
        bench.loft()->fairing()->selectAll();
        QTest::keyClicks(bench.loft()->fairing(), text);
        QTest::keyClick(bench.loft()->fairing(), Qt::Key_Return);
    };
    const double rms = shop.window.boat()->hull.residualRms;
    CHECK(bench.loft()->fairing()->text() == QStringLiteral("0.8"));
    type(QStringLiteral("1.4"));
    CHECK(bench.said().contains(QStringLiteral("0.5 to 1")));
    CHECK(bench.loft()->fairing()->text() == QStringLiteral("0.8"));
    type(QStringLiteral("fair"));
    CHECK_FALSE(bench.said().isEmpty());
    type(QStringLiteral("0.6"));
    CHECK(bench.said().isEmpty());
    CHECK(shop.window.boat()->project.hull.fairing == 0.6);
    CHECK(shop.window.boat()->hull.residualRms < 0.85 * rms);
    shop.window.desk()->undoStack()->undo();
    CHECK(bench.loft()->fairing()->text() == QStringLiteral("0.8"));
}

TEST_CASE_METHOD(App, "the bench shows the hull before it is planked") {
    Workshop shop;
    core::Project project = shop.window.desk()->project();
    project.hull.stations[6].sheer.height += 2.0;
    project.hull.stations[6].sheer.printedHeight.clear();
    std::vector<std::shared_ptr<const core::LoftedHull>> hulls;
    const auto loaded = planBoat(
        project,
        shop.window.boat(),
        {},
        [](const QString&) {},
        [&](std::shared_ptr<const core::LoftedHull> hull) { hulls.push_back(std::move(hull)); });
    REQUIRE(loaded.boat != nullptr);
    REQUIRE(hulls.size() == 2); // at once, and after the search for misprints
    CHECK(std::abs(hulls.front()->drawn.halfGirthMax - hulls.back()->drawn.halfGirthMax) < 0.2); // mm
    CHECK(hulls.back()->drawn.halfGirthMax == loaded.boat->hull.drawn.halfGirthMax);
    // how she is planked does not touch the hull
    hulls.clear();
    project = shop.window.desk()->project();
    project.planking.taper = core::Taper::Ends;
    (void)planBoat(
        project,
        shop.window.boat(),
        {},
        [](const QString&) {},
        [&](std::shared_ptr<const core::LoftedHull> hull) { hulls.push_back(std::move(hull)); });
    CHECK(hulls.empty());
}

TEST_CASE_METHOD(App, "the lines are drawn, the cell in hand ringed on them, and follow an edit") {
    Workshop shop;
    LinesBench& bench = *shop.window.lines();
    bench.board()->resize(900, 320);
    bench.grid()->setCurrentIndex(cellAt(bench, QStringLiteral("Height · sheer"), 6));
    const auto rings = bench.board()->rings();
    REQUIRE(rings.size() == 3);
    bench.showPart(core::LinesPart::BodyPlan);
    CHECK(bench.board()->rings().size() == 1);
    bench.showPart(core::LinesPart::Profile);
    const QPointF low = bench.board()->rings().front();
    bench.grid()->offsets()->setData(cellAt(bench, QStringLiteral("Height · sheer"), 6),
                                     QStringLiteral("1-1-0"));
    CHECK(bench.board()->rings().front().y() < low.y() - 1.0); // an inch and more higher
}

TEST_CASE_METHOD(App, "one edit is drawn once, however often its hull comes") {
    Workshop shop;
    LinesBench& bench = *shop.window.lines();
    const core::Project project = shop.window.boat()->project;
    const core::DrawnLines* drawn = bench.board()->lines();
    REQUIRE(drawn != nullptr);
    bench.setLoft(project, std::make_shared<const core::LoftedHull>(core::loft(project).value()));
    CHECK(bench.board()->lines() == drawn);
    core::Project wider = project;
    wider.hull.stations[3].sheer.halfBreadth += 3.0; // mm
    bench.setLoft(wider, std::make_shared<const core::LoftedHull>(core::loft(wider).value()));
    CHECK(bench.board()->lines() != drawn);
}

TEST_CASE_METHOD(App, "a station is put in from the loft and taken out, each one edit") {
    Workshop shop;
    LinesBench& bench = *shop.window.lines();
    TableTools& tools = *bench.tools();
    const auto stations = shop.window.boat()->project.hull.stations.size();
    CHECK_FALSE(tools.putInButton()->isEnabled());
    tools.place()->setText(QStringLiteral("7"));
    tools.putInButton()->click();
    CHECK(bench.said().contains(QStringLiteral("all three parts")));
    tools.place()->setText(QStringLiteral("5-6-0"));
    tools.putInButton()->click();
    CHECK(bench.said().isEmpty());
    REQUIRE(shop.window.boat()->project.hull.stations.size() == stations + 1);
    QUndoStack& undo = *shop.window.desk()->undoStack();
    CHECK(undo.undoText() == QStringLiteral("Station put in at 5-6-0"));
    CHECK(bench.grid()->offsets()->columnCount() == static_cast<int>(stations + 1));
    CHECK(shop.window.boat()->hull.stationX.size() == stations + 1);

    bench.grid()->setCurrentIndex(cellAt(bench, QStringLiteral("Height · sheer"), 0));
    tools.takeOutButton()->click();
    CHECK(shop.window.boat()->project.hull.stations.size() == stations);
    CHECK(undo.undoText() == QStringLiteral("Station 0-6-0 taken out"));
    undo.setIndex(0);
    CHECK(shop.window.boat()->project.hull.stations.size() == stations);
    CHECK(bench.grid()->offsets()->headerData(0, Qt::Horizontal).toString() == QStringLiteral("0-6-0"));
    // the file's own text takes a station in, too
    tools.place()->setText(QStringLiteral("5-6-0"));
    tools.putIn();
    REQUIRE(shop.window.save());
    CHECK(bytesOf(shop.path).startsWith("# Made by"));
    CHECK(bytesOf(shop.path).contains("x = \"5-6-0\""));
}

TEST_CASE_METHOD(App, "a waterline or buttock is put in from the loft, each one edit") {
    Workshop shop;
    LinesBench& bench = *shop.window.lines();
    TableTools& tools = *bench.tools();
    const int rows = bench.grid()->offsets()->rowCount();
    CHECK_FALSE(tools.waterlineButton()->isEnabled());
    tools.level()->setText(QStringLiteral("0-6-0"));
    tools.waterlineButton()->click();
    CHECK(bench.said().contains(QStringLiteral("which the table has")));
    tools.level()->setText(QStringLiteral("0-5-0"));
    tools.waterlineButton()->click();
    CHECK(bench.said().isEmpty());
    CHECK(tools.level()->text().isEmpty());
    CHECK(bench.grid()->offsets()->rowCount() == rows + 1);
    tools.level()->setText(QStringLiteral("0-7-4"));
    tools.buttockButton()->click();
    CHECK(bench.grid()->offsets()->rowCount() == rows + 2);
    CHECK(shop.window.desk()->undoStack()->undoText().contains(QStringLiteral("Buttock")));
    shop.window.desk()->undoStack()->undo();
    shop.window.desk()->undoStack()->undo();
    // the grid keeps their rows, blank, to be filled again
    CHECK(static_cast<int>(core::gridLines(shop.window.desk()->project().hull).size()) == rows);
}

TEST_CASE_METHOD(App, "what could not be pasted is said until the builder goes on") {
    Workshop shop;
    LinesBench& bench = *shop.window.lines();
    const QModelIndex last =
        cellAt(bench, QStringLiteral("Height · sheer"), bench.grid()->offsets()->columnCount() - 1);
    bench.grid()->setCurrentIndex(last);
    QGuiApplication::clipboard()->setText(QStringLiteral("1-5-6\t1-6-0"));
    bench.grid()->paste();
    CHECK(last.data().toString() == QStringLiteral("1-5-6"));
    CHECK(bench.said().contains(QStringLiteral("1 of the pasted cells")));
    bench.setBoat(shop.window.boat()); // as when the next loft comes in
    CHECK_FALSE(bench.said().isEmpty());
    bench.grid()->setCurrentIndex(last.siblingAtColumn(0));
    CHECK(bench.said().isEmpty());
}

TEST_CASE_METHOD(App, "the boat is scaled after its new measures were told") {
    Workshop shop;
    TableTools& tools = *shop.window.lines()->tools();
    shop.window.setUnits(core::Units::Inches);
    tools.showScale(true);
    CHECK(tools.length()->text() == QStringLiteral("16' 0\""));
    CHECK(tools.spacing()->text() == QStringLiteral("12\""));
    CHECK_FALSE(tools.scaleButton()->isEnabled());
    const auto type = [](QLineEdit* field, const char* text) {
        field->clear();
        QTest::keyClicks(field, QString::fromUtf8(text));
    };
    type(tools.spacing(), "13 in"); // stations 15 ft from first to last, and half a foot of stem beyond each
    CHECK(tools.length()->text() == QStringLiteral("17' 3\""));
    CHECK(tools.preview().contains(QStringLiteral("She would be 17' 3\" long")));
    CHECK(tools.preview().contains(QStringLiteral("stations 13\" apart")));
    type(tools.depth(), "deep");
    CHECK(tools.preview().contains(QStringLiteral("deep")));
    CHECK_FALSE(tools.scaleButton()->isEnabled());
    type(tools.depth(), "90 in");
    CHECK(tools.preview().contains(QStringLiteral("half and twice")));
    CHECK_FALSE(tools.scaleButton()->isEnabled());
    tools.showScale(false);
    tools.showScale(true);
    type(tools.length(), "17' 4\"");
    REQUIRE(tools.scaleButton()->isEnabled());
    const double length = shop.window.boat()->hull.drawn.length;
    tools.scaleButton()->click();
    CHECK(std::abs(shop.window.boat()->hull.drawn.length - length * 13 / 12) < 3.0); // mm, of 5283
    CHECK(shop.window.desk()->undoStack()->undoText() == QStringLiteral("Scale the boat"));
    shop.window.desk()->undoStack()->undo();
    CHECK(shop.window.boat()->hull.drawn.length == length);
}

TEST_CASE_METHOD(App, "a table that can't be lofted can be mended where it was spoilt") {
    Workshop shop;
    LinesBench& bench = *shop.window.lines();
    const auto boat = shop.window.boat();
    core::Project bare = shop.window.desk()->project();
    for (core::Station& s : bare.hull.stations)
        s.keel.reset();
    bare.hull.profile.clear();
    Q_EMIT bench.edited(QStringLiteral("No keels"), bare);
    CHECK(shop.window.stale());
    CHECK(shop.window.boat() == boat);
    CHECK(cellAt(bench, QStringLiteral("Height · keel"), 5).data().toString().isEmpty());
    shop.window.desk()->undoStack()->undo();
    CHECK_FALSE(shop.window.stale());
    CHECK_FALSE(cellAt(bench, QStringLiteral("Height · keel"), 5).data().toString().isEmpty());
}

TEST_CASE_METHOD(App, "an edited table goes on top of a file that was changed elsewhere") {
    Workshop shop;
    LinesBench& bench = *shop.window.lines();
    bench.grid()->offsets()->setData(cellAt(bench, QStringLiteral("Height · sheer"), 6),
                                     QStringLiteral("1-0-4+"));
    write(shop.path, "# by hand\n" + shop.good);
    REQUIRE(QTest::qWaitFor([&] { return shop.window.notice()->answers().size() == 2; }, patience));
    shop.window.notice()->answers()[0]->click();
    CHECK(shop.window.boat()->project.hull.stations[6].sheer.printedHeight == "1-0-4+");
    REQUIRE(shop.window.save());
    CHECK(bytesOf(shop.path).startsWith("# by hand"));
    CHECK(bytesOf(shop.path).contains("\"1-0-4+\""));
}

TEST_CASE_METHOD(App, "a doubtful number is settled by one press, and kept beside the printed one") {
    Workshop shop;
    QByteArray spoilt = shop.good;
    const core::TablePoint& cell = shop.window.boat()->project.hull.stations[6].points[3];
    const bool height = cell.kind == core::PointKind::Buttock;
    REQUIRE_FALSE(height);
    // three inches too narrow
    LinesBench& bench = *shop.window.lines();
    const QModelIndex at = cellAt(
        bench, QStringLiteral("Half-breadth · waterline ") + QString::fromStdString(cell.printedHeight), 6);
    const QString sound = at.data().toString();
    bench.grid()->setCurrentIndex(at);
    CHECK(bench.fairButton()->isHidden());
    const std::string narrow = core::toFeetInchesEighths(cell.halfBreadth - 3 * core::mmPerInch);
    bench.grid()->offsets()->setData(at, QString::fromStdString(narrow));
    REQUIRE_FALSE(bench.fairButton()->isHidden());
    CHECK(bench.loft()->table()->rowCount() > 10);
    // the finding that tells it leads to it
    bench.grid()->setCurrentIndex(cellAt(bench, QStringLiteral("Height · sheer"), 0));
    CHECK(bench.fairButton()->isHidden());
    for (const core::Finding& finding : bench.loft()->findings()->findings())
        Q_EMIT bench.loft()->findings()->chosen(finding);
    CHECK(bench.grid()->currentIndex() == at);
    bench.fairButton()->click();
    const core::TablePoint& settled = shop.window.boat()->project.hull.stations[6].points[3];
    CHECK(settled.replacedHalfBreadth == narrow);
    const auto meant = core::parseLength(sound.toStdString(), core::Units::Inches);
    REQUIRE(meant.has_value());
    CHECK(std::abs(settled.halfBreadth - meant->millimetres) < 3.0); // mm, as the finder is good to
    CHECK(shop.window.boat()->hull.doubtful.empty());
    CHECK(bench.fairButton()->isHidden());
    REQUIRE(shop.window.save());
    CHECK(bytesOf(shop.path).contains("replaces = { half-breadth"));
}

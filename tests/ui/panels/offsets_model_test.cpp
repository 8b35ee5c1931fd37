#include "core/hull/hull.hpp"
#include "tests/support/project_text.hpp"
#include "tests/support/qt_app.hpp"
#include "ui/panels/offsets_model.hpp"

#include <QAbstractItemModelTester>
#include <QColor>
#include <QSignalSpy>

#include <memory>
#include <string>

using namespace sheerlay;
using namespace sheerlay::ui;
using namespace sheerlay::test;

namespace {

core::Project reference(const std::string& name) {
    return parsed(fileText(std::string(SHEERLAY_REFERENCE) + "/" + name + ".sheerlay"));
}

/// A model under the tester, whose edits come back to it as they do over the desk.
struct Table {
    OffsetsModel model;
    QAbstractItemModelTester tester{&model, QAbstractItemModelTester::FailureReportingMode::Fatal};
    QSignalSpy edits{&model, &OffsetsModel::edited};

    explicit Table(const core::Project& project) {
        model.setProject(project);
        QObject::connect(
            &model, &OffsetsModel::edited, &model, [this](const QString&, const core::Project& p) {
                model.setProject(core::Project(p));
            });
    }
    [[nodiscard]] QModelIndex at(const char* label, int column) const {
        for (int row = 0; row < model.rowCount(); ++row)
            if (model.headerData(row, Qt::Vertical).toString().toStdString() == label)
                return model.index(row, column);
        FAIL("no line " << label);
        return {};
    }
    [[nodiscard]] std::string text(const QModelIndex& index) const {
        return index.data().toString().toStdString();
    }
    bool type(const QModelIndex& index, const char* text) {
        return model.setData(index, QString::fromUtf8(text));
    }
};

} // namespace

TEST_CASE("the grid has a row per line and a column per station") {
    qtApp();
    const core::Project project = parsed(smallProject());
    Table table(project);
    CHECK(table.model.columnCount() == 3);
    CHECK(table.model.rowCount() == 7);
    CHECK(table.model.headerData(1, Qt::Horizontal).toString().toStdString() == "3-0-0");
    CHECK(table.text(table.at("Station at", 1)) == "3-0-0");
    CHECK(table.text(table.at("Half-breadth · waterline 0-8-0", 1)) == "0-11-2");
    CHECK(table.text(table.at("Half-breadth · keel", 1)).empty());
    CHECK(table.model.flags(table.at("Height · sheer", 0)).testFlag(Qt::ItemIsEditable));
}

TEST_CASE("a typed number is one edit with a name; opening a cell and leaving it is none") {
    qtApp();
    Table table(parsed(smallProject()));
    const QModelIndex sheer = table.at("Height · sheer", 1);
    CHECK(table.type(sheer, "1-0-0"));
    CHECK(table.edits.count() == 0);
    CHECK(table.type(sheer, "1-0-4"));
    REQUIRE(table.edits.count() == 1);
    CHECK(table.edits.front().front().toString().toStdString() == "Station 3-0-0, sheer height");
    CHECK(table.text(sheer) == "1-0-4");
}

TEST_CASE("an entry that can't stand stays in its cell and says what would do") {
    qtApp();
    Table table(parsed(smallProject()));
    const QModelIndex sheer = table.at("Height · sheer", 1);
    CHECK(table.type(sheer, "about so"));
    CHECK(table.edits.count() == 0);
    CHECK(table.text(sheer) == "about so");
    CHECK(sheer.data(OffsetsModel::RefusedRole).toBool());
    CHECK(table.model.refusedCount() == 1);
    CHECK(sheer.data(Qt::BackgroundRole).value<QColor>().isValid());
    const std::string words = sheer.data(Qt::ToolTipRole).toString().toStdString();
    CHECK(says(words, "\"about so\" can't stand here"));
    CHECK(says(words, "Until then 1-0-0 stands"));
    // another edit leaves it, and a blank entry brings the number back
    CHECK(table.type(table.at("Height · keel", 0), "0-2-1"));
    CHECK(table.text(table.at("Height · sheer", 1)) == "about so");
    CHECK(table.type(table.at("Height · sheer", 1), ""));
    CHECK(table.text(table.at("Height · sheer", 1)) == "1-0-0");
    CHECK(table.model.refusedCount() == 0);
    CHECK(table.edits.count() == 1);
    table.type(table.at("Height · sheer", 1), "wide");
    table.model.giveUp(table.at("Height · sheer", 1));
    CHECK(table.model.refusedCount() == 0);
}

TEST_CASE("an entry that waited for another number stands as soon as it can") {
    qtApp();
    Table table(parsed(replaced(smallProject(),
                                "[[hull.station]]\nx = \"3-0-0\"\n",
                                "[[hull.station]]\nx = \"3-0-0\"\n"
                                "points = [{ half-breadth = \"0-9-0\", height = \"0-3-0\" }]\n")));
    table.type(table.at("Height · point 1", 0), "0-6-0");
    CHECK(table.model.refusedCount() == 1);
    CHECK(
        says(table.at("Height · point 1", 0).data(Qt::ToolTipRole).toString().toStdString(), "both numbers"));
    table.type(table.at("Half-breadth · point 1", 0), "0-1-4");
    CHECK(table.model.refusedCount() == 0);
    CHECK(table.edits.count() == 1);
    CHECK(table.text(table.at("Height · point 1", 0)) == "0-6-0");
}

TEST_CASE("a line whose last number was cleared stays to be given again") {
    qtApp();
    Table table(parsed(replaced(smallProject(),
                                "[[hull.station]]\nx = \"3-0-0\"\n",
                                "[[hull.station]]\nx = \"3-0-0\"\n"
                                "buttocks = [{ half-breadth = \"0-9-0\", height = \"0-3-0\" }]\n")));
    table.type(table.at("Height · buttock 0-9-0", 1), "");
    CHECK(table.edits.count() == 1);
    CHECK(table.text(table.at("Height · buttock 0-9-0", 1)).empty());
    table.type(table.at("Height · buttock 0-9-0", 1), "0-3-1");
    CHECK(table.text(table.at("Height · buttock 0-9-0", 1)) == "0-3-1");
    // another boat has its own lines
    core::Project other = parsed(smallProject());
    other.name = "Another";
    table.model.setProject(other);
    CHECK(table.model.rowCount() == 7);
}

TEST_CASE("doubtful numbers are marked, told and corrected beside what was printed") {
    qtApp();
    const core::Project project = reference("stephens_1889_as_printed");
    const auto hull = core::loft(project);
    REQUIRE(hull.has_value());
    REQUIRE(hull->doubtful.size() == 4);
    Table table(project);
    table.model.setLoft(project, std::make_shared<const core::LoftedHull>(*hull));
    int marked = 0;
    QModelIndex doubted;
    for (int row = 0; row < table.model.rowCount(); ++row)
        for (int column = 0; column < table.model.columnCount(); ++column)
            if (table.model.index(row, column).data(OffsetsModel::DoubtfulRole).toBool()) {
                ++marked;
                if (table.model.index(row, column).data().toString() == QStringLiteral("0-2-7"))
                    doubted = table.model.index(row, column);
            }
    CHECK(marked == 4);
    REQUIRE(doubted.isValid());
    const auto doubt = table.model.doubt(doubted);
    REQUIRE(doubt->likely.has_value());
    // source: tests/reference/corrections_suggested.csv has 0-3-7 for station 1, deck
    CHECK(table.model.printedAs(*doubt->likely, doubted).toStdString() == "0-3-7");
    CHECK(says(doubted.data(Qt::ToolTipRole).toString().toStdString(), "The rest of the table wants about"));
    table.model.enter({{{static_cast<std::size_t>(doubted.row()), static_cast<std::size_t>(doubted.column())},
                        "0-3-7",
                        true}},
                      QString());
    CHECK(doubted.data(OffsetsModel::CorrectedRole).toBool());
    CHECK_FALSE(table.model.doubt(doubted).has_value()); // it is another number now
    CHECK(says(doubted.data(Qt::ToolTipRole).toString().toStdString(), "Printed was 0-2-7"));
    CHECK(table.model.replacedAt(doubted).toStdString() == "0-2-7");
}

TEST_CASE("cells are coloured by how far they stand off the loft, until they change") {
    qtApp();
    core::Project project = reference("formula_canoe");
    const auto hull = core::loft(project);
    REQUIRE(hull.has_value());
    // the loft of the sound table beside a table with one number 5 mm too far out
    core::TablePoint& wide = project.hull.stations[6].points[2];
    wide.halfBreadth += 5.0;
    wide.printedHalfBreadth.clear();
    Table table(project);
    table.model.setLoft(project, std::make_shared<const core::LoftedHull>(*hull));
    int coloured = 0;
    for (int row = 0; row < table.model.rowCount(); ++row)
        for (int column = 0; column < table.model.columnCount(); ++column)
            coloured += table.model.index(row, column).data(Qt::BackgroundRole).isValid() ? 1 : 0;
    CHECK(coloured >= 1);
    CHECK(coloured < 30); // quiet: most cells are within what rounding explains
    const std::string label = "Half-breadth · waterline " + wide.printedHeight;
    const QModelIndex cell = table.at(label.c_str(), 6);
    const QColor colour = cell.data(Qt::BackgroundRole).value<QColor>();
    CHECK(colour.blue() > colour.red()); // outside
    CHECK(says(cell.data(Qt::ToolTipRole).toString().toStdString(), "farther out"));
    table.type(cell, "0-9-0");
    CHECK_FALSE(cell.data(Qt::BackgroundRole).isValid());
    CHECK_FALSE(says(cell.data(Qt::ToolTipRole).toString().toStdString(), "the loft"));
}

TEST_CASE("stations may come and go under an entry that can't stand") {
    qtApp();
    core::Project project = reference("formula_canoe");
    Table table(project);
    table.type(table.at("Height · sheer", 6), "high");
    project.hull.stations.erase(project.hull.stations.begin() + 2);
    table.model.setProject(project);
    CHECK(table.text(table.at("Height · sheer", 5)) == "high");
    project.hull.stations.erase(project.hull.stations.begin() + 5);
    table.model.setProject(project);
    CHECK(table.model.refusedCount() == 0);
}

#include "core/hull/hull.hpp"
#include "tests/support/project_text.hpp"
#include "tests/support/qt_app.hpp"
#include "ui/panels/offsets_grid.hpp"
#include "ui/panels/offsets_model.hpp"

#include <QClipboard>
#include <QGuiApplication>
#include <QItemSelection>
#include <QLineEdit>
#include <QMenu>
#include <QSignalSpy>
#include <QTest>

#include <memory>
#include <string>

using namespace sheerlay;
using namespace sheerlay::ui;
using namespace sheerlay::test;

namespace {

struct Grid {
    OffsetsGrid grid;
    QSignalSpy edits{grid.offsets(), &OffsetsModel::edited};

    explicit Grid(const core::Project& project = parsed(smallProject())) {
        grid.offsets()->setProject(project);
        QObject::connect(
            grid.offsets(), &OffsetsModel::edited, &grid, [this](const QString&, const core::Project& p) {
                grid.offsets()->setProject(core::Project(p));
            });
        grid.resize(600, 300);
        grid.show();
    }
    void choose(int top, int left, int bottom, int right) {
        grid.setCurrentIndex(grid.model()->index(top, left));
        grid.selectionModel()->select(
            QItemSelection(grid.model()->index(top, left), grid.model()->index(bottom, right)),
            QItemSelectionModel::ClearAndSelect);
    }
    [[nodiscard]] std::string text(int row, int column) const {
        return grid.model()->index(row, column).data().toString().toStdString();
    }
    [[nodiscard]] std::string lastName() const { return edits.back().front().toString().toStdString(); }
    static void clip(const char* text) { QGuiApplication::clipboard()->setText(QString::fromUtf8(text)); }
};

} // namespace

TEST_CASE("typing over a cell, Enter going down") {
    qtApp();
    Grid g;
    g.choose(1, 1, 1, 1);
    QTest::keyClicks(&g.grid, QStringLiteral("1"));
    auto* editor = g.grid.findChild<QLineEdit*>();
    REQUIRE(editor != nullptr);
    CHECK(editor->text() == QStringLiteral("1")); // typing replaces
    QTest::keyClicks(editor, QStringLiteral("-0-3"));
    QTest::keyClick(editor, Qt::Key_Return);
    QCoreApplication::processEvents(); // the editor hands over once it has seen the key itself
    CHECK(g.text(1, 1) == "1-0-3");
    CHECK(g.grid.currentIndex().row() == 2);
    CHECK(g.edits.count() == 1);
}

TEST_CASE("copy, cut, paste, fill and clear are one named edit each") {
    qtApp();
    Grid g;
    g.choose(4, 0, 5, 1);
    QTest::keyClick(&g.grid, Qt::Key_C, Qt::ControlModifier);
    CHECK(QGuiApplication::clipboard()->text().toStdString() == "0-2-0\t0-11-2\n0-0-6\t0-10-0");
    CHECK(g.edits.count() == 0);

    Grid::clip("0-2-1;0-11-3\n0-0-7;0-10-1");
    QTest::keyClick(&g.grid, Qt::Key_V, Qt::ControlModifier);
    CHECK(g.text(5, 1) == "0-10-1");
    REQUIRE(g.edits.count() == 1);
    CHECK(g.lastName() == "Paste 4 cells");

    g.choose(4, 0, 5, 0);
    QTest::keyClick(&g.grid, Qt::Key_D, Qt::ControlModifier);
    CHECK(g.text(5, 0) == "0-2-1");
    g.choose(4, 1, 4, 2);
    QTest::keyClick(&g.grid, Qt::Key_R, Qt::ControlModifier);
    CHECK(g.text(4, 2) == "0-11-3");
    CHECK(g.lastName() == "Station 5-6-0, half-breadth at the waterline 0-8-0");

    g.choose(4, 0, 4, 1);
    QTest::keyClick(&g.grid, Qt::Key_X, Qt::ControlModifier);
    CHECK(g.text(4, 0).empty());
    CHECK(g.lastName() == "Clear 2 cells");
    CHECK(QGuiApplication::clipboard()->text().toStdString() == "0-2-1\t0-11-3");
    CHECK(g.edits.count() == 4);
}

TEST_CASE("what can't be pasted is told, and nothing of it is lost") {
    qtApp();
    Grid g;
    const QSignalSpy said(&g.grid, &OffsetsGrid::said);
    g.choose(4, 1, 4, 1);
    Grid::clip("100,200");
    g.grid.paste();
    REQUIRE(said.count() == 1);
    CHECK(said.back().front().toString().contains(QStringLiteral("tabs or semicolons")));
    CHECK(g.edits.count() == 0);

    // one of three is no length and stays where it was pasted; one has no room
    Grid::clip("0-11-4\twide\t0-1-0");
    g.grid.paste();
    CHECK(g.text(4, 1) == "0-11-4");
    CHECK(g.text(4, 2) == "wide");
    CHECK(g.edits.count() == 1);
    CHECK(said.back().front().toString().contains(QStringLiteral("1 of the pasted cells")));
    g.choose(4, 2, 4, 2);
    QTest::keyClick(&g.grid, Qt::Key_Delete);
    CHECK(g.text(4, 2) == "0-2-4"); // the table's own number again
    CHECK(g.edits.count() == 1);
}

TEST_CASE("keys typed in the grid are not the window's") {
    qtApp();
    Grid g;
    const auto taken = [&](int key, Qt::KeyboardModifiers modifiers, const char* text) {
        QKeyEvent event(QEvent::ShortcutOverride, key, modifiers, QString::fromUtf8(text));
        event.ignore();
        QCoreApplication::sendEvent(&g.grid, &event);
        return event.isAccepted();
    };
    CHECK(taken(Qt::Key_3, Qt::NoModifier, "3"));
    CHECK(taken(Qt::Key_U, Qt::NoModifier, "u"));
    CHECK(taken(Qt::Key_Right, Qt::NoModifier, ""));
    CHECK(taken(Qt::Key_End, Qt::ShiftModifier, ""));
    CHECK(taken(Qt::Key_V, Qt::ControlModifier, ""));
    CHECK_FALSE(taken(Qt::Key_Z, Qt::ControlModifier, ""));
    CHECK_FALSE(taken(Qt::Key_S, Qt::ControlModifier, ""));
    CHECK_FALSE(taken(Qt::Key_F11, Qt::NoModifier, ""));
}

TEST_CASE("the menu of a doubtful cell offers its fair value and the likeliest slip, and the way back") {
    qtApp();
    const core::Project project = parsed(fileText(SHEERLAY_REFERENCE "/stephens_1889_as_printed.sheerlay"));
    const auto hull = core::loft(project);
    REQUIRE(hull.has_value());
    Grid g(project);
    g.grid.offsets()->setLoft(project, std::make_shared<const core::LoftedHull>(*hull));
    const auto texts = [&] {
        QMenu menu;
        g.grid.fillMenu(menu);
        std::string all;
        for (const QAction* action : menu.actions())
            all += action->text().toStdString() + "\n";
        return all;
    };
    QModelIndex at;
    for (int i = 0; i < 4; ++i) { // four are doubtful, one after another
        g.grid.chooseDoubtful();
        CHECK(g.grid.currentIndex().data(OffsetsModel::DoubtfulRole).toBool());
        if (g.grid.currentIndex().data().toString() == QStringLiteral("0-2-7"))
            at = g.grid.currentIndex();
    }
    REQUIRE(at.isValid());
    g.grid.setCurrentIndex(at);
    CHECK(says(texts(), "Take the fair value, 0-"));
    CHECK(says(texts(), "Take 0-3-7 ("));
    g.grid.takeLikely();
    CHECK(at.data().toString().toStdString() == "0-3-7");
    CHECK(says(texts(), "Go back to the printed 0-2-7"));
    g.grid.takePrinted();
    CHECK(at.data().toString().toStdString() == "0-2-7");
    CHECK_FALSE(at.data(OffsetsModel::CorrectedRole).toBool());
    g.grid.takeFair();
    CHECK(at.data(OffsetsModel::CorrectedRole).toBool());
    CHECK(at.data().toString().toStdString() != "0-2-7");
}

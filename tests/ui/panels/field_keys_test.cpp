#include "tests/support/catch.hpp"
#include "tests/support/window_workshop.hpp"
#include "ui/choices/choices_panel.hpp"
#include "ui/panels/field_keys.hpp"
#include "ui/panels/offsets_grid.hpp"
#include "ui/panels/offsets_model.hpp"
#include "ui/panels/planking_controls.hpp"
#include "ui/panels/table_tools.hpp"
#include "ui/panels/typed_field.hpp"
#include "ui/window/journal_bench.hpp"
#include "ui/window/lines_bench.hpp"
#include "ui/window/project_desk.hpp"
#include "ui/window/sheets_bench.hpp"

#include <QApplication>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLineEdit>
#include <QSpinBox>
#include <QTest>
#include <QUndoStack>
#include <QWindow>

using namespace sheerlay;
using namespace sheerlay::ui;
using namespace sheerlay::test;

namespace {

/// A window whose keys are pressed as by hand: whatever has the focus gets them first.
struct Keyboard : Workshop {
    Keyboard() {
        window.show();
        REQUIRE(QTest::qWaitForWindowActive(&window, patience)); // a shortcut wants an active window
    }
    void press(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) {
        QTest::keyClick(window.windowHandle(), key, with);
    }
    void type(const char* text) {
        for (; *text != '\0'; ++text)
            QTest::keyClick(window.windowHandle(), *text);
    }
    void undo() { press(Qt::Key_Z, Qt::ControlModifier); }
    void redo() { press(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier); }
    QUndoStack& steps() { return *window.desk()->undoStack(); }
    [[nodiscard]] QWidget* inHand() const { return window.focusWidget(); }
    QLineEdit& field(SheetsBench& bench, const char* group, const char* label) {
        bench.showChoices(true);
        bench.choices()->fold(QString::fromUtf8(group), false);
        auto* found = qobject_cast<QLineEdit*>(
            bench.choices()->field(QString::fromUtf8(group), QString::fromUtf8(label)));
        REQUIRE(found != nullptr);
        found->setFocus(Qt::MouseFocusReason);
        found->selectAll();
        return *found;
    }
};

} // namespace

TEST_CASE_METHOD(App, "Undo pressed after a typed number takes the project's step back, and again forth") {
    Keyboard shop;
    shop.window.showBench(MainWindow::Bench::Stock);
    QLineEdit& thickness = shop.field(*shop.window.stock(), "The strip", "Thickness");
    const QString before = thickness.text();
    shop.type("9/32 in");
    shop.undo(); // of the typing, which is the field's
    CHECK(thickness.text() == before);
    CHECK(shop.steps().count() == 0);
    thickness.selectAll();
    shop.type("9/32 in");
    shop.press(Qt::Key_Return);
    REQUIRE(shop.steps().index() == 1);
    const QString after = thickness.text();
    CHECK(after != before);
    shop.undo();
    CHECK(shop.steps().index() == 0);
    CHECK(thickness.text() == before);
    thickness.setFocus(Qt::MouseFocusReason); // back in the field, where nothing was typed
    shop.redo();
    CHECK(shop.steps().index() == 1);
    CHECK(thickness.text() == after);
    shop.undo();
    CHECK(shop.steps().index() == 0);
    // the number that stands there already is no step, and holds nothing back
    thickness.selectAll();
    shop.type(before.toUtf8().constData());
    shop.press(Qt::Key_Return);
    thickness.setFocus(Qt::MouseFocusReason);
    shop.redo();
    CHECK(shop.steps().index() == 1);
}

TEST_CASE_METHOD(App, "Undo is the project's after a new station, in a box of figures and in the journal") {
    Keyboard shop;
    shop.window.showBench(MainWindow::Bench::Lines);
    QLineEdit& place = *shop.window.lines()->tools()->place();
    place.setFocus(Qt::MouseFocusReason);
    shop.type("3-6-0");
    shop.press(Qt::Key_Return);
    REQUIRE(shop.steps().index() == 1);
    CHECK(shop.inHand() == &place); // for the next one
    shop.undo();
    CHECK(shop.steps().index() == 0);

    shop.window.showBench(MainWindow::Bench::Journal);
    QSpinBox& row = *shop.window.journal()->row();
    row.setFocus(Qt::MouseFocusReason);
    row.selectAll();
    shop.type("3");
    shop.press(Qt::Key_Return);
    CHECK(row.value() == 3);
    shop.redo();
    CHECK(shop.steps().index() == 1);
    shop.undo();
    CHECK(shop.steps().index() == 0);

    shop.window.showBench(MainWindow::Bench::Planking);
    PlankingControls& controls = *shop.bench().controls();
    shop.bench().showControls(true);
    controls.start()->setCurrentIndex(static_cast<int>(core::StartLine::Kind::Bent));
    Q_EMIT controls.start()->activated(static_cast<int>(core::StartLine::Kind::Bent));
    REQUIRE(shop.steps().index() == 1);
    for (auto* box : controls.findChildren<QDoubleSpinBox*>())
        if (box->accessibleName().endsWith(QStringLiteral("amidships"))) {
            box->setFocus(Qt::MouseFocusReason);
            box->selectAll();
        }
    shop.type("0.010");
    shop.press(Qt::Key_Return);
    REQUIRE(shop.steps().index() == 2);
    shop.undo();
    CHECK(shop.steps().index() == 1);
}

TEST_CASE_METHOD(App, "Undo pressed while a cell is open and untouched shuts it and takes the step back") {
    Keyboard shop;
    shop.window.showBench(MainWindow::Bench::Lines);
    OffsetsGrid& grid = *shop.window.lines()->grid();
    int line = 0;
    while (grid.model()->headerData(line, Qt::Vertical).toString() != QStringLiteral("Height · sheer"))
        REQUIRE(++line < grid.model()->rowCount());
    const QModelIndex cell = grid.model()->index(line, 6);
    const QString before = cell.data().toString();
    grid.setFocus(Qt::MouseFocusReason);
    grid.setCurrentIndex(cell);
    grid.offsets()->setData(cell, QStringLiteral("1-0-4+"));
    REQUIRE(shop.steps().index() == 1);
    shop.press(Qt::Key_F2);
    REQUIRE(qobject_cast<QLineEdit*>(QApplication::focusWidget()) != nullptr);
    shop.undo();
    CHECK(shop.steps().index() == 0);
    CHECK(shop.steps().count() == 1); // and nothing was written back
    CHECK(cell.data().toString() == before);
    CHECK(shop.inHand() == &grid);
    // typed into, Esc is the cell's own
    shop.press(Qt::Key_F2);
    shop.type("9");
    shop.press(Qt::Key_Escape);
    CHECK(cell.data().toString() == before);
    CHECK(shop.inHand() == &grid);
}

TEST_CASE_METHOD(App, "Esc puts back what stood in a field, and the keys are the bench's again") {
    Keyboard shop;
    shop.window.showBench(MainWindow::Bench::Stock);
    QLineEdit& thickness = shop.field(*shop.window.stock(), "The strip", "Thickness");
    const QString before = thickness.text();
    shop.type("9/");
    shop.press(Qt::Key_Escape);
    CHECK(thickness.text() == before);
    CHECK(shop.inHand() == &shop.window);
    CHECK(shop.steps().count() == 0);
    shop.press(Qt::Key_3);
    CHECK(shop.bench().isVisible());
    shop.press(Qt::Key_1);
    QLineEdit& place = *shop.window.lines()->tools()->place();
    place.setFocus(Qt::MouseFocusReason);
    shop.type("3-6");
    shop.press(Qt::Key_Escape);
    CHECK(place.text().isEmpty());
    CHECK(shop.inHand() == &shop.window);
    QSpinBox& row = *shop.window.journal()->row();
    shop.press(Qt::Key_6);
    const int was = row.value();
    row.setFocus(Qt::MouseFocusReason);
    row.selectAll();
    shop.type("5");
    shop.press(Qt::Key_Escape);
    CHECK(row.value() == was);
    shop.press(Qt::Key_4);
    CHECK(shop.window.stock()->isVisible());
}

TEST_CASE_METHOD(App, "after Enter on a value the keys are the bench's, and Tab goes on from that field") {
    Keyboard shop;
    shop.window.showBench(MainWindow::Bench::Stock);
    QLineEdit& thickness = shop.field(*shop.window.stock(), "The strip", "Thickness");
    shop.press(Qt::Key_Tab);
    QWidget* next = shop.inHand();
    REQUIRE(next != &thickness);
    thickness.setFocus(Qt::MouseFocusReason);
    thickness.selectAll();
    shop.type("9/32 in");
    shop.press(Qt::Key_Return);
    CHECK(shop.inHand() == &shop.window);
    shop.press(Qt::Key_Tab);
    CHECK(shop.inHand() == next);
    // what is not taken is typed anew
    thickness.setFocus(Qt::MouseFocusReason);
    thickness.selectAll();
    shop.type("thick");
    shop.press(Qt::Key_Return);
    CHECK(shop.inHand() == &thickness);
    CHECK(shop.steps().count() == 1);
    shop.press(Qt::Key_Escape);
    const auto units = shop.window.units();
    shop.press(Qt::Key_U);
    CHECK(shop.window.units() != units);
}

#include "tests/support/catch.hpp"
#include "tests/support/window_workshop.hpp"
#include "ui/choices/choices_panel.hpp"
#include "ui/panels/planking_controls.hpp"
#include "ui/panels/refusal_line.hpp"
#include "ui/panels/typed_field.hpp"
#include "ui/scene/palette.hpp"
#include "ui/window/project_desk.hpp"
#include "ui/window/sheets_bench.hpp"

#include <QLabel>
#include <QScrollArea>
#include <QScrollBar>
#include <QTest>
#include <QUndoStack>

#include <map>

using namespace sheerlay;
using namespace sheerlay::ui;
using namespace sheerlay::test;

namespace {

/// Types into a field that has the keyboard, as by hand.
void typeInto(TypedField& field, const char* text) {
    field.setFocus(Qt::MouseFocusReason);
    field.selectAll();
    QTest::keyClicks(&field, QString::fromUtf8(text));
    QTest::keyClick(&field, Qt::Key_Return);
}

/// Where every field of a form stands on the screen.
std::map<const QWidget*, QPoint> placesIn(const QWidget& form) {
    std::map<const QWidget*, QPoint> places;
    for (const auto* field : form.findChildren<TypedField*>())
        places[field] = field->mapToGlobal(QPoint());
    return places;
}

/// Part of a field's picture in the colour of what can't stand.
int markedPixels(TypedField& field) {
    const QImage picture = field.grab().toImage();
    int marked = 0;
    for (int y = 0; y < picture.height(); ++y)
        for (int x = 0; x < picture.width(); ++x)
            marked += picture.pixel(x, y) == palette::hard ? 1 : 0;
    return marked;
}

bool inSight(const QWidget& form, const QString& words) {
    for (const auto* label : form.findChildren<QLabel*>())
        if (label->text() == words)
            return !label->visibleRegion().isEmpty() &&
                   label->visibleRegion().boundingRect() == label->rect();
    return false;
}

} // namespace

TEST_CASE_METHOD(App, "what is refused stays in its field, marked, and is told by the field's name") {
    TypedField field(TypedField::Kind::Length);
    field.setAccessibleName(QStringLiteral("Covers"));
    RefusalLine line;
    int putBack = 0;
    const auto tell = [&](const char* text) {
        line.about(&field, [&] {
            line.tell(QString::fromUtf8(text), [&] {
                ++putBack;
                field.setValue(20.0);
            });
        });
    };
    field.setText(QStringLiteral("7/8"));
    tell("more than the strip is wide.");
    CHECK(line.text() == QStringLiteral("Covers: more than the strip is wide."));
    CHECK(field.text() == QStringLiteral("7/8"));
    CHECK(field.isRefused());
    CHECK(putBack == 1);
    tell("Covers: no length.");
    CHECK(line.text() == QStringLiteral("Covers: no length."));
    tell("");
    CHECK(line.isHidden());
    CHECK(putBack == 2);
    field.putBack();
    CHECK_FALSE(field.isRefused());
    line.tell(QStringLiteral("of no field"), [] {});
    CHECK(line.text() == QStringLiteral("of no field"));
    CHECK_FALSE(field.isRefused());
}

TEST_CASE_METHOD(App, "a bend that is no length is told in sight, and no field moves") {
    Workshop shop;
    shop.window.resize(1100, 640);
    shop.window.show();
    REQUIRE(QTest::qWaitForWindowExposed(&shop.window, patience));
    shop.bench().showControls(true);
    PlankingControls& controls = *shop.bench().controls();
    QTest::qWait(1);
    auto* scroll = controls.findChild<QScrollArea*>();
    REQUIRE(scroll != nullptr);
    scroll->ensureWidgetVisible(controls.radius(), 0, 90); // clear of where the words will stand
    REQUIRE(scroll->verticalScrollBar()->value() > 0);     // the top of the form is out of sight
    CHECK(markedPixels(*controls.radius()) == 0);
    const auto before = placesIn(controls);
    typeInto(*controls.radius(), "twelve feet");
    QTest::qWait(1);
    CHECK(controls.said().startsWith(QStringLiteral("Tightest bend: ")));
    CHECK(inSight(controls, controls.said()));
    CHECK(placesIn(controls) == before);
    CHECK(controls.radius()->text() == QStringLiteral("twelve feet"));
    CHECK(markedPixels(*controls.radius()) > 100);
    CHECK(shop.window.desk()->undoStack()->count() == 0);
    // where the words would cover it, it is scrolled clear of them
    QTest::keyClick(controls.radius(), Qt::Key_Escape);
    typeInto(*controls.radius(), "12'");
    shop.window.desk()->undoStack()->undo();
    REQUIRE(controls.said().isEmpty());
    QTest::qWait(1);
    scroll->verticalScrollBar()->setValue(0);
    scroll->ensureWidgetVisible(controls.radius(), 0, 0);
    typeInto(*controls.radius(), "twelve feet");
    QTest::qWait(20);
    CHECK(controls.radius()->visibleRegion().boundingRect() == controls.radius()->rect());
    // Esc puts back, and what is typed next is taken
    QTest::keyClick(controls.radius(), Qt::Key_Escape);
    CHECK(controls.radius()->text().isEmpty());
    CHECK(markedPixels(*controls.radius()) == 0);
    typeInto(*controls.radius(), "12'");
    CHECK(controls.said().isEmpty());
    CHECK(shop.window.desk()->undoStack()->count() == 1);
}

TEST_CASE_METHOD(App, "a strip that covers what it can't is told by the field's name, and no field moves") {
    Workshop shop;
    shop.window.show();
    REQUIRE(QTest::qWaitForWindowExposed(&shop.window, patience));
    shop.window.showBench(MainWindow::Bench::Stock);
    SheetsBench& bench = *shop.window.stock();
    bench.showChoices(true);
    bench.choices()->fold(QStringLiteral("The strip"), false);
    QTest::qWait(1);
    auto* covers = qobject_cast<TypedField*>(
        bench.choices()->field(QStringLiteral("The strip"), QStringLiteral("Covers")));
    REQUIRE(covers != nullptr);
    const auto before = placesIn(*bench.choices());
    typeInto(*covers, "2 in"); // wider than it is milled
    QTest::qWait(1);
    CHECK(bench.choices()->said().startsWith(QStringLiteral("Covers: ")));
    CHECK(inSight(*bench.choices(), bench.choices()->said()));
    CHECK(placesIn(*bench.choices()) == before);
    CHECK(covers->text() == QStringLiteral("2 in"));
    CHECK(covers->isRefused());
}

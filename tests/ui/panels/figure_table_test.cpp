#include "tests/support/catch.hpp"
#include "tests/support/qt_app.hpp"
#include "ui/panels/figure_table.hpp"

#include <QLineEdit>
#include <QTableWidget>
#include <QTest>
#include <QVBoxLayout>

using namespace sheerlay::ui;

TEST_CASE("heads stand over their figures, and Tab goes in and out of a table") {
    sheerlay::test::qtApp();
    QWidget window;
    auto* before = new QLineEdit;
    auto* table = new QTableWidget;
    auto* after = new QLineEdit;
    auto* layout = new QVBoxLayout(&window);
    for (QWidget* widget :
         {static_cast<QWidget*>(before), static_cast<QWidget*>(table), static_cast<QWidget*>(after)})
        layout->addWidget(widget);
    setFigures(*table, {QStringLiteral("Strip"), QStringLiteral("Length")});
    table->setRowCount(2);
    REQUIRE(table->columnCount() == 2);
    CHECK((table->horizontalHeaderItem(0)->textAlignment() & Qt::AlignLeft) != 0);
    CHECK((table->horizontalHeaderItem(1)->textAlignment() & Qt::AlignRight) != 0);
    window.show();
    REQUIRE(QTest::qWaitForWindowActive(&window));
    before->setFocus();
    QTest::keyClick(before, Qt::Key_Tab);
    CHECK(table->hasFocus());
    QTest::keyClick(table, Qt::Key_Tab);
    CHECK(after->hasFocus());
}

#include "tests/support/catch.hpp"
#include "tests/support/qt_app.hpp"
#include "ui/panels/number_box.hpp"

#include <QTest>

using namespace sheerlay;
using namespace sheerlay::ui;

TEST_CASE("a number is typed with point or comma, and shown with the mark of the language") {
    test::qtApp();
    for (const QLocale::Language language : {QLocale::English, QLocale::German})
        for (const QString& typed : {QStringLiteral("0.25"), QStringLiteral("0,25")}) {
            NumberBox box;
            box.setLocale(QLocale(language));
            box.setRange(0.0, 1.0);
            box.setDecimals(2);
            box.selectAll();
            QTest::keyClicks(&box, typed);
            QTest::keyClick(&box, Qt::Key_Return);
            CHECK(box.value() == 0.25);
            CHECK(box.text().toStdString() == (language == QLocale::German ? "0,25" : "0.25"));
        }
}

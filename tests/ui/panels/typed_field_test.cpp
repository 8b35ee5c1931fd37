#include "tests/support/catch.hpp"
#include "tests/support/qt_app.hpp"
#include "ui/panels/typed_field.hpp"

#include <QSignalSpy>
#include <QTest>

using namespace sheerlay;
using namespace sheerlay::ui;
using Kind = TypedField::Kind;

namespace {

/// What a field decides when this is typed into it; -1 where it is refused, -2 where it is left alone.
double typed(Kind kind, core::Units units, const char* text) {
    test::qtApp();
    TypedField field(kind);
    field.setUnits(units);
    double decided = -2.0;
    QObject::connect(&field, &TypedField::decided, &field, [&](std::optional<double> value) {
        decided = value.value_or(0.0);
    });
    QObject::connect(&field, &TypedField::refused, &field, [&](const QString& why) {
        CHECK(why.contains(QStringLiteral("would do")));
        decided = -1.0;
    });
    QTest::keyClicks(&field, QString::fromUtf8(text));
    QTest::keyClick(&field, Qt::Key_Return);
    return decided;
}

QString shown(Kind kind, core::Units units, double value) {
    test::qtApp();
    TypedField field(kind);
    field.setUnits(units);
    field.setValue(value);
    return field.text();
}

constexpr auto mm = core::Units::Millimetres;
constexpr auto in = core::Units::Inches;

} // namespace

TEST_CASE("a typed field reads the builder's notation in the units shown") {
    CHECK_THAT(typed(Kind::Length, mm, "1-3-4+"), WithinAbs(15.5625 * 25.4, 1e-9));
    CHECK_THAT(typed(Kind::Length, in, "15 3/4"), WithinAbs(15.75 * 25.4, 1e-9));
    CHECK(typed(Kind::Length, mm, "400") == 400.0);
    CHECK(typed(Kind::Length, mm, "far") == -1.0);
    CHECK_THAT(typed(Kind::Weight, in, "170"), WithinAbs(170 * 0.45359237, 1e-9));
    CHECK(typed(Kind::Weight, mm, "77") == 77.0);
    CHECK(typed(Kind::Cloth, mm, "200 g") == 200.0);
    CHECK(typed(Kind::Cloth, mm, "200") == -1.0);
    CHECK(typed(Kind::Number, mm, "0.15") == 0.15);
    CHECK(typed(Kind::Number, mm, "nan") == -1.0);
    CHECK(typed(Kind::Count, mm, "3") == 3.0);
    CHECK(typed(Kind::Count, mm, "-3") == -1.0);
    CHECK(typed(Kind::Count, mm, "3.5") == -1.0);
    CHECK(typed(Kind::Length, mm, "") == -2.0);
}

TEST_CASE("a typed field shows what a builder can set on a rule") {
    CHECK(shown(Kind::Length, mm, 3.175) == QStringLiteral("3.18 mm"));
    CHECK(shown(Kind::Length, mm, 0.5) == QStringLiteral("0.5 mm"));
    CHECK(shown(Kind::Length, mm, 203.2) == QStringLiteral("203.2 mm"));
    CHECK(shown(Kind::Length, in, 25.4 * 3 / 32) == QStringLiteral("3/32\""));
    CHECK(shown(Kind::Weight, in, 77.1107) == QStringLiteral("170 lb"));
    CHECK(shown(Kind::Weight, mm, 77.11) == QStringLiteral("77.1 kg"));
    CHECK(shown(Kind::Cloth, in, 203.4) == QStringLiteral("6 oz"));
    CHECK(shown(Kind::Count, mm, 12.0) == QStringLiteral("12"));
}

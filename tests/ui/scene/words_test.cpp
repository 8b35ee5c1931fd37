#include "tests/support/catch.hpp"
#include "ui/scene/words.hpp"

#include <numbers>

using namespace sheerlay;
using namespace sheerlay::ui;
using core::Units;

namespace {

const QChar space(0x00A0); // lengths do not break at line ends

QString plain(QString text) {
    return text.replace(space, QLatin1Char(' '));
}

} // namespace

TEST_CASE("lengths carry real fractions and do not break") {
    const QString text = lengthText(4 * 304.8 + (3 + 5.0 / 16.0) * 25.4, Units::Inches);
    CHECK(plain(text).toStdString() == "4' 3 5\u2044"
                                       "16\"");
    CHECK(!text.contains(QLatin1Char(' ')));
    CHECK(plain(lengthText(1299.2, Units::Millimetres)).toStdString() == "1299 mm");
    CHECK(plain(lengthText(15.87, Units::Millimetres, {16, 1})).toStdString() == "15.9 mm");
}

TEST_CASE("edge bend is told as sag over a batten") {
    // kappa L^2 / 8: 0.15 /m over 2 m is 75 mm, over 8 ft (2.4384 m) 111.5 mm or 4.39 in
    CHECK(plain(sagText(0.15e-3, Units::Millimetres)).toStdString() == "75 mm over 2 m");
    CHECK(plain(sagText(-0.15e-3, Units::Millimetres)).toStdString() == "75 mm over 2 m");
    CHECK(plain(sagText(0.15e-3, Units::Inches)).toStdString() == "4 1\u2044"
                                                                  "2\" over 8 ft");
}

TEST_CASE("a sag's plus and minus follows the deviation of the bend, two of them, rounded up") {
    // 2 * 0.005 /m * (2 m)^2 / 8 = 5 mm; over 8 ft 7.4 mm, up to the next 1/16 in: 5/16
    CHECK(plain(sagPlusMinusText(0.005e-3, Units::Millimetres)).toStdString() == "± 5 mm");
    CHECK(plain(sagPlusMinusText(0.005e-3, Units::Inches)).toStdString() == "± 5/16\"");
}

TEST_CASE("twist is told per foot or per metre") {
    const double tenDegreesAFoot = 10.0 * std::numbers::pi / 180.0 / 304.8;
    CHECK(twistText(tenDegreesAFoot, Units::Inches).toStdString() == "10° per foot");
    CHECK(twistText(tenDegreesAFoot, Units::Millimetres).toStdString() == "33° per metre");
}

TEST_CASE("a length to cut is told up to the next 5 mm or quarter inch") {
    CHECK(plain(cutLengthText(3201.2, Units::Millimetres)).toStdString() == "3205 mm");
    CHECK(plain(cutLengthText(3205.0, Units::Millimetres)).toStdString() == "3205 mm");
    CHECK(plain(cutLengthText(25.4 * 10.01, Units::Inches)).toStdString() == "10 1\u2044"
                                                                             "4\"");
}

TEST_CASE("radii are told in metres or feet, to what a builder can use") {
    CHECK(radiusText(6666.0, Units::Millimetres).toStdString() == "6.7 m");
    CHECK(radiusText(30480.0, Units::Inches).toStdString() == "100 ft");
}

TEST_CASE("a strip is named by what it is") {
    core::Strip strip;
    strip.kind = core::StripKind::Tapered;
    CHECK(kindText(strip).toStdString() == "tapered strip");
    strip.planedBack = true; // the last of the side that is run over
    CHECK(kindText(strip).toStdString() == "strip laid whole, planed back to the centreline");
}

TEST_CASE("rows are named from the start both ways") {
    core::Strip strip;
    strip.row = 7;
    CHECK(rowText(strip).toStdString() == "row 7, starboard");
    strip.row = -2;
    strip.side = core::Side::Port;
    CHECK(rowText(strip).toStdString() == "row 2 above the start, port");
    strip.row = 36;
    strip.side = core::Side::Centre;
    CHECK(rowText(strip).toStdString() == "row 36, over both sides");
}

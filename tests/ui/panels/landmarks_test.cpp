#include "tests/support/catch.hpp"
#include "tests/support/fake_boat.hpp"
#include "ui/panels/card_text.hpp"
#include "ui/panels/landmarks.hpp"

using namespace sheerlay;
using namespace sheerlay::ui;

namespace {

std::string text(const Boat& boat, int laid) {
    return layingText(boat, laid).toStdString();
}

} // namespace

TEST_CASE("landmarks stand where the work has come to them") {
    const auto boat =
        test::fakeBoat(); // two pieces a row, rows 1 to 15; weave to row 10, closing from row 11
    REQUIRE(boat->plan.lastRow == 15);
    const std::vector<Landmark> marks = landmarks(*boat);
    REQUIRE(marks.size() == 3);
    CHECK(marks[0].name.toStdString() == "weave ends");
    CHECK(marks[0].laid == 20);
    CHECK(marks[1].name.toStdString() == "closing begins");
    CHECK(marks[1].laid == 20);
    CHECK(marks[2].name.toStdString() == "shutter");
    CHECK(marks[2].laid == 28);
}

TEST_CASE("landmarks that differ at bow and stern are told apart; missing ones are left out") {
    Boat boat = *test::fakeBoat();
    boat.plan.marks.weaveStern = core::RowRange{1, 8};
    boat.plan.marks.closingBow.reset();
    const std::vector<Landmark> marks = landmarks(boat);
    REQUIRE(marks.size() == 4);
    CHECK(marks[0].name.toStdString() == "stern weave ends");
    CHECK(marks[0].laid == 16);
    CHECK(marks[1].name.toStdString() == "bow weave ends");
    CHECK(marks[2].name.toStdString() == "stern closing begins");
    CHECK(marks[3].name.toStdString() == "shutter");
}

TEST_CASE("the laying bar's words name row and side") {
    const auto boat = test::fakeBoat();
    CHECK(text(*boat, 0) == "Row 1 of 15, starboard next (S01)");
    CHECK(text(*boat, 13) == "Row 7 of 15, port next (P07)");
    CHECK(text(*boat, 28) == "The shutter next: S15, starboard");
    CHECK(text(*boat, 30) == "All 30 pieces are laid");
    CHECK(text(Boat(), 0) == "There is nothing to lay");
    Boat filled = *boat;
    filled.plan.strips[0].row = -8;
    filled.plan.strips[0].id = "S-08.1";
    CHECK(text(filled, 0) == "Row 8 above the start: S-08.1 next");
}

TEST_CASE("a row at a time goes to the row's end and back to its start") {
    const auto boat = test::fakeBoat();
    CHECK(afterRow(*boat, 0, true) == 2);
    CHECK(afterRow(*boat, 1, true) == 2); // a row that is begun is finished
    CHECK(afterRow(*boat, 2, true) == 4);
    CHECK(afterRow(*boat, 30, true) == 30);
    CHECK(afterRow(*boat, 5, false) == 4);
    CHECK(afterRow(*boat, 4, false) == 2);
    CHECK(afterRow(*boat, 0, false) == 0);
}

TEST_CASE("the card tells a strip's figures in the builder's units") {
    const auto boat = test::fakeBoat();
    const core::Strip* strip = boat->strip("P07");
    REQUIRE(strip != nullptr);
    const CardText card = cardText(*boat, *strip, core::Units::Millimetres);
    CHECK(card.title.toStdString() == "P07");
    CHECK(card.subtitle.contains(QStringLiteral("row 7, port")));
    CHECK(card.subtitle.contains(QStringLiteral("piece 14 of 30")));
    const auto line = [](const CardText& of, const char* caption) {
        for (const CardLine& one : of.lines) {
            if (one.caption == QString::fromUtf8(caption))
                return one;
        }
        return CardLine();
    };
    const QString space(QChar(0x00A0));
    CHECK(line(card, "Length to cut").figure ==
          QString::number(5 * std::lround(std::ceil(strip->cutLength / 5 - 1e-6))) + space +
              QStringLiteral("mm"));
    // 0.343 per metre: sag over 2 m is 0.343 * 4 / 8 m = 171.5 mm, radius 2.9 m, class hard
    CHECK(line(card, "Edge bend").figure == QStringLiteral("172%1mm over 2 m").arg(space));
    CHECK(line(card, "Edge bend").detail.contains(QStringLiteral("2.9 m")));
    CHECK(line(card, "Edge bend").detail.startsWith(QStringLiteral("hard")));
    CHECK(line(card, "Edge bend").detail.contains(QStringLiteral("keel")));
    CHECK(line(card, "Twist").figure == QStringLiteral("11° per metre")); // 0.2 rad/m
    CHECK(line(card, "Bow end").detail.contains(QStringLiteral("laps 12.0%1mm").arg(space)));
    CHECK(card.advice.toStdString() == core::holdingAdvice(core::Difficulty::Hard));
    for (const CardLine& one : card.lines)
        CHECK(!one.meaning.isEmpty()); // every figure can say what it means

    const CardText inches = cardText(*boat, *strip, core::Units::Inches);
    CHECK(line(inches, "Edge bend").figure.endsWith(QStringLiteral("over 8 ft")));
    CHECK(line(inches, "Twist").figure == QStringLiteral("3.5° per foot")); // 0.2 rad/m * 0.3048 m
}

TEST_CASE("the card tells where a pointed piece is widest and a tapered one narrowest") {
    const auto boat = test::fakeBoat();
    core::Strip strip = boat->plan.strips.back();
    strip.kind = core::StripKind::Shutter;
    strip.widths = {{0.0, 0.0}, {480.0, 14.0}, {960.0, 0.0}};
    const auto width = [&] {
        for (const CardLine& line : cardText(*boat, strip, core::Units::Millimetres).lines) {
            if (line.caption == QStringLiteral("Width"))
                return line.figure + QStringLiteral(": ") + line.detail;
        }
        return QString();
    };
    const auto plain = [](QString text) {
        return text.replace(QChar(0x00A0), QLatin1Char(' ')).toStdString();
    };
    CHECK(plain(width()) ==
          "14.0 mm: at its widest, 480 mm from its bow end; it runs out to a point at both ends");
    strip.kind = core::StripKind::Stealer;
    strip.widths.back()[1] = 9.0;
    CHECK(plain(width()) ==
          "14.0 mm: at its widest, 480 mm from its bow end; it runs out to a point at the bow");
    strip.kind = core::StripKind::Tapered;
    strip.widths.front()[1] = 8.5;
    CHECK(plain(width()) == "14.0 mm: at its widest; narrowest 8.5 mm, 0 mm from its bow end");
}

#include "core/sheets/compose.hpp"
#include "core/sheets/type.hpp"
#include "tests/support/catch.hpp"

#include <numbers>

using namespace sheerlay::core;

TEST_CASE("a measure's fraction is told apart from everything else with a slash") {
    const std::vector<TextRun> runs = runsOf("4' 3 5/16\"");
    REQUIRE(runs.size() == 3);
    CHECK(runs[0] == TextRun{TextRun::Kind::Plain, "4' 3 "});
    CHECK(runs[1] == TextRun{TextRun::Kind::Fraction, "5/16"});
    CHECK(runs[2] == TextRun{TextRun::Kind::Plain, "\""});
    for (const char* plain : {"1/3", "12/25", "1/2/4", "3.1/2", "and/or", "page 3/1", "", "7/"})
        for (const TextRun& run : runsOf(plain))
            CHECK(run.kind == TextRun::Kind::Plain);
    CHECK(runsOf("from 1/2 to 3/4.").size() == 5);
}

TEST_CASE("a set fraction is narrower than its plain digits and stands in order") {
    const std::vector<PlacedRun> placed = place(runsOf("3 13/16\""), 10.0, Weight::Bold);
    REQUIRE(placed.size() == 5);
    CHECK(placed[1].text == "13");
    CHECK(placed[1].raise + capHeight * placed[1].size ==
          Approx(capHeight * 10.0)); // level with the capitals
    CHECK(placed[2].text == "/");
    CHECK(placed[3].text == "16");
    CHECK(placed[3].raise == 0.0);
    for (std::size_t i = 1; i < placed.size(); ++i)
        CHECK(placed[i].offset > placed[i - 1].offset);
    CHECK(textWidth("3 13/16\"", 10.0, Weight::Bold) < plainWidth("3 13/16\"", 10.0, Weight::Bold));
}

TEST_CASE("widths grow with size and with each letter, two bytes of a letter count once") {
    CHECK(plainWidth("mould", 6.0, Weight::Regular) == Approx(2 * plainWidth("mould", 3.0, Weight::Regular)));
    CHECK(plainWidth("\u00E9", 1.0, Weight::Regular) ==
          Approx(plainWidth("e", 1.0, Weight::Regular)).epsilon(0.02));
    CHECK(plainWidth("ab", 1.0, Weight::Bold) ==
          Approx(plainWidth("a", 1.0, Weight::Bold) + plainWidth("b", 1.0, Weight::Bold)));
}

TEST_CASE("wrapping keeps within the width, loses no word and never tears a measure") {
    const std::string text = "Let it run about 1 5/16\" past the centreplane; cut 4' 3 1/2\" to the mark, "
                             "+/- 1/8\", and hold 120 N "
                             "there.";
    for (const double width : {31.0, 47.0, 55.0, 80.0, 400.0}) {
        const std::vector<std::string> lines = wrap(text, width, 4.5);
        std::string joined;
        for (const std::string& line : lines) {
            CHECK(textWidth(line, 4.5) <= width);
            joined += (joined.empty() ? "" : " ") + line;
        }
        CHECK(joined == text);
        for (const std::string& line : lines) {
            CHECK_FALSE(line.ends_with("4'"));
            CHECK_FALSE(line.ends_with(" 1"));
            CHECK_FALSE(line.ends_with("120"));
            CHECK_FALSE(line.ends_with("+/-"));
        }
    }
}

TEST_CASE("a word wider than the column is broken between letters") {
    const std::vector<std::string> lines = wrap("Zusammenf\u00FCgungsm\u00F6glichkeit", 20.0, 4.5);
    REQUIRE(lines.size() > 1);
    std::string joined;
    for (const std::string& line : lines) {
        CHECK(textWidth(line, 4.5) <= 20.0);
        CHECK((static_cast<unsigned char>(line.front()) & 0xC0U) != 0x80U); // never inside a letter
        joined += line;
    }
    CHECK(joined == "Zusammenf\u00FCgungsm\u00F6glichkeit");
}

TEST_CASE("a turned text's box is its upright box turned") {
    Text text = makeText({50.0, 60.0}, "row 7", {.size = 10.0, .anchor = Anchor::Middle});
    const Box level = inkBox(text);
    text.rotation = -std::numbers::pi / 2;
    const Box upright = inkBox(text);
    CHECK(upright.bottom - upright.top == Approx(level.right - level.left));
    CHECK(upright.right - upright.left == Approx(level.bottom - level.top));
    CHECK((upright.top + upright.bottom) / 2 == Approx(60.0));
    CHECK(level.top == Approx(60.0 - capHeight * 10.0));
}

TEST_CASE("a shortened line fits and says that it was cut") {
    const std::string cut = shortened("A boat with a very long name indeed", 40.0, 4.5);
    CHECK(textWidth(cut, 4.5) <= 40.0);
    CHECK(cut.ends_with("\u2026"));
    CHECK(shortened("Wren", 40.0, 4.5) == "Wren");
}

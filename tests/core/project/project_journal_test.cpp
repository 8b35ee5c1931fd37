#include "tests/support/catch.hpp"
#include "tests/support/project_text.hpp"

#include <string>

using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

constexpr double exactly = 1e-9; // mm; the values below are single roundings of exact fractions

} // namespace

TEST_CASE("the journal is read as it was kept") {
    const std::string journal = R"(
[[journal.reading]]
row = 0
girth-left = [ { x = "2-0-0", girth = "1-11-5+" } ]
[[journal.reading]]
row = 20
side = "port"
sd = "0.3 mm"
date = "2 May"
girth-left = [
    { x = "2-0-0", girth = "9 3/4 in" },
    { x = 1219.2, girth = 210.5 },
]
[[journal.laid]]
strip = "S20"
note = "a shake near the stern"
)";
    const std::string text = smallProject();
    const std::string before = text.substr(0, text.find("[[journal"));
    const Journal read = parsed(before + journal).journal;
    REQUIRE(read.readings.size() == 2);
    CHECK(read.readings[0].row == 0);
    CHECK(read.readings[0].side == ReadSide::Both);
    CHECK(read.readings[0].sd == 0.5);
    REQUIRE(read.readings[0].girthLeft.size() == 1);
    CHECK_THAT(read.readings[0].girthLeft[0].x, WithinAbs(609.6, exactly));
    CHECK_THAT(read.readings[0].girthLeft[0].girth, WithinAbs(25.4 * (23 + 11.0 / 16), exactly));
    CHECK(read.readings[0].girthLeft[0].printedGirth == "1-11-5+");
    CHECK(read.readings[1].row == 20);
    CHECK(read.readings[1].side == ReadSide::Port);
    CHECK(read.readings[1].sd == 0.3);
    CHECK(read.readings[1].date == "2 May");
    REQUIRE(read.readings[1].girthLeft.size() == 2);
    CHECK_THAT(read.readings[1].girthLeft[0].girth, WithinAbs(247.65, exactly));
    CHECK_THAT(read.readings[1].girthLeft[1].girth, WithinAbs(210.5, exactly));
    REQUIRE(read.laid.size() == 1);
    CHECK(read.laid[0].strip == "S20");
    CHECK(read.laid[0].note == "a shake near the stern");
    CHECK(parsed(before).journal == Journal{});

    const auto keyOf = [&](const std::string& from, const std::string& to) {
        const auto spoilt = parseProject(before + replaced(journal, from, to), "trial.sheerlay");
        const auto& messages = spoilt ? spoilt->warnings : spoilt.error();
        REQUIRE(messages.size() == 1);
        return (spoilt ? "odd " : "wrong ") + messages[0].key;
    };
    CHECK(keyOf("note =", "colour =") == "odd journal.laid[1].colour");
    CHECK(keyOf("side = \"port\"", "tape = \"steel\"") == "odd journal.reading[2].tape");
    CHECK(keyOf("side = \"port\"", "side = \"left\"") == "wrong journal.reading[2].side");
    CHECK(keyOf("row = 20", "row = 2.5") == "wrong journal.reading[2].row");
    CHECK(keyOf("row = 20", "row = -3") == "wrong journal.reading[2].row");
    CHECK(keyOf("row = 20", "") == "wrong journal.reading[2].row");
    CHECK(keyOf("sd = \"0.3 mm\"", "sd = 0") == "wrong journal.reading[2].sd");
    CHECK(keyOf("girth = 210.5", "depth = 210.5, girth = 1") == "odd journal.reading[2].girth-left[2].depth");
    CHECK(keyOf(", girth = 210.5", "") == "wrong journal.reading[2].girth-left[2].girth");
    CHECK(keyOf("{ x = \"2-0-0\", girth = \"1-11-5+\" }", "") == "odd journal.reading[1].girth-left");
    CHECK(keyOf("{ x = 1219.2, girth = 210.5 }", "210.5") == "wrong journal.reading[2].girth-left[2]");
    CHECK(keyOf("strip = \"S20\"", "") == "wrong journal.laid[1].strip");
}

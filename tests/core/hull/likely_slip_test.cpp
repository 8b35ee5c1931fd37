#include "core/hull/likely_slip.hpp"
#include "core/hull/loft_data.hpp"
#include "core/project/project_file.hpp"
#include "core/units/length.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/misprints.hpp"

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

HullTable canoe() {
    return readProject(SHEERLAY_REFERENCE "/stephens_1889_corrected.sheerlay").value().project.hull;
}

/// The slip behind one waterline cell of station 3 (2 in line, 0-4-4 in the table) printed as `text`, the
/// fair value a hair off the right one.
std::optional<LikelySlip> behind(const std::string& text, const std::string& fair, double spread = 2.0) {
    HullTable table = canoe();
    TablePoint& p = table.stations[3].points[2];
    p.printedHalfBreadth = text;
    p.halfBreadth = parseLength(text, Units::Millimetres)->millimetres;
    const LoftData data = prepareLoft(table).value();
    SuspectCell cell;
    for (std::size_t i = 0; i < data.points.size(); ++i)
        if (data.points[i].cell == &p)
            cell.point = i;
    cell.printed = p.halfBreadth;
    cell.fair = parseLength(fair, Units::Millimetres)->millimetres + 0.8;
    cell.spread = spread;
    return likelySlip(table, data, cell);
}

void checkSlip(const std::string& text, const std::string& right, const std::string& words) {
    const auto slip = behind(text, right);
    INFO(text << " for " << right);
    REQUIRE(slip.has_value());
    CHECK(toFeetInchesEighths(slip->value) == right);
    CHECK(slip->words == words);
}

} // namespace

TEST_CASE("each slip is told by its own words and gives the right number back") {
    checkSlip("0-0-4", "0-4-4", "a digit lost");
    checkSlip("0-5-4", "0-4-4", "an inch too much");
    checkSlip("1-4-4", "0-4-4", "a foot too much");
    checkSlip("0-3-4", "0-4-4", "an inch too little");
    checkSlip("0-4-1", "0-4-7", "a 1 for a 7");
    checkSlip("0-2-5", "0-5-2", "inches and eighths exchanged");
}

TEST_CASE("the neighbour's number is known for what it is, and the fair value stands in for the right one") {
    // station 4 has 0-6-6 on the same waterline, and the waterline above has 0-6-6 at station 3
    const auto slip = behind("0-6-6", "0-4-4", 1.0);
    REQUIRE(slip.has_value());
    CHECK(toFeetInchesEighths(slip->value) == "0-4-4");
    CHECK(slip->words.find("beside it") != std::string::npos);
}

TEST_CASE("what no single slip explains is left unexplained") {
    CHECK_FALSE(behind("0-9-3", "0-5-7", 0.5).has_value());
}

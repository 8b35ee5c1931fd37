#include "core/tables/csv.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/csv_reading.hpp"

using namespace sheerlay;

TEST_CASE("cells come back as they went in") {
    const std::vector<std::vector<std::string>> rows{
        {"station", "x mm"}, {"3, aft", "1\"2"}, {"two\nlines", ""}, {"", "Ü"}};
    CHECK(test::readCsv(core::csvText(rows)).rows == rows);
    CHECK(core::csvText({{"a", "b"}}) == "a,b\r\n"); // RFC 4180, section 2
}

TEST_CASE("lengths are plain numbers of the unit in the header") {
    CHECK(core::plainLength(25.4, core::Units::Millimetres) == "25.4");
    CHECK(core::plainLength(25.4, core::Units::Inches) == "1.00");
    CHECK(core::plainLength(-0.04, core::Units::Millimetres) == "0.0");
    CHECK(core::plainLength(-0.06, core::Units::Millimetres) == "-0.1");
    CHECK(core::inUnits("length", core::Units::Inches) == "length in");
    CHECK(core::inUnits("length", core::Units::Millimetres) == "length mm");
}

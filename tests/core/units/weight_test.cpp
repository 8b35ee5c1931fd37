#include "core/units/weight.hpp"
#include "tests/support/catch.hpp"

#include <string>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {
constexpr double exact = 1e-12;
}

TEST_CASE("weights are read in the builder's units") {
    CHECK_THAT(*parseWeight("170 lb", Units::Millimetres), WithinAbs(77.1107029, exact)); // 170 x 0.45359237
    CHECK_THAT(*parseWeight("77 kg", Units::Inches), WithinAbs(77, exact));
    CHECK_THAT(*parseWeight("450g", Units::Inches), WithinAbs(0.45, exact));
    CHECK_THAT(*parseWeight("12 oz", Units::Inches), WithinAbs(0.75 * 0.45359237, exact));
    CHECK_THAT(*parseWeight("1 lb 4 oz", Units::Inches), WithinAbs(1.25 * 0.45359237, exact));
    CHECK_THAT(*parseWeight("20", Units::Millimetres), WithinAbs(20, exact));
    CHECK_THAT(*parseWeight("20", Units::Inches), WithinAbs(9.0718474, exact));
}

TEST_CASE("what is no weight is refused with what would do") {
    for (const char* text : {"",
                             "heavy",
                             "-3 kg",
                             "3 stone",
                             "1 kg 4 oz",
                             "1 lb 17 oz",
                             "1 lb 4",
                             "3,500 kg",
                             "3,5,5 kg",
                             ",5 kg",
                             "3 kg kg",
                             "nan"}) {
        INFO(text);
        const auto read = parseWeight(text, Units::Millimetres);
        REQUIRE_FALSE(read.has_value());
        CHECK(read.error().would.find("170 lb") != std::string::npos);
    }
}

TEST_CASE("cloth is weighed by the square yard or the square metre, never without saying which") {
    // source: tests/reference/glass_epoxy.md: 4 oz = 135.6, 6 oz = 203.4 g/m2
    CHECK_THAT(*parseClothWeight("6 oz"), WithinAbs(203.4, 0.05));
    CHECK_THAT(*parseClothWeight("4 oz"), WithinAbs(135.6, 0.05));
    CHECK_THAT(*parseClothWeight("200 g"), WithinAbs(200, exact));
    for (const char* text : {"6", "0 oz", "-6 oz", "6 lb", "6 oz 2", "plain"})
        CHECK_FALSE(parseClothWeight(text).has_value());
}

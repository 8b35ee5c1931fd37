#include "core/units/number_text.hpp"
#include "tests/support/catch.hpp"

using namespace sheerlay::core;

TEST_CASE("a number is printed with as many decimals as are asked for") {
    CHECK(numberText(0.4349, 2) == "0.43");
    CHECK(numberText(-12.5, 1) == "-12.5");
    CHECK(numberText(7.0, 0) == "7");
    CHECK(numberText(-0.04, 1) == "0.0"); // no minus for nothing
    CHECK(numberText(-0.06, 1) == "-0.1");
}

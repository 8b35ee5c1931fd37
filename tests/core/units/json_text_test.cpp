#include "core/units/json_text.hpp"
#include "tests/support/catch.hpp"

#include <cmath>
#include <stdexcept>

using namespace sheerlay::core;

TEST_CASE("a number keeps so many decimals, and nothing has no minus") {
    CHECK(rounded(1.23456, 3) == 1.235);
    CHECK(rounded(-1.23456, 0) == -1.0);
    CHECK(rounded(-0.0004, 3) == 0.0);
    CHECK_FALSE(std::signbit(rounded(-0.0004, 3)));
}

TEST_CASE("a member goes behind the others") {
    CHECK(withMember(R"({"a":1})", "b", "[2]") == R"({"a":1,"b":[2]})");
    CHECK_THROWS_AS(withMember("{}", "b", "2"), std::invalid_argument);
    CHECK_THROWS_AS(withMember("[1]", "b", "2"), std::invalid_argument);
}

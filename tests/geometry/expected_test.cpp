#include "geometry/expected.hpp"
#include "tests/support/catch.hpp"

#include <memory>
#include <stdexcept>
#include <string>

using sheerlay::Expected;
using sheerlay::unexpected;

namespace {

enum class Trouble { TooShort, TooBent };

Expected<int, Trouble> halved(int n) {
    if (n % 2 != 0)
        return unexpected(Trouble::TooBent);
    return n / 2;
}

} // namespace

TEST_CASE("an Expected holds the value or the reason, never both") {
    const auto good = halved(34);
    REQUIRE(good.has_value());
    CHECK(static_cast<bool>(good));
    CHECK(*good == 17);
    CHECK(good.value() == 17);
    CHECK_THROWS_AS(good.error(), std::logic_error);

    const auto bad = halved(33);
    REQUIRE_FALSE(bad.has_value());
    CHECK_FALSE(static_cast<bool>(bad));
    CHECK(bad.error() == Trouble::TooBent);
    CHECK_THROWS_AS(bad.value(), std::logic_error);
    CHECK_THROWS_AS(*bad, std::logic_error);
}

TEST_CASE("value and error may be of the same type") {
    const Expected<std::string, std::string> value(std::string("loft"));
    const Expected<std::string, std::string> error(unexpected(std::string("loft")));
    CHECK(value.has_value());
    CHECK_FALSE(error.has_value());
    CHECK(error.error() == "loft");
    CHECK(value->size() == 4);
}

TEST_CASE("a value that can only be moved comes out once, and can be changed in place") {
    Expected<std::unique_ptr<int>, Trouble> held(std::make_unique<int>(5));
    **held = 6;
    const std::unique_ptr<int> taken = std::move(held).value();
    REQUIRE(taken);
    CHECK(*taken == 6);
}

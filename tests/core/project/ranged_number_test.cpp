#include "core/project/ranged_number.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/project_text.hpp"

using namespace sheerlay;
using test::refusalOf;
using test::says;

namespace {

core::Project withCovering(const std::string& lines) {
    auto read = core::parseProject(test::smallProject() + "\n[covering]\n" + lines, "trial.sheerlay");
    REQUIRE(read.has_value());
    return std::move(read->project);
}

} // namespace

TEST_CASE("a number out of its range is refused with what was found and what would do") {
    const std::string told = refusalOf("\n[covering]\nwaste = 15\n");
    CHECK(says(told, "covering.waste: the number 15, out of range; "));
    CHECK(says(told, "a part of the whole, such as 0.15; from 0 to 1"));
    CHECK(says(refusalOf("\n[fitout.gunwales]\nscarf-slope = 3.9\n"), "the number 3.9, out of range"));
    CHECK(says(refusalOf("\n[covering]\npace = 0\n"), "from 0.001 to 10"));
}

TEST_CASE("the ends of a range belong to it") {
    CHECK(withCovering("waste = 0\n").covering->waste == 0.0);
    CHECK(withCovering("waste = 1\n").covering->waste == 1.0);
}

TEST_CASE("what is counted is whole") {
    CHECK(withCovering("varnish-coats = 4\n").covering->varnishCoats == 4);
    CHECK(withCovering("varnish-coats = 4.0\n").covering->varnishCoats == 4);
    CHECK(says(refusalOf("\n[covering]\nvarnish-coats = 2.5\n"),
               "the number 2.5, not whole; a count of coats; from 0 to 20"));
    CHECK(says(refusalOf("\n[covering]\nvarnish-coats = \"two\"\n"), "a count of coats; from 0 to 20"));
}

#include "core/offsets/table_corrections.hpp"
#include "tests/support/catch.hpp"

using namespace sheerlay::core;

TEST_CASE("every key is read, one by one or many in a text") {
    const auto read = readCorrections({"stations = rows\nlabels = 2\n# a word\nunits = cm",
                                       "decimal = comma",
                                       "two-part = feet-inches",
                                       "spacing = 12 in",
                                       "waterline-spacing = 4 in",
                                       "buttock-spacing=3 in",
                                       "half-siding = 3/8 in",
                                       "mirror = 7",
                                       "heights = below",
                                       "beam = 33 in",
                                       "centre = 105",
                                       "base = -12.5",
                                       "drawn-to = outside",
                                       "bow = -X",
                                       "up = z",
                                       "faces = 1, 3",
                                       "row 5 = waterline 6 in",
                                       "Column C = unused"});
    REQUIRE(read.has_value());
    CHECK(read->stationsInColumns == false);
    CHECK(read->labels == 2U);
    CHECK(read->units == PlainUnit::Centimetres);
    CHECK(read->decimal == DecimalMark::Comma);
    CHECK(read->twoPart == TwoPart::FeetInches);
    CHECK(read->spacing == "12 in");
    CHECK(read->waterlineSpacing == "4 in");
    CHECK(read->buttockSpacing == "3 in");
    CHECK(read->halfSiding == "3/8 in");
    CHECK(read->mirror == "7");
    CHECK(read->beam == "33 in");
    CHECK(read->centre == "105");
    CHECK(read->base == "-12.5");
    CHECK(read->heightsBelow == true);
    CHECK(read->drawnTo == DrawnTo::Outside);
    REQUIRE(read->bow.has_value());
    CHECK(read->bow->axis == 0);
    CHECK_FALSE(read->bow->positive);
    REQUIRE(read->up.has_value());
    CHECK(read->up->axis == 2);
    CHECK(read->up->positive);
    CHECK(read->faces == std::vector<std::size_t>{0, 2});
    REQUIRE(read->lines.size() == 2);
    CHECK_FALSE(read->lines[0].column);
    CHECK(read->lines[0].number == 5);
    CHECK(read->lines[0].as == "waterline 6 in");
    CHECK(read->lines[1].column);
    CHECK(read->lines[1].number == 3);
}

TEST_CASE("every correction that can't be read is complained of with what would do") {
    const auto read = readCorrections({"spacing",
                                       "spacing =",
                                       "colour = red",
                                       "units = furlong",
                                       "row x = unused",
                                       "labels = 0",
                                       "bow = forward",
                                       "up = +",
                                       "faces = 0",
                                       "faces = 1;2",
                                       "row 0 = unused"});
    REQUIRE_FALSE(read.has_value());
    CHECK(read.error().size() == 11);
    for (const std::string& complaint : read.error())
        CHECK(complaint.find("what would do: ") != std::string::npos);
}

#include "core/outlines/dxf_entities.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/dxf_text.hpp"

using namespace sheerlay::core;
using namespace sheerlay::test;

TEST_CASE("a DXF text is taken apart into unit, layers, blocks and entities") {
    const std::string text =
        dxfText({{0, "SECTION"}, {2, "TABLES"}, {0, "LAYER"}, {2, "off"}, {62, "-7"}, {0, "ENDSEC"}}) +
        dxfText({{0, "SECTION"}, {2, "BLOCKS"}, {0, "BLOCK"}, {2, "a"}, {10, "3"}, {20, "4"}}) +
        dxfText({{0, "LINE"}, {8, "x"}, {0, "ENDBLK"}, {0, "LINE"}, {0, "ENDSEC"}}) +
        dxfFile(dxfText({{0, "ARC"}, {8, "y"}, {40, "2.5"}, {70, "1"}}), 5);
    const auto read = dxfEntities(text, "trial.dxf");
    REQUIRE(read.has_value());
    CHECK(read->millimetres == 10.0);
    CHECK(read->hidden == std::set<std::string>{"off"});
    REQUIRE(read->blocks.size() == 1);
    CHECK(read->blocks.at("a").base == DrawnPoint{3, 4});
    REQUIRE(read->blocks.at("a").entities.size() == 1);
    REQUIRE(read->entities.size() == 1);
    const DxfEntity& arc = read->entities[0];
    CHECK(arc.name == "ARC");
    CHECK(arc.layer() == "y");
    CHECK(arc.first(40) == 2.5);
    CHECK(arc.first(41, 7.0) == 7.0);
    CHECK(arc.flags() == 1);
}

TEST_CASE("broken pairs are told with their line") {
    const auto read = dxfEntities("0\nSECTION\nhello\nworld\n", "trial.dxf");
    REQUIRE_FALSE(read.has_value());
    CHECK(read.error().line == 3);
}

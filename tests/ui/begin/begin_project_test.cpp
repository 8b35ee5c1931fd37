#include "core/project/project_file.hpp"
#include "tests/support/catch.hpp"
#include "ui/begin/begin_project.hpp"

#include <filesystem>
#include <fstream>
#include <unistd.h>

using namespace sheerlay;
using namespace sheerlay::ui;

namespace {

/// A file of these bytes, gone at the end.
struct Given {
    std::string path;
    Given(const std::string& name, const std::string& bytes)
        : path(std::filesystem::temp_directory_path() /
               ("sheerlay-" + std::to_string(::getpid()) + "-" + name)) {
        std::ofstream(path, std::ios::binary) << bytes;
    }
    ~Given() { std::filesystem::remove(path); }
};

} // namespace

TEST_CASE("the ending tells what a file is") {
    CHECK(sourceKind("a/b.CSV") == SourceKind::Table);
    CHECK(sourceKind("b.x.dxf") == SourceKind::Sections);
    CHECK(sourceKind("b.stp") == SourceKind::Surface);
    CHECK(sourceKind("b.igs") == SourceKind::Surface);
    CHECK_FALSE(sourceKind("b.sheerlay"));
    CHECK_FALSE(sourceKind("a.csv/b"));
    CHECK_FALSE(sourceKind("csv"));
    CHECK_FALSE(sourceKind(""));
}

TEST_CASE("each kind of source is refused in its own words where it can't be used") {
    const auto refused = [](SourceKind kind, const std::string& path) {
        const auto made = beginProject(kind, path, "Trial", {});
        REQUIRE_FALSE(made.has_value());
        REQUIRE_FALSE(made.error().empty());
        return toText(made.error().front());
    };
    CHECK(refused(SourceKind::Table, "/nowhere/a.csv").find("CSV") != std::string::npos);
    CHECK(refused(SourceKind::Sections, "/nowhere/a.dxf").find("DXF or SVG") != std::string::npos);
    const Given junk("junk.step", "hello");
    CHECK(refused(SourceKind::Surface, junk.path).find("STEP") != std::string::npos);
    CHECK(refused(SourceKind::Sections, junk.path).find(junk.path) != std::string::npos);
}

TEST_CASE("a name that can't stand in a file gives no starter") {
    CHECK_FALSE(checkedStarter("\xff\xfe"));
    const auto text = checkedStarter("Grey \"Teal\"");
    REQUIRE(text);
    CHECK(core::parseProject(*text, "")->project.name == "Grey \"Teal\"");
}

TEST_CASE("every kind of source has an example of a correction that can be read") {
    for (const SourceKind kind : {SourceKind::Table, SourceKind::Sections, SourceKind::Surface})
        CHECK(core::readCorrections({correctionExample(kind)}).has_value());
}

TEST_CASE("where stations stand in rows, the example names a column") {
    const auto exampleFor = [](const char* name, const char* text) {
        const Given file(name, text);
        const auto made = beginProject(SourceKind::Table, file.path, "Mallard", {});
        REQUIRE(made);
        const std::string example = correctionExample(SourceKind::Table, made->reading);
        // it fits the table as it was read
        CHECK(beginProject(SourceKind::Table, file.path, "Mallard", *core::readCorrections({example})));
        return example;
    };
    CHECK(exampleFor("columns.csv",
                     "Half-breadths mm,0,600,1200,1800\nSheer height,400,350,350,400\n"
                     "Keel height,60,0,0,60\nSheer half-breadth,60,300,300,60\nWL 100 mm,30,230,230,30\n")
              .starts_with("row 5"));
    CHECK(
        exampleFor("rows.csv",
                   "Half-breadths mm;Sheer height;Keel height;Sheer half-breadth;WL 100 mm\n0;400;60;60;30\n"
                   "600;350;0;300;230\n1200;350;0;300;230\n1800;400;60;60;30\n")
            .starts_with("column E"));
}

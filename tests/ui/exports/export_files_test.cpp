#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"
#include "tests/support/temporary_folder.hpp"
#include "ui/exports/export_files.hpp"

#include <filesystem>
#include <string>
#include <vector>

using namespace sheerlay;
using namespace sheerlay::ui;
namespace fs = std::filesystem;

TEST_CASE("a boat is written whole, or a level that can't be read is told and nothing is written") {
    const test::TemporaryFolder folder;
    const test::Planked boat =
        test::planked(test::projectAt(SHEERLAY_EXAMPLES "/sedgewren/sedgewren.sheerlay"));
    const std::string out = (folder.path() / "files").string();
    const Outcome refused = writeExports(out, boat.project, boat.hull, boat.plan, {"every so often", {}, {}});
    REQUIRE_FALSE(refused.has_value());
    CHECK(refused.error().find("would do") != std::string::npos);
    CHECK_FALSE(fs::exists(out));

    std::vector<std::string> told;
    const auto until = [&](std::size_t files) {
        told.clear();
        return [&told, files](const std::string& file) {
            told.push_back(file);
            return told.size() <= files;
        };
    };
    const Outcome givenUp = writeExports(out, boat.project, boat.hull, boat.plan, {}, until(3));
    REQUIRE_FALSE(givenUp.has_value());
    CHECK(givenUp.error().empty());
    CHECK(told.size() == 4); // and no more is made
    CHECK_FALSE(fs::exists(out));

    const Outcome written = writeExports(out, boat.project, boat.hull, boat.plan, {}, until(100));
    REQUIRE(written.has_value());
    CHECK(written->files.size() > 10);
    for (const std::string& file : written->files) {
        INFO(file);
        CHECK(fs::file_size(file) > 100);
    }
    CHECK(told.size() == written->files.size());
}

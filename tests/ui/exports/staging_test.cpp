#include "tests/support/catch.hpp"
#include "tests/support/temporary_folder.hpp"
#include "ui/exports/staging.hpp"

#include <fstream>
#include <string>

using namespace sheerlay;
using namespace sheerlay::ui;
namespace fs = std::filesystem;

namespace {

std::string put(const std::string& folder, const std::string& name) {
    const std::string path = folder + "/" + name;
    std::ofstream(path) << name;
    return path;
}

} // namespace

TEST_CASE("staged files come to where they belong together, and the staging goes") {
    const test::TemporaryFolder folder;
    const fs::path out = folder.path() / "new";
    {
        const Staging staging(out);
        REQUIRE_FALSE(staging.problem());
        const WrittenSet staged{{put(staging.folder(), "a.csv"), put(staging.folder(), "b.csv")}, {}};
        CHECK_FALSE(fs::exists(out / "a.csv"));
        const Outcome moved = staging.moveOut(staged);
        REQUIRE(moved.has_value());
        CHECK(moved->files == std::vector<std::string>{(out / "a.csv").string(), (out / "b.csv").string()});
    }
    CHECK(fs::exists(out / "b.csv"));
    {
        put(out.string(), "stale.pdf");
        const Staging staging(out);
        REQUIRE(staging.moveOut({{}, {}, {"stale.pdf", "never-there.pdf"}}).has_value());
        CHECK_FALSE(fs::exists(out / "stale.pdf"));
    }
    CHECK(std::distance(fs::directory_iterator(out), fs::directory_iterator()) == 2);
}

TEST_CASE("a staging that is given up leaves no folder, and one that can't be made says so") {
    const test::TemporaryFolder folder;
    const fs::path out = folder.path() / "new";
    {
        const Staging staging(out);
        put(staging.folder(), "a.csv");
        CHECK(staging.inBuildersWords("can't write " + staging.folder() + "/a.csv") ==
              "can't write " + (out / "a.csv").string());
    }
    CHECK_FALSE(fs::exists(out));
    put(folder.path().string(), "taken");
    const Staging staging(folder.path() / "taken");
    CHECK(staging.problem());
    CHECK(staging.problemText().find("can't be written") != std::string::npos);
}

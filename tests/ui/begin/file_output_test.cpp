#include "tests/support/catch.hpp"
#include "ui/begin/file_output.hpp"

#include <filesystem>
#include <fstream>
#include <iterator>
#include <unistd.h>

using namespace sheerlay::ui;

namespace {

std::string bytesOf(const std::string& path) {
    std::ifstream stream(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), {}};
}

} // namespace

TEST_CASE("a file is written whole, replaced whole, and a new one never over one that is there") {
    const auto folder =
        std::filesystem::temp_directory_path() / ("sheerlay-out-" + std::to_string(::getpid()));
    std::filesystem::create_directory(folder);
    const std::string path = folder / "a.sheerlay";
    CHECK_FALSE(writeNewFile(path, "one"));
    const auto taken = writeNewFile(path, "two");
    REQUIRE(taken);
    CHECK(taken->find("Choose another name") != std::string::npos);
    CHECK(bytesOf(path) == "one");
    CHECK_FALSE(writeFile(path, "three"));
    CHECK(bytesOf(path) == "three");
    CHECK(writeFile(folder.string(), "four"));
    CHECK(writeNewFile(folder / "none" / "a", "five"));
    CHECK(std::distance(std::filesystem::directory_iterator(folder), {}) == 1);
    std::filesystem::remove_all(folder);
}

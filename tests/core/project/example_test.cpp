#include "core/project/project_file.hpp"
#include "core/units/length.hpp"
#include "tests/support/catch.hpp"

#include <algorithm>
#include <filesystem>
#include <set>
#include <string>

using namespace sheerlay::core;

namespace {

Project example(const std::filesystem::path& path) {
    const auto read = readProject(path.string());
    if (!read)
        for (const FileMessage& message : read.error())
            UNSCOPED_INFO(toText(message));
    REQUIRE(read.has_value());
    for (const FileMessage& message : read->warnings)
        UNSCOPED_INFO(toText(message));
    CHECK(read->warnings.empty());
    return read->project;
}

const std::filesystem::path examples = SHEERLAY_EXAMPLES;

} // namespace

TEST_CASE("every example reads without a word") {
    int count = 0;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(examples)) {
        if (entry.path().extension() != ".sheerlay")
            continue;
        INFO(entry.path().filename().string());
        (void)example(entry.path());
        ++count;
    }
    CHECK(count >= 3);
}

TEST_CASE("Brindlewick is the canoe her story tells of") {
    const Project project = example(examples / "brindlewick" / "brindlewick.sheerlay");
    const HullTable& hull = project.hull;
    CHECK(hull.roundedTo == 1.5875);
    CHECK(project.strips.thickness == 6.35);
    CHECK(project.strips.width == 19.05);
    CHECK(project.strips.coverWidth == 15.875);

    const auto [bow, stern] =
        std::minmax_element(hull.profile.begin(),
                            hull.profile.end(),
                            [](const ProfilePoint& a, const ProfilePoint& b) { return a.x < b.x; });
    CHECK(bow->x == 0.0); // the datum
    CHECK(toFeetInchesEighths(stern->x) == "15-6-0");
    CHECK(bow->height > stern->height); // more sheer at the bow

    double beam = 0.0;
    double previous = 0.0;
    std::set<std::string> gaps;
    for (const Station& station : hull.stations) {
        gaps.insert(toFeetInchesEighths(station.x - previous));
        previous = station.x;
        beam = std::max(beam, 2 * station.sheer.halfBreadth);
        for (const TablePoint& point : station.points) {
            if (point.kind != PointKind::Waterline)
                continue;
            beam = std::max(beam, 2 * point.halfBreadth);
        }
        // All offsets are on the sixteenth, so that the table can be printed as it was given.
        CHECK(station.sheer.height == fromSixteenths(toSixteenths(station.sheer.height)));
    }
    CHECK(gaps ==
          std::set<std::string>{"0-6-0", "1-0-0"}); // stations a foot apart, half stations near the ends
    CHECK(formatLength(beam, Units::Inches) == "2' 8 7/8\"");
}

TEST_CASE("Brindlewick's sections have no point out of line") {
    // A waterline farther up the flare is never narrower by more than tumblehome allows, and heights are
    // given top down.
    const Project project = example(examples / "brindlewick" / "brindlewick.sheerlay");
    for (const Station& station : project.hull.stations) {
        INFO("station " << station.printedX);
        double below = station.sheer.height;
        double breadth = station.sheer.halfBreadth;
        for (const TablePoint& point : station.points) {
            if (point.kind != PointKind::Waterline)
                continue;
            CHECK(point.height < below);
            CHECK(point.halfBreadth < breadth + 12.0); // 11 mm is the most the hull falls home
            below = point.height;
            breadth = point.halfBreadth;
        }
        REQUIRE(station.keel.has_value());
        CHECK(station.keel->height < below);
    }
}

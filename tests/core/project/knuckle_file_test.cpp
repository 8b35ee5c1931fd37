#include "core/project/check_hull.hpp"
#include "core/project/project_file.hpp"
#include "core/project/project_writer.hpp"
#include "tests/support/catch.hpp"

#include <string>
#include <tuple>

using namespace sheerlay::core;

TEST_CASE("a knuckle is read, written back, and starts the rows where nothing else is said") {
    const auto fileWith = [](const std::string& first, const std::string& last, const std::string& more) {
        std::string text = "format = 1\nname = \"k\"\nunits = \"mm\"\n[hull]\nrounded-to = 1\n";
        for (const int x : {0, 300, 600, 900}) {
            text += "[[hull.station]]\nx = " + std::to_string(x) +
                    "\nsheer = { height = 350, half-breadth = 500 }\nkeel = { height = 0 }\n";
            text += x == 0 ? first : x == 900 ? last : "knuckle = { height = 100, half-breadth = 400 }\n";
        }
        return text + "[strips]\nthickness = 6\nwidth = 19\n" + more;
    };
    const std::string good = "knuckle = { height = 100, half-breadth = 400 }\n";
    const auto read = parseProject(fileWith(good, good, ""), "k.sheerlay");
    REQUIRE(read);
    REQUIRE(read->project.hull.knuckled());
    CHECK(read->project.hull.stations[2].knuckle->height == 100);
    CHECK(read->project.hull.stations[2].knuckle->halfBreadth == 400);
    CHECK(read->project.planking.start.kind == StartLine::Kind::Knuckle);
    const auto again = parseProject(writeProject(read->project), "k.sheerlay");
    REQUIRE(again);
    CHECK(again->project.hull.stations[2].knuckle->height == 100);
    CHECK(again->project.planking.start.kind == StartLine::Kind::Knuckle);
    const auto refused = [&](const std::string& first, const std::string& last, const std::string& more) {
        const auto bad = parseProject(fileWith(first, last, more), "k.sheerlay");
        return bad ? std::string() : bad.error().front().key + ": " + bad.error().front().found;
    };
    CHECK(refused(good, "", "") == "hull.station[4].knuckle: no knuckle at station \"900\", though there is "
                                   "one at station \"0\"");
    CHECK(refused(good, "knuckle = { height = 350, half-breadth = 400 }\n", "").find("above the sheer") !=
          std::string::npos);
    CHECK(refused(good, "knuckle = { height = 100 }\n", "").find("hull.station[4].knuckle.half-breadth") !=
          std::string::npos);
    CHECK(refused(good, "knuckle = [" + good.substr(10, good.size() - 11) + "]\n", "")
              .find("hull.station[4].knuckle") != std::string::npos);
    CHECK(refused(good, "knuckle = \"chine\"\n", "").find("hull.station[4].knuckle") != std::string::npos);
    // what rows from a knuckle can't do is said of the key that asks for it; the 30th line
    for (const auto& [more, key, line] :
         {std::tuple{"start = { line = \"sheer\" }", "planking.start: a start line", 30},
          std::tuple{"accents = [{ girth = 200 }]", "planking.accents: accent rows", 30},
          std::tuple{"closing = { method = \"split-bottom\" }", "planking.closing: a split bottom", 30}}) {
        const auto odd =
            parseProject(fileWith(good, good, std::string("[planking]\n") + more + "\n"), "k.sheerlay");
        REQUIRE(odd); // what the window may have saved opens again; the plan is refused
        REQUIRE(odd->warnings.size() == 1);
        const FileMessage& message = odd->warnings.front();
        CHECK((message.key + ": " + message.found).starts_with(key));
        CHECK(message.line == line);
        CHECK_FALSE(message.would.empty());
    }
    const std::string knuckleStart = "[planking]\nstart = { line = \"knuckle\" }\n";
    std::string smooth = fileWith("", "", knuckleStart);
    for (auto at = smooth.find(good); at != std::string::npos; at = smooth.find(good))
        smooth.erase(at, good.size());
    const auto none = parseProject(smooth, "k.sheerlay");
    REQUIRE_FALSE(none);
    CHECK(none.error().front().key == "planking.start.line");
}

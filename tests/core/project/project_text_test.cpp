#include "core/project/project_file.hpp"
#include "core/project/project_text.hpp"
#include "core/project/project_writer.hpp"
#include "tests/support/catch.hpp"

#include <fstream>
#include <iterator>
#include <string>

using namespace sheerlay::core;

namespace {

std::string withEnd(const std::string& end) {
    std::ifstream file(SHEERLAY_REFERENCE "/formula_canoe.sheerlay");
    std::string text{std::istreambuf_iterator<char>(file), {}};
    const auto planking = text.find("\n[planking]");
    REQUIRE(!text.empty());
    return text.substr(0, planking == std::string::npos ? text.size() : planking + 1) + end;
}

Project read(const std::string& text) {
    const auto project = parseProject(text, "test");
    REQUIRE(project.has_value());
    return project->project;
}

/// The text with the project in it says what the project says.
std::string update(const std::string& text, const Project& project) {
    std::string changed = updateProjectText(text, project);
    CHECK(writeProject(read(changed)) == writeProject(project));
    return changed;
}

const std::string planking = "[planking]   # mine – ours\n"
                             "start   = { line = \"sheer\", why = \"looks\" }   # as she was drawn\n"
                             "taper = \"none\"\n"
                             "colour = \"green\"\n"
                             "limits = { edge-bend-radius = \"12 ft\" }\n\n"
                             "# what I measured\n"
                             "[[journal.reading]]\nrow = 5\n"
                             "girth-left = [\n  { x = 2000, girth = 400 },\n]\n\n"
                             "# the first strip\n"
                             "[[journal.laid]]\nstrip = \"S01\"\nby = \"me\"\n"
                             "[load]\ncrew = 2\n";

} // namespace

TEST_CASE("a project that did not change leaves its text letter for letter") {
    const std::string text = withEnd(planking);
    CHECK(updateProjectText(text, read(text)) == text);
}

TEST_CASE("a changed key is replaced where it stands and nothing else is touched") {
    const std::string text = withEnd(planking);
    Project project = read(text);
    project.planking.taper = Taper::Anywhere;
    std::string expected = text;
    expected.replace(expected.find("taper = \"none\""), 14, "taper = \"anywhere\"");
    CHECK(update(text, project) == expected);
    project.planking.start.kind = StartLine::Kind::Geodesic;
    project.planking.start.girth = 100.0;
    const std::string changed = update(text, project);
    CHECK(changed.find("why = \"looks\"") != std::string::npos);
    CHECK(changed.find("# as she was drawn") != std::string::npos);
    CHECK(changed.find("geodesic") != std::string::npos);
    CHECK(changed.find("colour = \"green\"") != std::string::npos);
    // and back again: the values are the old ones
    CHECK(writeProject(read(update(changed, read(text)))) == writeProject(read(text)));
}

TEST_CASE("keys come and go") {
    const std::string text = withEnd(planking);
    Project project = read(text);
    project.planking.edgeBendRadius.reset();
    project.planking.closing = ClosingMethod::RunOver;
    project.planking.shutter = {{0.5, 0.9}};
    const std::string changed = update(text, project);
    CHECK(changed.find("limits") == std::string::npos);
    CHECK(changed.find("run-over") != std::string::npos);
    CHECK(changed.find("# what I measured") != std::string::npos);
    const std::string bare = withEnd("");
    CHECK(update(bare, project).find("[planking]") != std::string::npos);
    CHECK(update(bare, project).starts_with(bare));
}

TEST_CASE("journal entries are added at the end and taken out where they stood") {
    const std::string text = withEnd(planking);
    Project project = read(text);
    project.journal.laid.push_back({"P01", "2026-05-01", "tight \"end\"", 0});
    project.journal.readings.push_back(
        {10, ReadSide::Port, {{1500.0, 210.5, "", "", 0}}, 0.5, "2026-05-02", 0});
    const std::string added = update(text, project);
    CHECK(added.starts_with(text));
    CHECK(update(added, read(text)).starts_with(text.substr(0, text.size() - 1)));

    Project less = read(text);
    less.journal.readings.clear();
    const std::string shorter = update(text, less);
    CHECK(shorter.find("girth-left") == std::string::npos);
    CHECK(shorter.find("by = \"me\"") != std::string::npos);
    CHECK(shorter.find("# the first strip") != std::string::npos);
    CHECK(shorter.find("crew = 2") != std::string::npos);
}

TEST_CASE("what stands in an unusual form is written anew, unknown keys kept") {
    const std::string text = withEnd("[planking]\ntaper = \"ends\"\n[planking.start]\nline = \"sheer\"\n"
                                     "why = \"looks\"\n[load]\ncrew = 2\n");
    Project project = read(text);
    project.planking.start.kind = StartLine::Kind::Easiest;
    const std::string changed = update(text, project);
    CHECK(changed.find("looks") != std::string::npos);
    CHECK(changed.find("crew = 2") != std::string::npos);
    // a change of the table alone leaves all of this as it is
    Project wider = read(text);
    wider.hull.stations.front().sheer.halfBreadth += 1.0;
    CHECK(update(text, wider).find("crew = 2") != std::string::npos);
}

TEST_CASE("a text that can't be read is replaced") {
    const Project project = read(withEnd(planking));
    CHECK(updateProjectText("no = = toml", project) == writeProject(project));
}

TEST_CASE("windows line ends and a last line without an end are borne") {
    std::string text = withEnd("[planking]\r\ntaper = \"none\"\r\n[[journal.laid]]\r\nstrip = \"S01\"");
    Project project = read(text);
    project.planking.taper = Taper::Ends;
    project.journal.laid.push_back({"P01", "", "", 0});
    update(text, project);
    project.journal.laid.clear();
    update(text, project);
}

TEST_CASE("moulds, stock and what comes after the planking are changed where they stand") {
    const std::string tables =
        "[moulds]   # from the yard\n"
        "spacing = \"300 mm\"   # as the legs allow\n"
        "strongback = { width = 200 }\n\n"
        "[stock]\nkerf = 3   # thin blade\n"
        "# cousin's boards\n"
        "[[stock.lot]]\nname = \"L\"\nthickness = 25\nwidth = 140\nlength = 3600   # long\n"
        "[[stock.lot]]\nname = \"M\"\nthickness = 25\nwidth = 90\nlength = 2400   # short\n\n"
        "[covering.outside]   # one side only\ncloth = \"200 g\"\n\n"
        "# sitting\n[[afloat.load]]\nname = \"me\"\nweight = 80\nx = 2000\nheight = 300\n";
    const std::string text = withEnd(tables);
    Project project = read(text);
    REQUIRE(project.stock);
    REQUIRE(project.covering);
    REQUIRE(project.afloat);
    project.moulds.spacing = 250.0;
    project.stock->kerf = 2.0;
    project.stock->lots[1].length = 2500.0;
    project.covering->outside->coats = 4;
    project.afloat->loads[0].mass = 90.0;
    const std::string changed = update(text, project);
    std::string expected = text;
    const auto put = [&expected](const std::string& from, const std::string& to) {
        REQUIRE(expected.find(from) != std::string::npos);
        expected.replace(expected.find(from), from.size(), to);
    };
    put("\"300 mm\"", "250");
    put("kerf = 3 ", "kerf = 2 ");
    put("2400", "2500");
    put("# one side only\n", "# one side only\ncoats = 4\n");
    put("weight = 80", "weight = 90");
    CHECK(changed == expected);

    project.afloat->loads.push_back({"pack", 20.0, 1500.0, 0.0, 250.0, 0});
    project.stock->lots.erase(project.stock->lots.begin());
    const std::string more = update(changed, project);
    CHECK(more.find("# short") != std::string::npos);
    CHECK(more.find("# long") == std::string::npos);
    CHECK(more.find("# from the yard") != std::string::npos);
    CHECK(more.find("\"pack\"") != std::string::npos);

    // tables come and go
    Project bare = read(text);
    bare.stock.reset();
    bare.afloat.reset();
    bare.moulds.holes = EdgeHoles{};
    const std::string less = update(text, bare);
    CHECK(less.find("stock") == std::string::npos);
    CHECK(less.find("# one side only") != std::string::npos);
    CHECK(less.find("holes = ") != std::string::npos);
    CHECK(update(withEnd("# nothing more\n"), project).starts_with(withEnd("# nothing more\n")));
}

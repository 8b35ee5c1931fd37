#include "core/project/laid_strips.hpp"
#include "core/project/project_edit.hpp"
#include "core/project/project_text.hpp"
#include "core/project/project_writer.hpp"
#include "core/project/put_aside.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/project_text.hpp"

#include <string>
#include <utility>
#include <vector>

using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

const AsideNote dry{"The offcut is dry and clear.", "2026-05-02"};

Finding hard(std::string strip, double x, std::string text = "S07 bends 0.31 per metre at 1250 mm.") {
    return {Level::Caution, "edge-bend-over-limit", std::move(strip), x, std::move(text)};
}

std::vector<PutAside> asideOf(const Finding& finding) {
    const auto asides = putAside({}, finding, dry);
    REQUIRE(asides.has_value());
    return *asides;
}

bool rests(const Finding& finding, const std::vector<PutAside>& asides) {
    return withAsides({finding}, asides).front().aside.has_value();
}

} // namespace

TEST_CASE("a finding that was put aside stays aside as long as it says the same") {
    const Finding finding = hard("S07", 1250.0);
    const std::vector<PutAside> asides = asideOf(finding);
    CHECK(withAsides({finding}, asides).front().aside == dry);
    CHECK(unmetAsides({finding}, asides).empty());
    // a new plan moves it a little and changes its figures a little
    CHECK(rests(hard("S07", 1290.0, "S07 bends 0.32 per metre at 1290 mm."), asides));
    Finding lighter = finding;
    lighter.level = Level::Note;
    CHECK(rests(lighter, asides));
}

TEST_CASE("what is elsewhere, heavier or says something else is not hidden") {
    const Finding finding = hard("S07", 1250.0);
    const std::vector<PutAside> asides = asideOf(finding);
    CHECK_FALSE(rests(hard("S08", 1250.0), asides));
    CHECK_FALSE(rests(hard("S07", 1301.0), asides));
    CHECK_FALSE(rests(hard("S07", 1250.0, "S07 bends 0.33 per metre at 1250 mm."), asides)); // by 6 percent
    CHECK_FALSE(rests(hard("S07", 1250.0, "S07 twists 0.31 per metre at 1250 mm."), asides));
    CHECK_FALSE(rests(hard("S07", 1250.0, finding.text + " Plane it."), asides));
    Finding other = finding;
    other.code = "strain-over-allowance";
    CHECK_FALSE(rests(other, asides));
    other = finding;
    other.level = Level::Stop;
    CHECK_FALSE(rests(other, asides));
    other = finding;
    other.x.reset();
    CHECK_FALSE(rests(other, asides));
    Finding note = finding;
    note.level = Level::Note;
    CHECK_FALSE(rests(finding, asideOf(note))); // grown from a note to a caution
}

TEST_CASE("a sentence typed off a sheet in feet and inches covers its finding too") {
    const Finding finding = hard("S07", 1250.0, "S07 is only 5 mm (3/16\") wide.");
    std::vector<PutAside> asides = asideOf(finding);
    asides[0].text = "S07 is only 3/16\" (5 mm) wide.";
    CHECK(rests(finding, asides));
    CHECK_FALSE(rests(hard("S07", 1250.0, "S07 is only 8 mm (5/16\") wide."), asides));
}

TEST_CASE("an entry covers one finding, first the one that says what it said") {
    const std::vector<Finding> twins{hard("S07", 1240.0, "S07 bends 0.31 per metre at 1240 mm."),
                                     hard("S07", 1250.0)};
    const auto marked = withAsides(twins, asideOf(twins[1]));
    CHECK_FALSE(marked[0].aside);
    CHECK(marked[1].aside);
    // written by hand without the words: whatever is said there
    PutAside loose = asideOf(twins[0]).front();
    loose.text.clear();
    CHECK(rests(hard("S07", 1250.0, "Something quite different."), {loose}));
}

TEST_CASE("a stop can't be put aside, nor anything without a reason") {
    Finding stop = hard("S07", 1250.0);
    stop.level = Level::Stop;
    const auto refused = putAside({}, stop, dry);
    REQUIRE_FALSE(refused.has_value());
    CHECK(says(refused.error(), "can't be built"));
    const auto wordless = putAside({}, hard("S07", 1250.0), {" ", "2026-05-02"});
    REQUIRE_FALSE(wordless.has_value());
    CHECK(says(wordless.error(), "reason"));
}

TEST_CASE("what was put aside is taken back, and only that") {
    const std::vector<Finding> findings{hard("S07", 1250.0), hard("S08", 1250.0)};
    auto asides = asideOf(findings[0]);
    asides.push_back(asideOf(findings[1]).front());
    const auto left = takeBack(asides, findings, withAsides(findings, asides)[0]);
    REQUIRE(left.size() == 1);
    CHECK(left.front().strip == "S08");
    CHECK(takeBack(left, findings, findings[0]) == left);
}

TEST_CASE("an entry that covers nothing is told, an unknown code with it") {
    const auto asides =
        asideOf({Level::Note, "no-such-code", std::nullopt, std::nullopt, "Once upon a time."});
    const auto told = toldWithAsides({hard("S07", 1250.0)}, asides);
    REQUIRE(told.size() == 2);
    CHECK(told.back().code == "put-aside-unmet");
    CHECK(told.back().level == Level::Note);
    CHECK(says(told.back().text, "no-such-code"));
    CHECK(says(told.back().text, dry.reason));
}

TEST_CASE("the reason stands behind the finding's line") {
    Finding finding = hard("S07", 1250.0, "It bends.");
    CHECK(toText(finding) == "caution edge-bend-over-limit S07 x=1250: It bends.");
    finding.aside = AsideNote{"The offcut is dry.", ""};
    CHECK(toText(finding) ==
          "caution edge-bend-over-limit S07 x=1250: It bends. (put aside: The offcut is dry.)");
}

TEST_CASE("what was put aside is read from the project and written as it was") {
    const std::string entry = R"(
[[put-aside]]
code = "thin-filler"
level = "caution"
strip = "S-03"
from-bow = "1-0-0"
text = "S-03 is 3.2 mm wide."
reason = "Glued to its neighbour."
date = "2 May"
)";
    const std::string text = smallProject();
    const Project project = parsed(text + entry);
    REQUIRE(project.putAside.size() == 1);
    const PutAside& read = project.putAside.front();
    CHECK(read.code == "thin-filler");
    CHECK(read.level == Level::Caution);
    CHECK(read.strip == "S-03");
    REQUIRE(read.x);
    CHECK_THAT(*read.x, WithinAbs(304.8, 1e-9));
    CHECK(read.text == "S-03 is 3.2 mm wide.");
    CHECK(read.note == AsideNote{"Glued to its neighbour.", "2 May"});
    CHECK(parsed(text).putAside.empty());
    const std::string written = writeProject(project);
    CHECK(writeProject(parsed(written)) == written);
    CHECK(says(written, "from-bow = "));

    CHECK(says(refusalOf(replaced(entry, "\"caution\"", "\"stop\"")), "put-aside[1].level"));
    CHECK(says(refusalOf(replaced(entry, "code = \"thin-filler\"\n", "")), "put-aside[1].code"));
    CHECK(says(refusalOf(replaced(entry, "\"Glued to its neighbour.\"", "\" \"")), "put-aside[1].reason"));
    CHECK(says(refusalOf(replaced(entry, "\"1-0-0\"", "\"by the bow\"")), "put-aside[1].from-bow"));
    CHECK(says(refusalOf("\n[put-aside]\ncode = \"x\"\n"), "[[put-aside]]"));
}

TEST_CASE("putting aside plans nothing anew, keeps the file's text and goes over to a changed file") {
    const std::string text = smallProject() + "# the end\n";
    const Project before = parsed(text);
    Project after = before;
    after.putAside = asideOf(hard("S07", 1250.0));
    CHECK(plansAlike(before, after));
    const std::string changed = updateProjectText(text, after);
    CHECK(changed.starts_with(text));
    CHECK(parsed(changed).putAside.size() == 1);
    CHECK(updateProjectText(changed, before).starts_with(text.substr(0, text.size() - 1)));
    CHECK(carryOver(before, after, before).putAside == after.putAside);
}

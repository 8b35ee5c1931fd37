#include "core/project/paper_choices.hpp"
#include "core/project/project_edit.hpp"
#include "core/project/project_file.hpp"
#include "core/project/project_text.hpp"
#include "core/project/project_writer.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/project_text.hpp"

#include <string>

using namespace sheerlay::core;
using namespace sheerlay::test;

TEST_CASE("a project names the language of its paper; another is refused with those there are") {
    const std::string plain = smallProject();
    CHECK(parseProject(plain, "trial.sheerlay")->project.language == Language::English);
    const auto german = parseProject(plain + "[project]\nlanguage = \"de\"\n", "trial.sheerlay");
    REQUIRE(german.has_value());
    CHECK(german->warnings.empty());
    CHECK(german->project.language == Language::German);
    CHECK(parseProject(writeProject(german->project), "again.sheerlay")->project.language ==
          Language::German);
    CHECK(writeProject(parseProject(plain, "trial.sheerlay")->project).find("[project]") ==
          std::string::npos);

    const auto refused = parseProject(plain + "[project]\nlanguage = \"deutsch\"\n", "trial.sheerlay");
    REQUIRE_FALSE(refused.has_value());
    REQUIRE(refused.error().size() == 1);
    CHECK(refused.error().front().key == "project.language");
    CHECK(refused.error().front().found == "the text \"deutsch\"");
    CHECK(refused.error().front().would == "\"en\" or \"de\"");
    const auto odd = parseProject(plain + "[project]\ntongue = \"de\"\n", "trial.sheerlay");
    REQUIRE(odd.has_value());
    REQUIRE(odd->warnings.size() == 1);
    CHECK(odd->warnings.front().key == "project.tongue");
}

TEST_CASE(
    "a project names its paper and how many rows share a page; others are refused with those there are") {
    const std::string plain = smallProject();
    const Project none = parseProject(plain, "trial.sheerlay")->project;
    CHECK_FALSE(none.paper.size.has_value());
    CHECK_FALSE(none.paper.severalRows);
    for (const auto& [name, size] : papers) {
        const std::string text =
            plain + "[project]\npaper = \"" + std::string(name) + "\"\nrows-a-page = \"several\"\n";
        const auto read = parseProject(text, "trial.sheerlay");
        REQUIRE(read.has_value());
        CHECK(read->warnings.empty());
        CHECK(read->project.paper == PaperChoices{size, true});
        CHECK(parseProject(writeProject(read->project), "again.sheerlay")->project.paper ==
              read->project.paper);
        CHECK(parseProject(updateProjectText(text, none), "trial.sheerlay")->project.paper == none.paper);
        CHECK(parseProject(updateProjectText(plain, read->project), "trial.sheerlay")->project.paper ==
              read->project.paper);
    }
    const auto refused =
        parseProject(plain + "[project]\npaper = \"A5\"\nrows-a-page = \"two\"\n", "trial.sheerlay");
    REQUIRE_FALSE(refused.has_value());
    REQUIRE(refused.error().size() == 2);
    CHECK(refused.error()[0].key == "project.paper");
    CHECK(refused.error()[0].found == "the text \"A5\"");
    CHECK(refused.error()[0].would == "\"A4\", \"Letter\", \"A3\" or \"Tabloid\"");
    CHECK(refused.error()[1].key == "project.rows-a-page");
    CHECK(refused.error()[1].would == "\"one\" or \"several\"");
}

TEST_CASE(
    "the language is put into a project's own text and taken out again, and goes over to a changed file") {
    const std::string plain = smallProject();
    const Project before = parseProject(plain, "trial.sheerlay")->project;
    Project after = before;
    after.language = Language::German;
    const std::string german = updateProjectText(plain, after);
    CHECK(german == plain + "\n[project]\nlanguage = \"de\"\n");
    CHECK(parseProject(updateProjectText(german, before), "trial.sheerlay")->project.language ==
          Language::English);
    CHECK(carryOver(before, after, before).language == Language::German);
}

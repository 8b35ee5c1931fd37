#include "core/units/length.hpp"
#include "core/units/weight.hpp"
#include "core/words/catalog.hpp"
#include "core/words/heard.hpp"
#include "core/words/language.hpp"
#include "core/words/say.hpp"
#include "tests/support/catch.hpp"

#include <string>
#include <vector>

using namespace sheerlay::core;

TEST_CASE("what fills the places of a text is found again") {
    using Filled = std::vector<std::string>;
    CHECK(filledOf("page 3 of 12", "page {} of {}") == Filled{"3", "12"});
    CHECK(filledOf("S07 from A1 (5 mm).", "{} from {}.") == Filled{"S07", "A1 (5 mm)"});
    CHECK(filledOf("bow", "bow") == Filled{});
    CHECK(filledOf("a of b of c", "{} of {}") == Filled{"a", "b of c"});
    CHECK_FALSE(filledOf("page of 12", "page {} of {}").has_value());
    CHECK_FALSE(filledOf("page 3 of ", "page {} of {}").has_value());
    CHECK_FALSE(filledOf("a page 3 of 12", "page {} of {}").has_value());
    CHECK_FALSE(filledOf("", "{}").has_value());
}

TEST_CASE("a sentence said in English is heard in the language in force, with what fills it") {
    const std::string said = say("At its hardest about {}, toward the keel, {} (radius about {}).",
                                 say("{} over 2 m", "95 mm"),
                                 say("between stations {} and {}", 4, "5.5"),
                                 "5.6 m");
    CHECK(heard(said) == said);
    const Speaking german(Language::German);
    CHECK(heard(said) ==
          "Am stärksten etwa 95 mm auf 2 m, zum Kiel hin, zwischen Spant 4 und 5,5 (Radius etwa 5,6 m).");
    CHECK(heard("Nobody says this of any boat.") == "Nobody says this of any boat.");
}

TEST_CASE("names keep their points where measures get a comma") {
    const std::string said = say("{} is the mirror image.", "P-03.2");
    const Speaking german(Language::German);
    CHECK(heard(said) == "P-03.2 ist das Spiegelbild.");
}

TEST_CASE("every sentence of the catalog is heard again, whatever fills it") {
    for (const auto& [english, other] : catalogOf(Language::German)) {
        if (!english.ends_with('.') || english.find('|') != std::string::npos)
            continue;
        INFO(english);
        const std::vector<std::string> filled{"A1", "B2", "C3", "D4", "E5", "F6", "G7", "H8"};
        const std::string said = detail::sayFilled(english, filled);
        const Speaking german(Language::German);
        CHECK(heard(said) == detail::sayFilled(english, filled));
    }
}

TEST_CASE("why a length or weight is refused is heard in German, with what was typed as it was typed") {
    const Speaking german(Language::German);
    CHECK(heard("\"one foot\" is not a length") == "\"one foot\" ist keine Länge");
    CHECK(heard("the text \"12.5 stone\"") == "der Text \"12.5 stone\"");
    for (const char* typed : {"one foot", "",         "-",       "1-3",     "1-2-3-4", "1-2-3x",   "1-12-0",
                              "1-2-9",    "1,250",    "12.",     "1.2.3",   "3/0",     "3 5/4 in", "12 yards",
                              "12 in x",  "1.5' 2\"", "1' 12\"", "12 in 3", "3/8",     "12 $"}) {
        const auto read = parseLength(typed, Units::Millimetres);
        INFO(typed);
        REQUIRE_FALSE(read.has_value());
        CHECK(heard(read.error().found) != read.error().found);
        CHECK(heard(read.error().would) != read.error().would);
    }
    const auto weight = parseWeight("heavy", Units::Inches);
    REQUIRE_FALSE(weight.has_value());
    CHECK(heard(weight.error().found) == "der Text \"heavy\"");
    CHECK(heard(weight.error().would) != weight.error().would);
    CHECK(heard("the number 0, out of range") == "die Zahl 0, außerhalb der Grenzen");
}

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

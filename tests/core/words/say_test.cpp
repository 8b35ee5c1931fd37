#include "core/words/language.hpp"
#include "core/words/say.hpp"
#include "tests/support/catch.hpp"

#include <stdexcept>
#include <string>
#include <thread>

using namespace sheerlay::core;

TEST_CASE("a text is said in the language in force, its places filled in") {
    CHECK(say("bow") == "bow");
    CHECK(say("page {} of {}", 3, std::size_t{12}) == "page 3 of 12");
    CHECK(say("{} by {}", "a", std::string("b")) == "a by b");
    {
        const Speaking german(Language::German);
        CHECK(say("bow") == "Bug");
        CHECK(say("page {} of {}", 3, 12) == "Seite 3 von 12");
        {
            const Speaking english(Language::English);
            CHECK(say("bow") == "bow");
        }
        CHECK(languageSpoken() == Language::German);
        CHECK(say("no such text {}", 1) == "no such text 1");
    }
    CHECK(languageSpoken() == Language::English);
}

TEST_CASE("what stands behind a bar is never printed") {
    CHECK(say("the sheer|between it") == "the sheer");
    const Speaking german(Language::German);
    CHECK(say("the sheer|between it") == "dem Sprung");
    CHECK(say("nothing of the kind|here") == "nothing of the kind");
}

TEST_CASE("what is filled in is taken as it is, braces and all") {
    CHECK(say("{} by {}", "{}", "{1}") == "{} by {1}");
    CHECK(say("an open { and a {word}") == "an open { and a {word}");
    CHECK(say("{1} before {0}", "a", "b") == "b before a");
    CHECK_THROWS_AS(say("{} by {}", "a"), std::invalid_argument);
}

TEST_CASE("a language is in force on its own thread alone") {
    const Speaking german(Language::German);
    std::string other;
    std::thread([&] { other = say("bow"); }).join();
    CHECK(other == "bow");
    CHECK(say("bow") == "Bug");
}

TEST_CASE("numbers take the decimal mark of the language in force") {
    CHECK(withDecimalMark("15.4") == "15.4");
    const Speaking german(Language::German);
    CHECK(withDecimalMark("15.4") == "15,4");
    CHECK(withDecimalMark("1299") == "1299");
}

TEST_CASE("a text is known again in any language") {
    CHECK(isSaid("page 3 of 12", "page {} of {}"));
    CHECK(isSaid("Seite 3 von 12", "page {} of {}"));
    CHECK_FALSE(isSaid("page 3", "page {} of {}"));
    CHECK_FALSE(isSaid("on page 3 of 12", "page {} of {}"));
}

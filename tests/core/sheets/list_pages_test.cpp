#include "core/sheets/list_pages.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/sheet_reading.hpp"

#include <stdexcept>

using namespace sheerlay;
using namespace sheerlay::core;

TEST_CASE("a list goes on over pages with its headings, no line lost, none twice, nothing over another") {
    for (const PageSize size : {PageSize::A4, PageSize::Letter, PageSize::A3, PageSize::Tabloid}) {
        ListPages pages(pageOf(size), "Teal, a list");
        pages.heading("Of things");
        pages.text("A sentence long enough that it has to be broken somewhere, for it says the same thing in "
                   "several ways and never comes to an end before the line does.");
        pages.steps({"First this, and it takes more than one line to say what is to be done first of all, "
                     "before anything else is done.",
                     "Then that."});
        std::vector<ListRow> rows;
        for (int i = 0; i < 150; ++i)
            rows.push_back(
                {{"mark" + std::to_string(1000 + i),
                  i % 7 == 0 ? "words that go on and on until they need a second line in their column"
                             : "few words",
                  std::to_string(i)},
                 i % 2 == 0});
        pages.list({{"What", 1.0}, {"How it is told", 1.4}, {"Number of it", 0.4, Anchor::Right}}, rows);
        const std::vector<Sheet> sheets = pages.take();
        REQUIRE(sheets.size() > 2);
        std::string all;
        for (const Sheet& sheet : sheets) {
            CHECK(test::outside(sheet, 9.5) == "");
            CHECK(test::overlapping(sheet) == "");
            CHECK(test::timesIn(test::wordsOf(sheet), "How it is told") == 1);
            all += test::wordsOf(sheet);
        }
        for (int i = 0; i < 150; ++i)
            CHECK(test::timesIn(all, "mark" + std::to_string(1000 + i)) == 1);
    }
}

TEST_CASE("a heading doesn't stand alone at a page's foot") {
    for (int lines = 20; lines < 60; ++lines) {
        ListPages pages(pageOf(PageSize::A4), "Teal");
        for (int i = 0; i < lines; ++i)
            pages.text("A line.");
        pages.heading("A heading");
        pages.text("What follows it.");
        for (const Sheet& sheet : pages.take()) {
            const std::string words = test::wordsOf(sheet);
            CHECK((words.find("A heading") == std::string::npos) ==
                  (words.find("What follows it.") == std::string::npos));
        }
    }
}

TEST_CASE("a row with more cells than columns is refused") {
    ListPages pages(pageOf(PageSize::A4), "Teal");
    CHECK_THROWS_AS(pages.list({{"One", 1.0}}, {{{"a", "b"}, false}}), std::invalid_argument);
}

TEST_CASE("a column makes room for its longest word, and the others give it by their shares") {
    const std::string word = "Hochkantbiegungsgrenze", sentence = "words that can go on in another line";
    ListPages pages(pageOf(PageSize::A4), "Teal, a list");
    pages.list({{"Bilge", 0.5}, {"What", 3.0}, {word, 0.5, Anchor::Right}}, {{{word, sentence, "7"}, true}});
    const Sheet sheet = pages.take().front();
    CHECK(test::timesIn(test::wordsOf(sheet), word) == 2);
    CHECK(test::overlapping(sheet) == "");
    CHECK(test::outside(sheet, 7.5) == "");

    ListPages narrow(pageOf(PageSize::A4), "Teal, a list"); // no widths hold these: they are broken, not lost
    const std::string endless(90, 'm');
    narrow.list({{"A", 1.0}, {"B", 1.0}}, {{{endless, endless}}});
    const Sheet broken = narrow.take().front();
    CHECK(test::overlapping(broken) == "");
    CHECK(test::outside(broken, 7.5) == "");
}

TEST_CASE("a line or two that would have a last page to themselves are taken onto the page before") {
    const auto pagesOf = [](int rows) {
        return fewestPages(pageOf(PageSize::A4), "Teal, a list", [&](ListPages& pages) {
            pages.list({{"Thing", 1.0}},
                       std::vector<ListRow>(static_cast<std::size_t>(rows), {{"pin"}, false}));
        });
    };
    const auto typeOf = [](const Sheet& sheet) {
        for (const Text& text : test::textsOf(sheet))
            if (test::lineOf(text) == "pin")
                return text.size;
        return 0.0;
    };
    int full = 1; // rows that fill one page in full type
    while (typeOf(pagesOf(full + 1).front()) == typeSize::note)
        ++full;
    CHECK(full > 30);
    const std::vector<Sheet> two = pagesOf(full + 2);
    REQUIRE(two.size() == 1);
    CHECK(test::timesIn(test::wordsOf(two.front()), "pin") == static_cast<std::size_t>(full) + 2);
    CHECK(typeOf(two.front()) >= 0.86 * typeSize::note - 1e-9);
    CHECK(test::outside(two.front(), pageMargin - 0.5) == "");
    const std::vector<Sheet> many = pagesOf(3 * full / 2); // too much for that: full type again
    CHECK(many.size() == 2);
    CHECK_THAT(typeOf(many.front()), WithinAbs(typeSize::note, 1e-9));
}

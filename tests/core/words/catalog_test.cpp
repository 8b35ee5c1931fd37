#include "core/words/catalog.hpp"
#include "tests/support/catch.hpp"

#include <algorithm>
#include <cctype>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <set>
#include <string>
#include <vector>

using namespace sheerlay::core;

namespace {

/// The text of a literal that begins at `at`, and of those that follow it at once; none where there is none.
std::string literalAt(const std::string& source, std::size_t at, bool& found) {
    std::string text;
    found = false;
    while (true) {
        while (at < source.size() && std::isspace(static_cast<unsigned char>(source[at])) != 0)
            ++at;
        if (at >= source.size() || source[at] != '"')
            return text;
        found = true;
        for (++at; at < source.size() && source[at] != '"'; ++at) {
            if (source[at] != '\\') {
                text += source[at];
                continue;
            }
            const char escaped = source[++at];
            if (escaped == 'u') { // \u2026
                const auto code = static_cast<unsigned>(std::stoul(source.substr(at + 1, 4), nullptr, 16));
                if (code >= 0x800U)
                    text += static_cast<char>(0xE0U | (code >> 12U));
                text +=
                    static_cast<char>(code >= 0x800U ? 0x80U | ((code >> 6U) & 0x3FU) : 0xC0U | (code >> 6U));
                text += static_cast<char>(0x80U | (code & 0x3FU));
                at += 4;
            } else {
                text += escaped == 'n' ? '\n' : escaped;
            }
        }
        ++at;
    }
}

/// Every text that the sources say, with the file that says it.
std::map<std::string, std::string> textsInSources() {
    std::map<std::string, std::string> texts;
    for (const char* folder : {"/core", "/ui", "/app"})
        for (const auto& entry :
             std::filesystem::recursive_directory_iterator(std::string(SHEERLAY_SOURCES) + folder)) {
            const std::string name = entry.path().string();
            if (!name.ends_with(".cpp") && !name.ends_with(".hpp"))
                continue;
            std::ifstream file(name);
            std::string source, line;
            while (std::getline(file, line)) { // comments quote texts too
                const std::size_t comment = line.find("//");
                const bool inText =
                    comment != std::string::npos &&
                    std::count(line.begin(), line.begin() + static_cast<long>(comment), '"') % 2 == 1;
                source += (inText ? line : line.substr(0, comment)) + "\n";
            }
            for (const std::string call : {"say(", "sayable(", "isSaid("})
                for (std::size_t at = source.find(call); at != std::string::npos;
                     at = source.find(call, at + 1)) {
                    const char before = at > 0 ? source[at - 1] : ' ';
                    if (std::isalnum(static_cast<unsigned char>(before)) != 0 || before == '_' ||
                        before == '.' || before == '>')
                        continue;
                    bool found = false;
                    const std::string text = literalAt(source, at + call.size(), found);
                    if (found)
                        texts[text] = name;
                }
        }
    return texts;
}

/// Which of what is filled in stands in a text, however often.
std::set<std::size_t> placesIn(const std::string& text) {
    std::set<std::size_t> places;
    std::size_t next = 0;
    for (std::size_t i = 0; i + 1 < text.size(); ++i)
        if (text[i] == '{' && text[i + 1] == '}')
            places.insert(next++);
        else if (i + 2 < text.size() && text[i] == '{' && text[i + 2] == '}' &&
                 std::isdigit(static_cast<unsigned char>(text[i + 1])) != 0)
            places.insert(static_cast<std::size_t>(text[i + 1] - '0'));
    return places;
}

} // namespace

TEST_CASE("every text that is said has its German, and no German is left over") {
    const Catalog& german = catalogOf(Language::German);
    const std::map<std::string, std::string> said = textsInSources();
    CHECK(said.size() > 100);
    for (const auto& [english, file] : said) {
        INFO(file << ": " << english);
        CHECK(german.contains(english));
    }
    for (const auto& [english, other] : german) {
        INFO(english);
        CHECK(said.contains(english));
    }
}

TEST_CASE("German has the places of the English, and no blanks of its own") {
    for (const auto& [english, other] : catalogOf(Language::German)) {
        INFO(english << " = " << other);
        CHECK_FALSE(other.empty());
        CHECK(other.find('|') == std::string::npos);
        CHECK(placesIn(other) == placesIn(english));
        CHECK(other.starts_with(' ') == english.starts_with(' '));
        CHECK(other.ends_with(' ') == english.ends_with(' '));
    }
}

TEST_CASE("a catalog is read, and refused with its line") {
    const auto read = parseCatalog("[a]\n\"one {}\" = \"eins {}\"\n[b]\n\"two\" = \"zwei\"\n");
    REQUIRE(read.has_value());
    CHECK(read->at("one {}") == "eins {}");
    CHECK(read->size() == 2);
    CHECK(parseCatalog("[a]\n\"x\" = \"y\"\n[b]\n\"x\" = \"z\"\n").error() ==
          "line 4: \"x\" stands in two tables; one would do");
    CHECK(parseCatalog("[a]\n\"x\" = 3\n").error().starts_with("line 2: "));
    CHECK(parseCatalog("\"x\" = \"y\"\n").error().starts_with("line 1: "));
    CHECK(parseCatalog("[a\n").error().starts_with("line 1: "));
}

TEST_CASE("English needs no catalog, and every language has its code") {
    CHECK(catalogOf(Language::English).empty());
    std::set<std::string_view> codes;
    for (const LanguageName& name : allLanguages()) {
        codes.insert(name.code);
        CHECK(nameOf(name.language).code == name.code);
    }
    CHECK(codes == std::set<std::string_view>{"de", "en"});
}

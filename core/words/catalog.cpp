#include "core/words/catalog.hpp"

#include <toml++/toml.h>

#include <stdexcept>
#include <utility>

namespace sheerlay::core {

namespace detail {
// made by core/words/CMakeLists.txt from resources/words/de.toml
extern const char* const germanWords;
} // namespace detail

namespace {

std::string lineOf(const toml::node& node) {
    return "line " + std::to_string(node.source().begin.line);
}

Catalog builtIn(const char* text) {
    auto catalog = parseCatalog(text);
    if (!catalog)
        throw std::logic_error("a catalog of words that was built in: " + catalog.error());
    return std::move(*catalog);
}

} // namespace

Expected<Catalog, std::string> parseCatalog(std::string_view text) {
    Catalog catalog;
    try {
        const toml::table root = toml::parse(text);
        for (const auto& [group, table] : root) {
            const toml::table* entries = table.as_table();
            if (entries == nullptr)
                return unexpected(lineOf(table) + ": a text outside any table; a heading such as [sheets] "
                                                  "above it would do");
            for (const auto& [english, other] : *entries) {
                const auto* said = other.as_string();
                if (said == nullptr)
                    return unexpected(lineOf(other) + ": what is no text; a text in quotes would do");
                if (!catalog.emplace(english.str(), said->get()).second)
                    return unexpected(lineOf(other) + ": \"" + std::string(english.str()) +
                                      "\" stands in two tables; one would do");
            }
        }
    } catch (const toml::parse_error& error) {
        return unexpected("line " + std::to_string(error.source().begin.line) + ": " +
                          std::string(error.description()));
    }
    return catalog;
}

const Catalog& catalogOf(Language language) {
    static const Catalog none;
    if (language == Language::English)
        return none;
    static const Catalog german = builtIn(detail::germanWords);
    return german;
}

} // namespace sheerlay::core

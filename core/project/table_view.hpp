#pragma once

#include "core/project/messages.hpp"
#include "core/project/project.hpp"
#include "core/project/source_text.hpp"

#include <toml++/toml.h>

#include <initializer_list>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace sheerlay::core {

/// What all parts of one reading share.
struct Reading {
    const SourceText& source;
    Messages& messages;
    Units units = Units::Millimetres; ///< of plain numbers, once the file has said so
    bool unitsKnown = false;          ///< without them, a plain number of unlikely size says nothing
};

/// A length as it stands in the file.
struct Cell {
    double value = 0.0;      ///< mm
    double resolution = 0.0; ///< mm, the finest digit written; 0 when the writing says nothing
    std::string printed;
    int line = 0;
};

enum class Need { Required, Optional };
enum class Sign { Any, NotNegative, Positive };

[[nodiscard]] int lineOf(const toml::node& node);

/// "a table", "true", "the number 3", …: what a node is, for "found".
[[nodiscard]] std::string describe(const toml::node& node, const SourceText& source);

/// Reads a node as a length; what can't be is reported under `key`.
[[nodiscard]] std::optional<Cell>
readLengthNode(const toml::node& node, const std::string& key, Sign sign, Reading& reading);

/// One table of the file: hands out its keys by kind, reports what is missing or of the wrong kind, and at
/// the end what nobody asked for.
class TableView {
public:
    /// @param line  reported for what is missing; 1 for the file itself
    TableView(const toml::table& table, std::string path, int line, Reading& reading)
        : m_table(table), m_path(std::move(path)), m_line(line), m_reading(reading) {}

    [[nodiscard]] const toml::node* find(std::string_view key, Need need, std::string_view would = {});
    [[nodiscard]] std::optional<TableView>
    table(std::string_view key, Need need, std::string_view would = {});
    [[nodiscard]] const toml::array* array(std::string_view key, Need need, std::string_view would);
    [[nodiscard]] std::optional<Cell> length(std::string_view key, Need need, Sign sign);
    [[nodiscard]] std::optional<double> number(std::string_view key, Need need, std::string_view would);
    [[nodiscard]] std::optional<std::string> text(std::string_view key, Need need, std::string_view would);

    /// Hands every table of a list to `take`; what is no table is reported.
    template <class Take> void eachTable(std::string_view key, Need need, std::string_view would, Take take) {
        const toml::array* list = array(key, need, would);
        if (list == nullptr)
            return;
        int number = 0;
        for (const toml::node& node : *list) {
            const std::string path = keyOf(key) + "[" + std::to_string(++number) + "]";
            if (const toml::table* inner = node.as_table())
                take(TableView(*inner, path, lineOf(node), m_reading));
            else
                m_reading.messages.error(
                    lineOf(node), path, describe(node, m_reading.source), std::string(would));
        }
    }

    template <class E> using Choice = std::pair<std::string_view, E>;
    /// One word of a list.
    template <class E>
    [[nodiscard]] std::optional<E>
    choice(std::string_view key, Need need, std::initializer_list<Choice<E>> words) {
        return choice<E>(key, need, std::span<const Choice<E>>(words.begin(), words.size()));
    }
    template <class E>
    [[nodiscard]] std::optional<E> choice(std::string_view key, Need need, std::span<const Choice<E>> words) {
        std::string would;
        std::size_t left = words.size();
        for (const auto& word : words)
            would += "\"" + std::string(word.first) + "\"" + (--left == 0 ? "" : left == 1 ? " or " : ", ");
        const auto written = text(key, need, would);
        if (!written)
            return std::nullopt;
        for (const auto& word : words)
            if (word.first == *written)
                return word.second;
        reportWord(key, *written, would);
        return std::nullopt;
    }

    [[nodiscard]] std::string keyOf(std::string_view key) const;
    [[nodiscard]] int lineOfKey(std::string_view key) const; ///< this table's line where the key is missing
    [[nodiscard]] int line() const noexcept { return m_line; }
    [[nodiscard]] const std::string& path() const noexcept { return m_path; }
    [[nodiscard]] bool has(std::string_view key) const { return m_table.contains(key); }

    /// Warns of every key that was never asked for.
    void reportUnknown() const;

private:
    void reportWord(std::string_view key, const std::string& written, const std::string& would);

    const toml::table& m_table;
    std::string m_path;
    int m_line = 0;
    Reading& m_reading;
    std::vector<std::string> m_known;
};

} // namespace sheerlay::core

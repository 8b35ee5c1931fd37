#include "core/project/project_text.hpp"

#include "core/project/project_file.hpp"
#include "core/project/project_writer.hpp"

#include <toml++/toml.h>

#include <algorithm>
#include <array>
#include <optional>
#include <sstream>
#include <utility>
#include <vector>

namespace sheerlay::core {

namespace {

/// Bytes from..to of a text.
struct Span {
    std::size_t from = 0;
    std::size_t to = 0;
};

/// A text with its TOML tables, and where in it they stand.
class Source {
public:
    explicit Source(std::string_view text) : m_text(text), m_root(toml::parse(text)) {
        m_lines.push_back(0);
        for (std::size_t i = 0; i < text.size(); ++i)
            if (text[i] == '\n')
                m_lines.push_back(i + 1);
        findHeaders(m_root);
        std::ranges::sort(m_headers);
    }

    [[nodiscard]] std::string_view text() const noexcept { return m_text; }
    [[nodiscard]] const toml::table& root() const noexcept { return m_root; }
    [[nodiscard]] Span span(const toml::node& node) const {
        return {byteOf(node.source().begin), byteOf(node.source().end)};
    }
    [[nodiscard]] std::string slice(const toml::node& node) const {
        const Span at = span(node);
        return std::string(m_text.substr(at.from, at.to - at.from));
    }
    /// Where the line after the node's first begins.
    [[nodiscard]] std::size_t lineAfter(const toml::node& node) const {
        const std::size_t line = node.source().begin.line;
        return line < m_lines.size() ? m_lines[line] : m_text.size();
    }
    /// A table with its header, up to what belongs to the next one: comments above that are left to it.
    [[nodiscard]] Span section(const toml::table& table) const {
        const std::size_t first = table.source().begin.line;
        const auto next = std::ranges::upper_bound(m_headers, first);
        std::size_t end = next == m_headers.end() ? m_lines.size() + 1 : *next;
        while (end - 1 > first && isSpare(end - 1))
            --end;
        return {m_lines[first - 1], end - 1 < m_lines.size() ? m_lines[end - 1] : m_text.size()};
    }

private:
    void findHeaders(const toml::table& table) {
        for (const auto& [key, node] : table) {
            if (const auto* inner = node.as_table()) {
                if (!inner->is_inline())
                    m_headers.push_back(inner->source().begin.line);
                findHeaders(*inner);
            } else if (const auto* list = node.as_array()) {
                for (const toml::node& entry : *list)
                    if (const auto* element = entry.as_table(); element && !element->is_inline()) {
                        m_headers.push_back(element->source().begin.line);
                        findHeaders(*element);
                    }
            }
        }
    }
    [[nodiscard]] bool isSpare(std::size_t line) const {
        const std::size_t from = m_lines[line - 1];
        const auto sign = m_text.find_first_not_of(" \t\r", from);
        return sign == std::string_view::npos || m_text[sign] == '\n' || m_text[sign] == '#';
    }
    [[nodiscard]] std::size_t byteOf(const toml::source_position& place) const {
        std::size_t at = m_lines.at(place.line - 1);
        for (toml::source_index sign = 1; sign < place.column && at < m_text.size(); ++sign) {
            ++at; // columns count signs, not bytes
            while (at < m_text.size() && (static_cast<unsigned char>(m_text[at]) & 0xC0U) == 0x80U)
                ++at;
        }
        return at;
    }

    std::string_view m_text;
    toml::table m_root;
    std::vector<std::size_t> m_lines;   ///< byte each line begins at
    std::vector<std::size_t> m_headers; ///< lines of [headers], from 1
};

struct Change {
    Span at;
    std::string text;
};

/// What the file says, and what the project says before and after, all three as texts.
struct Three {
    const Source& file;
    const Source& before;
    const Source& after;
};

const toml::table* tableOf(const Source& source, std::string_view name) {
    return source.root()[name].as_table();
}

const toml::array* listOf(const Source& source, std::string_view table, std::string_view list) {
    return source.root()[table][list].as_array();
}

/// The new value; keys of an inline table that the program does not know are carried over.
std::optional<std::string>
newValue(const Three& all, const toml::node& inFile, const toml::node* before, const toml::node& after) {
    std::string value = all.after.slice(after);
    const toml::table* inner = inFile.as_table();
    if (inner == nullptr)
        return value;
    if (!inner->is_inline() || !after.is_table())
        return std::nullopt;
    const toml::table* known = before != nullptr ? before->as_table() : nullptr;
    for (const auto& [key, node] : *inner) {
        if ((known != nullptr && known->contains(key)) || after.as_table()->contains(key))
            continue;
        value.insert(value.rfind('}'), ", " + std::string(key.str()) + " = " + all.file.slice(node) + " ");
    }
    return value;
}

/// Keys of one table that are not what they were. @return false where it can't be done in place
bool changeKeys(const Three& all, std::string_view name, std::vector<Change>& changes) {
    const toml::table none;
    const toml::table* const inFile = tableOf(all.file, name);
    const toml::table* const was = tableOf(all.before, name);
    const toml::table* const now = tableOf(all.after, name);
    const toml::table& before = was != nullptr ? *was : none;
    const toml::table& after = now != nullptr ? *now : none;
    std::string added;
    for (const auto& [key, node] : after) {
        const toml::node* old = before.get(key);
        const toml::node* there = inFile != nullptr ? inFile->get(key) : nullptr;
        if (old != nullptr && all.before.slice(*old) == all.after.slice(node))
            continue;
        if (there == nullptr) {
            added += std::string(key.str()) + " = " + all.after.slice(node) + "\n";
            continue;
        }
        const auto value = newValue(all, *there, old, node);
        if (!value)
            return false;
        changes.push_back({all.file.span(*there), *value});
    }
    for (const auto& [key, node] : before) {
        if (after.contains(key) || inFile == nullptr || inFile->get(key) == nullptr)
            continue;
        const toml::node& there = *inFile->get(key);
        const std::size_t line = all.file.text().rfind('\n', all.file.span(there).from) + 1;
        const std::size_t end = all.file.text().find('\n', all.file.span(there).to);
        if (there.is_table() && !there.as_table()->is_inline())
            return false;
        changes.push_back({{line, end == std::string_view::npos ? all.file.text().size() : end + 1}, ""});
    }
    if (added.empty())
        return true;
    if (inFile == nullptr) {
        changes.push_back(
            {{all.file.text().size(), all.file.text().size()}, "\n[" + std::string(name) + "]\n" + added});
        return true;
    }
    const std::size_t at = all.file.lineAfter(*inFile);
    changes.push_back({{at, at}, (at > 0 && all.file.text()[at - 1] != '\n' ? "\n" : "") + added});
    return !inFile->is_inline();
}

/// Entries of a list of tables: those that are gone are taken out, new ones come at the end.
bool changeEntries(const Three& all,
                   std::string_view table,
                   std::string_view list,
                   std::vector<Change>& changes) {
    const toml::array none;
    const auto orNone = [&none](const toml::array* found) -> const toml::array& {
        return found != nullptr ? *found : none;
    };
    const toml::array& inFile = orNone(listOf(all.file, table, list));
    const toml::array& before = orNone(listOf(all.before, table, list));
    const toml::array& after = orNone(listOf(all.after, table, list));
    if (inFile.size() != before.size())
        return false;
    const auto same = [&](const toml::node& a, const toml::node& b) {
        return *a.as_table() == *b.as_table();
    };
    std::size_t kept = 0;
    for (std::size_t i = 0; i < before.size(); ++i) {
        if (kept < after.size() && same(*before.get(i), *after.get(kept))) {
            ++kept;
            continue;
        }
        const toml::table* entry = inFile.get(i)->as_table();
        if (entry == nullptr || entry->is_inline())
            return false;
        changes.push_back({all.file.section(*entry), ""});
    }
    for (; kept < after.size(); ++kept) {
        const Span entry = all.after.section(*after.get(kept)->as_table());
        changes.push_back({{all.file.text().size(), all.file.text().size()},
                           "\n" + std::string(all.after.text().substr(entry.from, entry.to - entry.from))});
    }
    return true;
}

std::string apply(std::string_view text, std::vector<Change> changes) {
    std::ranges::stable_sort(changes, {}, [](const Change& change) { return change.at.from; });
    std::string changed;
    std::size_t at = 0;
    for (const Change& change : changes) {
        if (change.at.from < at)
            continue; // cannot be: places do not overlap; the check after it would notice
        changed += text.substr(at, change.at.from - at);
        if (!change.text.empty() && change.text.front() == '\n' && !changed.empty() && changed.back() != '\n')
            changed += '\n';
        changed += change.text;
        at = change.at.to;
    }
    return changed + std::string(text.substr(at));
}

/// Carries over what stands in the file and not in what the program wrote of it.
void keepUnknown(toml::table& written, const toml::table& file, const toml::table& before) {
    for (const auto& [key, node] : file) {
        toml::node* now = written.get(key);
        const toml::node* was = before.get(key);
        if (now == nullptr && was == nullptr) {
            written.insert(key, node);
        } else if (now != nullptr && was != nullptr && now->is_table() && was->is_table() &&
                   node.is_table()) {
            keepUnknown(*now->as_table(), *node.as_table(), *was->as_table());
        } else if (now != nullptr && was != nullptr && now->is_array() && was->is_array() &&
                   node.is_array()) {
            toml::array& list = *now->as_array();
            const toml::array& old = *was->as_array();
            const toml::array& there = *node.as_array();
            for (std::size_t i = 0;
                 list.size() == there.size() && old.size() == there.size() && i < list.size();
                 ++i)
                if (list[i].is_table() && old[i].is_table() && there[i].is_table())
                    keepUnknown(*list[i].as_table(), *there[i].as_table(), *old[i].as_table());
        }
    }
}

bool says(const std::string& text, const std::string& canonical) {
    const auto read = parseProject(text, "");
    return read && writeProject(read->project) == canonical;
}

} // namespace

std::string updateProjectText(std::string_view text, const Project& project) {
    const std::string canonical = writeProject(project);
    const auto read = parseProject(text, "");
    if (!read)
        return canonical;
    const std::string canonicalBefore = writeProject(read->project);
    if (canonicalBefore == canonical)
        return std::string(text);
    const Source file(text);
    const Source before(canonicalBefore);
    const Source after(canonical);
    const Three all{file, before, after};
    std::vector<Change> changes;
    bool inPlace = changeKeys(all, "strips", changes) && changeKeys(all, "planking", changes);
    for (const auto& [table, list] : {std::pair{"journal", "reading"}, std::pair{"journal", "laid"}})
        inPlace = inPlace && changeEntries(all, table, list, changes);
    if (inPlace) {
        std::string changed = apply(text, std::move(changes));
        if (says(changed, canonical))
            return changed;
    }
    toml::table whole = toml::parse(canonical);
    keepUnknown(whole, file.root(), before.root());
    std::ostringstream out;
    out << whole << '\n';
    return says(out.str(), canonical) ? out.str() : canonical;
}

} // namespace sheerlay::core

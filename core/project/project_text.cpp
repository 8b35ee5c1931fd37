#include "core/project/project_text.hpp"

#include "core/project/hull_text.hpp"
#include "core/project/project_file.hpp"
#include "core/project/project_source.hpp"
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

/// A table with a header of its own.
bool stands(const toml::node* node) {
    return node != nullptr && node->is_table() && !node->as_table()->is_inline();
}

/// A list of tables, each with a header of its own.
bool standsAsList(const toml::node* node) {
    const toml::array* list = node != nullptr ? node->as_array() : nullptr;
    return list != nullptr && !list->empty() &&
           std::ranges::all_of(*list, [](const toml::node& entry) { return stands(&entry); });
}

const toml::node* nodeOf(const toml::table* table, std::string_view key) {
    return table != nullptr ? table->get(key) : nullptr;
}

/// One table: as the file has it, and as the project has it before and after; none where it is not there.
struct Versions {
    std::string name; ///< as in its header
    const toml::table* inFile = nullptr;
    const toml::table* before = nullptr;
    const toml::table* after = nullptr;

    [[nodiscard]] Versions inner(std::string_view key) const {
        const auto tableOf = [&](const toml::table* outer) {
            const toml::node* node = nodeOf(outer, key);
            return node != nullptr ? node->as_table() : nullptr;
        };
        return {name + "." + std::string(key), tableOf(inFile), tableOf(before), tableOf(after)};
    }
};

void takeOutLine(const Three& all, const toml::node& there, std::vector<Change>& changes) {
    changes.push_back({all.file.linesOf(there), ""});
}

/// Takes a table out with its header and all that stands under it.
void takeOut(const Three& all, const toml::node& there, std::vector<Change>& changes) {
    if (stands(&there)) {
        changes.push_back({all.file.section(*there.as_table()), ""});
        for (const auto& [key, node] : *there.as_table())
            if (stands(&node) || standsAsList(&node))
                takeOut(all, node, changes);
    } else if (standsAsList(&there)) {
        for (const toml::node& entry : *there.as_array())
            takeOut(all, entry, changes);
    } else {
        takeOutLine(all, there, changes);
    }
}

/// Values of one table that are not what they were. @return false where it can't be done in place
bool changeValues(const Three& all, const Versions& table, std::vector<Change>& changes) {
    const toml::table none;
    std::string added;
    for (const auto& [key, node] : table.after != nullptr ? *table.after : none) {
        if (stands(&node) || standsAsList(&node))
            continue;
        const toml::node* old = nodeOf(table.before, key);
        const toml::node* there = nodeOf(table.inFile, key);
        if (old != nullptr && !standsAsList(old) && all.before.slice(*old) == all.after.slice(node))
            continue;
        if (there == nullptr) {
            added += std::string(key.str()) + " = " + all.after.slice(node) + "\n";
            continue;
        }
        const auto value = standsAsList(there) ? std::nullopt : newValue(all, *there, old, node);
        if (!value)
            return false;
        changes.push_back({all.file.span(*there), *value});
    }
    for (const auto& [key, node] : table.before != nullptr ? *table.before : none)
        if (const toml::node* there = nodeOf(table.inFile, key);
            there != nullptr && nodeOf(table.after, key) == nullptr) {
            if (stands(there) && !stands(&node))
                return false;
            takeOut(all, *there, changes);
        }
    if (added.empty())
        return true;
    const std::string_view text = all.file.text();
    if (table.inFile == nullptr) {
        changes.push_back({{text.size(), text.size()}, "\n[" + table.name + "]\n" + added});
        return true;
    }
    const std::size_t at = all.file.lineAfter(*table.inFile);
    changes.push_back({{at, at}, (at > 0 && text[at - 1] != '\n' ? "\n" : "") + added});
    return !table.inFile->is_inline();
}

/// Entries of a list of tables: as many as before are changed key by key; else those that are gone are taken
/// out, and new ones come at the end.
bool changeEntries(const Three& all,
                   const Versions& table,
                   std::string_view list,
                   std::vector<Change>& changes) {
    const toml::array none;
    const auto listOf = [&](const toml::table* outer) -> const toml::array& {
        const toml::node* node = nodeOf(outer, list);
        return node != nullptr && node->is_array() ? *node->as_array() : none;
    };
    const toml::array& inFile = listOf(table.inFile);
    const toml::array& before = listOf(table.before);
    const toml::array& after = listOf(table.after);
    if (before == after)
        return true; // what the file leaves out goes on being left out
    if (inFile.size() != before.size())
        return false;
    if (const toml::node* empty = nodeOf(table.inFile, list);
        empty != nullptr && inFile.empty() && !after.empty())
        takeOutLine(all, *empty, changes); // list = []
    const auto tableAt = [](const toml::array& from, std::size_t i) { return from.get(i)->as_table(); };
    const auto inPlace = [&](std::size_t i) { return stands(inFile.get(i)); };
    if (before.size() == after.size()) {
        for (std::size_t i = 0; i < before.size(); ++i) {
            if (*tableAt(before, i) == *tableAt(after, i))
                continue;
            if (!inPlace(i) ||
                !changeValues(all, {"", tableAt(inFile, i), tableAt(before, i), tableAt(after, i)}, changes))
                return false;
        }
        return true;
    }
    std::size_t kept = 0;
    for (std::size_t i = 0; i < before.size(); ++i) {
        if (kept < after.size() && *tableAt(before, i) == *tableAt(after, kept)) {
            ++kept;
            continue;
        }
        if (!inPlace(i))
            return false;
        takeOut(all, *inFile.get(i), changes);
    }
    for (; kept < after.size(); ++kept) {
        const Span entry = all.after.section(*tableAt(after, kept));
        changes.push_back({{all.file.text().size(), all.file.text().size()},
                           "\n" + std::string(all.after.text().substr(entry.from, entry.to - entry.from))});
    }
    return true;
}

/// One table with all that stands under it. @return false where it can't be done in place
bool changeTable(const Three& all, const Versions& table, std::vector<Change>& changes) {
    if (table.after == nullptr) {
        if (table.inFile != nullptr && table.before != nullptr)
            takeOut(all, *table.inFile, changes);
        return true;
    }
    if (!changeValues(all, table, changes))
        return false;
    for (const auto& [key, node] : *table.after) {
        if (stands(&node) && !changeTable(all, table.inner(key), changes))
            return false;
        if (standsAsList(&node) && !changeEntries(all, table, key, changes))
            return false;
    }
    return true;
}

/// What the window changes. @return false where it can't be done in place
bool changeAll(const Three& all, std::vector<Change>& changes) {
    constexpr std::array tables{"project",
                                "strips",
                                "planking",
                                "moulds",
                                "stock",
                                "fitout",
                                "covering",
                                "afloat",
                                "prices",
                                "journal"};
    const Versions root{"", &all.file.root(), &all.before.root(), &all.after.root()};
    for (const std::string_view name : tables) {
        Versions table = root.inner(name);
        table.name = name;
        if (!changeTable(all, table, changes))
            return false;
    }
    return changeEntries(all, root, "put-aside", changes);
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
    const bool inPlace = changeAll(all, changes);
    for (const bool unsaidToo : {false, true}) {
        std::vector<Change> withHull = changes;
        if (!inPlace || !changeHull(all, unsaidToo, withHull))
            break;
        std::string changed = apply(text, std::move(withHull));
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

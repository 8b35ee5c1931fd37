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

const toml::table* tableOf(const Source& source, std::string_view name) {
    return source.root()[name].as_table();
}

const toml::array* listOf(const Source& source, std::string_view table, std::string_view list) {
    return source.root()[table][list].as_array();
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
    bool inPlace = changeKeys(all, "strips", changes) && changeKeys(all, "planking", changes) &&
                   changeKeys(all, "moulds", changes);
    for (const auto& [table, list] : {std::pair{"journal", "reading"}, std::pair{"journal", "laid"}})
        inPlace = inPlace && changeEntries(all, table, list, changes);
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

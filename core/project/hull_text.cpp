#include "core/project/hull_text.hpp"

#include <algorithm>
#include <optional>
#include <string>
#include <utility>

namespace sheerlay::core {
namespace {

/// One entry of a list before and after; none where it is new or gone.
struct Step {
    std::optional<std::size_t> before, after;
    bool same = false;
};

bool sameNode(const Three& all, const toml::node& before, const toml::node& after) {
    const toml::table* a = before.as_table();
    const toml::table* b = after.as_table();
    if (a != nullptr && b != nullptr)
        return *a == *b;
    return all.before.slice(before) == all.after.slice(after);
}

/// How one list became the other with the fewest entries touched: the longest run of like ones stays, what
/// lies between is paired in its order.
std::vector<Step> stepsBetween(const Three& all, const toml::array& before, const toml::array& after) {
    const std::size_t n = before.size();
    const std::size_t m = after.size();
    std::vector<std::vector<std::size_t>> longest(n + 1, std::vector<std::size_t>(m + 1, 0));
    std::vector<std::vector<char>> same(n, std::vector<char>(m, 0));
    for (std::size_t i = n; i-- > 0;)
        for (std::size_t j = m; j-- > 0;) {
            same[i][j] = sameNode(all, *before.get(i), *after.get(j)) ? 1 : 0;
            longest[i][j] =
                same[i][j] != 0 ? longest[i + 1][j + 1] + 1 : std::max(longest[i + 1][j], longest[i][j + 1]);
        }
    std::vector<Step> steps;
    std::size_t i = 0;
    std::size_t j = 0;
    while (i < n || j < m) {
        if (i < n && j < m && same[i][j] != 0) {
            steps.push_back({i++, j++, true});
            continue;
        }
        std::vector<std::size_t> gone;
        std::vector<std::size_t> fresh;
        while (i < n || j < m) {
            if (i < n && j < m && same[i][j] != 0)
                break;
            if (j >= m || (i < n && longest[i + 1][j] >= longest[i][j + 1]))
                gone.push_back(i++);
            else
                fresh.push_back(j++);
        }
        for (std::size_t k = 0; k < std::max(gone.size(), fresh.size()); ++k)
            steps.push_back({k < gone.size() ? std::optional(gone[k]) : std::nullopt,
                             k < fresh.size() ? std::optional(fresh[k]) : std::nullopt,
                             false});
    }
    return steps;
}

class HullChanges {
public:
    HullChanges(const Three& all, std::vector<Change>& changes) : m_all(all), m_changes(changes) {}

    bool table(const toml::table& inFile, const toml::table& before, const toml::table& after) {
        if (inFile.is_inline() && !sameKeys(inFile, before, after)) {
            const auto value = newValue(m_all, inFile, &before, after);
            if (value)
                m_changes.push_back({m_all.file.span(inFile), *value});
            return value.has_value();
        }
        std::string added;
        for (const auto& [key, now] : after) {
            const toml::node* was = before.get(key);
            const toml::node* there = inFile.get(key);
            if (was != nullptr && !isList(now) && sameNode(m_all, *was, now))
                continue;
            if (was != nullptr && there != nullptr) {
                if (!node(*there, *was, now))
                    return false;
            } else if (there != nullptr || isHeader(now)) {
                return false;
            } else {
                added += std::string(key.str()) + " = " + m_all.after.slice(now) + "\n";
            }
        }
        for (const auto& [key, was] : before) {
            const toml::node* there = inFile.get(key);
            if (after.contains(key) || there == nullptr)
                continue;
            if (isHeader(*there))
                return false;
            m_changes.push_back({m_all.file.linesOf(*there), ""});
        }
        if (!added.empty())
            append(m_all.file.section(inFile).to, added);
        return true;
    }

    void append(std::size_t at, const std::string& text) {
        const bool open = at > 0 && m_all.file.text()[at - 1] != '\n';
        m_changes.push_back({{at, at}, (open ? "\n" : "") + text});
    }

private:
    static bool isHeader(const toml::node& node) {
        const toml::table* table = node.as_table();
        return (table != nullptr && !table->is_inline()) || isList(node);
    }
    /// [[hull.station]] and its like.
    static bool isList(const toml::node& node) {
        const toml::array* list = node.as_array();
        const toml::table* first = list != nullptr && !list->empty() ? list->get(0)->as_table() : nullptr;
        return first != nullptr && !first->is_inline();
    }

    /// The file says every key that is said before and after, and these are the same.
    static bool sameKeys(const toml::table& inFile, const toml::table& before, const toml::table& after) {
        const auto all = [](const toml::table& keys, const toml::table& in) {
            return std::all_of(
                keys.begin(), keys.end(), [&](const auto& entry) { return in.contains(entry.first); });
        };
        return before.size() == after.size() && all(before, after) && all(after, inFile);
    }

    bool node(const toml::node& inFile, const toml::node& before, const toml::node& after) {
        if (inFile.is_table() && before.is_table() && after.is_table())
            return table(*inFile.as_table(), *before.as_table(), *after.as_table());
        if (inFile.is_array() && before.is_array() && after.is_array()) {
            if (inFile.as_array()->size() != before.as_array()->size())
                return false;
            return isList(after) ? stations(*inFile.as_array(), *before.as_array(), *after.as_array())
                                 : entries(*inFile.as_array(), *before.as_array(), *after.as_array());
        }
        m_changes.push_back({m_all.file.span(inFile), m_all.after.slice(after)});
        return true;
    }

    bool stations(const toml::array& inFile, const toml::array& before, const toml::array& after) {
        if (!isList(inFile))
            return false;
        std::size_t last = m_all.file.section(*inFile.get(0)->as_table()).from;
        for (const Step& step : stepsBetween(m_all, before, after)) {
            if (!step.before) {
                const Span entry = m_all.after.section(*after.get(*step.after)->as_table());
                append(last,
                       "\n" + std::string(m_all.after.text().substr(entry.from, entry.to - entry.from)));
                continue;
            }
            const toml::table& there = *inFile.get(*step.before)->as_table();
            const Span section = m_all.file.section(there);
            last = section.to;
            if (!step.after)
                m_changes.push_back({section, ""});
            else if (!step.same && !table(there,
                                          *before.get(*step.before)->as_table(),
                                          *after.get(*step.after)->as_table()))
                return false;
        }
        return true;
    }

    /// Points in one list between brackets.
    bool entries(const toml::array& inFile, const toml::array& before, const toml::array& after) {
        const auto spanOf = [&](std::size_t entry) { return m_all.file.span(*inFile.get(entry)); };
        if (inFile.empty())
            return false;
        const std::vector<Step> steps = stepsBetween(m_all, before, after);
        std::size_t lastKept = 0;
        for (const Step& step : steps)
            if (step.before && step.after)
                lastKept = *step.before;
        std::optional<std::size_t> last; // entry of the file that stays and stands before
        for (const Step& step : steps) {
            if (step.before && step.after) {
                last = step.before;
                if (!step.same &&
                    !node(*inFile.get(*step.before), *before.get(*step.before), *after.get(*step.after)))
                    return false;
            } else if (step.before) {
                const Span gone = spanOfEntry(inFile, *step.before, lastKept);
                if (gone.from == gone.to)
                    return false;
                m_changes.push_back({gone, ""});
            } else {
                const std::string fresh = m_all.after.slice(*after.get(*step.after));
                const std::size_t at = last ? spanOf(*last).to : spanOf(0).from;
                m_changes.push_back(
                    {{at, at}, last ? "," + between(inFile) + fresh : fresh + "," + between(inFile)});
            }
        }
        return true;
    }

    /// An entry with its comma: its own lines where nothing else stands on them; else up to the next one, or
    /// from the one before where none that stays comes after it. Empty where there is neither.
    [[nodiscard]] Span spanOfEntry(const toml::array& list, std::size_t i, std::size_t lastKept) const {
        const Span own = m_all.file.span(*list.get(i));
        const Span before = i > 0 ? m_all.file.span(*list.get(i - 1)) : Span{};
        const bool more = i + 1 < list.size();
        const Span next = more ? m_all.file.span(*list.get(i + 1)) : Span{};
        const Span whole = m_all.file.span(list);
        const Span lines = m_all.file.linesOf(*list.get(i));
        if (lines.from > whole.from && lines.to < whole.to && lines.from >= before.to &&
            (!more || lines.to <= next.from))
            return lines;
        if (i < lastKept)
            return {own.from, next.from};
        return i > 0 ? Span{before.to, own.to} : Span{};
    }

    /// What stands between two points of a list: a blank, or a line's end and as much room as the first has.
    [[nodiscard]] std::string between(const toml::array& list) const {
        const std::string_view text = m_all.file.text();
        const std::size_t first = m_all.file.span(*list.get(0)).from;
        const std::size_t line = text.rfind('\n', first);
        const std::size_t from = m_all.file.span(list).from;
        if (line == std::string_view::npos || line < from ||
            text.substr(line + 1, first - line - 1).find_first_not_of(" \t") != std::string_view::npos)
            return " ";
        return std::string(text.substr(line, first - line));
    }

    const Three& m_all;
    std::vector<Change>& m_changes;
};

} // namespace

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

bool changeHull(const Three& all, bool unsaidToo, std::vector<Change>& changes) {
    const toml::table* inFile = all.file.root()["hull"].as_table();
    const toml::table* before = all.before.root()["hull"].as_table();
    const toml::table* after = all.after.root()["hull"].as_table();
    if (inFile == nullptr || before == nullptr || after == nullptr || *before == *after)
        return inFile != nullptr && before != nullptr && after != nullptr;
    HullChanges hull(all, changes);
    if (!hull.table(*inFile, *before, *after))
        return false;
    const toml::node* rounded = after->get("rounded-to");
    if (unsaidToo && rounded != nullptr && !inFile->contains("rounded-to"))
        hull.append(all.file.section(*inFile).to, "rounded-to = " + all.after.slice(*rounded) + "\n");
    return true;
}

} // namespace sheerlay::core

#include "core/hull/suspect_cells.hpp"

#include "core/hull/cell_checker.hpp"
#include "core/hull/knuckle_line.hpp"
#include "core/hull/line_check.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>

namespace sheerlay::core {
namespace {

constexpr double threshold = 5.0; // spreads beyond which a cell is doubted
constexpr double reportSize =
    4.0; // mm: what stations a foot apart can't carry looks like an error of this size
constexpr double reportUnits = 2.0;
constexpr std::size_t mostSuspects = 6;
constexpr double alarm = 2.8; // spreads from which something may be wrong at all
constexpr double stir = 2.0;  // spreads from which a cell may then be the wrong one, or its neighbour
constexpr std::size_t tried =
    4;                        // so many that stand out are tried, and so many that can't be judged in place
constexpr int perStation = 3; // so many doubtful cells of one station speak of its shape
constexpr int mostRounds = 12;
constexpr int mostReadmissions = 2;

using Verdicts = std::map<std::size_t, SuspectCell>;

std::size_t keyOf(const CellRef& c) {
    return 2 * c.point + (c.height ? 1 : 0);
}

double leastReported(const HullTable& table) {
    return std::max(reportUnits * table.roundedTo, reportSize);
}

bool further(const SuspectCell& a, const SuspectCell& b) {
    return std::abs(a.t) > std::abs(b.t);
}

/// Which cells are out, what the fit without them says, and which to doubt next.
class Search {
public:
    Search(const HullTable& table, LoftData& data)
        : m_data(data), m_original(data.points), m_checker(table, data), m_out(standOut(table, data)),
          m_least(leastReported(table)) {}

    /// @return false when the points do not determine a surface
    bool run() {
        for (int round = 0; round < mostRounds; ++round) {
            if (!fitWithout(m_out))
                return false;
            m_verdicts = m_checker.judge();
            m_trials.clear();
            if (!putBack() && !takeOut())
                break;
        }
        return true;
    }

    /// Every cell that could be judged, the least likely first: in place, on its own line where it is out, or
    /// where it was tried out.
    [[nodiscard]] std::vector<SuspectCell> ranked() const {
        Verdicts all = m_verdicts;
        for (const Trial& t : m_trials)
            if (t.verdict)
                all.try_emplace(keyOf(t.cell), *t.verdict);
        std::vector<SuspectCell> list;
        for (const auto& [key, c] : all)
            list.push_back(c);
        std::stable_sort(list.begin(), list.end(), further);
        return list;
    }

    [[nodiscard]] std::vector<SuspectCell> out() const {
        std::vector<SuspectCell> list;
        for (const CellRef& c : m_out)
            if (const auto v = m_verdicts.find(keyOf(c)); v != m_verdicts.end())
                list.push_back(v->second);
        std::sort(list.begin(), list.end(), further);
        return list;
    }

    /// The points as they were, with the girths of the last state.
    void restore() {
        m_data.points = m_original;
        m_checker.setOut(m_out);
        m_checker.startGirths();
    }

private:
    struct Trial {
        CellRef cell;
        double relief = 0.0; ///< by how much the discord falls without the cell
        std::optional<SuspectCell> verdict;
    };

    bool fitWithout(std::vector<CellRef> cells) {
        m_data.points = m_original;
        m_checker.setOut(std::move(cells));
        m_checker.startGirths();
        return m_checker.fit();
    }

    [[nodiscard]] bool isOut(const CellRef& c) const {
        return std::find(m_out.begin(), m_out.end(), c) != m_out.end();
    }

    /// Cells that are out and agree with the rest after all.
    bool putBack() {
        std::map<int, int> ofStation;
        for (const CellRef& c : m_out)
            ++ofStation[m_data.points[c.point].station];
        const auto agrees = [&](const CellRef& c) {
            const auto v = m_verdicts.find(keyOf(c));
            return ofStation[m_data.points[c.point].station] >= perStation ||
                   (v != m_verdicts.end() && std::abs(v->second.t) < threshold);
        };
        std::vector<CellRef> keep;
        for (const CellRef& c : m_out)
            if (agrees(c))
                ++m_readmitted[keyOf(c)];
            else
                keep.push_back(c);
        if (keep.size() == m_out.size())
            return putBackHidden();
        m_out = keep;
        return true;
    }

    /// Two neighbours that are out can each look wrong only because the other is missing: one whose return
    /// hardly disturbs the rest comes back.
    bool putBackHidden() {
        if (m_out.size() < 2)
            return false;
        const double without = m_checker.discord();
        const double most = std::pow(threshold * m_checker.scale(), 2);
        double least = most;
        std::optional<CellRef> back;
        for (const CellRef& c : m_out) {
            std::vector<CellRef> rest = m_out;
            std::erase(rest, c);
            if (m_readmitted[keyOf(c)] < mostReadmissions && fitWithout(rest) &&
                m_checker.discord() - without < least) {
                least = m_checker.discord() - without;
                back = c;
            }
        }
        if (!back) {
            fitWithout(m_out);
            return false;
        }
        ++m_readmitted[keyOf(*back)];
        std::erase(m_out, *back);
        return true;
    }

    /// Cells that may be the wrong one: those that stand out most, and those near the first of them that
    /// can't be judged in place, since a gross error lies where the surface has nothing to say of it.
    [[nodiscard]] std::vector<CellRef> candidates() const {
        std::vector<SuspectCell> in;
        for (const auto& [key, c] : m_verdicts)
            if (!isOut({c.point, c.height}) && std::abs(c.t) > stir)
                in.push_back(c);
        std::sort(in.begin(), in.end(), further);
        std::vector<CellRef> list;
        for (std::size_t i = 0; i < std::min(in.size(), tried); ++i)
            list.push_back({in[i].point, in[i].height});
        if (in.empty() || std::abs(in.front().t) < alarm)
            return {};
        for (const int reach : {0, 1})
            for (std::size_t first = 0; first < std::min<std::size_t>(in.size(), 2); ++first)
                for (const CellRef& c : m_checker.cells())
                    if (list.size() < 2 * tried && !m_verdicts.contains(keyOf(c)) && !isOut(c) &&
                        std::find(list.begin(), list.end(), c) == list.end() &&
                        std::abs(m_data.points[c.point].station - m_data.points[in[first].point].station) ==
                            reach)
                        list.push_back(c);
        return list;
    }

    /// The cell without which the rest agrees best, if it is then beyond the threshold.
    bool takeOut() {
        if (m_out.size() >= mostSuspects)
            return false;
        const double before = m_checker.discord();
        const auto state = m_checker.poles();
        const std::vector<LoftPoint> inPlace = m_data.points;
        for (const CellRef& c : candidates()) {
            std::vector<CellRef> with = m_out;
            with.push_back(c);
            m_checker.setOut(std::move(with));
            m_data.points = inPlace;
            if (m_checker.refit(state))
                m_trials.push_back({c, before - m_checker.discord(), m_checker.onOwnLine(c)});
        }
        std::stable_sort(m_trials.begin(), m_trials.end(), [](const Trial& a, const Trial& b) {
            return a.relief > b.relief;
        });
        const auto worst = std::find_if(m_trials.begin(), m_trials.end(), [&](const Trial& t) {
            return m_readmitted[keyOf(t.cell)] < mostReadmissions && t.verdict &&
                   std::abs(t.verdict->printed - t.verdict->fair) >= m_least;
        });
        if (worst == m_trials.end() || std::abs(worst->verdict->t) < threshold)
            return false;
        m_out.push_back(worst->cell);
        return true;
    }

    LoftData& m_data;
    const std::vector<LoftPoint> m_original;
    CellChecker m_checker;
    std::vector<CellRef> m_out;
    double m_least = 0.0; ///< mm, nearer ones are not worth a word
    Verdicts m_verdicts;
    std::vector<Trial> m_trials;
    std::map<std::size_t, int> m_readmitted;
};

} // namespace

CellSearch searchCells(const HullTable& table, LoftData& data) {
    CellSearch found;
    Search search(table, data);
    if (!search.run()) {
        search.restore();
        return found;
    }
    found.ranked = search.ranked();
    search.restore();
    for (SuspectCell s : search.out()) {
        const double off = std::abs(s.printed - s.fair);
        if (off < leastReported(table))
            continue;
        s.setAside = off >= grossError(table);
        found.suspects.push_back(s);
    }
    if (found.suspects.size() >= mostSuspects)
        // so many speak against what all cells rest on, not against the cells: none is left out of the loft
        for (SuspectCell& c : found.suspects)
            c.setAside = false;
    setAside(found.suspects, data);
    return found;
}

void setAside(const std::vector<SuspectCell>& suspects, LoftData& data) {
    for (const SuspectCell& s : suspects) {
        LoftPoint& p = data.points[s.point];
        if (s.setAside && p.kind != LoftPoint::Kind::Sheer && p.kind != LoftPoint::Kind::Knuckle)
            p.weightY = p.weightZ = 0;
        else if (s.setAside)
            (s.height ? p.weightZ : p.weightY) = 0;
    }
}

std::vector<SuspectCell> findSuspectCells(const HullTable& table, LoftData& data) {
    return searchCells(table, data).suspects;
}

} // namespace sheerlay::core

#include "core/planking/laying_order.hpp"

#include <queue>

#include <algorithm>
#include <cstdlib>
#include <functional>
#include <map>
#include <tuple>

namespace sheerlay::core {
namespace {

bool overlap(const Strip& a, const Strip& b) {
    if (a.middle.empty() || b.middle.empty())
        return true;
    return a.middle.front().x() <= b.middle.back().x() && b.middle.front().x() <= a.middle.back().x();
}

/// The row that must lie before this one; 0 for the first. A bottom planked by itself starts at the
/// centreline, once the topsides are done, and ends at the row they end on.
int before(int row, const Plan& plan) {
    if (plan.splitRow && row >= *plan.splitRow)
        return row == plan.lastRow ? *plan.splitRow - 1 : row + 1;
    return row > 0 ? row - 1 : (row == -1 ? 1 : row + 1);
}

bool shareASide(const Strip& a, const Strip& b) {
    return a.side == b.side || a.side == Side::Centre || b.side == Side::Centre;
}

bool woven(const Strip& strip) {
    return strip.ends[0].weave != Weave::None || strip.ends[1].weave != Weave::None;
}

/// Pieces by row, and whether a row holds a stealer.
class Rows {
public:
    explicit Rows(const Plan& plan) {
        for (std::size_t i = 0; i < plan.strips.size(); ++i) {
            m_of[plan.strips[i].row].push_back(i);
            m_stealers[plan.strips[i].row] |= plan.strips[i].kind == StripKind::Stealer;
        }
    }
    [[nodiscard]] const std::vector<std::size_t>& of(int row) const {
        static const std::vector<std::size_t> none;
        const auto found = m_of.find(row);
        return found == m_of.end() ? none : found->second;
    }
    [[nodiscard]] bool stealers(int row) const {
        const auto found = m_stealers.find(row);
        return found != m_stealers.end() && found->second;
    }

private:
    std::map<int, std::vector<std::size_t>> m_of;
    std::map<int, bool> m_stealers;
};

} // namespace

Side firstSide(int row) noexcept {
    return row % 2 == 0 ? Side::Port : Side::Starboard;
}

std::optional<int> runOverFrom(const Plan& plan, ClosingMethod closing) {
    if (closing != ClosingMethod::RunOver || (!plan.marks.closingBow && !plan.marks.closingStern))
        return std::nullopt;
    constexpr int never = 1 << 20;
    int from = std::min(plan.marks.closingBow.value_or(never), plan.marks.closingStern.value_or(never));
    for (const auto& woven : {plan.marks.weaveBow, plan.marks.weaveStern})
        if (woven)
            from = std::max(from, woven->last + 1);
    return from;
}

Side firstSide(const Plan& plan, ClosingMethod closing, int row) {
    const auto from = runOverFrom(plan, closing);
    return from && row >= *from ? Side::Port : firstSide(row);
}

std::vector<Dependency> dependencies(const Plan& plan, ClosingMethod closing) {
    std::vector<Dependency> all;
    const Rows rows(plan);
    const auto from = runOverFrom(plan, closing);
    const auto runOver = [&](int row) { return from && row >= *from; };
    for (std::size_t i = 0; i < plan.strips.size(); ++i) {
        const Strip& b = plan.strips[i];
        const Side first = firstSide(plan, closing, b.row);
        // toward the start; past a stealer, which is shorter than what lies below it, to the row before too
        for (int row = before(b.row, plan); b.row != 1; row = before(row, plan)) {
            for (const std::size_t k : rows.of(row)) {
                const Strip& a = plan.strips[k];
                if (!overlap(a, b))
                    continue;
                if (shareASide(a, b))
                    all.push_back({k, i, Waits::ForNeighbour});
                else if (b.side == first && b.kind != StripKind::Filler && !runOver(b.row))
                    all.push_back({k, i, Waits::ForBothSides});
            }
            if (!rows.stealers(row) || row == 1 || row == 0)
                break;
        }
        for (const std::size_t k : rows.of(b.row)) {
            const Strip& a = plan.strips[k];
            if (k == i || !overlap(a, b))
                continue;
            if (a.side == b.side) {
                if (a.kind == StripKind::Stealer && b.kind != StripKind::Stealer)
                    all.push_back({k, i, Waits::ForItsStealer});
            } else if (a.side == first && b.side != Side::Centre && (b.kind != StripKind::Filler || woven(b)))
                all.push_back({k, i, Waits::ForPassing});
        }
        if (runOver(b.row) && b.side == Side::Starboard)
            for (std::size_t k = 0; k < plan.strips.size(); ++k)
                if (plan.strips[k].side == Side::Port && runOver(plan.strips[k].row))
                    all.push_back({k, i, Waits::ForTrimming});
    }
    return all;
}

void orderStrips(Plan& plan, ClosingMethod closing) {
    const std::size_t n = plan.strips.size();
    std::vector<std::vector<std::size_t>> next(n);
    std::vector<int> waits(n, 0);
    for (const Dependency& d : dependencies(plan, closing)) {
        next[d.first].push_back(d.then);
        ++waits[d.then];
    }
    using Key = std::tuple<bool, int, int, bool, bool, double, std::size_t>;
    std::priority_queue<Key, std::vector<Key>, std::greater<>> ready;
    const auto offer = [&](std::size_t i) {
        const Strip& s = plan.strips[i];
        ready.emplace(s.kind == StripKind::Shutter,
                      std::abs(s.row),
                      s.row > 0,
                      s.side != firstSide(plan, closing, s.row),
                      s.kind != StripKind::Stealer,
                      s.middle.empty() ? 0.0 : s.middle.front().x(),
                      i);
    };
    for (std::size_t i = 0; i < n; ++i)
        if (waits[i] == 0)
            offer(i);
    int number = 0;
    while (!ready.empty()) {
        const std::size_t i = std::get<6>(ready.top());
        ready.pop();
        plan.strips[i].order = ++number;
        for (const std::size_t k : next[i])
            if (--waits[k] == 0)
                offer(k);
    }
}

} // namespace sheerlay::core

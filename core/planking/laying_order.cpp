#include "core/planking/laying_order.hpp"

#include <queue>

#include <algorithm>
#include <cstdlib>
#include <tuple>
#include <vector>

namespace sheerlay::core {
namespace {

bool overlap(const Strip& a, const Strip& b) {
    if (a.middle.empty() || b.middle.empty())
        return true;
    return a.middle.front().x() <= b.middle.back().x() && b.middle.front().x() <= a.middle.back().x();
}

/// The row that must lie before this one. A bottom planked by itself starts at the centreline, once the
/// topsides are done, and ends at the row they end on.
int before(int row, const Plan& plan) {
    if (plan.splitRow && row >= *plan.splitRow)
        return row == plan.lastRow ? *plan.splitRow - 1 : row + 1;
    return row > 0 ? row - 1 : (row == -1 ? 1 : row + 1);
}

} // namespace

Side firstSide(int row) noexcept {
    return row % 2 == 0 ? Side::Port : Side::Starboard;
}

void orderStrips(Plan& plan, ClosingMethod closing) {
    const std::size_t n = plan.strips.size();
    std::vector<std::vector<std::size_t>> next(n);
    std::vector<int> waits(n, 0);
    const auto after = [&](std::size_t first, std::size_t second) {
        next[first].push_back(second);
        ++waits[second];
    };
    const auto closingRow = [&](int row) {
        const int begins =
            std::min(plan.marks.closingBow.value_or(1 << 20), plan.marks.closingStern.value_or(1 << 20));
        return row >= begins;
    };
    for (std::size_t i = 0; i < n; ++i)
        for (std::size_t k = 0; k < n; ++k) {
            if (i == k)
                continue;
            const Strip& a = plan.strips[k]; // candidate to come first
            const Strip& b = plan.strips[i];
            const bool sameSide = a.side == b.side || a.side == Side::Centre || b.side == Side::Centre;
            const bool isNext = a.row == before(b.row, plan) && (b.row != 1);
            if (isNext && overlap(a, b)) {
                const bool bothSides = !(b.kind == StripKind::Filler) && b.side == firstSide(b.row);
                const bool runOver = closing == ClosingMethod::RunOver && closingRow(b.row);
                if (sameSide || (bothSides && !runOver))
                    after(k, i);
            }
            if (a.row == b.row && a.side != b.side && a.side != Side::Centre && b.side != Side::Centre &&
                overlap(a, b)) {
                const bool runOver = closing == ClosingMethod::RunOver && closingRow(b.row);
                const Side first = runOver ? Side::Port : firstSide(b.row);
                if (a.side == first)
                    after(k, i);
            }
            if (closing == ClosingMethod::RunOver && a.side == Side::Port && b.side == Side::Starboard &&
                closingRow(b.row) && a.row == plan.lastRow && !closingRow(b.row - 1))
                after(k, i);
        }
    using Key = std::tuple<int, int, int, double, std::size_t>;
    std::priority_queue<Key, std::vector<Key>, std::greater<>> ready;
    const auto key = [&](std::size_t i) {
        const Strip& s = plan.strips[i];
        return Key{std::abs(s.row),
                   s.row > 0,
                   s.side != firstSide(s.row),
                   s.middle.empty() ? 0.0 : s.middle.front().x(),
                   i};
    };
    for (std::size_t i = 0; i < n; ++i)
        if (waits[i] == 0)
            ready.push(key(i));
    int number = 0;
    while (!ready.empty()) {
        const std::size_t i = std::get<4>(ready.top());
        ready.pop();
        plan.strips[i].order = ++number;
        for (const std::size_t k : next[i])
            if (--waits[k] == 0)
                ready.push(key(k));
    }
}

} // namespace sheerlay::core

#include "core/stock/stock_job.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {

namespace {

constexpr double mirrorTolerance = 1.0; // mm of length, between a strip and its mirror image
constexpr double beyondAll = 1e9;       // mm

} // namespace

std::set<int> StockJob::bays() const {
    std::set<int> all;
    for (const std::size_t place : joints)
        all.insert(placed.unit.bay[place - 1]);
    return all;
}

std::vector<StockJob> gatherJobs(const Plan& plan, bool mirror) {
    std::vector<StockJob> jobs;
    std::set<const Strip*> taken;
    for (const Strip& strip : plan.strips) {
        if (!taken.insert(&strip).second)
            continue;
        StockJob job;
        job.strips.push_back(&strip);
        const auto image = std::ranges::find_if(plan.strips, [&](const Strip& other) {
            return !taken.contains(&other) && other.side != strip.side && other.row == strip.row &&
                   other.id.substr(1) == strip.id.substr(1) &&
                   std::abs(other.length - strip.length) < mirrorTolerance;
        });
        if (mirror && strip.side != Side::Centre && image != plan.strips.end()) {
            job.strips.push_back(&*image);
            taken.insert(&*image);
        }
        jobs.push_back(std::move(job));
    }
    return jobs;
}

bool areNeighbours(const StockJob& a, const StockJob& b, bool stagger) {
    return std::ranges::any_of(a.strips, [&](const Strip* p) {
        return std::ranges::any_of(b.strips, [&](const Strip* q) { return areNeighbours(*p, *q, stagger); });
    });
}

PlacedUnit withoutBays(const PlacedUnit& placed, const std::set<int>& bays) {
    const CutUnit& all = placed.unit;
    PlacedUnit fewer;
    fewer.unit.neighbours = all.neighbours;
    fewer.unit.members.resize(all.members.size());
    const std::size_t last = all.places() + 1;
    for (std::size_t p = 0; p <= last; ++p) {
        const bool inside = p > 0 && p < last;
        if (inside && bays.contains(all.bay[p - 1]))
            continue;
        for (std::size_t m = 0; m < all.members.size(); ++m)
            fewer.unit.members[m].at.push_back(all.members[m].at[p]);
        if (inside) {
            fewer.unit.bay.push_back(all.bay[p - 1]);
            fewer.x.push_back(placed.x[p - 1]);
        }
    }
    return fewer;
}

double leastLongestPiece(const CuttingProblem& problem, const CutUnit& unit) {
    const std::size_t nodes = unit.places() + 2;
    std::vector<double> longest(nodes, beyondAll); // of the pieces up to a node, at best
    longest[0] = 0.0;
    for (std::size_t to = 1; to < nodes; ++to)
        for (std::size_t from = 0; from < to; ++from) {
            double most = longest[from], least = beyondAll;
            for (std::size_t m = 0; m < unit.members.size(); ++m) {
                const double length = pieceLength(problem, unit, m, from, to);
                most = std::max(most, length);
                least = std::min(least, length);
            }
            if (least >= problem.shortestPiece || (from == 0 && to + 1 == nodes))
                longest[to] = std::min(longest[to], most);
        }
    return longest.back();
}

bool canBeCut(const CuttingProblem& problem, const UnitPieces& pieces) {
    int most = 0;
    for (const StickKind& kind : problem.kinds)
        most = std::max(most, kind.capacity);
    const std::vector<double> noPrice(static_cast<std::size_t>(most) + 1, 0.0);
    return pieces.cheapest(noPrice, std::vector<double>(pieces.nodes() - 2, 0.0)).cost == 0.0;
}

} // namespace sheerlay::core

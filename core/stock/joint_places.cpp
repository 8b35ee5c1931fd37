#include "core/stock/joint_places.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <set>

namespace sheerlay::core {

namespace {

constexpr int placesPerBay = 5; // third, middle, third, and one between each: what a pencil can tell apart

double runPastMiddle(const StripEnd& end) {
    return std::max({0.0, end.runInner, end.runOuter});
}

/// Rows counted without the gap at 0.
int rowIndex(int row) {
    return row > 0 ? row - 1 : row;
}

} // namespace

std::optional<int> bayOf(const std::vector<double>& stationX, double x) {
    if (stationX.size() < 2 || x < stationX.front() || x > stationX.back())
        return std::nullopt;
    const auto after = std::ranges::upper_bound(stationX, x);
    const auto bay = static_cast<int>(after - stationX.begin()) - 1;
    return std::min(bay, static_cast<int>(stationX.size()) - 2);
}

std::optional<double> alongAt(const Strip& strip, double x) {
    for (std::size_t i = 1; i < strip.samples.size(); ++i) {
        const StripSample &a = strip.samples[i - 1], &b = strip.samples[i];
        if ((a.x - x) * (b.x - x) <= 0.0 && a.x != b.x)
            return a.s + (b.s - a.s) * (x - a.x) / (b.x - a.x);
    }
    return std::nullopt;
}

double bowAllowance(const Strip& strip) {
    const double bow = runPastMiddle(strip.ends[0]), stern = runPastMiddle(strip.ends[1]);
    const double all = std::max(0.0, strip.cutLength - strip.length);
    return bow + stern > all ? all / 2 : bow + (all - bow - stern) / 2;
}

std::vector<double> nibsAt(const Strip& strip, const Plan& plan) {
    std::vector<double> at;
    for (const Strip& stealer : plan.strips) {
        const int below = rowIndex(stealer.row) - rowIndex(strip.row);
        if (stealer.kind != StripKind::Stealer || stealer.side != strip.side || (below != 0 && below != 1))
            continue;
        for (const StripEnd& end : stealer.ends)
            if (end.on == EndsOn::Nib)
                at.push_back(end.x);
    }
    std::ranges::sort(at);
    return at;
}

namespace {

std::set<int> hardBays(const std::vector<const Strip*>& strips, const std::vector<double>& stationX) {
    std::set<int> hard;
    for (const Strip* strip : strips)
        for (const double x : {strip->edgeBend.atX, strip->twistAtX, strip->bendAtX})
            if (const auto bay = bayOf(stationX, x))
                hard.insert(*bay);
    return hard;
}

/// mm along a strip from its bow end, of every nib it reaches.
std::vector<double> nibsAlong(const Strip& strip, const std::vector<double>& nibs) {
    std::vector<double> along;
    for (const double x : nibs)
        if (const auto s = alongAt(strip, x))
            along.push_back(*s);
    return along;
}

} // namespace

PlacedUnit placeJoints(const std::vector<const Strip*>& strips,
                       const std::vector<double>& stationX,
                       const std::vector<double>& nibs,
                       double scarf,
                       RuleKept rules) {
    const std::set<int> hard = rules == RuleKept::All ? hardBays(strips, stationX) : std::set<int>{};
    PlacedUnit placed;
    placed.unit.members.resize(strips.size());
    for (CutMember& member : placed.unit.members)
        member.at.push_back(0.0);
    std::vector<std::vector<double>> clearOf(strips.size());
    for (std::size_t m = 0; m < strips.size() && rules != RuleKept::NotNibs; ++m)
        clearOf[m] = nibsAlong(*strips[m], nibs);
    const auto atNib = [&](std::size_t m, double along) {
        return std::ranges::any_of(
            clearOf[m], [&](double nib) { return std::abs(along - nib) < scarf / 2 + nibToScarf; });
    };
    for (std::size_t bay = 0; bay + 1 < stationX.size(); ++bay) {
        if (hard.contains(static_cast<int>(bay)))
            continue;
        for (int i = 0; i < placesPerBay; ++i) {
            const double part = jointZoneFrom + (jointZoneTo - jointZoneFrom) * i / (placesPerBay - 1);
            const double x = stationX[bay] + part * (stationX[bay + 1] - stationX[bay]);
            std::vector<double> at;
            for (std::size_t m = 0; m < strips.size(); ++m) {
                const auto along = alongAt(*strips[m], x);
                if (along && !atNib(m, *along) &&
                    *along + bowAllowance(*strips[m]) > placed.unit.members[m].at.back())
                    at.push_back(*along + bowAllowance(*strips[m]));
            }
            if (at.size() < strips.size())
                continue;
            for (std::size_t m = 0; m < strips.size(); ++m)
                placed.unit.members[m].at.push_back(at[m]);
            placed.unit.bay.push_back(static_cast<int>(bay));
            placed.x.push_back(x);
        }
    }
    for (std::size_t m = 0; m < strips.size(); ++m)
        placed.unit.members[m].at.push_back(strips[m]->cutLength);
    return placed;
}

bool areNeighbours(const Strip& a, const Strip& b, bool stagger) {
    const int apart = std::abs(rowIndex(a.row) - rowIndex(b.row));
    if (apart == 0 && a.side == b.side)
        return (a.kind == StripKind::Stealer) != (b.kind == StripKind::Stealer);
    if (apart == 1)
        return a.side == b.side || a.side == Side::Centre || b.side == Side::Centre;
    return stagger && apart == 0 && a.side != b.side;
}

} // namespace sheerlay::core

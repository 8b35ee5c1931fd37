#include "core/planking/landing.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {
namespace {

constexpr double grid = 0.5;          // mm
constexpr double nothing = 0.3;       // mm
constexpr double shiftPerPlaned = 40; // mm of shift that weigh as much as 1 mm off every strip
constexpr int planedSteps = 3;        // of 0.1 mm

double wrapped(double value, double w) {
    const double m = std::fmod(value, w);
    return m < 0 ? m + w : m;
}

} // namespace

double shutterRemainder(const Plan& plan) {
    double most = 0;
    for (const Strip& s : plan.strips)
        if (s.kind == StripKind::Shutter)
            most = std::max(most, s.side == Side::Centre ? widest(s) / 2 : widest(s));
    return most;
}

bool landsWell(double remainder, double w, const std::array<double, 2>& wanted, bool joinable) {
    const auto within = [&](double width) { return width >= wanted[0] * w && width <= wanted[1] * w; };
    return joinable && 2 * remainder <= w ? within(2 * remainder) : within(remainder);
}

bool topIsSound(const Plan& plan) {
    return std::none_of(plan.strips.begin(), plan.strips.end(), [](const Strip& s) {
        return s.kind == StripKind::Filler && widest(s) < thinnestFiller;
    });
}

std::vector<LandingChange> landingChanges(const LandingCase& from) {
    std::vector<LandingChange> changes;
    const int steps = static_cast<int>(std::ceil(from.coverWidth / grid));
    for (int planed = 0; planed <= planedSteps; ++planed) {
        const double w = from.coverWidth - 0.1 * planed;
        for (int i = -steps; i <= steps; ++i) {
            const double shift = i * grid;
            if ((shift < 0 && !from.upward) || from.above + shift < 0)
                continue;
            const double top = wrapped(from.above + shift, w);
            if (top > nothing && top < thinnestFiller && top < w - nothing)
                continue;
            if (landsWell(wrapped(from.below - shift, w), w, from.wanted, from.joinable))
                changes.push_back({shift, 0.1 * planed});
        }
    }
    const auto cost = [](const LandingChange& c) { return std::abs(c.shift) + shiftPerPlaned * c.planed; };
    std::stable_sort(changes.begin(), changes.end(), [&](const LandingChange& a, const LandingChange& b) {
        return cost(a) < cost(b);
    });
    return changes;
}

} // namespace sheerlay::core

#include "core/planking/neck_findings.hpp"

#include "core/units/both_units.hpp"
#include "core/words/say.hpp"

#include <algorithm>

namespace sheerlay::core {
namespace {

constexpr double thinnestNeck = 3.0; // mm; common practice, no source: thinner cedar breaks in the hand
constexpr double tableGrain = 0.5;   // mm, no width is known better
constexpr double wider = 2.0;        // mm toward both ends, else it is a piece that runs out to a point

/// The thinnest place between two wider ones; null for none.
const StripSample* neckOf(const Strip& strip) {
    const StripSample* neck = nullptr;
    double before = 0.0;
    for (std::size_t i = 0; i < strip.samples.size(); ++i) {
        const StripSample& here = strip.samples[i];
        before = std::max(before, here.width);
        if (here.width >= thinnestNeck || before < here.width + wider || (neck && neck->width <= here.width))
            continue;
        if (std::any_of(strip.samples.begin() + static_cast<std::ptrdiff_t>(i),
                        strip.samples.end(),
                        [&](const StripSample& after) { return after.width >= here.width + wider; }))
            neck = &here;
    }
    return neck;
}

} // namespace

void findNecks(Plan& plan) {
    for (const Strip& strip : plan.strips)
        if (strip.side != Side::Port)
            if (const StripSample* neck = neckOf(strip))
                plan.findings.push_back(
                    {Level::Caution,
                     "thin-neck",
                     strip.id,
                     neck->x,
                     say("This piece is only {} wide there and wider toward both ends: it breaks there when "
                         "it is bent. Cut it in two at that place, or move the start or the sheer so that it "
                         "stays wider.",
                         bothUnitsWithin(neck->width, tableGrain))});
}

} // namespace sheerlay::core

#include "core/fairness/fairness_findings.hpp"

#include "core/units/both_units.hpp"

#include <algorithm>
#include <cmath>
#include <string>

namespace sheerlay::core {

std::vector<Finding> fairnessFindings(const std::vector<StationBump>& bumps) {
    std::vector<Finding> findings;
    for (const StationBump& b : bumps) {
        if (!b.unfair)
            continue;
        const std::string size = bothUnits(std::abs(b.bump));
        std::string text =
            "The section at x " + b.station + " lies about " + size + (b.bump > 0 ? " outside" : " inside") +
            " the fair lines through the other stations, give or take " + bothUnits(std::max(1.0, b.spread));
        if (b.rival)
            text += "; that the one at x " + bumps[*b.rival].station + " lies " +
                    (b.bump > 0 ? "inside" : "outside") + " would explain it nearly as well";
        text +=
            ". Look at this station's numbers and its x before you cut the mould; if they stand, a batten "
            "over the moulds will show it.";
        findings.push_back({Level::Caution, "unfair-station", std::nullopt, b.x, text});
    }
    return findings;
}

} // namespace sheerlay::core

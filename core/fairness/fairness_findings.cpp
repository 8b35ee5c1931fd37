#include "core/fairness/fairness_findings.hpp"

#include "core/units/both_units.hpp"
#include "core/words/say.hpp"

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
        const std::string spread = bothUnits(std::max(1.0, b.spread));
        const std::string lies = b.bump > 0 ? say("The section at x {} lies about {} outside the fair lines "
                                                  "through the other stations, give or take {}",
                                                  b.station,
                                                  size,
                                                  spread)
                                            : say("The section at x {} lies about {} inside the fair lines "
                                                  "through the other stations, give or take {}",
                                                  b.station,
                                                  size,
                                                  spread);
        const std::string instead =
            !b.rival     ? lies
            : b.bump > 0 ? say("{}; that the one at x {} lies inside would explain it nearly as well",
                               lies,
                               bumps[*b.rival].station)
                         : say("{}; that the one at x {} lies outside would explain it nearly as well",
                               lies,
                               bumps[*b.rival].station);
        const std::string text = say("{}. Look at this station's numbers and its x before you cut the mould; "
                                     "if they stand, a batten over the moulds will show it.",
                                     instead);
        findings.push_back({Level::Caution, "unfair-station", std::nullopt, b.x, text});
    }
    return findings;
}

} // namespace sheerlay::core

#pragma once

#include "core/hull/hull.hpp"
#include "core/project/project.hpp"
#include "geometry/expected.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// How far one station of the table, taken as a whole, stands out of the fair surface through all others:
/// what a batten over its neighbours would show, in numbers.
struct StationBump {
    std::string station; ///< as the table names it
    double x = 0.0;      ///< mm from the bow
    double bump = 0.0;   ///< mm along the section's normal, + too full
    double spread = 0.0; ///< mm, one standard deviation of `bump` from the table's rounding alone
    bool judged = false; ///< amidships, with two stations on both sides: elsewhere true shape looks alike
    bool unfair = false; ///< judged, at least leastBump and leastSpreads of its spread
    /// Index of a neighbour that, as much the other way, would explain it nearly as well.
    std::optional<std::size_t> rival;
    [[nodiscard]] double spreads() const { return spread > 0.0 ? bump / spread : 0.0; }
};

inline constexpr double leastBump = 2.0;    ///< mm
inline constexpr double leastSpreads = 2.5; ///< of StationBump::spread

/// Score test of every station: all its points but the keel's moved outward together, against what the fair
/// surface through the rest leaves over, at a fixed weight of fairness. Where a station is unfair its
/// neighbours are weighed again with it allowed for, so that one bump is told once. Numbers that the loft
/// sets aside as misprints do not count.
/// @return one per station of the table, or in words why there is no fit
/// @accuracy  tests/core/fairness/station_bumps_test.cpp: humps of 3 mm sized within their spread
/// @source table_checks.md section 4; its thresholds come from one hull and were tried here on four
[[nodiscard]] Expected<std::vector<StationBump>, std::string> stationBumps(const Project& project,
                                                                           const LoftedHull& hull);

} // namespace sheerlay::core

#pragma once

#include "core/project/project.hpp"

#include <cstddef>
#include <vector>

namespace sheerlay::core {

/// A station that gives nothing between its lowest point and the keel over much of its girth, and what a
/// section that is round there leaves open: at the leanest it runs straight, at the fullest it goes on as it
/// came until it is level with the keel, and then along the level.
struct OpenBottom {
    std::size_t station = 0; ///< index into HullTable::stations
    double part = 0.0;       ///< of the station's girth that is open, by chords
    double girth = 0.0;      ///< mm, by how much the two differ
    double area = 0.0;       ///< mm2 of half section between them
};

inline constexpr double mostOpen = 0.30; ///< of the girth; more is asked about

/// Every such station, bow to stern; those without a keel of their own are passed over, as are V sections,
/// where the two are the same.
/// @source table_checks.md section 1
[[nodiscard]] std::vector<OpenBottom> openBottoms(const HullTable& table);

/// Volume between the leanest and the fullest bottom over the whole boat, both sides, mm3; straight between
/// stations, nothing where a station is not open.
[[nodiscard]] double openVolume(const HullTable& table, const std::vector<OpenBottom>& open);

} // namespace sheerlay::core

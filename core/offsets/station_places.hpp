#pragma once

#include "core/offsets/table_reading.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// One station of a table: where its cells are, what it is called and where it stands.
struct StationPlace {
    std::size_t place = 0;   ///< column or row of the grid
    std::string name;        ///< as in the table
    double x = 0.0;          ///< mm, in the table's own datum
    std::string printedX;    ///< empty where it was reckoned
    double resolution = 0.0; ///< mm, of the cell it was read from
};

/// The stations of a table in the order of the table, and whether one end stands for both.
struct StationPlaces {
    std::vector<StationPlace> stations;
    std::optional<double> fold; ///< mm: x about which the table is unfolded
};

/// "3", "3 1/2", "St. 3": the station's number; none for "X" or "bow".
[[nodiscard]] std::optional<double> stationNumber(std::string_view name);

/// Finds the stations and where they stand: by a line of positions, by names that are lengths, or by their
/// numbers and the spacing the builder gave.
/// @return  the stations, or what is missing
[[nodiscard]] Expected<StationPlaces, std::vector<FileMessage>>
stationPlaces(const TurnedGrid& grid,
              const TableReading& reading,
              const TableCorrections& corrections,
              const std::string& file);

} // namespace sheerlay::core

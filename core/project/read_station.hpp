#pragma once

#include "core/project/table_view.hpp"

#include <limits>
#include <string>
#include <vector>

namespace sheerlay::core {

/// A station with what the checks need to know about how it was written.
struct ReadStation {
    Station station;
    std::string path; ///< "hull.station[3]"; stations and points are counted from 1
    int xLine = 0;
    bool hasX = false;
    bool hasSheer = false;
    bool knuckleWritten = false;                             ///< likewise of the knuckle
    bool keelWritten = false;                                ///< there is a keel key, readable or not
    std::vector<std::string> pointKeys;                      ///< as many as station.points
    double finest = std::numeric_limits<double>::infinity(); ///< mm, the finest digit of its offsets
};

[[nodiscard]] ReadStation readStation(TableView view, Reading& reading);

} // namespace sheerlay::core

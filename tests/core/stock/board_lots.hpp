#pragma once

#include "core/project/stock.hpp"
#include "core/units/length.hpp"

#include <numeric>
#include <string>
#include <utility>
#include <vector>

namespace sheerlay::test {

/// Lot "A" of finished 1x6, as many as are needed.
inline core::BoardLot lotOf(double feet, const std::string& wood = "western-redcedar") {
    core::BoardLot lot;
    lot.name = "A";
    lot.wood = wood;
    lot.thickness = 0.75 * core::mmPerInch;
    lot.width = 5.5 * core::mmPerInch;
    lot.length = feet * core::mmPerFoot;
    lot.chargedThickness = core::mmPerInch;
    return lot;
}

inline std::string all(const std::vector<std::string>& texts) {
    return std::accumulate(texts.begin(),
                           texts.end(),
                           std::string(),
                           [](std::string sum, const std::string& t) { return std::move(sum) + t + "\n"; });
}

} // namespace sheerlay::test

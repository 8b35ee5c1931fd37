#pragma once

#include "core/project/table_view.hpp"

#include <string_view>

namespace sheerlay::core {

/// Bounds that tell a slip of units from what a builder means, mm.
struct LengthRange {
    double least = 0.0;
    double most = 0.0;
};

/// Reads a length into `value` where the key is there and what it says lies in the range; else reports it and
/// leaves `value` alone. Without known units a plain number is taken as it is.
void takeLength(
    double& value, TableView& view, std::string_view key, Need need, LengthRange range, Reading& reading);

} // namespace sheerlay::core

#pragma once

#include "core/project/table_view.hpp"

#include <optional>
#include <string_view>

namespace sheerlay::core {

/// Bounds of a plain number, and what it is: "a slope, such as 8".
struct NumberRange {
    double least = 0.0;
    double most = 0.0;
    std::string_view form;
};

/// A number that need not be there. What is none, or lies outside the range, is reported with what was found
/// and what would do.
[[nodiscard]] std::optional<double>
rangedNumber(TableView& view, std::string_view key, const NumberRange& range, Reading& reading);

/// The same for what is counted: a part of one is reported too.
[[nodiscard]] std::optional<int>
rangedCount(TableView& view, std::string_view key, const NumberRange& range, Reading& reading);

} // namespace sheerlay::core

#pragma once

#include <array>
#include <cmath>
#include <cstddef>
#include <string>
#include <string_view>

namespace sheerlay::core {

/// A number as JSON files hold it: so many decimals, 0 to 6, no minus for nothing. Inline, since a plan holds
/// a hundred thousand of them.
[[nodiscard]] inline double rounded(double value, int decimals) noexcept {
    constexpr std::array<double, 7> scales = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6};
    const double scale = scales[static_cast<std::size_t>(decimals)];
    const double r = std::round(value * scale) / scale;
    return r == 0.0 ? 0.0 : r;
}

/// Adds a member to the text of a JSON object that has one already.
/// @param value  JSON text
/// @throws std::invalid_argument  `object` is no such text
[[nodiscard]] std::string withMember(std::string object, std::string_view key, const std::string& value);

} // namespace sheerlay::core

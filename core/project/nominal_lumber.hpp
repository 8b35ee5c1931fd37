#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>

namespace sheerlay::core {

/// A size of softwood as it is named at the yard, and what it measures surfaced and dry. mm.
struct NominalLumber {
    double chargedThickness = 0.0; ///< the nominal thickness, which board feet are reckoned with
    double thickness = 0.0;
    double width = 0.0;
};

/// "1x6", "5/4 x 8", "2x12": thickness 1, 5/4, 6/4 or 2, width 2 to 12.
/// @return  none for a size the table does not hold
/// @source  American Softwood Lumber Standard, Voluntary Product Standard PS 20, table of finished sizes,
///          dry (19 percent of moisture or less)
[[nodiscard]] std::optional<NominalLumber> nominalLumber(std::string_view size);

/// Sizes that most yards have, in the order they are offered. Each is one that nominalLumber() knows.
/// @source  common practice, no source
inline constexpr std::array<std::string_view, 11> commonLumber{
    "1x4", "1x6", "1x8", "1x10", "1x12", "5/4x4", "5/4x6", "5/4x8", "2x4", "2x6", "2x8"};

/// Place in commonLumber of the size that measures so, to 0.05 mm; none where none does.
[[nodiscard]] std::optional<std::size_t> commonLumberOf(double thickness, double width);

} // namespace sheerlay::core

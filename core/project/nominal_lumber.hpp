#pragma once

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

} // namespace sheerlay::core

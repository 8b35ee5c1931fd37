#pragma once

#include "core/project/project.hpp"
#include "core/units/length.hpp"
#include "geometry/expected.hpp"

#include <string_view>

namespace sheerlay::core {

inline constexpr double kgPerPound = 0.45359237;                ///< exact by definition
inline constexpr double kgPerOunce = kgPerPound / 16;           ///< avoirdupois
inline constexpr double squareMPerSquareYard = 0.9144 * 0.9144; ///< exact by definition
inline constexpr double litresPerGallon = 3.785411784;          ///< US liquid, exact by definition
inline constexpr double squareMPerSquareFoot = 0.3048 * 0.3048; ///< exact by definition
/// g/m2 in an ounce per square yard: 33.906.
inline constexpr double gsmPerOunce = 1000 * kgPerOunce / squareMPerSquareYard;

/// Reads "170 lb", "77 kg", "450 g", "12 oz" or "1 lb 4 oz" as kg; a plain number is kg where plain lengths
/// are mm, lb where they are inches.
[[nodiscard]] Expected<double, LengthError> parseWeight(std::string_view text, Units plain);

/// Reads the weight of cloth, "6 oz" to the square yard or "200 g" to the square metre, as g/m2. Without a
/// unit it is refused: both are in use.
[[nodiscard]] Expected<double, LengthError> parseClothWeight(std::string_view text);

} // namespace sheerlay::core

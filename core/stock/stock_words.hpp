#pragma once

#include "core/project/project.hpp"

#include <string>

namespace sheerlay::core {

/// "western redcedar" for "western-redcedar".
[[nodiscard]] std::string spoken(std::string wood);

/// A board's size: "7/8\" by 5 1/2\" by 12'", "22 by 140 by 3660 mm".
[[nodiscard]] std::string sizeText(const BoardLot& lot, Units units);

/// A long run of strip: "1,019 ft" without the comma, "311 m"; rounded up.
[[nodiscard]] std::string runOfStrip(double millimetres, Units units);

/// A piece to mark out: whole quarters of an inch, or up to the next millimetre; never less than it is.
[[nodiscard]] std::string pieceText(double millimetres, Units units);

/// "8.5 kg (19 lb)" or the pounds first: a tenth below ten, whole above, hundredths below a tenth.
[[nodiscard]] std::string weightText(double kilograms, Units units);

} // namespace sheerlay::core

#pragma once

#include "core/afloat/afloat.hpp"

#include <string>

namespace sheerlay::core {

/// What a builder reads first of covering, weights, how she floats and the fit-out: a line per subject, each
/// ended by a newline; empty where nothing was asked.
[[nodiscard]] std::string toText(const AfterPlanking& after, Units units);

/// Volume of a liquid: "2.4 L" or "81 fl oz (2.4 L)"; below a litre "240 mL".
[[nodiscard]] std::string litresText(double litres, Units units);

/// Two volumes that go together: "8.1 and 2.7 fl oz", "240 mL and 80 mL".
[[nodiscard]] std::string twoLitresText(double one, double other, Units units);

/// Heel, to the whole degree: "34 degrees".
[[nodiscard]] std::string degreesText(double radians);

/// What she carries at most, down to the next 5 kg or 10 lb: "460 kg (1020 lb)".
[[nodiscard]] std::string largestLoadText(double kilograms, Units units);

/// Area, "3.1 m2" or "33 sq ft".
[[nodiscard]] std::string areaText(double squareMillimetres, Units units);

} // namespace sheerlay::core

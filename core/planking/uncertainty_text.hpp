#pragma once

#include "core/planking/plan_uncertainty.hpp"
#include "core/project/project.hpp"

#include <string>

namespace sheerlay::core {

/// What is printed as +/- is this many deviations: true 19 times in 20.
inline constexpr double printedDeviations = 2.0;

/// Two sentences for the builder: by how much the rounding of the table moves the plan's figures, and what
/// that leaves out. Rounded up: edge bend to 0.01 /m, lengths to 1 mm or 1/16 in and above 10 mm to 5 mm or
/// 1/4 in, twist to 1 degree in a metre or half a degree in a foot.
[[nodiscard]] std::string toText(const PlanUncertainty& uncertainty, Units units);

/// A predicted length with no finer step than its +/- allows.
/// @param finest     mm, the step without an uncertainty: 1/16 in and its multiples in inches
/// @param plusMinus  mm, as printed; 0 when it is not known
[[nodiscard]] std::string lengthText(double millimetres, double finest, double plusMinus, Units units);

} // namespace sheerlay::core

#pragma once

#include "core/planking/plan_uncertainty.hpp"
#include "core/project/project.hpp"

#include <string>

namespace sheerlay::core {

/// What is printed as +/- is this many deviations: true 19 times in 20.
inline constexpr double printedDeviations = 2.0;

/// "+/- 0.07 per metre (35 mm over 2 m)", of a deviation in 1/mm; rounded up to 0.01 /m (as all of these:
/// unless it is but a tenth of a step above the one below), its sag as a length is.
[[nodiscard]] std::string edgeBendPlusMinus(double deviation, Units units);
/// "+/- 5 degrees in a metre", "+/- 1.5 degrees in a foot", of a deviation in rad/mm; rounded up to 1 degree
/// in a metre or half a degree in a foot.
[[nodiscard]] std::string twistPlusMinus(double deviation, Units units);
/// "+/- 6 mm", of a deviation in mm; rounded up to 1 mm or 1/16 in, above 10 mm to 5 mm or 1/4 in.
[[nodiscard]] std::string lengthPlusMinus(double deviation, Units units);

/// Two sentences for the builder: by how much the rounding of the table moves the plan's figures, and what
/// that leaves out.
[[nodiscard]] std::string toText(const PlanUncertainty& uncertainty, Units units);

/// A predicted length with no finer step than its +/- allows.
/// @param finest     mm, the step without an uncertainty: 1/16 in and its multiples in inches
/// @param plusMinus  mm, as printed; 0 when it is not known
[[nodiscard]] std::string lengthText(double millimetres, double finest, double plusMinus, Units units);

} // namespace sheerlay::core

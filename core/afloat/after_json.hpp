#pragma once

#include "core/afloat/afloat.hpp"

#include <string>

namespace sheerlay::core {

/// plan.json with the keys "weights", "covering", "glue", "fastenings", "afloat" and "fitout", as far as
/// there is something under them. Lengths mm, areas mm2, weights kg, liquids litres, angles degrees where the
/// key says deg.
/// @param planJson  a JSON object's text
/// @throws std::invalid_argument  it is none
[[nodiscard]] std::string withAfterPlanking(std::string planJson, const AfterPlanking& after);

} // namespace sheerlay::core

#pragma once

#include "core/afloat/afloat.hpp"
#include "core/project/put_aside.hpp"

#include <vector>

namespace sheerlay::core {

/// The same with the findings put aside marked, in the list of all and in each part's own.
[[nodiscard]] AfterPlanking withAsides(AfterPlanking after, const std::vector<PutAside>& asides);

} // namespace sheerlay::core

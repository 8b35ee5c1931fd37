#pragma once

#include "core/afloat/afloat.hpp"
#include "tests/support/planked.hpp"

/// The 16 ft reference canoe with cloth, fittings and two paddlers.
namespace sheerlay::test {

[[nodiscard]] const Planked& canoeToLoad();

[[nodiscard]] core::Project loaded(core::Project project);

} // namespace sheerlay::test

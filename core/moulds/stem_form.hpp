#pragma once

#include "core/hull/hull.hpp"
#include "core/moulds/mould.hpp"

#include <optional>

namespace sheerlay::core {

/// mm from the bow where the centreline has stopped rising toward this end faster than 45 degrees, so that a
/// mould is the better support from there on; none at a transom.
[[nodiscard]] std::optional<double> stemReach(const LoftedHull& hull, End end);

/// The stem form from the head to the far face of a mould.
/// @param against  the mould it stands against
/// @return none where the hull's centreline does not come past that face
[[nodiscard]] std::optional<StemForm>
stemForm(const Project& project, const LoftedHull& hull, End end, const Mould& against);

} // namespace sheerlay::core

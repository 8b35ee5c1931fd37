#pragma once

#include "core/hull/hull.hpp"
#include "core/moulds/mould.hpp"
#include "core/moulds/strongback_plan.hpp"
#include "core/moulds/transom_form.hpp"
#include "geometry/expected.hpp"

#include <string>
#include <vector>

namespace sheerlay::core {

/// Everything the planking is bent over.
struct MouldSet {
    std::vector<Mould> moulds;       ///< bow to stern, at least one
    std::vector<StemForm> stemForms; ///< bow, stern; none at a transom
    std::vector<TransomForm> transoms;
    StrongbackPlan strongback;
    std::vector<std::string> leftOut; ///< stations where no mould stands, and why, in whole sentences
};

/// Moulds at the places the project names, the stem forms between their heads and the first mould whose
/// planking has left the stem, and the strongback they stand on. Moulds within a stem form's reach are sawn
/// as two halves that stand against its sides.
/// @return words for the builder where no mould stands inside the hull
[[nodiscard]] Expected<MouldSet, std::string> mouldsOf(const Project& project, const LoftedHull& hull);

} // namespace sheerlay::core

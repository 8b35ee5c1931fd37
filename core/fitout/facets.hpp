#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"
#include "core/project/finding.hpp"

#include <string>
#include <vector>

namespace sheerlay::core {

/// How far a flat strip stands off the fair surface, at its hardest place.
struct Facet {
    std::string strip;   ///< id; of a mirrored pair the starboard one
    double x = 0.0;      ///< mm from the bow
    double height = 0.0; ///< mm, w^2 kappa / 8: its edges over its middle, or its middle over its edges
    double across = 0.0; ///< 1/mm, the hull's bend across the strip there; + round the hull, - hollow
    double width = 0.0;  ///< mm
    double left =
        0.0; ///< mm of thickness once the outside is planed fair; as much again comes off a fair inside
};

struct Fairing {
    std::vector<Facet> facets; ///< one per strip of starboard and the middle, most to plane first
    std::vector<Finding> findings;
};

/// What planing the outside to a fair surface takes.
/// @accuracy  tests/core/fitout/facets_test.cpp: cylinder and sphere, to 0.005 mm
/// @source    a chord's rise, w^2 kappa / 8
[[nodiscard]] Fairing fairing(const Project& project, const LoftedHull& hull, const Plan& plan);

} // namespace sheerlay::core

#pragma once

#include "core/fitout/fitout.hpp"
#include "core/project/project.hpp"

#include <Eigen/Core>

#include <string>
#include <vector>

namespace sheerlay::core {

/// Screws or bolts of one kind, both sides of the boat.
struct Fastening {
    enum class Kind { Screw, Bolt };

    Kind kind = Kind::Screw;
    std::string what;      ///< what they hold: "gunwales", "front rail of the bow seat", …
    double diameter = 0.0; ///< mm
    double length = 0.0;   ///< mm, of a screw the longest that stays in the wood, of a bolt the least
    int count = 0;
    double mass = 0.0;                                ///< kg, all of them, nuts and washers with them
    Eigen::Vector3d centre = Eigen::Vector3d::Zero(); ///< mm
};

/// A gunwale's screw goes through the inner one and the planking two thirds into the outer one, its head sunk
/// under a plug, unless the project gives its length; a bolt through the inner gunwale, the hanger and the
/// cross piece with its nut below.
/// @source  masses from steel of 7900 kg/m3 (from memory) and these sizes; nut and washers from memory
[[nodiscard]] std::vector<Fastening> planFastenings(const Project& project, const Fitout& fitout);

/// What is wrong with the length that the project gives the gunwales' screws: through the outer one, or less
/// than a third into it (judged). Nothing where it gives none.
[[nodiscard]] std::vector<Finding> checkScrews(const Project& project);

} // namespace sheerlay::core

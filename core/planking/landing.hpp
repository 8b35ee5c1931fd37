#pragma once

#include "core/planking/plan.hpp"
#include "core/project/project.hpp"

#include <array>
#include <vector>

namespace sheerlay::core {

/// What is left for the shutter on one side, mm: the widest of the last pieces, half of a piece over both
/// sides. 0 without a shutter.
[[nodiscard]] double shutterRemainder(const Plan& plan);

/// True when the last piece has the wanted part of a strip's cover width: one plank over both sides, or one
/// on each.
[[nodiscard]] bool
landsWell(double remainder, double coverWidth, const std::array<double, 2>& wanted, bool joinable);

/// True when no piece at the sheer is too thin to be laid (6 mm).
[[nodiscard]] bool topIsSound(const Plan& plan);

/// A small change of the layout.
struct LandingChange {
    double shift = 0.0;  ///< mm the start moves toward the keel
    double planed = 0.0; ///< mm taken off every strip's cover width
};

/// What the change is made from.
struct LandingCase {
    double below = 0.0; ///< mm of girth from the start to the centreline, amidships
    double above = 0.0; ///< mm of girth from the sheer to the start, amidships
    double coverWidth = 0.0;
    std::array<double, 2> wanted{};
    bool joinable = false; ///< a lens on both sides together may be one plank
    bool upward = false;   ///< the start may move toward the sheer too
};

/// Changes that by midship arithmetic bring the shutter to the wanted width, least first: moving the start by
/// d moves the remainder by -d; 0.1 mm off every strip counts as 4 mm of shift; what is left at the sheer
/// must be nothing or at least 6 mm.
/// @source closing.md sections 3 and 5
[[nodiscard]] std::vector<LandingChange> landingChanges(const LandingCase& from);

} // namespace sheerlay::core

#pragma once

#include "core/planking/plan.hpp"
#include "core/stock/cutting_problem.hpp"

#include <optional>
#include <vector>

namespace sheerlay::core {

/// Parts of a mould bay where a scarf may have its middle: from one third of the bay to two thirds.
inline constexpr double jointZoneFrom = 1.0 / 3.0, jointZoneTo = 2.0 / 3.0;

/// The bay between stationX[i] and stationX[i + 1] that holds x; none fore of the first and aft of the last.
/// @param stationX  mm from the bow, rising
[[nodiscard]] std::optional<int> bayOf(const std::vector<double>& stationX, double x);

/// mm along the strip's middle from its bow end to where it first passes x; none where it doesn't.
[[nodiscard]] std::optional<double> alongAt(const Strip& strip, double x);

/// mm the strip is cut beyond the bow end of its middle: what its end needs, and half of what is left over.
[[nodiscard]] double bowAllowance(const Strip& strip);

/// mm between the end of a scarf and a stealer's nib: the notch is cut in sound wood.
inline constexpr double nibToScarf = 30.0;

/// mm from the bow of the nibs that a strip has beside it or ends in: those of its row on its side, and of
/// the row below, whose stealers lie against its lower edge.
[[nodiscard]] std::vector<double> nibsAt(const Strip& strip, const Plan& plan);

/// Which rule a unit had to give up so that it can be cut at all: its hard bends, or these and the nibs.
enum class RuleKept { All, NotHardBends, NotNibs };

/// A unit, and where its joint places lie along the boat.
struct PlacedUnit {
    CutUnit unit;
    std::vector<double> x; ///< mm from the bow, per joint place
};

/// A unit with the joint places that the rules leave it: in every bay five, evenly from one third to two
/// thirds of it; none in the bays where one of its strips has its hardest edge bend, twist or bend over the
/// moulds, and none whose scarf would come nearer to a nib than nibToScarf.
/// @param strips  one, or a strip and its mirror image
/// @param nibs    mm from the bow, see nibsAt()
/// @param scarf   mm, length of a scarf
/// @param rules   what of this is left out
[[nodiscard]] PlacedUnit placeJoints(const std::vector<const Strip*>& strips,
                                     const std::vector<double>& stationX,
                                     const std::vector<double>& nibs,
                                     double scarf,
                                     RuleKept rules);

/// Whether joints of two strips must lie in different bays: rows above and below each other on one side, a
/// stealer and the strip it is let in to; of staggered sides also the two strips of a row.
[[nodiscard]] bool areNeighbours(const Strip& a, const Strip& b, bool stagger);

} // namespace sheerlay::core

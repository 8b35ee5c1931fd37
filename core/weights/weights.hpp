#pragma once

#include "core/covering/covering.hpp"
#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"
#include "core/project/finding.hpp"
#include "core/project/project.hpp"

#include <Eigen/Core>

#include <string>
#include <vector>

namespace sheerlay::core {

/// A part of the boat with its weight and place.
struct WeightItem {
    std::string name;       ///< "planking", "gunwales", …
    double mass = 0.0;      ///< kg
    double plusMinus = 0.0; ///< kg, how far it may be off
    Eigen::Vector3d centre =
        Eigen::Vector3d::Zero(); ///< mm from the bow, + to starboard, above the base line
};

/// What she weighs, part by part.
struct WeightSheet {
    std::vector<WeightItem> items;
    double mass = 0.0;      ///< kg
    double plusMinus = 0.0; ///< kg, root of the sum of squares
    Eigen::Vector3d centre = Eigen::Vector3d::Zero();
    bool weighed = false; ///< the mass is the builder's own; the parts tell only where its centre lies
    std::vector<Finding> findings;
};

/// Woods differ by about a tenth from board to board (from memory).
inline constexpr double woodSpread = 0.10;
/// Resin on the boat differs by about a fifth from hand to hand (judged; the published all-in ratio runs from
/// 2 to 3).
inline constexpr double resinSpread = 0.20;
/// A part whose weight the builder gives, a twentieth (judged).
inline constexpr double givenSpread = 0.05;

/// A short length of one strip.
struct PlankingPiece {
    double mass = 0.0; ///< kg
    Eigen::Vector3d centre = Eigen::Vector3d::Zero();
};

/// The planking piece by piece, between a strip's samples, at 12 percent moisture.
[[nodiscard]] std::vector<PlankingPiece> plankingPieces(const Project& project, const Plan& plan);

/// kg/m3 of the plywood of bulkheads, decks and moulds; from memory.
inline constexpr double plywoodDensity = 550.0;

/// Planking, every strip by its own wood.
[[nodiscard]] WeightItem plankingWeight(const Project& project, const Plan& plan);

/// A part or a load as the file gives it, in the boat's frame.
[[nodiscard]] WeightItem placedItem(const PlacedWeight& placed, const LoftedHull& hull);

/// Sums parts. Where the boat was weighed that is her mass; the parts keep theirs and tell her centre.
[[nodiscard]] WeightSheet sumWeights(std::vector<WeightItem> items,
                                     std::optional<double> weighed = std::nullopt);

/// The boat: planking, covering, the parts of [afloat], and `more` (what the fit-out weighs).
[[nodiscard]] WeightSheet weighBoat(const Project& project,
                                    const LoftedHull& hull,
                                    const Plan& plan,
                                    const std::optional<CoveringPlan>& covering,
                                    const std::vector<WeightItem>& more = {});

} // namespace sheerlay::core

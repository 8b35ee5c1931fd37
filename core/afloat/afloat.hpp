#pragma once

#include "core/afloat/equilibrium.hpp"
#include "core/afloat/righting.hpp"
#include "core/covering/covering.hpp"
#include "core/covering/glue.hpp"
#include "core/fitout/fastenings.hpp"
#include "core/fitout/fitout.hpp"
#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"
#include "core/project/project.hpp"
#include "core/weights/mould_load.hpp"
#include "core/weights/weights.hpp"

#include <optional>
#include <vector>

namespace sheerlay::core {

/// What she displaces on an even keel at one draught.
struct FloatLevel {
    double draught = 0.0; ///< mm
    double mass = 0.0;    ///< kg
};

/// Form of the part under water at rest.
struct FormFigures {
    double block = 0.0;      ///< volume over length, beam and draught
    double prismatic = 0.0;  ///< volume over length and largest section
    double midship = 0.0;    ///< largest section over beam and draught
    double waterplane = 0.0; ///< its area over length and beam
    double massPerMm = 0.0;  ///< kg that sink her one mm
    double trimByEnds = 0.0; ///< mm the stern is deeper than the bow over the water line's length
};

/// The boat afloat as the project loads her. Frame and signs as in WaterPlane.
struct AfloatReport {
    Burden boat, load;             ///< the boat alone, and everything in her
    std::vector<WeightItem> loads; ///< what is in her, one by one
    double density = 1000.0;
    std::optional<Rest> rest; ///< none where she is not afloat with this load: findings say why
    FormFigures form;
    std::optional<RightingCurve> toStarboard, toPort; ///< to port only where it differs
    std::vector<FloatLevel> levels;                   ///< rising, from dry to the sheer's lowest point
    double freeboard = 0.0;                           ///< mm asked for at the largest load
    double largestLoad = 0.0; ///< kg beside the boat, placed so that she floats level; 0 where there is none
    std::vector<Finding> findings;
    std::vector<Eigen::Vector3d> sheer, profile; ///< mm, of the outside, for pictures
};

/// Floats the boat of that weight with the loads of [afloat].
/// @return  none where the project asks nothing of her afloat
[[nodiscard]] std::optional<AfloatReport> floatBoat(const Project& project,
                                                    const LoftedHull& hull,
                                                    const TrimmedSurface& outside,
                                                    const WeightSheet& weights);

/// All that follows from planking, as far as the project asks for it.
struct AfterPlanking {
    std::optional<Fitout> fitout;         ///< where [fitout] is given
    std::vector<Fastening> fastenings;    ///< of the fit-out
    std::optional<CoveringPlan> covering; ///< where [covering] is given
    std::vector<GlueUse> glue;            ///< of strips and fit-out
    std::optional<WeightSheet> weights;   ///< where any of the others is given
    std::optional<OnMoulds> onMoulds;     ///< beside the weights, where moulds stand inside the hull
    std::optional<AfloatReport> afloat;   ///< where [afloat] is given
    std::vector<Finding> findings;        ///< of all four

    [[nodiscard]] bool empty() const noexcept { return !weights; }
};

/// A pure function of what it is given. The boat's weight counts the fit-out that the project asks for; a
/// yoke without a place goes where she balances by these weights.
/// @param more  parts beyond those of the file and the fit-out
[[nodiscard]] AfterPlanking afterPlanking(const Project& project,
                                          const LoftedHull& hull,
                                          const Plan& plan,
                                          const std::vector<WeightItem>& more = {});

} // namespace sheerlay::core

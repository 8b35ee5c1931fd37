#pragma once

#include "core/afloat/equilibrium.hpp"

#include <optional>
#include <vector>

namespace sheerlay::core {

/// Righting arm at one heel, the boat free to trim.
struct RightingArm {
    double heel = 0.0; ///< rad, as in WaterPlane
    double arm = 0.0;  ///< mm, + turns her back toward upright from this side
    double trim = 0.0; ///< rad
};

/// Righting arms from upright to the heel at which water comes over the sheer, or to 90 degrees.
struct RightingCurve {
    double side = 1.0;             ///< +1 heeled to starboard, -1 to port
    std::vector<RightingArm> arms; ///< upright first; the last stands at the heel of downflooding
    bool floods = false;           ///< water comes over the sheer at the last
    RightingArm largest;
    /// Heel at which the arm falls to nothing before water comes in, rad; none where it does not.
    std::optional<double> vanishes;
};

/// @param side      +1 or -1
/// @param upright   level and trim to start from
/// @param stepHeel  rad
/// @accuracy  tests/core/afloat/righting_test.cpp: box barge and wedge in closed form to 30 degrees
[[nodiscard]] RightingCurve rightingCurve(const FloatBody& body,
                                          const Burden& burden,
                                          double density,
                                          double side,
                                          const WaterPlane& upright,
                                          double stepHeel = 0.0349065850398866);

} // namespace sheerlay::core

#include "core/afloat/righting.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sheerlay::core {

RightingCurve rightingCurve(const FloatBody& body,
                            const Burden& burden,
                            double density,
                            double side,
                            const WaterPlane& upright,
                            double stepHeel) {
    RightingCurve curve;
    curve.side = side;
    WaterPlane water = upright;
    const auto armAt = [&](double heel) {
        water = balancedAt(body, burden, density, side * heel, water);
        const double arm = side * water.across().dot(submerged(body, water).centre - burden.centre);
        return RightingArm{side * heel, arm, water.trim};
    };
    const auto freeboardAt = [&](double heel) {
        water = balancedAt(body, burden, density, side * heel, water);
        return leastFreeboard(body, water).height;
    };
    // by false position, the kept end's value halved; the heel it ends at is still dry
    const auto floodsBetween = [&](double dry, double wet, double wetFreeboard) {
        constexpr double close = 1e-6; // mm of freeboard
        double dryFreeboard = freeboardAt(dry), kept = 0.0;
        for (int i = 0; i < 40 && wet - dry > 1e-12; ++i) {
            const double heel = dry + (wet - dry) * dryFreeboard / (dryFreeboard - wetFreeboard);
            const double freeboard = freeboardAt(heel);
            if (freeboard > 0.0) {
                dry = heel;
                dryFreeboard = freeboard;
                if (freeboard < close)
                    break;
                wetFreeboard *= kept > 0.0 ? 0.5 : 1.0;
                kept = 1.0;
            } else {
                wet = heel;
                wetFreeboard = freeboard;
                dryFreeboard *= kept < 0.0 ? 0.5 : 1.0;
                kept = -1.0;
            }
        }
        return dry;
    };
    const double end = std::numbers::pi / 2;
    double heel = 0.0;
    if (freeboardAt(0.0) <= 0.0) {
        curve.floods = true;
        return curve;
    }
    curve.arms.push_back(armAt(0.0));
    while (heel < end - 1e-9 && !curve.floods) {
        double next = std::min(heel + stepHeel, end);
        if (const double freeboard = freeboardAt(next); freeboard <= 0.0) {
            next = floodsBetween(heel, next, freeboard);
            curve.floods = true;
        }
        curve.arms.push_back(armAt(next));
        const RightingArm &a = curve.arms[curve.arms.size() - 2], &b = curve.arms.back();
        if (!curve.vanishes && a.arm > 0.0 && b.arm <= 0.0)
            curve.vanishes =
                std::abs(a.heel) + (std::abs(b.heel) - std::abs(a.heel)) * a.arm / (a.arm - b.arm);
        heel = next;
    }
    curve.largest =
        *std::max_element(curve.arms.begin(),
                          curve.arms.end(),
                          [](const RightingArm& a, const RightingArm& b) { return a.arm < b.arm; });
    return curve;
}

} // namespace sheerlay::core

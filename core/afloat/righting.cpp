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
    const auto floodedAt = [&](double heel) {
        water = balancedAt(body, burden, density, side * heel, water);
        return leastFreeboard(body, water).height <= 0.0;
    };
    const double end = std::numbers::pi / 2;
    double heel = 0.0;
    if (floodedAt(0.0)) {
        curve.floods = true;
        return curve;
    }
    curve.arms.push_back(armAt(0.0));
    while (heel < end - 1e-9 && !curve.floods) {
        double next = std::min(heel + stepHeel, end);
        if (floodedAt(next)) {
            double dry = heel;
            for (int i = 0; i < 30; ++i) {
                const double middle = 0.5 * (dry + next);
                (floodedAt(middle) ? next : dry) = middle;
            }
            next = dry;
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

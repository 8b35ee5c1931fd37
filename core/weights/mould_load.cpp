#include "core/weights/mould_load.hpp"

#include "core/fitout/rings.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {

namespace {

using Eigen::Vector3d;

constexpr double cubicMm = 1e-9; // m3

/// Rests a mass at x on the moulds to either side of it.
void rest(std::vector<MouldLoad>& loads, double x, double mass) {
    const auto after = std::ranges::find_if(loads, [x](const MouldLoad& m) { return m.x > x; });
    if (after == loads.begin()) {
        loads.front().hull += mass;
    } else if (after == loads.end()) {
        loads.back().hull += mass;
    } else {
        MouldLoad &a = *(after - 1), &b = *after;
        const double part = (x - a.x) / (b.x - a.x);
        a.hull += (1 - part) * mass;
        b.hull += part * mass;
    }
}

void add(WeightItem& sum, double mass, double plusMinus, const Vector3d& centre) {
    sum.mass += mass;
    sum.centre += mass * centre;
    sum.plusMinus = std::hypot(sum.plusMinus, plusMinus);
}

} // namespace

OnMoulds weighOnMoulds(const Project& project,
                       const Plan& plan,
                       const MouldSet& moulds,
                       const std::vector<GlueUse>& glue,
                       const std::optional<CoveringPlan>& covering) {
    OnMoulds on;
    for (const Mould& m : moulds.moulds) {
        const double board = 2 * ringArea(m.outline) * m.thickness * plywoodDensity * cubicMm;
        on.loads.push_back({m.name, m.x, 0.0, board});
        on.boards += board;
    }
    on.hull.name = "hull on her moulds";
    const WeightItem planking = plankingWeight(project, plan);
    add(on.hull, planking.mass, planking.plusMinus, planking.centre);
    for (const GlueUse& g : glue)
        if (!g.epoxy) // the strips' own
            add(on.hull, g.mass, 0.3 * g.mass, g.centre);
    if (covering)
        for (const FaceCovering& f : covering->faces)
            if (f.name == "outside")
                add(on.hull, f.glassMass + f.resinMass, resinSpread * f.resinMass, f.face.centre);
    if (!(on.hull.mass > 0.0))
        return on;
    on.hull.centre /= on.hull.mass;
    if (!on.loads.empty()) // glue and covering lie as the planking does
        for (const PlankingPiece& piece : plankingPieces(project, plan))
            rest(on.loads, piece.centre.x(), piece.mass * on.hull.mass / planking.mass);
    return on;
}

} // namespace sheerlay::core

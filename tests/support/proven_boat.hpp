#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/planking.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/plan_proof.hpp"
#include "tests/support/random_boat.hpp"

#include <algorithm>

namespace sheerlay::test {

/// What a run of random boats came to.
struct BoatCount {
    int boats = 0, planked = 0, whole = 0;
    PlanFigures worst;
};

/// Planks a random boat and checks what must hold on any; a refusal must be in words.
inline void proveBoat(unsigned seed, BoatCount& count) {
    INFO("seed " << seed);
    const auto project = randomBoat(seed);
    if (!project)
        return;
    ++count.boats;
    const auto hull = core::loft(*project);
    if (!hull) {
        CHECK_FALSE(hull.error().text.empty());
        return;
    }
    const auto plan = core::plank(*project, *hull);
    if (!plan) {
        CHECK_FALSE(plan.error().text.empty());
        return;
    }
    ++count.planked;
    const PlanProof proof(*project, *hull, *plan);
    for (const std::string& breach : proof.breaches) {
        UNSCOPED_INFO(breach);
    }
    CHECK(proof.breaches.empty());
    count.whole += proof.whole;
    PlanFigures& w = count.worst;
    w.offNeighbour = std::max(w.offNeighbour, proof.figures.offNeighbour);
    w.flatEdge = std::max(w.flatEdge, proof.figures.flatEdge);
    w.areaOff = std::max(w.areaOff, std::abs(proof.figures.areaOff));
}

} // namespace sheerlay::test

#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/measured_row.hpp"
#include "core/planking/plan.hpp"
#include "core/project/project.hpp"
#include "geometry/expected.hpp"

#include <functional>
#include <stop_token>
#include <string>

namespace sheerlay::core {

/// Why there is no plan, in words for the builder.
struct PlanError {
    std::string text;
};

/// Who watches the planking, and may stop it.
struct PlankingWatch {
    /// Called from worker threads with the part of a search for the easiest start that is done, 0 to 1; may
    /// be empty.
    std::function<void(double)> progress;
    std::stop_token stop;
};

/// Lays every strip of the boat on the lofted hull: rows as parallels of the start line, toward the keel and
/// toward the sheer, trimmed at centreplane, sheer and transom. A pure function of its arguments.
/// @accuracy  tests/core/planking_test.cpp: formula canoe's rows; tests/geometry: exact surfaces
/// @param measured  the rows below it start from where its edge was found, and cover what strips really do;
/// null when nothing was measured. A bottom planked by itself is split off anew below it; a row of that
/// bottom itself changes nothing, its strips lie by the centreline.
/// @return an error that says so when it was stopped
[[nodiscard]] Expected<Plan, PlanError> plank(const Project& project,
                                              const LoftedHull& hull,
                                              const MeasuredRow* measured = nullptr,
                                              const PlankingWatch& watch = {});

} // namespace sheerlay::core

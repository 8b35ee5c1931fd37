#pragma once

#include "core/planking/landing.hpp"
#include "core/planking/plan.hpp"
#include "core/planking/split_bottom.hpp"
#include "core/planking/start_search.hpp"
#include "core/project/project.hpp"

namespace sheerlay::core {

/// Says which start line the planking goes from, as a search chose it and small moves left it, and what it
/// gains over the plain sheer.
void tellStart(const std::vector<StartCandidate>& candidates, Plan& plan);

/// Says what was changed for the shutter's sake, and what became of the shutter.
/// @param before, after  mm left on one side
void tellLanding(const LandingChange& change, double before, double after, Plan& plan);

/// Says that the start was moved for the sake of the pieces at the sheer. @param shift  mm toward the keel
void tellTop(double shift, Plan& plan);

/// Says why no tapers were found on one side of the start, and that the rows are laid at full width.
/// @param where  "below" or "above" the start
void tellNoTapers(const std::string& where, const std::string& why, Plan& plan);

/// Says where the bottom is split off, or that it can't be.
void tellSplit(const std::optional<SplitChoice>& split, Plan& plan);

/// Adds what the builder should know about the finished plan and sorts all findings, heaviest first.
/// @param moveForTop  mm toward the keel that the start would have to move for no piece at the sheer to be
/// thin
void findInPlan(const Project& project, Plan& plan, const std::optional<double>& moveForTop = {});

/// Findings of the loft and of the plan together, heaviest first; of those of equal weight the loft's first.
[[nodiscard]] std::vector<Finding> allFindings(const LoftedHull& hull, const Plan& plan);

} // namespace sheerlay::core

#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"
#include "core/project/project.hpp"

#include <optional>
#include <stop_token>
#include <vector>

namespace sheerlay::core {

/// What can be done about a plan that breaks down, in the order it is tried.
enum class Remedy { Taper, MoveStart, MoveStartAndTaper, NarrowerStrips };

/// One remedy, planked and judged by what came out.
struct RemedyTried {
    Remedy remedy = Remedy::Taper;
    StartLine start;
    double coverWidth = 0.0; ///< mm
    double limit = 0.0;      ///< 1/mm, edge bend allowed: narrower strips bear more
    double worst = 0.0;      ///< 1/mm, largest edge bend of any strip
    int touched = 0;         ///< rows a side that are planed narrower
    bool covers = false;     ///< no rows fold and the hull is covered

    /// True where the boat can be built so.
    [[nodiscard]] bool helps() const noexcept { return covers && worst <= 1.02 * limit; }
};

/// True where rows fold over themselves, leave hull uncovered, or must be bent edgewise harder than both the
/// wood and two people with clamps allow.
[[nodiscard]] bool breaksDown(const Plan& plan);

/// Tries the remedies one after another until one helps: tapers from the same start, an easier start line,
/// both, and strips of half the width with both.
/// @param plan  of this project and hull; it breaks down
/// @return what was tried to the end, the last one first to help if any does; fewer after a stop, which ends
/// the planking of a remedy too
/// @source closing.md section 7
[[nodiscard]] std::vector<RemedyTried>
findRemedy(const Project& project, const LoftedHull& hull, const Plan& plan, std::stop_token stop = {});

/// The finding that tells the builder what would do, with figures; `stop` where nothing tried does.
[[nodiscard]] Finding tellRemedy(const std::vector<RemedyTried>& tried);

/// Where the plan breaks down, looks for a remedy and adds the finding; seconds of work then, none else.
void proposeRemedy(const Project& project, const LoftedHull& hull, Plan& plan, std::stop_token stop = {});

} // namespace sheerlay::core

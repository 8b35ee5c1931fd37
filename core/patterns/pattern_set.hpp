#pragma once

#include "core/fitout/fitout.hpp"
#include "core/patterns/nest_sheets.hpp"
#include "core/patterns/pattern.hpp"
#include "core/planking/plan.hpp"
#include "geometry/expected.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// All that is sawn or planed to an outline, at true scale.
struct PatternSet {
    MouldSet frame;              ///< what the moulds' patterns show
    std::vector<Pattern> moulds; ///< stem forms and transoms among them
    std::vector<Pattern> strips; ///< pointed strips, stealers, shutters
    std::vector<Pattern> parts;  ///< bulkheads, decks, seats, thwarts, yoke
    NestedBoards boards;         ///< the moulds on sheets of plywood
    std::vector<Finding> findings;
};

/// A pure function of what it is given.
/// @param units   of what is written on them
/// @param fitout  whose parts are drawn; none: no parts
/// @return words for the builder where the hull gives no moulds
[[nodiscard]] Expected<PatternSet, std::string>
patternSet(const Project& project,
           const LoftedHull& hull,
           const Plan& plan,
           Units units,
           const std::optional<Fitout>& fitout = std::nullopt);

/// That a hull gives no moulds, and why; a stop.
[[nodiscard]] Finding withoutMoulds(const std::string& why);

/// Every pattern in tiles of one paper.
[[nodiscard]] std::vector<Sheet>
tiledPages(const std::vector<Pattern>& patterns, PageSize size, const std::string& boat);

/// Every pattern on roll paper, whole where it is not longer than that.
[[nodiscard]] std::vector<Sheet> rollPages(const std::vector<Pattern>& patterns, const std::string& boat);

} // namespace sheerlay::core

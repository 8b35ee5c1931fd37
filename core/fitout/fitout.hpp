#pragma once

#include "core/fitout/balance.hpp"
#include "core/fitout/bulkheads.hpp"
#include "core/fitout/decks.hpp"
#include "core/fitout/facets.hpp"
#include "core/fitout/gunwales.hpp"
#include "core/fitout/seats.hpp"
#include "core/fitout/sheer_marks.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// Every part that the project asks for after the planking.
struct Fitout {
    std::vector<SheerMark> sheerMarks; ///< bow to stern
    Fairing fairing;
    std::optional<Gunwales> gunwales;
    std::vector<Bulkhead> bulkheads;
    std::vector<Deck> decks;
    std::vector<Seat> seats;
    std::vector<Thwart> thwarts;
    std::optional<Thwart> yoke;
    Balance balance;               ///< without the yoke's own weight, which hangs at it
    std::vector<Finding> findings; ///< of all parts, heaviest first
    double milliseconds = 0.0;
};

/// A pure function of what it is given. What does not fit is left out, and a finding says so.
/// @return none where the project asks for no fit-out; words for the builder where the finished hull's faces
///         can't be found
[[nodiscard]] Expected<std::optional<Fitout>, std::string>
planFitout(const Project& project, const LoftedHull& hull, const Plan& plan);

} // namespace sheerlay::core

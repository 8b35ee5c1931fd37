#pragma once

#include "core/fitout/bulkheads.hpp"
#include "core/fitout/decks.hpp"
#include "core/fitout/facets.hpp"
#include "core/fitout/gunwales.hpp"
#include "core/fitout/seats.hpp"
#include "core/fitout/sheer_marks.hpp"

#include <functional>
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
    std::vector<Finding> findings; ///< of all parts, heaviest first
};

/// Where she balances with all that is fitted but the yoke, mm from the bow.
using BalanceAt = std::function<double(const Fitout&)>;

/// A pure function of what it is given. What does not fit is left out, and a finding says so.
/// @param balance  asked where the file leaves the yoke's place open
/// @return none where the project asks for no fit-out; words for the builder where the finished hull's faces
///         can't be found
[[nodiscard]] Expected<std::optional<Fitout>, std::string>
planFitout(const Project& project, const LoftedHull& hull, const Plan& plan, const BalanceAt& balance);

} // namespace sheerlay::core

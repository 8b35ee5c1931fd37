#pragma once

#include "core/fitout/bulkheads.hpp"
#include "core/fitout/decks.hpp"
#include "core/fitout/gunwales.hpp"
#include "core/fitout/seats.hpp"

#include <optional>
#include <vector>

namespace sheerlay::core {

/// Where the finished boat hangs level from a yoke, reckoned from what the plan knows of her.
struct Balance {
    double x = 0.0;    ///< mm from the bow
    double mass = 0.0; ///< kg, of what was counted
};

/// Parts that are counted beside the planking and its cloth.
struct BalanceParts {
    const Gunwales* gunwales = nullptr; ///< none: none are asked for
    std::vector<Bulkhead> bulkheads;
    std::vector<Deck> decks;
    std::vector<Seat> seats;
    std::vector<Thwart> thwarts;
};

/// Centre of gravity fore and aft of planking, cloth and resin and the parts; screws, varnish and fillets are
/// left out.
/// @source  densities: of woods Wood Handbook (core/project/wood.hpp); cloth with resin 1600 kg/m3 and
/// plywood
///          550 kg/m3, from memory
/// @accuracy  tests/core/fitout/balance_test.cpp: shells of pipe, cone and sphere to 1 mm
[[nodiscard]] Balance balanceOf(const Project& project, const LoftedHull& hull, const BalanceParts& parts);

} // namespace sheerlay::core

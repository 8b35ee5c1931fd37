#pragma once

#include <array>
#include <optional>

namespace sheerlay::core {

/// What the builder pays for goods other than boards, in the money of the boards' prices. None where the file
/// tells no price: it is then left out of the sums, and said to be.
struct Prices {
    std::optional<double> strip;          ///< a metre of milled strip, where no boards are described
    std::optional<double> stick;          ///< a metre of wood for gunwales, rails, thwarts and hangers
    std::optional<double> plywood;        ///< a sheet, for bulkheads and decks
    std::optional<double> mouldBoard;     ///< a sheet, for moulds and stem forms
    std::optional<double> clothOutside;   ///< a metre off the roll
    std::optional<double> clothInside;    ///< a metre off the roll
    std::optional<double> clothBulkheads; ///< a metre off the roll
    std::optional<double> resin;          ///< a litre
    std::optional<double> hardener;       ///< a litre
    std::optional<double> varnish;        ///< a litre
    std::optional<double> glue;           ///< a litre of glue for wood
    std::optional<double> screw;          ///< one
    std::optional<double> plug;           ///< one
    std::optional<double> bolt;           ///< one, with nut and washers
    std::optional<double> cane;           ///< a metre

    friend bool operator==(const Prices&, const Prices&) = default;
};

/// What a price is of.
enum class PricedBy { Piece, Run, Cloth, Volume };

/// A key of [prices].
struct PriceKey {
    const char* key;
    std::optional<double> Prices::*member;
    PricedBy by;
    const char* form; ///< what it is the price of
};

/// Every key of [prices], in the order they are written.
[[nodiscard]] const std::array<PriceKey, 15>& priceKeys();

/// Metres, litres or ones that a price is of in a file in inches: a foot, a yard of cloth, a US gallon. In
/// millimetres it is of one metre or litre.
[[nodiscard]] double pricedInInches(PricedBy by) noexcept;

} // namespace sheerlay::core

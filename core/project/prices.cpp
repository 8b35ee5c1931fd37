#include "core/project/prices.hpp"

#include "core/units/weight.hpp"

namespace sheerlay::core {

const std::array<PriceKey, 15>& priceKeys() {
    constexpr const char* sheet = "the price of a sheet";
    constexpr const char* run = "the price of a metre, in a file in inches of a foot";
    constexpr const char* cloth = "the price of a metre off the roll, in a file in inches of a yard";
    constexpr const char* volume = "the price of a litre, in a file in inches of a US gallon";
    static const std::array<PriceKey, 15> keys{
        {{"strip", &Prices::strip, PricedBy::Run, run},
         {"stick", &Prices::stick, PricedBy::Run, run},
         {"plywood", &Prices::plywood, PricedBy::Piece, sheet},
         {"mould-board", &Prices::mouldBoard, PricedBy::Piece, sheet},
         {"cloth-outside", &Prices::clothOutside, PricedBy::Cloth, cloth},
         {"cloth-inside", &Prices::clothInside, PricedBy::Cloth, cloth},
         {"cloth-bulkheads", &Prices::clothBulkheads, PricedBy::Cloth, cloth},
         {"resin", &Prices::resin, PricedBy::Volume, volume},
         {"hardener", &Prices::hardener, PricedBy::Volume, volume},
         {"varnish", &Prices::varnish, PricedBy::Volume, volume},
         {"glue", &Prices::glue, PricedBy::Volume, volume},
         {"screw", &Prices::screw, PricedBy::Piece, "the price of one screw"},
         {"plug", &Prices::plug, PricedBy::Piece, "the price of one plug"},
         {"bolt", &Prices::bolt, PricedBy::Piece, "the price of one bolt with nut and washers"},
         {"cane", &Prices::cane, PricedBy::Run, run}}};
    return keys;
}

double pricedInInches(PricedBy by) noexcept {
    constexpr double foot = 0.3048, yard = 0.9144; // m
    switch (by) {
    case PricedBy::Run:
        return foot;
    case PricedBy::Cloth:
        return yard;
    case PricedBy::Volume:
        return litresPerGallon;
    case PricedBy::Piece:
        break;
    }
    return 1.0;
}

} // namespace sheerlay::core

#include "core/project/read_prices.hpp"

#include "core/project/ranged_number.hpp"

namespace sheerlay::core {

namespace {

constexpr double dearest = 1e7; // beyond any money's price of a part of a boat

} // namespace

Prices readPrices(TableView& file, Reading& reading) {
    Prices prices;
    auto view = file.table("prices", Need::Optional, "a table [prices]");
    if (!view)
        return prices;
    for (const PriceKey& key : priceKeys()) {
        const double per = reading.units == Units::Inches ? pricedInInches(key.by) : 1.0;
        if (const auto price = rangedNumber(*view, key.key, {0.0, dearest, key.form}, reading))
            prices.*key.member = *price / per;
    }
    view->reportUnknown();
    return prices;
}

} // namespace sheerlay::core

#include "core/project/write_prices.hpp"

#include "core/project/written_value.hpp"

namespace sheerlay::core {

std::string pricesText(const Prices& prices, Units units) {
    std::string text;
    for (const PriceKey& key : priceKeys()) {
        const auto& price = prices.*key.member;
        if (!price)
            continue;
        const double of = units == Units::Inches ? pricedInInches(key.by) : 1.0;
        text += std::string(key.key) + " = " +
                (of == 1.0 ? shortestDigits(*price) : steadyDigits(*price * of)) + "\n";
    }
    return text.empty() ? text : "\n[prices]\n" + text;
}

} // namespace sheerlay::core

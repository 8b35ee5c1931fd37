#include "core/materials/materials_table.hpp"

#include "core/tables/csv.hpp"
#include "core/units/number_text.hpp"

namespace sheerlay::core {

std::string materialsTable(const std::vector<Material>& materials) {
    std::vector<std::vector<std::string>> rows{
        {"shop", "what", "size", "amount", "unit", "price each", "cost"}};
    for (const Material& m : materials)
        rows.push_back({toText(m.shop),
                        m.what,
                        m.size,
                        numberText(m.amount, 2),
                        m.unit,
                        m.price ? numberText(*m.price, 2) : "",
                        m.cost ? numberText(*m.cost, 2) : ""});
    const auto sum = [&](const std::string& shop, const MaterialSum& all) {
        rows.push_back({shop,
                        "sum",
                        all.unpriced > 0 ? std::to_string(all.unpriced) + " without a price" : "",
                        "",
                        "",
                        "",
                        all.priced > 0 ? numberText(all.cost, 2) : ""});
    };
    for (const Shop shop : allShops)
        if (const MaterialSum all = sumOf(materials, shop); all.priced + all.unpriced > 0)
            sum(toText(shop), all);
    sum("all", sumOf(materials));
    return csvText(rows);
}

} // namespace sheerlay::core

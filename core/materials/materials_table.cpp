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
    return csvText(rows);
}

} // namespace sheerlay::core

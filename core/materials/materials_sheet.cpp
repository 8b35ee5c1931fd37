#include "core/materials/materials_sheet.hpp"

#include "core/sheets/list_pages.hpp"
#include "core/sheets/page_frame.hpp"
#include "core/units/number_text.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {

namespace {

std::string amountText(const Material& m) {
    const bool whole = std::abs(m.amount - std::round(m.amount)) < 1e-6;
    std::string unit = m.unit;
    if (m.amount == 1.0 && unit.ends_with('s')) // one sheet, one plug
        unit.pop_back();
    return numberText(m.amount, whole ? 0 : m.unit == "L" || m.unit == "kg" ? 2 : 1) + " " + unit;
}

std::string money(const std::optional<double>& value) {
    return value ? numberText(*value, 2) : "";
}

/// What of a sum is still open; empty where nothing is.
std::string openText(const MaterialSum& sum) {
    return sum.unpriced == 0   ? ""
           : sum.unpriced == 1 ? "one thing has no price"
                               : std::to_string(sum.unpriced) + " things have no price";
}

void lists(ListPages& pages, const std::vector<Material>& materials) {
    for (const Shop shop : allShops) {
        std::vector<ListRow> rows;
        for (const Material& m : materials)
            if (m.shop == shop)
                rows.push_back({{m.what, m.size, amountText(m), money(m.price), money(m.cost)}, true});
        if (rows.empty())
            continue;
        if (const MaterialSum sum = sumOf(materials, shop); sum.priced > 0)
            rows.push_back({{"together", openText(sum), "", "", numberText(sum.cost, 2)}, false});
        std::string heading = toText(shop);
        heading[0] = static_cast<char>(heading[0] - 'a' + 'A');
        pages.heading(heading);
        pages.list({{"What", 4.2},
                    {"Size", 2.6},
                    {"How much", 1.5, Anchor::Right, Weight::SemiBold},
                    {"Price", 0.9, Anchor::Right},
                    {"Cost", 1.0, Anchor::Right}},
                   rows);
    }
    const MaterialSum all = sumOf(materials);
    if (all.priced > 0 && all.unpriced == 0)
        pages.text("All of it costs " + numberText(all.cost, 2) + ".");
    else if (all.priced > 0)
        pages.text("What has a price costs " + numberText(all.cost, 2) + "; " + openText(all) +
                   "; they come on top. Prices go under [prices], of boards under [[stock.lot]].");
    else
        pages.text("No price is told. Write them in and add them up, or give them under [prices], of boards "
                   "under [[stock.lot]].");
    pages.text(
        "Boards, strips, cloth, resin and glue hold what is lost and spare; of sticks, screws and bolts "
        "take a few over. Strongback, clamps, gloves, masks, brushes, sandpaper and filler come on "
        "top.");
}

} // namespace

Sheet materialsSheet(const Project& project,
                     const std::vector<Material>& materials,
                     Units units,
                     PageSize size) {
    constexpr double smallest = 0.3;
    for (double zoom = 1.0;; zoom *= 0.9) { // smaller only where one page wouldn't hold them
        ListPages pages(pageOf(size), project.name + ", materials for the whole boat", zoom);
        lists(pages, materials);
        std::vector<Sheet> sheets = pages.take();
        if (sheets.size() > 1 && zoom >= smallest)
            continue;
        sheets.resize(1);
        addFeet(sheets, project, units, pageOf(size));
        return sheets.front();
    }
}

} // namespace sheerlay::core

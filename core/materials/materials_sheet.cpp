#include "core/materials/materials_sheet.hpp"

#include "core/sheets/list_pages.hpp"
#include "core/sheets/page_frame.hpp"
#include "core/units/number_text.hpp"
#include "core/words/heard.hpp"
#include "core/words/language.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace sheerlay::core {

namespace {

/// What one of them is called.
constexpr std::array singular{
    sayable("board"), sayable("sheet"), sayable("screw"), sayable("bolt"), sayable("plug")};

std::string amountText(const Material& m) {
    const bool whole = std::abs(m.amount - std::round(m.amount)) < 1e-6;
    std::string unit = m.unit;
    if (m.amount == 1.0)
        for (const char* one : singular)
            if (unit == std::string(one) + "s")
                unit = one;
    return numberText(m.amount, whole ? 0 : m.unit == "L" || m.unit == "kg" ? 2 : 1) + " " + heard(unit);
}

std::string money(const std::optional<double>& value) {
    return value ? numberText(*value, 2) : "";
}

/// Of one of its unit; what is counted in fluid ounces is sold by the gallon.
std::string priceText(const Material& m) {
    constexpr double ouncesPerGallon = 128.0;
    if (m.price && m.unit == "fl oz")
        return money(*m.price * ouncesPerGallon) + "/gal";
    return money(m.price);
}

/// What of a sum is still open; empty where nothing is.
std::string openText(const MaterialSum& sum) {
    return sum.unpriced == 0   ? ""
           : sum.unpriced == 1 ? say("one thing has no price")
                               : say("{} things have no price", sum.unpriced);
}

std::string headingOf(Shop shop) {
    switch (shop) {
    case Shop::Glass:
        return say("Glass");
    case Shop::Resin:
        return say("Resin");
    case Shop::Fastenings:
        return say("Fastenings");
    case Shop::Wood:
        break;
    }
    return say("Wood");
}

void lists(ListPages& pages, const std::vector<Material>& materials) {
    for (const Shop shop : allShops) {
        std::vector<ListRow> rows;
        for (const Material& m : materials)
            if (m.shop == shop)
                rows.push_back(
                    {{heard(m.what), heard(m.size), amountText(m), priceText(m), money(m.cost)}, true});
        if (rows.empty())
            continue;
        if (const MaterialSum sum = sumOf(materials, shop); sum.priced > 0)
            rows.push_back({{say("together"), openText(sum), "", "", numberText(sum.cost, 2)}, false});
        pages.heading(headingOf(shop));
        pages.list({{say("What"), 4.2},
                    {say("Size"), 2.6},
                    {say("How much"), 1.5, Anchor::Right, Weight::SemiBold},
                    {say("Price"), 0.9, Anchor::Right},
                    {say("Cost"), 1.0, Anchor::Right}},
                   rows);
    }
    const MaterialSum all = sumOf(materials);
    if (all.priced > 0 && all.unpriced == 0)
        pages.text(say("All of it costs {}.", numberText(all.cost, 2)));
    else if (all.priced > 0)
        pages.text(say("What has a price costs {}; {}; they come on top. Prices go under [prices], of boards "
                       "under [[stock.lot]].",
                       numberText(all.cost, 2),
                       openText(all)));
    else
        pages.text(say("No price is told. Write them in and add them up, or give them under [prices], of "
                       "boards under [[stock.lot]]."));
    pages.text(say(
        "Boards, strips, cloth, resin and glue hold what is lost and spare; of sticks, screws and bolts take "
        "a few over. Strongback, clamps, gloves, masks, brushes, sandpaper and filler come on top."));
}

} // namespace

Sheet materialsSheet(const Project& project,
                     const std::vector<Material>& materials,
                     Units units,
                     PageSize size) {
    const Speaking speaking(project.language);
    constexpr double smallest = 0.3;
    for (double zoom = 1.0;; zoom *= 0.9) { // smaller only where one page wouldn't hold them
        ListPages pages(pageOf(size), say("{}, materials for the whole boat", project.name), zoom);
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

#pragma once

#include "core/hull/hull.hpp"
#include "core/project/project.hpp"
#include "core/sheets/shop_plan.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// Where a thing is bought.
enum class Shop { Wood, Glass, Resin, Fastenings };

/// "wood", "glass", "resin", "fastenings".
[[nodiscard]] const char* toText(Shop shop) noexcept;

/// One thing to buy.
struct Material {
    Shop shop = Shop::Wood;
    std::string what;            ///< "inner gunwale, white ash"
    std::string size;            ///< in the units asked for
    double amount = 0.0;         ///< of `unit`
    std::string unit;            ///< "boards", "ft", "m", "sheets", "yd", "fl oz", "L", "screws", …
    std::optional<double> price; ///< of one
    std::optional<double> cost;  ///< of all
};

/// Everything that the project tells of, by shop: boards (without [stock] strips by the run), sticks for
/// gunwales, rails, thwarts and hangers, plywood for bulkheads, decks and moulds, cloth, resin, varnish and
/// glue, screws, plugs, bolts and cane. Amounts hold what covering, stock and glue add for waste and spare;
/// sticks and fastenings none. A tin of stain or a sheet of sandpaper nobody has reckoned.
/// @param units  of sizes and amounts
[[nodiscard]] std::vector<Material>
materialsOf(const Project& project, const LoftedHull& hull, const ShopPlan& shop, Units units);

/// Sum of the costs that are known; none where none is.
[[nodiscard]] std::optional<double> knownCost(const std::vector<Material>& materials);

} // namespace sheerlay::core

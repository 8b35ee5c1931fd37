#pragma once

#include "core/hull/hull.hpp"
#include "core/project/project.hpp"
#include "core/sheets/shop_plan.hpp"

#include <array>
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

/// What a shop, or all of them, comes to.
struct MaterialSum {
    double cost = 0.0; ///< of the priced lines
    int priced = 0;    ///< lines with a price
    int unpriced = 0;  ///< lines without: they come on top
};

/// @param shop  none: all of them
[[nodiscard]] MaterialSum sumOf(const std::vector<Material>& materials,
                                std::optional<Shop> shop = std::nullopt);

/// Every shop, in the order they are listed.
inline constexpr std::array allShops{Shop::Wood, Shop::Glass, Shop::Resin, Shop::Fastenings};

} // namespace sheerlay::core

#include "core/project/wood.hpp"

#include <array>

namespace sheerlay::core {

namespace {

// Source: Wood Handbook, FPL-GTR-282 (2021). Strength, stiffness and specific gravity: Table 5-3b, inch-pound
// values at 12 % moisture, confirmed for every row here in a public transcription of that table, converted
// with 1 psi = 6.894757 kPa. E along the grain = 1.10 x the bending test's (note to Table 5-1). Shear modulus
// = that E times GLT/EL of Table 5-1: confirmed for northern white-cedar in a public extract, from memory for
// the others with a row there; the woods marked "borrowed" have no row and borrow the ratio named, a planning
// assumption. Density = 1000 x specific gravity x 1.12.
constexpr std::array woods{
    Wood{"western-redcedar", "Western redcedar", 51.7, 7.65, 8.42, 724.0, 6.83, 358.0},
    Wood{"northern-white-cedar", "Northern white-cedar", 44.8, 5.52, 6.07, 1135.0, 5.86, 347.0},
    // ratio borrowed from western redcedar
    Wood{"atlantic-white-cedar", "Atlantic white-cedar", 46.9, 6.41, 7.05, 607.0, 5.52, 358.0},
    // ratio borrowed from western redcedar
    Wood{"alaska-yellow-cedar", "Alaska (yellow) cedar", 76.5, 9.79, 10.77, 926.0, 7.79, 493.0},
    // ratio borrowed from western redcedar
    Wood{"port-orford-cedar", "Port-Orford-cedar", 87.6, 11.72, 12.89, 1109.0, 9.45, 482.0},
    Wood{"redwood-old-growth", "Redwood, old-growth", 68.9, 9.24, 10.16, 783.0, 6.48, 448.0},
    Wood{"redwood-young-growth", "Redwood, young-growth", 54.5, 7.58, 8.34, 642.0, 7.65, 392.0},
    // ratio borrowed from western white pine
    Wood{"eastern-white-pine", "Eastern white pine", 59.3, 8.55, 9.4, 451.0, 6.21, 392.0},
    Wood{"sitka-spruce", "Sitka spruce", 70.3, 10.82, 11.91, 726.0, 7.93, 448.0},
    Wood{"yellow-poplar", "Yellow-poplar", 69.6, 10.89, 11.98, 827.0, 8.2, 470.0},
    Wood{"white-ash", "White ash", 106.2, 12.0, 13.2, 1016.0, 13.17, 672.0},
    Wood{"black-cherry", "Black cherry", 84.8, 10.27, 11.3, 1096.0, 11.72, 560.0},
    Wood{"black-walnut", "Black walnut", 100.7, 11.58, 12.74, 790.0, 9.45, 616.0},
};

} // namespace

std::span<const Wood> allWoods() noexcept {
    return woods;
}

const Wood* findWood(std::string_view id) noexcept {
    for (const Wood& wood : woods)
        if (wood.id == id)
            return &wood;
    return nullptr;
}

std::string woodNames() {
    std::string names;
    for (const Wood& wood : woods) {
        if (!names.empty())
            names += ", ";
        names += wood.id;
    }
    return names;
}

} // namespace sheerlay::core

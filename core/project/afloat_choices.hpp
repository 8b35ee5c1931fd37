#pragma once

#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// A weight in the boat: a paddler, a pack, or a part of the boat herself.
struct PlacedWeight {
    std::string name;
    double mass = 0.0;   ///< kg
    double x = 0.0;      ///< mm, datum of the table
    double y = 0.0;      ///< mm from the centreplane, + to starboard
    double height = 0.0; ///< mm above the base line, of its centre
    int line = 0;

    friend bool operator==(const PlacedWeight&, const PlacedWeight&) = default;
};

/// What the builder says of the boat afloat.
struct AfloatChoices {
    double density = 1000.0;         ///< kg/m3, of the water: fresh 1000, salt 1025 (from memory)
    double freeboard = 152.4;        ///< mm to be left at the largest load; 6 in, judged
    std::optional<double> boatMass;  ///< kg, the boat as weighed; none: from her parts
    std::vector<PlacedWeight> loads; ///< paddlers and gear
    std::vector<PlacedWeight> parts; ///< of the boat, beyond planking and covering: gunwales, seats, …

    friend bool operator==(const AfloatChoices&, const AfloatChoices&) = default;
};

} // namespace sheerlay::core

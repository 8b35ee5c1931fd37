#pragma once

#include <optional>
#include <vector>

namespace sheerlay::core {

/// The beam or ladder that the moulds stand on; mm.
struct Strongback {
    double width = 203.2;  ///< across the boat; > 0
    double height = 152.4; ///< > 0
    double clear = 101.6;  ///< between its top and the highest point of the sheer; >= 0

    friend bool operator==(const Strongback&, const Strongback&) = default;
};

/// Small holes along a mould's edge, to hook a clamp or a bungee into; mm.
struct EdgeHoles {
    double pitch = 100.0;   ///< along the edge; > 0
    double inset = 25.0;    ///< from the edge to the hole's middle; > 0
    double diameter = 10.0; ///< > 0

    friend bool operator==(const EdgeHoles&, const EdgeHoles&) = default;
};

/// Plywood or another board without grain, of which moulds are sawn; mm.
struct SheetSize {
    double length = 2438.4;   ///< the longer side, 8 ft; > 0
    double width = 1219.2;    ///< 4 ft; > 0
    std::optional<int> count; ///< how many there are; none: as many as are needed

    friend bool operator==(const SheetSize&, const SheetSize&) = default;
};

/// What the builder decided about moulds. The sizes that stand here first are common practice, no source.
struct MouldChoices {
    enum class Shape { Half, Whole };

    double thickness = 19.05;      ///< mm, of the board that moulds and stem forms are sawn from; > 0
    std::optional<double> spacing; ///< mm, moulds stand at every multiple of it from the bow; > 0
    std::vector<double> stations; ///< mm, x of the moulds in the table's datum, rising; else at every station
    Shape shape = Shape::Half;    ///< what a pattern shows
    Strongback strongback;
    std::optional<EdgeHoles> holes;                            ///< none: no holes are marked
    std::vector<SheetSize> sheets = std::vector<SheetSize>(1); ///< at least one; taken in this order
    double kerf = 10.0; ///< kept free between parts on a sheet: the saw's cut and room to steer it; > 0

    friend bool operator==(const MouldChoices&, const MouldChoices&) = default;
};

} // namespace sheerlay::core

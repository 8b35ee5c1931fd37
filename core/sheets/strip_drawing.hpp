#pragma once

#include "core/planking/plan.hpp"
#include "core/sheets/compose.hpp"
#include "core/sheets/flat_strip.hpp"

#include <string>
#include <vector>

namespace sheerlay::core {

/// A drawing against its upper left corner, with the words that say how it is drawn.
struct Drawing {
    double height = 0.0; ///< mm it takes
    std::vector<Item> items;
    std::string caption;
};

/// A station as it is marked on the drawing.
struct NamedMark {
    StationMark mark;
    std::string name;
};

/// The whole strip, unsprung, seen from outside as the boat lies upside down: keel side up, bow to the left,
/// its length fitted to the paper and its width drawn several times wider, both by whole numbers (halves
/// below ten), which the caption tells.
/// @param width   mm of paper
/// @param height  mm of paper, station names included; a strip that finds no room in it takes more, and says
/// so
/// @param scale   of type
/// @param scarfs  mm along the middle from its bow end, where a stroke across the strip tells of a scarf
[[nodiscard]] Drawing drawStrip(const FlatStrip& flat,
                                const std::vector<NamedMark>& marks,
                                double width,
                                double height,
                                double scale,
                                Colour fill,
                                const std::vector<double>& scarfs = {});

/// One end of the strip as it is cut, full size where it fits: face seen from outside, with the lap dashed
/// beyond the trim, and beside it the edge with the bevel of the end face.
/// @param thickness  mm of the strip
/// @param width      mm of paper
[[nodiscard]] Drawing
drawEnd(const FlatStrip& flat, const StripEnd& end, double thickness, double width, double scale);

} // namespace sheerlay::core

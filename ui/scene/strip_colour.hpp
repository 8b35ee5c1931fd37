#pragma once

#include "ui/scene/boat.hpp"

#include <QColor>
#include <QString>

#include <array>
#include <string_view>
#include <vector>

namespace sheerlay::ui {

/// What a strip's colour tells.
enum class StripColours {
    Bend,     ///< how hard its uncut edge is bent
    Twist,    ///< the most it is twisted
    HullBend, ///< how hard it is bent over the moulds
    Strain,   ///< all three together, as part of what its wood bears
    Width,    ///< its widest place, as part of a full strip
    Shape,    ///< full, tapered, stealer, …
    Wood,     ///< what it is made of
    Laid,     ///< whether the journal has it on the boat
};
inline constexpr std::array allStripColours{StripColours::Bend,
                                            StripColours::Twist,
                                            StripColours::HullBend,
                                            StripColours::Strain,
                                            StripColours::Width,
                                            StripColours::Shape,
                                            StripColours::Wood,
                                            StripColours::Laid};

/// Tone of a wood, planed and oiled; that of free strips for one that is not known. Judged, no source: boards
/// differ, and darken with light.
[[nodiscard]] QColor woodColour(std::string_view wood);

/// @param strip  index as Plan::strips
[[nodiscard]] QColor stripColour(const Boat& boat, std::size_t strip, StripColours colours);

/// One line of the legend. The limits of twist and bend are round numbers that part the strips of a canoe
/// well (judged, no source); those of edge bend are core's classes.
struct ColourLine {
    QColor colour;
    QString word;  ///< what it means
    QString limit; ///< from where to where, in the builder's units; empty where the word says all
};

/// What the colours tell, in a few words: "Twist", "Woods".
[[nodiscard]] QString colourHeading(StripColours colours);

/// What each colour means, lightest class first.
/// @param boat  none before one is loaded: then only what goes for every boat
[[nodiscard]] std::vector<ColourLine> colourLines(const Boat* boat, StripColours colours, core::Units units);

} // namespace sheerlay::ui

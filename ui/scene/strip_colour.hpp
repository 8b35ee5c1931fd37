#pragma once

#include "ui/scene/boat.hpp"

#include <QColor>

#include <string_view>

namespace sheerlay::ui {

/// What a strip's colour tells.
enum class StripColours {
    Bend, ///< how hard its uncut edge is bent
    Wood, ///< what it is made of
};

/// Tone of a wood, planed and oiled; that of free strips for one that is not known. Judged, no source: boards
/// differ, and darken with light.
[[nodiscard]] QColor woodColour(std::string_view wood);

/// @param strip  index as Plan::strips
[[nodiscard]] QColor stripColour(const Boat& boat, std::size_t strip, StripColours colours);

} // namespace sheerlay::ui

#include "ui/scene/strip_colour.hpp"

#include "ui/scene/palette.hpp"

#include <algorithm>
#include <array>

namespace sheerlay::ui {

namespace {

struct Tone {
    std::string_view wood;
    QRgb colour;
};

constexpr std::array tones{
    Tone{"western-redcedar", 0xFFB5794F},
    Tone{"northern-white-cedar", 0xFFE2CCA2},
    Tone{"atlantic-white-cedar", 0xFFDDBF9C},
    Tone{"alaska-yellow-cedar", 0xFFE8D58F},
    Tone{"port-orford-cedar", 0xFFEBDDBA},
    Tone{"redwood-old-growth", 0xFF94493A},
    Tone{"redwood-young-growth", 0xFFB0684E},
    Tone{"eastern-white-pine", 0xFFEEDCAC},
    Tone{"sitka-spruce", 0xFFE9CFA0},
    Tone{"yellow-poplar", 0xFFC9C596},
    Tone{"white-ash", 0xFFDFD0B5},
    Tone{"black-cherry", 0xFFA45C3A},
    Tone{"black-walnut", 0xFF5F4535},
};

} // namespace

QColor woodColour(std::string_view wood) {
    const auto* tone = std::ranges::find(tones, wood, &Tone::wood);
    return QColor::fromRgb(tone == tones.end() ? palette::free : tone->colour);
}

QColor stripColour(const Boat& boat, std::size_t strip, StripColours colours) {
    return colours == StripColours::Wood ? woodColour(boat.wood[strip])
                                         : difficultyColour(boat.difficulty[strip]);
}

} // namespace sheerlay::ui

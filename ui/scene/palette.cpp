#include "ui/scene/palette.hpp"

namespace sheerlay::ui {

QColor levelColour(core::Level level) {
    switch (level) {
    case core::Level::Stop:
        return QColor::fromRgb(palette::hard);
    case core::Level::Caution:
        return QColor::fromRgb(palette::clamp);
    case core::Level::Note:
        break;
    }
    return QColor::fromRgb(palette::lineBlue);
}

QColor difficultyColour(core::Difficulty difficulty) {
    switch (difficulty) {
    case core::Difficulty::Free:
        return QColor::fromRgb(palette::free);
    case core::Difficulty::Clamp:
        return QColor::fromRgb(palette::clamp);
    case core::Difficulty::Hard:
        return QColor::fromRgb(palette::hard);
    case core::Difficulty::Taper:
        break;
    }
    return QColor::fromRgb(palette::taperOrPreBend);
}

} // namespace sheerlay::ui

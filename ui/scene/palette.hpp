#pragma once

#include "core/planking/difficulty.hpp"
#include "core/project/finding.hpp"

#include <QColor>

namespace sheerlay::ui::palette {

inline constexpr QRgb paper = 0xFFFBF8F1;
inline constexpr QRgb bench = 0xFFF1ECE2;
inline constexpr QRgb ink = 0xFF23272C;
inline constexpr QRgb pencil = 0xFF6B7078;
inline constexpr QRgb lineBlue = 0xFF2F5D8A;
inline constexpr QRgb cedar = 0xFFB5653A;
inline constexpr QRgb rule = 0xFFD9D2C3; ///< thin lines between parts of the window
inline constexpr QRgb plywood = 0xFFCDBB96;
inline constexpr QRgb timber = 0xFFB9AE9B; ///< strongback
inline constexpr QRgb free = 0xFFE3D5B0;
inline constexpr QRgb clamp = 0xFFE0A33E;
inline constexpr QRgb hard = 0xFFC4532F;
inline constexpr QRgb taperOrPreBend = 0xFF6A2C47;
inline constexpr QRgb seam = 0xFF7D6A45; ///< line between two strips

} // namespace sheerlay::ui::palette

namespace sheerlay::ui {

/// Colour of a level of finding; always beside its word.
[[nodiscard]] QColor levelColour(core::Level level);

/// Colour of a class of edge bend, falling in lightness.
[[nodiscard]] QColor difficultyColour(core::Difficulty difficulty);

} // namespace sheerlay::ui

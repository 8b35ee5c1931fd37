#pragma once

#include "core/project/project.hpp"
#include "geometry/expected.hpp"

#include <cstdint>
#include <string>
#include <string_view>

namespace sheerlay::core {

inline constexpr double mmPerInch = 25.4; ///< exact by definition
inline constexpr double mmPerFoot = 12 * mmPerInch;
static_assert(mmPerFoot > 304.79 && mmPerFoot < 304.81);

/// Sixteenths of an inch in mm, rounded once: an inch is 254/10 mm exactly.
[[nodiscard]] constexpr double fromSixteenths(std::int64_t count) noexcept {
    return static_cast<double>(count * 254) / 160.0;
}
static_assert(fromSixteenths(16) == mmPerInch && fromSixteenths(-1) == -1.5875);

/// Nearest whole number of sixteenths of an inch; halves away from zero. 0 for what is not a length
/// (not finite, or beyond 1e12 mm).
[[nodiscard]] std::int64_t toSixteenths(double millimetres) noexcept;

/// A length read from a builder's notation.
struct ReadLength {
    double millimetres = 0.0;
    /// mm, the finest digit the notation can say: eighths 25.4/8, with + or - 25.4/16, fractions their
    /// denominator, decimals their last place, whole millimetres 1. 0 when it says nothing (3 ft).
    double resolution = 0.0;
    friend bool operator==(const ReadLength&, const ReadLength&) = default;
};

/// Why a length could not be read, as two halves of a message.
struct LengthError {
    std::string found; ///< what was found
    std::string would; ///< what would do
    friend bool operator==(const LengthError&, const LengthError&) = default;
};

/// Reads "1-3-4+" (feet-inches-eighths), "15 3/4 in", "3' 2 1/2\"", "400 mm", "40 cm", "0.4 m", "12 ft",
/// "4.5"; a plain number is in `plain`. Typographic marks (′ ″ ½ ¼ ¾ ⅛ ⅜ ⅝ ⅞) and a leading sign are
/// welcome. Feet-inches-eighths and fractions are exact in sixteenths (or their own denominator).
/// Never guessed, always reported: two-part "4-3", a fraction without a unit where plain numbers are
/// millimetres, a comma that may be a decimal comma or a thousands mark ("1,250").
/// An eighths digit 8 is carried; 9 is refused, as are inches over 11 beside feet.
/// @accuracy  one rounding of the exact value
/// @source    notation: public shop practice; trailing + adds 1/16 in, trailing - takes 1/16 in off
[[nodiscard]] Expected<ReadLength, LengthError> parseLength(std::string_view text, Units plain);

/// "1-3-4+": nearest sixteenth, as a table of offsets prints it; "-0-3-4" below the line.
[[nodiscard]] std::string toFeetInchesEighths(double millimetres);

/// For people. Inches: feet and inches to the nearest 1/`denominator`, fractions reduced, "4' 3 5/16\""
/// (feet only from 2 ft up, "15 3/4\"" below). Millimetres: no decimals unless `decimals` says so, "1299 mm".
/// What is not finite reads "?".
[[nodiscard]] std::string
formatLength(double millimetres, Units units, int denominator = 16, int decimals = 0);

} // namespace sheerlay::core

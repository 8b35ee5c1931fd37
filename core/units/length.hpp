#pragma once

#include "core/project/project.hpp"
#include "geometry/expected.hpp"

#include <string>
#include <string_view>

namespace sheerlay::core {

inline constexpr double mmPerInch = 25.4;             ///< exact by definition
inline constexpr double mmPerFoot = 12 * mmPerInch;
static_assert(mmPerFoot > 304.79 && mmPerFoot < 304.81);

/// A length read from a builder's notation.
struct ReadLength {
    double millimetres = 0.0;
    /// mm, the finest digit the notation can say: eighths 25.4/8, with + or - 25.4/16, decimals their last place. 0 when it says nothing (3 ft).
    double resolution = 0.0;
    friend bool operator==(const ReadLength&, const ReadLength&) = default;
};

/// Why a length could not be read, as two halves of a message.
struct LengthError {
    std::string found;   ///< what was found
    std::string would;   ///< what would do
};

/// Reads "1-3-4+" (feet-inches-eighths), "15 3/4 in", "3' 2 1/2\"", "400 mm", "40 cm", "0.4 m", "12 ft", "4.5"; a plain number is in `plain`.
/// Feet-inches-eighths and fractions are exact in sixteenths (or their own denominator).
[[nodiscard]] Expected<ReadLength, LengthError> parseLength(std::string_view text, Units plain);

/// "1-3-4+": nearest sixteenth, as a table of offsets prints it.
[[nodiscard]] std::string toFeetInchesEighths(double millimetres);

/// For people. Inches: feet and inches to the nearest 1/`denominator`, "4' 3 5/16\"" (feet only from 2 ft up, "15 3/4\"" below). Millimetres: no decimals unless `decimals` says so, "1299 mm".
[[nodiscard]] std::string formatLength(double millimetres, Units units, int denominator = 16, int decimals = 0);

}  // namespace sheerlay::core

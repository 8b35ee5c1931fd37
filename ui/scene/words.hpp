#pragma once

#include "core/planking/plan.hpp"
#include "core/project/project.hpp"
#include "core/words/language.hpp"

#include <QString>

#include <cstddef>
#include <string_view>

namespace sheerlay::ui {

/// How finely a length is told.
struct Fineness {
    int denominator = 16; ///< of inches
    int decimals = 0;     ///< of millimetres
};

/// A number with a fixed count of decimals and the decimal mark of the window's language.
[[nodiscard]] QString numberText(double value, int decimals);

/// What core printed in English, a number, a measure or a place as the table has it, with the decimal mark
/// of the window's language.
[[nodiscard]] QString markedText(std::string_view printed);

/// Length as it stands in a field to be typed in; read again by core::parseLength.
[[nodiscard]] QString typedLengthText(double millimetres, core::Units units, Fineness fineness = {});

/// Length for the screen: fractions with U+2044, so that the font sets them as fractions, and unbroken by
/// line ends.
[[nodiscard]] QString lengthText(double millimetres, core::Units units, Fineness fineness = {});

/// How far something stands off, told finer than lengths: tenths of a millimetre or thousandths of an inch.
/// @param sign  with + or − in front
[[nodiscard]] QString departureText(double millimetres, core::Units units, bool sign);

/// Length to cut, up to the next 5 mm or 1/4 in, as the sheets have it.
[[nodiscard]] QString cutLengthText(double millimetres, core::Units units);

/// Radius, to the precision a builder can use: "7.5 m", "24 ft".
[[nodiscard]] QString radiusText(double millimetres, core::Units units);

/// Place along the boat: "1250 mm from the bow".
[[nodiscard]] QString placeText(double x, core::Units units);

/// "38 mm over 2 m" or "1 1/2 in over 8 ft": how far the uncut edge stands off a straight batten.
[[nodiscard]] QString sagText(double kappa, core::Units units);

/// "± 6 mm" of core's "+/- 6 mm".
[[nodiscard]] QString plusMinusText(std::string_view printed);

/// How far the rounding of the table moves a sag that a deviation of the edge bend (1/mm) goes with: "± 6
/// mm".
[[nodiscard]] QString sagPlusMinusText(double kappaDeviation, core::Units units);

/// Twist per length: "4.2° per foot", "14° per metre".
[[nodiscard]] QString twistText(double radPerMm, core::Units units);

/// "row 7, starboard"
[[nodiscard]] QString rowText(const core::Strip& strip);

/// "full strip", "stealer", …
[[nodiscard]] QString kindText(const core::Strip& strip);

/// "on the stem", "on the keel", …
[[nodiscard]] QString landingText(core::EndsOn on);

/// "caution", "note", "stop"; a count of them: "2 cautions".
[[nodiscard]] QString levelText(core::Level level);
[[nodiscard]] QString levelCountText(core::Level level, std::ptrdiff_t count);

/// The window's language, where the paper knows it; else English. What core draws for a bench is said in it.
[[nodiscard]] core::Language windowLanguage();

/// What core said in English (findings, advice, classes) in the window's language, as far as the words for
/// paper know it.
[[nodiscard]] QString heardText(std::string_view english);

/// What a finding says, or another sentence of core's, in the window's language and units.
[[nodiscard]] QString heardText(std::string_view english, core::Units units);

[[nodiscard]] QString toQString(std::string_view text);

} // namespace sheerlay::ui

#pragma once

#include "core/sheets/drawing.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace sheerlay::core {

// Measures of the sheets' typeface (Inter), as parts of the size of type. tests/ui/paper compares them with
// the font itself.
inline constexpr double capHeight = 0.727;   ///< of capitals and digits
inline constexpr double ascent = 0.969;      ///< of the line above the baseline
inline constexpr double descent = 0.242;     ///< of the line below the baseline
inline constexpr double fractionSize = 0.62; ///< size of a fraction's digits

/// Size of type whose capitals and digits stand `height` mm high.
[[nodiscard]] constexpr double sizeForCapitals(double height) noexcept {
    return height / capHeight;
}

/// Splits a line into plain text and fractions: "4' 3 5/16\"" has the fraction 5/16. Only halves to
/// sixty-fourths count, so that dates and ratios stay as they are.
[[nodiscard]] std::vector<TextRun> runsOf(std::string_view line);

/// One stretch of a set line: where it stands against the anchor's left end, and how large.
struct PlacedRun {
    std::string text;
    double offset = 0.0; ///< mm to the right of the line's left end
    double raise = 0.0;  ///< mm above the baseline
    double size = 0.0;   ///< mm
};

/// Sets a line's runs one after the other.
[[nodiscard]] std::vector<PlacedRun> place(const std::vector<TextRun>& runs, double size, Weight weight);

/// Width of plain text, mm. Characters the table lacks count as a wide letter.
/// @accuracy  1 percent of the painted width, tests/ui/paper/type_test.cpp
[[nodiscard]] double plainWidth(std::string_view text, double size, Weight weight);

/// Width of a line with its fractions, mm.
[[nodiscard]] double textWidth(const std::vector<TextRun>& runs, double size, Weight weight);
[[nodiscard]] double textWidth(std::string_view line, double size, Weight weight = Weight::Regular);

/// Breaks a text at its spaces so that no line is wider than `width` mm; a measure such as 4' 3 5/16" is kept
/// together. A word wider than that is broken where it has to be.
[[nodiscard]] std::vector<std::string>
wrap(std::string_view text, double width, double size, Weight weight = Weight::Regular);

/// Width of the widest word of a text, mm: in a narrower column wrap() would break it.
[[nodiscard]] double widestWord(std::string_view text, double size, Weight weight = Weight::Regular);

/// An upright box on paper, mm.
struct Box {
    double left = 0.0, top = 0.0, right = 0.0, bottom = 0.0;
    [[nodiscard]] bool overlaps(const Box& other) const noexcept {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }
};

/// Box around a text's ink: capitals above, tails below where it has any; around all four corners when it is
/// turned.
[[nodiscard]] Box inkBox(const Text& text);

} // namespace sheerlay::core

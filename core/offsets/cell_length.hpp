#pragma once

#include "core/project/project.hpp"
#include "core/units/length.hpp"
#include "geometry/expected.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace sheerlay::core {

enum class PlainUnit { Millimetres, Centimetres, Metres, Inches, Feet };

/// What a comma or point between digits is.
enum class DecimalMark { Point, Comma };

/// What a cell such as "3-4" says; unsaid it is refused.
enum class TwoPart { Unsaid, InchesEighths, FeetInches };

/// How the cells of one table write lengths.
struct Notation {
    PlainUnit plain = PlainUnit::Millimetres; ///< of numbers that bring no unit
    DecimalMark decimal = DecimalMark::Point;
    TwoPart twoPart = TwoPart::Unsaid;
    bool feetInchesEighths = false; ///< the table is written so; a lone number other than 0 is refused then
};

/// A cell read.
struct CellLength {
    double millimetres = 0.0;
    double resolution = 0.0;     ///< mm, see ReadLength
    std::string printed;         ///< as a project of units `projectUnits` may quote it
    bool markedDoubtful = false; ///< a "?" or "*" stood behind it
};

/// Whether the cell says "not given": nothing, dots, dashes or a word such as "n/a".
[[nodiscard]] bool isNotGiven(std::string_view cell);

/// Units of a project whose table is in this notation.
[[nodiscard]] Units projectUnits(const Notation& notation);

/// Reads a cell: what parseLength reads, and feet-inches-eighths with blanks, points or colons between them.
/// @return  the length, or what was found and what would do
[[nodiscard]] Expected<CellLength, LengthError> readCell(std::string_view cell, const Notation& notation);

/// Reads a length said beside a table's cells, in a label or by the builder: one number counts in the table's
/// unit in a table of feet-inches-eighths too.
[[nodiscard]] Expected<CellLength, LengthError> readSaid(std::string_view length, Notation notation);

/// A number that counts lines or stations, "3", "3 1/2"; none for what is no number.
[[nodiscard]] std::optional<double> readCount(std::string_view number);

/// Whether the cell is three parts of feet, inches and eighths, whatever stands between them.
[[nodiscard]] bool isFeetInchesEighths(std::string_view cell);

/// Whether the cell is a number without a unit: digits with at most one decimal mark and a sign.
[[nodiscard]] bool isPlainNumber(std::string_view cell);

} // namespace sheerlay::core

#include "core/offsets/guess_notation.hpp"

#include "core/offsets/line_label.hpp"
#include "core/units/length_text.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cstdlib>
#include <optional>
#include <set>
#include <vector>

namespace sheerlay::core {

namespace {

/// Everything the cells show about their notation.
struct Signs {
    std::size_t feetInchesEighths = 0;
    std::size_t fractions = 0;       ///< 15 3/4 or inch marks
    std::size_t pointed = 0;         ///< 12.5
    std::size_t commaSure = 0;       ///< 12,5: a comma with any but three digits behind it
    std::size_t commaThree = 0;      ///< 1,250: either
    std::vector<double> plain;       ///< sizes of plain numbers, as if commas were points
    std::set<PlainUnit> units;       ///< named apart from a number
    std::set<PlainUnit> lengthUnits; ///< named behind a number
};

void lookAtNumber(Signs& signs, const std::string& text) {
    const auto comma = text.find(',');
    if (comma != std::string::npos)
        ++(text.size() - comma - 1 == 3 && !text.starts_with('0') ? signs.commaThree : signs.commaSure);
    if (text.find('.') != std::string::npos)
        ++signs.pointed;
    std::string pointed = text;
    std::ranges::replace(pointed, ',', '.');
    signs.plain.push_back(std::abs(std::strtod(pointed.c_str(), nullptr)));
}

Signs lookAt(const CellGrid& grid) {
    Signs signs;
    for (const GridRow& row : grid.rows)
        for (const std::string& cell : row.cells) {
            const std::string plain = plainSigns(cell);
            if (isFeetInchesEighths(plain)) {
                ++signs.feetInchesEighths;
            } else if (isPlainNumber(plain)) {
                lookAtNumber(signs, plain);
            } else {
                const LabelWords words = labelWords(plain);
                if (words.unit)
                    signs.units.insert(*words.unit);
                if (words.lengthUnit)
                    signs.lengthUnits.insert(*words.lengthUnit);
                const bool number = !plain.empty() && plain.front() >= '0' && plain.front() <= '9';
                if (number && (plain.find('/') != std::string::npos || plain.find('"') != std::string::npos))
                    ++signs.fractions;
            }
        }
    return signs;
}

/// Numbers too large for anything but millimetres: no strip-built boat is 1000 in or cm long, and in no unit
/// but millimetres do a quarter of a boat's offsets exceed 150.
bool millimetresBySize(std::vector<double> plain) {
    if (plain.empty())
        return false;
    std::ranges::sort(plain);
    return plain.back() >= 1000.0 || plain[plain.size() * 3 / 4] >= 150.0;
}

std::optional<PlainUnit> onlyOne(const std::set<PlainUnit>& units) {
    return units.size() == 1 ? std::optional(*units.begin()) : std::nullopt;
}

} // namespace

Expected<GuessedNotation, LengthError> guessNotation(const CellGrid& grid,
                                                     const TableCorrections& corrections) {
    const Signs signs = lookAt(grid);
    GuessedNotation guessed;
    Notation& notation = guessed.notation;
    notation.twoPart = corrections.twoPart;
    notation.feetInchesEighths =
        signs.feetInchesEighths > signs.plain.size() / 2 && signs.feetInchesEighths > 3;

    if (corrections.decimal) {
        notation.decimal = *corrections.decimal;
    } else if (signs.commaSure > 0 && signs.pointed > 0) {
        return unexpected(LengthError{
            sayable("numbers with decimal points and numbers with decimal commas"),
            sayable("one of the two in the whole table, or decimal = comma, or decimal = point")});
    } else if (signs.commaThree > 0 && signs.commaSure == 0 && signs.pointed == 0) {
        return unexpected(LengthError{sayable("commas that may be decimal commas or stand between thousands"),
                                      sayable("decimal = comma, or decimal = point")});
    } else {
        notation.decimal = signs.commaSure > 0 ? DecimalMark::Comma : DecimalMark::Point;
    }

    const bool builders = signs.feetInchesEighths > 0 || signs.fractions > 0;
    if (corrections.units) {
        notation.plain = *corrections.units;
    } else if (notation.feetInchesEighths) {
        notation.plain = PlainUnit::Inches;
    } else if (const auto unit = onlyOne(signs.units)) {
        notation.plain = *unit;
    } else if (const auto behind = onlyOne(signs.lengthUnits); behind && signs.units.empty()) {
        notation.plain = *behind;
    } else if (builders && signs.units.empty()) {
        notation.plain = PlainUnit::Inches;
    } else if (signs.units.empty() && millimetresBySize(signs.plain)) {
        guessed.unitFromSize = true;
    } else if (!signs.plain.empty()) {
        return unexpected(
            LengthError{signs.units.size() > 1 ? sayable("more than one unit in the headings")
                                               : sayable("plain numbers whose unit is nowhere said"),
                        sayable("units = mm, units = cm, units = m, units = in or units = ft")});
    }
    return guessed;
}

} // namespace sheerlay::core

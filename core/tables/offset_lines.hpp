#pragma once

#include "core/project/project.hpp"
#include "core/units/length.hpp"
#include "geometry/expected.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sheerlay::core {

/// Places of lines of one family: named one by one, or so far apart.
struct Levels {
    std::vector<double> at; ///< mm, increasing
    double every = 0.0;     ///< mm; 0: only those in `at`

    /// The places from `low` to `high`: those named, or every multiple of the step strictly between.
    [[nodiscard]] std::vector<double> between(double low, double high) const;
    friend bool operator==(const Levels&, const Levels&) = default;
};

/// Reads "every 6 in", or lengths with commas between them: "3 in, 6 in, 1-0-0".
/// @param plain  units of plain numbers
/// @return what was found and what would do where it is neither
[[nodiscard]] Expected<Levels, LengthError> parseLevels(std::string_view text, Units plain);

/// At which lines offsets are re-read; what is left out stands where the table or a round figure has it.
struct OffsetLines {
    std::optional<Levels> stations; ///< x from the bow
    std::optional<Levels> waterlines, buttocks;
};

/// A length as a table of this rounding would print it, as a plain number in `units`: in multiples of the
/// table's unit where those are sixteenths of an inch or tenths of a millimetre and so are the units, else to
/// as many decimals as the unit supports.
[[nodiscard]] std::string roundedLength(double millimetres, double roundedTo, Units units);

} // namespace sheerlay::core

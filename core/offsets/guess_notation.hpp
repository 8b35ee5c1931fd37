#pragma once

#include "core/offsets/cell_grid.hpp"
#include "core/offsets/cell_length.hpp"
#include "core/offsets/table_corrections.hpp"
#include "geometry/expected.hpp"

namespace sheerlay::core {

/// A table's notation, and whether its unit was taken from the size of the numbers alone.
struct GuessedNotation {
    Notation notation;
    bool unitFromSize = false;
};

/// Guesses how the cells write lengths. Nothing that could mean two things is guessed: it is an error that
/// names the correction which settles it.
[[nodiscard]] Expected<GuessedNotation, LengthError> guessNotation(const CellGrid& grid,
                                                                   const TableCorrections& corrections);

} // namespace sheerlay::core

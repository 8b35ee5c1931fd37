#pragma once

#include "core/offsets/cell_grid.hpp"
#include "tests/support/catch.hpp"

#include <string>

namespace sheerlay::test {

/// The cells of a table that can be cut.
[[nodiscard]] inline core::CellGrid cut(const std::string& text) {
    const auto grid = core::splitCells(text, "trial.csv");
    REQUIRE(grid.has_value());
    return *grid;
}

} // namespace sheerlay::test

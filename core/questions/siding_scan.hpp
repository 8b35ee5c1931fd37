#pragma once

#include "core/project/project.hpp"

#include <array>
#include <optional>
#include <vector>

namespace sheerlay::core {

/// How well a table agrees with itself under one half siding after another.
struct SidingScan {
    std::vector<std::array<double, 2>> tried; ///< (half siding, mean residual) mm, from 0 to 20
    double best = 0.0;                        ///< mm, between the tried ones
    double bestResidual = 0.0;                ///< mm
    double residualAtZero = 0.0;              ///< mm
};

/// Nothing in the table says how far off the centreline the planking ends: neither half-siding nor a keel's
/// half-breadth. Stems may be told.
[[nodiscard]] bool sidingUntold(const HullTable& table);

/// Lofts the table with every half siding of the keel from 0 to 20 mm at one weight of fairness and takes the
/// one that leaves the least over: a fair estimate, and no more.
/// @return none where the table can't be lofted under any
/// @source table_checks.md section 1
[[nodiscard]] std::optional<SidingScan> scanSiding(const HullTable& table);

} // namespace sheerlay::core

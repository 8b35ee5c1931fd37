#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <vector>

namespace sheerlay::core {

/// The linear program of a tapered field: edges 1 to N as B-spline coefficients, edge 0 fixed at 0. Widths
/// lie between bounds, linearised edge bends keep a limit, and wood and touched strips are kept few.
/// @source closing.md section 1
struct TaperProgram {
    std::size_t edges = 0, coefficients = 0;

    /// Per edge and coefficient, edge by edge (index `at`): bounds of the width of the strip above the edge,
    /// mm, and its worth in wood, m2 per mm.
    std::vector<double> narrowest, full, wood;
    std::vector<char> inHull;         ///< the coefficient shapes the strip inside the hull
    std::vector<double> lower, upper; ///< bounds of the coefficients themselves, mm
    std::vector<double> price;        ///< per edge: cost of each mm of its strip's largest narrowing
    std::vector<char> mustBeFull;     ///< per edge: its strip may not be touched

    /// Edge bend at one place: constant + sum of a * coefficients first to first + 3, 1/m.
    struct Bend {
        std::size_t edge = 0, first = 0;
        std::array<double, 4> a{};
        double constant = 0.0;
    };
    std::vector<Bend> bends;
    double limit = 0.0;                  ///< 1/m
    std::optional<std::size_t> endsOnly; ///< widths may only fall outward from this coefficient

    [[nodiscard]] std::size_t at(std::size_t edge, std::size_t k) const { return edge * coefficients + k; }

    /// @return the coefficients, edge by edge; none when the solver gives up
    [[nodiscard]] std::optional<std::vector<double>> solve() const;
};

} // namespace sheerlay::core

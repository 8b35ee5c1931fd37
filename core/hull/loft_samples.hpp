#pragma once

#include "core/hull/coupled_fit.hpp"
#include "core/hull/hull.hpp"
#include "core/project/project.hpp"
#include "geometry/expected.hpp"

#include <memory>
#include <string>
#include <vector>

namespace sheerlay::core {

/// Hulls that the table could as well have meant: every printed number moved by up to half a unit of its
/// last digit, the surface following as the fit would, its weight of fairness held. The response is linear,
/// so one factorisation serves all; against lofting the changed tables anew it is checked in the tests.
/// @source table_checks.md section 3
class LoftSampler {
public:
    /// Takes up again the fit that made `hull` from `project`.
    /// @return words for the builder where the table no longer gives that hull
    [[nodiscard]] static Expected<LoftSampler, std::string> prepare(const Project& project,
                                                                    const LoftedHull& hull);

    /// The hull of draw `number`; the same number gives the same hull.
    /// @return the hull with a new laid surface and without drawn and moulds, findings and residuals; an
    /// error where the surface does not close
    [[nodiscard]] Expected<LoftedHull, std::string> draw(unsigned number) const;

    /// One printed number.
    struct Number {
        std::size_t point = 0;                      ///< index into LoftData::points
        enum Coordinate { X, Y, Z } coordinate = Y; ///< X: of the profile
    };
    [[nodiscard]] const std::vector<Number>& numbers() const { return m_numbers; }

    /// By how much draw `number` moves each of the numbers, mm, evenly spread over half a unit up and down.
    /// In a table that is the same from both ends a number and its mirror image were printed once: they move
    /// together.
    [[nodiscard]] std::vector<double> shifts(unsigned number) const;

    /// How the fitted poles (y, z, y, z, …) move when the printed numbers move by these, mm.
    [[nodiscard]] Eigen::VectorXd response(const std::vector<double>& shifts) const;

private:
    LoftSampler() = default;

    /// What a row's value gains when a number moves by 1 mm.
    struct Gain {
        std::size_t row = 0, number = 0;
        double factor = 0.0;
    };

    std::unique_ptr<CoupledFit> m_fit; ///< factored
    std::size_t m_rows = 0;
    std::vector<Number> m_numbers;
    std::vector<Gain> m_gains;
    std::vector<std::size_t> m_mirror; ///< per number, the first that was printed with it
    double m_unit = 0.0;               ///< mm, of the table's last digit
    double m_drawnHeight = 0.0;        ///< mm of the drawn surface above the moulds
    LoftedHull m_hull;
};

} // namespace sheerlay::core

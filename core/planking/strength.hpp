#pragma once

#include "core/project/project.hpp"
#include "core/project/wood.hpp"

namespace sheerlay::core {

/// What a strip of given wood and section bears. Clear-wood means; a planning rule, no test piece.
/// @source Wood Handbook FPL-GTR-282 (values, wood.hpp); Saint-Venant torsion of a rectangle, Timoshenko and
/// Goodier,
///         Theory of Elasticity, art. 109 (number from memory); half of the modulus of rupture as the
///         allowance for a strip bent by hand is a derived planning rule, not a published one
class Strength {
public:
    /// @throws std::invalid_argument  thickness or width not positive
    Strength(const Wood& wood, double thickness, double width);

    /// Part of the wood's modulus of rupture that a strip bent by hand may use.
    static constexpr double allowedPart = 0.5;
    /// Part of the wood's shear strength that twist may use: the weakest piece in twenty, coefficient of
    /// variation 14 percent (from memory).
    static constexpr double allowedShearPart = 0.77;

    /// Part of the allowance used by edge bend, bend (both 1/mm) and twist (rad/mm) together: strains of both
    /// bends add at one corner, twist counts by the square of its shear: eps / eps_allowed + (tau /
    /// tau_allowed)^2.
    [[nodiscard]] double strain(double edgeBend, double bend, double twist) const noexcept;

    /// Smallest radius of edge bend the allowance gives for edge bend alone, mm: E w / (2 f MOR).
    [[nodiscard]] double edgeBendRadius() const noexcept;

    /// N at mid-span that hold an edge bend over one mould bay, simple supports: 6 E I kappa / bay.
    [[nodiscard]] double holdingForce(double edgeBend, double bay) const noexcept;

private:
    double m_thickness, m_width;
    double m_modulus; // MPa, along the grain
    double m_allowedStrain;
    double m_shearFactor;  // MPa per rad/mm at the middle of the wide face
    double m_allowedShear; // MPa
};

} // namespace sheerlay::core

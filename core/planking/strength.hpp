#pragma once

#include "core/project/project.hpp"
#include "core/project/wood.hpp"

namespace sheerlay::core {

/// Pound-force, exact by definition.
inline constexpr double newtonsPerPound = 4.4482216152605;

/// How to treat the wood of a strip, by the part of the allowance that its shape uses.
enum class WoodUse {
    ByHand,       ///< up to the allowance, half of the modulus of rupture: bends dry, by hand
    PickStraight, ///< up to 0.65 of it, where clear dry wood stops being elastic: expect some breakage
    SteamIt,      ///< beyond: steam, laminate, or mill the strip thinner or narrower
};

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
    /// @source mechanics of Timoshenko, Strength of Materials I (bending); the sum with twist is a planning
    ///         rule, not from a standard
    [[nodiscard]] double strain(double edgeBend, double bend, double twist) const noexcept;

    /// @param strain  as strain() gives it, 1 at the allowance
    [[nodiscard]] static WoodUse woodUse(double strain) noexcept;
    /// What to do with a strip of this class, to end a sentence with.
    [[nodiscard]] static const char* advice(WoodUse use) noexcept;

    /// Smallest radius of edge bend the allowance gives for edge bend alone, mm: E w / (2 f MOR).
    [[nodiscard]] double edgeBendRadius() const noexcept;

    /// N at mid-span that hold an edge bend (1/mm) over one mould bay (mm), simple supports: 6 E I kappa /
    /// bay.
    /// @accuracy  shear left out: 5 percent too much at 305 mm, more over shorter bays
    [[nodiscard]] double holdingForce(double edgeBend, double bay) const noexcept;

    /// N mm at each end that hold an edge bend (1/mm) in a long strip: E I kappa.
    [[nodiscard]] double edgeCouple(double edgeBend) const noexcept;

    /// N mm that hold a twist, rad/mm: G J theta'.
    [[nodiscard]] double twistingCouple(double twist) const noexcept;

    /// Edge bend, 1/mm, at which a strip held flat only at moulds `bay` mm apart rolls out of the surface
    /// sideways between them: (pi / bay) sqrt(E I_flat G J) / (E I_edge). Infinite for a strip as thick as
    /// wide. On the safe side: as if bent so all along the bay, and its neighbour's cove did not hold it.
    /// @source Timoshenko and Gere, Theory of Elastic Stability, ch. 6 (from memory), pure bending
    [[nodiscard]] double rollingEdgeBend(double bay) const noexcept;

    /// Part of rollingEdgeBend that this edge bend (1/mm) is; over 1 the strip rolls out.
    [[nodiscard]] double rolling(double edgeBend, double bay) const noexcept;
    [[nodiscard]] bool rollsOut(double edgeBend, double bay) const noexcept {
        return rolling(edgeBend, bay) > 1.0;
    }

private:
    double m_thickness, m_width;
    double m_modulus;      // MPa, along the grain
    double m_shearModulus; // MPa, of the wide face's plane
    double m_allowedStrain;
    double m_shearFactor;  // MPa per rad/mm at the middle of the wide face
    double m_allowedShear; // MPa
    double m_torsion = 0;  // mm4, J of Saint-Venant
};

} // namespace sheerlay::core

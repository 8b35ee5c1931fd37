#pragma once

#include <span>
#include <string>
#include <string_view>

namespace sheerlay::core {

/// One kind of wood, as a table of clear, straight-grained wood at 12 % moisture gives it: means of small
/// specimens. Single boards differ (from memory: strength and stiffness vary by about a fifth, density by a
/// tenth).
struct Wood {
    std::string_view id;          ///< as written in a project file: "western-redcedar"
    std::string_view commonName;  ///< "Western redcedar"
    double bendingStrength = 0.0; ///< MPa, modulus of rupture (MOR)
    double bendingModulus =
        0.0;                   ///< GPa, modulus of elasticity of the bending test, shear deflection included
    double alongModulus = 0.0; ///< GPa, E along the grain without shear: 1.10 x bendingModulus
    double shearModulus = 0.0; ///< MPa, G in the plane of the wide face of a flat-sawn strip (GLT), estimated
    double shearStrength = 0.0; ///< MPa, parallel to the grain
    double density = 0.0;       ///< kg/m3 at 12 % moisture

    friend bool operator==(const Wood&, const Wood&) = default;
};

/// Every wood a project may name, western redcedar first.
/// @source  Forest Products Laboratory, Wood Handbook, General Technical Report FPL-GTR-282, Madison WI,
/// 2021;
///          Table 5-3b (strength, stiffness, specific gravity), 5-1 (elastic ratios). Status in wood.cpp.
[[nodiscard]] std::span<const Wood> allWoods() noexcept;

/// The wood with this id; nullptr where there is none.
[[nodiscard]] const Wood* findWood(std::string_view id) noexcept;

/// All ids, for a message: "western-redcedar, northern-white-cedar, …".
[[nodiscard]] std::string woodNames();

} // namespace sheerlay::core

#pragma once

#include "core/afloat/submerged.hpp"
#include "geometry/expected.hpp"

#include <Eigen/Core>

#include <string>

namespace sheerlay::core {

/// A weight with its centre in the boat's frame.
struct Burden {
    double mass = 0.0;                                ///< kg
    Eigen::Vector3d centre = Eigen::Vector3d::Zero(); ///< mm; y + to starboard
};

/// Two burdens as one.
[[nodiscard]] Burden together(const Burden& one, const Burden& other);

/// Why there is no rest afloat.
struct AfloatError {
    enum class Kind { TooHeavy, Swamped, NoRest };
    Kind kind = Kind::NoRest;
    double most = 0.0; ///< kg the hull can displace up to its lowest sheer, floating level
    Eigen::Vector3d at = Eigen::Vector3d::Zero(); ///< mm, where water comes over the sheer
    double depth = 0.0;                           ///< mm of water over it there
};

/// The boat at rest.
struct Rest {
    WaterPlane water;
    Submerged under;
    double freeboard = 0.0;                                ///< mm, the least
    Eigen::Vector3d freeboardAt = Eigen::Vector3d::Zero(); ///< mm
    double draught = 0.0;                                  ///< mm
    double bm = 0.0;                                       ///< mm, metacentric radius across
    double gm = 0.0;                                       ///< mm, metacentric height across
};

/// The level at which a volume is displaced, for a trim and heel; the hull is closed by its lid.
/// @param volume  mm3, above 0 and below what the closed hull holds
[[nodiscard]] WaterPlane levelFor(const FloatBody& body, double volume, const WaterPlane& near);

/// Volume of the closed hull, mm3.
[[nodiscard]] double volumeOf(const FloatBody& body);

/// Where the boat comes to rest: heave, trim and heel of the least energy reached from `start`.
/// @param density  of the water, kg/m3
/// @return  the rest, or why there is none: too heavy for the closed hull, or water over the sheer at rest
/// @accuracy  tests/core/afloat/equilibrium_test.cpp: from any start within 0.01 mm and 0.001 degrees
[[nodiscard]] Expected<Rest, AfloatError>
rest(const FloatBody& body, const Burden& burden, double density, const WaterPlane& start = {});

/// Trim at which she balances fore and aft at a given heel, with the level that carries her.
[[nodiscard]] WaterPlane
balancedAt(const FloatBody& body, const Burden& burden, double density, double heel, const WaterPlane& near);

/// kg she displaces on an even keel with the sheer's lowest point `freeboard` mm above the water; 0 where it
/// can't be.
[[nodiscard]] double levelDisplacement(const FloatBody& body, double density, double freeboard);

} // namespace sheerlay::core

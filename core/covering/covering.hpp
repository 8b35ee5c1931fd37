#pragma once

#include "core/covering/covered_face.hpp"
#include "core/fitout/bulkheads.hpp"
#include "core/hull/hull.hpp"
#include "core/project/covering_choices.hpp"
#include "core/project/finding.hpp"
#include "core/project/project.hpp"

#include <Eigen/Core>

#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// Cloth to cut from the roll, alike pieces together.
struct ClothPiece {
    std::string what; ///< "over the keel", "one to a side", …
    int count = 1;
    double width = 0.0;  ///< mm that are needed of the roll's
    double length = 0.0; ///< mm, overhang included
};

/// A slit in the cloth at an end, its edges laid over one another (or a gusset let in where they gape).
struct ClothSlit {
    End end = End::Bow;
    bool alongStem = false; ///< else in each side's cloth
    double fromX = 0.0;     ///< mm from the bow: from here to the end
    double angle = 0.0;     ///< rad that the edges overlap; negative where they gape
};

/// One coat of resin over a face.
struct ResinCoat {
    std::string name;    ///< "seal", "wet-out", "coat 1", …
    double litres = 0.0; ///< mixed, waste included
    std::optional<int> batches;
    double batch = 0.0; ///< litres in each; 0 without batches
};

/// A face with everything that goes on it.
struct FaceCovering {
    std::string name;       ///< "outside", "inside", "bulkheads"
    bool bulkheads = false; ///< pieces laid flat, turned out onto the hull by the overlap; no slits
    ClothFace choices;
    CoveredFace face;
    ClothLay lay = ClothLay::Drape; ///< never Fewest
    double overlaps = 0.0;          ///< mm2 of cloth lying double
    std::vector<ClothPiece> pieces;
    std::vector<ClothSlit> slits;
    double fromRoll = 0.0; ///< mm of roll to buy, spare included
    std::vector<ResinCoat> coats;
    double litres = 0.0;      ///< all coats
    double varnish = 0.0;     ///< litres, all coats
    double glassMass = 0.0;   ///< kg that stay on the boat
    double resinMass = 0.0;   ///< kg
    double varnishMass = 0.0; ///< kg

    [[nodiscard]] double covered() const noexcept {
        return face.area + overlaps;
    } ///< mm2 of cloth on the boat
};

/// Everything that covers the planking.
struct CoveringPlan {
    std::vector<FaceCovering> faces; ///< those that are asked for; bulkheads last
    double litres = 0.0;             ///< mixed resin, all coats of all faces
    double liquidMass = 0.0;         ///< kg of it
    std::optional<MixParts> mix;
    double varnish = 0.0; ///< litres
    double mass = 0.0;    ///< kg added to the boat
    std::vector<Finding> findings;

    /// Litres of resin and of hardener; none where the mix is not told, or told by weight.
    struct Parts {
        double resin = 0.0, hardener = 0.0;
    };
    [[nodiscard]] std::optional<Parts> litresOf(double mixed) const;
    /// Kilograms of resin and of hardener, where the mix is told by weight.
    [[nodiscard]] std::optional<Parts> kilogramsOf(double mixed, double liquidDensity) const;
};

/// Lays out cloth and coats; a pure function of what it is given.
/// @param outside  outer face of the planking
/// @return  none where the project says nothing of covering
/// @source  tests/reference/glass_epoxy.md, its quantity recipe
[[nodiscard]] std::optional<CoveringPlan>
planCovering(const Project& project, const LoftedHull& hull, const TrimmedSurface& outside);

/// Adds cloth over bulkheads where [covering.bulkheads] asks for it; where there is none to cover a finding
/// says so.
/// @accuracy  tests/core/covering/covering_test.cpp: half circles in closed form
void coverBulkheads(CoveringPlan& plan,
                    const CoveringChoices& choices,
                    const std::vector<Bulkhead>& bulkheads);

/// The same for faces that are measured already.
[[nodiscard]] CoveringPlan
coverFaces(const CoveringChoices& choices, const CoveredFace& outside, const CoveredFace& inside);

} // namespace sheerlay::core

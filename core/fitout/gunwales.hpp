#pragma once

#include "core/fitout/hull_faces.hpp"
#include "core/fitout/sheer_line.hpp"
#include "core/planking/strength.hpp"
#include "core/project/finding.hpp"

#include <string>
#include <vector>

namespace sheerlay::core {

/// One piece of a gunwale.
struct GunwalePiece {
    double from = 0.0; ///< mm along the sheer from its bow end; below 0 by what is left over there
    double to = 0.0;   ///< mm, scarf included
    [[nodiscard]] double length() const noexcept { return to - from; } ///< mm to cut
};

/// The inner or the outer gunwale of one side; the other side is its mirror image.
struct Gunwale {
    StickSize size;
    double sheerLength = 0.0;         ///< mm along the face of the hull it lies on
    double farLength = 0.0;           ///< mm along its other face
    double cutLength = 0.0;           ///< mm, of the longer face with what is left over at both ends
    double scarf = 0.0;               ///< mm, length of one scarf
    std::vector<double> scarfs;       ///< mm along the sheer, their middles, bow to stern
    std::vector<GunwalePiece> pieces; ///< bow to stern; one more than scarfs; none where stock is too short
    double strain = 0.0;              ///< largest part of the wood's allowance, both bends and twist together
    double strainAtX = 0.0;           ///< mm from the bow
    double bend = 0.0;                ///< 1/mm, largest across the boat
    double edge = 0.0;                ///< 1/mm, largest up and down, absolute
    WoodUse use = WoodUse::ByHand;
};

/// What is planed to make a gunwale lie against the side, at one place.
struct GunwaleBevel {
    std::string name;                          ///< of the station
    double x = 0.0;                            ///< mm from the bow
    double alongInner = 0.0, alongOuter = 0.0; ///< mm along the sheer from its bow end
    double flare = 0.0; ///< rad; + the side leans outward going up. Square: off the face that lies against
                        ///< the side. Side: off the top, to be level.
};

/// Openings in the inner gunwale.
struct Scuppers {
    int count = 0;      ///< a side
    double first = 0.0; ///< mm along the inner sheer from its bow end to the first opening's edge
    double opening = 0.0, block = 0.0; ///< mm
    double solidEnds = 0.0;            ///< mm of the inner gunwale without an opening, at each end
};

struct Gunwales {
    Gunwale inner, outer;
    std::vector<GunwaleBevel> bevels; ///< at the stations, bow to stern
    double rabbet = 0.0;        ///< mm wide, cut into the outer gunwale to lap the planking's edge; 0: plain
    std::vector<double> screws; ///< mm along the outer sheer from its bow end, one side
    double screwSpacing = 0.0;  ///< mm; between blocks where there are scuppers
    int screwCount = 0;         ///< both sides
    int plugCount = 0;          ///< both sides
    std::optional<Scuppers> scuppers;
    std::vector<SheerPoint> innerLine, outerLine; ///< of the faces they lie on
};

/// mm between the scarfs of sticks that lie side by side; judged: a mould bay.
inline constexpr double scarfsApart = 300.0;

/// Where scarfs of a stick along the sheer go: the fewest pieces no longer than the stock, and among these
/// the places where the wood is strained least.
/// @param strain    at equal steps over `length`
/// @param scarf     mm long; > 0
/// @param overEnds  mm left over at each end
/// @param keepOff   mm, places of other scarfs; 300 mm to either side are avoided
/// @param lean      1: as near the bow as may be, -1: the stern, whatever the strain; 0: where it is least
/// @return middles of the scarfs, mm; none where the stock can't make it
[[nodiscard]] std::optional<std::vector<double>> placeScarfs(const std::vector<double>& strain,
                                                             double length,
                                                             double stock,
                                                             double scarf,
                                                             double overEnds,
                                                             const std::vector<double>& keepOff,
                                                             int lean = 0);

/// Gunwales along the sheer of the finished hull; what asks for care is added to `findings`.
struct GunwalePlan {
    Gunwales gunwales;
    std::vector<Finding> findings;
};
/// @accuracy  tests/core/fitout/gunwales_test.cpp: circular and helical sheers to 0.05 mm
/// @throws std::invalid_argument  the project asks for no gunwales
[[nodiscard]] GunwalePlan
planGunwales(const Project& project, const LoftedHull& hull, const HullFaces& faces);

} // namespace sheerlay::core

#pragma once

#include "core/planking/plan_uncertainty.hpp"
#include "core/project/finding.hpp"
#include "core/project/project.hpp"

#include <Eigen/Core>

#include <algorithm>
#include <array>
#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

enum class Side { Port, Starboard, Centre };
enum class StripKind { Full, Tapered, Stealer, Filler, Shutter };
/// Which edge is planed away to taper the strip; the other one lies as it was milled.
enum class PlanedEdge { None, Upper, Lower };
enum class EndsOn { Stem, Keel, Transom, Sheer, Strip, Nib };
/// What a strip does where the two sides are woven.
enum class Weave {
    None,
    Passes, ///< runs past the centreplane and is cut flush with the outer face of the other side
    Fitted, ///< is fitted against the inner face of the other side's strip of the same row, which passes
};

/// Edge bend: bending across the strip's width, in the surface. 1/mm, + when the centre of the bend is on the
/// keel side.
struct EdgeBend {
    double maxAbs = 0.0;
    double signedMin = 0.0;
    double signedMax = 0.0;
    std::optional<double> minRadius; ///< mm; none when straight
    double atX = 0.0;                ///< mm from the bow, where maxAbs stands
    double force = 0.0;              ///< N, to hold maxAbs over one mould bay
};

/// At the keel line, where the sides are not cut to the line alike: the first one runs past it.
struct KeelCrossing {
    double past = 0.0;  ///< mm that the first side's middle runs past the line, - when it ends short of it
    bool first = false; ///< this is the first side
    bool fixed =
        false; ///< it stays there, cut along the other side's edge; else it is planed back to the line

    friend bool operator==(const KeelCrossing&, const KeelCrossing&) = default;
};

/// Where and how a strip ends. x and z are of the middle line's end, mm.
struct StripEnd {
    End end = End::Bow;
    EndsOn on = EndsOn::Stem;
    double x = 0.0;
    double z = 0.0;
    double cut = 0.0;      ///< rad, 0 to pi/2: angle between strip and the line it ends on, in the surface
    double bevel = 0.0;    ///< rad, of the end face from square to the strip's face
    double dihedral = 0.0; ///< rad, interior angle of the two sides there
    Weave weave = Weave::None;
    double lapInner =
        0.0; ///< mm past the centreplane, inner face of whichever side passes; 0 where not woven
    double lapOuter =
        0.0;          ///< mm past the centreplane, outer face of whichever side passes; 0 where not woven
    double lap = 0.0; ///< mm, the larger of the two
    double runInner =
        0.0; ///< mm along this strip from its middle line's end to its inner face's, - when short
    double runOuter = 0.0; ///< mm, the same to its outer face's end
    double landing = 0.0;  ///< mm, wood on wood across the side of a stem piece; 0 where there is none
    std::optional<KeelCrossing> crossing; ///< none where each side is cut to the line
};

/// What the strip does at one place of its middle line.
struct StripSample {
    double s = 0.0;        ///< mm along the middle from its bow end
    double x = 0.0;        ///< mm from the bow
    double width = 0.0;    ///< mm, square to the middle
    double edgeBend = 0.0; ///< 1/mm, signed as in EdgeBend
    double twist = 0.0;    ///< rad/mm, signed
    double bend = 0.0;     ///< 1/mm over the moulds, + where the hull is convex
};

/// One piece of planking as laid. A value; port mirrors starboard.
struct Strip {
    std::string
        id; ///< "S07", "P07"; "S-03.2" above the start where a row has several pieces; "C36" over both sides
    Side side = Side::Starboard;
    int row = 1; ///< 1, 2, … from the start toward the keel; -1, -2, … above it
    StripKind kind = StripKind::Full;
    PlanedEdge planed = PlanedEdge::None;
    std::vector<Eigen::Vector3d>
        upperEdge; ///< mm, bow to stern, nearer the sheer; of a centre piece the starboard edge
    std::vector<Eigen::Vector3d> lowerEdge;    ///< mm, bow to stern; of a centre piece the port edge
    std::vector<Eigen::Vector3d> middle;       ///< mm, bow to stern, inside the trims
    std::vector<Eigen::Vector3d> middleNormal; ///< unit outward surface normals at `middle`
    std::vector<StripSample> samples;          ///< one per point of `middle`
    double length = 0.0;                       ///< mm along the middle inside the trims
    double cutLength = 0.0;                    ///< mm to cut, laps and trim at both ends included
    std::vector<std::array<double, 2>> widths; ///< [mm along the middle from the bow end, mm width]
    double milledWidth = commonStripWidth;     ///< mm, edge to edge, before anything is cut from it
    EdgeBend edgeBend;
    double twistMax = 0.0;               ///< rad/mm, absolute
    double twistAtX = 0.0;               ///< mm
    std::optional<double> bendMinRadius; ///< mm; none when straight
    double bendAtX = 0.0;                ///< mm
    double strainMax = 0.0;              ///< part of the wood's allowed strain
    double strainAtX = 0.0;              ///< mm
    std::array<StripEnd, 2> ends;        ///< bow, stern
    /// Flattened: from the bow end of the upper edge along it to the stern and back along the lower edge, mm.
    /// First coordinate along the chord of the middle line from the bow; second toward the keel on starboard,
    /// mirrored on port.
    std::vector<Eigen::Vector2d> outline;
    std::size_t outlineUpperCount = 0; ///< how many of the outline's first points belong to the upper edge
    bool accent = false;               ///< belongs to an accent row
    /// The last strip of the side that is run over: laid whole over the centreline, and planed back to it
    /// along its length together with that side's ends. Its edges here are those it has then.
    bool planedBack = false;
    int order = 0; ///< 1, 2, … in the laying order, over all pieces
};

/// mm, the largest width the strip has anywhere.
[[nodiscard]] inline double widest(const Strip& strip) noexcept {
    double most = 0.0;
    for (const StripSample& sample : strip.samples)
        most = std::max(most, sample.width);
    return most;
}

/// mm: a piece above the start that is nowhere wider is not worth laying (judged, closing.md section 3).
inline constexpr double thinnestFiller = 6.0;
/// mm: a piece above the start that is shorter is better joined with its neighbour (judged, the same).
inline constexpr double shortFiller = 150.0;

/// Rows from first to last, both included.
struct RowRange {
    int first = 0;
    int last = 0;
};

/// Landmarks of the work.
struct Marks {
    std::optional<RowRange> weaveBow, weaveStern; ///< rows whose ends are woven
    std::optional<int> closingBow, closingStern;  ///< first row whose middle ends on the keel
};

/// What the tapers reach, both sides of the start together.
struct Tapers {
    int touched = 0;         ///< rows a side that are planed narrower
    double wood = 0.0;       ///< mm2 planed away on one side of the boat
    double plainWorst = 0.0; ///< 1/mm, worst edge bend of any edge without a taper
    double narrowest = 0.0;  ///< mm, allowed
    int metFromBelow = 1;    ///< first row below the start from which on every strip as laid keeps the limit
    int metFromAbove = 1;    ///< the same above it, counted from the start
};

/// How well the strips cover the hull; areas of one side (starboard, and half of a centre piece).
struct Coverage {
    double stripsArea = 0.0;     ///< mm2
    double hullArea = 0.0;       ///< mm2
    double largestGap = 0.0;     ///< mm, >= 0
    double largestOverlap = 0.0; ///< mm, >= 0
};

/// What a start line does to every row, before a board is milled.
struct StartCandidate {
    StartLine line;
    double worst = 0.0;    ///< 1/mm, largest edge bend of any row's middle
    int worstRow = 0;      ///< row it is in
    double worstX = 0.0;   ///< mm from the bow
    int rowsToKeel = 0;    ///< rows below the start
    int rowsToSheer = 0;   ///< rows above it
    int rowsOverFree = 0;  ///< rows that need more than hands
    int rowsOverClamp = 0; ///< rows that need more than clamps
};

/// Every strip of the boat: what the whole program is for.
struct Plan {
    StartLine start; ///< the line the rows really start from; never "easiest"
    std::vector<StartCandidate>
        candidates;            ///< what the search for the easiest start compared; empty without a search
    std::vector<Strip> strips; ///< by row from the top, starboard before port
    int firstRow = 1;          ///< -n when there are n rows above the start
    int lastRow = 0;
    Marks marks;
    Coverage coverage;
    std::optional<Tapers> tapers;       ///< none where the project asks for none
    std::vector<int> accentRows;        ///< rows that stand out, never tapered
    std::optional<int> splitRow;        ///< first row of a bottom planked by itself along the centreline
    std::optional<int> herringboneFrom; ///< first row whose strips cross the centreline by turns
    double coverWidth = 0.0; ///< mm a full strip covers; less than the project's where all are planed
    std::optional<PlanUncertainty> uncertainty; ///< none where it was not worked out
    std::vector<Finding> findings;              ///< heaviest first; the loft's are in LoftedHull
    double edgeBendLimit = 0.0;                 ///< 1/mm, allowed by wood and strip or by the project
    double mouldBay = 0.0;                      ///< mm, station spacing that forces are reckoned over
    double milliseconds = 0.0;                  ///< time the planking took
};

/// 1/mm, the hardest edge bend of any strip.
[[nodiscard]] inline double worstEdgeBend(const Plan& plan) noexcept {
    double worst = 0.0;
    for (const Strip& strip : plan.strips)
        worst = std::max(worst, strip.edgeBend.maxAbs);
    return worst;
}

} // namespace sheerlay::core

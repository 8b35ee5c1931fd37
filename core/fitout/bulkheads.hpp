#pragma once

#include "core/fitout/hull_faces.hpp"
#include "core/moulds/mould.hpp"
#include "core/project/finding.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// A board that closes off an end of the boat. In the plane of its face toward amidships, which is the
/// larger: first coordinate y to starboard, second z above the base line.
struct Bulkhead {
    BulkheadChoice choice;
    double x = 0.0; ///< mm from the bow, of that face
    std::vector<EdgePoint>
        edge;           ///< starboard, top to centreline, where it meets the finished inside less the gap
    double crown = 0.0; ///< mm, rise of its top at the centreline
    std::vector<Eigen::Vector2d> outline;     ///< whole, closed, first point not repeated
    double width = 0.0;                       ///< mm, at its widest
    double height = 0.0;                      ///< mm, from the bottom to the top on the centreline
    double bevelLeast = 0.0, bevelMost = 0.0; ///< rad
    double edgeLength = 0.0;                  ///< mm, round both sides from top to top
    double voidVolume = 0.0;                  ///< mm3 behind it, under the deck or the line across the sheer

    [[nodiscard]] double litres() const noexcept { return voidVolume / 1e6; }
};

struct BulkheadPlan {
    std::optional<Bulkhead> bulkhead;
    std::vector<Finding> findings;
};

/// @param decks  where one lies over it, its top follows the underside, if the file gives it no other
/// @accuracy  tests/core/fitout/bulkheads_test.cpp: cylinder, cone, sphere to 0.05 mm and 0.05 degrees;
/// volume
///            to 0.1 percent
[[nodiscard]] BulkheadPlan
planBulkhead(const BulkheadChoice& choice, const HullFaces& faces, const std::vector<DeckChoice>& decks);

/// mm3 inside a face between the plane x = from and the end, both sides, under the line across the sheer
/// lowered by `below`; `crown` mm is the rise over it where the face is `crownBreadth` mm wide a side, and
/// goes with the breadth's square, as that of a plate sprung to one radius does.
[[nodiscard]] double volumeToEnd(
    const TrimmedSurface& inside, End end, double from, double below, double crown, double crownBreadth);

} // namespace sheerlay::core

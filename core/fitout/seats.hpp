#pragma once

#include "core/fitout/caning.hpp"
#include "core/fitout/cross_piece.hpp"
#include "core/fitout/gunwales.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// Where a bolt comes down through the inner gunwale into a cross piece; the other side mirrors it.
struct GunwaleBolt {
    double x = 0.0;           ///< mm from the bow
    double halfBreadth = 0.0; ///< mm from the centreplane
    double inset = 0.0;       ///< mm from the inner gunwale's inner edge
    double alongSheer = 0.0;  ///< mm along the inner sheer from its bow end
    double hanger = 0.0;  ///< mm of wood between the gunwale's underside and the cross piece's top; 0: none
    double fromEnd = 0.0; ///< mm from the cross piece's end, along its upper edge in the middle of its width
    double hangerSlope = 0.0; ///< rad, of the gunwale's underside against level, fore and aft; + rising aft
};

/// A rail, thwart or yoke with its bolts.
struct BoltedPiece {
    CrossPiece piece;
    std::optional<GunwaleBolt> bolt; ///< none where it stands on cleats
};

/// A seat of two rails across and two side rails between them.
struct Seat {
    SeatChoice choice;
    double x = 0.0;           ///< mm from the bow, of its middle
    double top = 0.0;         ///< mm above the base line, of its middle
    double aboveBottom = 0.0; ///< mm, over the inside on the centreline
    double belowSheer = 0.0;  ///< mm, under the line across the sheer
    double footRoom = 0.0;    ///< mm, from the bottom to the rails' underside, the lower of the two
    double widthFront = 0.0, widthBack = 0.0; ///< mm, inside the hull at the seat's top, front and back edge
    BoltedPiece front, back;
    double opening = 0.0;  ///< mm between the side rails
    double sideRail = 0.0; ///< mm, between the cross rails, tenons not counted
    std::optional<Caning> caning;
    /// mm down the inside from the sheer's edge to the rails' undersides, where a cleat's top goes; of the
    /// front rail's forward edge and the back rail's after edge; 0 on hangers
    double cleatFront = 0.0, cleatBack = 0.0;
    double cleatLength = 0.0; ///< mm
};

struct Thwart {
    std::string name;
    double x = 0.0; ///< mm from the bow, of its middle
    BoltedPiece bar;
    double kneeRoom = 0.0; ///< mm, from the bottom to its underside
};

/// The inner gunwale as cross pieces meet it.
struct InnerGunwale {
    StickSize size;
    std::vector<SheerPoint> line;
};

struct SeatPlan {
    std::optional<Seat> seat; ///< none where it does not fit, which a finding then says
    std::vector<Finding> findings;
};
struct ThwartPlan {
    std::optional<Thwart> thwart;
    std::vector<Finding> findings;
};

/// @param gunwale  none where the project has no gunwales: then nothing can hang from them
[[nodiscard]] SeatPlan planSeat(const SeatChoice& choice,
                                const HullFaces& faces,
                                double xShift,
                                const std::optional<InnerGunwale>& gunwale);

/// A bar bolted under the inner gunwales, its upper face along their underside where the bolts go.
/// @param x  mm from the bow, of its middle
[[nodiscard]] ThwartPlan
planThwart(const ThwartChoice& choice, double x, const HullFaces& faces, const InnerGunwale& gunwale);

} // namespace sheerlay::core

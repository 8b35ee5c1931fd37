#pragma once

#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

enum class End;

// What the builder decided about the parts that come after the planking. Lengths mm. Sizes that stand here
// first are common practice, no source, unless a comment names one.

/// A stick's section.
struct StickSize {
    double width = 19.05;  ///< across the boat for a gunwale, along her for a rail; > 0
    double height = 19.05; ///< > 0

    friend bool operator==(const StickSize&, const StickSize&) = default;
};

/// Openings between the planking and the inner gunwale, to drain the boat through and to tie things to.
struct ScupperChoice {
    double opening = 100.0;   ///< along the gunwale; > 0
    double block = 40.0;      ///< wood between two openings; > 0
    double solidEnds = 450.0; ///< no opening nearer to either end; >= 0

    friend bool operator==(const ScupperChoice&, const ScupperChoice&) = default;
};

struct GunwaleChoices {
    enum class Stand { Square, Side }; ///< faces plumb, or along the side
    enum class Edge { Plain, Rabbet }; ///< beside the planking's edge, or lapping it

    StickSize inner, outer;
    Stand stand = Stand::Square;
    Edge edge = Edge::Plain;
    double stockLength = 3657.6;       ///< longest piece to be had; 12 ft
    double scarfSlope = 10.0;          ///< scarf over width; bonded area ten sections: Wood Handbook, ch. 10
    double overLength = 50.0;          ///< left at each end to be cut when fitted
    double screwSpacing = 177.8;       ///< 7 in; 6 to 8 in from memory, shop.md
    bool plugs = true;                 ///< over the screws' heads
    double screwDiameter = 4.2;        ///< of the screws' shank; No. 8
    std::optional<double> screwLength; ///< none: two thirds into the outer one
    std::optional<ScupperChoice> scuppers;

    friend bool operator==(const GunwaleChoices&, const GunwaleChoices&) = default;
};

struct BulkheadChoice {
    End end{};               ///< whose space it closes off
    double fromEnd = 304.8;  ///< from that end's outermost point to the face toward amidships
    double thickness = 6.35; ///< of the board
    double gap = 0.0;        ///< left all round for glue or a strip of foam
    double belowSheer = 0.0; ///< its top under the line across the sheer
    double crown = 0.0;      ///< rise of its top at the centreline over that line
    friend bool operator==(const BulkheadChoice&, const BulkheadChoice&) = default;
};

struct DeckChoice {
    enum class Between { Gunwales, Planking }; ///< what its edges land against

    End end{};
    double length = 457.2; ///< from that end's outermost point to the deck's inner edge
    double thickness = 6.35;
    double crown = 0.0; ///< rise at the centreline of its inner edge; > 0: sprung to one radius all along
    Between between = Between::Gunwales;
    friend bool operator==(const DeckChoice&, const DeckChoice&) = default;
};

/// Holes round a seat's opening, and cane drawn through them in six ways.
struct CaningChoice {
    double spacing = 12.7; ///< between holes
    double hole = 4.8;     ///< across
    double inset = 12.7;   ///< from the opening's edge to the holes' middles

    friend bool operator==(const CaningChoice&, const CaningChoice&) = default;
};

struct SeatChoice {
    enum class On { Hangers, Cleats };

    std::string name;
    double x = 0.0;                    ///< of its middle, in the table's datum
    std::optional<double> aboveBottom; ///< top of the seat's middle over the inside on the centreline
    std::optional<double> belowSheer;  ///< the same under the line across the sheer; one of the two is given
    double depth = 254.0;              ///< fore and aft, over both rails
    double tilt = 0.0;                 ///< rad, + forward edge lower
    StickSize rail{38.1, 19.05};
    On on = On::Hangers;
    std::optional<double> boltInset; ///< from the inner gunwale's inner edge; none: half its width
    std::optional<double> opening;   ///< between the side rails; none: what the boat's width leaves
    std::optional<CaningChoice> caning;
    double footRoom = 230.0; ///< wanted between the seat's underside and the bottom; kneeling, feet under it
    double legRoom = 500.0;  ///< wanted from its forward edge to what stands across the boat before it
    friend bool operator==(const SeatChoice&, const SeatChoice&) = default;
};

/// A bar across the boat under the inner gunwales.
struct ThwartChoice {
    std::string name;
    std::optional<double> x; ///< of its middle, in the table's datum; none (a yoke): where the boat balances
    StickSize size{57.15, 19.05};
    std::optional<double> boltInset; ///< from the inner gunwale's inner edge; none: half its width
    double kneeRoom = 230.0; ///< wanted between its underside and the bottom, for knees and feet under it
    friend bool operator==(const ThwartChoice&, const ThwartChoice&) = default;
};

struct FitoutChoices {
    std::string wood = "white-ash"; ///< of gunwales, seats, thwarts and yoke; a name of core/project/wood.hpp
    double glassInside = 0.5;       ///< thickness of cloth and resin on the inside; judged
    double glassOutside = 0.5;      ///< and on the outside; judged
    double boltDiameter = 6.35;     ///< of seats', thwarts' and yoke's bolts; 1/4 in
    std::optional<GunwaleChoices> gunwales;
    std::vector<BulkheadChoice> bulkheads;
    std::vector<DeckChoice> decks;
    std::vector<SeatChoice> seats;
    std::vector<ThwartChoice> thwarts;
    std::optional<ThwartChoice> yoke;

    friend bool operator==(const FitoutChoices&, const FitoutChoices&) = default;
};

} // namespace sheerlay::core

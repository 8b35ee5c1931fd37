#pragma once

#include "core/project/afloat_choices.hpp"
#include "core/project/covering_choices.hpp"
#include "core/project/fitout_choices.hpp"
#include "core/project/journal.hpp"
#include "core/project/mould_choices.hpp"
#include "core/project/paper_choices.hpp"
#include "core/project/prices.hpp"
#include "core/project/put_aside.hpp"
#include "core/project/stock.hpp"
#include "core/words/language.hpp"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// Units of plain numbers in a project file, and of what is printed.
enum class Units { Millimetres, Inches };

/// Which end of the boat.
enum class End { Bow, Stern };

/// Where a point of the table stands in it; its two coordinates are read off different cells.
enum class PointKind { Sheer, Waterline, Buttock, Point, Keel, Knuckle };

/// How a table gives a point on a diagonal: a plane through a height on the centreplane, sloping down and
/// out, and the distance in it from the centreplane to the hull.
struct DiagonalReading {
    double height = 0.0;         ///< mm above the base line, where the diagonal leaves the centreplane
    std::optional<double> angle; ///< degrees down from level, above 0 and below 90; none: `through` gives it
    double throughBreadth = 0.0; ///< mm; the diagonal runs through the point of this half-breadth …
    double throughHeight = 0.0;  ///< … and this height; both unused where there is an angle
    double distance = 0.0;       ///< mm from the centreplane, along the diagonal; >= 0
    std::string printedHeight;   ///< as written
    std::string printedDistance; ///< as written
    std::string replacedDistance = {}; ///< see TablePoint::replacedHeight

    friend bool operator==(const DiagonalReading&, const DiagonalReading&) = default;
};

/// One point of a station's half section, starboard, as the table gives it.
struct TablePoint {
    PointKind kind = PointKind::Point;
    double halfBreadth = 0.0;       ///< mm from the centreplane
    double height = 0.0;            ///< mm above the base line
    std::string printedHalfBreadth; ///< as written in the file, to be quoted in findings
    std::string printedHeight;      ///< as written in the file
    int line = 0;                   ///< line of the project file, from 1
    /// Set where the table gives a diagonal (kind Point then): what the two coordinates were reckoned from.
    std::optional<DiagonalReading> diagonal = std::nullopt;
    /// What the printed table has where a doubtful number was corrected, as written there; else empty.
    std::string replacedHeight = {};
    std::string replacedHalfBreadth = {}; ///< likewise

    friend bool operator==(const TablePoint&, const TablePoint&) = default;
};

/// One station of the table.
struct Station {
    double x = 0.0;       ///< mm, in the table's own datum; strictly increasing along the table
    std::string printedX; ///< as written
    TablePoint sheer;
    std::optional<TablePoint> keel; ///< none where the profile gives it
    std::vector<TablePoint> points; ///< waterlines, buttocks, diagonals and points, in the order of the file
    int line = 0;
    /// Where the section turns sharply, on a line that runs from end to end; none in a table without one.
    std::optional<TablePoint> knuckle = std::nullopt;

    friend bool operator==(const Station&, const Station&) = default;
};

/// A point of the centreline: stem, keel, stem.
struct ProfilePoint {
    double x = 0.0;                   ///< mm, datum of the table
    double height = 0.0;              ///< mm above the base line
    std::optional<double> halfSiding; ///< mm; overrides HullTable::halfSiding here
    int line = 0;

    friend bool operator==(const ProfilePoint&, const ProfilePoint&) = default;
};

/// A flat transom: a plane square to the centreplane.
struct Transom {
    End end = End::Stern;
    double xAtSheer = 0.0; ///< mm, datum of the table
    double xAtKeel = 0.0;  ///< mm, datum of the table
    int line = 0;

    friend bool operator==(const Transom&, const Transom&) = default;
};

/// Which surface the table describes.
enum class DrawnTo { Moulds, Outside };

inline constexpr double leastFairing = 0.5; ///< closer, the loft copies the rounding
inline constexpr double usualFairing = 0.8;
inline constexpr double mostFairing = 1.0; ///< further, it contradicts the table

/// The table of offsets with what belongs to it. All lengths in mm, x in the table's own datum.
struct HullTable {
    DrawnTo drawnTo = DrawnTo::Moulds;
    double roundedTo = 1.0; ///< mm, the table's last digit ("unit"); > 0
    /// How far the loft may miss the numbers in the mean, in parts of what their rounding alone accounts for
    /// (roundedTo / sqrt 12): leastFairing follows them closely, mostFairing is as fair as they allow.
    double fairing = usualFairing;
    double halfSiding = 0.0; ///< mm, planking ends at this half-breadth; >= 0
    std::vector<ProfilePoint> profile;
    std::vector<Station> stations;
    std::vector<Transom> transoms; ///< none, one or two

    /// A knuckle is given at one station at least.
    [[nodiscard]] bool knuckled() const noexcept {
        for (const Station& s : stations)
            if (s.knuckle)
                return true;
        return false;
    }

    friend bool operator==(const HullTable&, const HullTable&) = default;
};

inline constexpr double commonStripWidth = 19.05; ///< mm, 3/4 in

/// The milled strip.
struct StripStock {
    double thickness = 6.35;         ///< mm
    double width = commonStripWidth; ///< mm, edge to edge
    double coverWidth = 15.875;      ///< mm, what one strip covers once its bead sits in its neighbour's cove
    std::string wood = "western-redcedar"; ///< a name of core/planking/wood.hpp

    friend bool operator==(const StripStock&, const StripStock&) = default;
};

/// The line the planking starts from.
struct StartLine {
    enum class Kind { Sheer, Geodesic, Bent, Easiest, Knuckle };
    Kind kind = Kind::Sheer;
    double girth =
        0.0; ///< mm below the sheer along the widest section, on the laid surface; only of Geodesic and Bent
    double shift = 0.0; ///< mm the whole line is moved toward the keel, parallel to itself; only of Sheer
    std::array<double, 3> edgeBend{}; ///< 1/m: k0, k2, k4 of Bent; + toward the keel

    friend bool operator==(const StartLine&, const StartLine&) = default;
};

/// A row that is to stand out, say in another wood: where its middle runs at the widest section.
struct Accent {
    enum class By { Girth, Height };
    By by = By::Girth;
    double at = 0.0; ///< mm: of girth below the sheer on the laid surface, or above the table's base line

    friend bool operator==(const Accent&, const Accent&) = default;
};

enum class LayOn { Moulds, MidThickness, Outside }; ///< where cover width is measured
enum class Taper { None, Ends, Anywhere };
enum class EndStyle { Weave, Mitre, Stem };
enum class ClosingMethod { BothSides, RunOver, Herringbone, SplitBottom };

/// How the strips are laid.
struct Planking {
    LayOn layOn = LayOn::MidThickness;
    StartLine start;
    std::optional<double> edgeBendRadius; ///< mm, smallest allowed; none: from wood and strip
    std::optional<double> narrowest;      ///< mm, narrowest allowed; none: from the strip
    Taper taper = Taper::None;
    std::vector<Accent> accents; ///< the first decides where the start is moved
    EndStyle bowEnds = EndStyle::Weave;
    EndStyle sternEnds = EndStyle::Weave;
    ClosingMethod closing = ClosingMethod::BothSides;
    std::optional<std::array<double, 2>> shutter; ///< wanted last plank, parts of a cover width

    friend bool operator==(const Planking&, const Planking&) = default;
};

/// Everything the builder decided: a value. Computed stages are pure functions of it.
struct Project {
    std::string name;
    Units units = Units::Millimetres;
    Language language = Language::English; ///< of the paper; never changes a plan
    PaperChoices paper;
    HullTable hull;
    StripStock strips;
    Planking planking;
    MouldChoices moulds;
    std::optional<Stock> stock;              ///< none where no boards are described
    std::optional<FitoutChoices> fitout;     ///< none where no part of it is asked for
    std::optional<CoveringChoices> covering; ///< none where the file says nothing of cloth
    std::optional<AfloatChoices> afloat;     ///< none where it asks nothing of her afloat
    Prices prices;                           ///< of goods; never changes a plan
    Journal journal; ///< what was really laid; never changes the drawn hull or the plan it was laid by
    std::vector<PutAside> putAside; ///< findings that may rest; never changes a plan

    friend bool operator==(const Project&, const Project&) = default;
};

} // namespace sheerlay::core

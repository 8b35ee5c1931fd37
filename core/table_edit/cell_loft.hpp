#pragma once

#include "core/hull/hull.hpp"
#include "core/table_edit/table_grid.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// What the lofted hull has where a cell of the table stands.
struct CellLoft {
    double lofted = 0.0; ///< mm, of the cell's own kind: a half-breadth, a height or a distance
    double off = 0.0;    ///< mm, the cell's number less `lofted`; 0 of a blank cell
    double normal =
        0.0; ///< mm, how far the point stands off the section, + outside; at sheer and knuckle as `off`
};

/// One section of the hull as the table draws it, to read offsets off.
/// @accuracy  1e-6 mm of the surface; two crossings less than 4 mm of girth apart may both be missed
class LoftedSection {
public:
    /// @param hull  must outlive the section
    /// @param x     mm from the bow
    LoftedSection(const LoftedHull& hull, double x);

    /// The hull at one cell: where the section crosses the cell's own line nearest to the number given; of a
    /// blank cell the outermost half-breadth, lowest height or first distance between sheer and keel. None
    /// where it does not cross it, and of places and keel half-breadths.
    [[nodiscard]] std::optional<CellLoft> at(const Station& station, const GridLine& line) const;

private:
    struct Place {
        double v = 0.0, y = 0.0, z = 0.0;
    };
    struct Reading;

    [[nodiscard]] Place place(double v) const;
    [[nodiscard]] std::optional<CellLoft> onGivenLine(double v, const Reading& reading) const;

    const LoftedHull& m_hull;
    double m_x = 0.0, m_siding = 0.0;
    std::vector<Place> m_places; ///< from above the sheer to below the keel
    double m_keel = 0.0;         ///< v where it reaches the siding
};

/// The loft at every cell that is given, by stations and then by `lines`.
[[nodiscard]] std::vector<std::vector<std::optional<CellLoft>>>
loftOfCells(const HullTable& table, const LoftedHull& hull, const std::vector<GridLine>& lines);

/// A length as the table would print it, rounded to its last digit: feet-inches-eighths where `like` is
/// written so, or where `like` is blank and the first station's sheer is; else a plain number in `units`.
[[nodiscard]] std::string
textLike(double millimetres, const std::string& like, const HullTable& table, Units units);

} // namespace sheerlay::core

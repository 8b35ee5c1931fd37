#pragma once

#include "core/lines_drawing/lines_parts.hpp"
#include "core/lines_drawing/lines_view.hpp"
#include "core/sheets/drawing.hpp"

#include <Eigen/Core>

#include <optional>
#include <vector>

namespace sheerlay::core {

/// What a picture of the lines shows.
enum class LinesPart {
    Whole,        ///< profile over half-breadths, body plan beside them
    Profile,      ///< from the side, with buttocks
    HalfBreadths, ///< from above, with waterlines; diagonals on the other side of the centreline
    BodyPlan      ///< from the end, with sections
};

/// A picture of the lines for a screen: no heading, no usual scale, type and pens as on paper however large
/// the boat is drawn.
struct LinesPicture {
    Sheet sheet;                               ///< mm; as large as what is drawn
    std::optional<LinesView> side, above, end; ///< the views that are shown
    double widestX = 0.0;                      ///< sections before it stand to the right

    /// Where a point of the boat stands on each of the views.
    [[nodiscard]] std::vector<Eigen::Vector2d> placesOf(const Eigen::Vector3d& p) const;
};

/// @param room  mm of paper; the picture fills it at zoom 1
/// @param zoom  the boat's size over that, >= 1
/// @throws std::invalid_argument  room or zoom that is not positive
[[nodiscard]] LinesPicture
linesPicture(const DrawnLines& lines, LinesPart part, Units units, const Eigen::Vector2d& room, double zoom);

} // namespace sheerlay::core

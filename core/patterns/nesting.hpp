#pragma once

#include "core/project/mould_choices.hpp"

#include <Eigen/Core>

#include <cstddef>
#include <string>
#include <vector>

namespace sheerlay::core {

/// Boards of sheet goods, without grain: parts may lie any way round.
struct SheetGoods {
    std::vector<SheetSize> sizes{SheetSize{}}; ///< at least one; taken in this order
    double gap = 10.0;                         ///< mm between parts: the saw's cut and some room for it; > 0
};

/// A part where it lies on its sheet: turned by quarters, then moved.
struct NestedPart {
    std::size_t part = 0;
    int quarters = 0;                               ///< turned anticlockwise by so many times 90 degrees
    Eigen::Vector2d move = Eigen::Vector2d::Zero(); ///< mm, added after turning

    /// A point of the part on the sheet; (0, 0) is the sheet's lower left corner.
    [[nodiscard]] Eigen::Vector2d onSheet(const Eigen::Vector2d& p) const;
};

/// One sheet and what lies on it.
struct NestedSheet {
    std::size_t size = 0; ///< of SheetGoods::sizes
    std::vector<NestedPart> parts;
};

/// What lies on every sheet.
struct Nesting {
    std::vector<NestedSheet> sheets;
    std::vector<std::size_t> tooLarge; ///< parts that no sheet holds
    std::vector<std::size_t> left;     ///< parts for which no sheet was left
    int leastByArea = 0;               ///< no way of nesting what lies on the sheets needs fewer
};

/// Lays closed outlines on as few sheets as it finds: the largest first, each as far left and low as it goes,
/// in four ways round, also into the hollows of others; several orders are tried. A sheet is begun of the
/// first size that is left and holds the part. Deterministic.
/// Works on a grid of 8 mm, so that parts may lie a grid step further apart than need be.
/// @param parts  closed outlines, mm, first point not repeated
/// @throws std::invalid_argument  no sheet or one without size, or an outline of fewer than three points
[[nodiscard]] Nesting nest(const std::vector<std::vector<Eigen::Vector2d>>& parts, const SheetGoods& goods);

} // namespace sheerlay::core

#pragma once

#include <Eigen/Core>

#include <cstddef>
#include <string>
#include <vector>

namespace sheerlay::core {

/// A board of sheet goods, without grain: parts may lie any way round.
struct SheetGoods {
    double length = 2438.4; ///< mm, 8 ft
    double width = 1219.2;  ///< mm, 4 ft
    double gap = 10.0;      ///< mm between parts: the saw's cut and some room for it; > 0
};

/// A part where it lies on its sheet: turned by quarters, then moved.
struct NestedPart {
    std::size_t part = 0;
    int quarters = 0;                               ///< turned anticlockwise by so many times 90 degrees
    Eigen::Vector2d move = Eigen::Vector2d::Zero(); ///< mm, added after turning

    /// A point of the part on the sheet; (0, 0) is the sheet's lower left corner.
    [[nodiscard]] Eigen::Vector2d onSheet(const Eigen::Vector2d& p) const;
};

/// What lies on every sheet.
struct Nesting {
    std::vector<std::vector<NestedPart>> sheets;
    std::vector<std::size_t> tooLarge; ///< parts that no sheet holds
    int leastByArea = 0;               ///< no way of nesting needs fewer sheets
};

/// Lays closed outlines on as few sheets as it finds: the largest first, each as far left and low as it goes,
/// in four ways round, also into the hollows of others; several orders are tried. Deterministic.
/// Works on a grid of 8 mm, so that parts may lie a grid step further apart than need be.
/// @param parts  closed outlines, mm, first point not repeated
/// @throws std::invalid_argument  a sheet without size, or an outline of fewer than three points
[[nodiscard]] Nesting nest(const std::vector<std::vector<Eigen::Vector2d>>& parts, const SheetGoods& goods);

} // namespace sheerlay::core

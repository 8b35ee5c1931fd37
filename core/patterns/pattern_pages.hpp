#pragma once

#include "core/patterns/pattern.hpp"
#include "core/sheets/page.hpp"
#include "core/sheets/sheet_tiles.hpp"

#include <Eigen/Core>

#include <string>
#include <vector>

namespace sheerlay::core {

/// One page of a pattern with its place in the whole.
struct PatternPage {
    Sheet sheet;
    /// A pattern point (a, b) stands on paper at (origin.x + a, origin.y - b), mm.
    Eigen::Vector2d origin = Eigen::Vector2d::Zero();
    Box window; ///< mm on paper, where the pattern shows
    int row = 0, column = 0;
};

/// Cuts a pattern into pages of this size: neighbours share a band of pageOverlap with two crosses in it, and
/// the same letter stands on both sides of a joint. Every page carries a bar of 100 mm and one of 4 in along
/// both edges, the pattern's name, where the page belongs, and the cautions of the saw. Pages that no line
/// crosses, or only in a band that a neighbour shows, are left out. Words that a joint would cut are moved
/// onto the page their place is on; the name of a line stands on every page that shows much of it.
[[nodiscard]] std::vector<PatternPage>
pagesOf(const Pattern& pattern, const Page& page, const std::string& boat);

/// A page of roll paper (36 in wide at most 2.4 m long before it is split) that this pattern goes on.
[[nodiscard]] Page rollPageFor(const Pattern& pattern);

} // namespace sheerlay::core

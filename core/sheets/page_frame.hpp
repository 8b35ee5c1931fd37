#pragma once

#include "core/project/project.hpp"
#include "core/sheets/compose.hpp"
#include "core/sheets/page.hpp"

#include <string>
#include <vector>

namespace sheerlay::core {

/// Free part of a page between its margins and above its foot, mm.
[[nodiscard]] Box roomOf(const Page& page) noexcept;

/// A blank page of this size.
[[nodiscard]] Sheet blankSheet(const Page& page, std::string title);

/// Writes the foot of every page: cautions in small print, a bar to check the printer's scale with (100 mm or
/// 4 in, on paper of any size), the boat's name and "page 3 of 41".
void addFeet(std::vector<Sheet>& sheets, const Project& project, Units units, const Page& page);

/// Items of the bar alone, its left end at `at`, with its label to the right.
[[nodiscard]] std::vector<Item> scaleBar(const Eigen::Vector2d& at, Units units, double small);

} // namespace sheerlay::core

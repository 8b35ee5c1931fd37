#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"
#include "core/project/project.hpp"
#include "geometry/expected.hpp"

#include <cstddef>
#include <string>
#include <vector>

namespace sheerlay::core {

/// Rows that are to stand out, worked out for one start line: the row whose middle passes nearest to where
/// the accent was asked for, at the widest section.
/// @return mm of girth below the sheer that the accent asks for; in words why the hull has no such place
[[nodiscard]] Expected<double, std::string> accentGirth(const LoftedHull& hull, const Accent& accent);

/// Row whose middle lies nearest to a girth: 1, 2, … below the start, -1, -2, … above it.
[[nodiscard]] int accentRow(const StartLine& start, double girth, double coverWidth) noexcept;

/// The start moved by at most half a cover width so that the first accent's row runs just where it was asked
/// for. A start along the sheer stays: moving it would leave a sliver there.
[[nodiscard]] StartLine aimAtAccent(const Project& project, const LoftedHull& hull, const StartLine& start);

/// The rows that the project's accents fall on. Places that are not on the hull are told and left out.
[[nodiscard]] std::vector<int> accentRows(const Project& project,
                                          const LoftedHull& hull,
                                          const StartLine& start,
                                          std::vector<Finding>& findings);

/// Of these rows those of one side of the start, counted from it and from 0.
[[nodiscard]] std::vector<std::size_t> onSide(const std::vector<int>& rows, bool towardKeel);

/// Marks the strips of a laid plan's accent rows and tells where each runs; a caution where it can't be one
/// unbroken strip. Where several are asked for each is named by its place.
void markAccents(const Project& project, const LoftedHull& hull, Plan& plan);

} // namespace sheerlay::core

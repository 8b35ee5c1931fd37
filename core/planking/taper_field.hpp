#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/row_width.hpp"
#include "core/planking/stealer_bands.hpp"
#include "core/project/project.hpp"
#include "geometry/parallels.hpp"

#include <memory>
#include <stop_token>
#include <string>
#include <vector>

namespace sheerlay::core {

/// What the tapers of one side of the start line shall reach.
struct TaperWish {
    double coverWidth = 0.0; ///< mm
    double narrowest = 0.0;  ///< mm
    double limit = 0.0;      ///< 1/mm, on the edge bend of every edge below the start line itself
    Taper where = Taper::Anywhere;
    geometry::FanSide side = geometry::FanSide::TowardKeel;
    bool stealers = false;             ///< may be let in where plain tapers do not reach the limit
    std::vector<std::size_t> keepFull; ///< rows from the start outward, from 0, that must not be narrowed
};

/// mm, the narrowest a strip may be planed: the project's, else 0.65 of the cover width (judged).
[[nodiscard]] inline double narrowestAllowed(const Project& project) noexcept {
    return project.planking.narrowest.value_or(0.65 * project.strips.coverWidth);
}

struct TaperMemory;

/// Widths of the rows of one side of the start.
struct TaperedField {
    std::vector<RowWidth> rows; ///< from the start outward; empty ones are full, or bands
    std::vector<Band> bands;    ///< ascending; none where plain tapers do
    int touched = 0;            ///< rows that are neither full nor bands
    double wood = 0.0;          ///< mm2 planed away on one side of the boat
    double plainWorst = 0.0;    ///< 1/mm, worst edge bend of the edges without a taper
    double worst = 0.0;         ///< 1/mm, with them, in the chart
    int metFrom = 1;            ///< first edge from which on all keep the limit (2 percent let pass)
    FieldScore score;
    bool hopeless = false; ///< no taper comes near the limit, so the search was broken off
    /// How it was solved, from which another limit of the same rows is solved quickly. Shared by copies,
    /// never changed.
    std::shared_ptr<const TaperMemory> memory;

    /// True where every edge of the field keeps the limit.
    [[nodiscard]] bool met() const noexcept { return metFrom <= 1; }
};

/// Widths of all rows of a field together, by a sparse linear program in the start's chart, linearised again
/// until it stands; strips that need no narrowing are left full, and those that do are kept few. Edge 0 is
/// the start line and stays as it is.
/// @param master  the start line at nodes `taperSpacing` mm apart
/// @param before  a solution for the same master and the same wish but for its limit: bands stand where they
/// stood then, and the same strips are cut if that does; null to begin anew
/// @return        the widths; in words why there are none (the solver gave up, or it was stopped)
/// @accuracy  tests/core/planking/taper_field_test.cpp: closing.md's canoe and skiff; the marched edges are
/// checked again in the plan
/// @source closing.md section 1
[[nodiscard]] Expected<TaperedField, std::string> taperField(const TrimmedSurface& hull,
                                                             const std::vector<geometry::MasterNode>& master,
                                                             const TaperWish& wish,
                                                             std::stop_token stop = {},
                                                             const TaperedField* before = nullptr);

inline constexpr double taperSpacing = 25.0; ///< mm between the columns of the tapers' chart

} // namespace sheerlay::core

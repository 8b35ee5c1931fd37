#pragma once

#include "core/planking/measured_row.hpp"
#include "core/planking/measures.hpp"
#include "core/planking/plan.hpp"
#include "core/planking/planking.hpp"
#include "core/planking/row_width.hpp"
#include "core/planking/stealer_bands.hpp"
#include "core/planking/taper_field.hpp"
#include "geometry/expected.hpp"

#include <compare>
#include <optional>
#include <vector>

namespace sheerlay::core {

/// Widths of the rows on both sides of a start.
struct Widths {
    std::vector<RowWidth> below, above;
    std::vector<Band> bands;                            ///< below
    std::optional<TaperedField> fieldBelow, fieldAbove; ///< that they come from
};

/// The boat planked from one given line, with rows of given widths.
/// @param plan      what is known before a strip is laid: limit, accent rows, tapers
/// @param measured  a row that is on the moulds; the rows below it go on from where its edge was found, at
/// the width that strips really cover, with tapers of their own and a bottom split off below it, if at all
[[nodiscard]] Expected<Plan, PlanError> layFrom(const StartLine& start,
                                                const Widths& widths,
                                                const LayingContext& context,
                                                Plan plan,
                                                const MeasuredRow* measured = nullptr);

inline constexpr double shortScrap = 300; ///< mm; what is no longer is not tapered for

/// Whether a strip as laid is bent harder than the limit, 1/mm: 2 percent are let pass, short scraps left
/// out.
[[nodiscard]] bool overLimit(const Strip& strip, double limit) noexcept;

/// How well a boat as laid keeps the limit; less is better.
struct LaidScore {
    int metFrom = 0;    ///< first rows from which on strips keep it, below and above together
    double slack = 0.0; ///< what strips are over, summed, in limits
    [[nodiscard]] auto operator<=>(const LaidScore&) const = default;
};

/// None over where the plan has no tapers, which is what the limit is kept by.
[[nodiscard]] LaidScore scoreOf(const Plan& plan);

/// Notes in the plan's tapers from which rows on the strips as laid keep the limit (2 percent let pass, short
/// scraps left out), which is what the builder bends. Nothing without tapers.
LaidScore noteMet(Plan& plan);

/// A boat with what it was laid from.
struct LaidBoat {
    Plan base; ///< before a strip was laid, tapers included
    Widths widths;
    Plan plan;
};

/// Solves for the tapers the project asks for and lays the boat. The program knows the edges by splines in
/// the start's chart; where the true strips then come out over the limit it is asked for more, and the better
/// boat is kept. Where the limit is out of reach and tapers make a boat worse than none, it has none and a
/// finding, "tapers-given-up".
[[nodiscard]] Expected<LaidBoat, PlanError> layTapered(const StartLine& start,
                                                       const LayingContext& context,
                                                       const Plan& empty,
                                                       const MeasuredRow* measured = nullptr);

} // namespace sheerlay::core

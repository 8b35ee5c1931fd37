#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/difficulty.hpp"
#include "core/planking/plan.hpp"
#include "core/project/finding.hpp"
#include "core/project/project.hpp"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// The strip that must be bent hardest across its width.
struct WorstEdgeBend {
    std::string strip;     ///< id
    double edgeBend = 0.0; ///< 1/mm, absolute
    double atX = 0.0;      ///< mm from the bow
    double force = 0.0;    ///< N, to hold it over one mould bay
    Difficulty difficulty = Difficulty::Free;
};

/// The last plank, or one of the two when each side closes by itself.
struct ShutterSummary {
    std::string strip;            ///< id
    double widest = 0.0;          ///< mm
    double length = 0.0;          ///< mm, along its middle
    double lengthDeviation = 0.0; ///< mm, by the table's rounding; 0 where it is not known
};

/// What a builder asks first of a plan. Lengths in mm.
struct PlanSummary {
    std::string name;
    StripStock stock;
    double length = 0.0;                ///< of the laid surface inside its trims
    double beam = 0.0;                  ///< both sides
    double halfGirthMax = 0.0;          ///< one side
    double halfGirthMaxX = 0.0;         ///< from the bow
    int rowsBelow = 0;                  ///< rows from the start toward the keel
    int rowsAbove = 0;                  ///< rows between the start and the sheer
    int pieces = 0;                     ///< both sides
    double cutLength = 0.0;             ///< sum over all pieces, laps and trim included
    std::optional<WorstEdgeBend> worst; ///< none when no strip is bent
    Marks marks;
    std::vector<ShutterSummary> shutters;       ///< in the order of the plan
    std::optional<PlanUncertainty> uncertainty; ///< none where it was not worked out
    std::array<int, 3> findings{};              ///< how many notes, cautions, stops; of the loft and the plan
};

[[nodiscard]] PlanSummary summarize(const Project& project, const LoftedHull& hull, const Plan& plan);

/// One screen of text, a line per subject, each ended by a newline.
/// Digits follow what a plan can know: strip lengths to 5 mm or 1/4 in, edge bend to 0.01 per metre, force to
/// two digits; where the uncertainty is known, no figure is finer than its +/-.
[[nodiscard]] std::string toText(const PlanSummary& summary, Units units);

} // namespace sheerlay::core

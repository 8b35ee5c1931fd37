#pragma once

#include "core/hull/hull.hpp"
#include "core/journal/last_plank.hpp"
#include "core/journal/measured_edge.hpp"
#include "core/journal/planned_girth.hpp"
#include "core/planking/plan.hpp"
#include "core/project/finding.hpp"
#include "core/project/journal.hpp"
#include "core/project/project.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// A reading that the round it belongs to does not bear out, that is further off than strips and moulds can
/// be, or that no edge passes by; it is left out.
struct LeftOutReading {
    int row = 0;
    double x = 0.0;       ///< mm from the bow
    double read = 0.0;    ///< mm
    double planned = 0.0; ///< mm, to be expected there; 0 where the edge does not pass
    bool farOff = false;  ///< by more than strips and moulds can be, whatever the rest of its round says
    int since = 0;        ///< the row read before, where `planned` goes by it; 0: by the plan
};

/// Readings of one row at one station, of the two sides or of one twice, that lie further apart than a tape
/// is read to. Their mean is used.
struct ReadingsApart {
    int row = 0;
    double x = 0.0;                 ///< mm from the bow
    double least = 0.0, most = 0.0; ///< mm
};

/// What the journal says about the boat on the moulds.
struct WhatWasLaid {
    int row = 0;              ///< the lowest row that was read
    std::size_t stations = 0; ///< readings of it that were used
    MeasuredEdge edge;        ///< where its lower edge lies
    double x = 0.0; ///< mm from the bow: where the last plank is widest, else the middle of the readings
    Spread offset;  ///< mm there, + nearer the keel than planned
    double planned = 0.0; ///< mm, cover width by the plan
    Spread excess;        ///< mm a strip, rows 1..row, local waviness apart
    Spread ahead;         ///< mm a strip, of the rows still to lay: other boards, so drawn nearer to 0
    /// What the last plank is forecast from, where there is one.
    LastPlankOutlook outlook;
    std::optional<CoverWidth> width;
    std::optional<LastPlank> lastPlank; ///< none where plannedLastPlank() gives none
    Correction correction;
    Reach correctionReach; ///< mm from the bow: where strips are narrowed in full; they fade beyond
    std::vector<LeftOutReading> leftOut;
    std::vector<ReadingsApart> apart;
};

/// Over how far a narrowing fades to nothing at a strip's ends, mm (2 ft): adds at most 0.004 /m of edge
/// bend.
constexpr double correctionFade = 609.6;

/// Compares the readings with the plan the strips were laid by. Sides are taken together.
/// @param plan  as it was while these rows were laid
/// @return      nothing when no reading below row 0 can be used
[[nodiscard]] std::optional<WhatWasLaid> whatWasLaid(const Journal& journal,
                                                     const Project& project,
                                                     const LoftedHull& hull,
                                                     const Plan& plan,
                                                     const WidthPrior& prior = {});

/// Girths read on the bare moulds, before any strip lay on them.
struct BareMoulds {
    std::size_t stations = 0;
    double excess = 0.0; ///< mm, mean: + longer than lofted
};

/// The journal's readings where whatWasLaid() can use none of a row below the start.
struct UnusedReadings {
    std::vector<LeftOutReading> leftOut;
    std::optional<BareMoulds> bareMoulds; ///< kept for the first row that is read
};

/// The same comparison as whatWasLaid()'s.
[[nodiscard]] UnusedReadings unusedReadings(const Journal& journal, const LoftedHull& hull, const Plan& plan);

/// Readings of a round under way that would be left out, as far as the round goes; two that follow may still
/// bear one out.
/// @param journal  the rounds before, which `plan` holds already
/// @param plan     as it stands; `planned` of a reading goes by it
[[nodiscard]] std::vector<LeftOutReading>
doubtsAbout(const RowReading& round, const Journal& journal, const LoftedHull& hull, const Plan& plan);

/// Forecasts the last plank anew where the rows still to lay have other tapers than they were planned with,
/// which move it by themselves.
/// @param anew  planned from the edge and the cover width of `laid`
void forecastFrom(const Plan& anew, const LoftedHull& hull, WhatWasLaid& laid);

/// The same in whole sentences, one finding each: what was read ("journal-edge"), how wide the strips really
/// cover ("journal-cover-width"), where the last plank comes and the one thing to do, if any
/// ("journal-last-plank"), readings that were left out ("journal-left-out"), and two of one place that
/// disagree ("journal-readings-apart").
/// @param stations  names in the order of hull.stationX
[[nodiscard]] std::vector<Finding>
tellWhatWasLaid(const WhatWasLaid& laid, const LoftedHull& hull, const std::vector<std::string>& stations);

/// Why nothing was planned anew, one finding each: every reading that was left out ("journal-left-out"), and
/// that the bare moulds alone were read ("journal-bare-moulds") or nothing of use at all
/// ("journal-not-used").
[[nodiscard]] std::vector<Finding>
tellUnused(const UnusedReadings& readings, const LoftedHull& hull, const std::vector<std::string>& stations);

/// The finding that says that a reading was left out.
/// @param findings  of the plan that was made with it
/// @param x         mm from the bow
/// @return          nothing where it was used
[[nodiscard]] const Finding* leftOutFinding(const std::vector<Finding>& findings,
                                            int row,
                                            double x,
                                            double read,
                                            const LoftedHull& hull,
                                            const std::vector<std::string>& stations);

} // namespace sheerlay::core

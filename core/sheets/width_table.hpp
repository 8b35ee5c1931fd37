#pragma once

#include "core/planking/plan.hpp"
#include "core/project/project.hpp"
#include "core/sheets/compose.hpp"
#include "core/sheets/flat_strip.hpp"

#include <string>
#include <vector>

namespace sheerlay::core {

/// Whose widths a table tells.
struct WidthsOf {
    const Project& project;
    const Strip& strip;
    const std::vector<std::string>& stations; ///< names, by StationMark::station
    const std::vector<StationMark>& marks;
    Units units;
};

/// How a table of widths is set.
struct WidthTableSetting {
    double scale = 1.0;  ///< of everything but its lines
    double pitch = 6.8;  ///< mm, line to line
    double size = 6.0;   ///< mm of type
    double height = 0.0; ///< mm of a column; a longer table goes on in the next under headings of its own
};

/// Adds a strip's widths at its ends and at the stations between, and what is to be known of them.
void addWidthTable(Flow& flow, const WidthsOf& of, const WidthTableSetting& setting);

} // namespace sheerlay::core

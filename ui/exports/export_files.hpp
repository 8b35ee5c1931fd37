#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"
#include "core/project/project.hpp"
#include "ui/exports/staging.hpp"

#include <string>

namespace sheerlay::ui {

/// Where the table of offsets is re-read, as a builder writes it: "every 6 in", "3 in, 6 in"; empty: where
/// the table or a round figure has it.
struct ExportLevels {
    std::string stations, waterlines, buttocks;
};

/// Writes hull, moulds and strips as STEP, glTF and STL, and their tables as CSV, into the folder: all of
/// them or none; without moulds where none stands in the hull, which the findings tell. The same project
/// makes the same files byte for byte. Takes seconds; any thread.
[[nodiscard]] Outcome writeExports(const std::string& folder,
                                   const core::Project& project,
                                   const core::LoftedHull& hull,
                                   const core::Plan& plan,
                                   const ExportLevels& levels = {});

} // namespace sheerlay::ui

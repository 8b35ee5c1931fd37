#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"
#include "core/project/project.hpp"
#include "ui/exports/staging.hpp"

#include <functional>
#include <string>

namespace sheerlay::ui {

/// Where the table of offsets is re-read, as a builder writes it: "every 6 in", "3 in, 6 in"; empty: where
/// the table or a round figure has it.
struct ExportLevels {
    std::string stations, waterlines, buttocks;
};

/// Called before each file with its name; false gives the whole up.
using ExportWatch = std::function<bool(const std::string& file)>;

/// Writes hull, moulds and strips as STEP, glTF and STL, and their tables as CSV, into the folder: all of
/// them or none; without moulds where none stands in the hull, which the findings tell. The same project
/// makes the same files byte for byte. Takes seconds; any thread.
/// @return  also an error, an empty one, where the watch gave it up
[[nodiscard]] Outcome writeExports(const std::string& folder,
                                   const core::Project& project,
                                   const core::LoftedHull& hull,
                                   const core::Plan& plan,
                                   const ExportLevels& levels = {},
                                   const ExportWatch& watch = {});

} // namespace sheerlay::ui

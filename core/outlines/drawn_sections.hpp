#pragma once

#include "core/offsets/table_corrections.hpp"
#include "core/offsets/table_project.hpp"
#include "core/outlines/drawing.hpp"
#include "core/project/message.hpp"
#include "geometry/expected.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sheerlay::core {

/// A station's place as the name of a layer or group tells it: "X-300", "station 1-0-0", "900 mm"; the length
/// as written. None where the name is not one of a station, as "g1234" or "frame lines 3".
[[nodiscard]] std::optional<std::string> stationInName(std::string_view name);

/// The half sections of a drawing as a project: one layer or group per station. Points of each section are
/// chosen on its curve, at most 24. Heights count from the lowest point unless the builder says otherwise.
/// @param corrections  units, spacing, beam, centre, base, mirror, half-siding and drawn-to are heeded
/// @return  the project with how it was read in its notes, or what has to be said or mended first
[[nodiscard]] Expected<TableProject, std::vector<FileMessage>>
sectionsProject(const Drawing& drawing,
                const TableCorrections& corrections,
                const std::string& name,
                const std::string& file);

/// All of it: from the text of a DXF or SVG file, told apart by what it holds.
[[nodiscard]] Expected<ReadTable, std::vector<FileMessage>> readSections(std::string_view text,
                                                                         const std::string& file,
                                                                         const std::string& name,
                                                                         const TableCorrections& corrections);

} // namespace sheerlay::core

#pragma once

#include "core/offsets/cell_grid.hpp"
#include "core/offsets/table_corrections.hpp"
#include "core/offsets/table_reading.hpp"
#include "core/project/message.hpp"
#include "core/project/project.hpp"
#include "geometry/expected.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace sheerlay::core {

/// A table turned into a project, and what was taken for granted on the way, in whole sentences.
struct TableProject {
    Project project;
    std::vector<std::string> notes;
};

/// The project of a table: stations from bow to stern, each cell in the table's own notation. Strips and
/// planking are the starter's. Blank keels between keels of 0 are 0; a folded table is unfolded.
/// @return  the project, or every cell that can't be right, by row and column
[[nodiscard]] Expected<TableProject, std::vector<FileMessage>>
tableProject(const CellGrid& grid,
             const TableReading& reading,
             const TableCorrections& corrections,
             const std::string& name,
             const std::string& file);

/// All of it: a table's text to the text of a project file, which readProject reads.
struct ReadTable {
    std::vector<std::string> reading;  ///< how the table was read, see describeReading
    std::vector<std::string> notes;    ///< see TableProject
    std::vector<FileMessage> warnings; ///< what the project's reader finds odd
    std::string projectText;
};
[[nodiscard]] Expected<ReadTable, std::vector<FileMessage>> readTable(std::string_view text,
                                                                      const std::string& file,
                                                                      const std::string& name,
                                                                      const TableCorrections& corrections);

} // namespace sheerlay::core

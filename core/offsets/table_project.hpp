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

/// The text of a project file, which readProject reads, with what there is to say about it.
struct ReadTable {
    std::vector<std::string> reading;  ///< how the table was read, see describeReading
    std::vector<std::string> notes;    ///< see TableProject
    std::vector<FileMessage> warnings; ///< what the project's reader finds odd
    std::string projectText;
};

/// A project made here as the text of its file, read back by the project's own reader.
/// @param made   what was made; `reading` is handed through
/// @return  the text with what the reader finds odd, or why the reader refuses it, told by station
[[nodiscard]] Expected<ReadTable, std::vector<FileMessage>>
asProjectText(const TableProject& made, std::vector<std::string> reading, const std::string& file);

/// All of it: from a table's text.
[[nodiscard]] Expected<ReadTable, std::vector<FileMessage>> readTable(std::string_view text,
                                                                      const std::string& file,
                                                                      const std::string& name,
                                                                      const TableCorrections& corrections);

} // namespace sheerlay::core

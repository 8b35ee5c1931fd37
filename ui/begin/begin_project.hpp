#pragma once

#include "core/offsets/table_corrections.hpp"
#include "core/offsets/table_project.hpp"
#include "core/project/message.hpp"
#include "geometry/expected.hpp"

#include <optional>
#include <stop_token>
#include <string>
#include <string_view>
#include <vector>

namespace sheerlay::ui {

/// What a project can be begun from.
enum class SourceKind { Table, Sections, Surface };

/// By the ending of the file's name: .csv, .tsv and .txt are tables; .dxf and .svg sections; .step, .stp,
/// .iges and .igs surfaces. None for others.
[[nodiscard]] std::optional<SourceKind> sourceKind(std::string_view path);

/// How a reading is put right, by an example: "row 5 = waterline 6 in", or with a column where columns were
/// read.
/// @param reading  how the file was read, as a project begun from it tells
[[nodiscard]] const char* correctionExample(SourceKind kind, const std::vector<std::string>& reading = {});

using BegunProject = Expected<core::ReadTable, std::vector<core::FileMessage>>;

/// Reads a file into the text of a new project.
/// @param name  what the boat is called
/// @param stop  gives up the reading of surfaces
/// @return      the project and how it was read, or why it can't be
[[nodiscard]] BegunProject beginProject(SourceKind kind,
                                        const std::string& path,
                                        const std::string& name,
                                        const core::TableCorrections& corrections,
                                        std::stop_token stop = {});

/// The starter under a name, where that can stand in a project file.
[[nodiscard]] std::optional<std::string> checkedStarter(const std::string& name);

} // namespace sheerlay::ui

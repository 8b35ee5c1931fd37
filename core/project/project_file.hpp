#pragma once

#include "core/project/message.hpp"
#include "core/project/project.hpp"
#include "geometry/expected.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace sheerlay::core {

/// A project that could be read, with what was odd but harmless about its file (unknown keys, left out).
struct ReadProject {
    Project project;
    std::vector<FileMessage> warnings;
};

/// Reads the text of a .sheerlay file (contract: "Project file").
/// @param text      the file's bytes; UTF-8 TOML is expected, anything else is reported
/// @param fileName  only for messages
/// @return          the project, or every error of the file, in the order of its lines
[[nodiscard]] Expected<ReadProject, std::vector<FileMessage>> parseProject(std::string_view text,
                                                                           const std::string& fileName);

/// The bytes of a project file; a file that can't be read is one message.
[[nodiscard]] Expected<std::string, std::vector<FileMessage>> readProjectText(const std::string& path);

/// Both: reads the file and what it says.
[[nodiscard]] Expected<ReadProject, std::vector<FileMessage>> readProject(const std::string& path);

} // namespace sheerlay::core

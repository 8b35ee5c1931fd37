#pragma once

#include "core/project/message.hpp"
#include "core/project/project.hpp"
#include "geometry/expected.hpp"

#include <string>
#include <vector>

namespace sheerlay::core {

/// The project with other decisions in it, judged by the same rules as a file.
/// @return  what a file of it would be refused for, `key` as in the file, when it can't be
[[nodiscard]] Expected<Project, std::vector<FileMessage>> checked(const Project& project);

/// What differs between two ways of planking, for the name of an edit: "Start along the sheer",
/// "Taper anywhere", …; "Planking" when it is more than one thing, empty for nothing.
[[nodiscard]] std::string nameOfChange(const Planking& before, const Planking& after);

/// The decisions of `mine` that differ from `base`, put into `theirs`: for a file that was changed elsewhere.
/// Planking decisions count one by one; the table, the moulds and the journal each as a whole.
[[nodiscard]] Project carryOver(const Project& base, const Project& mine, const Project& theirs);

} // namespace sheerlay::core

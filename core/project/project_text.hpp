#pragma once

#include "core/project/project.hpp"

#include <string>
#include <string_view>

namespace sheerlay::core {

/// A project file's own text with the project's decisions in it: what did not change stays letter for letter,
/// comments, order, notation and unknown keys included. Changed keys of [planking], [strips] and [moulds] and
/// changed numbers of the table are replaced where they stand, its points and stations come and go there;
/// journal entries are added at the end and taken out where they stood. What can't be changed in place is
/// written anew as a whole; comments are lost then, unknown keys stay.
/// @param text  as parseProject reads it; a text that it can't read is replaced as a whole
/// @accuracy    parseProject gives a project that writeProject writes like `project`
[[nodiscard]] std::string updateProjectText(std::string_view text, const Project& project);

} // namespace sheerlay::core

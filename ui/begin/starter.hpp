#pragma once

#include <string>

namespace sheerlay::ui {

/// The text of a project that plans as it is, under a name of the builder's: the example of this repository.
/// @param name  any text; it is quoted as the file needs it
[[nodiscard]] std::string starterProject(const std::string& name);

} // namespace sheerlay::ui

#pragma once

#include "core/project/project.hpp"

#include <string>

namespace sheerlay::core {

/// The project as TOML text that parseProject reads back to the same values: exactly where the file's units
/// are millimetres or the builder's own notation still says the value, within 1e-8 mm for other numbers of
/// inches. Written and read again, the text does not change any more. Comments and unknown keys of an earlier
/// file are not kept.
[[nodiscard]] std::string writeProject(const Project& project);

} // namespace sheerlay::core

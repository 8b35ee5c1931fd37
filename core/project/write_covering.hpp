#pragma once

#include "core/project/project.hpp"

#include <string>

namespace sheerlay::core {

/// [covering] with its faces as TOML, every key written out, a blank line before each table.
[[nodiscard]] std::string coveringText(const CoveringChoices& covering, Units units);

} // namespace sheerlay::core

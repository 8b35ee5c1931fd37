#pragma once

#include "core/project/project.hpp"

#include <string>

namespace sheerlay::core {

/// [afloat] with its loads and parts as TOML, every key written out, a blank line before each table.
[[nodiscard]] std::string afloatText(const AfloatChoices& afloat, Units units);

} // namespace sheerlay::core

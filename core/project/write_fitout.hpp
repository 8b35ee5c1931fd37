#pragma once

#include "core/project/project.hpp"

#include <string>

namespace sheerlay::core {

/// [fitout] and what belongs to it as TOML, every key written out, a blank line before each table.
[[nodiscard]] std::string fitoutText(const FitoutChoices& fitout, Units units);

} // namespace sheerlay::core

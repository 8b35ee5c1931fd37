#pragma once

#include "core/project/project.hpp"

#include <string>

namespace sheerlay::core {

/// [prices] as TOML with the keys that are given, a blank line before it; empty where there are none.
[[nodiscard]] std::string pricesText(const Prices& prices, Units units);

} // namespace sheerlay::core

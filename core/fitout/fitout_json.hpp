#pragma once

#include "core/fitout/fitout.hpp"

#include <string>

namespace sheerlay::core {

/// The fit-out as a JSON object, UTF-8. Lengths mm, angles in degrees where the key says deg, x from the bow;
/// of parts that come in pairs starboard's.
[[nodiscard]] std::string fitoutToJson(const Fitout& fitout);

} // namespace sheerlay::core

#pragma once

#include "core/planking/plan.hpp"

namespace sheerlay::core {

/// One word for side, kind or end, as plan.json and the tables write them.
[[nodiscard]] inline const char* toText(Side side) noexcept {
    return side == Side::Port ? "port" : side == Side::Starboard ? "starboard" : "centre";
}

[[nodiscard]] inline const char* toText(StripKind kind) {
    switch (kind) {
    case StripKind::Full:
        return "full";
    case StripKind::Tapered:
        return "tapered";
    case StripKind::Stealer:
        return "stealer";
    case StripKind::Filler:
        return "filler";
    case StripKind::Shutter:
        break;
    }
    return "shutter";
}

[[nodiscard]] inline const char* toText(EndsOn on) {
    switch (on) {
    case EndsOn::Stem:
        return "stem";
    case EndsOn::Keel:
        return "keel";
    case EndsOn::Transom:
        return "transom";
    case EndsOn::Sheer:
        return "sheer";
    case EndsOn::Strip:
        return "strip";
    case EndsOn::Nib:
        break;
    }
    return "nib";
}

} // namespace sheerlay::core

#include "core/sheets/drawing.hpp"

namespace sheerlay::core {

double lineWidth(LineKind kind) noexcept {
    switch (kind) {
    case LineKind::Visible:
        return 0.5;
    case LineKind::Thin:
    case LineKind::Centre:
    case LineKind::Hidden:
        return 0.25;
    case LineKind::None:
        break;
    }
    return 0.0;
}

} // namespace sheerlay::core

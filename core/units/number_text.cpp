#include "core/units/number_text.hpp"

#include <cstdio>

namespace sheerlay::core {

std::string numberText(double value, int decimals) {
    char text[48];
    std::snprintf(text, sizeof text, "%.*f", decimals, value);
    return text;
}

} // namespace sheerlay::core

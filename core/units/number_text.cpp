#include "core/units/number_text.hpp"

#include <cstdio>

namespace sheerlay::core {

std::string numberText(double value, int decimals) {
    char text[48];
    std::snprintf(text, sizeof text, "%.*f", decimals, value);
    const std::string plain(text);
    return plain.starts_with('-') && plain.find_first_not_of("-0.") == std::string::npos ? plain.substr(1)
                                                                                         : plain;
}

} // namespace sheerlay::core

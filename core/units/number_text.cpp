#include "core/units/number_text.hpp"

#include "core/words/say.hpp"

#include <cstdio>

namespace sheerlay::core {

std::string numberText(double value, int decimals) {
    char text[48];
    std::snprintf(text, sizeof text, "%.*f", decimals, value);
    const std::string plain(text);
    const bool nothing = plain.starts_with('-') && plain.find_first_not_of("-0.") == std::string::npos;
    return withDecimalMark(nothing ? plain.substr(1) : plain);
}

} // namespace sheerlay::core

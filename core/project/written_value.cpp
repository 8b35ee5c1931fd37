#include "core/project/written_value.hpp"

#include "core/units/length.hpp"

#include <array>
#include <charconv>
#include <cstdio>

namespace sheerlay::core {

std::string inQuotes(std::string_view text) {
    std::string quoted = "\"";
    for (const char c : text) {
        if (c == '"' || c == '\\') {
            quoted += '\\';
            quoted += c;
        } else if (static_cast<unsigned char>(c) < 0x20U || c == 0x7F) {
            std::array<char, 8> escaped{};
            std::snprintf(escaped.data(), escaped.size(), "\\u%04X", static_cast<unsigned>(c));
            quoted += escaped.data();
        } else {
            quoted += c;
        }
    }
    return quoted + "\"";
}

std::string shortestDigits(double value) {
    std::array<char, 40> buffer{};
    const char* const end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value).ptr;
    return {buffer.data(), static_cast<std::size_t>(end - buffer.data())};
}

std::string steadyDigits(double value) {
    std::array<char, 40> buffer{};
    std::snprintf(buffer.data(), buffer.size(), "%.12g", value);
    return buffer.data();
}

std::string writtenLength(double millimetres, Units units) {
    return units == Units::Millimetres ? shortestDigits(millimetres) : steadyDigits(millimetres / mmPerInch);
}

} // namespace sheerlay::core

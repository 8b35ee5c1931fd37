#include "core/tables/csv.hpp"

#include "core/units/length.hpp"
#include "core/units/number_text.hpp"

#include <cmath>

namespace sheerlay::core {

std::string csvText(const std::vector<std::vector<std::string>>& rows) {
    std::string text;
    for (const auto& row : rows) {
        bool first = true;
        for (const std::string& cell : row) {
            if (!first)
                text += ',';
            first = false;
            if (cell.find_first_of(",\"\r\n") == std::string::npos) {
                text += cell;
                continue;
            }
            text += '"';
            for (const char c : cell)
                text += c == '"' ? std::string("\"\"") : std::string(1, c);
            text += '"';
        }
        text += "\r\n";
    }
    return text;
}

std::string plainLength(double millimetres, Units units) {
    const int decimals = units == Units::Inches ? 2 : 1;
    const double value = units == Units::Inches ? millimetres / mmPerInch : millimetres;
    const std::string text = numberText(value, decimals);
    return std::abs(value) < 0.5 * std::pow(10.0, -decimals) ? numberText(0.0, decimals) : text; // no "-0.0"
}

std::string inUnits(std::string_view name, Units units) {
    return std::string(name) + (units == Units::Inches ? " in" : " mm");
}

} // namespace sheerlay::core

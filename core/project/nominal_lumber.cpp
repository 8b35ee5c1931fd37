#include "core/project/nominal_lumber.hpp"

#include "core/units/length.hpp"
#include "core/units/length_text.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

namespace sheerlay::core {

namespace {

struct Named {
    std::string_view name;
    double nominal = 0.0, dry = 0.0; // in
};

constexpr std::array thicknesses{
    Named{"1", 1.0, 0.75}, Named{"5/4", 1.25, 1.0}, Named{"6/4", 1.5, 1.25}, Named{"2", 2.0, 1.5}};
constexpr std::array widths{Named{"2", 2.0, 1.5},
                            Named{"3", 3.0, 2.5},
                            Named{"4", 4.0, 3.5},
                            Named{"5", 5.0, 4.5},
                            Named{"6", 6.0, 5.5},
                            Named{"8", 8.0, 7.25},
                            Named{"10", 10.0, 9.25},
                            Named{"12", 12.0, 11.25}};

} // namespace

std::optional<NominalLumber> nominalLumber(std::string_view size) {
    std::string plain = plainSigns(size);
    std::erase(plain, ' ');
    const std::size_t cross = plain.find('x');
    if (cross == std::string::npos)
        return std::nullopt;
    const std::string thick = plain.substr(0, cross), wide = plain.substr(cross + 1);
    const auto* t = std::ranges::find(thicknesses, std::string_view(thick), &Named::name);
    const auto* w = std::ranges::find(widths, std::string_view(wide), &Named::name);
    if (t == thicknesses.end() || w == widths.end())
        return std::nullopt;
    return NominalLumber{t->nominal * mmPerInch, t->dry * mmPerInch, w->dry * mmPerInch};
}

std::optional<std::size_t> commonLumberOf(double thickness, double width) {
    constexpr double nearly = 0.05; // mm
    for (std::size_t i = 0; i < commonLumber.size(); ++i)
        if (const auto size = nominalLumber(commonLumber[i]);
            size && std::abs(size->thickness - thickness) < nearly && std::abs(size->width - width) < nearly)
            return i;
    return std::nullopt;
}

} // namespace sheerlay::core

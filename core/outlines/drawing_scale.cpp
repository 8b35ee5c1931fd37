#include "core/outlines/drawing_scale.hpp"

#include "core/units/number_text.hpp"

#include <array>
#include <cmath>
#include <string_view>

namespace sheerlay::core {

namespace {

constexpr double within = 0.02; // of the beam: a builder's figure is rounded, and drawn to inside or outside

struct NamedUnit {
    std::string_view name;
    double millimetres = 1.0;
};

// Pixels and points are what drawing programs count in where nobody chose a unit.
constexpr std::array<NamedUnit, 8> units{{{"millimetre", 1.0},
                                          {"centimetre", 10.0},
                                          {"metre", 1000.0},
                                          {"inch", 25.4},
                                          {"foot", 304.8},
                                          {"pixel of 1/96 in", 25.4 / 96},
                                          {"pixel of 1/90 in", 25.4 / 90},
                                          {"point of 1/72 in", 25.4 / 72}}};

double sizeOf(PlainUnit unit) {
    return units[static_cast<std::size_t>(unit)].millimetres;
}

/// In mm and inches: which of the two the builder thinks in is not known yet.
std::string both(double mm) {
    return numberText(mm, 0) + " mm (" + numberText(mm / mmPerInch, 1) + " in)";
}

bool matches(double a, double b) {
    return std::abs(a - b) <= within * b;
}

} // namespace

Expected<DrawingScale, LengthError>
drawingScale(std::optional<double> unit, double widest, const TableCorrections& corrections) {
    DrawingScale scale;
    std::optional<double> beam;
    if (corrections.beam) {
        Notation notation;
        notation.plain = corrections.units.value_or(PlainUnit::Millimetres);
        const auto read = readCell(*corrections.beam, notation);
        if (!read || read->millimetres <= 0.0)
            return unexpected(LengthError{read ? "beam = " + *corrections.beam : read.error().found,
                                          "a length, such as beam = 33 in"});
        beam = read->millimetres;
        scale.inches = corrections.beam->find_first_of("\"'/-i") != std::string::npos;
    }
    if (corrections.units)
        unit = sizeOf(*corrections.units);
    std::string_view which;
    if (!unit && beam) {
        for (const NamedUnit& candidate : units)
            if (!unit && matches(widest * candidate.millimetres, *beam)) {
                unit = candidate.millimetres;
                which = candidate.name;
            }
        if (!unit)
            return unexpected(LengthError{"a widest section of " + numberText(widest, 2) +
                                              " units, which is " + both(*beam) + " in no unit",
                                          "a drawing at full size; one unit of this one would be " +
                                              numberText(*beam / widest, 4) + " mm"});
    }
    if (!unit)
        return unexpected(LengthError{
            "a drawing that says no unit; its widest section is " + numberText(widest, 2) + " across",
            "--take \"beam = 33 in\" with the width of the widest section, or --take "
            "\"units = mm\""});
    if (beam && !matches(widest * *unit, *beam))
        return unexpected(
            LengthError{"a widest section of " + both(widest * *unit) + " where you say " + both(*beam),
                        "the true width of the widest section, or another unit of the drawing"});
    scale.millimetres = *unit;
    scale.inches = scale.inches || *unit == mmPerInch || *unit == sizeOf(PlainUnit::Feet);
    const int decimals = *unit == std::floor(*unit) ? 0 : *unit == mmPerInch ? 1 : 4;
    std::string size = numberText(*unit, decimals) + " mm";
    if (!which.empty())
        size = "one " + std::string(which) + ", " + size + ", by the beam you said";
    scale.said.push_back("A unit of the drawing is " + size + "; its widest section is " +
                         both(widest * *unit) + " across" +
                         (beam ? ", which agrees with yours." : "; --take \"beam = …\" has that checked."));
    return scale;
}

} // namespace sheerlay::core

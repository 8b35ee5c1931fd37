#include "core/project/diagonal.hpp"

#include "core/units/length.hpp"
#include "core/units/length_text.hpp"
#include "core/units/number_text.hpp"

#include <cmath>
#include <numbers>
#include <utility>

namespace sheerlay::core {

namespace {

std::string reckoned(double mm, const DiagonalReading& reading, Units units) {
    if (inFeetInchesEighths(reading.printedDistance))
        return toFeetInchesEighths(mm);
    return units == Units::Inches ? numberText(mm / mmPerInch, 3) : numberText(mm, 1);
}

} // namespace

std::optional<double> slopeOf(const DiagonalReading& reading) {
    constexpr double quarterTurn = std::numbers::pi / 2;
    const double slope = reading.angle
                             ? *reading.angle * std::numbers::pi / 180
                             : std::atan2(reading.height - reading.throughHeight, reading.throughBreadth);
    if (!(slope > 0.0) || !(slope < quarterTurn))
        return std::nullopt;
    return slope;
}

std::optional<TablePoint> pointOnDiagonal(const DiagonalReading& reading, Units units) {
    const auto slope = slopeOf(reading);
    if (!slope)
        return std::nullopt;
    TablePoint point;
    point.kind = PointKind::Point;
    point.halfBreadth = reading.distance * std::cos(*slope);
    point.height = reading.height - reading.distance * std::sin(*slope);
    point.printedHalfBreadth = reckoned(point.halfBreadth, reading, units);
    point.printedHeight = reckoned(point.height, reading, units);
    point.diagonal = reading;
    return point;
}

} // namespace sheerlay::core

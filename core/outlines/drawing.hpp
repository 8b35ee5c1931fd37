#pragma once

#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// A point of a drawing, in its own units, y up.
struct DrawnPoint {
    double x = 0.0;
    double y = 0.0;

    friend bool operator==(const DrawnPoint&, const DrawnPoint&) = default;
};

/// One curve of a drawing as points on it: corners of polylines, and points of arcs and splines so close that
/// a chord leaves the curve by less than 1/10000 of its size.
struct DrawnCurve {
    std::vector<std::string> groups; ///< names it stands under: its own, then outward; or its layer
    std::vector<DrawnPoint> points;  ///< at least two
};

/// The curves of a DXF or SVG file.
struct Drawing {
    std::vector<DrawnCurve> curves;
    std::optional<double> millimetres; ///< of one unit, where the file says it
    std::vector<std::string> leftOut;  ///< what is in the file and was not used, "3 TEXT"
};

/// Points of an arc about a centre, from angle `from` over `sweep` radians, one about every degree. An
/// ellipse has radii that differ.
[[nodiscard]] std::vector<DrawnPoint>
arcPoints(DrawnPoint centre, double radiusX, double radiusY, double from, double sweep);

/// A spline as DXF gives it. Weights are empty where it is not rational.
struct DrawnSpline {
    int degree = 3;
    std::vector<double> knots;
    std::vector<DrawnPoint> poles;
    std::vector<double> weights;
};

/// Points of a spline, 16 to each span of its knots. Empty where the numbers make no spline.
[[nodiscard]] std::vector<DrawnPoint> splinePoints(const DrawnSpline& spline);

} // namespace sheerlay::core

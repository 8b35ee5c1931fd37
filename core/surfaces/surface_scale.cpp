#include "core/surfaces/surface_scale.hpp"

#include "core/units/number_text.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>
#include <utility>

namespace sheerlay::core {
namespace {

constexpr double shortest = 1500.0; // mm, that a boat is long
constexpr double longest = 15'000.0;

struct Named {
    std::string_view said;
    double millimetres;
};
constexpr std::array<Named, 5> units{
    {{"mm", 1.0}, {"cm", 10.0}, {"m", 1000.0}, {"in", mmPerInch}, {"ft", 12 * mmPerInch}}};

double longestExtent(const geometry::Mesh& mesh) {
    Eigen::Vector3d low = mesh.points.front();
    Eigen::Vector3d high = low;
    for (const Eigen::Vector3d& p : mesh.points) {
        low = low.cwiseMin(p);
        high = high.cwiseMax(p);
    }
    return (high - low).maxCoeff();
}

bool isBoat(double mm) {
    return mm >= shortest && mm <= longest;
}

/// Small boats of a wrong unit are told with the digits that show it.
std::string inMm(double mm) {
    return numberText(mm, mm < 100.0 ? 2 : 0) + " mm";
}

} // namespace

Expected<SurfaceScale, LengthError> surfaceScale(const geometry::GivenFaces& given,
                                                 const TableCorrections& corrections) {
    SurfaceScale scale;
    const double asFile = longestExtent(given.mesh);
    const double written = asFile / given.unit; // the numbers in the file
    double unit = given.unit;
    if (corrections.units) {
        unit = units[static_cast<std::size_t>(*corrections.units)].millimetres;
        scale.factor = unit / given.unit;
    }
    const double length = scale.factor * asFile;
    if (!isBoat(length)) {
        std::string would;
        for (const Named& named : units)
            if (isBoat(written * named.millimetres))
                would += (would.empty() ? "--take \"units = " : ", or \"units = ") + std::string(named.said) +
                         "\", which makes her " + inMm(written * named.millimetres) + " long";
        return unexpected(LengthError{
            "a boat " + inMm(length) + " long, " +
                (corrections.units ? "with the unit you say" : "as the file counts in " + given.unitName),
            would.empty() ? "a hull of 1.5 to 15 m" : would});
    }
    scale.units = unit == mmPerInch || unit == 12 * mmPerInch ? Units::Inches : Units::Millimetres;
    scale.said.push_back("The file counts in " +
                         (corrections.units ? numberText(unit, 1) + " mm, as you say" : given.unitName) +
                         "; she is " + inMm(length) + " (" + numberText(length / mmPerInch, 1) +
                         " in) long over all.");
    return scale;
}

} // namespace sheerlay::core

#pragma once

#include "core/project/finding.hpp"
#include "core/project/project.hpp"
#include "geometry/expected.hpp"
#include "geometry/tensor_surface.hpp"
#include "geometry/trims.hpp"

#include <Eigen/Core>

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// How well the loft honours one station of the table.
struct StationResidual {
    std::string station; ///< as the table prints its x
    double x = 0.0;      ///< mm from the bow
    double rms = 0.0;    ///< mm
    double max = 0.0;    ///< mm, signed, the largest in size; + outside the loft
    int points = 0;
};

/// A number that the rest of the table contradicts; told in words by the finding doubtful-cell.
struct DoubtfulCell {
    std::size_t station = 0; ///< index into HullTable::stations
    PointKind kind = PointKind::Point;
    std::size_t point = 0;        ///< index into Station::points, unless `kind` is sheer or keel
    bool height = false;          ///< the doubt is about the height
    double printed = 0.0;         ///< mm; of a point on a diagonal the distance along it, as all here
    double fair = 0.0;            ///< mm, what the rest of the table wants there
    double spread = 0.0;          ///< mm, one standard deviation of `fair`
    bool setAside = false;        ///< the loft is made without it
    std::optional<double> likely; ///< mm, what was meant if it is the likeliest slip
    std::string slip;             ///< that slip in words: "a digit lost"
};

/// A half hull with its trims, starboard, x from the bow's foremost point. Surface parameter u runs aft
/// (about x), v about girth below the sheer, growing toward the keel; the sheer is v = 0.
struct TrimmedSurface {
    geometry::TensorSurface surface;
    geometry::Trims trims;              ///< sheer, centreplane (or siding) and transoms as functions
    geometry::HullOutline outline;      ///< the same as lines in the parameter plane
    std::vector<Eigen::Vector3d> sheer; ///< mm, bow to stern
    std::vector<Eigen::Vector3d>
        profile;                ///< mm, bow to stern: where the planking meets the centreplane (or siding)
    double length = 0.0;        ///< mm, inside the trims
    double beam = 0.0;          ///< mm, both sides
    double halfArea = 0.0;      ///< mm2, one side
    double halfGirthMax = 0.0;  ///< mm
    double halfGirthMaxX = 0.0; ///< mm
};

/// The lofted hull.
struct LoftedHull {
    TrimmedSurface drawn;    ///< as the table gives it
    TrimmedSurface moulds;   ///< inner face of the planking
    TrimmedSurface laid;     ///< where cover width is measured; the planking is computed here
    double xShift = 0.0;     ///< mm, added to the table's x to reach the bow's datum
    double laidHeight = 0.0; ///< mm, the laid surface stands this far outside the moulds, along the normal
    std::vector<double> stationX;           ///< mm from the bow, every station of the table
    std::vector<StationResidual> residuals; ///< one per station, then the profile
    double residualRms = 0.0;               ///< mm over all points
    double residualMax = 0.0;               ///< mm
    double roundingSigma = 0.0;             ///< mm, roundedTo / sqrt 12
    double fairing = 0.0;                   ///< the weight lambda that was chosen
    std::vector<DoubtfulCell> doubtful;     ///< worst first
    std::vector<Finding> findings;
    double milliseconds = 0.0;
};

/// Why there is no hull, in words for the builder.
struct LoftError {
    std::string text;
};

/// Lofts the project's table: fit, fairing weight by the discrepancy principle, trims, offsets to moulds and
/// laid surface.
/// @accuracy  tests/core/loft_test.cpp, against the formula canoe
[[nodiscard]] Expected<LoftedHull, LoftError> loft(const Project& project);

/// Section of a trimmed surface by the plane x = const: points sheer to keel, mm, starboard; empty where the
/// plane misses it.
[[nodiscard]] std::vector<Eigen::Vector3d> sectionAt(const TrimmedSurface& hull, double x, int points = 60);

} // namespace sheerlay::core

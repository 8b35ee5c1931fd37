#pragma once

#include "core/hull/loft_data.hpp"
#include "geometry/expected.hpp"
#include "geometry/tensor_surface.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// How one point of the data fares in the finished fit.
struct PointResidual {
    double normal = 0.0;       ///< mm, data minus loft along the section's outward normal
    double y = 0.0;            ///< mm, data minus loft
    double z = 0.0;            ///< mm
    double v = 0.0;            ///< where the point lies on the surface
    double ny = 0.0, nz = 0.0; ///< the section's unit outward normal there
    double leverage = 0.0;     ///< 0 to 1: how much of the fit there is this very point
};

/// The fitted drawn surface, in the table's datum.
struct SurfaceFit {
    geometry::TensorSurface surface;
    double lambda = 0.0;                  ///< weight of fairness, for data weighted 1 / sigma
    double rms = 0.0;                     ///< mm, over all residuals but helpers
    double robust = 0.0;                  ///< mm, 1.4826 times the median residual
    std::vector<PointResidual> residuals; ///< one per data point
    std::vector<int> levelKeel;           ///< stations where the section was held level at the keel
    int iterations = 0;
};

/// How the weight of fairness is chosen.
struct FitChoices {
    double residual = 0.8;        ///< of sigma: how far the surface may miss the points in the mean
    std::optional<double> lambda; ///< the weight itself, instead of a search for it
};

/// Fits one quintic half-hull surface to the data, going on past centreplane, sheer and ends: third-order
/// fairing, x shrunk by 3, weight by the discrepancy principle (residual 0.8 sigma), girths of the points
/// re-projected between solves. A table finer than anyone measures, read off a surface, is given half as many
/// spans again where that follows it.
/// @source planking.md section 2; table_checks.md section 1 (level keel)
[[nodiscard]] Expected<SurfaceFit, std::string> fitSurface(LoftData& data, const FitChoices& choices = {});

} // namespace sheerlay::core

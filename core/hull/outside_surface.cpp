#include "core/hull/outside_surface.hpp"

#include "core/hull/trimmed_surface.hpp"
#include "geometry/offset_surface.hpp"

namespace sheerlay::core {

Expected<TrimmedSurface, std::string> outsideSurface(const Project& project, const LoftedHull& hull) {
    if (project.hull.drawnTo == DrawnTo::Outside)
        return hull.drawn;
    const double farther = project.strips.thickness - hull.laidHeight;
    if (farther <= 0.0)
        return hull.laid;
    return trimSurface(geometry::offsetSurface(hull.laid.surface, farther, 1), hull.laid.trims);
}

} // namespace sheerlay::core

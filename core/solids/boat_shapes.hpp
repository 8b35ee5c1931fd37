#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"
#include "core/project/project.hpp"
#include "geometry/shapes.hpp"

#include <vector>

namespace sheerlay::core {

/// The part of the surface inside its trims, as a face; `mirror` for port.
[[nodiscard]] geometry::TrimmedFace hullFace(const TrimmedSurface& hull, bool mirror);

/// The drawn hull as two faces, starboard and port.
[[nodiscard]] std::vector<geometry::NamedShape> hullShapes(const LoftedHull& hull);

/// The hull's section at every station inside it, sheer to sheer, as a flat sheet on the station's line: the
/// inside of the planking. A station where the section has no breadth is left out.
[[nodiscard]] std::vector<geometry::NamedShape> mouldShapes(const Project& project, const LoftedHull& hull);

/// The same as triangles.
[[nodiscard]] std::vector<geometry::NamedMesh> mouldMeshes(const Project& project, const LoftedHull& hull);

/// Every piece of planking as a smooth bar, in the order of the plan, named by its id.
[[nodiscard]] std::vector<geometry::NamedShape>
stripShapes(const Project& project, const LoftedHull& hull, const Plan& plan);

/// The same as closed triangle bars, edges within 0.1 mm.
[[nodiscard]] std::vector<geometry::NamedMesh>
stripMeshes(const Project& project, const LoftedHull& hull, const Plan& plan);

/// By side, light and dark by turns from row to row; pieces that are not full strips have a colour of their
/// own.
[[nodiscard]] geometry::Colour stripColour(const Strip& strip);

} // namespace sheerlay::core

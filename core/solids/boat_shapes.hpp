#pragma once

#include "core/hull/hull.hpp"
#include "core/moulds/mould_set.hpp"
#include "core/planking/plan.hpp"
#include "core/project/project.hpp"
#include "geometry/shapes.hpp"

#include <vector>

namespace sheerlay::core {

/// The part of the surface inside its trims, as a face; `mirror` for port.
[[nodiscard]] geometry::TrimmedFace hullFace(const TrimmedSurface& hull, bool mirror);

/// The drawn hull as two faces, starboard and port.
[[nodiscard]] std::vector<geometry::NamedShape> hullShapes(const LoftedHull& hull);

/// Moulds, stem forms and transoms as the boards they are sawn from (mouldBoards), named.
[[nodiscard]] std::vector<geometry::NamedShape> mouldShapes(const MouldSet& set);

/// The same as closed triangles.
[[nodiscard]] std::vector<geometry::NamedMesh> mouldMeshes(const MouldSet& set);

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

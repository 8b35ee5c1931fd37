#pragma once

#include "core/hull/hull.hpp"
#include "core/hull/trimmed_surface.hpp"
#include "core/planking/plan.hpp"

#include <Eigen/Core>

#include <string>
#include <vector>

namespace sheerlay::test {

/// A boat from its project file to its plan.
struct Planked {
    core::Project project;
    core::LoftedHull hull;
    core::Plan plan;
};

[[nodiscard]] Planked planked(core::Project project);

[[nodiscard]] core::Project projectAt(const std::string& path);

/// The reference canoe, planked once.
[[nodiscard]] const Planked& plankedCanoe();

/// A hull that was never lofted: an exact surface with trims, moulds and laid surface alike.
[[nodiscard]] core::LoftedHull exactHull(geometry::TensorSurface surface, geometry::Trims trims);

/// Quarter of a pipe between two plumb transoms: sheer level with the axis, keel a quarter turn below it.
[[nodiscard]] core::LoftedHull quarterPipe(double radius, double length);

/// Quarter of a sphere, sheer a great circle, stems and keel another: see the spheroid of trims_test.cpp for
/// the parametrisation without a pole. x from the bow; u runs with x as on a lofted hull.
[[nodiscard]] core::LoftedHull quarterSphere(double radius);

[[nodiscard]] double lengthOf(const std::vector<Eigen::Vector3d>& line);

/// The strips of one side in the order of their rows.
[[nodiscard]] std::vector<const core::Strip*> stripsOf(const core::Plan& plan, core::Side side);

} // namespace sheerlay::test

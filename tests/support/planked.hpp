#pragma once

#include "core/hull/hull.hpp"
#include "core/hull/trimmed_surface.hpp"
#include "core/planking/planking.hpp"
#include "core/project/project_file.hpp"
#include "tests/support/surfaces.hpp"

#include <cmath>
#include <numbers>
#include <stdexcept>
#include <string>
#include <vector>

namespace sheerlay::test {

/// A boat from its project file to its plan.
struct Planked {
    core::Project project;
    core::LoftedHull hull;
    core::Plan plan;
};

[[nodiscard]] inline Planked planked(core::Project project) {
    auto hull = core::loft(project);
    if (!hull)
        throw std::runtime_error(hull.error().text);
    auto plan = core::plank(project, *hull);
    if (!plan)
        throw std::runtime_error(plan.error().text);
    return {std::move(project), std::move(*hull), std::move(*plan)};
}

[[nodiscard]] inline core::Project projectAt(const std::string& path) {
    auto read = core::readProject(path);
    if (!read)
        throw std::runtime_error(core::toText(read.error().front()));
    return read->project;
}

/// A hull that was never lofted: an exact surface with trims, moulds and laid surface alike.
[[nodiscard]] inline core::LoftedHull exactHull(geometry::TensorSurface surface, geometry::Trims trims) {
    core::LoftedHull h;
    auto trimmed = core::trimSurface(std::move(surface), std::move(trims));
    if (!trimmed)
        throw std::runtime_error(trimmed.error());
    h.drawn = h.moulds = h.laid = std::move(*trimmed);
    for (double x = 0; x <= h.laid.length; x += 300)
        h.stationX.push_back(x);
    return h;
}

/// Quarter of a pipe between two plumb transoms: sheer level with the axis, keel a quarter turn below it.
[[nodiscard]] inline core::LoftedHull quarterPipe(double radius, double length) {
    geometry::Trims trims;
    trims.bow = geometry::TransomPlane{0, 0, 0};
    trims.stern = geometry::TransomPlane{length, 0, 0};
    const double quarter = radius * std::numbers::pi / 2;
    return exactHull(splineOf(
                         [radius](double u, double v) {
                             return Eigen::Vector3d(
                                 u, radius * std::cos(v / radius), -radius * std::sin(v / radius));
                         },
                         {-200, (length + 400) / 40, 40},
                         {-80, (quarter + 240) / 24, 24}),
                     trims);
}

/// Quarter of a sphere, sheer a great circle, stems and keel another: see the spheroid of trims_test.cpp for
/// the parametrisation without a pole. x from the bow; u runs with x as on a lofted hull.
[[nodiscard]] inline core::LoftedHull quarterSphere(double radius) {
    return exactHull(splineOf(
                         [radius](double u, double v) {
                             const double a = (u / radius - 1) * std::numbers::pi / 2, c = std::cos(a),
                                          q = v / radius;
                             const Eigen::Vector3d d = Eigen::Vector3d(std::sin(a), c - q, -q).normalized();
                             return Eigen::Vector3d(radius * d + Eigen::Vector3d(radius, 0, 0));
                         },
                         {-100, (2 * radius + 200) / 60, 60},
                         {-80, (radius + 200) / 30, 30}),
                     {});
}

[[nodiscard]] inline double lengthOf(const std::vector<Eigen::Vector3d>& line) {
    double sum = 0;
    for (std::size_t i = 1; i < line.size(); ++i)
        sum += (line[i] - line[i - 1]).norm();
    return sum;
}

/// The strips of one side in the order of their rows.
[[nodiscard]] inline std::vector<const core::Strip*> stripsOf(const core::Plan& plan, core::Side side) {
    std::vector<const core::Strip*> list;
    for (const core::Strip& s : plan.strips)
        if (s.side == side)
            list.push_back(&s);
    return list;
}

} // namespace sheerlay::test

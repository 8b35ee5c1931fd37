#include "tests/support/planked.hpp"

#include "core/planking/planking.hpp"
#include "core/project/project_file.hpp"
#include "tests/support/surfaces.hpp"

#include <cmath>
#include <numbers>
#include <stdexcept>

namespace sheerlay::test {

Planked planked(core::Project project) {
    auto hull = core::loft(project);
    if (!hull)
        throw std::runtime_error(hull.error().text);
    auto plan = core::plank(project, *hull);
    if (!plan)
        throw std::runtime_error(plan.error().text);
    return {std::move(project), std::move(*hull), std::move(*plan)};
}

core::Project projectAt(const std::string& path) {
    auto read = core::readProject(path);
    if (!read)
        throw std::runtime_error(core::toText(read.error().front()));
    return read->project;
}

const Planked& plankedCanoe() {
    static const Planked boat = planked(projectAt(SHEERLAY_REFERENCE "/formula_canoe.sheerlay"));
    return boat;
}

core::LoftedHull exactHull(geometry::TensorSurface surface, geometry::Trims trims) {
    core::LoftedHull h;
    auto trimmed = core::trimSurface(std::move(surface), std::move(trims));
    if (!trimmed)
        throw std::runtime_error(trimmed.error());
    h.drawn = h.moulds = h.laid = std::move(*trimmed);
    for (double x = 0; x <= h.laid.length; x += 300)
        h.stationX.push_back(x);
    return h;
}

core::LoftedHull quarterPipe(double radius, double length) {
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

core::LoftedHull quarterSphere(double radius) {
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

double lengthOf(const std::vector<Eigen::Vector3d>& line) {
    double sum = 0;
    for (std::size_t i = 1; i < line.size(); ++i)
        sum += (line[i] - line[i - 1]).norm();
    return sum;
}

std::vector<const core::Strip*> stripsOf(const core::Plan& plan, core::Side side) {
    std::vector<const core::Strip*> list;
    for (const core::Strip& s : plan.strips)
        if (s.side == side)
            list.push_back(&s);
    return list;
}

} // namespace sheerlay::test

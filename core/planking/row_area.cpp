#include "core/planking/row_area.hpp"

#include <algorithm>
#include <array>

namespace sheerlay::core {
namespace {

/// Area under J between a and b on column i, per unit of the master's length; J through its three known
/// values.
double columnArea(const RowMesh& mesh, std::size_t i, double a, double b) {
    const double w = mesh.widthAt(i);
    const auto& p = mesh.parent[i];
    const auto& m = mesh.middle[i];
    const auto& k = mesh.child[i];
    const double j0 = p.alive ? p.state.jacobi : m.state.jacobi;
    const double j1 = m.alive ? m.state.jacobi : j0;
    const double j2 = k.alive ? k.state.jacobi : j1;
    const auto primitive = [&](double d) {
        const double t = d / w;
        return w * t * (j0 + t * ((-3 * j0 + 4 * j1 - j2) / 2 + t * (2 * j0 - 4 * j1 + 2 * j2) / 3));
    };
    return primitive(b) - primitive(a);
}

/// True when a line goes on at least as far as `column`, seen from column i, on which one of the lines ends.
bool reaches(const RowColumns& columns, Line line, std::size_t i, int step, double column) {
    const auto j = static_cast<std::ptrdiff_t>(i) + step;
    if (j >= 0 && j < static_cast<std::ptrdiff_t>(columns.size()) &&
        columns.in(line, static_cast<std::size_t>(j)))
        return true;
    if (!columns.in(line, i))
        return false;
    constexpr double same = 1e-6; // columns: a square end meets all three lines at once
    const auto end = columns.lineEnd(line, i, step);
    return end && step * (end->point.column - column) > -same;
}

} // namespace

double rowArea(const RowColumns& columns, std::size_t c0, std::size_t c1) {
    std::vector<std::array<double, 2>> profile; // column, area per unit of master length
    for (std::size_t i = c0; i <= c1; ++i)
        profile.push_back(
            {static_cast<double>(i), columnArea(columns.mesh(), i, columns[i].a, columns[i].b)});
    // the ends of the three parallels lie between columns: there the interval is known exactly
    for (const Line line : {Line::Parent, Line::Middle, Line::Child})
        for (std::size_t i = c0; i <= c1; ++i) {
            if (!columns.in(line, i))
                continue;
            for (const int step : {-1, 1}) {
                const auto j = static_cast<std::ptrdiff_t>(i) + step;
                if (j >= 0 && j < static_cast<std::ptrdiff_t>(columns.size()) &&
                    columns.in(line, static_cast<std::size_t>(j)))
                    continue;
                const auto end = columns.lineEnd(line, i, step);
                if (!end)
                    continue;
                const auto goesOn = [&](Line l) {
                    return l == line || reaches(columns, l, i, step, end->point.column);
                };
                const bool onTransom =
                    end->trim == geometry::Trim::BowPlane || end->trim == geometry::Trim::SternPlane;
                const double w = columns.mesh().widthAt(i);
                double a = goesOn(Line::Parent) ? 0 : goesOn(Line::Middle) ? w / 2 : w;
                double b = goesOn(Line::Child) ? w : goesOn(Line::Middle) ? w / 2 : 0;
                if (onTransom && columns[i].trimB == geometry::Trim::Centre)
                    b = columns[i].b; // a lens that ends on a transom keeps its width there
                a = std::min(a, b);
                if (b > a)
                    profile.push_back({end->point.column, columnArea(columns.mesh(), i, a, b)});
                else
                    profile.push_back({end->point.column, 0.0});
            }
        }
    std::sort(profile.begin(), profile.end());
    double area = 0;
    for (std::size_t i = 1; i < profile.size(); ++i)
        area += 0.5 * (profile[i][1] + profile[i - 1][1]) * (profile[i][0] - profile[i - 1][0]);
    return area * columns.mesh().spacing;
}

} // namespace sheerlay::core

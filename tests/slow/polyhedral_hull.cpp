#include "tests/slow/polyhedral_hull.hpp"

#include <queue>

#include <CGAL/AABB_face_graph_triangle_primitive.h>
#include <CGAL/AABB_traits.h>
#include <CGAL/AABB_tree.h>
#include <CGAL/Delaunay_triangulation_2.h>
#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Heat_method_3/Surface_mesh_geodesic_distances_3.h>
#include <CGAL/Surface_mesh.h>
#include <CGAL/Surface_mesh_shortest_path.h>
#include <CGAL/Triangulation_vertex_base_with_info_2.h>
#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <set>
#include <stdexcept>
#include <utility>

namespace sheerlay::test {
namespace {

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using Triangles = CGAL::Surface_mesh<Kernel::Point_3>;
using Paths = CGAL::Surface_mesh_shortest_path<CGAL::Surface_mesh_shortest_path_traits<Kernel, Triangles>>;
using Tree = CGAL::AABB_tree<CGAL::AABB_traits<Kernel, CGAL::AABB_face_graph_triangle_primitive<Triangles>>>;
using Heat = CGAL::Heat_method_3::Surface_mesh_geodesic_distances_3<Triangles,
                                                                    CGAL::Heat_method_3::Intrinsic_Delaunay>;
using Flat = CGAL::Delaunay_triangulation_2<
    Kernel,
    CGAL::Triangulation_data_structure_2<CGAL::Triangulation_vertex_base_with_info_2<std::size_t, Kernel>>>;

constexpr double margin = 60.0; // mm past the centreplane and the transoms

Kernel::Point_3 toCgal(const Eigen::Vector3d& p) {
    return {p.x(), p.y(), p.z()};
}

/// The line's points and the points of a grid, without those so near the line that triangles would get thin.
/// Index 0 to line.size() - 1 are the line's.
std::vector<Eigen::Vector2d>
gridAbout(const core::TrimmedSurface& hull, const std::vector<Eigen::Vector2d>& line, MeshSteps steps) {
    const auto& ku = hull.surface.knotsU();
    const auto& kv = hull.surface.knotsV();
    std::vector<Eigen::Vector2d> all = line;
    const auto cell = [&](const Eigen::Vector2d& p) {
        return std::pair{std::floor(p.x() / steps.u), std::floor(p.y() / steps.v)};
    };
    const auto scaled = [&](const Eigen::Vector2d& d) {
        return Eigen::Vector2d(d.x() / steps.u, d.y() / steps.v);
    };
    std::multimap<std::pair<double, double>, Eigen::Vector2d> cells;
    for (const Eigen::Vector2d& p : line)
        cells.emplace(cell(p), p);
    const auto nearLine = [&](const Eigen::Vector2d& p) {
        const auto [i, j] = cell(p);
        for (double di = -1; di <= 1; ++di)
            for (double dj = -1; dj <= 1; ++dj)
                for (auto [it, end] = cells.equal_range({i + di, j + dj}); it != end; ++it)
                    if (scaled(it->second - p).norm() < 0.5)
                        return true;
        return false;
    };
    for (double u = ku.first; u <= ku.last(); u += steps.u)
        for (double v = kv.first; v <= kv.last(); v += steps.v)
            if (const Eigen::Vector2d p(u, v); !nearLine(p))
                all.push_back(p);
    return all;
}

/// Triangles whose corners all lie near the hull and that hang together with the one in its middle, so that
/// no far sheet of the surface's extension comes in.
std::set<Flat::Face_handle>
facesOfHull(const Flat& flat, const Eigen::Vector2d& middle, const std::vector<char>& near) {
    const auto good = [&](Flat::Face_handle f) {
        return !flat.is_infinite(f) && near[f->vertex(0)->info()] != 0 && near[f->vertex(1)->info()] != 0 &&
               near[f->vertex(2)->info()] != 0;
    };
    const Flat::Face_handle start = flat.locate({middle.x(), middle.y()});
    if (!good(start))
        throw std::runtime_error("the middle of the hull is no hull");
    std::set<Flat::Face_handle> taken = {start};
    std::queue<Flat::Face_handle> open;
    open.push(start);
    while (!open.empty()) {
        const Flat::Face_handle f = open.front();
        open.pop();
        for (int k = 0; k < 3; ++k)
            if (const Flat::Face_handle next = f->neighbor(k); good(next) && taken.insert(next).second)
                open.push(next);
    }
    return taken;
}

} // namespace

struct PolyhedralHull::Mesh {
    Triangles triangles;
    std::vector<Triangles::Vertex_index> line; // corners distances are measured from
    Tree tree;

    [[nodiscard]] Paths::Face_location locate(const Eigen::Vector3d& p) const {
        return Paths::locate(toCgal(p), tree, triangles, get(CGAL::vertex_point, triangles));
    }
};

PolyhedralHull::PolyhedralHull(const core::TrimmedSurface& hull,
                               const std::vector<Eigen::Vector2d>& line,
                               MeshSteps steps)
    : m_mesh(std::make_unique<Mesh>()) {
    const std::vector<Eigen::Vector2d> all = gridAbout(hull, line, steps);
    std::vector<Eigen::Vector3d> points;
    points.reserve(all.size());
    std::vector<char> near;
    std::vector<std::pair<Kernel::Point_2, std::size_t>> flatPoints;
    for (const Eigen::Vector2d& uv : all) {
        flatPoints.emplace_back(Kernel::Point_2(uv.x(), uv.y()), points.size());
        points.push_back(hull.surface.point(uv.x(), uv.y()));
        bool in = true;
        for (const auto trim : {geometry::Trim::Centre, geometry::Trim::BowPlane, geometry::Trim::SternPlane})
            in = in && hull.trims.value(trim, uv.y(), points.back()) > -margin;
        near.push_back(in);
    }
    const Flat flat(flatPoints.begin(), flatPoints.end());
    const double u = 0.5 * (hull.surface.knotsU().first + hull.surface.knotsU().last());
    Triangles& mesh = m_mesh->triangles;
    std::vector<Triangles::Vertex_index> index(points.size(), Triangles::null_vertex());
    const auto corner = [&](Flat::Face_handle f, int k) {
        const std::size_t c = f->vertex(k)->info();
        if (index[c] == Triangles::null_vertex())
            index[c] = mesh.add_vertex(toCgal(points[c]));
        return index[c];
    };
    const std::set<Flat::Face_handle> taken = facesOfHull(flat, {u, 0.25 * hull.halfGirthMax}, near);
    for (Flat::Face_handle f : flat.finite_face_handles()) // a fixed order; the set's is by address
        if (taken.contains(f))
            mesh.add_face(corner(f, 0), corner(f, 1), corner(f, 2));
    for (std::size_t c = 0; c < line.size(); ++c)
        if (index[c] != Triangles::null_vertex())
            m_mesh->line.push_back(index[c]);
    m_mesh->tree.insert(faces(mesh).first, faces(mesh).second, mesh);
    m_mesh->tree.build();
    m_mesh->tree.accelerate_distance_queries();
}

PolyhedralHull::~PolyhedralHull() = default;
PolyhedralHull::PolyhedralHull(PolyhedralHull&&) noexcept = default;
PolyhedralHull& PolyhedralHull::operator=(PolyhedralHull&&) noexcept = default;

std::size_t PolyhedralHull::vertices() const {
    return m_mesh->triangles.number_of_vertices();
}

double PolyhedralHull::farthest(const std::vector<Eigen::Vector3d>& points) const {
    double most = 0;
    for (const Eigen::Vector3d& p : points)
        most = std::max(most, std::sqrt(m_mesh->tree.squared_distance(toCgal(p))));
    return most;
}

std::vector<double> PolyhedralHull::exactDistances(const std::vector<Eigen::Vector3d>& targets) const {
    // Corners only: of several sources inside one triangle CGAL 5.5 loses some without a word.
    Paths paths(m_mesh->triangles);
    paths.add_source_points(m_mesh->line.begin(), m_mesh->line.end());
    std::vector<double> distances;
    distances.reserve(targets.size());
    for (const Eigen::Vector3d& p : targets) {
        const auto at = m_mesh->locate(p);
        distances.push_back(paths.shortest_distance_to_source_points(at.first, at.second).first);
    }
    return distances;
}

std::vector<double> PolyhedralHull::heatDistances(const std::vector<Eigen::Vector3d>& targets) const {
    const Triangles& mesh = m_mesh->triangles;
    Heat heat(mesh);
    heat.add_sources(m_mesh->line);
    std::vector<double> field(mesh.number_of_vertices());
    heat.estimate_geodesic_distances(
        boost::make_iterator_property_map(field.begin(), get(boost::vertex_index, mesh)));
    std::vector<double> distances;
    distances.reserve(targets.size());
    for (const Eigen::Vector3d& p : targets) {
        const auto at = m_mesh->locate(p);
        // a Face_location counts its corners from the source of the face's own halfedge
        auto h = mesh.halfedge(at.first);
        double d = 0;
        for (const double part : at.second) {
            d += part * field[mesh.source(h).idx()];
            h = mesh.next(h);
        }
        distances.push_back(d);
    }
    return distances;
}

std::vector<double> extrapolated(const std::vector<double>& coarse, const std::vector<double>& fine) {
    std::vector<double> limit(fine.size());
    for (std::size_t i = 0; i < fine.size(); ++i)
        limit[i] = fine[i] + (fine[i] - coarse.at(i)) / 3;
    return limit;
}

} // namespace sheerlay::test

#include "geometry/occt/face_triangles.hpp"

#include <BRepAdaptor_Curve.hxx>
#include <BRepAdaptor_Surface.hxx>
#include <BRepMesh_IncrementalMesh.hxx>
#include <BRep_Tool.hxx>
#include <Geom2d_Curve.hxx>
#include <GeomAbs_SurfaceType.hxx>
#include <Poly_PolygonOnTriangulation.hxx>
#include <Poly_Triangulation.hxx>
#include <TopExp.hxx>
#include <TopExp_Explorer.hxx>
#include <TopLoc_Location.hxx>
#include <TopTools_IndexedMapOfShape.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Edge.hxx>
#include <TopoDS_Face.hxx>
#include <TopoDS_Vertex.hxx>

#include <Eigen/Geometry>

#include <algorithm>
#include <cstdint>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <tuple>
#include <unordered_map>
#include <utility>
#include <vector>

namespace sheerlay::geometry {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

// OpenCASCADE's mesher is slow where it is to be exact: it makes a coarse mesh inside the faces' edges, whose
// sides are then halved where they leave the surface.
constexpr double coarse = 1e-4;      // of the size
constexpr double coarseAngle = 0.35; // rad between neighbouring triangles
constexpr double follows = 2.5e-7;   // of the size: 0.001 mm on a boat of 5 m; tapers magnify what is left
constexpr int mostHalvings = 10;

/// Points of all faces. A corner, or a point of an edge, has one number on every face it belongs to.
class SharedPoints {
public:
    SharedPoints(const TopoDS_Shape& shape, Mesh& mesh) : m_mesh(mesh) {
        TopExp::MapShapes(shape, TopAbs_VERTEX, m_vertices);
        TopExp::MapShapes(shape, TopAbs_EDGE, m_edges);
    }
    int add(const Vector3d& p) {
        m_mesh.points.push_back(p);
        return static_cast<int>(m_mesh.points.size()) - 1;
    }
    int corner(const TopoDS_Edge& edge, bool first, const Vector3d& p) {
        const TopoDS_Edge forward = TopoDS::Edge(edge.Oriented(TopAbs_FORWARD));
        const TopoDS_Vertex vertex = first ? TopExp::FirstVertex(forward) : TopExp::LastVertex(forward);
        return numbered({0, m_vertices.FindIndex(vertex), 0}, p);
    }
    /// @param t  where on the edge
    int onEdge(const TopoDS_Edge& edge, double t, const Vector3d& p) {
        return numbered({m_edges.FindIndex(edge), 0, t}, p);
    }
    [[nodiscard]] const Vector3d& at(int i) const { return m_mesh.points[static_cast<std::size_t>(i)]; }

private:
    using Key = std::tuple<int, int, double>; // an edge and a place on it, or 0 and a vertex

    int numbered(const Key& key, const Vector3d& p) {
        const auto [at, fresh] = m_numbers.try_emplace(key, 0);
        if (fresh)
            at->second = add(p);
        return at->second;
    }

    Mesh& m_mesh;
    TopTools_IndexedMapOfShape m_vertices, m_edges;
    std::map<Key, int> m_numbers;
};

Vector3d vectorOf(const gp_Pnt& p) {
    return {p.X(), p.Y(), p.Z()};
}

/// An edge as one face sees it.
struct FaceEdge {
    TopoDS_Edge edge;
    std::shared_ptr<BRepAdaptor_Curve> curve;
    Handle(Geom2d_Curve) onFace;
};

/// The triangles of one face, halved until they follow it.
class FaceMesh {
public:
    FaceMesh(const TopoDS_Face& face,
             const Handle(Poly_Triangulation) & made,
             const TopLoc_Location& place,
             double tolerance,
             SharedPoints& shared)
        : m_surface(face), m_tolerance(tolerance), m_shared(shared) {
        m_nodes.resize(static_cast<std::size_t>(made->NbNodes()));
        for (int i = 1; i <= made->NbNodes(); ++i)
            node(i - 1).uv = {made->UVNode(i).X(), made->UVNode(i).Y()};
        const auto point = [&](int i) {
            return vectorOf(made->Node(i + 1).Transformed(place.Transformation()));
        };
        for (TopExp_Explorer e(face, TopAbs_EDGE); e.More(); e.Next())
            takeEdge(TopoDS::Edge(e.Current()), face, made, place, point);
        for (int i = 0; i < made->NbNodes(); ++i)
            if (node(i).number < 0)
                node(i).number = m_shared.add(point(i));
        for (int i = 1; i <= made->NbTriangles(); ++i) {
            std::array<int, 3> t{};
            made->Triangle(i).Get(t[0], t[1], t[2]);
            m_triangles.push_back({t[0] - 1, t[1] - 1, t[2] - 1});
        }
    }

    void refine() {
        std::vector<std::array<int, 3>> open = std::move(m_triangles);
        m_triangles.clear();
        for (int round = 0; round < mostHalvings && !open.empty(); ++round) {
            std::vector<std::array<int, 3>> finer;
            for (const auto& t : open)
                if (!split(t, finer)) // none of its sides will ever be halved
                    m_triangles.push_back(t);
            open = std::move(finer);
        }
        m_triangles.insert(m_triangles.end(), open.begin(), open.end());
    }

    void addTo(GivenFaces& given) {
        const int index = static_cast<int>(given.faces.size()) - 1;
        for (const auto& t : m_triangles) {
            const std::array<int, 3> numbers{node(t[0]).number, node(t[1]).number, node(t[2]).number};
            if (numbers[0] == numbers[1] || numbers[1] == numbers[2] || numbers[2] == numbers[0])
                continue;
            const Vector3d a = m_shared.at(numbers[0]);
            const Vector3d ab = m_shared.at(numbers[1]) - a;
            const Vector3d ac = m_shared.at(numbers[2]) - a;
            const Vector3d normal = ab.cross(ac);
            given.faces.back().area += normal.norm() / 2;
            const Vector3d middle = value((node(t[0]).uv + node(t[1]).uv + node(t[2]).uv) / 3.0);
            given.chord = std::max(given.chord, std::abs(normal.normalized().dot(middle - a)));
            given.mesh.triangles.push_back(numbers);
            given.faceOf.push_back(index);
        }
    }

private:
    struct Node {
        Vector2d uv = Vector2d::Zero();
        int number = -1;
    };
    /// A stretch of an edge between two neighbouring nodes.
    struct Stretch {
        std::size_t edge = 0;
        double from = 0.0, to = 0.0; ///< at the lower and at the higher node
    };
    using Side = std::pair<int, int>;
    struct SideHash {
        std::size_t operator()(const Side& s) const noexcept {
            return std::hash<std::uint64_t>()(static_cast<std::uint64_t>(s.first) << 32U |
                                              static_cast<std::uint32_t>(s.second));
        }
    };

    Node& node(int i) { return m_nodes[static_cast<std::size_t>(i)]; }
    [[nodiscard]] Vector3d value(const Vector2d& uv) const {
        return vectorOf(m_surface.Value(uv.x(), uv.y()));
    }

    template <class Point>
    void takeEdge(const TopoDS_Edge& edge,
                  const TopoDS_Face& face,
                  const Handle(Poly_Triangulation) & made,
                  const TopLoc_Location& place,
                  const Point& point) {
        const Handle(Poly_PolygonOnTriangulation) polygon =
            BRep_Tool::PolygonOnTriangulation(edge, made, place);
        if (polygon.IsNull() || BRep_Tool::Degenerated(edge) || !polygon->HasParameters())
            return takeCorners(edge, polygon, point);
        double first = 0.0;
        double last = 0.0;
        m_edges.push_back({edge,
                           std::make_shared<BRepAdaptor_Curve>(edge),
                           BRep_Tool::CurveOnSurface(edge, face, first, last)});
        const int count = polygon->NbNodes();
        for (int i = 1; i <= count; ++i) {
            const int k = polygon->Node(i) - 1;
            const double t = polygon->Parameter(i);
            node(k).number = i == 1 || i == count ? m_shared.corner(edge, i == 1, point(k))
                                                  : m_shared.onEdge(edge, t, point(k));
            if (i > 1)
                stretch(m_edges.size() - 1, {polygon->Node(i - 1) - 1, polygon->Parameter(i - 1)}, {k, t});
        }
    }
    /// An edge shrunk to a point, as at a pole.
    template <class Point>
    void takeCorners(const TopoDS_Edge& edge,
                     const Handle(Poly_PolygonOnTriangulation) & polygon,
                     const Point& point) {
        if (polygon.IsNull())
            return;
        for (int i = 1; i <= polygon->NbNodes(); ++i) {
            const int k = polygon->Node(i) - 1;
            node(k).number = m_shared.corner(edge, 2 * i <= polygon->NbNodes(), point(k));
        }
    }
    void stretch(std::size_t edge, std::pair<int, double> a, std::pair<int, double> b) {
        if (a.first > b.first)
            std::swap(a, b);
        m_stretches[{a.first, b.first}] = {edge, a.second, b.second};
    }

    /// The node that halves a side, or -1 where the side follows the surface.
    int halving(int a, int b) {
        const Side side = std::minmax(a, b);
        const auto [known, fresh] = m_halvings.try_emplace(side, -1);
        if (!fresh)
            return known->second;
        const Vector3d& p = m_shared.at(node(a).number);
        const Vector3d& q = m_shared.at(node(b).number);
        const auto on = m_stretches.find(side);
        Node middle;
        Vector3d at;
        double t = 0.0;
        if (on != m_stretches.end()) {
            const FaceEdge& edge = m_edges[on->second.edge];
            t = (on->second.from + on->second.to) / 2;
            at = vectorOf(edge.curve->Value(t));
            middle.uv = (node(a).uv + node(b).uv) / 2;
            if (!edge.onFace.IsNull()) {
                const gp_Pnt2d uv = edge.onFace->Value(t);
                middle.uv = {uv.X(), uv.Y()};
            }
        } else {
            middle.uv = (node(a).uv + node(b).uv) / 2;
            at = value(middle.uv);
        }
        const Vector3d chord = (q - p).normalized();
        const Vector3d off = at - p;
        if ((off - off.dot(chord) * chord).norm() <= m_tolerance)
            return -1;
        const int made = static_cast<int>(m_nodes.size());
        if (on != m_stretches.end()) {
            const Stretch s = on->second;
            middle.number = m_shared.onEdge(m_edges[s.edge].edge, t, at);
            stretch(s.edge, {side.first, s.from}, {made, t});
            stretch(s.edge, {side.second, s.to}, {made, t});
        } else {
            middle.number = m_shared.add(at);
        }
        m_nodes.push_back(middle);
        return known->second = made;
    }

    /// @return false where all three sides follow the surface
    bool split(const std::array<int, 3>& t, std::vector<std::array<int, 3>>& into) {
        std::array<int, 3> halves{};
        int count = 0;
        for (std::size_t i = 0; i < 3; ++i) {
            halves[i] = halving(t[i], t[(i + 1) % 3]);
            count += halves[i] >= 0 ? 1 : 0;
        }
        if (count == 0)
            return false;
        if (count == 3) {
            into.push_back({halves[0], halves[1], halves[2]});
            for (std::size_t i = 0; i < 3; ++i)
                into.push_back({t[i], halves[i], halves[(i + 2) % 3]});
            return true;
        }
        // turned so that side 0 is halved, and with two of them side 2 is whole
        std::size_t r = 0;
        while (halves[r] < 0 || (count == 2 && halves[(r + 2) % 3] >= 0))
            ++r;
        const std::array<int, 3> c{t[r], t[(r + 1) % 3], t[(r + 2) % 3]};
        const int first = halves[r];
        if (count == 1) {
            into.push_back({c[0], first, c[2]});
            into.push_back({first, c[1], c[2]});
            return true;
        }
        const int second = halves[(r + 1) % 3];
        into.push_back({first, c[1], second});
        into.push_back({c[0], first, second});
        into.push_back({c[0], second, c[2]});
        return true;
    }

    BRepAdaptor_Surface m_surface;
    double m_tolerance;
    SharedPoints& m_shared;
    std::vector<Node> m_nodes;
    std::vector<std::array<int, 3>> m_triangles;
    std::vector<FaceEdge> m_edges;
    std::unordered_map<Side, Stretch, SideHash> m_stretches;
    std::unordered_map<Side, int, SideHash> m_halvings;
};

} // namespace

bool addTriangles(const TopoDS_Shape& shape, double size, GivenFaces& given) {
    const BRepMesh_IncrementalMesh mesher(shape, coarse * size, false, coarseAngle, false);
    SharedPoints shared(shape, given.mesh);
    for (TopExp_Explorer e(shape, TopAbs_FACE); e.More(); e.Next()) {
        const TopoDS_Face face = TopoDS::Face(e.Current());
        TopLoc_Location place;
        const Handle(Poly_Triangulation) made = BRep_Tool::Triangulation(face, place);
        given.faces.push_back({0.0, BRepAdaptor_Surface(face).GetType() == GeomAbs_Plane});
        if (made.IsNull() || !made->HasUVNodes())
            continue;
        FaceMesh mesh(face, made, place, follows * size, shared);
        mesh.refine();
        mesh.addTo(given);
    }
    return !given.mesh.triangles.empty();
}

} // namespace sheerlay::geometry

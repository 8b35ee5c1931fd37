#include "geometry/occt/make_shape.hpp"

#include <BRepBuilderAPI_MakeEdge.hxx>
#include <BRepBuilderAPI_MakeFace.hxx>
#include <BRepBuilderAPI_MakeWire.hxx>
#include <BRepBuilderAPI_Sewing.hxx>
#include <BRepLib.hxx>
#include <BRepPrimAPI_MakePrism.hxx>
#include <BRep_Builder.hxx>
#include <Geom2d_BSplineCurve.hxx>
#include <Geom_BSplineCurve.hxx>
#include <Geom_BSplineSurface.hxx>
#include <ShapeFix_Face.hxx>
#include <Standard_Failure.hxx>
#include <TColStd_Array1OfInteger.hxx>
#include <TColStd_Array1OfReal.hxx>
#include <TColgp_Array1OfPnt.hxx>
#include <TColgp_Array1OfPnt2d.hxx>
#include <TColgp_Array2OfPnt.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Edge.hxx>
#include <TopoDS_Face.hxx>
#include <TopoDS_Solid.hxx>

#include <algorithm>
#include <array>
#include <stdexcept>
#include <string>
#include <variant>
#include <vector>

namespace sheerlay::geometry {
namespace {

constexpr double joins = 1e-6; // mm, faces of one bar meet better than this

gp_Pnt at(const Eigen::Vector3d& p) {
    return {p.x(), p.y(), p.z()};
}

/// Knots and multiplicities of piecewise cubics, smooth at the breaks but the sharp ones; or of one straight
/// piece.
struct Knots {
    TColStd_Array1OfReal knots;
    TColStd_Array1OfInteger times;

    Knots(const std::vector<double>& breaks, const std::vector<bool>& sharp)
        : knots(1, static_cast<int>(breaks.size())), times(1, static_cast<int>(breaks.size())) {
        for (int i = 1; i <= knots.Length(); ++i) {
            const auto k = static_cast<std::size_t>(i - 1);
            knots(i) = breaks[k];
            times(i) = sharp[k] ? 3 : 2;
        }
        times(1) = times(times.Length()) = 4;
    }
    Knots() : knots(1, 2), times(1, 2) {
        knots(1) = 0.0;
        knots(2) = 1.0;
        times.Init(2);
    }
};

/// Poles of piecewise cubics with those knots.
std::vector<Eigen::Vector3d> cubicPoles(const std::vector<CubicLine::Place>& places,
                                        const std::vector<double>& breaks,
                                        const std::vector<bool>& sharp) {
    std::vector<Eigen::Vector3d> poles{places.front().p};
    for (std::size_t i = 0; i + 1 < places.size(); ++i) {
        const double third = (breaks[i + 1] - breaks[i]) / 3.0;
        poles.emplace_back(places[i].p + third * places[i].after);
        poles.emplace_back(places[i + 1].p - third * places[i + 1].before);
        if (sharp[i + 1] || i + 2 == places.size())
            poles.push_back(places[i + 1].p);
    }
    return poles;
}

Handle(Geom_BSplineSurface) splineOf(const TensorSurface& s, bool mirror) {
    const auto direction = [](const UniformKnots& k) {
        std::vector<double> full = k.fullVector();
        full.erase(std::unique(full.begin(), full.end()), full.end());
        TColStd_Array1OfReal knots(1, static_cast<int>(full.size()));
        for (int i = 1; i <= knots.Length(); ++i)
            knots(i) = full[static_cast<std::size_t>(i - 1)];
        return knots;
    };
    const TColStd_Array1OfReal u = direction(s.knotsU());
    const TColStd_Array1OfReal v = direction(s.knotsV());
    TColStd_Array1OfInteger onceU(1, u.Length());
    TColStd_Array1OfInteger onceV(1, v.Length());
    onceU.Init(1);
    onceV.Init(1);
    if (s.knotsV().crease > 0)
        onceV(s.knotsV().crease + 6) = 5; // five knots run ahead of the domain
    TColgp_Array2OfPnt poles(1, s.knotsU().poles(), 1, s.knotsV().poles());
    for (int i = 1; i <= poles.ColLength(); ++i)
        for (int j = 1; j <= poles.RowLength(); ++j) {
            const Eigen::Vector3d& p = s.pole(i - 1, j - 1);
            poles(i, j) = gp_Pnt(p.x(), mirror ? -p.y() : p.y(), p.z());
        }
    Handle(Geom_BSplineSurface) surface =
        new Geom_BSplineSurface(poles, u, v, onceU, onceV, TensorSurface::degree, TensorSurface::degree);
    // knots that run past the domain are unusual in files; end them at it
    surface->Segment(s.knotsU().first, s.knotsU().last(), s.knotsV().first, s.knotsV().last());
    return surface;
}

/// A smooth line through points as a B-spline, corners kept.
struct SmoothPoles {
    explicit SmoothPoles(const std::vector<Eigen::Vector3d>& points) : SmoothPoles(CubicLine(points)) {}

    Knots knots;
    std::vector<Eigen::Vector3d> poles;

private:
    explicit SmoothPoles(const CubicLine& line) : knots(line.breaks(), sharpOf(line)) {
        std::vector<CubicLine::Place> places;
        for (const double t : line.breaks())
            places.push_back(line.at(t));
        poles = cubicPoles(places, line.breaks(), sharpOf(line));
    }
    static std::vector<bool> sharpOf(const CubicLine& line) {
        const std::vector<double> corners = line.corners();
        std::vector<bool> sharp;
        for (const double t : line.breaks())
            sharp.push_back(std::find(corners.begin(), corners.end(), t) != corners.end());
        return sharp;
    }
};

/// A line of the parameter plane as one smooth curve, corners kept.
Handle(Geom2d_BSplineCurve) curveOf(const std::vector<Eigen::Vector2d>& line) {
    std::vector<Eigen::Vector3d> points;
    for (const Eigen::Vector2d& p : line)
        points.emplace_back(p.x(), p.y(), 0.0);
    const SmoothPoles smooth(points);
    TColgp_Array1OfPnt2d flat(1, static_cast<int>(smooth.poles.size()));
    for (int i = 1; i <= flat.Length(); ++i) {
        const Eigen::Vector3d& p = smooth.poles[static_cast<std::size_t>(i - 1)];
        flat(i) = gp_Pnt2d(p.x(), p.y());
    }
    return new Geom2d_BSplineCurve(flat, smooth.knots.knots, smooth.knots.times, 3);
}

TopoDS_Shape shapeOf(const TrimmedFace& face) {
    const Handle(Geom_BSplineSurface) surface = splineOf(face.surface, face.mirror);
    BRepBuilderAPI_MakeWire wire;
    for (const auto& line : face.boundary) {
        BRepBuilderAPI_MakeEdge edge(curveOf(line), surface);
        TopoDS_Edge made = edge.Edge();
        BRepLib::BuildCurves3d(made, 1e-4);
        wire.Add(made);
    }
    if (!wire.IsDone())
        throw std::runtime_error("its boundary does not close");
    BRepBuilderAPI_MakeFace made(surface, wire.Wire(), true);
    if (!made.IsDone())
        throw std::runtime_error("its surface can't be cut by its boundary");
    ShapeFix_Face fix(made.Face());
    fix.FixOrientation(); // the part inside the boundary, whichever way that runs
    TopoDS_Face result = fix.Face();
    BRepLib::SameParameter(result, 1e-4);
    if (face.mirror)
        result.Reverse(); // outward on port too
    return result;
}

/// A line as one smooth curve, corners kept; straight between two points.
TopoDS_Edge edgeOf(const std::vector<Eigen::Vector3d>& line) {
    if (line.size() == 2)
        return BRepBuilderAPI_MakeEdge(at(line[0]), at(line[1])).Edge();
    const SmoothPoles smooth(line);
    TColgp_Array1OfPnt poles(1, static_cast<int>(smooth.poles.size()));
    for (int i = 1; i <= poles.Length(); ++i)
        poles(i) = at(smooth.poles[static_cast<std::size_t>(i - 1)]);
    const Handle(Geom_Curve) curve = new Geom_BSplineCurve(poles, smooth.knots.knots, smooth.knots.times, 3);
    return BRepBuilderAPI_MakeEdge(curve).Edge();
}

TopoDS_Shape shapeOf(const Board& board) {
    BRepBuilderAPI_MakeWire wire;
    for (const std::vector<Eigen::Vector3d>& line : board.boundary)
        wire.Add(edgeOf(line));
    if (!wire.IsDone())
        throw std::runtime_error("its boundary does not close");
    const BRepBuilderAPI_MakeFace face(wire.Wire(), true);
    if (!face.IsDone())
        throw std::runtime_error("its boundary is not flat");
    const gp_Vec through(board.through.x(), board.through.y(), board.through.z());
    TopoDS_Solid solid = TopoDS::Solid(BRepPrimAPI_MakePrism(face.Face(), through).Shape());
    if (!BRepLib::OrientClosedSolid(solid))
        throw std::runtime_error("its faces do not close");
    return solid;
}

/// Straight rulings between two curves of the same knots.
TopoDS_Face ruledFace(const std::vector<Eigen::Vector3d>& one,
                      const std::vector<Eigen::Vector3d>& other,
                      const Knots& along,
                      int degree) {
    TColgp_Array2OfPnt net(1, static_cast<int>(one.size()), 1, 2);
    for (int i = 1; i <= net.ColLength(); ++i) {
        net(i, 1) = at(one[static_cast<std::size_t>(i - 1)]);
        net(i, 2) = at(other[static_cast<std::size_t>(i - 1)]);
    }
    const Knots across;
    return BRepBuilderAPI_MakeFace(
               new Geom_BSplineSurface(net, along.knots, across.knots, along.times, across.times, degree, 1),
               joins)
        .Face();
}

TopoDS_Shape shapeOf(const RuledBar& bar) {
    if (bar.breaks.size() < 2)
        throw std::runtime_error("it has no length");
    std::vector<double> breaks;
    std::vector<bool> sharp;
    for (const RuledBar::Break& b : bar.breaks) {
        breaks.push_back(b.t);
        sharp.push_back(b.sharp);
    }
    std::array<std::vector<Eigen::Vector3d>, RuledBar::edges> poles;
    for (std::size_t k = 0; k < RuledBar::edges; ++k) {
        std::vector<CubicLine::Place> places;
        for (const RuledBar::Break& b : bar.breaks)
            places.push_back(b.at[k]);
        poles[k] = cubicPoles(places, breaks, sharp);
    }
    const Knots along(breaks, sharp);
    BRepBuilderAPI_Sewing sewing(joins);
    for (std::size_t k = 0; k < RuledBar::edges; ++k)
        sewing.Add(ruledFace(poles[k], poles[(k + 1) % RuledBar::edges], along, 3));
    const Knots straight;
    for (const bool stern : {false, true}) {
        const auto corner = [&](std::size_t k) { return stern ? poles[k].back() : poles[k].front(); };
        sewing.Add(ruledFace({corner(0), corner(3)}, {corner(1), corner(2)}, straight, 1));
    }
    sewing.Perform();
    TopExp_Explorer shells(sewing.SewedShape(), TopAbs_SHELL);
    if (!shells.More() || sewing.NbFreeEdges() > 0)
        throw std::runtime_error("its faces do not close");
    TopoDS_Solid solid;
    const BRep_Builder builder;
    builder.MakeSolid(solid);
    builder.Add(solid, shells.Current());
    if (!BRepLib::OrientClosedSolid(solid))
        throw std::runtime_error("its faces do not close");
    return solid;
}

} // namespace

TopoDS_Shape makeShape(const NamedShape& shape) {
    try {
        return std::visit([](const auto& one) { return shapeOf(one); }, shape.shape);
    } catch (const Standard_Failure& failure) {
        const char* text = failure.GetMessageString();
        throw std::runtime_error(shape.name +
                                 " can't be built: " + (text != nullptr ? text : "no reason given"));
    } catch (const std::exception& failure) {
        throw std::runtime_error(shape.name + " can't be built: " + failure.what());
    }
}

} // namespace sheerlay::geometry

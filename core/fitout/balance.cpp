#include "core/fitout/balance.hpp"

#include "core/fitout/rings.hpp"
#include "core/project/wood.hpp"

#include <Eigen/Geometry>

#include <algorithm>

namespace sheerlay::core {

namespace {

constexpr double laminate = 1600.0; // kg/m3, cloth with resin; from memory
constexpr double plywood = 550.0;   // kg/m3; from memory
constexpr double perCubicMillimetre = 1e-9;
constexpr double cell = 10.0; // mm of parameter, of the sum over the shell

double densityOf(const std::string& wood) {
    const Wood* found = findWood(wood);
    return (found != nullptr ? found->density : plywood) * perCubicMillimetre;
}

/// Mass and its moment about the bow.
struct Moment {
    double mass = 0.0, moment = 0.0;
    void add(double kg, double x) {
        mass += kg;
        moment += kg * x;
    }
};

void addStick(Moment& sum, const std::vector<SheerPoint>& line, const StickSize& size, double density) {
    for (std::size_t i = 1; i < line.size(); ++i)
        sum.add(2 * density * size.width * size.height * (line[i].s - line[i - 1].s),
                0.5 * (line[i].point.x() + line[i - 1].point.x()));
}

void addPiece(Moment& sum, const CrossPiece& piece, double density) {
    const double length = 0.25 * (piece.frontTop + piece.backTop + piece.frontBottom + piece.backBottom);
    sum.add(density * length * piece.width * piece.height, piece.at(piece.width / 2, -piece.height / 2).x());
}

} // namespace

Balance balanceOf(const Project& project, const LoftedHull& hull, const BalanceParts& parts) {
    const FitoutChoices choices = project.fitout.value_or(FitoutChoices{});
    Moment sum;
    const double shell = project.strips.thickness * densityOf(project.strips.wood) +
                         (choices.glassInside + choices.glassOutside) * laminate * perCubicMillimetre;
    double fromU = 1e300, toU = -1e300, toV = 0.0;
    for (const Eigen::Vector2d& p : hull.laid.outline.region.boundary()) {
        fromU = std::min(fromU, p.x());
        toU = std::max(toU, p.x());
        toV = std::max(toV, p.y());
    }
    for (double u = fromU + cell / 2; u < toU; u += cell)
        for (double v = cell / 2; v < toV; v += cell) {
            if (!hull.laid.outline.region.contains(u, v))
                continue;
            const geometry::SurfaceJet jet = hull.laid.surface.jet(u, v);
            sum.add(2 * shell * jet.cross().norm() * cell * cell, jet.p.x());
        }
    const double wood = densityOf(choices.wood);
    if (parts.gunwales != nullptr) {
        addStick(sum, parts.gunwales->innerLine, parts.gunwales->inner.size, wood);
        addStick(sum, parts.gunwales->outerLine, parts.gunwales->outer.size, wood);
    }
    for (const Bulkhead& b : parts.bulkheads)
        sum.add(plywood * perCubicMillimetre * b.choice.thickness * ringArea(b.outline), b.x);
    for (const Deck& d : parts.decks) {
        // the places run from the inner edge to the tip
        for (std::size_t i = 1; i < d.places.size(); ++i) {
            const DeckPlace &a = d.places[i - 1], &b = d.places[i];
            sum.add(plywood * perCubicMillimetre * d.choice.thickness * (a.girth + b.girth) *
                        (b.along - a.along),
                    0.5 * (a.x + b.x));
        }
    }
    for (const Seat& s : parts.seats) {
        addPiece(sum, s.front.piece, wood);
        addPiece(sum, s.back.piece, wood);
        sum.add(2 * wood * s.sideRail * s.choice.rail.width * s.choice.rail.height, s.x);
    }
    for (const Thwart& t : parts.thwarts)
        addPiece(sum, t.bar.piece, wood);
    return {sum.mass > 0.0 ? sum.moment / sum.mass : 0.0, sum.mass};
}

} // namespace sheerlay::core

#include "core/solids/mould_boards.hpp"

#include "core/solids/strip_bar.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace sheerlay::core {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

constexpr double outlineTolerance = 0.02; // mm

using Line = std::vector<Vector2d>;

bool onCentreline(const Vector2d& p) {
    return p.x() <= 1e-9;
}

/// The edge that planking lies on, smooth, and the straight sides that a closed outline adds to it.
std::vector<Line> sidesOf(const std::vector<Vector2d>& outline, std::size_t edge) {
    std::vector<Line> sides{Line(outline.begin(), outline.begin() + static_cast<std::ptrdiff_t>(edge))};
    for (std::size_t i = edge - 1; i < outline.size(); ++i)
        sides.push_back({outline[i], outline[(i + 1) % outline.size()]});
    return sides;
}

/// A half with its mirror image, without what runs along the centreline, which is one side from end to end.
std::vector<Line> bothHalves(std::vector<Line> half) {
    const auto middle = std::ranges::find_if(
        half, [](const Line& side) { return onCentreline(side.front()) && onCentreline(side.back()); });
    std::rotate(half.begin(), middle, half.end());
    half.erase(half.begin());
    std::vector<Line> both = half;
    for (auto side = half.rbegin(); side != half.rend(); ++side) {
        Line image(side->rbegin(), side->rend());
        for (Vector2d& p : image)
            p.x() = -p.x();
        both.push_back(std::move(image));
    }
    return both;
}

/// Flat sides put in their place.
template <class Place>
std::vector<std::vector<Vector3d>> placed(const std::vector<Line>& sides, const Place& place) {
    std::vector<std::vector<Vector3d>> boundary;
    for (const Line& side : sides) {
        std::vector<Vector3d> line;
        for (const Vector2d& p : side)
            line.push_back(place(p));
        boundary.push_back(thinned(line, outlineTolerance));
    }
    return boundary;
}

void addMould(const Mould& mould, std::vector<NamedBoard>& boards) {
    const std::string name = "Mould " + mould.name;
    const Vector3d through(mould.farFace() - mould.x, 0.0, 0.0);
    const std::vector<Line> half = sidesOf(mould.outline, mould.edge.size());
    const auto onStation = [&](double side) {
        return [&mould, side](const Vector2d& p) { return Vector3d(mould.x, side * p.x(), p.y()); };
    };
    if (mould.stemCut == 0.0) {
        boards.push_back({name, {placed(bothHalves(half), onStation(1.0)), through}});
        return;
    }
    boards.push_back({name + " starboard", {placed(half, onStation(1.0)), through}});
    boards.push_back({name + " port", {placed(half, onStation(-1.0)), through}});
}

NamedBoard boardOf(const StemForm& form) {
    const auto onFace = [&](const Vector2d& p) { return Vector3d(p.x(), -form.thickness / 2, p.y()); };
    return {form.end == End::Bow ? "Stem form bow" : "Stem form stern",
            {placed(sidesOf(form.outline, form.edge.size()), onFace), {0.0, form.thickness, 0.0}}};
}

NamedBoard boardOf(const TransomForm& form) {
    Line edge = form.inside;
    if (!form.fullerInside()) {
        edge.clear();
        for (const EdgePoint& e : form.edge)
            edge.push_back(e.at);
    }
    const std::size_t count = edge.size();
    Line half = edge; // across at keel and sheer
    if (!onCentreline(edge.back()))
        half.emplace_back(0.0, edge.back().y());
    half.emplace_back(0.0, edge.front().y());
    const double steep = std::hypot(1.0, form.slope);
    const Vector3d along = Vector3d(form.slope, 0.0, 1.0) / steep;
    const Vector3d into = (form.end == End::Bow ? 1.0 : -1.0) * Vector3d(1.0, 0.0, -form.slope) / steep;
    const Vector3d origin(form.xAtSheer + form.slope * (form.level - form.sheerHeight), 0.0, form.level);
    const auto onFace = [&](const Vector2d& p) -> Vector3d {
        return origin + p.x() * Vector3d::UnitY() + p.y() * along;
    };
    return {form.end == End::Bow ? "Transom bow" : "Transom stern",
            {placed(bothHalves(sidesOf(half, count)), onFace), form.thickness * into}};
}

} // namespace

std::vector<NamedBoard> mouldBoards(const MouldSet& set) {
    std::vector<NamedBoard> boards;
    for (const Mould& mould : set.moulds)
        addMould(mould, boards);
    for (const StemForm& form : set.stemForms)
        boards.push_back(boardOf(form));
    for (const TransomForm& form : set.transoms)
        boards.push_back(boardOf(form));
    return boards;
}

} // namespace sheerlay::core

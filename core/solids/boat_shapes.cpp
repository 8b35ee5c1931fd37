#include "core/solids/boat_shapes.hpp"

#include "core/solids/mould_boards.hpp"
#include "core/solids/strip_bar.hpp"

#include <algorithm>
#include <utility>

namespace sheerlay::core {
namespace {

constexpr double meshTolerance = 0.1; // mm
constexpr geometry::Colour plywood{0.80, 0.73, 0.59};
constexpr geometry::Colour skin{0.62, 0.68, 0.72};

StripFaces facesOf(const Project& project, const LoftedHull& hull) {
    return {-hull.laidHeight, project.strips.thickness - hull.laidHeight};
}

} // namespace

geometry::TrimmedFace hullFace(const TrimmedSurface& hull, bool mirror) {
    using Line = std::vector<Eigen::Vector2d>;
    const geometry::HullOutline& outline = hull.outline;
    const Line& polygon = outline.region.boundary(); // sheer, stern, profile back, bow back
    geometry::TrimmedFace face{hull.surface, {}, mirror};
    face.boundary.push_back({outline.sheer.front(), outline.sheer.back()});
    const auto profileStarts = std::find(polygon.begin() + static_cast<std::ptrdiff_t>(outline.sheer.size()),
                                         polygon.end(),
                                         outline.profile.back());
    const Line stern(polygon.begin() + static_cast<std::ptrdiff_t>(outline.sheer.size()), profileStarts);
    const Line profile(outline.profile.rbegin(), outline.profile.rend());
    const Line bow(profileStarts + static_cast<std::ptrdiff_t>(profile.size()), polygon.end());
    for (const Line* next : {&stern, &profile, &bow}) {
        if (next->empty())
            continue;
        Line line = *next;
        line.insert(line.begin(), face.boundary.back().back());
        const auto same = [](const auto& a, const auto& b) { return (a - b).norm() < 1e-6; };
        line.erase(std::unique(line.begin(), line.end(), same), line.end());
        if (line.size() > 1)
            face.boundary.push_back(std::move(line));
    }
    face.boundary.back().back() = face.boundary.front().front(); // closed, whatever rounding says
    return face;
}

std::vector<geometry::NamedShape> hullShapes(const LoftedHull& hull) {
    return {{"Hull starboard", skin, hullFace(hull.drawn, false)},
            {"Hull port", skin, hullFace(hull.drawn, true)}};
}

std::vector<geometry::NamedShape> mouldShapes(const MouldSet& set) {
    std::vector<geometry::NamedShape> shapes;
    for (NamedBoard& board : mouldBoards(set))
        shapes.push_back({std::move(board.name), plywood, std::move(board.board)});
    return shapes;
}

std::vector<geometry::NamedMesh> mouldMeshes(const MouldSet& set) {
    std::vector<geometry::NamedMesh> meshes;
    for (NamedBoard& board : mouldBoards(set))
        meshes.push_back({std::move(board.name), plywood, geometry::boardMesh(board.board)});
    return meshes;
}

std::vector<geometry::NamedShape>
stripShapes(const Project& project, const LoftedHull& hull, const Plan& plan) {
    std::vector<geometry::NamedShape> shapes;
    for (const Strip& strip : plan.strips)
        shapes.push_back({strip.id, stripColour(strip), stripBar(strip, facesOf(project, hull))});
    return shapes;
}

std::vector<geometry::NamedMesh>
stripMeshes(const Project& project, const LoftedHull& hull, const Plan& plan) {
    std::vector<geometry::NamedMesh> meshes;
    for (const Strip& strip : plan.strips)
        meshes.push_back(
            {strip.id, stripColour(strip), stripMesh(strip, facesOf(project, hull), meshTolerance)});
    return meshes;
}

geometry::Colour stripColour(const Strip& strip) {
    switch (strip.kind) {
    case StripKind::Stealer:
        return {0.45, 0.55, 0.35};
    case StripKind::Filler:
        return {0.85, 0.75, 0.45};
    case StripKind::Shutter:
        return {0.45, 0.25, 0.30};
    case StripKind::Full:
    case StripKind::Tapered:
        break;
    }
    const bool dark = strip.row % 2 == 0;
    if (strip.side == Side::Port)
        return dark ? geometry::Colour{0.55, 0.36, 0.24} : geometry::Colour{0.66, 0.45, 0.31};
    return dark ? geometry::Colour{0.66, 0.38, 0.22} : geometry::Colour{0.78, 0.50, 0.30};
}

} // namespace sheerlay::core

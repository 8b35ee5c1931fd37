#include "core/solids/boat_shapes.hpp"

#include "core/hull/station_names.hpp"
#include "core/solids/strip_bar.hpp"

#include <algorithm>
#include <utility>

namespace sheerlay::core {
namespace {

constexpr double meshTolerance = 0.1; // mm
constexpr double leastBreadth = 2.0;  // mm, half; a thinner section is no mould
constexpr double onCentre = 0.45;     // mm; trimSurface may lead the keel line round at up to 0.4
constexpr geometry::Colour plywood{0.80, 0.73, 0.59};
constexpr geometry::Colour skin{0.62, 0.68, 0.72};

StripFaces facesOf(const Project& project, const LoftedHull& hull) {
    return {-hull.laidHeight, project.strips.thickness - hull.laidHeight};
}

struct MouldSection {
    std::string name;
    std::vector<Eigen::Vector3d> points; ///< sheer to keel, starboard
};

std::vector<MouldSection> mouldSections(const Project& project, const LoftedHull& hull) {
    std::vector<MouldSection> sections;
    const std::vector<std::string> names = stationNames(project, hull);
    for (std::size_t i = 0; i < names.size(); ++i) {
        MouldSection section{"Station " + names[i], sectionAt(hull.moulds, hull.stationX[i], 60)};
        const bool broad =
            std::ranges::any_of(section.points, [](const auto& p) { return p.y() >= leastBreadth; });
        if (section.points.size() < 3 || !broad)
            continue;
        for (Eigen::Vector3d& p : section.points) {
            p.x() = hull.stationX[i];
            if (p.y() < onCentre)
                p.y() = 0.0;
        }
        sections.push_back(std::move(section));
    }
    return sections;
}

Eigen::Vector3d imageOf(const Eigen::Vector3d& p) {
    return {p.x(), -p.y(), p.z()};
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

std::vector<geometry::NamedShape> mouldShapes(const Project& project, const LoftedHull& hull) {
    std::vector<geometry::NamedShape> shapes;
    for (MouldSection& section : mouldSections(project, hull)) {
        geometry::FlatSheet sheet{section.points};
        for (auto p = section.points.rbegin(); p != section.points.rend(); ++p)
            if (p->y() > 0.0)
                sheet.outline.push_back(imageOf(*p));
        shapes.push_back({std::move(section.name), plywood, std::move(sheet)});
    }
    return shapes;
}

std::vector<geometry::NamedMesh> mouldMeshes(const Project& project, const LoftedHull& hull) {
    std::vector<geometry::NamedMesh> meshes;
    for (MouldSection& section : mouldSections(project, hull)) {
        geometry::Mesh mesh;
        for (const Eigen::Vector3d& p : section.points) {
            mesh.points.push_back(p);
            mesh.points.push_back(imageOf(p));
        }
        for (int i = 0; i + 3 < static_cast<int>(mesh.points.size()); i += 2) {
            mesh.triangles.push_back({i, i + 1, i + 2});
            if (mesh.points[static_cast<std::size_t>(i) + 2].y() > 0.0)
                mesh.triangles.push_back({i + 1, i + 3, i + 2});
        }
        if (section.points.back().y() <= 0.0)
            mesh.points.pop_back();
        meshes.push_back({std::move(section.name), plywood, std::move(mesh)});
    }
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

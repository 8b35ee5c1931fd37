#include "core/fitout/bulkheads.hpp"

#include "core/hull/trimmed_surface.hpp"
#include "core/moulds/mould_outline.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sheerlay::core {

namespace {

using Eigen::Vector2d;

constexpr int edgePoints = 300;
constexpr int crownPoints = 24;
constexpr double steepBevel =
    35.0 * std::numbers::pi / 180; // rad; beyond, a wedge of wood or a fillet; judged

/// The part of an edge below a height, top to centreline.
std::vector<EdgePoint> below(const std::vector<EdgePoint>& edge, double z) {
    std::vector<EdgePoint> part;
    for (std::size_t i = 0; i < edge.size(); ++i) {
        if (edge[i].at.y() > z)
            continue;
        if (part.empty() && i > 0) {
            const EdgePoint &a = edge[i - 1], &b = edge[i];
            const double t = (a.at.y() - z) / (a.at.y() - b.at.y());
            part.push_back({a.at + t * (b.at - a.at),
                            (a.outward + t * (b.outward - a.outward)).normalized(),
                            a.bevel + t * (b.bevel - a.bevel)});
        }
        part.push_back(edge[i]);
    }
    return part;
}

/// Half the area inside a section under its top, mm2.
double halfArea(const std::vector<SectionPoint>& section, double lower, double crown, double crownBreadth) {
    double area = 0.0;
    const double top = section.front().point.z() - lower;
    double breadth = 0.0; // at the top
    for (std::size_t i = 1; i < section.size(); ++i) {
        Eigen::Vector3d a = section[i - 1].point;
        const Eigen::Vector3d& b = section[i].point;
        if (b.z() >= top && a.z() > top)
            continue;
        if (a.z() > top)
            a += (a.z() - top) / (a.z() - b.z()) * (b - a);
        if (breadth == 0.0)
            breadth = a.y();
        area += 0.5 * (a.y() + b.y()) * (a.z() - b.z());
    }
    const double rise = crownBreadth > 0.0 ? crown * breadth * breadth / (crownBreadth * crownBreadth) : 0.0;
    return area + 2.0 / 3.0 * rise * breadth;
}

/// The section at x, its foot taken from the profile where the walk down it ran off: close to a round stem,
/// where the plane touches the surface.
std::vector<SectionPoint> sectionNearEnd(const TrimmedSurface& face, double x) {
    auto section = sectionWithNormals(face, x, 200);
    if (section.size() < 2)
        return section;
    const double stride = (section[1].point - section[0].point).norm();
    for (std::size_t i = 1; i < section.size(); ++i) {
        const Eigen::Vector3d& p = section[i].point;
        if (p.y() >= face.trims.siding.at(x) - 0.01 && (p - section[i - 1].point).norm() < 3 * stride)
            continue;
        section.resize(i);
        if (const auto foot = bottomAt(face, x))
            section.push_back({{x, face.trims.siding.at(x), *foot}, -Eigen::Vector3d::UnitZ()});
        break;
    }
    return section;
}

double reach(const TrimmedSurface& face, End end) {
    double x = face.sheer.front().x();
    for (const auto* line : {&face.sheer, &face.profile})
        for (const Eigen::Vector3d& p : *line)
            x = end == End::Bow ? std::min(x, p.x()) : std::max(x, p.x());
    return x;
}

void closeOutline(Bulkhead& b) {
    std::vector<Vector2d> side; // from the centreline on top over to starboard and down
    const Vector2d corner = b.edge.front().at;
    if (b.crown > 0.0)
        for (int i = 0; i < crownPoints; ++i) {
            const double t = static_cast<double>(i) / crownPoints;
            side.emplace_back(t * corner.x(), corner.y() + b.crown * (1 - t * t));
        }
    for (const EdgePoint& e : b.edge)
        side.push_back(e.at);
    b.outline = side;
    for (std::size_t i = side.size(); i-- > 0;)
        if (side[i].x() > 1e-6)
            b.outline.emplace_back(-side[i].x(), side[i].y());
}

} // namespace

double volumeToEnd(
    const TrimmedSurface& inside, End end, double from, double below, double crown, double crownBreadth) {
    const double tip = reach(inside, end);
    // Simpson over t with x = tip + (from - tip) t^2: sections near a stem grow like a root
    constexpr int parts = 40;
    double sum = 0.0;
    for (int i = 1; i <= parts; ++i) {
        const double t = static_cast<double>(i) / parts;
        const double x = tip + (from - tip) * t * t;
        const auto section = sectionNearEnd(inside, x);
        if (section.size() < 2)
            continue;
        const double weight = i == parts ? 1.0 : i % 2 == 1 ? 4.0 : 2.0;
        sum += weight * halfArea(section, below, crown, crownBreadth) * 2 * t;
    }
    return 2 * std::abs(from - tip) * sum / (3 * parts);
}

BulkheadPlan
planBulkhead(const BulkheadChoice& choice, const HullFaces& faces, const std::vector<DeckChoice>& decks) {
    BulkheadPlan plan;
    Bulkhead b;
    b.choice = choice;
    const bool bow = choice.end == End::Bow;
    b.x = bow ? faces.forward + choice.fromEnd : faces.aft - choice.fromEnd;
    const auto outside = [&] {
        plan.findings.push_back(
            {Level::Stop,
             "bulkhead-outside",
             std::nullopt,
             b.x,
             say("The {} bulkhead does not stand inside the hull; another from-end would do.",
                 bow ? say("bow") : say("stern"))});
        return plan;
    };
    const auto section = sectionWithNormals(faces.inside, b.x, edgePoints);
    if (section.size() < 3)
        return outside();
    double lower = choice.belowSheer;
    b.crown = choice.crown;
    for (const DeckChoice& deck : decks)
        if (deck.end == choice.end && deck.length >= choice.fromEnd && lower == 0.0 && b.crown == 0.0) {
            lower = deck.thickness;
            if (const auto edge =
                    sheerAt(faces.inside, bow ? faces.forward + deck.length : faces.aft - deck.length);
                edge && deck.crown > 0.0)
                b.crown = deck.crown * std::pow(section.front().point.y() / edge->point.y(), 2);
        }
    for (const SectionPoint& p : section) {
        b.edge.push_back(edgePointOf(p, bow ? -1.0 : 1.0));
        b.edge.back().at -= choice.gap * b.edge.back().outward;
        b.edge.back().at.x() = std::max(0.0, b.edge.back().at.x());
    }
    b.edge = below(b.edge, section.front().point.z() - lower);
    if (b.edge.size() < 3)
        return outside();
    closeOutline(b);
    b.height = b.edge.front().at.y() + b.crown - b.edge.back().at.y();
    b.bevelLeast = b.bevelMost = b.edge.front().bevel;
    for (std::size_t i = 0; i < b.edge.size(); ++i) {
        b.width = std::max(b.width, 2 * b.edge[i].at.x());
        b.bevelLeast = std::min(b.bevelLeast, b.edge[i].bevel);
        b.bevelMost = std::max(b.bevelMost, b.edge[i].bevel);
        if (i > 0)
            b.edgeLength += 2 * (b.edge[i].at - b.edge[i - 1].at).norm();
    }
    b.voidVolume = volumeToEnd(faces.inside,
                               choice.end,
                               b.x + (bow ? -1.0 : 1.0) * choice.thickness,
                               lower,
                               b.crown,
                               section.front().point.y());
    if (b.bevelMost > steepBevel)
        plan.findings.push_back(
            {Level::Note,
             "bulkhead-bevel",
             std::nullopt,
             b.x,
             say("Along the bottom the edge of the {} bulkhead leans over more than a saw tilts easily; saw "
                 "it square to the outline and fill behind it with a fillet, or plane it by hand.",
                 bow ? say("bow") : say("stern"))});
    plan.bulkhead = std::move(b);
    return plan;
}

} // namespace sheerlay::core

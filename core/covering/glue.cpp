#include "core/covering/glue.hpp"

#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

namespace sheerlay::core {

namespace {

using Eigen::Vector3d;

constexpr double squareMm = 1e6;      // in a square metre
constexpr double litre = 1e6;         // mm3
constexpr double woodGlueKept = 0.5;  // the rest dries off or is scraped away; judged
constexpr double filletDensity = 1.0; // kg/L; 0.9 to 1.1, from memory

/// Gathers joints of one kind.
class Joint {
public:
    Joint(std::string what, bool epoxy, const CoveringChoices& choices) : m_choices(choices) {
        m_use.what = std::move(what);
        m_use.epoxy = epoxy;
    }
    /// @param thick  mm of glue between the faces, beyond what is spread on them
    void face(double area, const Vector3d& at, double thick = 0.0) {
        const double spread = area / squareMm * m_choices.glueSpread / 1000; // kg
        const double gap = area * thick / litre;                             // L
        const double kept = m_use.epoxy ? 1.0 : woodGlueKept;
        m_use.area += area;
        add(spread / m_choices.liquidDensity + gap, kept * spread + gap * filletDensity, at);
    }
    void fill(double volume, const Vector3d& at) { add(volume / litre, volume / litre * filletDensity, at); }
    void addTo(std::vector<GlueUse>& all) {
        if (!(m_use.mass > 0.0))
            return;
        m_use.centre /= m_use.mass;
        all.push_back(std::move(m_use));
    }

private:
    void add(double litres, double mass, const Vector3d& at) {
        m_use.litres += litres * (1 + m_choices.waste);
        m_use.mass += mass;
        m_use.centre += mass * at;
    }

    const CoveringChoices& m_choices;
    GlueUse m_use;
};

void glueStrips(Joint& joint, const Plan& plan, double edge) {
    for (const Strip& strip : plan.strips) {
        if (strip.side == Side::Centre) // its edges are its neighbours' lower ones
            continue;
        for (std::size_t i = 1; i < strip.lowerEdge.size(); ++i) {
            const Vector3d &a = strip.lowerEdge[i - 1], &b = strip.lowerEdge[i];
            joint.face((b - a).norm() * edge, 0.5 * (a + b));
        }
    }
}

/// Both sides of one gunwale against the planking. @param open  part of it that stands free of it
void glueGunwale(Joint& joint, const Gunwale& gunwale, const std::vector<SheerPoint>& line, double open) {
    Vector3d middle = Vector3d::Zero();
    for (std::size_t i = 1; i < line.size(); ++i) {
        const double area = 2 * (line[i].s - line[i - 1].s) * gunwale.size.height * (1 - open);
        const Vector3d at = 0.5 * (line[i].point + line[i - 1].point);
        joint.face(area, {at.x(), 0.0, at.z()});
        middle = at;
    }
    const auto scarfs = static_cast<double>(2 * gunwale.scarfs.size());
    if (scarfs > 0.0)
        joint.face(scarfs * gunwale.size.height * std::hypot(gunwale.scarf, gunwale.size.width),
                   {line.empty() ? middle.x() : 0.5 * (line.front().point.x() + line.back().point.x()),
                    0.0,
                    middle.z()});
}

void glueBulkhead(Joint& bed, Joint& fillet, const Bulkhead& b, double radius) {
    for (std::size_t i = 1; i < b.edge.size(); ++i) {
        const EdgePoint &p = b.edge[i - 1], &q = b.edge[i];
        const double run = 2 * (q.at - p.at).norm(); // both sides of the boat
        const double bevel = 0.5 * (p.bevel + q.bevel);
        const Vector3d at(b.x, 0.0, 0.5 * (p.at.y() + q.at.y()));
        bed.face(run * b.choice.thickness / std::cos(bevel), at, b.choice.gap);
        if (radius > 0.0)
            for (const double corner : {std::numbers::pi / 2 + bevel, std::numbers::pi / 2 - bevel})
                fillet.fill(run * filletSection(radius, corner), at);
    }
}

void glueDeck(Joint& bed, const Deck& d) {
    for (std::size_t i = 1; i < d.places.size(); ++i) {
        const DeckPlace &a = d.places[i - 1], &b = d.places[i];
        bed.face(2 * std::hypot(b.along - a.along, b.girth - a.girth) * d.choice.thickness,
                 {0.5 * (a.x + b.x), 0.0, 0.5 * (a.height + b.height)});
    }
}

} // namespace

double filletSection(double radius, double corner) {
    return radius * radius * (1 / std::tan(corner / 2) - (std::numbers::pi - corner) / 2);
}

double gluedEdge(const StripStock& strip) {
    const double deep = strip.width - strip.coverWidth, half = strip.thickness / 2;
    if (!(deep > 0.0) || deep > half + 1e-9)
        return strip.thickness;
    const double radius = (half * half + deep * deep) / (2 * deep);
    return 2 * radius * std::asin(std::min(1.0, half / radius));
}

std::vector<GlueUse> planGlue(const Project& project, const Plan& plan, const std::optional<Fitout>& fitout) {
    const CoveringChoices choices = project.covering.value_or(CoveringChoices{});
    std::vector<GlueUse> all;
    Joint strips(say("strips, edge to edge"), false, choices);
    glueStrips(strips, plan, gluedEdge(project.strips));
    strips.addTo(all);
    if (!fitout)
        return all;
    Joint gunwales(say("gunwales and scarfs"), true, choices);
    if (const auto& g = fitout->gunwales) {
        const double open =
            g->scuppers ? g->scuppers->count * g->scuppers->opening / g->inner.sheerLength : 0.0;
        glueGunwale(gunwales, g->inner, g->innerLine, open);
        glueGunwale(gunwales, g->outer, g->outerLine, 0.0);
    }
    gunwales.addTo(all);
    Joint bed(say("bulkheads and decks"), true, choices), fillet(say("fillets"), true, choices);
    for (const Bulkhead& b : fitout->bulkheads)
        glueBulkhead(bed, fillet, b, choices.fillet);
    for (const Deck& d : fitout->decks)
        glueDeck(bed, d);
    bed.addTo(all);
    fillet.addTo(all);
    return all;
}

} // namespace sheerlay::core

#include "core/fitout/decks.hpp"

#include "core/fitout/rings.hpp"
#include "core/units/both_units.hpp"
#include "core/words/say.hpp"

#include <Eigen/Geometry>

#include <algorithm>
#include <cmath>

namespace sheerlay::core {

namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

constexpr double worthAWord = 1.0; // mm of misfit along an edge; judged

/// Where the deck's upper edge runs, and the face it lands on there.
struct EdgeSample {
    Vector3d at = Vector3d::Zero(), out = Vector3d::Zero();
};

EdgeSample between(const EdgeSample& a, const EdgeSample& b, double t) {
    return {a.at + t * (b.at - a.at), (a.out + t * (b.out - a.out)).normalized()};
}

/// From the inner edge toward the tip, cut at the inner edge's plane and at the centreplane.
std::vector<EdgeSample> edgeOf(std::vector<EdgeSample> line, double innerX, End end) {
    if (end == End::Bow)
        std::reverse(line.begin(), line.end());
    const double sign = end == End::Bow ? -1.0 : 1.0;
    std::vector<EdgeSample> edge;
    for (std::size_t i = 1; i < line.size(); ++i) {
        const EdgeSample &a = line[i - 1], &b = line[i];
        const double before = sign * (a.at.x() - innerX), after = sign * (b.at.x() - innerX);
        if (after <= 0.0)
            continue;
        if (edge.empty())
            edge.push_back(before < 0.0 ? between(a, b, before / (before - after)) : a);
        if (b.at.y() <= 0.0) {
            if (a.at.y() > 0.0)
                edge.push_back(between(a, b, a.at.y() / (a.at.y() - b.at.y())));
            break;
        }
        edge.push_back(b);
    }
    return edge;
}

std::vector<Vector2d> mirrored(const std::vector<Vector2d>& side) {
    std::vector<Vector2d> whole = side;
    for (std::size_t i = side.size(); i-- > 0;)
        if (side[i].y() > 1e-6)
            whole.emplace_back(side[i].x(), -side[i].y());
    return whole;
}

} // namespace

DeckPlan
planDeck(const DeckChoice& choice, const HullFaces& faces, const std::optional<GunwaleChoices>& gunwale) {
    DeckPlan plan;
    Deck deck;
    deck.choice = choice;
    const bool bow = choice.end == End::Bow;
    deck.innerX = bow ? faces.forward + choice.length : faces.aft - choice.length;
    const bool inside = choice.between == DeckChoice::Between::Gunwales && gunwale;
    const double in = inside ? gunwale->inner.width : 0.0;
    const auto stand = inside ? gunwale->stand : GunwaleChoices::Stand::Side;
    std::vector<EdgeSample> line;
    for (const SheerPoint& p : sheerLine(faces.inside, stand, 2000))
        line.push_back({p.point - in * p.out, p.out});
    const std::vector<EdgeSample> edge = edgeOf(std::move(line), deck.innerX, choice.end);
    if (edge.size() < 3 || edge.front().at.y() < 10.0) {
        plan.findings.push_back({Level::Stop,
                                 "deck-outside",
                                 std::nullopt,
                                 deck.innerX,
                                 say("The {} deck has no room between the gunwales; a longer one would do.",
                                     bow ? say("bow") : say("stern"))});
        return plan;
    }
    const double breadth = edge.front().at.y();
    if (choice.crown > 0.0)
        deck.radius = (breadth * breadth + choice.crown * choice.crown) / (2 * choice.crown);

    std::vector<Vector2d> planSide, flatSide;
    double edgeLength = 0.0, flatLength = 0.0;
    Vector3d crest = Vector3d::Zero();
    for (std::size_t i = 0; i < edge.size(); ++i) {
        const EdgeSample& e = edge[i];
        DeckPlace p;
        p.x = e.at.x();
        p.halfBreadth = std::max(0.0, e.at.y());
        p.height = e.at.z();
        const double lean = deck.radius > 0.0 ? std::asin(std::min(1.0, p.halfBreadth / deck.radius)) : 0.0;
        p.rise = deck.radius > 0.0 ? deck.radius * (1 - std::cos(lean)) : 0.0;
        p.girth = deck.radius > 0.0 ? deck.radius * lean : p.halfBreadth;
        const Vector3d middle(p.x, 0.0, p.height + p.rise);
        p.along = i == 0 ? 0.0 : deck.places.back().along + (middle - crest).norm();
        crest = middle;
        // square to the plate's top, and to the face its edge lands on, both square to the edge's run
        const Vector3d run =
            (edge[std::min(i + 1, edge.size() - 1)].at - edge[i == 0 ? 0 : i - 1].at).normalized();
        const Vector3d across(0.0, std::cos(lean), -std::sin(lean));
        Vector3d top = run.cross(across).normalized();
        if (top.z() < 0.0)
            top = -top;
        const Vector3d face = (e.out - e.out.dot(run) * run).normalized();
        p.bevel = -std::asin(std::clamp(top.dot(face), -1.0, 1.0));
        deck.places.push_back(p);
        planSide.emplace_back(std::abs(p.x - deck.innerX), p.halfBreadth);
        flatSide.emplace_back(p.along, p.girth);
        if (i > 0) {
            edgeLength += (e.at - edge[i - 1].at).norm();
            flatLength += (flatSide[i] - flatSide[i - 1]).norm();
        }
    }
    deck.plan = mirrored(planSide);
    deck.flat = mirrored(flatSide);
    deck.misfit = edgeLength - flatLength;
    deck.area = ringArea(deck.flat);
    if (std::abs(deck.misfit) > worthAWord)
        plan.findings.push_back({Level::Note,
                                 "deck-not-flat",
                                 std::nullopt,
                                 deck.innerX,
                                 say("Sprung to its crown, the {} deck's plate misses the sheer's length by "
                                     "{} a side; cut it that much over and fit it, or lay it in strips.",
                                     bow ? say("bow") : say("stern"),
                                     bothUnitsFine(std::abs(deck.misfit)))});
    plan.deck = std::move(deck);
    return plan;
}

} // namespace sheerlay::core

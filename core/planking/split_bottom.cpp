#include "core/planking/split_bottom.hpp"

#include "core/planking/row_layer.hpp"
#include "core/planking/start_line.hpp"
#include "core/planking/trim_crossing.hpp"
#include "geometry/graph_edge.hpp"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <iterator>

namespace sheerlay::core {
namespace {

using Eigen::Vector2d;
using geometry::FanSide;
using geometry::RowNode;

constexpr double onTheLine = 0.005; // mm, so that the centreline, and arcs between its nodes, count as inside
constexpr int mostTries = 12;       // rows after the first that lands on the keel

/// The hull below an edge: the edge takes the sheer's place.
std::optional<TrimmedSurface> below(const TrimmedSurface& hull, const std::vector<RowNode>& edge) {
    std::vector<geometry::UpperEdge::Node> nodes;
    for (const RowNode& n : edge) {
        if (!n.alive)
            continue;
        const double run = n.jet.u.x() * n.aft.x() + n.jet.v.x() * n.aft.y(); // dx/ds
        if (run < 0.05 || (!nodes.empty() && n.jet.p.x() <= nodes.back().x))
            return std::nullopt; // no graph over x
        nodes.push_back({n.jet.p.x(), n.state.uv.y(), n.aft.y() / run});
    }
    if (nodes.size() < 2)
        return std::nullopt;
    TrimmedSurface part = hull;
    part.trims.siding = hull.trims.siding.widened(-onTheLine);
    part.trims.upper = geometry::UpperEdge(std::move(nodes));
    // the edge's own line inside the hull, with the exact places where it lands on keel or transom
    const auto inside = [&](const RowNode& n) {
        return n.alive && hull.outline.region.contains(n.state.uv.x(), n.state.uv.y());
    };
    const auto first = std::find_if(edge.begin(), edge.end(), inside);
    const auto last = std::find_if(edge.rbegin(), edge.rend(), inside);
    if (first == edge.end() || std::distance(first, last.base()) < 2)
        return std::nullopt;
    part.outline.sheer.clear();
    for (auto n = first; n != last.base(); ++n)
        if (inside(*n))
            part.outline.sheer.push_back(n->state.uv);
    if (first != edge.begin() && std::prev(first)->alive) {
        const auto out = geometry::arcBetween(*std::prev(first), *first).reversed();
        const Crossing x = firstCrossing(hull, out);
        part.outline.sheer.insert(part.outline.sheer.begin(), out.at(x.f));
    }
    if (last != edge.rbegin() && std::prev(last)->alive) {
        const auto out = geometry::arcBetween(*last, *std::prev(last));
        part.outline.sheer.push_back(out.at(firstCrossing(hull, out).f));
    }
    // the keel line from landing to landing, or on to the transom
    const auto isBelow = [&](const Vector2d& uv) {
        const Eigen::Vector3d p = hull.surface.point(uv.x(), uv.y());
        return part.trims.value(geometry::Trim::Sheer, uv.y(), p) > 0;
    };
    const auto& keel = hull.outline.profile;
    const auto firstBelow = std::find_if(keel.begin(), keel.end(), isBelow);
    const auto lastBelow = std::find_if(keel.rbegin(), keel.rend(), isBelow);
    if (firstBelow == keel.end())
        return std::nullopt;
    part.outline.profile.assign(firstBelow, lastBelow.base());
    return part;
}

/// The keel line, led on past a transom so that rows parallel to it reach the transom too.
std::vector<Vector2d> ledOn(const TrimmedSurface& hull) {
    std::vector<Vector2d> line = hull.outline.profile;
    const auto lead = [&](bool stern) {
        constexpr int steps = 12;
        for (int i = 0; i < steps; ++i) {
            const Vector2d uv =
                ontoTrim(hull,
                         geometry::Trim::Centre,
                         stern ? 2 * line.back() - line[line.size() - 2] : 2 * line.front() - line[1]);
            if (!uv.allFinite() || !rowBox(hull).contains(uv))
                return;
            line.insert(stern ? line.end() : line.begin(), uv);
        }
    };
    // the last step before the plane is a short one: drop its inner end, so that steps are of full length
    if (hull.trims.bow && line.size() > 3) {
        line.erase(line.begin() + 1);
        lead(false);
    }
    if (hull.trims.stern && line.size() > 3) {
        line.erase(line.end() - 2);
        lead(true);
    }
    return line;
}

/// The centreline as a start line: nodes at equal steps, its edge bend from its own tangents. It goes on a
/// little past the bottom's ends, so that rows reach into its corners.
geometry::EvenMaster alongKeel(const TrimmedSurface& hull, const TrimmedSurface& bottom) {
    constexpr double past = 250.0; // mm
    const double from =
        hull.surface.point(bottom.outline.profile.front().x(), bottom.outline.profile.front().y()).x();
    const double to =
        hull.surface.point(bottom.outline.profile.back().x(), bottom.outline.profile.back().y()).x();
    std::vector<RowNode> nodes;
    for (const Vector2d& uv : ledOn(hull)) {
        RowNode n;
        n.state = {uv, Vector2d::Zero()};
        n.jet = hull.surface.jet(uv.x(), uv.y());
        if (n.jet.p.x() < from - past || n.jet.p.x() > to + past)
            continue;
        if (!nodes.empty() && (n.jet.p - nodes.back().jet.p).norm() < 0.75 * columnSpacing)
            continue;
        const Vector2d g = hull.trims.gradient(geometry::Trim::Centre, n.jet);
        Vector2d along(-g.y(), g.x()); // square to the gradient
        if (along.x() < 0)
            along = -along;
        n.frame = geometry::frameAlong(n.jet, n.jet.u * along.x() + n.jet.v * along.y());
        n.aft = geometry::parameterComponents(n.jet, n.frame.tangent);
        nodes.push_back(n);
    }
    for (std::size_t i = 0; i < nodes.size(); ++i) {
        const RowNode& a = nodes[i > 0 ? i - 1 : 0];
        const RowNode& b = nodes[std::min(i + 1, nodes.size() - 1)];
        const double length = (b.jet.p - a.jet.p).norm();
        nodes[i].edgeBend =
            length > 0 ? (b.frame.tangent - a.frame.tangent).dot(nodes[i].frame.across) / length : 0.0;
    }
    geometry::EvenMaster master = geometry::masterAlong(nodes, columnSpacing);
    for (geometry::MasterNode& m : master.nodes) // from the curve between vertices back onto the line itself
        m.uv = ontoTrim(hull, geometry::Trim::Centre, m.uv, 1);
    return master;
}

/// Bottom strips come numbered from the centreline upward; in the boat they go on from row m.
void renumber(Plan& bottom, int m) {
    const int top = -bottom.firstRow; // rows of the bottom
    for (Strip& s : bottom.strips) {
        const int up = -s.row; // 1 next to the centreline
        const std::string piece = s.id.find('.') == std::string::npos ? "" : s.id.substr(s.id.find('.'));
        s.row = m + top - up;
        char number[16];
        std::snprintf(number, sizeof number, "%c%02d", s.id.front(), s.row);
        s.id = number + piece;
        s.kind = up == top ? StripKind::Shutter : s.kind == StripKind::Filler ? StripKind::Tapered : s.kind;
    }
    bottom.lastRow = m + top - 1;
    bottom.firstRow = m;
}

} // namespace

std::optional<SplitChoice> laySplit(const geometry::EvenMaster& master,
                                    const std::vector<RowWidth>& widths,
                                    const std::vector<Band>& bands,
                                    const LayingContext& context,
                                    Plan& plan,
                                    int first) {
    // the whole field once, to see where it lands on the keel
    Plan whole;
    RowLayer(context, whole).rows(master, FanSide::TowardKeel, widths, mostRows, first, bands);
    int landing = 0;
    for (const Strip& s : whole.strips)
        for (const StripEnd& e : s.ends)
            if (e.on == EndsOn::Keel && (landing == 0 || s.row < landing))
                landing = s.row;
    if (landing <= first)
        return std::nullopt;
    std::optional<SplitChoice> best;
    std::optional<Plan> bestPlan;
    for (int m = std::max(first + 1, landing - 1); m < std::min(landing + mostTries, whole.lastRow); ++m) {
        Plan topsides = plan;
        RowLayer above(context, topsides);
        const auto edge = above.rows(master, FanSide::TowardKeel, widths, m - 1, first, bands);
        above.finish();
        const auto part = below(*context.part, edge);
        if (!part)
            continue;
        LayingContext bottomContext = context;
        bottomContext.part = &*part;
        Plan bottom;
        bottom.firstRow = 0;
        RowLayer under(bottomContext, bottom);
        under.rows(alongKeel(*context.part, *part), FanSide::TowardSheer);
        under.finish();
        if (bottom.strips.empty())
            continue;
        const SplitChoice choice{m, worstEdgeBend(topsides), worstEdgeBend(bottom)};
        const bool good = choice.bottom <= std::min(plan.edgeBendLimit, choice.topsides);
        if (!best || good || choice.bottom < best->bottom) {
            best = choice;
            renumber(bottom, m);
            bestPlan = std::move(topsides);
            bestPlan->strips.insert(bestPlan->strips.end(),
                                    std::make_move_iterator(bottom.strips.begin()),
                                    std::make_move_iterator(bottom.strips.end()));
            bestPlan->findings.insert(
                bestPlan->findings.end(), bottom.findings.begin(), bottom.findings.end());
            bestPlan->lastRow = bottom.lastRow;
            bestPlan->coverage.stripsArea += bottom.coverage.stripsArea;
            bestPlan->coverage.largestGap =
                std::max(bestPlan->coverage.largestGap, bottom.coverage.largestGap);
            bestPlan->coverage.largestOverlap =
                std::max(bestPlan->coverage.largestOverlap, bottom.coverage.largestOverlap);
            bestPlan->splitRow = m;
        }
        if (good)
            break;
    }
    if (best)
        plan = std::move(*bestPlan);
    return best;
}

} // namespace sheerlay::core

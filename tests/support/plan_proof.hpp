#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/laying_order.hpp"
#include "core/planking/plan.hpp"
#include "core/planking/stealer_bands.hpp"
#include "core/project/project.hpp"
#include "geometry/surface_frame.hpp"
#include "tests/support/edge_curves.hpp"
#include "tests/support/planked.hpp"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace sheerlay::test {

/// The largest of what must be small, over a whole plan.
struct PlanFigures {
    double offNeighbour = 0; ///< mm, edge vertex that lies neither on another strip nor on a line of the hull
    double flatEdge = 0;     ///< mm, flattened edge longer or shorter than on the hull
    double areaOff = 0;      ///< of the hull's area, that the flat outlines do not add up to
};

/// What must hold on any plan (issue 3), judged by the plan's own geometry. Every breach is told in words.
class PlanProof {
public:
    PlanProof(const core::Project& project, const core::LoftedHull& hull, const core::Plan& plan)
        : m_project(project), m_hull(hull), m_plan(plan) {
        for (const core::Strip& s : plan.strips)
            m_byId[s.id] = &s;
        whole = !has("rows-fold") && !has("uncovered");
        sheer = finer(hull.laid.sheer);
        for (const core::Strip& s : plan.strips)
            if (s.side != core::Side::Port)
                m_starboard.push_back({&s, finer(s.upperEdge), finer(s.lowerEdge)});
        for (const core::Strip& s : plan.strips)
            strip(s);
        seams();
        areas();
        order();
    }

    std::vector<std::string> breaches;
    PlanFigures figures;
    bool whole = true; ///< nothing was told that leaves hull uncovered

private:
    struct Edges {
        const core::Strip* strip;
        std::vector<Eigen::Vector3d> upper, lower;
    };

    [[nodiscard]] bool has(const std::string& code) const {
        return std::any_of(
            m_plan.findings.begin(), m_plan.findings.end(), [&](const auto& f) { return f.code == code; });
    }
    void tell(const std::string& id, const char* what, double found, double x = 0) {
        char text[200];
        std::snprintf(text, sizeof text, "%s: %s %.3f at x %.0f", id.c_str(), what, found, x);
        breaches.emplace_back(text);
    }
    void want(bool holds, const std::string& id, const char* what, double found, double x = 0) {
        if (!holds)
            tell(id, what, found, x);
    }

    /// mm, how far a point lies off the nearest line that bounds the hull.
    [[nodiscard]] double offRim(const Eigen::Vector3d& p) const {
        const geometry::Trims& trims = m_hull.laid.trims;
        double least = std::abs(std::abs(p.y()) - trims.siding.at(p.x()));
        for (const auto& plane : {trims.bow, trims.stern})
            if (plane)
                least = std::min(least, std::abs(p.x() - plane->xAt(p.z())) / std::hypot(1, plane->slope));
        return std::min(least, distanceTo(p, sheer));
    }

    void strip(const core::Strip& s) {
        using core::Side;
        const double w = m_plan.coverWidth;
        if (s.upperEdge.size() < 2 || s.lowerEdge.size() < 2 || s.samples.size() != s.middle.size()) {
            tell(s.id, "edges or samples missing", static_cast<double>(s.upperEdge.size()));
            return;
        }
        double widest = 0;
        for (const core::StripSample& q : s.samples) {
            if (!std::isfinite(q.edgeBend + q.twist + q.bend + q.width))
                tell(s.id, "not a number", q.edgeBend, q.x);
            widest = std::max(widest, q.width);
        }
        want(widest <= w + 0.01, s.id, "wider than a strip", widest - w);
        for (std::size_t i = 2; i < s.middle.size(); ++i)
            if (whole && (s.middle[i] - s.middle[i - 1]).dot(s.middle[i - 1] - s.middle[i - 2]) < 0)
                tell(s.id, "middle turns back by", (s.middle[i] - s.middle[i - 1]).norm(), s.middle[i].x());
        for (const auto* line : {&s.upperEdge, &s.lowerEdge})
            for (std::size_t i = 1; i < line->size(); ++i)
                if (const double gap = ((*line)[i] - (*line)[i - 1]).norm(); !(gap <= 25.0))
                    tell(s.id, "vertices apart", gap, (*line)[i].x());
        if (s.side != Side::Port) {
            flat(s);
            ends(s);
            bend(s);
        } else
            mirror(s);
    }

    void flat(const core::Strip& s) {
        if (s.outline.size() != s.upperEdge.size() + s.lowerEdge.size()) {
            tell(s.id, "outline does not pair with the edges", static_cast<double>(s.outline.size()));
            return;
        }
        if (s.side == core::Side::Centre)
            return; // laid flat about the keel line; its area is checked
        double upper = 0, lower = 0;
        for (std::size_t i = 1; i < s.outlineUpperCount; ++i)
            upper += (s.outline[i] - s.outline[i - 1]).norm();
        for (std::size_t i = s.outlineUpperCount + 1; i < s.outline.size(); ++i)
            lower += (s.outline[i] - s.outline[i - 1]).norm();
        for (const double off : {upper - lengthOf(s.upperEdge), lower - lengthOf(s.lowerEdge)}) {
            figures.flatEdge = std::max(figures.flatEdge, std::abs(off));
            want(std::abs(off) <= 0.3, s.id, "flat edge off", off, s.samples.front().x);
        }
    }

    void ends(const core::Strip& s) {
        for (const core::StripEnd& e : s.ends) {
            const Eigen::Vector3d& tip = e.end == core::End::Bow ? s.middle.front() : s.middle.back();
            const auto& trims = m_hull.laid.trims;
            double off = 0;
            if (e.on == core::EndsOn::Stem || e.on == core::EndsOn::Keel)
                off = std::abs(std::abs(tip.y()) - trims.siding.at(tip.x()));
            else if (e.on == core::EndsOn::Transom) {
                const auto& plane = e.end == core::End::Bow ? trims.bow : trims.stern;
                off = plane ? std::abs(tip.x() - plane->xAt(tip.z())) : 1e9;
            } else if (e.on == core::EndsOn::Sheer)
                off = distanceTo(tip, sheer);
            want(!whole || off <= 0.05, s.id, "end off its line", off, tip.x());
            const bool bow = e.end == core::End::Bow;
            const Eigen::Vector3d &upper = bow ? s.upperEdge.front() : s.upperEdge.back(),
                                  &lower = bow ? s.lowerEdge.front() : s.lowerEdge.back();
            // on its cut, or on an edge that follows the keel on to the corner of a transom
            const double span = (upper - lower).norm();
            const double far =
                std::min(std::sqrt(squareDistance(tip, upper, lower)), distanceTo(tip, s.lowerEdge));
            if (whole && s.side != core::Side::Centre)
                want(far <= m_plan.coverWidth / 2 + 0.05 * span,
                     s.id,
                     "middle ends off the cut by",
                     far,
                     tip.x());
            want(e.cut >= 0 && e.cut <= 1.5708, s.id, "cut of an end", e.cut, tip.x());
            want(std::isfinite(e.lap + e.runInner + e.runOuter + e.bevel), s.id, "end not a number", e.lap);
        }
        want(s.cutLength >= s.length - 0.01, s.id, "cut shorter than the strip", s.cutLength - s.length);
    }

    /// Over the limit only where the plan says so, for this row.
    void bend(const core::Strip& s) {
        const double limit = m_plan.edgeBendLimit;
        if (s.edgeBend.maxAbs <= 1.02 * limit)
            return;
        for (const core::Finding& f : m_plan.findings) {
            int first = 0, last = 0;
            if (f.code == "edge-bend-over-limit" &&
                ((std::sscanf(f.text.c_str(), "Rows %d to %d", &first, &last) == 2 && s.row >= first &&
                  s.row <= last) ||
                 (std::sscanf(f.text.c_str(), "Row %d", &first) == 1 && s.row == first)))
                return;
        }
        tell(s.id, "edge bend over the limit and not told, per m", 1e3 * s.edgeBend.maxAbs, s.edgeBend.atX);
    }

    void mirror(const core::Strip& port) {
        std::string id = port.id;
        id.front() = 'S';
        const auto found = m_byId.find(id);
        if (found == m_byId.end()) {
            tell(port.id, "has no partner", 0);
            return;
        }
        const core::Strip& s = *found->second;
        double unlike = port.upperEdge.size() == s.upperEdge.size() &&
                                port.lowerEdge.size() == s.lowerEdge.size() &&
                                port.outline.size() == s.outline.size()
                            ? 0.0
                            : 1e9;
        for (const auto& [a, b] : {std::pair(&port.upperEdge, &s.upperEdge),
                                   std::pair(&port.lowerEdge, &s.lowerEdge),
                                   std::pair(&port.middle, &s.middle)})
            for (std::size_t i = 0; unlike < 1 && i < a->size(); ++i)
                unlike = std::max(unlike,
                                  ((*a)[i] - Eigen::Vector3d((*b)[i].x(), -(*b)[i].y(), (*b)[i].z())).norm());
        for (std::size_t i = 0; unlike < 1 && i < port.outline.size(); ++i)
            unlike = std::max(
                unlike, (port.outline[i] - Eigen::Vector2d(s.outline[i].x(), -s.outline[i].y())).norm());
        want(unlike < 1e-9, port.id, "does not mirror its partner", unlike);
    }

    /// Every vertex of every edge lies on another strip's edge or on the hull's rim, and no strip is wider
    /// than it can be or narrower than it may be.
    void seams() {
        const double w = m_plan.coverWidth;
        for (const Edges& e : m_starboard) {
            const core::Strip& s = *e.strip;
            std::vector<const std::vector<Eigen::Vector3d>*> others;
            // a bottom planked by itself is pointed against one edge
            for (const Edges& o : m_starboard)
                if (o.strip != &s && (m_plan.splitRow || std::abs(o.strip->row - s.row) <= 2))
                    for (const auto* line : {&o.upper, &o.lower})
                        others.push_back(line);
            for (const auto* line : {&s.upperEdge, &s.lowerEdge}) {
                if (s.side == core::Side::Centre && line == &s.lowerEdge)
                    continue;
                for (const Eigen::Vector3d& p : *line) {
                    double off = offRim(p);
                    for (std::size_t k = 0; off > 0.005 && k < others.size(); ++k)
                        off = std::min(off, distanceTo(p, *others[k]));
                    if (!whole)
                        continue; // the last edge of what was laid meets nothing
                    figures.offNeighbour = std::max(figures.offNeighbour, off);
                    want(off <= 0.05,
                         s.id,
                         line == &s.upperEdge ? "upper edge meets nothing, mm off"
                                              : "lower edge meets nothing, mm off",
                         off,
                         p.x());
                }
            }
            if (s.side == core::Side::Centre)
                continue;
            const double least = s.planed == core::PlanedEdge::None ? 0.0
                                 : stealerRow(s.row)                ? core::nibWidth - 0.8 // it may slide
                                 : m_plan.tapers                    ? m_plan.tapers->narrowest
                                                                    : 0.0;
            for (std::size_t i = 0; i < s.lowerEdge.size(); ++i) {
                const Eigen::Vector3d& p = s.lowerEdge[i];
                const std::size_t foot = nearest(p, e.upper);
                if (foot < 2 || foot + 2 >= e.upper.size())
                    continue; // past the upper edge's end: not square across
                const double width = distanceTo(p, e.upper);
                // where the hull ends just past a strip it runs on to the rim
                const bool rim = offRim(p) < 0.05 || offRim(e.upper[foot]) < 0.05 ||
                                 (m_plan.splitRow && s.kind == core::StripKind::Shutter);
                const bool end = std::min((p - e.upper.front()).norm(), (p - e.upper.back()).norm()) < 30 + w;
                const double more = !rim ? 0.05 : end ? 4.0 : 0.55; // mm; at an end a whole scrap is taken in
                want(width <= w + more, s.id, "edges too far apart by", width - w, p.x());
                if (width < least - 0.1 && offRim(p) > 3 && offRim(e.upper[foot]) > 3)
                    tell(s.id, "narrower than allowed by", least - width, p.x());
            }
        }
    }
    [[nodiscard]] static std::size_t nearest(const Eigen::Vector3d& p,
                                             const std::vector<Eigen::Vector3d>& line) {
        const auto found = std::min_element(line.begin(), line.end(), [&](const auto& a, const auto& b) {
            return (a - p).squaredNorm() < (b - p).squaredNorm();
        });
        return static_cast<std::size_t>(found - line.begin());
    }
    [[nodiscard]] bool stealerRow(int row) const {
        return std::any_of(m_plan.strips.begin(), m_plan.strips.end(), [&](const core::Strip& s) {
            return s.row == row && s.kind == core::StripKind::Stealer;
        });
    }

    /// Where a point beside the strip's upper edge comes to lie in its outline.
    [[nodiscard]] static Eigen::Vector2d laidFlat(const core::Strip& s, const Eigen::Vector3d& p) {
        std::size_t at = 1;
        double least = 1e300;
        for (std::size_t i = 1; i < s.upperEdge.size(); ++i)
            if (const double d = squareDistance(p, s.upperEdge[i - 1], s.upperEdge[i]); d < least) {
                least = d;
                at = i;
            }
        const Eigen::Vector3d chord = s.upperEdge[at] - s.upperEdge[at - 1];
        const double f = std::clamp((p - s.upperEdge[at - 1]).dot(chord) / chord.squaredNorm(), 0.0, 1.0);
        const Eigen::Vector2d flat = s.outline[at] - s.outline[at - 1];
        return s.outline[at - 1] + f * flat +
               std::sqrt(least) * Eigen::Vector2d(-flat.y(), flat.x()).normalized();
    }

    /// Points of the keel line that a strip's end is cut along, laid flat, from the upper edge to the lower.
    /// A strip that lands on the keel and reaches the transom too is cut round the corner between them.
    [[nodiscard]] std::vector<Eigen::Vector2d> cutOf(const core::Strip& s, bool bow) const {
        const Eigen::Vector3d &upper = bow ? s.upperEdge.front() : s.upperEdge.back(),
                              &lower = bow ? s.lowerEdge.front() : s.lowerEdge.back();
        const geometry::Trims& trims = m_hull.laid.trims;
        const auto onKeel = [&](const Eigen::Vector3d& p) {
            return std::abs(p.y() - trims.siding.at(p.x())) < 0.05;
        };
        const auto& plane = bow ? trims.bow : trims.stern;
        const bool corner = plane && std::abs(upper.x() - plane->xAt(upper.z())) < 0.05;
        std::vector<Eigen::Vector2d> cut;
        if (!onKeel(lower) || !(onKeel(upper) || corner))
            return cut;
        const double toUpper = corner ? (bow ? -1e9 : 1e9) : upper.x();
        const double high = std::max(upper.z(), lower.z()), low = std::min(upper.z(), lower.z());
        const double dip = 5 + 0.1 * std::abs(upper.x() - lower.x()); // a recurved stem passes x twice
        for (const Eigen::Vector3d& p : m_hull.laid.profile)
            if (p.x() > std::min(toUpper, lower.x()) && p.x() < std::max(toUpper, lower.x()) &&
                (corner || (p.z() < high && p.z() > low - dip)))
                cut.push_back(laidFlat(s, p));
        if (!bow)
            std::reverse(cut.begin(), cut.end());
        return cut;
    }

    /// mm2 of a starboard strip laid flat, its ends cut along the keel line as they are on the boat.
    [[nodiscard]] double flatArea(const core::Strip& s) const {
        std::vector<Eigen::Vector2d> outline(
            s.outline.begin(), s.outline.begin() + static_cast<std::ptrdiff_t>(s.outlineUpperCount));
        const auto stern = cutOf(s, false), bow = cutOf(s, true);
        outline.insert(outline.end(), stern.begin(), stern.end());
        outline.insert(outline.end(),
                       s.outline.begin() + static_cast<std::ptrdiff_t>(s.outlineUpperCount),
                       s.outline.end());
        outline.insert(outline.end(), bow.rbegin(), bow.rend());
        return areaOf(outline);
    }

    void areas() {
        const core::Coverage& c = m_plan.coverage;
        double flat = 0;
        for (const Edges& e : m_starboard)
            flat += e.strip->side == core::Side::Centre ? areaOf(e.strip->outline) / 2 : flatArea(*e.strip);
        want(c.largestGap <= 0.05, "plan", "says it has a gap of", c.largestGap);
        want(c.largestOverlap <= 0.05, "plan", "says it has an overlap of", c.largestOverlap);
        if (!whole)
            return;
        figures.areaOff = flat / m_hull.laid.halfArea - 1;
        want(std::abs(c.stripsArea / m_hull.laid.halfArea - 1) <= 1e-3,
             "plan",
             "area as told, part off",
             c.stripsArea / m_hull.laid.halfArea - 1);
        want(std::abs(figures.areaOff) <= 1e-3, "plan", "area of the outlines, part off", figures.areaOff);
    }

    void order() {
        std::set<int> numbers;
        for (const core::Strip& s : m_plan.strips)
            numbers.insert(s.order);
        const auto count = static_cast<int>(m_plan.strips.size());
        want(static_cast<int>(numbers.size()) == count && *numbers.begin() == 1 && *numbers.rbegin() == count,
             "plan",
             "laying order leaves out or repeats",
             static_cast<double>(count - static_cast<int>(numbers.size())));
        for (const core::Dependency& d : core::dependencies(m_plan, m_project.planking.closing))
            if (m_plan.strips[d.first].order >= m_plan.strips[d.then].order)
                tell(m_plan.strips[d.then].id, "laid before what it waits for", m_plan.strips[d.then].order);
        want(m_byId.size() == m_plan.strips.size(), "plan", "ids twice", 0);
    }

    const core::Project& m_project;
    const core::LoftedHull& m_hull;
    const core::Plan& m_plan;
    std::map<std::string, const core::Strip*> m_byId;
    std::vector<Edges> m_starboard;
    std::vector<Eigen::Vector3d> sheer;
};

} // namespace sheerlay::test

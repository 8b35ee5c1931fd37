#include "core/planking/planking.hpp"

#include "core/planking/centre_piece.hpp"
#include "core/planking/coverage.hpp"
#include "core/planking/flat_strip.hpp"
#include "core/planking/laying_order.hpp"
#include "core/planking/measures.hpp"
#include "core/planking/plan_findings.hpp"
#include "core/planking/row_cutter.hpp"
#include "core/planking/start_line.hpp"
#include "core/planking/start_search.hpp"
#include "core/planking/strip_ends.hpp"
#include "core/planking/trim_crossing.hpp"
#include "core/units/both_units.hpp"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>

namespace sheerlay::core {
namespace {

using geometry::FanSide;
using geometry::RowNode;

constexpr double columnSpacing = 20.0; // mm along the start line
constexpr int mostRows = 400;
constexpr double thinnest = 0.5;      // mm: what is thinner than this everywhere is no piece of wood
constexpr double shortest = 5.0;      // mm
constexpr double foldingJacobi = 0.2; // planking.md section 3: parallels are about to break up
constexpr double pastCentre = 60.0;   // mm past the centreplane after which a column is let go
constexpr double trueWidth = 0.1;     // mm a strip may lose lengthwise and still count as whole

double medianBay(const LoftedHull& hull) {
    std::vector<double> gaps;
    for (std::size_t i = 1; i < hull.stationX.size(); ++i)
        gaps.push_back(hull.stationX[i] - hull.stationX[i - 1]);
    if (gaps.empty())
        return 304.8;
    std::nth_element(gaps.begin(), gaps.begin() + static_cast<std::ptrdiff_t>(gaps.size() / 2), gaps.end());
    return gaps[gaps.size() / 2];
}

Strip mirrored(const Strip& starboard) {
    Strip port = starboard;
    port.side = Side::Port;
    port.id.front() = 'P';
    for (auto* line : {&port.upperEdge, &port.lowerEdge, &port.middle, &port.middleNormal})
        for (Eigen::Vector3d& p : *line)
            p.y() = -p.y();
    for (Eigen::Vector2d& p : port.outline)
        p.y() = -p.y();
    return port;
}

std::string stripId(char side, int row, std::size_t piece, std::size_t pieces) {
    char text[32];
    std::snprintf(text, sizeof text, "%c%s%02d", side, row < 0 ? "-" : "", std::abs(row));
    return pieces > 1 ? std::string(text) + "." + std::to_string(piece + 1) : std::string(text);
}

class Planker {
public:
    Planker(const LayingContext& context, Plan& plan)
        : m_context(context), m_hull(context.hull->laid), m_plan(plan), m_seams(m_hull) {}

    void rows(const std::vector<geometry::MasterNode>& master, FanSide side) {
        geometry::ParallelFan fan(m_hull.surface, master, side, rowBox(m_hull));
        const double w = m_context.project->strips.coverWidth;
        std::vector<char> wasInside(master.size(), 0);
        RowMesh mesh;
        mesh.width = w;
        mesh.spacing = columnSpacing;
        mesh.parent = fan.row();
        for (int k = 1; k <= mostRows; ++k) {
            const int row = side == FanSide::TowardKeel ? k : -k;
            fan.advance(0.5 * w);
            mesh.middle = fan.row();
            fan.advance(0.5 * w);
            mesh.child = fan.row();
            const std::vector<RowPiece> pieces = cutRow(m_hull, mesh);
            if (pieces.empty())
                break;
            if (const RowNode* bad = folding(mesh)) {
                m_plan.findings.push_back(
                    {Level::Stop,
                     "rows-fold",
                     std::nullopt,
                     bad->jet.p.x(),
                     "From row " + std::to_string(row) + " on the rows would fold over themselves " +
                         bothUnits(bad->jet.p.x()) +
                         " from the bow: parallel strips of this width can't go on here. Start "
                         "in the bilge, taper, or use narrower "
                         "strips; the rows above are sound."});
                break;
            }
            lay(pieces, mesh, row, side);
            m_seams.add(mesh, side);
            for (std::size_t i = 0; i < master.size(); ++i) {
                const RowNode& n = mesh.child[i];
                if (!n.alive)
                    continue;
                if (insideHull(m_hull, n.state.uv, n.jet.p))
                    wasInside[i] = 1;
                else if (wasInside[i] &&
                         m_hull.trims.value(geometry::Trim::Centre, n.state.uv.y(), n.jet.p) < -pastCentre)
                    fan.kill(i);
            }
            std::swap(mesh.parent, mesh.child);
        }
    }

    void finish() {
        m_plan.coverage.hullArea = m_hull.halfArea;
        m_plan.coverage.largestGap = std::max(m_seams.largestGap(), m_dropped);
        m_plan.coverage.largestOverlap = m_seams.largestOverlap();
    }

private:
    const RowNode* folding(const RowMesh& mesh) const {
        for (const auto* line : {&mesh.middle, &mesh.child})
            for (const RowNode& n : *line)
                if (n.alive && n.state.jacobi < foldingJacobi && insideHull(m_hull, n.state.uv, n.jet.p))
                    return &n;
        return nullptr;
    }

    void lay(const std::vector<RowPiece>& all, const RowMesh& mesh, int row, FanSide side) {
        std::vector<const RowPiece*> pieces;
        for (const RowPiece& p : all) {
            const double length = p.middle.size() < 2 ? 0.0 : (p.middle.back().p - p.middle.front().p).norm();
            if (p.widest < thinnest || length < shortest || p.parentEdge.size() < 2 ||
                p.childEdge.size() < 2) {
                m_dropped = std::max(m_dropped, p.widest);
                continue;
            }
            pieces.push_back(&p);
        }
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            const RowPiece& piece = *pieces[i];
            m_plan.coverage.stripsArea += piece.area;
            m_plan.firstRow = std::min(m_plan.firstRow, row);
            m_plan.lastRow = std::max(m_plan.lastRow, row);
            // with a keel between the sides there is nothing to span
            const double siding = piece.middle.empty()
                                      ? 0.0
                                      : m_hull.trims.siding.at(piece.middle[piece.middle.size() / 2].p.x());
            const bool joined = piece.lens && siding < thinnest && 2 * piece.widest <= mesh.width &&
                                m_context.project->planking.closing == ClosingMethod::BothSides;
            if (joined) {
                Strip centre = centrePiece(piece, row, m_context);
                centre.id = stripId('C', row, i, pieces.size());
                endStrip(centre, centreLens(piece), mesh, m_context);
                m_plan.strips.push_back(std::move(centre));
                continue;
            }
            Strip strip;
            strip.id = stripId('S', row, i, pieces.size());
            strip.side = Side::Starboard;
            strip.row = row;
            strip.kind = piece.lens                      ? StripKind::Shutter
                         : piece.cutBySheer > trueWidth  ? StripKind::Filler
                         : piece.cutByCentre > trueWidth ? StripKind::Tapered
                                                         : StripKind::Full;
            const auto& upper = side == FanSide::TowardKeel ? piece.parentEdge : piece.childEdge;
            const auto& lower = side == FanSide::TowardKeel ? piece.childEdge : piece.parentEdge;
            for (const RowPoint& p : upper)
                strip.upperEdge.push_back(p.p);
            for (const RowPoint& p : lower)
                strip.lowerEdge.push_back(p.p);
            measureStrip(strip, piece, mesh, m_context);
            endStrip(strip, piece, mesh, m_context);
            flattenStrip(strip, piece, mesh, side);
            m_plan.strips.push_back(mirrored(strip));
            m_plan.strips.push_back(std::move(strip));
        }
    }

    /// The centre piece ends where its lens does, on the keel line itself.
    static RowPiece centreLens(const RowPiece& piece) {
        RowPiece p = piece;
        p.middle = piece.childEdge;
        p.middleWidth.assign(p.middle.size(), 1.0);
        if (piece.bowPointed())
            p.middleWidth.front() = 0.0;
        if (piece.sternPointed())
            p.middleWidth.back() = 0.0;
        return p;
    }

    const LayingContext& m_context;
    const TrimmedSurface& m_hull;
    Plan& m_plan;
    SeamCheck m_seams;
    double m_dropped = 0.0;
};

void markRows(const Project& project, Plan& plan) {
    const auto see =
        [&](End which, EndStyle style, std::optional<RowRange>& weave, std::optional<int>& closing) {
            for (const Strip& s : plan.strips) {
                const StripEnd& e = s.ends[which == End::Bow ? 0 : 1];
                if (e.on == EndsOn::Stem && style == EndStyle::Weave) {
                    if (!weave)
                        weave = RowRange{s.row, s.row};
                    weave->first = std::min(weave->first, s.row);
                    weave->last = std::max(weave->last, s.row);
                }
                if (e.on == EndsOn::Keel && (!closing || s.row < *closing))
                    closing = s.row;
            }
        };
    see(End::Bow, project.planking.bowEnds, plan.marks.weaveBow, plan.marks.closingBow);
    see(End::Stern, project.planking.sternEnds, plan.marks.weaveStern, plan.marks.closingStern);
}

} // namespace

Expected<Plan, PlanError> plank(const Project& project, const LoftedHull& hull) {
    const auto begin = std::chrono::steady_clock::now();
    const Wood* wood = findWood(project.strips.wood);
    if (!wood)
        return unexpected(PlanError{"the wood \"" + project.strips.wood + "\" is not known"});
    const Strength strength(*wood, project.strips.thickness, project.strips.width);
    Plan plan;
    plan.mouldBay = medianBay(hull);
    plan.edgeBendLimit = 1 / project.planking.edgeBendRadius.value_or(strength.edgeBendRadius());
    const LayingContext context{&project, &hull, &strength, plan.mouldBay};

    plan.start = project.planking.start;
    if (plan.start.kind == StartLine::Kind::Easiest) {
        StartSearch search = searchStart(hull, project.strips.coverWidth);
        if (search.candidates.empty())
            return unexpected(PlanError{"no start line could be found on this hull"});
        plan.start = search.candidates[search.best].line;
        tellStart(search, plan);
        plan.candidates = std::move(search.candidates);
    }
    auto master = startLine(hull.laid, plan.start, columnSpacing);
    if (!master)
        return unexpected(PlanError{master.error()});
    if (master->size() < 8)
        return unexpected(PlanError{"the start line is too short to plank from"});
    Planker planker(context, plan);
    planker.rows(*master, FanSide::TowardKeel);
    if (plan.start.kind != StartLine::Kind::Sheer)
        planker.rows(*master, FanSide::TowardSheer);
    planker.finish();
    if (plan.strips.empty())
        return unexpected(PlanError{"no strip of this width lies on the hull from this start line"});
    std::stable_sort(plan.strips.begin(), plan.strips.end(), [](const Strip& a, const Strip& b) {
        return a.row != b.row ? a.row < b.row : a.side == Side::Starboard && b.side == Side::Port;
    });
    markRows(project, plan);
    orderStrips(plan, project.planking.closing);
    findInPlan(project, plan);
    plan.milliseconds =
        std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin).count();
    return plan;
}

} // namespace sheerlay::core

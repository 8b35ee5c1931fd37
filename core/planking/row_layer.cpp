#include "core/planking/row_layer.hpp"

#include "core/planking/band_meshes.hpp"
#include "core/planking/centre_piece.hpp"
#include "core/planking/flat_strip.hpp"
#include "core/planking/row_columns.hpp"
#include "core/planking/start_line.hpp"
#include "core/planking/strip_ends.hpp"
#include "core/planking/thin_piece.hpp"
#include "core/planking/trim_crossing.hpp"
#include "core/units/both_units.hpp"
#include "core/words/say.hpp"
#include "geometry/graph_edge.hpp"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace sheerlay::core {
namespace {

using geometry::FanSide;
using geometry::RowNode;

constexpr double shortest = 5.0;      // mm
constexpr double foldingJacobi = 0.2; // planking.md section 3: parallels are about to break up
constexpr double foldingBend = 10e-3; // 1/mm, inside two strip widths of a fold: nobody bends wood to that
constexpr double pastCentre = 60.0;   // mm past the centreplane after which a column is let go
constexpr double worthTelling = 0.05; // mm
constexpr double trueWidth = 0.1;     // mm a strip may lose lengthwise and still count as whole

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

/// The centre piece ends where its lens does, on the keel line itself.
RowPiece centreLens(const RowPiece& piece) {
    RowPiece p = piece;
    p.middle = piece.childEdge;
    p.middleWidth.assign(p.middle.size(), 1.0);
    if (piece.bowPointed())
        p.middleWidth.front() = 0.0;
    if (piece.sternPointed())
        p.middleWidth.back() = 0.0;
    return p;
}

} // namespace

std::vector<RowNode> RowLayer::rows(const geometry::EvenMaster& master,
                                    FanSide side,
                                    const std::vector<RowWidth>& widths,
                                    int most,
                                    int first,
                                    const std::vector<Band>& bands) {
    geometry::ParallelFan fan(m_hull->surface, master.nodes, side, rowBox(*m_hull));
    std::vector<char> wasInside(master.nodes.size(), 0);
    RowMesh mesh;
    mesh.width = m_context->project->strips.coverWidth;
    mesh.spacing = master.spacing;
    mesh.parent = fan.row();
    for (int k = first; k <= most; ++k) {
        const int row = side == FanSide::TowardKeel ? k : -k;
        const auto index = static_cast<std::size_t>(k - first);
        mesh.narrowed.clear();
        std::vector<RowMesh> stealers;
        const auto band =
            std::find_if(bands.begin(), bands.end(), [&](const Band& b) { return b.row == index; });
        if (band != bands.end()) {
            BandMeshes shared = bandMeshes(*m_hull, fan, mesh, band->width, side, m_context->hull->stationX);
            stealers = std::move(shared.stealers);
            mesh = std::move(shared.beside);
        } else if (index < widths.size() && !widths[index].full()) {
            for (const RowNode& n : mesh.parent)
                mesh.narrowed.push_back(n.alive ? widths[index].at(n.state.uv.x()) : mesh.width);
            std::vector<double> half = mesh.narrowed;
            for (double& d : half)
                d *= 0.5;
            fan.advance(half);
            mesh.middle = geometry::turnedOntoEdge(fan.row(), half, mesh.spacing, side);
            fan.advance(half);
            mesh.child = geometry::turnedOntoEdge(fan.row(), mesh.narrowed, mesh.spacing, side);
        } else {
            fan.advance(0.5 * mesh.width);
            mesh.middle = fan.row();
            fan.advance(0.5 * mesh.width);
            mesh.child = fan.row();
        }
        std::vector<MeshPiece> pieces;
        for (const RowMesh& stealer : stealers)
            for (RowPiece& piece : cutRow(*m_hull, stealer))
                pieces.push_back({std::move(piece), &stealer});
        for (RowPiece& piece : cutRow(*m_hull, mesh)) {
            cutNotches(piece, mesh);
            pieces.push_back({std::move(piece), &mesh});
        }
        if (pieces.empty())
            break;
        if (const RowNode* bad = folding(mesh)) {
            tellFolding(row, bad->jet.p.x());
            break;
        }
        lay(pieces, row, side);
        m_seams.add(mesh, side);
        for (std::size_t i = 0; i < wasInside.size(); ++i) {
            const RowNode& n = mesh.child[i];
            if (!n.alive)
                continue;
            if (insideHull(*m_hull, n.state.uv, n.jet.p))
                wasInside[i] = 1;
            else if (wasInside[i] &&
                     m_hull->trims.value(geometry::Trim::Centre, n.state.uv.y(), n.jet.p) < -pastCentre)
                fan.kill(i);
        }
        if (mesh.tapered()) {
            const auto edge = geometry::masterAlong(mesh.child, columnSpacing);
            if (edge.nodes.size() < 2)
                break;
            fan = geometry::ParallelFan(m_hull->surface, edge.nodes, side, rowBox(*m_hull));
            mesh.spacing = edge.spacing;
            mesh.part = RowPart::Whole;
            mesh.notches.clear();
            wasInside.assign(edge.nodes.size(), 0);
            mesh.parent = fan.row();
        } else
            std::swap(mesh.parent, mesh.child);
    }
    return mesh.parent;
}

void RowLayer::finish() {
    m_plan->coverage.hullArea = m_hull->halfArea;
    Coverage& c = m_plan->coverage;
    c.largestGap = std::max({c.largestGap, m_seams.largestGap(), m_dropped});
    c.largestOverlap = std::max(c.largestOverlap, m_seams.largestOverlap());
    if (m_shortFrom != 0)
        tellShort();
    const double milled = m_context->project->strips.width;
    if (m_overStock.across > 0)
        m_plan->findings.push_back({Level::Caution,
                                    "remainder-over-stock",
                                    m_overStock.strip,
                                    m_overStockX,
                                    say("To take in what the rows leave beside it, too thin for a piece of "
                                        "wood, {} would have to be {} wide {} from the bow, but it is milled "
                                        "to {}: mill it wider, or fill what stays open there.",
                                        m_overStock.strip,
                                        bothUnitsFine(m_overStock.across),
                                        bothUnits(m_overStockX),
                                        bothUnitsFine(milled))});
    if (m_takenIn > worthTelling)
        m_plan->findings.push_back(
            {Level::Note,
             "remainder-taken-in",
             std::nullopt,
             m_takenInX,
             say(m_takenInSide == FanSide::TowardKeel
                     ? sayable("The rows leave no more than {} at the keel there, too thin for a piece of "
                               "wood; the strip beside it is drawn that much wider than it covers elsewhere, "
                               "so leave it unplaned there.")
                 : m_hull->trims.upper
                     ? sayable("The rows leave no more than {} below the topsides there, too thin for a "
                               "piece of wood; the strip beside it is drawn that much wider than it covers "
                               "elsewhere, so leave it unplaned there.")
                     : sayable("The rows leave no more than {} at the sheer there, too thin for a piece of "
                               "wood; the strip beside it is drawn that much wider than it covers elsewhere, "
                               "so leave it unplaned there."),
                 bothUnitsFine(m_takenIn))});
}

const RowNode* RowLayer::folding(const RowMesh& mesh) const {
    for (const auto* line : {&mesh.middle, &mesh.child})
        for (const RowNode& n : *line)
            if (n.alive && (n.state.jacobi < foldingJacobi || std::abs(n.edgeBend) > foldingBend) &&
                insideHull(*m_hull, n.state.uv, n.jet.p))
                return &n;
    return nullptr;
}

void RowLayer::tellFolding(int row, double x) {
    m_plan->findings.push_back({Level::Stop,
                                "rows-fold",
                                std::nullopt,
                                x,
                                say("From row {} on the rows would fold over themselves {} from the bow: "
                                    "parallel strips of this width can't go on here. Start in the bilge, "
                                    "taper, or use narrower strips; the rows above are sound.",
                                    row,
                                    bothUnits(x))});
}

void RowLayer::tellShort() const {
    m_plan->findings.push_back(
        {Level::Stop,
         "uncovered",
         std::nullopt,
         m_shortX,
         m_hull->trims.upper
             ? say("Rows of the bottom end {} from the bow, short of the end of the hull: the line they run "
                   "parallel to leaves the hull before it gets there. Start lower, or with less bend.",
                   bothUnits(m_shortX))
             : say("From row {} on the rows end {} from the bow, short of the end of the hull: the line they "
                   "run parallel to leaves the hull before it gets there. Start lower, or with less bend.",
                   m_shortFrom,
                   bothUnits(m_shortX))});
}

void RowLayer::leaveOut(const RowPiece& thin, FanSide side) {
    const auto taken = takeIn(thin, m_plan->strips, side);
    if (!taken) {
        m_dropped = std::max(m_dropped, thin.widest);
        return;
    }
    m_plan->coverage.stripsArea += thin.area;
    const double x = thin.childEdge[thin.childEdge.size() / 2].p.x();
    if (taken->across > m_context->project->strips.width + worthTelling) {
        if (taken->across > m_overStock.across) {
            m_overStock = *taken;
            m_overStockX = x;
        }
    } else if (taken->beyond > m_takenIn) {
        m_takenIn = taken->beyond;
        m_takenInX = x;
        m_takenInSide = side;
    }
}

void RowLayer::lay(const std::vector<MeshPiece>& all, int row, FanSide side) {
    std::vector<const MeshPiece*> pieces;
    for (const MeshPiece& of : all) {
        const RowPiece& p = of.piece;
        const double length = p.middle.size() < 2 ? 0.0 : (p.middle.back().p - p.middle.front().p).norm();
        if (p.widest < tooThin || length < shortest || p.parentEdge.size() < 2 || p.childEdge.size() < 2) {
            leaveOut(p, side);
            continue;
        }
        pieces.push_back(&of);
    }
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const RowPiece& piece = pieces[i]->piece;
        const RowMesh& mesh = *pieces[i]->mesh;
        if (piece.stopsShort && m_shortFrom == 0) {
            m_shortFrom = row;
            m_shortX = *piece.stopsShort;
        }
        m_plan->coverage.stripsArea += piece.area;
        m_plan->firstRow = std::min(m_plan->firstRow, row);
        m_plan->lastRow = std::max(m_plan->lastRow, row);
        // with a keel between the sides there is nothing to span
        const double siding =
            piece.middle.empty() ? 0.0 : m_hull->trims.siding.at(piece.middle[piece.middle.size() / 2].p.x());
        const bool joined = piece.lens && siding < tooThin && 2 * piece.widest <= mesh.width &&
                            m_context->project->planking.closing == ClosingMethod::BothSides;
        if (joined) {
            Strip centre = centrePiece(piece, row, *m_context);
            centre.id = stripId('C', row, i, pieces.size());
            endStrip(centre, centreLens(piece), mesh, *m_context);
            m_plan->strips.push_back(std::move(centre));
            continue;
        }
        Strip strip;
        strip.id = stripId('S', row, i, pieces.size());
        strip.side = Side::Starboard;
        strip.row = row;
        const bool planed = piece.tapered && row != m_measured;
        strip.kind = piece.part == RowPart::Stealer            ? StripKind::Stealer
                     : piece.lens                              ? StripKind::Shutter
                     : piece.cutBySheer > trueWidth            ? StripKind::Filler
                     : planed || piece.cutByCentre > trueWidth ? StripKind::Tapered
                                                               : StripKind::Full;
        if (planed)
            strip.planed = (side == FanSide::TowardKeel) != (piece.part == RowPart::Beside)
                               ? PlanedEdge::Lower
                               : PlanedEdge::Upper;
        const auto& upper = side == FanSide::TowardKeel ? piece.parentEdge : piece.childEdge;
        const auto& lower = side == FanSide::TowardKeel ? piece.childEdge : piece.parentEdge;
        for (const RowPoint& p : upper)
            strip.upperEdge.push_back(p.p);
        for (const RowPoint& p : lower)
            strip.lowerEdge.push_back(p.p);
        measureStrip(strip, piece, mesh, *m_context);
        endStrip(strip, piece, mesh, *m_context);
        flattenStrip(strip, piece, mesh, side);
        m_plan->strips.push_back(mirrored(strip));
        m_plan->strips.push_back(std::move(strip));
    }
}

} // namespace sheerlay::core

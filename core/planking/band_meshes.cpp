#include "core/planking/band_meshes.hpp"

#include "core/planking/trim_crossing.hpp"
#include "geometry/graph_edge.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {
namespace {

using geometry::RowNode;

constexpr double sliver = 0.5; // mm that either share keeps outside the hull, where nothing is planned

RowPoint pointAt(const RowNode& n, std::size_t column, double distance) {
    return {static_cast<double>(column), distance, n.state.uv, n.jet.p};
}

std::vector<double> halves(std::vector<double> list) {
    for (double& d : list)
        d *= 0.5;
    return list;
}

/// Lets a mesh live on a run of columns alone.
void keepRun(RowMesh& mesh, const StealerRun& run) {
    for (auto* line : {&mesh.parent, &mesh.middle, &mesh.child})
        for (std::size_t i = 0; i < line->size(); ++i)
            if (i < run.first || i > run.last)
                (*line)[i].alive = false;
    if (run.bowNib)
        mesh.bowNib = run.first;
    if (run.sternNib)
        mesh.sternNib = run.last;
}

} // namespace

BandMeshes bandMeshes(const TrimmedSurface& hull,
                      geometry::ParallelFan& fan,
                      const RowMesh& start,
                      const RowWidth& band,
                      geometry::FanSide side,
                      const std::vector<double>& moulds) {
    const std::vector<RowNode>& near = start.parent;
    const double cover = start.width;
    const std::size_t n = near.size();
    std::vector<BandColumn> columns(n);
    for (std::size_t i = 0; i < n; ++i)
        if (near[i].alive)
            columns[i] = {std::min(band.at(near[i].state.uv.x()), 2 * cover),
                          near[i].jet.p.x(),
                          insideHull(hull, near[i].state.uv, near[i].jet.p)};
        else
            columns[i].combined = cover;
    const std::vector<StealerRun> runs = stealerRuns(columns, cover, moulds);

    std::vector<char> shared(n, 0);
    for (const StealerRun& run : runs)
        std::fill(shared.begin() + static_cast<std::ptrdiff_t>(run.first),
                  shared.begin() + static_cast<std::ptrdiff_t>(run.last) + 1,
                  char{1});
    std::vector<double> stealer(n), seam(n), rest(n), combined(n);
    for (std::size_t i = 0; i < n; ++i) {
        combined[i] = columns[i].combined;
        stealer[i] = std::clamp(bandShares(combined[i], cover).stealer, sliver, combined[i] - sliver);
        seam[i] = shared[i] ? stealer[i] : 0.0;
        rest[i] = combined[i] - seam[i];
    }

    RowMesh upper = start;
    upper.part = RowPart::Stealer;
    upper.narrowed = stealer;
    geometry::ParallelFan along = fan;
    along.advance(halves(stealer));
    upper.middle = geometry::turnedOntoEdge(along.row(), halves(stealer), start.spacing, side);
    along.advance(halves(stealer));
    upper.child = geometry::turnedOntoEdge(along.row(), stealer, start.spacing, side);

    BandMeshes meshes;
    RowMesh& beside = meshes.beside;
    beside = start;
    beside.part = RowPart::Beside;
    beside.narrowed = rest;
    fan.advance(halves(seam));
    fan.advance(halves(seam));
    for (std::size_t i = 0; i < n; ++i)
        if (shared[i])
            beside.parent[i] = upper.child[i];
    fan.advance(halves(rest));
    std::vector<double> middle(n);
    for (std::size_t i = 0; i < n; ++i)
        middle[i] = seam[i] + 0.5 * rest[i];
    beside.middle = geometry::turnedOntoEdge(fan.row(), middle, start.spacing, side);
    fan.advance(halves(rest));
    beside.child = geometry::turnedOntoEdge(fan.row(), combined, start.spacing, side);

    for (const StealerRun& run : runs) {
        meshes.stealers.push_back(upper);
        keepRun(meshes.stealers.back(), run);
        if (run.bowNib)
            beside.notches.push_back({pointAt(near[run.first], run.first, -seam[run.first]), true});
        if (run.sternNib)
            beside.notches.push_back({pointAt(near[run.last], run.last, -seam[run.last]), false});
    }
    return meshes;
}

void cutNotches(RowPiece& piece, const RowMesh& beside) {
    std::vector<RowPoint>& edge = piece.parentEdge;
    for (const RowMesh::Notch& notch : beside.notches) {
        const double at = notch.corner.column;
        const auto seamEnd =
            std::find_if(edge.begin(), edge.end(), [&](const RowPoint& p) { return p.column == at; });
        if (seamEnd == edge.end())
            continue; // in another piece of the row
        edge.insert(notch.bow ? seamEnd : seamEnd + 1, notch.corner);
        // what was put between the columns lies on a slope that is not there
        const double outer = notch.bow ? at - 1 : at + 1;
        std::erase_if(edge, [&](const RowPoint& p) {
            return p.column > std::min(at, outer) && p.column < std::max(at, outer);
        });
        const auto column = static_cast<std::size_t>(at);
        piece.area += 0.5 * -notch.corner.distance * beside.spacing * beside.parent[column].state.jacobi;
    }
}

} // namespace sheerlay::core

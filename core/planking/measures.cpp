#include "core/planking/measures.hpp"

#include "core/planking/mesh_reading.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {
namespace {

constexpr double widthStep = 100.0; // mm between entries of Strip::widths
constexpr double straight = 1e-9;   // 1/mm: no radius is told below this

} // namespace

void measureStrip(Strip& strip, const RowPiece& piece, const RowMesh& mesh, const LayingContext& context) {
    const geometry::TensorSurface& surface = context.part->surface;
    const auto& source = piece.goodLine(mesh);
    double s = 0;
    strip.middle.reserve(piece.middle.size());
    strip.samples.reserve(piece.middle.size());
    bool first = true;
    for (std::size_t i = 0; i < piece.middle.size(); ++i) {
        const RowPoint& at = piece.middle[i];
        if (i > 0)
            s += (at.p - piece.middle[i - 1].p).norm();
        const auto column = static_cast<std::size_t>(at.column);
        const bool isNode =
            static_cast<double>(column) == at.column && at.distance == 0.5 * mesh.widthAt(column);
        const geometry::SurfaceJet jet = isNode ? mesh.middle[column].jet : surface.jet(at.uv.x(), at.uv.y());
        const MeshValue value = readMesh(source, at.column);
        const geometry::Frame frame = geometry::frameAlong(jet, value.tangent);
        const geometry::StripShape shape = geometry::stripShape(jet, frame);
        StripSample sample{s, at.p.x(), piece.middleWidth[i], value.edgeBend, shape.twist, shape.bend};
        strip.middle.push_back(at.p);
        strip.middleNormal.push_back(frame.normal);

        EdgeBend& e = strip.edgeBend;
        if (first || std::abs(sample.edgeBend) > e.maxAbs) {
            e.maxAbs = std::abs(sample.edgeBend);
            e.atX = sample.x;
        }
        e.signedMin = first ? sample.edgeBend : std::min(e.signedMin, sample.edgeBend);
        e.signedMax = first ? sample.edgeBend : std::max(e.signedMax, sample.edgeBend);
        if (first || std::abs(sample.twist) > strip.twistMax) {
            strip.twistMax = std::abs(sample.twist);
            strip.twistAtX = sample.x;
        }
        const double strain = context.strength->strain(sample.edgeBend, sample.bend, sample.twist);
        if (first || strain > strip.strainMax) {
            strip.strainMax = strain;
            strip.strainAtX = sample.x;
        }
        if (std::abs(sample.bend) > straight &&
            (!strip.bendMinRadius || 1 / std::abs(sample.bend) < *strip.bendMinRadius)) {
            strip.bendMinRadius = 1 / std::abs(sample.bend);
            strip.bendAtX = sample.x;
        }
        strip.samples.push_back(sample);
        first = false;
    }
    if (first)
        return;
    strip.length = s;
    if (!strip.bendMinRadius)
        strip.bendAtX = strip.samples.front().x;
    if (strip.edgeBend.maxAbs > straight)
        strip.edgeBend.minRadius = 1 / strip.edgeBend.maxAbs;
    strip.milledWidth = context.project->strips.width;
    strip.edgeBend.force = context.strength->holdingForce(strip.edgeBend.maxAbs, context.bay);

    for (const StripSample& sample : strip.samples)
        if (strip.widths.empty() || sample.s - strip.widths.back()[0] >= widthStep ||
            &sample == &strip.samples.back())
            strip.widths.push_back({sample.s, sample.width});
}

} // namespace sheerlay::core

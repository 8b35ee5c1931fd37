#include "core/outlines/dxf_drawing.hpp"

#include "core/outlines/dxf_curves.hpp"
#include "core/outlines/dxf_entities.hpp"
#include "core/units/length_text.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <optional>
#include <span>
#include <utility>

namespace sheerlay::core {

namespace {

constexpr int deepest = 12;                // blocks within blocks
constexpr std::size_t mostPlaced = 20'000; // insertions; a drawing of sections has dozens

/// Where something drawn in axes of its own comes to lie.
struct Placement {
    double xx = 1.0, xy = 0.0, yx = 0.0, yy = 1.0; ///< x' = xx x + xy y + at.x
    DrawnPoint at;

    [[nodiscard]] DrawnPoint operator()(DrawnPoint p) const {
        return {xx * p.x + xy * p.y + at.x, yx * p.x + yy * p.y + at.y};
    }
    /// What is placed by `inner` first.
    [[nodiscard]] Placement after(const Placement& inner) const {
        return {xx * inner.xx + xy * inner.yx,
                xx * inner.xy + xy * inner.yy,
                yx * inner.xx + yy * inner.yx,
                yx * inner.xy + yy * inner.yy,
                (*this)(inner.at)};
    }
};

/// One of an insertion's copies: `aside` and `up` of them before it in its rows and columns.
Placement placementOf(const DxfEntity& insert, DrawnPoint base, int aside, int up) {
    const double turn = insert.first(50) * std::numbers::pi / 180;
    const double c = std::cos(turn);
    const double s = std::sin(turn);
    const double sx = insert.first(41, 1.0);
    const double sy = insert.first(42, 1.0);
    const DrawnPoint step{aside * insert.first(44), up * insert.first(45)};
    Placement placed{c * sx, -s * sy, s * sx, c * sy, insert.point(10)};
    const DrawnPoint moved{c * step.x - s * step.y, s * step.x + c * step.y};
    placed.at = {placed.at.x + moved.x - placed.xx * base.x - placed.xy * base.y,
                 placed.at.y + moved.y - placed.yx * base.x - placed.yy * base.y};
    if (seenFromBehind(insert)) {
        placed.xx = -placed.xx;
        placed.xy = -placed.xy;
        placed.at.x = -placed.at.x;
    }
    return placed;
}

/// Draws the entities, and what is inserted of the blocks.
class DxfReader {
public:
    DxfReader(const DxfFile& read, const std::string& file) : m_read(read), m_file(file) {}

    Expected<Drawing, FileMessage> draw() {
        m_drawing.millimetres = m_read.millimetres;
        if (auto problem = list(m_read.entities, {}, {}, 0))
            return unexpected(std::move(*problem));
        for (const auto& [name, count] : m_leftOut)
            m_drawing.leftOut.push_back(std::to_string(count) + " " + name);
        return std::move(m_drawing);
    }

private:
    using Problem = std::optional<FileMessage>;

    /// @param groups  the name of each block around and the layer it was inserted on, from the inside out
    Problem list(std::span<const DxfEntity> entities,
                 const Placement& placed,
                 const std::vector<std::string>& groups,
                 int depth) {
        for (std::size_t i = 0; i < entities.size(); ++i) {
            const DxfEntity& entity = entities[i];
            std::size_t vertices = 0;
            while (entity.name == "POLYLINE" && i + 1 + vertices < entities.size() &&
                   entities[i + 1 + vertices].name == "VERTEX")
                ++vertices;
            const auto own = entities.subspan(i + 1, vertices);
            i += vertices;
            if (entity.name == "SEQEND")
                continue;
            if (m_read.hidden.contains(entity.layer())) {
                m_leftOut["hidden"] += 1;
                continue;
            }
            const bool risen = std::ranges::any_of(
                own, [&](const DxfEntity& vertex) { return vertex.first(30) != own.front().first(30); });
            if (risen || leavesThePlane(entity))
                return complaint(entity,
                                 "a curve that leaves the plane of the drawing",
                                 "half sections drawn flat, seen along the boat");
            // what is drawn in a block on layer 0 goes where the block is inserted
            std::vector<std::string> under = groups;
            if (groups.empty() || entity.layer() != "0")
                under.insert(under.begin(), entity.layer());
            if (entity.name == "INSERT") {
                if (auto problem = insert(entity, placed, std::move(under), depth))
                    return problem;
                continue;
            }
            std::vector<DrawnPoint> points = dxfCurve(entity, own);
            for (DrawnPoint& p : points)
                p = placed(p);
            if (points.size() >= 2)
                m_drawing.curves.push_back({std::move(under), std::move(points)});
            else
                ++m_leftOut[entity.name];
        }
        return std::nullopt;
    }

    Problem
    insert(const DxfEntity& entity, const Placement& placed, std::vector<std::string> groups, int depth) {
        const auto block = m_read.blocks.find(entity.text(2));
        if (block == m_read.blocks.end()) {
            ++m_leftOut[entity.name];
            return std::nullopt;
        }
        if (depth == deepest)
            return complaint(entity,
                             "blocks within blocks more than " + std::to_string(deepest) + " deep, at " +
                                 quoted(block->first),
                             "blocks that don't hold themselves, or the drawing with its blocks taken apart");
        groups.insert(groups.begin(), block->first); // its name says more than the layer it was put on
        const auto copies = [&](int code) {
            return static_cast<int>(std::clamp(entity.first(code, 1.0), 1.0, 1000.0));
        };
        for (int up = 0; up < copies(71); ++up)
            for (int aside = 0; aside < copies(70); ++aside) {
                if (++m_placed > mostPlaced)
                    return complaint(entity,
                                     "more than " + std::to_string(mostPlaced) + " insertions of blocks",
                                     "the half sections alone");
                const Placement inner = placementOf(entity, block->second.base, aside, up);
                if (auto problem = list(block->second.entities, placed.after(inner), groups, depth + 1))
                    return problem;
                if (m_drawing.curves.size() > mostCurves)
                    return complaint(entity,
                                     "more than " + std::to_string(mostCurves) + " curves",
                                     "the half sections alone, a few curves each");
            }
        return std::nullopt;
    }

    [[nodiscard]] FileMessage complaint(const DxfEntity& at, std::string found, std::string would) const {
        return {m_file, at.line, at.layer(), std::move(found), std::move(would)};
    }

    static constexpr std::size_t mostCurves = 100'000;

    const DxfFile& m_read;
    const std::string& m_file;
    Drawing m_drawing;
    std::map<std::string, int> m_leftOut;
    std::size_t m_placed = 0;
};

} // namespace

Expected<Drawing, FileMessage> readDxf(std::string_view text, const std::string& file) {
    const auto read = dxfEntities(text, file);
    if (!read)
        return unexpected(read.error());
    return DxfReader(*read, file).draw();
}

} // namespace sheerlay::core

#include "geometry/mesh_sections.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <map>
#include <numeric>
#include <unordered_map>
#include <utility>

namespace sheerlay::geometry {
namespace {

constexpr std::size_t mostBins = 4096;

using Side = std::uint64_t; // both points of a triangle's side, the lower number in front

Side sideOf(int a, int b) {
    const auto [low, high] = std::minmax(a, b);
    return (static_cast<Side>(low) << 32U) | static_cast<Side>(high);
}

/// Chains links between things that have two neighbours at most; where there are more, chains end.
template <class Node>
std::vector<std::vector<Node>> chained(const std::map<Node, std::vector<Node>>& neighbours) {
    std::map<std::pair<Node, Node>, bool> walked;
    std::vector<std::vector<Node>> chains;
    const auto walk = [&](Node from, Node to) {
        std::vector<Node> chain{from, to};
        walked[std::minmax(from, to)] = true;
        for (;;) {
            const auto& next = neighbours.at(chain.back());
            if (next.size() != 2)
                break;
            const Node on = next[0] == chain[chain.size() - 2] ? next[1] : next[0];
            if (std::exchange(walked[std::minmax(chain.back(), on)], true))
                break;
            chain.push_back(on);
        }
        chains.push_back(std::move(chain));
    };
    for (const bool fromEnds : {true, false})
        for (const auto& [node, next] : neighbours)
            if (!fromEnds || next.size() != 2)
                for (const Node& other : next)
                    if (!walked[std::minmax(node, other)])
                        walk(node, other);
    return chains;
}

} // namespace

MeshSections::MeshSections(const Mesh& mesh) : m_mesh(mesh) {
    if (mesh.triangles.empty())
        return;
    m_first = 1e300;
    m_last = -1e300;
    const auto x = [&](int i) { return mesh.points[static_cast<std::size_t>(i)].x(); };
    for (const auto& t : mesh.triangles)
        for (const int i : t) {
            m_first = std::min(m_first, x(i));
            m_last = std::max(m_last, x(i));
        }
    m_bins.resize(std::clamp<std::size_t>(mesh.triangles.size() / 16, 1, mostBins));
    for (std::size_t k = 0; k < mesh.triangles.size(); ++k) {
        const auto [low, high] = std::ranges::minmax(mesh.triangles[k], {}, x);
        const auto bin = [&](double at) {
            const double part = (at - m_first) / std::max(m_last - m_first, 1e-300);
            return std::min(
                static_cast<std::size_t>(std::max(part, 0.0) * static_cast<double>(m_bins.size())),
                m_bins.size() - 1);
        };
        for (std::size_t b = bin(x(low)); b <= bin(x(high)); ++b)
            m_bins[b].push_back(k);
    }
}

std::vector<std::vector<Eigen::Vector3d>> MeshSections::at(double x) const {
    if (m_bins.empty() || x < m_first || x > m_last)
        return {};
    const double part = (x - m_first) / std::max(m_last - m_first, 1e-300);
    const auto bin =
        std::min(static_cast<std::size_t>(part * static_cast<double>(m_bins.size())), m_bins.size() - 1);
    // a point on the plane counts as behind it, so that every triangle is cut in two sides or none
    const auto ahead = [&](int i) { return m_mesh.points[static_cast<std::size_t>(i)].x() < x; };
    std::map<Side, std::vector<Side>> neighbours;
    for (const std::size_t k : m_bins[bin]) {
        const auto& t = m_mesh.triangles[k];
        std::vector<Side> cut;
        for (std::size_t i = 0; i < 3; ++i)
            if (ahead(t[i]) != ahead(t[(i + 1) % 3]))
                cut.push_back(sideOf(t[i], t[(i + 1) % 3]));
        if (cut.size() != 2)
            continue;
        neighbours[cut[0]].push_back(cut[1]);
        neighbours[cut[1]].push_back(cut[0]);
    }
    std::vector<std::vector<Eigen::Vector3d>> lines;
    for (const auto& chain : chained(neighbours)) {
        std::vector<Eigen::Vector3d> line;
        for (const Side side : chain) {
            const Eigen::Vector3d& a = m_mesh.points[side >> 32U];
            const Eigen::Vector3d& b = m_mesh.points[side & 0xFFFFFFFFU];
            Eigen::Vector3d p = a + (x - a.x()) / (b.x() - a.x()) * (b - a);
            p.x() = x;
            line.push_back(p);
        }
        lines.push_back(std::move(line));
    }
    return lines;
}

std::vector<std::vector<int>> rimsOf(const Mesh& mesh) {
    std::unordered_map<Side, int> uses;
    for (const auto& t : mesh.triangles)
        for (std::size_t i = 0; i < 3; ++i)
            ++uses[sideOf(t[i], t[(i + 1) % 3])];
    std::map<int, std::vector<int>> neighbours;
    for (const auto& t : mesh.triangles)
        for (std::size_t i = 0; i < 3; ++i)
            if (uses[sideOf(t[i], t[(i + 1) % 3])] == 1) {
                neighbours[t[i]].push_back(t[(i + 1) % 3]);
                neighbours[t[(i + 1) % 3]].push_back(t[i]);
            }
    return chained(neighbours);
}

std::vector<int> piecesOf(const Mesh& mesh) {
    std::vector<int> leader(mesh.triangles.size());
    std::iota(leader.begin(), leader.end(), 0);
    const auto lead = [&](int k) {
        while (leader[static_cast<std::size_t>(k)] != k)
            k = leader[static_cast<std::size_t>(k)] =
                leader[static_cast<std::size_t>(leader[static_cast<std::size_t>(k)])];
        return k;
    };
    std::unordered_map<Side, int> first;
    for (std::size_t k = 0; k < mesh.triangles.size(); ++k)
        for (std::size_t i = 0; i < 3; ++i) {
            const auto& t = mesh.triangles[k];
            const auto [at, fresh] = first.try_emplace(sideOf(t[i], t[(i + 1) % 3]), static_cast<int>(k));
            if (!fresh)
                leader[static_cast<std::size_t>(lead(static_cast<int>(k)))] = lead(at->second);
        }
    std::map<int, int> numbers;
    std::vector<int> pieces;
    for (std::size_t k = 0; k < mesh.triangles.size(); ++k)
        pieces.push_back(
            numbers.try_emplace(lead(static_cast<int>(k)), static_cast<int>(numbers.size())).first->second);
    return pieces;
}

} // namespace sheerlay::geometry

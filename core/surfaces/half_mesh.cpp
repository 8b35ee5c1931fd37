#include "core/surfaces/half_mesh.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

namespace sheerlay::core {
namespace {

using Eigen::Vector3d;

class Halver {
public:
    Halver(const geometry::Mesh& mesh, double snap)
        : m_mesh(mesh), m_points(mesh.points), m_kept(mesh.points.size(), -1) {
        for (Vector3d& p : m_points)
            if (std::abs(p.y()) <= snap)
                p.y() = 0.0;
    }

    geometry::Mesh half() {
        for (const auto& t : m_mesh.triangles)
            cut(t);
        return std::move(m_half);
    }

private:
    [[nodiscard]] double y(int i) const { return m_points[static_cast<std::size_t>(i)].y(); }
    int kept(int i) {
        int& number = m_kept[static_cast<std::size_t>(i)];
        if (number < 0) {
            number = static_cast<int>(m_half.points.size());
            m_half.points.push_back(m_points[static_cast<std::size_t>(i)]);
        }
        return number;
    }
    int crossing(int a, int b) {
        const auto [at, fresh] =
            m_crossings.try_emplace(std::minmax(a, b), static_cast<int>(m_half.points.size()));
        if (fresh) {
            const Vector3d& p = m_points[static_cast<std::size_t>(at->first.first)];
            const Vector3d& q = m_points[static_cast<std::size_t>(at->first.second)];
            Vector3d c = p + p.y() / (p.y() - q.y()) * (q - p);
            c.y() = 0.0;
            m_half.points.push_back(c);
        }
        return at->second;
    }
    void cut(const std::array<int, 3>& t) {
        std::vector<int> corners;
        bool inside = false;
        for (std::size_t i = 0; i < 3; ++i) {
            const int a = t[i];
            const int b = t[(i + 1) % 3];
            inside = inside || y(a) > 0.0;
            if (y(a) >= 0.0)
                corners.push_back(kept(a));
            if ((y(a) > 0.0 && y(b) < 0.0) || (y(a) < 0.0 && y(b) > 0.0))
                corners.push_back(crossing(a, b));
        }
        if (!inside)
            return;
        for (std::size_t i = 1; i + 1 < corners.size(); ++i)
            m_half.triangles.push_back({corners[0], corners[i], corners[i + 1]});
    }

    const geometry::Mesh& m_mesh;
    std::vector<Vector3d> m_points;
    std::vector<int> m_kept;
    std::map<std::pair<int, int>, int> m_crossings;
    geometry::Mesh m_half;
};

} // namespace

geometry::Mesh halfOf(const geometry::Mesh& mesh, double snap) {
    return Halver(mesh, snap).half();
}

} // namespace sheerlay::core

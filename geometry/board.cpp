#include "geometry/board.hpp"

#include <Eigen/Geometry>

#include <algorithm>
#include <array>
#include <numeric>
#include <utility>

namespace sheerlay::geometry {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

double turn(const Vector2d& a, const Vector2d& b, const Vector2d& c) {
    return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
}

/// A closed line that turns left, cut into triangles of its own points.
class Ears {
public:
    explicit Ears(std::vector<Vector2d> line) : m_line(std::move(line)), m_left(m_line.size()) {
        std::iota(m_left.begin(), m_left.end(), 0);
    }

    std::vector<std::array<int, 3>> cut() {
        while (m_left.size() > 3) {
            const std::size_t i = next();
            take(i);
            m_left.erase(m_left.begin() + static_cast<std::ptrdiff_t>(i));
        }
        if (m_left.size() == 3)
            take(1);
        return std::move(m_triangles);
    }

private:
    [[nodiscard]] int around(std::size_t i, std::size_t by) const { return m_left[(i + by) % m_left.size()]; }
    [[nodiscard]] const Vector2d& at(int i) const { return m_line[static_cast<std::size_t>(i)]; }
    [[nodiscard]] std::array<int, 3> corner(std::size_t i) const {
        return {around(i, m_left.size() - 1), m_left[i], around(i, 1)};
    }
    void take(std::size_t i) { m_triangles.push_back(corner(i)); }

    /// The corner whose triangle is the least slender of those that hold no other point; where points lie on
    /// one line none has any breadth, and the flattest goes.
    [[nodiscard]] std::size_t next() const {
        std::size_t best = 0;
        double roundest = -1.0;
        for (std::size_t i = 0; i < m_left.size(); ++i) {
            const auto [a, b, c] = corner(i);
            const double area = turn(at(a), at(b), at(c));
            const double round = area / std::max(1e-12, (at(c) - at(a)).squaredNorm());
            if (area >= 0.0 && round > roundest && isEmpty(i)) {
                best = i;
                roundest = round;
            }
        }
        return best;
    }
    [[nodiscard]] bool isEmpty(std::size_t i) const {
        const auto [a, b, c] = corner(i);
        for (const int k : m_left) {
            if (k == a || k == b || k == c)
                continue;
            const Vector2d& p = at(k);
            if (turn(at(a), at(b), p) >= 0.0 && turn(at(b), at(c), p) >= 0.0 && turn(at(c), at(a), p) >= 0.0)
                return false;
        }
        return true;
    }

    std::vector<Vector2d> m_line;
    std::vector<int> m_left; ///< points not yet cut off, in order round
    std::vector<std::array<int, 3>> m_triangles;
};

/// Twice the area inside the line as a vector square to it.
Vector3d areaOf(const std::vector<Vector3d>& line) {
    Vector3d sum = Vector3d::Zero();
    for (std::size_t i = 1; i + 1 < line.size(); ++i)
        sum += (line[i] - line[0]).cross(line[i + 1] - line[0]);
    return sum;
}

} // namespace

Mesh boardMesh(const Board& board) {
    std::vector<Vector3d> line;
    for (const std::vector<Vector3d>& part : board.boundary)
        if (!part.empty())
            line.insert(line.end(), part.begin(), part.end() - 1);
    const Vector3d area = areaOf(line);
    if (line.size() < 3 || area.norm() <= 0.0 || board.through.norm() <= 0.0)
        return {};
    // seen from this face, which looks away from `through`, the line is to turn left
    const bool left = area.dot(board.through) < 0.0;
    if (!left)
        std::reverse(line.begin(), line.end());
    const Vector3d out = (left ? 1.0 : -1.0) * area.normalized();
    const Vector3d right = out.unitOrthogonal();
    const Vector3d up = out.cross(right);
    std::vector<Vector2d> flat;
    for (const Vector3d& p : line)
        flat.emplace_back(right.dot(p - line[0]), up.dot(p - line[0]));

    Mesh mesh;
    mesh.points = line;
    for (const Vector3d& p : line)
        mesh.points.emplace_back(p + board.through);
    const int n = static_cast<int>(line.size());
    for (const auto& [a, b, c] : Ears(std::move(flat)).cut()) {
        mesh.triangles.push_back({a, b, c});
        mesh.triangles.push_back({a + n, c + n, b + n});
    }
    for (int i = 0; i < n; ++i) {
        const int next = (i + 1) % n;
        mesh.triangles.push_back({i, n + i, n + next});
        mesh.triangles.push_back({i, n + next, next});
    }
    return mesh;
}

} // namespace sheerlay::geometry

#include "geometry/mesh.hpp"

#include <Eigen/Geometry>

#include <cmath>
#include <map>
#include <utility>

namespace sheerlay::geometry {
namespace {

using Side = std::pair<int, int>;

/// How often each side is walked, one way less the other way; sides that balance are left out.
std::map<Side, int> openSides(const Mesh& mesh) {
    std::map<Side, int> walked;
    for (const auto& t : mesh.triangles)
        for (std::size_t i = 0; i < 3; ++i) {
            const int a = t[i];
            const int b = t[(i + 1) % 3];
            walked[{a, b}] += 1;
            walked[{b, a}] -= 1;
        }
    std::erase_if(walked, [](const auto& entry) { return entry.second <= 0; });
    return walked;
}

Eigen::Vector3d imageOf(const Eigen::Vector3d& p) {
    return {p.x(), -p.y(), p.z()};
}

} // namespace

double enclosedVolume(const Mesh& mesh) {
    if (mesh.points.empty())
        return 0.0;
    const Eigen::Vector3d origin = mesh.points.front(); // keeps the terms small
    double six = 0.0;
    const auto at = [&](int i) -> Eigen::Vector3d {
        return mesh.points[static_cast<std::size_t>(i)] - origin;
    };
    for (const auto& t : mesh.triangles)
        six += at(t[0]).dot(at(t[1]).cross(at(t[2])));
    return six / 6.0;
}

bool isClosed(const Mesh& mesh) {
    return !mesh.triangles.empty() && openSides(mesh).empty();
}

Mesh mirrored(const Mesh& mesh) {
    Mesh image = mesh;
    for (Eigen::Vector3d& p : image.points)
        p = imageOf(p);
    for (auto& t : image.triangles)
        std::swap(t[1], t[2]);
    return image;
}

Mesh together(Mesh one, const Mesh& other) {
    const int shift = static_cast<int>(one.points.size());
    one.points.insert(one.points.end(), other.points.begin(), other.points.end());
    for (const auto& t : other.triangles)
        one.triangles.push_back({t[0] + shift, t[1] + shift, t[2] + shift});
    return one;
}

Mesh closedAcrossCentre(const Mesh& half, double reach) {
    Mesh body = half;
    const std::map<Side, int> open = openSides(half);
    std::vector<bool> rim(half.points.size(), false);
    for (const auto& [side, times] : open)
        rim[static_cast<std::size_t>(side.first)] = rim[static_cast<std::size_t>(side.second)] = true;
    std::vector<int> image(half.points.size());
    for (std::size_t i = 0; i < half.points.size(); ++i) {
        if (rim[i] && std::abs(half.points[i].y()) <= reach) {
            body.points[i].y() = 0.0;
            image[i] = static_cast<int>(i);
        } else {
            image[i] = static_cast<int>(body.points.size());
            body.points.push_back(imageOf(half.points[i]));
        }
    }
    const auto other = [&](int i) { return image[static_cast<std::size_t>(i)]; };
    const auto add = [&](int a, int b, int c) {
        if (a != b && b != c && c != a)
            body.triangles.push_back({a, b, c});
    };
    for (const auto& t : half.triangles)
        add(other(t[0]), other(t[2]), other(t[1]));
    for (const auto& [side, times] : open)
        for (int i = 0; i < times; ++i) {
            const auto [a, b] = side; // what closes it walks it back
            add(b, a, other(a));
            add(b, other(a), other(b));
        }
    return body;
}

} // namespace sheerlay::geometry

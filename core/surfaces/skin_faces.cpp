#include "core/surfaces/skin_faces.hpp"

#include <Eigen/Geometry>

#include <algorithm>
#include <cmath>

namespace sheerlay::core {
namespace {

using Eigen::Vector3d;

constexpr double acrossShip = 0.8; // of the mean normal along x: a face that closes an end
constexpr double atEnd = 0.15;     // of the length, within which such a face lies
constexpr double level = 0.7;      // of the mean normal upward: a deck, not a side
constexpr double upperPart = 0.5;  // of the height there, above which a deck lies
constexpr double onCentre = 1e-3;  // of the breadth

/// Sums over one face's triangles, by area.
struct FaceSums {
    double area = 0.0;
    Vector3d normal = Vector3d::Zero(); ///< of absolute components
    double x = 0.0;
    double highBreadth = 0.0; ///< greatest distance from the centreplane
    double inUpperPart = 0.0; ///< of its area
};

/// Lowest and highest point of all faces over x.
class Heights {
public:
    Heights(const geometry::Mesh& mesh, double length) : m_length(std::max(length, 1e-9)) {
        for (const Vector3d& p : mesh.points) {
            auto& [low, high] = m_stretches[stretch(p.x())];
            low = std::min(low, p.z());
            high = std::max(high, p.z());
        }
    }
    [[nodiscard]] double part(const Vector3d& p) const {
        const auto& [low, high] = m_stretches[stretch(p.x())];
        return high > low ? (p.z() - low) / (high - low) : 0.0;
    }

private:
    [[nodiscard]] std::size_t stretch(double x) const {
        const double part = std::clamp(x / m_length, 0.0, 1.0);
        return std::min(static_cast<std::size_t>(part * static_cast<double>(m_stretches.size())),
                        m_stretches.size() - 1);
    }
    double m_length;
    std::vector<std::pair<double, double>> m_stretches =
        std::vector<std::pair<double, double>>(40, {1e300, -1e300});
};

} // namespace

std::vector<FaceRole> faceRoles(const geometry::GivenFaces& given) {
    double length = 0.0;
    double breadth = 0.0;
    for (const Vector3d& p : given.mesh.points) {
        length = std::max(length, p.x());
        breadth = std::max(breadth, std::abs(p.y()));
    }
    const Heights heights(given.mesh, length);
    std::vector<FaceSums> sums(given.faces.size());
    for (std::size_t k = 0; k < given.mesh.triangles.size(); ++k) {
        const auto at = [&](std::size_t i) -> const Vector3d& {
            return given.mesh.points[static_cast<std::size_t>(given.mesh.triangles[k][i])];
        };
        const Vector3d twice = (at(1) - at(0)).cross(at(2) - at(0));
        FaceSums& sum = sums[static_cast<std::size_t>(given.faceOf[k])];
        const double area = twice.norm() / 2;
        const Vector3d middle = (at(0) + at(1) + at(2)) / 3;
        sum.area += area;
        sum.normal += twice.cwiseAbs() / 2;
        sum.x += area * middle.x();
        for (std::size_t i = 0; i < 3; ++i)
            sum.highBreadth = std::max(sum.highBreadth, std::abs(at(i).y()));
        if (heights.part(middle) > upperPart)
            sum.inUpperPart += area;
    }
    std::vector<FaceRole> roles;
    for (const FaceSums& sum : sums) {
        if (sum.area <= 0.0) {
            roles.push_back(FaceRole::InCentreplane);
            continue;
        }
        const Vector3d normal = sum.normal / sum.area;
        const double x = sum.x / sum.area;
        const bool end = x < atEnd * length || x > (1 - atEnd) * length;
        roles.push_back(sum.highBreadth <= onCentre * breadth                    ? FaceRole::InCentreplane
                        : normal.x() > acrossShip && end                         ? FaceRole::Transom
                        : normal.z() > level && sum.inUpperPart > 0.9 * sum.area ? FaceRole::Deck
                                                                                 : FaceRole::Skin);
    }
    return roles;
}

std::string faceList(const std::vector<std::size_t>& faces) {
    std::string text = faces.size() == 1 ? "face " : "faces ";
    for (std::size_t i = 0; i < faces.size(); ++i)
        text += (i == 0 ? "" : i + 1 == faces.size() ? " and " : ", ") + std::to_string(faces[i] + 1);
    return text;
}

} // namespace sheerlay::core

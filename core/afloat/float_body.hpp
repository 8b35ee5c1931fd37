#pragma once

#include "core/hull/hull.hpp"
#include "core/hull/trimmed_surface.hpp"

#include <Eigen/Core>

#include <functional>
#include <utility>
#include <vector>

namespace sheerlay::core {

/// What a stretch of a section's line contributes to integrals over the section.
struct LineSums {
    double area = 0.0;         ///< integral of y dz, mm2
    double acrossMoment = 0.0; ///< integral of y^2 / 2 dz, mm3
    double heightMoment = 0.0; ///< integral of y z dz, mm3
    double skin = 0.0;         ///< mm of girth, each stretched by the surface's slant to the section's plane
};

/// One side of a section between two of its points: a cubic with the surface's slopes at both ends. Lengths
/// mm.
struct SectionPiece {
    Eigen::Vector2d from, to;              ///< (y, z), the first nearer the sheer
    Eigen::Vector2d leaving, arriving;     ///< derivatives at both ends, parameter 0 to 1
    double slantFrom = 1.0, slantTo = 1.0; ///< the stretch of LineSums::skin at both ends
    LineSums whole;                        ///< of all of it

    /// Sums between two parameters, exact for the cubic (skin to the accuracy of five Gauss points).
    [[nodiscard]] LineSums sums(double first, double last) const noexcept;
    [[nodiscard]] Eigen::Vector2d at(double t) const noexcept;
    [[nodiscard]] Eigen::Vector2d slope(double t) const noexcept;
};

/// The starboard half of one section, from the sheer to the keel.
struct FloatSection {
    double x = 0.0;      ///< mm from the bow
    double weight = 0.0; ///< mm, multiplier of the integral along x
    std::vector<SectionPiece> pieces;
};

/// A hull as water sees it, cut into sections and closed by a lid from sheer to sheer. Both sides alike.
class FloatBody {
public:
    using SectionAt = std::function<std::vector<SectionPoint>(double x)>;

    /// Sections stand closer toward the ends, as the cosine of equal angles.
    /// @param sectionAt  points with outward normals, sheer to keel, starboard; empty or one where there is
    /// none
    /// @param from, to   mm, ends of the hull along x
    /// @param sheer      mm, bow to stern, starboard: where water first comes in
    /// @param profile    mm, bow to stern: keel and stems
    /// @param intervals  along the length, even
    FloatBody(const SectionAt& sectionAt,
              double from,
              double to,
              std::vector<Eigen::Vector3d> sheer,
              std::vector<Eigen::Vector3d> profile,
              int intervals = 160);

    /// A flat transom that closes an end. @param edge  mm, where the planking meets it: starboard, sheer to
    /// keel
    void closeWith(std::vector<Eigen::Vector3d> edge) { m_transoms.push_back(std::move(edge)); }

    [[nodiscard]] const std::vector<FloatSection>& sections() const noexcept { return m_sections; }
    [[nodiscard]] const std::vector<Eigen::Vector3d>& sheer() const noexcept { return m_sheer; }
    [[nodiscard]] const std::vector<Eigen::Vector3d>& profile() const noexcept { return m_profile; }
    [[nodiscard]] const std::vector<std::vector<Eigen::Vector3d>>& transoms() const noexcept {
        return m_transoms;
    }

private:
    std::vector<FloatSection> m_sections;
    std::vector<Eigen::Vector3d> m_sheer, m_profile;
    std::vector<std::vector<Eigen::Vector3d>> m_transoms;
};

/// The body of a trimmed hull; give the outside of the planking.
/// @accuracy  tests/core/afloat/float_body_test.cpp
[[nodiscard]] FloatBody
floatBodyOf(const TrimmedSurface& outside, int intervals = 160, int pointsOfSection = 40);

} // namespace sheerlay::core

#include "core/hull/section_tape.hpp"

#include <algorithm>

namespace sheerlay::core {
namespace {

using Eigen::Vector3d;

constexpr int sectionPoints = 240; // a chord of 5 mm on a bilge of 150 mm radius is 0.0002 mm short

} // namespace

SectionTape::SectionTape(const TrimmedSurface& hull, double x)
    : m_x(x), m_section(sectionAt(hull, x, sectionPoints)) {
    for (std::size_t i = 0; i < m_section.size(); ++i)
        m_girth.push_back(i == 0 ? 0.0 : m_girth.back() + (m_section[i] - m_section[i - 1]).norm());
}

double SectionTape::whole() const noexcept {
    return m_girth.empty() ? 0.0 : m_girth.back();
}

SectionTape::Foot SectionTape::footOf(const Vector3d& point) const {
    Foot best;
    double nearest = 1e300;
    for (std::size_t i = 0; i + 1 < m_section.size(); ++i) {
        const Vector3d chord = m_section[i + 1] - m_section[i];
        const double length2 = chord.squaredNorm();
        const double part =
            length2 > 0 ? std::clamp((point - m_section[i]).dot(chord) / length2, 0.0, 1.0) : 0.0;
        const double distance = (m_section[i] + part * chord - point).squaredNorm();
        if (distance < nearest) {
            nearest = distance;
            best = {i, part};
        }
    }
    return best;
}

double SectionTape::leftFrom(const Vector3d& point) const {
    if (misses())
        return 0.0;
    const Foot foot = footOf(point);
    return m_girth.back() - m_girth[foot.cell] - foot.part * (m_girth[foot.cell + 1] - m_girth[foot.cell]);
}

Vector3d SectionTape::at(double left) const {
    const double girth = std::clamp(whole() - left, 0.0, whole());
    const auto after = std::ranges::lower_bound(m_girth, girth);
    const auto i = static_cast<std::size_t>(std::max<std::ptrdiff_t>(after - m_girth.begin(), 1));
    const double span = m_girth[i] - m_girth[i - 1];
    const double part = span > 0.0 ? (girth - m_girth[i - 1]) / span : 0.0;
    return m_section[i - 1] + part * (m_section[i] - m_section[i - 1]);
}

Vector3d SectionTape::directionAt(const Vector3d& point) const {
    if (misses())
        return Vector3d::Zero();
    const std::size_t cell = footOf(point).cell;
    return (m_section[cell + 1] - m_section[cell]).normalized();
}

} // namespace sheerlay::core

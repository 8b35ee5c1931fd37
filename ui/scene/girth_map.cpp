#include "ui/scene/girth_map.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace sheerlay::ui {
namespace {

constexpr double endZone = 400.0;   // mm; sections change fastest here
constexpr double fineStep = 12.5;   // mm
constexpr double coarseStep = 50.0; // mm

} // namespace

GirthMap::GirthMap(const SectionAt& sectionAt, double first, double last) {
    double x = first;
    while (x < last + 1e-9) {
        Section section;
        section.x = x;
        const std::vector<Eigen::Vector3d> points = sectionAt(x);
        for (auto p = points.rbegin(); p != points.rend(); ++p)
            section.points.emplace_back(std::abs(p->y()), p->z());
        section.girth.assign(section.points.size(), 0.0);
        for (std::size_t i = 1; i < section.points.size(); ++i)
            section.girth[i] = section.girth[i - 1] + (section.points[i] - section.points[i - 1]).norm();
        if (section.points.size() > 1)
            m_sections.push_back(std::move(section));
        if (x >= last)
            break;
        const bool nearEnd = x - first < endZone || last - x < endZone + coarseStep;
        x = std::min(last, x + (nearEnd ? fineStep : coarseStep));
    }
}

std::size_t GirthMap::sectionBefore(double x) const {
    const auto after = std::upper_bound(
        m_sections.begin(), m_sections.end(), x, [](double value, const Section& s) { return value < s.x; });
    const auto index = after - m_sections.begin();
    return static_cast<std::size_t>(
        std::clamp<std::ptrdiff_t>(index - 1, 0, static_cast<std::ptrdiff_t>(m_sections.size()) - 2));
}

double GirthMap::girthOn(const Section& section, const Eigen::Vector2d& point) {
    double best = std::numeric_limits<double>::max();
    double girth = 0.0;
    for (std::size_t i = 0; i + 1 < section.points.size(); ++i) {
        const Eigen::Vector2d chord = section.points[i + 1] - section.points[i];
        const double square = chord.squaredNorm();
        const double t =
            square > 0.0 ? std::clamp((point - section.points[i]).dot(chord) / square, 0.0, 1.0) : 0.0;
        const double distance = (section.points[i] + t * chord - point).squaredNorm();
        if (distance < best) {
            best = distance;
            girth = section.girth[i] + t * (section.girth[i + 1] - section.girth[i]);
        }
    }
    return girth;
}

Eigen::Vector2d GirthMap::place(const Eigen::Vector3d& point) const {
    const Eigen::Vector2d at{std::abs(point.y()), point.z()};
    double girth = 0.0;
    if (m_sections.size() == 1) {
        girth = girthOn(m_sections.front(), at);
    } else if (m_sections.size() > 1) {
        const std::size_t i = sectionBefore(point.x());
        const Section& a = m_sections[i];
        const Section& b = m_sections[i + 1];
        const double t = std::clamp((point.x() - a.x) / (b.x - a.x), 0.0, 1.0);
        girth = (1.0 - t) * girthOn(a, at) + t * girthOn(b, at);
    }
    return {point.x(), point.y() < 0.0 ? -girth : girth};
}

double GirthMap::halfGirth(double x) const {
    if (m_sections.empty())
        return 0.0;
    if (m_sections.size() == 1)
        return m_sections.front().girth.back();
    const std::size_t i = sectionBefore(x);
    const Section& a = m_sections[i];
    const Section& b = m_sections[i + 1];
    const double t = std::clamp((x - a.x) / (b.x - a.x), 0.0, 1.0);
    return (1.0 - t) * a.girth.back() + t * b.girth.back();
}

std::vector<Eigen::Vector3d> GirthMap::ring(double x, double outward) const {
    if (m_sections.size() < 2 || x < m_sections.front().x || x > m_sections.back().x)
        return {};
    const std::vector<Eigen::Vector2d>& points = m_sections[sectionBefore(x)].points;
    std::vector<Eigen::Vector3d> half; // keel to sheer
    for (std::size_t i = 0; i < points.size(); ++i) {
        const Eigen::Vector2d along = points[std::min(i + 1, points.size() - 1)] - points[i > 0 ? i - 1 : 0];
        const Eigen::Vector2d out =
            points[i] + outward * Eigen::Vector2d(along.y(), -along.x()).stableNormalized();
        half.emplace_back(x, out.x(), out.y());
    }
    std::vector<Eigen::Vector3d> ring(half.rbegin(), half.rend());
    for (const Eigen::Vector3d& p : half)
        ring.emplace_back(p.x(), -p.y(), p.z());
    return ring;
}

} // namespace sheerlay::ui

#include "core/surfaces/skin_table.hpp"

#include "core/units/number_text.hpp"
#include "geometry/mesh_sections.hpp"
#include "geometry/polyline.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace sheerlay::core {
namespace {

using Eigen::Vector3d;
using Line = std::vector<Vector3d>;

constexpr double stations = 50;        // about
constexpr int stretches = 30;          // of a section's girth
constexpr double shortest = 8.0;       // mm, of such a stretch
constexpr double profileEnd = 0.12;    // of the length: how far the stems reach at most
constexpr double profileStep = 0.0015; // of the length, between points of the profile
constexpr double perMm = 1000.0;       // last digits written
constexpr double insideEnd = 0.01;     // mm: a station at a transom stands this far inside
constexpr double thinnest = 0.1;       // mm; a keel's side nearer to the centreplane is on it

double rounded(double mm) {
    return std::round(mm * perMm) / perMm; // by division: 0.001 itself is no round number
}

/// Points at equal stretches of the line, ends included.
Line evenly(const Line& line, int count) {
    const double total = geometry::lengthOf(line);
    Line points{line.front()};
    double along = 0.0;
    for (std::size_t i = 1; i < line.size(); ++i) {
        const double step = (line[i] - line[i - 1]).norm();
        while (static_cast<int>(points.size()) < count && step > 0.0) {
            const double wanted = total * static_cast<double>(points.size()) / count;
            if (wanted > along + step)
                break;
            points.emplace_back(line[i - 1] + (wanted - along) / step * (line[i] - line[i - 1]));
        }
        along += step;
    }
    points.push_back(line.back());
    return points;
}

class Tabler {
public:
    Tabler(const HalfSkin& skin, Units units) : m_skin(skin), m_sections(skin.mesh), m_units(units) {
        m_foremost = m_sections.first();
        m_length = m_sections.last() - m_foremost;
    }

    Expected<HullTable, LengthError> table() {
        for (const double x : places()) {
            const auto lines = m_sections.at(x);
            if (auto problem = notOne(lines, x))
                return unexpected(std::move(*problem));
            if (lines.empty())
                continue;
            Line section = lines.front();
            if (section.front().z() < section.back().z())
                std::ranges::reverse(section);
            if (fromSheerToKeel(section))
                m_table.stations.push_back(station(x, section));
        }
        profile();
        for (const auto& [end, given] :
             {std::pair{End::Bow, &m_skin.bow}, std::pair{End::Stern, &m_skin.stern}})
            if (*given)
                m_table.transoms.push_back({end, rounded((*given)->xAtSheer), rounded((*given)->xAtKeel), 0});
        return std::move(m_table);
    }

private:
    /// Where stations stand: round figures, and more toward the ends, where sections change fastest.
    std::vector<double> places() const {
        constexpr std::array<double, 10> mm{25, 50, 75, 100, 125, 150, 200, 250, 300, 600};
        constexpr std::array<double, 8> inches{25.4, 50.8, 76.2, 101.6, 152.4, 203.2, 304.8, 609.6};
        const auto pick = [this](const auto& steps) {
            for (const double step : steps)
                if (step >= 0.9 * m_length / stations)
                    return step;
            return steps.back();
        };
        const double step = m_units == Units::Inches ? pick(inches) : pick(mm);
        const double from = m_skin.sheer.front().x();
        const double to = m_skin.sheer.back().x();
        std::vector<double> list;
        for (double x = std::ceil(from / step) * step; x < to; x += step)
            if (x - from > 0.3 * step && to - x > 0.3 * step)
                list.push_back(x);
        for (const double part : {0.3, 0.6}) {
            list.push_back(std::round(from + part * step));
            list.push_back(std::round(to - part * step));
        }
        if (m_skin.bow)
            list.push_back(std::max(m_skin.bow->xAtSheer, m_skin.bow->xAtKeel) + insideEnd);
        if (m_skin.stern)
            list.push_back(std::min(m_skin.stern->xAtSheer, m_skin.stern->xAtKeel) - insideEnd);
        std::ranges::sort(list);
        std::erase_if(list, [&](double x) { return x <= from || x >= to; });
        std::vector<double> apart;
        for (const double x : list)
            if (apart.empty() || x - apart.back() > 1.0)
                apart.push_back(x);
        return apart;
    }

    static std::optional<LengthError> notOne(const std::vector<Line>& lines, double x) {
        if (lines.size() < 2)
            return std::nullopt;
        double nearest = 1e300;
        Vector3d where = Vector3d::Zero();
        for (const Vector3d& p : {lines[0].front(), lines[0].back()})
            for (const Vector3d& q : {lines[1].front(), lines[1].back()})
                if ((p - q).norm() < nearest) {
                    nearest = (p - q).norm();
                    where = (p + q) / 2;
                }
        return LengthError{"a section of " + std::to_string(lines.size()) + " lines " + numberText(x, 0) +
                               " mm from the bow, " + numberText(nearest, 2) + " mm apart at height " +
                               numberText(where.z(), 0) + " mm",
                           "one line from sheer to keel: a skin without gaps, and nothing else; --take "
                           "\"faces = 1, 3\" names its faces"};
    }

    [[nodiscard]] bool fromSheerToKeel(const Line& section) const {
        constexpr double near = 1e-3; // mm
        const auto on = [](const Line& edge, const Vector3d& p) {
            return geometry::distanceTo(edge, p) < near;
        };
        return section.size() > 3 && on(m_skin.sheer, section.front()) && on(m_skin.lower, section.back());
    }

    static TablePoint point(PointKind kind, const Vector3d& p) {
        TablePoint made;
        made.kind = kind;
        made.halfBreadth = rounded(std::max(p.y(), 0.0));
        if (kind == PointKind::Keel && made.halfBreadth < thinnest)
            made.halfBreadth = 0.0;
        made.height = rounded(p.z());
        return made;
    }

    static Station station(double x, const Line& section) {
        const int count = std::clamp(static_cast<int>(geometry::lengthOf(section) / shortest), 4, stretches);
        const Line points = evenly(section, count);
        Station made;
        made.x = rounded(x);
        made.sheer = point(PointKind::Sheer, points.front());
        made.keel = point(PointKind::Keel, points.back());
        for (std::size_t i = 1; i + 1 < points.size(); ++i)
            made.points.push_back(point(PointKind::Point, points[i]));
        return made;
    }

    /// Points along the stems, where sections say little of the profile.
    void profile() {
        const auto wanted = [this](const Vector3d& p) {
            return (!m_skin.bow && p.x() < m_foremost + profileEnd * m_length) ||
                   (!m_skin.stern && p.x() > m_foremost + (1 - profileEnd) * m_length);
        };
        const Line& lower = m_skin.lower;
        double along = 1e300;
        for (std::size_t i = 0; i < lower.size(); ++i) {
            if (i > 0)
                along += (lower[i] - lower[i - 1]).norm();
            const bool head = i == 0 || i + 1 == lower.size();
            if (!wanted(lower[i]) || (!head && along < profileStep * m_length))
                continue;
            along = 0.0;
            ProfilePoint p{rounded(lower[i].x()), rounded(lower[i].z()), std::nullopt, 0};
            if (lower[i].y() > thinnest)
                p.halfSiding = rounded(lower[i].y());
            m_table.profile.push_back(p);
        }
        if (m_table.profile.size() < 2)
            m_table.profile.clear();
    }

    const HalfSkin& m_skin;
    geometry::MeshSections m_sections;
    Units m_units;
    double m_foremost = 0.0, m_length = 0.0;
    HullTable m_table;
};

} // namespace

Expected<HullTable, LengthError> skinTable(const HalfSkin& skin, Units units) {
    return Tabler(skin, units).table();
}

} // namespace sheerlay::core

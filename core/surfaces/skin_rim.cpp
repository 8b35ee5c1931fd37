#include "core/surfaces/skin_rim.hpp"

#include "core/units/number_text.hpp"

#include <Eigen/Geometry>

#include <algorithm>
#include <cmath>

namespace sheerlay::core {
namespace {

using Eigen::Vector3d;
using Line = std::vector<Vector3d>;

constexpr double onCentre = 1e-5;   // of the length
constexpr double widestKeel = 0.25; // of the greatest half-breadth
constexpr double endPart = 0.15;    // of the length, that a transom stands in
constexpr double flatWithin = 3.0;  // mm, that a transom's edge may leave its plane
constexpr double notch = 5.0;       // mm, that the sheer may rise or fall at once
constexpr double corner = 0.35;     // rad, that the edge turns from transom to sheer at least
constexpr double window = 0.004;    // of the length, over which a turn is looked at

Unexpected<LengthError> refuse(std::string found, std::string would) {
    return {LengthError{std::move(found), std::move(would)}};
}

double heightAt(const Line& line, double x) {
    const auto nearest =
        std::ranges::min_element(line, {}, [x](const Vector3d& p) { return std::abs(p.x() - x); });
    return nearest->z();
}

/// Point of the line where it first comes `reach` away from point i, going one way.
const Vector3d& awayFrom(const Line& line, std::size_t i, double reach, bool forward) {
    std::size_t k = i;
    while ((forward ? k + 1 < line.size() : k > 0) && (line[k] - line[i]).norm() < reach)
        k = forward ? k + 1 : k - 1;
    return line[k];
}

class Splitter {
public:
    Splitter(const Line& rim, double length) : m_loop(rim.begin(), rim.end() - 1), m_length(length) {}

    Expected<SkinRim, LengthError> split() {
        for (const Vector3d& p : m_loop)
            m_breadth = std::max(m_breadth, p.y());
        if (auto problem = findLower())
            return unexpected(std::move(*problem));
        for (const bool bow : {true, false})
            if (auto problem = transom(bow))
                return unexpected(std::move(*problem));
        if (auto problem = checkSheer())
            return unexpected(std::move(*problem));
        return std::move(m_parts);
    }

private:
    [[nodiscard]] const Vector3d& at(std::size_t i) const { return m_loop[i % m_loop.size()]; }

    /// The run of the loop near the centreplane that holds the lower of the two strands amidships; the rest
    /// is the upper edge. Both bow to stern.
    std::optional<LengthError> findLower() {
        const std::size_t n = m_loop.size();
        const auto amidships = [this](const Vector3d& p) {
            return p.x() > 0.3 * m_length && p.x() < 0.7 * m_length;
        };
        const auto lowest = std::ranges::min_element(
            m_loop, {}, [&](const Vector3d& p) { return amidships(p) ? p.z() : 1e300; });
        if (!amidships(*lowest))
            return LengthError{"a skin without an edge along the keel amidships",
                               "a half hull down to the centreplane, or a whole one"};
        const auto start = static_cast<std::size_t>(lowest - m_loop.begin());
        double siding = 0.0;
        for (const int way : {1, -1})
            for (std::size_t k = 0; k < n; ++k) {
                const Vector3d& p = at(start + (way > 0 ? k : n - k));
                if (!amidships(p))
                    break;
                siding = std::max(siding, p.y());
            }
        if (siding > widestKeel * m_breadth)
            return LengthError{
                "a lower edge up to " + numberText(siding, 0) + " mm from the centreplane",
                "a skin that reaches the keel; or --take \"centre = …\", where the file has its centreplane"};
        const double limit = 1.05 * siding + onCentre * m_length;
        std::size_t before = 0;
        while (before < n && at(start + n - before - 1).y() <= limit)
            ++before;
        std::size_t after = 0;
        while (after < n && at(start + after + 1).y() <= limit)
            ++after;
        if (before + after + 2 > n)
            return LengthError{"a skin whose whole edge lies on the centreplane, closed above",
                               "a hull open at the sheer, or its deck as a face of its own"};
        for (std::size_t k = start + n - before; k <= start + n + after; ++k)
            m_parts.lower.push_back(at(k));
        for (std::size_t k = start + n + after; k <= start + 2 * n - before; ++k)
            m_upper.push_back(at(k));
        if (m_parts.lower.front().x() > m_parts.lower.back().x())
            std::ranges::reverse(m_parts.lower);
        if (m_upper.front().x() > m_upper.back().x())
            std::ranges::reverse(m_upper);
        return std::nullopt;
    }

    /// Where the upper edge begins low, at the keel, there is a transom: cuts its edge off and puts a plane
    /// through it.
    std::optional<LengthError> transom(bool bow) {
        Line path = m_upper;
        if (!bow)
            std::ranges::reverse(path);
        const Vector3d& foot = path.front();
        const double x = bow ? endPart * m_length : (1 - endPart) * m_length;
        const double sheer = heightAt(Line(path.begin() + 1, path.end()), x);
        const double keel = heightAt(m_parts.lower, x);
        if (foot.z() > sheer - 0.3 * (sheer - keel))
            return std::nullopt;
        const std::string name = bow ? "bow" : "stern";
        std::size_t turn = 0;
        double most = corner;
        for (std::size_t i = 1; i + 1 < path.size() && std::abs(path[i].x() - foot.x()) < endPart * m_length;
             ++i) {
            const Vector3d in = (path[i] - awayFrom(path, i, window * m_length, false)).normalized();
            const Vector3d out = (awayFrom(path, i, window * m_length, true) - path[i]).normalized();
            const double angle = std::acos(std::clamp(in.dot(out), -1.0, 1.0));
            // the edge turns at the keel of a flat bottom too; the sheer's corner is the last one
            if (angle > most || (angle > 0.9 * most && path[i].z() > path[turn].z())) {
                most = std::max(most, angle);
                turn = i;
            }
        }
        if (turn == 0)
            return LengthError{"a " + name + " that is open, with no corner where its edge meets the sheer",
                               "a hull that ends on its stem or on a flat transom"};
        // x = a + b z through the points of its edge
        double n = 0, sz = 0, sx = 0, szz = 0, szx = 0;
        for (std::size_t i = 0; i <= turn; ++i) {
            n += 1;
            sz += path[i].z();
            sx += path[i].x();
            szz += path[i].z() * path[i].z();
            szx += path[i].z() * path[i].x();
        }
        const double b = (n * szx - sz * sx) / std::max(n * szz - sz * sz, 1e-9);
        const double a = (sx - b * sz) / n;
        double off = 0.0;
        for (std::size_t i = 0; i <= turn; ++i)
            off = std::max(off, std::abs(a + b * path[i].z() - path[i].x()));
        if (off > flatWithin)
            return LengthError{"a " + name + " transom whose edge leaves a plane by " + numberText(off, 1) +
                                   " mm",
                               "a flat transom; one that is round can't be planned yet"};
        (bow ? m_parts.bow : m_parts.stern) = GivenTransom{a + b * path[turn].z(), a + b * foot.z()};
        m_parts.said.push_back(
            "The " + name + " ends on a transom, x = " + numberText(a + b * path[turn].z(), 1) +
            " mm at the sheer and " + numberText(a + b * foot.z(), 1) +
            " mm at the keel; its edge lies within " + numberText(off, 2) + " mm of that plane.");
        const auto cut = static_cast<std::ptrdiff_t>(turn);
        if (bow)
            m_upper.erase(m_upper.begin(), m_upper.begin() + cut);
        else
            m_upper.erase(m_upper.end() - cut, m_upper.end());
        return std::nullopt;
    }

    /// The sheer runs aft without turning back, and nothing is cut into it.
    std::optional<LengthError> checkSheer() {
        m_parts.sheer = m_upper;
        const Line& sheer = m_parts.sheer;
        double furthest = sheer.front().x();
        std::size_t fallen = 0; // where a steep stretch began
        for (std::size_t i = 1; i < sheer.size(); ++i) {
            furthest = std::max(furthest, sheer[i].x());
            const Vector3d step = sheer[i] - sheer[i - 1];
            if (std::abs(step.z()) <= 3 * std::abs(step.x()))
                fallen = i;
            const double drop = std::abs(sheer[i].z() - sheer[fallen].z());
            const double back = furthest - sheer[i].x();
            if (drop > notch || back > notch)
                return LengthError{
                    "an upper edge that " +
                        (drop > notch ? "rises or falls " + numberText(drop, 1)
                                      : "turns back " + numberText(back, 1)) +
                        " mm at once, " + numberText(sheer[i].x(), 0) + " mm from the bow at height " +
                        numberText(sheer[i].z(), 0) + " mm",
                    "a smooth sheer; a gap between two faces opens there, or a piece of the skin is missing"};
        }
        return std::nullopt;
    }

    Line m_loop; // without its repeated last point
    double m_length;
    double m_breadth = 0.0;
    Line m_upper;
    SkinRim m_parts;
};

} // namespace

Expected<SkinRim, LengthError> splitRim(const std::vector<Eigen::Vector3d>& rim, double length) {
    if (rim.size() < 5 || rim.front() != rim.back())
        return refuse("a skin whose edge does not run round it", "faces that meet along their whole edges");
    return Splitter(rim, length).split();
}

} // namespace sheerlay::core

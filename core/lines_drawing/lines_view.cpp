#include "core/lines_drawing/lines_view.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace sheerlay::core {
namespace {

constexpr double plateSize = 2.6; // mm, size of type on a line
constexpr double air = 0.5;       // mm about a label
constexpr double dot = 0.35;      // mm, half the end of a leader

} // namespace

void LinesPen::line(const PaperLine& points, LineKind kind, Colour colour) {
    if (points.size() < 2)
        return;
    Path path;
    path.points = points;
    path.line = kind;
    path.colour = colour;
    m_items->emplace_back(std::move(path));
}

bool LinesPen::taken(const Box& box) const {
    return std::any_of(m_taken.begin(), m_taken.end(), [&](const Box& b) { return b.overlaps(box); });
}

bool LinesPen::crossesBold(const PaperLine& own, const Box& box) const {
    return std::any_of(m_items->begin(), m_items->end(), [&](const Item& item) {
        const auto* path = std::get_if<Path>(&item);
        return path != nullptr && path->line == LineKind::Visible && path->points != own &&
               enters(*path, box);
    });
}

bool LinesPen::label(const Eigen::Vector2d& at, const std::string& text, const Lettering& lettering) {
    const Text item = makeText(at, text, lettering);
    const Box ink = inkBox(item);
    const Box box{ink.left - air, ink.top - air, ink.right + air, ink.bottom + air};
    if (taken(box) || crossesBold({}, box))
        return false;
    m_taken.push_back(box);
    m_items->emplace_back(item);
    return true;
}

bool LinesPen::plate(const Eigen::Vector2d& middle,
                     const std::string& text,
                     Colour colour,
                     const PaperLine& own) {
    const Text item = makeText(middle + Eigen::Vector2d(0, capHeight * plateSize / 2),
                               text,
                               {.size = plateSize, .anchor = Anchor::Middle, .colour = colour});
    const Box ink = inkBox(item);
    const Box plate{ink.left - air, ink.top - air, ink.right + air, ink.bottom + air};
    if (taken(plate) || crossesBold(own, plate))
        return false;
    m_taken.push_back(plate);
    m_items->emplace_back(makeBox(plate, LineKind::None, colours::white));
    m_items->emplace_back(item);
    return true;
}

void LinesPen::labelOn(const PaperLine& points, const std::string& text, double wanted, Colour colour) {
    if (points.size() < 2)
        return;
    for (const double rise : {0.0, 5.5, 9.0, 12.5}) // beside it only where there is no room along all of it
        for (const double off : {0.0, 0.05, -0.05, 0.1, -0.1, 0.16, -0.16, 0.24, -0.24}) {
            const double part = wanted + off;
            if (part < 0.02 || part > 0.98)
                continue;
            const auto i = static_cast<std::size_t>(part * static_cast<double>(points.size() - 1));
            if (!plate(points[i] - Eigen::Vector2d(0, rise), text, colour, points))
                continue;
            if (rise > 0.0)
                lead(points[i], rise - plateSize / 2, colour);
            return;
        }
}

void LinesPen::lead(const Eigen::Vector2d& to, double length, Colour colour) {
    m_items->emplace_back(makeLine(to - Eigen::Vector2d(0, length), to, LineKind::Thin, colour));
    m_items->emplace_back(
        makeBox({to.x() - dot, to.y() - dot, to.x() + dot, to.y() + dot}, LineKind::None, colour));
}

} // namespace sheerlay::core

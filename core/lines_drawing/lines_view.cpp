#include "core/lines_drawing/lines_view.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace sheerlay::core {
namespace {

constexpr double plateSize = 2.6; // mm, size of type on a line
constexpr double air = 0.5;       // mm about a label

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

bool LinesPen::label(const Eigen::Vector2d& at, const std::string& text, const Lettering& lettering) {
    const Text item = makeText(at, text, lettering);
    Box box = inkBox(item);
    box = {box.left - air, box.top - air, box.right + air, box.bottom + air};
    if (taken(box))
        return false;
    m_taken.push_back(box);
    m_items->emplace_back(item);
    return true;
}

void LinesPen::labelOn(const PaperLine& points, const std::string& text, double wanted, Colour colour) {
    if (points.size() < 2)
        return;
    const double half = capHeight * plateSize / 2;
    for (const double off : {0.0, 0.05, -0.05, 0.1, -0.1, 0.16, -0.16, 0.24, -0.24}) {
        const double part = wanted + off;
        if (part < 0.02 || part > 0.98)
            continue;
        const auto i = static_cast<std::size_t>(part * static_cast<double>(points.size() - 1));
        const Text item = makeText(points[i] + Eigen::Vector2d(0, half),
                                   text,
                                   {.size = plateSize, .anchor = Anchor::Middle, .colour = colour});
        const Box ink = inkBox(item);
        const Box plate{ink.left - air, ink.top - air, ink.right + air, ink.bottom + air};
        if (taken(plate))
            continue;
        m_taken.push_back(plate);
        m_items->emplace_back(makeBox(plate, LineKind::None, colours::white));
        m_items->emplace_back(item);
        return;
    }
}

} // namespace sheerlay::core

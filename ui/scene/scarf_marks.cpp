#include "ui/scene/scarf_marks.hpp"

#include "geometry/polyline.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::ui {
namespace {

/// Place of a strip's middle so far from its bow end.
Eigen::Vector3d onMiddle(const core::Strip& strip, double along) {
    const auto after = std::ranges::lower_bound(strip.samples, along, {}, &core::StripSample::s);
    const auto last = static_cast<std::ptrdiff_t>(strip.samples.size()) - 1;
    const auto i = static_cast<std::size_t>(
        std::clamp<std::ptrdiff_t>(after - strip.samples.begin(), 1, std::max<std::ptrdiff_t>(last, 1)));
    const double span = strip.samples[i].s - strip.samples[i - 1].s;
    const double part = span > 0.0 ? std::clamp((along - strip.samples[i - 1].s) / span, 0.0, 1.0) : 0.0;
    return strip.middle[i - 1] + part * (strip.middle[i] - strip.middle[i - 1]);
}

} // namespace

std::vector<ScarfMark> scarfMarks(const core::Plan& plan, const core::StockPlan& stock, const GirthMap& map) {
    std::vector<ScarfMark> marks;
    for (std::size_t i = 0; i < plan.strips.size(); ++i) {
        const core::Strip& strip = plan.strips[i];
        const auto made = std::ranges::find(stock.strips, strip.id, &core::StockStrip::strip);
        if (made == stock.strips.end() || strip.samples.size() < 2)
            continue;
        const auto edge = [&](const std::vector<Eigen::Vector3d>& line, double along) {
            Eigen::Vector2d at = map.place(geometry::nearestOn(line, onMiddle(strip, along)));
            if (strip.side == core::Side::Port)
                at.y() = -std::abs(at.y()); // on the centreplane there is no sign
            return at;
        };
        for (const core::StripJoint& joint : made->joints)
            marks.push_back({i,
                             edge(strip.upperEdge, joint.along - 0.5 * stock.scarf),
                             edge(strip.lowerEdge, joint.along + 0.5 * stock.scarf),
                             joint.along,
                             joint.x});
    }
    return marks;
}

} // namespace sheerlay::ui

#include "core/fitout/facets.hpp"

#include "core/fitout/hull_faces.hpp"
#include "core/units/both_units.hpp"
#include "core/words/say.hpp"
#include "geometry/surface_frame.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {

namespace {

constexpr double muchOfIt = 0.15; // of the thickness, planed off; judged

} // namespace

Fairing fairing(const Project& project, const LoftedHull& hull, const Plan& plan) {
    Fairing result;
    for (const Strip& strip : plan.strips) {
        if (strip.side == Side::Port || strip.middle.size() != strip.samples.size() ||
            strip.middle.size() < 2)
            continue;
        Facet worst;
        worst.strip = strip.id;
        std::optional<Eigen::Vector2d> near;
        for (std::size_t i = 0; i < strip.middle.size(); ++i) {
            const Eigen::Vector3d& at = strip.middle[i];
            if (!near) {
                const auto found = acrossAt(hull.laid, at.x(), at.z());
                near = found ? found->uv : Eigen::Vector2d(at.x(), 0.5 * hull.laid.halfGirthMax);
            }
            const FacePoint foot = nearestOn(hull.laid, at, *near);
            near = foot.uv;
            const geometry::SurfaceJet jet = hull.laid.surface.jet(foot.uv.x(), foot.uv.y());
            const Eigen::Vector3d run =
                strip.middle[std::min(i + 1, strip.middle.size() - 1)] - strip.middle[i == 0 ? 0 : i - 1];
            const geometry::Frame frame = geometry::frameAlong(jet, run);
            const double across = geometry::stripShape(jet, geometry::frameAlong(jet, frame.across)).bend;
            const double width = strip.samples[i].width;
            const double height = width * width * std::abs(across) / 8;
            if (height > worst.height) {
                worst.height = height;
                worst.across = across;
                worst.width = width;
                worst.x = at.x();
            }
        }
        worst.left = project.strips.thickness - worst.height;
        result.facets.push_back(std::move(worst));
    }
    std::stable_sort(result.facets.begin(), result.facets.end(), [](const Facet& a, const Facet& b) {
        return a.height > b.height;
    });
    if (!result.facets.empty() && result.facets.front().height > muchOfIt * project.strips.thickness) {
        const Facet& f = result.facets.front();
        result.findings.push_back({Level::Note,
                                   "facet-deep",
                                   f.strip,
                                   f.x,
                                   say("Planing the facets fair takes {} here and leaves {} of the planking; "
                                       "narrower strips round the bilge would leave more.",
                                       bothUnitsFine(f.height),
                                       bothUnitsFine(f.left))});
    }
    return result;
}

} // namespace sheerlay::core

#include "core/moulds/mould_set.hpp"

#include "core/hull/station_names.hpp"
#include "core/moulds/mould_outline.hpp"
#include "core/moulds/stem_form.hpp"
#include "core/moulds/transom_form.hpp"
#include "core/units/length.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace sheerlay::core {

namespace {

constexpr double samePlace = 0.01; // mm
constexpr double leastBay = 1.0;   // mm inside the ends where a mould at a multiple of the spacing may stand

struct Named {
    std::string name;
    double x = 0.0; // mm from the bow
};

std::vector<Named> placesOf(const Project& project, const LoftedHull& hull) {
    const std::vector<std::string> names = stationNames(project, hull);
    const auto nameAt = [&](double x, std::size_t number) {
        for (std::size_t i = 0; i < names.size(); ++i)
            if (std::abs(hull.stationX[i] - x) < samePlace)
                return names[i];
        return "mould " + std::to_string(number);
    };
    std::vector<double> at = hull.stationX;
    if (project.moulds.spacing) {
        at.clear();
        const double step = *project.moulds.spacing;
        for (int i = 1; i * step < hull.moulds.length - leastBay; ++i)
            at.push_back(i * step);
    } else if (!project.moulds.stations.empty()) {
        at.clear();
        for (const double x : project.moulds.stations)
            at.push_back(x + hull.xShift);
    }
    std::vector<Named> places;
    for (std::size_t i = 0; i < at.size(); ++i)
        places.push_back({nameAt(at[i], i + 1), at[i]});
    return places;
}

double highestSheer(const LoftedHull& hull) {
    double highest = hull.moulds.sheer.front().z();
    for (const auto* line : {&hull.moulds.sheer, &hull.moulds.profile})
        for (const Eigen::Vector3d& p : *line)
            highest = std::max(highest, p.z());
    return highest;
}

/// Which mould each stem form stands against.
std::optional<std::size_t> mouldFrom(const std::vector<Mould>& moulds, double reach, End end) {
    std::optional<std::size_t> found;
    for (std::size_t i = 0; i < moulds.size(); ++i) {
        const Mould& m = moulds[i];
        if (end == End::Bow && std::min(m.x, m.farFace()) >= reach)
            return i;
        if (end == End::Stern && std::max(m.x, m.farFace()) <= reach)
            found = i;
    }
    return found;
}

} // namespace

Expected<MouldSet, std::string> mouldsOf(const Project& project, const LoftedHull& hull) {
    MouldSet set;
    const double foot = strongbackTop(project, highestSheer(hull));
    const double widestAt = hull.moulds.halfGirthMaxX;
    for (const Named& place : placesOf(project, hull)) {
        auto mould = mouldOutline(project, hull, {place.x, place.x <= widestAt, foot, 0.0});
        if (!mould) {
            set.leftOut.push_back(
                say("No mould stands at {}: there the hull is too small for one, or ends before it.",
                    place.name));
            continue;
        }
        mould->name = place.name;
        set.moulds.push_back(std::move(*mould));
    }
    if (set.moulds.empty())
        return unexpected(std::string("no mould stands inside the hull; stations between bow and stern under "
                                      "[moulds], or a closer spacing, would do"));

    std::vector<Mould> whole = set.moulds;
    std::vector<bool> gone(whole.size(), false);
    for (const End end : {End::Bow, End::Stern}) {
        const auto reach = stemReach(hull, end);
        if (!reach)
            continue;
        const auto against = mouldFrom(whole, *reach, end);
        if (!against)
            continue;
        auto form = stemForm(project, hull, end, whole[*against]);
        if (!form)
            continue;
        set.stemForms.push_back(std::move(*form));
        const std::size_t from = end == End::Bow ? 0 : *against + 1;
        const std::size_t to = end == End::Bow ? *against : whole.size();
        for (std::size_t i = from; i < to; ++i) {
            const std::string name = whole[i].name;
            auto halves = mouldOutline(
                project, hull, {whole[i].x, whole[i].forward, foot, project.moulds.thickness / 2});
            gone[i] = !halves.has_value();
            if (!halves) {
                set.leftOut.push_back(
                    say("No mould stands at {}: the stem form is nearly as wide as the hull there.", name));
                continue;
            }
            whole[i] = std::move(*halves);
            whole[i].name = name;
        }
    }
    set.moulds.clear();
    for (std::size_t i = 0; i < whole.size(); ++i)
        if (!gone[i])
            set.moulds.push_back(std::move(whole[i]));
    if (set.moulds.empty())
        return unexpected(
            std::string("the stem forms leave no room for a mould; a thinner board under [moulds] would do"));

    for (const End end : {End::Bow, End::Stern})
        if (auto form = transomForm(project, hull, end))
            set.transoms.push_back(std::move(*form));

    double first = hull.moulds.profile.front().x();
    double last = hull.moulds.profile.back().x();
    for (const StemForm& form : set.stemForms)
        for (const Eigen::Vector2d& p : form.outline) {
            first = std::min(first, p.x());
            last = std::max(last, p.x());
        }
    set.strongback = planStrongback(project, set.moulds, first, last);
    return set;
}

} // namespace sheerlay::core

#include "core/weights/weights.hpp"

#include "core/project/wood.hpp"
#include "core/stock/row_woods.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace sheerlay::core {

namespace {

using Eigen::Vector3d;

/// NIOSH's load constant, an ideal two-handed lift: 51 lb (23 kg). NIOSH publication 94-110 (rev. 9/2021).
constexpr double niosh = 23.0;

} // namespace

std::vector<PlankingPiece> plankingPieces(const Project& project, const Plan& plan) {
    std::vector<PlankingPiece> pieces;
    const auto woods = rowWoods(project, plan);
    for (const Strip& strip : plan.strips) {
        const Wood* wood = findWood(woods.at(strip.row));
        if (wood == nullptr)
            continue;
        const double perArea = project.strips.thickness * wood->density * 1e-9; // kg/mm2
        for (std::size_t i = 1; i < strip.samples.size() && i < strip.middle.size(); ++i) {
            const StripSample &a = strip.samples[i - 1], &b = strip.samples[i];
            pieces.push_back({0.5 * (a.width + b.width) * (b.s - a.s) * perArea,
                              0.5 * (strip.middle[i - 1] + strip.middle[i])});
        }
    }
    return pieces;
}

WeightItem plankingWeight(const Project& project, const Plan& plan) {
    WeightItem item{say("planking"), 0.0, 0.0, Vector3d::Zero()};
    for (const PlankingPiece& piece : plankingPieces(project, plan)) {
        item.mass += piece.mass;
        item.centre += piece.mass * piece.centre;
    }
    if (item.mass > 0.0)
        item.centre /= item.mass;
    item.plusMinus = woodSpread * item.mass;
    return item;
}

WeightItem placedItem(const PlacedWeight& placed, const LoftedHull& hull) {
    return {placed.name,
            placed.mass,
            givenSpread * placed.mass,
            Vector3d(placed.x + hull.xShift, placed.y, placed.height)};
}

WeightSheet sumWeights(std::vector<WeightItem> items, std::optional<double> weighed) {
    WeightSheet sheet;
    sheet.items = std::move(items);
    Vector3d moment = Vector3d::Zero();
    double squares = 0.0;
    for (const WeightItem& item : sheet.items) {
        sheet.mass += item.mass;
        moment += item.mass * item.centre;
        squares += item.plusMinus * item.plusMinus;
    }
    if (sheet.mass > 0.0)
        sheet.centre = moment / sheet.mass;
    sheet.plusMinus = std::sqrt(squares);
    if (weighed) {
        sheet.weighed = true;
        sheet.mass = *weighed;
        sheet.plusMinus = 0.0;
    }
    if (sheet.mass > niosh)
        sheet.findings.push_back(
            {Level::Note,
             "two-to-carry",
             std::nullopt,
             std::nullopt,
             say("She weighs more than 23 kg (51 lb), NIOSH's limit for the easiest two-handed lift; a hull "
                 "on a shoulder is not one, so carry her by two.")});
    return sheet;
}

WeightSheet weighBoat(const Project& project,
                      const LoftedHull& hull,
                      const Plan& plan,
                      const std::optional<CoveringPlan>& covering,
                      const std::vector<WeightItem>& more) {
    std::vector<WeightItem> items{plankingWeight(project, plan)};
    if (covering)
        for (const FaceCovering& f : covering->faces) {
            items.push_back({say("cloth {}", f.name), f.glassMass, 0.05 * f.glassMass, f.face.centre});
            items.push_back({say("resin {}", f.name), f.resinMass, resinSpread * f.resinMass, f.face.centre});
            if (f.varnishMass > 0.0)
                items.push_back(
                    {say("varnish {}", f.name), f.varnishMass, resinSpread * f.varnishMass, f.face.centre});
        }
    items.insert(items.end(), more.begin(), more.end());
    if (project.afloat)
        for (const PlacedWeight& part : project.afloat->parts)
            items.push_back(placedItem(part, hull));
    WeightSheet sheet =
        sumWeights(std::move(items), project.afloat ? project.afloat->boatMass : std::nullopt);
    const auto ofHull = [](const FaceCovering& f) { return !f.bulkheads; };
    if ((!covering || std::ranges::none_of(covering->faces, ofHull)) && !sheet.weighed)
        sheet.findings.push_back({Level::Note,
                                  "weighed-without-cloth",
                                  std::nullopt,
                                  std::nullopt,
                                  say("Her weight leaves out cloth, resin and varnish, which the file does "
                                      "not describe; a table [covering] would do.")});
    return sheet;
}

} // namespace sheerlay::core

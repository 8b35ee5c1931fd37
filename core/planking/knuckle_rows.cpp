#include "core/planking/knuckle_rows.hpp"

#include "core/hull/knuckle.hpp"
#include "core/hull/station_names.hpp"
#include "core/units/both_units.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sheerlay::core {
namespace {

std::string degrees(double rad) {
    return std::to_string(std::lround(rad * 180 / std::numbers::pi));
}

/// Sides that fold back over the bottom are no hull: one of the knuckle's numbers is wrong, and no row is
/// laid on such a surface in any time.
std::optional<std::string> foldFault(const std::vector<KnucklePlace>& line) {
    constexpr double hollow = -45 * std::numbers::pi / 180;
    constexpr double sharp = 135 * std::numbers::pi / 180;
    const auto worse = [](const KnucklePlace& a, const KnucklePlace& b) {
        return std::abs(a.turn - std::numbers::pi / 4) < std::abs(b.turn - std::numbers::pi / 4);
    };
    const KnucklePlace& worst = *std::max_element(line.begin(), line.end(), worse);
    if (worst.turn > hollow && worst.turn < sharp)
        return std::nullopt;
    return "at x " + bothUnits(worst.p.x()) + " sides and bottom turn by " + degrees(worst.turn) +
           " degrees at the knuckle, which folds the hull over; look at the knuckle's numbers at the "
           "stations near there, and at what check finds of them";
}

} // namespace

std::optional<std::string> knuckleFault(const Project& project, const LoftedHull& hull) {
    const Planking& planking = project.planking;
    const bool fromKnuckle = planking.start.kind == StartLine::Kind::Knuckle;
    if (!hull.laid.surface.crease())
        return fromKnuckle
                   ? std::optional<std::string>("the start line is the knuckle, but the hull has none")
                   : std::nullopt;
    const std::vector<KnucklePlace> line = knuckleLine(hull.laid);
    if (line.empty())
        return "the knuckle does not lie between sheer and keel amidships";
    if (auto fold = foldFault(line))
        return fold;
    if (!fromKnuckle)
        return "the hull has a knuckle, and rows from any other start would have to be bent sharply over it; "
               "give planking.start = { line = \"knuckle\" }";
    if (!planking.accents.empty())
        return "accent rows can't be placed on a hull with a knuckle: rows start at the knuckle, which stays "
               "where it is; leave planking.accents out";
    if (planking.closing == ClosingMethod::SplitBottom)
        return "the bottom of a hull with a knuckle is planked by itself already, from the knuckle in; for "
               "planking.closing give \"both-sides\", \"run-over\" or \"herringbone\"";
    return std::nullopt;
}

std::optional<double> knuckleBevel(const LoftedHull& hull, double x) {
    const std::vector<KnucklePlace> line = knuckleLine(hull.laid);
    if (line.empty() || x < line.front().p.x() || x > line.back().p.x())
        return std::nullopt;
    return knuckleAt(hull.laid, line, x).turn / 2;
}

void tellKnuckle(const Project& project, const LoftedHull& hull, Plan& plan) {
    const std::vector<KnucklePlace> line = knuckleLine(hull.laid);
    std::string bevels;
    const auto names = stationNames(project, hull);
    for (std::size_t i = 0; i < names.size(); ++i)
        if (const double x = hull.stationX[i]; x > line.front().p.x() && x < line.back().p.x())
            bevels += (bevels.empty() ? "" : ", ") + names[i] + ": " +
                      degrees(knuckleAt(hull.laid, line, x).turn / 2);
    for (const Strip& strip : plan.strips) {
        if ((strip.row != 1 && strip.row != -1) || strip.side != Side::Starboard)
            continue;
        plan.findings.push_back(
            {Level::Note,
             "knuckle-bevel",
             strip.id,
             strip.ends[0].x,
             say(strip.row > 0
                     ? sayable("Its upper edge lies on the knuckle, against row -1, on both sides of the "
                               "boat: plane the bead or cove off that edge and bevel it by half of what the "
                               "sides turn there. Degrees off square at station {}.")
                     : sayable("Its lower edge lies on the knuckle, against row 1, on both sides of the "
                               "boat: plane the bead or cove off that edge and bevel it by half of what the "
                               "sides turn there. Degrees off square at station {}."),
                 bevels)});
    }
    if (project.planking.shutter)
        plan.findings.push_back(
            {Level::Note,
             "shutter-not-aimed",
             std::nullopt,
             std::nullopt,
             say("The rows start at the knuckle, which stays where it is, so that the last plank comes out "
                 "as it does; another cover width would change it.")});
}

} // namespace sheerlay::core

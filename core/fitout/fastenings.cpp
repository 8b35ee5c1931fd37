#include "core/fitout/fastenings.hpp"

#include "core/units/both_units.hpp"
#include "core/words/say.hpp"

#include <cmath>
#include <numbers>

namespace sheerlay::core {

namespace {

using Eigen::Vector3d;

constexpr double plugDepth = 6.0; // mm a plugged head lies below the face; common practice, no source
constexpr double nutRoom = 12.0;  // mm of bolt below the wood, washer and nut; common practice, no source
constexpr double nutAndWashers = 0.009; // kg to a bolt, its head too; from memory
constexpr double threadPart = 0.75; // of a shank's mass, what thread and point leave of a screw; from memory
constexpr double steel = 7.9e-6;    // kg/mm3; from memory

double shank(double diameter, double length) {
    return std::numbers::pi / 4 * diameter * diameter * length * steel;
}

/// mm that a screw goes through before it reaches the outer gunwale.
double beforeOuter(const Project& project) {
    const GunwaleChoices& choices = *project.fitout->gunwales;
    return choices.inner.width + project.strips.thickness - (choices.plugs ? plugDepth : 0.0);
}

Fastening gunwaleScrews(const Project& project, const Gunwales& g) {
    Fastening f;
    f.what = say("gunwales");
    const GunwaleChoices& choices = *project.fitout->gunwales;
    f.diameter = choices.screwDiameter;
    f.length = choices.screwLength.value_or(beforeOuter(project) + 2.0 / 3.0 * g.outer.size.width);
    f.count = g.screwCount;
    f.mass = threadPart * f.count * shank(f.diameter, f.length);
    for (const double s : g.screws) { // the line's points stand at even steps of the sheer's parameter
        const SheerPoint* nearest = &g.outerLine.front();
        for (const SheerPoint& p : g.outerLine)
            if (std::abs(p.s - s) < std::abs(nearest->s - s))
                nearest = &p;
        f.centre +=
            Vector3d(nearest->point.x(), 0.0, nearest->point.z()) / static_cast<double>(g.screws.size());
    }
    return f;
}

} // namespace

std::vector<Fastening> planFastenings(const Project& project, const Fitout& fitout) {
    std::vector<Fastening> all;
    if (!fitout.gunwales)
        return all;
    if (fitout.gunwales->screwCount > 0)
        all.push_back(gunwaleScrews(project, *fitout.gunwales));
    const double gunwale = fitout.gunwales->inner.size.height;
    const auto bolts = [&](const std::string& what, const BoltedPiece& part) {
        if (!part.bolt)
            return;
        Fastening f;
        f.kind = Fastening::Kind::Bolt;
        f.what = what;
        f.diameter = project.fitout->boltDiameter;
        f.length = gunwale + part.bolt->hanger + part.piece.height + nutRoom;
        f.count = 2;
        f.mass = f.count * (shank(f.diameter, f.length) + nutAndWashers);
        f.centre = {part.bolt->x, 0.0, part.piece.at(part.piece.width / 2, 0.0).y()};
        all.push_back(f);
    };
    for (const Seat& s : fitout.seats) {
        bolts(say("front rail of the {}", s.choice.name), s.front);
        bolts(say("back rail of the {}", s.choice.name), s.back);
    }
    for (const Thwart& t : fitout.thwarts)
        bolts(t.name, t.bar);
    if (fitout.yoke)
        bolts(fitout.yoke->name, fitout.yoke->bar);
    return all;
}

std::vector<Finding> checkScrews(const Project& project) {
    if (!project.fitout || !project.fitout->gunwales || !project.fitout->gunwales->screwLength)
        return {};
    const GunwaleChoices& choices = *project.fitout->gunwales;
    const double into = *choices.screwLength - beforeOuter(project);
    const bool through = into >= choices.outer.width;
    if (!through && into >= choices.outer.width / 3)
        return {};
    return {
        {Level::Caution,
         "screw-length",
         std::nullopt,
         std::nullopt,
         say(through
                 ? sayable("Screws of {} come out through the outer gunwale; up to {} would do.")
                 : sayable("Screws of {} hold less than a third of the outer gunwale; about {} would do."),
             bothUnitsFine(*choices.screwLength),
             bothUnitsFine(beforeOuter(project) + 2.0 / 3.0 * choices.outer.width))}};
}

} // namespace sheerlay::core

#include "core/fitout/gunwales.hpp"

#include "core/hull/station_names.hpp"
#include "core/units/both_units.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <stdexcept>
#include <utility>

namespace sheerlay::core {

namespace {

constexpr double screwEnd = 40.0; // mm from the sheer's end to the first screw: clear of the stem; judged

double farLength(const std::vector<SheerPoint>& line, double width, double sign) {
    double sum = 0.0;
    for (std::size_t i = 1; i < line.size(); ++i)
        sum +=
            (line[i].point + sign * width * line[i].out - line[i - 1].point - sign * width * line[i - 1].out)
                .norm();
    return sum;
}

/// One gunwale of a side. @param sign  + outside the planking, - inside
Gunwale gunwale(const std::vector<SheerPoint>& line,
                const StickSize& size,
                double sign,
                const Wood& wood,
                const GunwaleChoices& choices,
                const std::vector<double>& keepOff,
                int lean = 0) {
    Gunwale g;
    g.size = size;
    g.sheerLength = line.back().s;
    g.farLength = farLength(line, size.width, sign);
    g.cutLength = std::max(g.sheerLength, g.farLength) + 2 * choices.overLength;
    g.scarf = choices.scarfSlope * size.width;
    const Strength strength(wood, size.width, size.height);
    const auto strainOf = [&](const SheerPoint& p) { return strength.strain(p.edge, p.bend, p.twist); };
    for (const SheerPoint& p : line) {
        const double strain = strainOf(p);
        if (strain > g.strain) {
            g.strain = strain;
            g.strainAtX = p.point.x();
        }
        g.bend = std::max(g.bend, std::abs(p.bend));
        g.edge = std::max(g.edge, std::abs(p.edge));
    }
    g.use = Strength::woodUse(g.strain);

    std::vector<double> strains;
    constexpr int steps = 400;
    std::size_t at = 0;
    for (int i = 0; i <= steps; ++i) {
        const double s = g.sheerLength * i / steps;
        while (at + 2 < line.size() && line[at + 1].s < s)
            ++at;
        strains.push_back(strainOf(line[at]));
    }
    // the longer face decides what a piece measures
    const double over = 0.5 * (g.cutLength - g.sheerLength);
    const auto scarfs =
        placeScarfs(strains, g.sheerLength, choices.stockLength, g.scarf, over, keepOff, lean);
    if (!scarfs)
        return g;
    g.scarfs = *scarfs;
    double from = -over;
    for (const double s : g.scarfs) {
        g.pieces.push_back({from, s + g.scarf / 2});
        from = s - g.scarf / 2;
    }
    g.pieces.push_back({from, g.sheerLength + over});
    return g;
}

double nearest(const std::vector<double>& some, const std::vector<double>& others) {
    double least = std::numeric_limits<double>::infinity();
    for (const double a : some)
        for (const double b : others)
            least = std::min(least, std::abs(a - b));
    return least;
}

std::optional<Scuppers> scuppersOf(const ScupperChoice& wanted, double length) {
    Scuppers s;
    s.opening = wanted.opening;
    s.block = wanted.block;
    const double room = length - 2 * wanted.solidEnds;
    s.count = static_cast<int>(std::floor((room + s.block) / (s.opening + s.block)));
    if (s.count < 1)
        return std::nullopt;
    s.solidEnds = 0.5 * (length - s.count * s.opening - (s.count - 1) * s.block);
    s.first = s.solidEnds;
    return s;
}

/// Screws at even distances no wider than `spacing` from `from` to `to`, both included.
void addScrews(std::vector<double>& screws, double from, double to, double spacing) {
    const int bays = std::max(1, static_cast<int>(std::ceil((to - from) / spacing - 1e-9)));
    for (int i = 0; i <= bays; ++i)
        screws.push_back(from + (to - from) * i / bays);
}

void placeScrews(Gunwales& g, const GunwaleChoices& choices) {
    const double length = g.outer.sheerLength;
    if (length <= 2 * screwEnd)
        return;
    if (!g.scuppers) {
        addScrews(g.screws, screwEnd, length - screwEnd, choices.screwSpacing);
    } else {
        // through every block, and in the solid ends; scuppers are measured inside, screws outside
        const Scuppers& s = *g.scuppers;
        const double toOuter = length / g.inner.sheerLength;
        const double end = s.first * toOuter - s.block / 2;
        if (end > screwEnd)
            addScrews(g.screws, screwEnd, end, choices.screwSpacing);
        for (int i = 1; i < s.count; ++i)
            g.screws.push_back((s.first + i * (s.opening + s.block) - s.block / 2) * toOuter);
        if (end > screwEnd)
            addScrews(g.screws, length - end, length - screwEnd, choices.screwSpacing);
    }
    for (std::size_t i = 1; i < g.screws.size(); ++i)
        g.screwSpacing = std::max(g.screwSpacing, g.screws[i] - g.screws[i - 1]);
    g.screwCount = 2 * static_cast<int>(g.screws.size());
    g.plugCount = choices.plugs ? g.screwCount : 0;
}

void tell(const Gunwale& g,
          const std::string& name,
          const GunwaleChoices& choices,
          std::vector<Finding>& findings) {
    if (g.use != WoodUse::ByHand)
        findings.push_back(
            {g.use == WoodUse::SteamIt ? Level::Caution : Level::Note,
             "gunwale-bend",
             std::nullopt,
             g.strainAtX,
             say("The {} gunwale is bent to {} percent of what its wood takes dry by hand; {}.",
                 name,
                 static_cast<int>(std::lround(100 * g.strain)),
                 say(Strength::advice(g.use)))});
    if (g.pieces.empty())
        findings.push_back({Level::Stop,
                            "gunwale-stock",
                            std::nullopt,
                            std::nullopt,
                            say("The {} gunwale can't be scarfed from stock of {}; longer stock or a steeper "
                                "scarf would do.",
                                name,
                                bothUnits(choices.stockLength))});
}

} // namespace

GunwalePlan planGunwales(const Project& project, const LoftedHull& hull, const HullFaces& faces) {
    if (!project.fitout || !project.fitout->gunwales)
        throw std::invalid_argument("planGunwales: no gunwales asked for");
    const GunwaleChoices& choices = *project.fitout->gunwales;
    const Wood* wood = findWood(project.fitout->wood);
    if (wood == nullptr)
        throw std::invalid_argument("planGunwales: unknown wood " + project.fitout->wood);
    GunwalePlan plan;
    Gunwales& g = plan.gunwales;
    g.innerLine = sheerLine(faces.inside, choices.stand);
    g.outerLine = sheerLine(faces.outside, choices.stand);
    g.outer = gunwale(g.outerLine, choices.outer, 1.0, *wood, choices, {});
    g.inner = gunwale(g.innerLine, choices.inner, -1.0, *wood, choices, g.outer.scarfs);
    if (nearest(g.inner.scarfs, g.outer.scarfs) < scarfsApart) {
        // side by side; the outer one's toward the bow and the inner one's away from them may do
        Gunwale outer = gunwale(g.outerLine, choices.outer, 1.0, *wood, choices, {}, 1);
        Gunwale inner = gunwale(g.innerLine, choices.inner, -1.0, *wood, choices, outer.scarfs);
        if (nearest(inner.scarfs, outer.scarfs) > nearest(g.inner.scarfs, g.outer.scarfs)) {
            g.outer = std::move(outer);
            g.inner = std::move(inner);
        }
    }
    if (choices.edge == GunwaleChoices::Edge::Rabbet)
        g.rabbet = project.strips.thickness + project.fitout->glassInside + project.fitout->glassOutside;
    const std::vector<std::string> names = stationNames(project, hull);
    for (std::size_t i = 0; i < names.size(); ++i) {
        const double x = hull.stationX[i];
        const SheerPoint inner = sheerPointAt(g.innerLine, x), outer = sheerPointAt(g.outerLine, x);
        if (std::abs(outer.point.x() - x) > 1.0)
            continue; // beyond the sheer's ends
        g.bevels.push_back({names[i], x, inner.s, outer.s, outer.flare});
    }
    if (choices.scuppers) {
        g.scuppers = scuppersOf(*choices.scuppers, g.inner.sheerLength);
        if (!g.scuppers)
            plan.findings.push_back({Level::Caution,
                                     "scuppers-no-room",
                                     std::nullopt,
                                     std::nullopt,
                                     say("The solid ends leave no room for a scupper; shorter ones under "
                                         "[fitout.gunwales] would do.")});
    }
    placeScrews(g, choices);
    tell(g.outer, sayable("outer"), choices, plan.findings);
    tell(g.inner, sayable("inner"), choices, plan.findings);
    return plan;
}

} // namespace sheerlay::core

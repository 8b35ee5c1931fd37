#include "core/sheets/load_board.hpp"

#include "core/afloat/after_text.hpp"
#include "core/sheets/compose.hpp"
#include "core/sheets/words.hpp"
#include "core/stock/stock_words.hpp"
#include "core/units/both_units.hpp"
#include "core/units/length.hpp"
#include "core/units/number_text.hpp"
#include "core/units/weight.hpp"
#include "core/words/heard.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>

namespace sheerlay::core {

namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

constexpr double degree = std::numbers::pi / 180;

double inUnits(double mm, Units units) {
    return units == Units::Inches ? mm / mmPerInch : mm;
}

std::string lengthUnit(Units units) {
    return units == Units::Inches ? say("in|unit") : "mm";
}

/// What a builder looks at while a weight is moved, a line each.
std::vector<std::string> figuresOf(const AfloatReport& a, Units units) {
    const auto fine = [units](double mm) { return formatLength(mm, units, 8); };
    std::vector<std::string> lines{say("boat and load {}", weightText(a.boat.mass + a.load.mass, units))};
    if (!a.rest) {
        for (const Finding& finding : a.findings)
            lines.push_back(unitsFirst(heard(finding.text), units));
        return lines;
    }
    const Rest& r = *a.rest;
    lines.push_back(say("draught {}, least freeboard {}", fine(r.draught), fine(r.freeboard)));
    lines.push_back(say("the {} is {} deeper, heel {} degrees",
                        a.form.trimByEnds >= 0 ? say("stern") : say("bow"),
                        fine(std::abs(a.form.trimByEnds)),
                        numberText(std::abs(r.water.heel) / degree, 1)));
    lines.push_back(r.gm < 0 ? say("metacentre {} below the centre of boat and load", fine(std::abs(r.gm)))
                             : say("metacentre {} above the centre of boat and load", fine(std::abs(r.gm))));
    for (const Finding& finding : a.findings)
        lines.push_back(unitsFirst(heard(finding.text), units));
    return lines;
}

/// Moves a drawing made against the upper left corner.
void put(std::vector<Item>& sheet, std::vector<Item> items, const Vector2d& by) {
    for (Item& item : items) {
        if (auto* path = std::get_if<Path>(&item))
            for (Vector2d& p : path->points)
                p += by;
        else if (auto* text = std::get_if<Text>(&item))
            text->at += by;
        sheet.push_back(std::move(item));
    }
}

} // namespace

BoatProfile boatProfile(const AfloatReport& a, double width, double type) {
    BoatProfile drawn;
    std::vector<Item>& items = drawn.items;
    double from = 1e300, to = -1e300, low = 1e300, high = -1e300;
    const auto see = [&](double x, double z) {
        from = std::min(from, x);
        to = std::max(to, x);
        low = std::min(low, z);
        high = std::max(high, z);
    };
    for (const auto* line : {&a.sheer, &a.profile})
        for (const Vector3d& p : *line)
            see(p.x(), p.z());
    for (const WeightItem& load : a.loads)
        see(load.centre.x(), load.centre.z());
    const double scale = (width - 2.0) / (to - from), top = 1.6 * type;
    drawn.height = top + (high - low) * scale + 0.6 * type;
    drawn.scale = scale;
    drawn.origin = {1.0 - from * scale, top + high * scale};
    const auto at = [&](double x, double z) {
        return Vector2d(1.0 + (x - from) * scale, top + (high - z) * scale);
    };
    for (const auto* line : {&a.sheer, &a.profile}) {
        Path path;
        for (const Vector3d& p : *line)
            path.points.push_back(at(p.x(), p.z()));
        items.emplace_back(std::move(path));
    }
    const auto transom = [&](const Vector3d& sheer,
                             const Vector3d& keel) { // none where a stem closes the end
        if ((sheer - keel).norm() > 1.0)
            items.emplace_back(makeLine(at(sheer.x(), sheer.z()), at(keel.x(), keel.z()), LineKind::Visible));
    };
    transom(a.sheer.front(), a.profile.front());
    transom(a.sheer.back(), a.profile.back());
    // where the water meets the centreplane
    const auto water = [&](double x) {
        const Vector3d up = a.rest->water.up();
        return at(x, (a.rest->water.level - up.x() * x) / up.z());
    };
    if (a.rest)
        items.emplace_back(makeLine(water(from), water(to), LineKind::Centre, colours::lineBlue));
    double lowestSheer = 1e300;
    for (const Vector3d& p : a.sheer)
        lowestSheer = std::min(lowestSheer, p.z());
    const double dot = 0.45 * type;
    for (const WeightItem& load : a.loads) {
        const Vector2d p = at(load.centre.x(), load.centre.z());
        items.emplace_back(
            makeBox({p.x() - dot, p.y() - dot, p.x() + dot, p.y() + dot}, LineKind::None, colours::cedar));
        const double under =
            a.rest ? water(load.centre.x()).y() - p.y() : 0.0; // from its middle to the water
        // the words stand on neither the sheer nor the water
        const bool above = load.centre.z() > lowestSheer || (under > 0.5 * type && under < 1.8 * type);
        items.emplace_back(makeText({p.x(), p.y() + (above ? -0.8 : 1.5) * type},
                                    heard(load.name),
                                    {.size = type, .anchor = Anchor::Middle}));
    }
    return drawn;
}

std::vector<Graph> rightingGraphs(const AfloatReport& a, Units units) {
    std::vector<Graph> graphs;
    for (const auto* curve : {&a.toStarboard, &a.toPort}) {
        if (!*curve || (*curve)->arms.size() < 2)
            continue;
        const RightingCurve& c = **curve;
        Graph graph;
        graph.title = !a.toPort    ? say("Righting arm")
                      : c.side > 0 ? say("Righting arm, heeled to starboard")
                                   : say("Righting arm, heeled to port");
        graph.across = say("heel, degrees");
        graph.up = say("arm, {}", lengthUnit(units));
        for (const RightingArm& arm : c.arms)
            graph.points.emplace_back(std::abs(arm.heel) / degree, inUnits(arm.arm, units));
        if (c.floods)
            graph.marks.emplace_back(std::abs(c.arms.back().heel) / degree,
                                     say("water over the sheer, {}", degreesText(c.arms.back().heel)));
        graphs.push_back(std::move(graph));
    }
    return graphs;
}

Graph displacementGraph(const AfloatReport& a, Units units) {
    const bool pounds = units == Units::Inches;
    Graph graph;
    graph.title = say("What she displaces, on an even keel");
    graph.across = say("weight of boat and load, {}", pounds ? "lb" : "kg");
    graph.up = say("draught, {}", lengthUnit(units));
    const auto mass = [&](double kg) { return pounds ? kg / kgPerPound : kg; };
    for (const FloatLevel& level : a.levels)
        graph.points.emplace_back(mass(level.mass), inUnits(level.draught, units));
    if (a.rest)
        graph.marks.emplace_back(mass(a.boat.mass + a.load.mass), say("boat and load"));
    return graph;
}

LoadBoard loadBoard(const AfloatReport& report, Units units, double width, double height) {
    constexpr double white = 6.0, type = 3.6;
    LoadBoard board;
    board.sheet.width = width;
    board.sheet.height = height;
    std::vector<Item>& items = board.sheet.items;
    const BoatProfile profile = boatProfile(report, width - 2 * white, type);
    put(items, profile.items, {white, white});
    board.origin = profile.origin + Vector2d(white, white);
    board.scale = profile.scale;
    double y = white + profile.height + 2 * type;
    for (const std::string& line : figuresOf(report, units))
        for (const std::string& part : wrap(line, width - 2 * white, type)) {
            items.emplace_back(makeText({white, y}, part, {.size = type}));
            y += 1.5 * type;
        }
    std::vector<Graph> graphs = rightingGraphs(report, units);
    if (graphs.size() > 1)
        graphs.pop_back(); // the side she leans to
    graphs.push_back(displacementGraph(report, units));
    const double room = height - white - y, each = (width - 2 * white) / static_cast<double>(graphs.size());
    constexpr double leastRoom = 30.0; // mm, a graph lower than this says nothing
    for (std::size_t i = 0; i < graphs.size() && room >= leastRoom; ++i)
        put(items,
            drawGraph(graphs[i], each - white, std::min(room, 0.7 * each), type),
            {white + static_cast<double>(i) * each, y});
    return board;
}

} // namespace sheerlay::core

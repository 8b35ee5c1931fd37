#include "core/afloat/after_text.hpp"
#include "core/sheets/boat_sheets.hpp"
#include "core/sheets/graph.hpp"
#include "core/sheets/list_pages.hpp"
#include "core/sheets/page_frame.hpp"
#include "core/sheets/words.hpp"
#include "core/stock/stock_words.hpp"
#include "core/units/length.hpp"
#include "core/units/number_text.hpp"
#include "core/units/weight.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>

namespace sheerlay::core {

namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

constexpr double degree = std::numbers::pi / 180;

std::string fine(double mm, Units units) {
    return formatLength(mm, units, 8);
}

double inUnits(double mm, Units units) {
    return units == Units::Inches ? mm / mmPerInch : mm;
}

/// The boat seen from starboard with the water drawn on her, bow to the left, and her load as dots.
std::vector<Item> profileAt(const AfloatReport& a, double width, double type, double& height) {
    std::vector<Item> items;
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
    height = top + (high - low) * scale + 0.6 * type;
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
    if (a.rest) { // heights above the base line where the water meets the centreplane
        const Vector3d up = a.rest->water.up();
        const auto water = [&](double x) { return at(x, (a.rest->water.level - up.x() * x) / up.z()); };
        items.emplace_back(makeLine(water(from), water(to), LineKind::Centre, colours::lineBlue));
    }
    double lowestSheer = 1e300;
    for (const Vector3d& p : a.sheer)
        lowestSheer = std::min(lowestSheer, p.z());
    const double dot = 0.45 * type;
    for (const WeightItem& load : a.loads) {
        const Vector2d p = at(load.centre.x(), load.centre.z());
        items.emplace_back(
            makeBox({p.x() - dot, p.y() - dot, p.x() + dot, p.y() + dot}, LineKind::None, colours::cedar));
        const bool above = load.centre.z() > lowestSheer; // else the words would stand on the sheer
        items.emplace_back(makeText({p.x(), p.y() + (above ? -0.8 : 1.5) * type},
                                    load.name,
                                    {.size = type, .anchor = Anchor::Middle}));
    }
    return items;
}

ListRow figure(std::string what, std::string value, std::string note = {}) {
    return {{std::move(what), std::move(value), std::move(note)}, false};
}

void figures(ListPages& pages, const AfloatReport& a, Units units) {
    std::vector<ListRow> rows{figure("boat", weightText(a.boat.mass, units)),
                              figure("load", weightText(a.load.mass, units))};
    if (a.rest) {
        const Rest& r = *a.rest;
        rows.push_back(figure("draught", fine(r.draught, units), "to the deepest point"));
        rows.push_back(figure("freeboard",
                              fine(r.freeboard, units),
                              "the least, " + placeText(r.freeboardAt.x(), units) + " from the bow"));
        rows.push_back(figure("trim",
                              fine(std::abs(a.form.trimByEnds), units),
                              a.form.trimByEnds >= 0 ? "the stern deeper than the bow"
                                                     : "the bow deeper than the stern"));
        rows.push_back(figure("heel",
                              numberText(std::abs(r.water.heel) / degree, 1) + " degrees",
                              std::abs(r.water.heel) < 0.05 * degree ? "upright"
                              : r.water.heel > 0                     ? "to starboard"
                                                                     : "to port"));
        rows.push_back(figure("water line",
                              placeText(r.under.length, units) + " by " + fine(r.under.beam, units),
                              "length by beam"));
        rows.push_back(figure("wetted", areaText(r.under.wettedSkin, units), "planking under water"));
        rows.push_back(figure("coefficients",
                              numberText(a.form.block, 2) + ", " + numberText(a.form.prismatic, 2) + ", " +
                                  numberText(a.form.midship, 2) + ", " + numberText(a.form.waterplane, 2),
                              "block, prismatic, largest section, waterplane"));
        rows.push_back(figure("buoyancy",
                              placeText(r.under.centre.x(), units) + " from the bow",
                              "and " + fine(r.under.centre.z(), units) + " above the base line"));
        rows.push_back(figure("metacentre",
                              fine(std::abs(r.gm), units),
                              std::string(r.gm < 0 ? "below" : "above") + " the centre of boat and load"));
        const double more = a.form.massPerMm * (units == Units::Inches ? mmPerInch : 10.0);
        rows.push_back(figure("to sink her",
                              weightText(more, units),
                              units == Units::Inches ? "for each inch" : "for each centimetre"));
    }
    rows.push_back(figure("largest load",
                          largestLoadText(a.largestLoad, units),
                          "level, with " + formatLength(a.freeboard, units, 4) + " of freeboard"));
    pages.list({{"", 1.3, Anchor::Left, Weight::SemiBold}, {"", 2.2}, {"", 3.4}}, rows);
}

void curves(ListPages& pages, const AfloatReport& a, Units units) {
    const double height = pages.size(58.0), type = pages.size(3.4);
    const std::string length = units == Units::Inches ? "in" : "mm";
    for (const auto* curve : {&a.toStarboard, &a.toPort}) {
        if (!*curve || (*curve)->arms.size() < 2)
            continue;
        const RightingCurve& c = **curve;
        Graph graph;
        graph.title = a.toPort ? std::string("Righting arm, heeled to ") + (c.side > 0 ? "starboard" : "port")
                               : std::string("Righting arm");
        graph.across = "heel, degrees";
        graph.up = "arm, " + length;
        for (const RightingArm& arm : c.arms)
            graph.points.emplace_back(std::abs(arm.heel) / degree, inUnits(arm.arm, units));
        if (c.floods)
            graph.marks.emplace_back(std::abs(c.arms.back().heel) / degree,
                                     "water over the sheer, " + degreesText(c.arms.back().heel));
        pages.drawing(drawGraph(graph, pages.width(), height, type), height);
    }
    const bool pounds = units == Units::Inches;
    Graph graph;
    graph.title = "What she displaces, on an even keel";
    graph.across = std::string("weight of boat and load, ") + (pounds ? "lb" : "kg");
    graph.up = "draught, " + length;
    const auto mass = [&](double kg) { return pounds ? kg / kgPerPound : kg; };
    for (const FloatLevel& level : a.levels)
        graph.points.emplace_back(mass(level.mass), inUnits(level.draught, units));
    if (a.rest)
        graph.marks.emplace_back(mass(a.boat.mass + a.load.mass), "boat and load");
    pages.drawing(drawGraph(graph, pages.width(), height, type), height);
}

void weights(ListPages& pages, const WeightSheet& sheet, Units units) {
    pages.heading("What she weighs");
    constexpr double least = 0.05; // kg; less is not worth a figure
    std::vector<ListRow> rows;
    const auto row = [&](const std::string& name, double kg, double plusMinus, const Vector3d& centre) {
        return ListRow{{name,
                        weightText(kg, units),
                        plusMinus >= least ? weightText(plusMinus, units) : "",
                        placeText(centre.x(), units),
                        fine(centre.z(), units)},
                       false};
    };
    for (const WeightItem& item : sheet.items)
        rows.push_back(row(item.name, item.mass, item.plusMinus, item.centre));
    rows.push_back(
        row(sheet.weighed ? "the boat, as weighed" : "the boat", sheet.mass, sheet.plusMinus, sheet.centre));
    pages.list({{"Part", 2.2, Anchor::Left, Weight::SemiBold},
                {"Weight", 1.8, Anchor::Right},
                {"Give or take", 1.6, Anchor::Right},
                {"Centre from the bow", 1.6, Anchor::Right},
                {"above base", 1.2, Anchor::Right}},
               rows);
    pages.text(
        "Boards differ by about a tenth in weight, resin by about a fifth from hand to hand. She balances " +
        placeText(sheet.centre.x(), units) + " from the bow: a yoke goes near there.");
    for (const Finding& finding : sheet.findings)
        pages.text(finding.text);
}

} // namespace

std::vector<Sheet>
afloatSheets(const Project& project, const AfterPlanking& after, Units units, PageSize size) {
    if (!after.weights)
        return {};
    ListPages pages(pageOf(size), project.name + (after.afloat ? ", how she floats" : ", what she weighs"));
    if (after.afloat) {
        const AfloatReport& a = *after.afloat;
        pages.text(
            "Estimates for still water, a whole boat and nobody moving; no approval of any load. Capacity, "
            "flotation and life jackets follow the rules of the place where you paddle: a life jacket for "
            "each on board, and try her loaded in shallow water first. ISO 12217-3, the standard on "
            "stability "
            "of small boats, leaves canoes and kayaks out.");
        double height = 0.0;
        const std::vector<Item> profile = profileAt(a, pages.width(), pages.size(3.6), height);
        pages.drawing(profile, height);
        for (const Finding& finding : a.findings)
            pages.text(finding.text);
        figures(pages, a, units);
        curves(pages, a, units);
    }
    weights(pages, *after.weights, units);
    std::vector<Sheet> sheets = pages.take();
    addFeet(sheets, project, units, pageOf(size));
    return sheets;
}

} // namespace sheerlay::core

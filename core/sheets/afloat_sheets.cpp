#include "core/afloat/after_text.hpp"
#include "core/sheets/boat_sheets.hpp"
#include "core/sheets/graph.hpp"
#include "core/sheets/list_pages.hpp"
#include "core/sheets/load_board.hpp"
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
        rows.push_back(figure("wetted",
                              areaText(r.under.wettedSkin + r.under.wettedTransom, units),
                              r.under.wettedTransom > 0.0 ? "planking and transom under water"
                                                          : "planking under water"));
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
    for (const Graph& graph : rightingGraphs(a, units))
        pages.drawing(drawGraph(graph, pages.width(), height, type), height);
    pages.drawing(drawGraph(displacementGraph(a, units), pages.width(), height, type), height);
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

void onMoulds(ListPages& pages, const OnMoulds& on, Units units) {
    pages.heading("On her moulds");
    pages.text("Planked, and covered outside, she weighs " + weightText(on.hull.mass, units) +
               ", give or take " + weightText(on.hull.plusMinus, units) + ", and balances " +
               placeText(on.hull.centre.x(), units) +
               " from the bow: lift evenly to both sides of there, and she comes off her moulds level. The "
               "strongback carries " +
               weightText(on.strongback(), units) + " with them, not counting stem forms.");
    std::vector<ListRow> rows;
    for (const MouldLoad& m : on.loads)
        rows.push_back(
            {{m.mould, placeText(m.x, units), weightText(m.hull, units), weightText(m.board, units)}, false});
    pages.list({{"Mould", 1.6, Anchor::Left, Weight::SemiBold},
                {"From the bow", 1.4, Anchor::Right},
                {"Carries of her", 1.8, Anchor::Right, Weight::SemiBold},
                {"Weighs itself", 1.8, Anchor::Right}},
               rows);
    pages.text("Stem forms take some of the outermost moulds' share.");
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
        const BoatProfile profile = boatProfile(a, pages.width(), pages.size(3.6));
        pages.drawing(profile.items, profile.height);
        for (const Finding& finding : a.findings)
            pages.text(finding.text);
        figures(pages, a, units);
        curves(pages, a, units);
    }
    weights(pages, *after.weights, units);
    if (after.onMoulds && !after.onMoulds->loads.empty())
        onMoulds(pages, *after.onMoulds, units);
    std::vector<Sheet> sheets = pages.take();
    addFeet(sheets, project, units, pageOf(size));
    return sheets;
}

} // namespace sheerlay::core

#include "core/afloat/after_text.hpp"
#include "core/sheets/boat_sheets.hpp"
#include "core/sheets/fitout_titles.hpp"
#include "core/sheets/graph.hpp"
#include "core/sheets/list_pages.hpp"
#include "core/sheets/load_board.hpp"
#include "core/sheets/page_frame.hpp"
#include "core/sheets/strip_notes.hpp"
#include "core/sheets/words.hpp"
#include "core/stock/stock_words.hpp"
#include "core/units/both_units.hpp"
#include "core/units/length.hpp"
#include "core/units/number_text.hpp"
#include "core/units/weight.hpp"
#include "core/words/heard.hpp"
#include "core/words/language.hpp"
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

std::string fine(double mm, Units units) {
    return formatLength(mm, units, 8);
}

ListRow figure(std::string what, std::string value, std::string note = {}) {
    return {{std::move(what), std::move(value), std::move(note)}, false};
}

void figures(ListPages& pages, const AfloatReport& a, Units units) {
    std::vector<ListRow> rows{figure(say("boat"), weightText(a.boat.mass, units)),
                              figure(say("load"), weightText(a.load.mass, units))};
    if (a.rest) {
        const Rest& r = *a.rest;
        rows.push_back(figure(say("draught"), fine(r.draught, units), say("to the deepest point")));
        rows.push_back(figure(say("freeboard"),
                              fine(r.freeboard, units),
                              say("the least, {} from the bow", placeText(r.freeboardAt.x(), units))));
        rows.push_back(figure(say("trim"),
                              fine(std::abs(a.form.trimByEnds), units),
                              a.form.trimByEnds >= 0 ? say("the stern deeper than the bow")
                                                     : say("the bow deeper than the stern")));
        rows.push_back(figure(say("heel"),
                              say("{} degrees", numberText(std::abs(r.water.heel) / degree, 1)),
                              std::abs(r.water.heel) < 0.05 * degree ? say("upright")
                              : r.water.heel > 0                     ? say("to starboard")
                                                                     : say("to port")));
        rows.push_back(figure(say("water line"),
                              say("{} by {}", placeText(r.under.length, units), fine(r.under.beam, units)),
                              say("length by beam")));
        rows.push_back(figure(say("wetted"),
                              areaText(r.under.wettedSkin + r.under.wettedTransom, units),
                              r.under.wettedTransom > 0.0 ? say("planking and transom under water")
                                                          : say("planking under water")));
        rows.push_back(figure(say("coefficients"),
                              numberText(a.form.block, 2) + ", " + numberText(a.form.prismatic, 2) + ", " +
                                  numberText(a.form.midship, 2) + ", " + numberText(a.form.waterplane, 2),
                              say("block, prismatic, largest section, waterplane")));
        rows.push_back(figure(say("buoyancy"),
                              say("{} from the bow", placeText(r.under.centre.x(), units)),
                              say("and {} above the base line", fine(r.under.centre.z(), units))));
        rows.push_back(figure(say("metacentre"),
                              fine(std::abs(r.gm), units),
                              r.gm < 0 ? say("below the centre of boat and load")
                                       : say("above the centre of boat and load")));
        const double more = a.form.massPerMm * (units == Units::Inches ? mmPerInch : 10.0);
        rows.push_back(figure(say("to sink her"),
                              weightText(more, units),
                              units == Units::Inches ? say("for each inch") : say("for each centimetre")));
    }
    rows.push_back(figure(say("largest load"),
                          largestLoadText(a.largestLoad, units),
                          say("level, with {} of freeboard", formatLength(a.freeboard, units, 4))));
    pages.list({{"", 1.3, Anchor::Left, Weight::SemiBold}, {"", 2.2}, {"", 3.4}}, rows);
}

void curves(ListPages& pages, const AfloatReport& a, Units units) {
    const double height = pages.size(58.0), type = pages.size(3.4);
    for (const Graph& graph : rightingGraphs(a, units))
        pages.drawing(drawGraph(graph, pages.width(), height, type), height);
    pages.drawing(drawGraph(displacementGraph(a, units), pages.width(), height, type), height);
}

void weights(ListPages& pages, const WeightSheet& sheet, Units units) {
    pages.heading(say("What she weighs"));
    constexpr double least = 0.05; // kg; less is not worth a figure
    std::vector<ListRow> rows;
    const auto row = [&](const std::string& name, double kg, double plusMinus, const Vector3d& centre) {
        return ListRow{{heard(name),
                        weightText(kg, units),
                        plusMinus >= least ? weightText(plusMinus, units) : "",
                        placeText(centre.x(), units),
                        fine(centre.z(), units)},
                       false};
    };
    for (const WeightItem& item : sheet.items)
        rows.push_back(row(item.name, item.mass, item.plusMinus, item.centre));
    rows.push_back(row(sheet.weighed ? sayable("the boat, as weighed") : sayable("the boat"),
                       sheet.mass,
                       sheet.plusMinus,
                       sheet.centre));
    pages.list({{say("Part"), 2.2, Anchor::Left, Weight::SemiBold},
                {say("Weight"), 1.8, Anchor::Right},
                {say("Give or take"), 1.6, Anchor::Right},
                {say("Centre from the bow"), 1.6, Anchor::Right},
                {say("above base"), 1.2, Anchor::Right}},
               rows);
    pages.text(say("Boards differ by about a tenth in weight, resin by about a fifth from hand to hand. She "
                   "balances {} from the bow: a yoke goes near there.",
                   placeText(sheet.centre.x(), units)));
    for (const Finding& finding : sheet.findings)
        pages.text(toldPlainly(finding, units));
}

void onMoulds(ListPages& pages, const OnMoulds& on, Units units) {
    pages.heading(say("On her moulds"));
    pages.text(say("Planked, and covered outside, she weighs {}, give or take {}, and balances {} from the "
                   "bow: lift evenly to both sides of there, and she comes off her moulds level. The "
                   "strongback carries {} with them, not counting stem forms.",
                   weightText(on.hull.mass, units),
                   weightText(on.hull.plusMinus, units),
                   placeText(on.hull.centre.x(), units),
                   weightText(on.strongback(), units)));
    std::vector<ListRow> rows;
    for (const MouldLoad& m : on.loads)
        rows.push_back(
            {{m.mould, placeText(m.x, units), weightText(m.hull, units), weightText(m.board, units)}, false});
    pages.list({{say("Mould"), 1.6, Anchor::Left, Weight::SemiBold},
                {say("From the bow"), 1.4, Anchor::Right},
                {say("Carries of her"), 1.8, Anchor::Right, Weight::SemiBold},
                {say("Weighs itself"), 1.8, Anchor::Right}},
               rows);
    pages.text(say("Stem forms take some of the outermost moulds' share."));
}

void floating(ListPages& pages, const AfloatReport& a, Units units) {
    pages.text(say("Estimates for still water, a whole boat and nobody moving; no approval of any load. "
                   "Capacity, flotation and life jackets follow the rules of the place where you paddle: "
                   "a life jacket for each on board, and try her loaded in shallow water first. ISO "
                   "12217-3, the standard on stability of small boats, leaves canoes and kayaks out."));
    const BoatProfile profile = boatProfile(a, pages.width(), pages.size(3.6));
    pages.drawing(profile.items, profile.height);
    for (const Finding& finding : a.findings)
        pages.text(toldPlainly(finding, units));
    figures(pages, a, units);
    curves(pages, a, units);
}

} // namespace

std::vector<Sheet>
afloatSheets(const Project& project, const AfterPlanking& after, Units units, PageSize size) {
    if (!after.weights)
        return {};
    const Speaking speaking(project.language);
    std::vector<Sheet> sheets =
        fewestPages(pageOf(size), fitoutTitles::afloat(project, after), [&](ListPages& pages) {
            if (after.afloat)
                floating(pages, *after.afloat, units);
            weights(pages, *after.weights, units);
            if (after.onMoulds && !after.onMoulds->loads.empty())
                onMoulds(pages, *after.onMoulds, units);
        });
    addFeet(sheets, project, units, pageOf(size));
    return sheets;
}

} // namespace sheerlay::core

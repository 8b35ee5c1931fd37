#include "core/afloat/after_text.hpp"
#include "core/sheets/boat_sheets.hpp"
#include "core/sheets/fitout_titles.hpp"
#include "core/sheets/list_pages.hpp"
#include "core/sheets/page_frame.hpp"
#include "core/sheets/strip_notes.hpp"
#include "core/sheets/words.hpp"
#include "core/stock/stock_words.hpp"
#include "core/units/both_units.hpp"
#include "core/units/number_text.hpp"
#include "core/units/weight.hpp"
#include "core/words/heard.hpp"
#include "core/words/language.hpp"
#include "core/words/say.hpp"

#include <cmath>
#include <numbers>
#include <string>

namespace sheerlay::core {

namespace {

std::string clothText(double gsm, Units units) {
    const std::string metric = say("{} g to the square metre", numberText(gsm, 0)),
                      imperial = say("{} oz to the square yard", numberText(gsm / gsmPerOunce, 1));
    return units == Units::Inches ? imperial + " (" + metric + ")" : metric + " (" + imperial + ")";
}

/// What of resin and hardener goes into one batch, in the way the maker prints the mix.
std::string mixText(const CoveringPlan& plan, const CoveringChoices& choices, double litres, Units units) {
    if (const auto parts = plan.litresOf(litres))
        return twoLitresText(parts->resin, parts->hardener, units);
    if (const auto parts = plan.kilogramsOf(litres, choices.liquidDensity))
        return say("{} and {}",
                   numberText(1000 * parts->resin, 0) + " g",
                   numberText(1000 * parts->hardener, 0) + " g");
    return say("as the maker prints it");
}

std::string slitText(const ClothSlit& slit, Units units) {
    const std::string degrees = numberText(std::abs(slit.angle) * 180 / std::numbers::pi, 0),
                      from = placeText(slit.fromX, units), end = toText(slit.end);
    if (slit.alongStem)
        return say("At the {} slit the cloth along the stem, from about {} aft of the bow to the end; its "
                   "edges close over {} degrees there, so lap or trim them.",
                   end,
                   from,
                   degrees);
    return slit.angle > 0 ? say("At the {} the hull is rounded two ways: slit each side's cloth from about "
                                "{} aft of the bow to the end and lap its edges over {} degrees.",
                                end,
                                from,
                                degrees)
                          : say("At the {} the hull is rounded two ways: slit each side's cloth from about "
                                "{} aft of the bow to the end and let in a gusset of {} degrees.",
                                end,
                                from,
                                degrees);
}

/// The roll seen from above with the pieces of one face on it, to scale across and along.
std::vector<Item> rollDrawing(const FaceCovering& f, double width, double type, double& height) {
    std::vector<Item> items;
    const ClothPiece& piece = f.pieces.front();
    const double scale = (width - 4 * type) / piece.length;
    const double across = piece.width * scale, roll = f.choices.roll * scale;
    height = roll + 2.2 * type;
    items.emplace_back(makeBox({0.2, type, width - 0.2, type + roll}, LineKind::Thin));
    items.emplace_back(
        makeBox({0.2, type, 0.2 + piece.length * scale, type + across}, LineKind::Visible, colours::bench));
    const double hang = f.choices.overhang * scale;
    for (const double x : {0.2 + hang, 0.2 + piece.length * scale - hang})
        items.emplace_back(makeLine({x, type}, {x, type + across}, LineKind::Hidden));
    items.emplace_back(
        makeLine({0.2, type + hang}, {0.2 + piece.length * scale, type + hang}, LineKind::Hidden));
    const bool drape = f.lay == ClothLay::Drape;
    const double keel = type + (drape ? across / 2 : across - f.choices.overlap / 2 * scale);
    if (drape)
        items.emplace_back(makeLine({0.2, type + across - hang},
                                    {0.2 + piece.length * scale, type + across - hang},
                                    LineKind::Hidden));
    if (f.pieces.front().count <= 2) {
        items.emplace_back(makeLine({0.2, keel}, {0.2 + piece.length * scale, keel}, LineKind::Centre));
        items.emplace_back(makeText({0.2 + piece.length * scale / 2, keel - 0.5 * type},
                                    say("keel"),
                                    {.size = type, .anchor = Anchor::Middle}));
    }
    items.emplace_back(makeText({0.2 + piece.length * scale / 2, type + hang + 1.1 * type},
                                say("sheer, {}", say(f.name)),
                                {.size = type, .anchor = Anchor::Middle}));
    return items;
}

std::string lapsText(const FaceCovering& f, Units units) {
    const std::string overhang = lapText(f.choices.overhang, units),
                      overlap = lapText(f.choices.overlap, units);
    if (f.bulkheads)
        return say("It is turned out onto the hull by {} along sides and bottom, over the fillets; slit it "
                   "where it won't lie.",
                   overlap);
    return f.lay == ClothLay::Drape
               ? say("Overhang {} at sheer and stems.", overhang)
               : say("Overhang {} at sheer and stems; the pieces lap {}.", overhang, overlap);
}

void face(ListPages& pages,
          const CoveringPlan& plan,
          const CoveringChoices& choices,
          const FaceCovering& f,
          Units units) {
    pages.heading(say("Cloth, {}", say(f.name)));
    std::vector<ListRow> cut;
    for (const ClothPiece& p : f.pieces)
        cut.push_back({{std::to_string(p.count),
                        heard(p.what),
                        cutLengthText(p.length, units),
                        cutLengthText(p.width, units)},
                       true});
    pages.list({{say("Pieces"), 0.8, Anchor::Left, Weight::Bold},
                {say("Where"), 3.4},
                {say("Length to cut"), 1.6, Anchor::Right},
                {say("Width that is used"), 1.6, Anchor::Right}},
               cut);
    if (!f.bulkheads) {
        double height = 0.0;
        const std::vector<Item> roll = rollDrawing(f, pages.width(), pages.size(3.6), height);
        pages.drawing(roll, height);
    }
    pages.text(say("Cloth of {}, off a roll {} wide: buy {}, {} percent spare included.",
                   clothText(f.choices.cloth, units),
                   stockText(f.choices.roll, units),
                   runText(f.fromRoll, units),
                   numberText(100 * choices.clothSpare, 0)) +
               " " + lapsText(f, units));
    for (const ClothSlit& slit : f.slits)
        pages.text(slitText(slit, units));
    if (f.slits.empty() && !f.bulkheads)
        pages.text(
            say("The weave gives enough to lie without slits; work it out from amidships toward the ends."));

    pages.heading(say("Resin, {}", say(f.name)));
    std::vector<ListRow> rows;
    for (const ResinCoat& coat : f.coats)
        rows.push_back({{heard(coat.name),
                         litresText(coat.litres, units),
                         coat.batches ? std::to_string(*coat.batches) : "",
                         coat.batches ? litresText(coat.batch, units) : "",
                         coat.batches ? mixText(plan, choices, coat.batch, units) : ""},
                        true});
    rows.push_back({{say("all|coats"), litresText(f.litres, units), "", "", ""}, false});
    pages.list({{say("Coat"), 1.2, Anchor::Left, Weight::SemiBold},
                {say("Mixed"), 1.8, Anchor::Right},
                {say("Batches"), 1.0, Anchor::Right},
                {say("Each"), 2.1, Anchor::Right},
                {say("Resin and hardener of each"), 2.8, Anchor::Right}},
               rows);
}

/// What is glued and filled, joint by joint. @return litres of it that are epoxy
double thickenedEpoxy(ListPages& pages, const std::vector<GlueUse>& glue, Units units) {
    double litres = 0.0;
    std::vector<ListRow> rows;
    for (const GlueUse& g : glue) {
        litres += g.epoxy ? g.litres : 0.0;
        rows.push_back({{heard(g.what),
                         g.epoxy ? say("thickened epoxy") : say("glue for wood"),
                         g.area > 0.0 ? areaText(g.area, units) : "",
                         litresText(g.litres, units)},
                        false});
    }
    if (rows.empty())
        return litres;
    pages.heading(say("Glue and fillets"));
    pages.list({{say("Where"), 2.2, Anchor::Left, Weight::SemiBold},
                {say("With"), 1.8},
                {say("Glued face"), 1.4, Anchor::Right},
                {say("How much"), 1.8, Anchor::Right}},
               rows);
    return litres;
}

void covering(ListPages& pages,
              const CoveringPlan& plan,
              const CoveringChoices& choices,
              const std::vector<GlueUse>& glue,
              Units units) {
    pages.text(say(
        "Epoxy can bring on an allergy of the skin that stays: gloves, long sleeves, fresh air, and no dust "
        "of half-cured resin. Mixed resin left in a pot heats by itself and can burn or catch fire: pour it "
        "out into a shallow tray at once. Keep to the maker's mix; never change it to change the speed. Rags "
        "with varnish or oil can catch fire by themselves: lay them flat out of doors or under water."));
    for (const FaceCovering& f : plan.faces)
        face(pages, plan, choices, f, units);
    const double thickened = thickenedEpoxy(pages, glue, units);
    pages.heading(say("To buy"));
    std::vector<ListRow> rows;
    const double mixed = plan.litres + thickened;
    if (const auto litres = plan.litresOf(mixed)) {
        rows.push_back({{say("resin"), litresText(litres->resin, units)}, true});
        rows.push_back({{say("hardener"), litresText(litres->hardener, units)}, true});
    } else if (const auto kilograms = plan.kilogramsOf(mixed, choices.liquidDensity)) {
        rows.push_back({{say("resin"), weightText(kilograms->resin, units)}, true});
        rows.push_back({{say("hardener"), weightText(kilograms->hardener, units)}, true});
    } else {
        rows.push_back({{say("resin and hardener together"), litresText(mixed, units)}, true});
    }
    if (plan.varnish > 0.0)
        rows.push_back(
            {{say("varnish, {}",
                  countText(static_cast<std::size_t>(choices.varnishCoats), say("coat"), say("coats"))),
              litresText(plan.varnish, units)},
             true});
    pages.list({{say("What"), 3.0, Anchor::Left, Weight::SemiBold}, {say("How much"), 3.0}}, rows);
    pages.text(say("Resin holds {} percent of waste; filler comes on top. The coats add about {} to the boat "
                   "with cloth and varnish. Amounts follow a published estimate for cloth on wood strips; "
                   "your own hand counts for more, so note what the first coat really took.",
                   numberText(100 * choices.waste, 0),
                   weightText(plan.mass, units)));
    for (const Finding& finding : plan.findings)
        pages.text(toldPlainly(finding, units));
}

} // namespace

std::vector<Sheet>
coveringSheets(const Project& project, const AfterPlanking& after, Units units, PageSize size) {
    if (!after.covering || !project.covering || after.covering->faces.empty())
        return {};
    const Speaking speaking(project.language);
    std::vector<Sheet> sheets =
        fewestPages(pageOf(size), fitoutTitles::covering(project), [&](ListPages& pages) {
            covering(pages, *after.covering, *project.covering, after.glue, units);
        });
    addFeet(sheets, project, units, pageOf(size));
    return sheets;
}

} // namespace sheerlay::core

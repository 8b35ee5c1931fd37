#include "core/project/read_planking.hpp"

#include "core/project/wood.hpp"
#include "core/units/length.hpp"
#include "core/units/length_text.hpp"
#include "core/words/say.hpp"

#include <array>
#include <cmath>

namespace sheerlay::core {

namespace {

// Ranges that tell a slip of units from a strip: 1/4 in taken as 0.25 mm, 19 mm taken as 19 in.
constexpr double thinnest = 1.0;       // mm
constexpr double thickest = 50.8;      // mm, 2 in
constexpr double narrowestStrip = 3.0; // mm
constexpr double widestStrip = 101.6;  // mm, 4 in
// What a bead sits deep in its neighbour's cove: 1/8 in, common practice, no source.
constexpr double coveDepth = 3.175; // mm

std::string about(double mm) {
    return formatLength(mm, Units::Millimetres, 16, 2) + " (" + formatLength(mm, Units::Inches, 32) + ")";
}

struct Range {
    double least = 0.0;
    double most = 0.0;
};

std::optional<double> dimension(TableView& view, std::string_view key, Range range, Reading& reading) {
    const auto cell = view.length(key, Need::Required, Sign::Positive);
    if (!cell)
        return std::nullopt;
    if (reading.unitsKnown && (cell->value < range.least || cell->value > range.most)) {
        reading.messages.error(
            cell->line,
            view.keyOf(key),
            inEnglish(sayable("{}, which no strip has"), about(cell->value)),
            inEnglish(sayable("a length between {} and {}; inches and millimetres may have been "
                              "mixed up"),
                      about(range.least),
                      about(range.most)));
        return std::nullopt;
    }
    return cell->value;
}

void readStart(TableView& planking, StartLine& start, bool knuckled, Reading& reading) {
    using Kind = StartLine::Kind;
    auto view = planking.table("start", Need::Optional, "start = { line = \"sheer\" }");
    if (!view)
        return;
    const auto kind = view->choice<Kind>("line",
                                         Need::Required,
                                         {{"sheer", Kind::Sheer},
                                          {"geodesic", Kind::Geodesic},
                                          {"bent", Kind::Bent},
                                          {"easiest", Kind::Easiest},
                                          {"knuckle", Kind::Knuckle}});
    start.kind = kind.value_or(start.kind);
    if (start.kind == Kind::Knuckle && !knuckled)
        reading.messages.error(view->line(),
                               view->keyOf("line"),
                               "\"knuckle\" on a hull without one",
                               "a knuckle at every station of the table, or another start line");
    const bool shifted = start.kind == Kind::Geodesic || start.kind == Kind::Bent;
    if (const auto girth =
            view->length("girth", shifted ? Need::Required : Need::Optional, Sign::NotNegative)) {
        if (shifted)
            start.girth = girth->value;
        else if (kind)
            reading.messages.warning(girth->line,
                                     view->keyOf("girth"),
                                     "a girth, which this starting line does not use",
                                     "remove it, or start on a \"geodesic\" or a \"bent\" line");
    }
    constexpr std::string_view form = "edge-bend = [k0, k2, k4], three numbers per metre, + toward the keel";
    const bool bent = start.kind == Kind::Bent;
    const toml::array* bend = view->array("edge-bend", bent ? Need::Required : Need::Optional, form);
    view->reportUnknown();
    if (bend == nullptr)
        return;
    if (!bent) {
        if (kind)
            reading.messages.warning(lineOf(*bend),
                                     view->keyOf("edge-bend"),
                                     "an edge bend, which this starting line does not use",
                                     "remove it, or start on a \"bent\" line");
        return;
    }
    if (bend->size() != 3) {
        reading.messages.error(lineOf(*bend),
                               view->keyOf("edge-bend"),
                               "a list of " + std::to_string(bend->size()) + " values",
                               std::string(form));
        return;
    }
    for (std::size_t i = 0; i < 3; ++i) {
        const toml::node& node = *bend->get(i);
        const auto value = node.is_number() ? node.value<double>() : std::nullopt;
        if (value && std::isfinite(*value))
            start.edgeBend[i] = *value;
        else
            reading.messages.error(
                lineOf(node), view->keyOf("edge-bend"), describe(node, reading.source), std::string(form));
    }
}

void readLimits(TableView& view, const StripStock& strips, Planking& planking, Reading& reading) {
    auto limits = view.table("limits", Need::Optional, "limits = { edge-bend-radius = …, narrowest = … }");
    if (!limits)
        return;
    if (const auto radius = limits->length("edge-bend-radius", Need::Optional, Sign::Positive))
        planking.edgeBendRadius = radius->value;
    if (const auto narrowest = limits->length("narrowest", Need::Optional, Sign::Positive)) {
        if (narrowest->value > strips.width)
            reading.messages.error(
                narrowest->line,
                limits->keyOf("narrowest"),
                inEnglish(sayable("{}, wider than the strip itself"), about(narrowest->value)),
                inEnglish(sayable("a width up to the strip's {}"), about(strips.width)));
        planking.narrowest = narrowest->value;
    }
    limits->reportUnknown();
}

void readAccents(TableView& planking, std::vector<Accent>& accents, Reading& reading) {
    constexpr std::string_view form = "a list of { girth = … } or { height = … }, one for each accent row";
    const toml::array* list = planking.array("accents", Need::Optional, form);
    if (list == nullptr)
        return;
    int number = 0;
    for (const toml::node& node : *list) {
        const std::string path = planking.keyOf("accents") + "[" + std::to_string(++number) + "]";
        const toml::table* inner = node.as_table();
        if (inner == nullptr || inner->contains("girth") == inner->contains("height")) {
            reading.messages.error(lineOf(node),
                                   path,
                                   inner == nullptr ? describe(node, reading.source)
                                   : inner->empty() ? std::string("an empty table")
                                                    : "not just one of girth and height",
                                   std::string(form));
            continue;
        }
        TableView view(*inner, path, lineOf(node), reading);
        const bool girth = view.has("girth");
        if (const auto at = view.length(
                girth ? "girth" : "height", Need::Required, girth ? Sign::NotNegative : Sign::Any))
            accents.push_back({girth ? Accent::By::Girth : Accent::By::Height, at->value});
        view.reportUnknown();
    }
}

void readEnds(TableView& view, Planking& planking) {
    auto ends = view.table("ends", Need::Optional, "ends = { bow = \"weave\", stern = \"weave\" }");
    if (!ends)
        return;
    const auto style = [&](std::string_view key) {
        return ends->choice<EndStyle>(
            key,
            Need::Optional,
            {{"weave", EndStyle::Weave}, {"mitre", EndStyle::Mitre}, {"stem", EndStyle::Stem}});
    };
    planking.bowEnds = style("bow").value_or(EndStyle::Weave);
    planking.sternEnds = style("stern").value_or(EndStyle::Weave);
    ends->reportUnknown();
}

void readClosing(TableView& view, Planking& planking, Reading& reading) {
    auto closing = view.table("closing", Need::Optional, "closing = { method = \"both-sides\" }");
    if (!closing)
        return;
    planking.closing = closing
                           ->choice<ClosingMethod>("method",
                                                   Need::Optional,
                                                   {{"both-sides", ClosingMethod::BothSides},
                                                    {"run-over", ClosingMethod::RunOver},
                                                    {"herringbone", ClosingMethod::Herringbone},
                                                    {"split-bottom", ClosingMethod::SplitBottom}})
                           .value_or(ClosingMethod::BothSides);
    constexpr std::string_view form =
        "shutter = [least, most], two parts of a strip, rising, above 0 and up to 1";
    const toml::array* shutter = closing->array("shutter", Need::Optional, form);
    closing->reportUnknown();
    if (shutter == nullptr)
        return;
    std::array<double, 2> parts{};
    bool good = shutter->size() == 2;
    for (std::size_t i = 0; good && i < 2; ++i) {
        const toml::node& node = *shutter->get(i);
        const auto value = node.is_number() ? node.value<double>() : std::nullopt;
        good = value && *value > 0.0 && *value <= 1.0;
        parts[i] = value.value_or(0.0);
    }
    if (good && parts[0] < parts[1])
        planking.shutter = parts;
    else
        reading.messages.error(lineOf(*shutter),
                               closing->keyOf("shutter"),
                               good ? sayable("two parts that do not rise")
                                    : sayable("a list that is not two parts of a strip"),
                               std::string(form));
}

} // namespace

StripStock readStrips(TableView& file, Reading& reading) {
    StripStock strips;
    auto view = file.table("strips", Need::Required, "a table [strips] with thickness and width");
    if (!view)
        return strips;
    const auto thickness = dimension(*view, "thickness", {thinnest, thickest}, reading);
    const auto width = dimension(*view, "width", {narrowestStrip, widestStrip}, reading);
    const auto cover = view->length("cover-width", Need::Optional, Sign::Positive);
    strips.thickness = thickness.value_or(strips.thickness);
    strips.width = width.value_or(strips.width);
    strips.coverWidth = cover ? cover->value : strips.width - coveDepth;
    if (cover && width && cover->value > *width)
        reading.messages.error(cover->line,
                               view->keyOf("cover-width"),
                               inEnglish(sayable("{}, wider than the strip"), about(cover->value)),
                               inEnglish(sayable("a cover width up to the strip's {}"), about(*width)));
    if (cover && reading.unitsKnown && cover->value < narrowestStrip)
        reading.messages.error(
            cover->line,
            view->keyOf("cover-width"),
            inEnglish(sayable("{}, which no strip covers"), about(cover->value)),
            sayable("a cover width of 3 mm or more; inches and millimetres may have been mixed up"));
    if (!cover && !view->has("cover-width") && width && strips.coverWidth < *width / 2)
        reading.messages.error(view->line(),
                               view->keyOf("cover-width"),
                               "no cover width for a strip " + about(*width) + " wide",
                               "cover-width; a bead and cove of 1/8 in is too deep to be assumed here");
    if (const auto wood =
            view->text("wood", Need::Optional, "the name of a wood, such as \"western-redcedar\"")) {
        if (findWood(*wood) != nullptr)
            strips.wood = *wood;
        else
            reading.messages.error(view->lineOfKey("wood"),
                                   view->keyOf("wood"),
                                   "the wood " + quoted(*wood) + ", which is not known",
                                   "one of " + woodNames());
    }
    view->reportUnknown();
    return strips;
}

/// What can't be asked for of a hull with a knuckle. Only a warning, so that a project in which the window
/// left it opens again. @source core/planking/knuckle_rows, which refuses to plan the same
void checkKnuckled(TableView& view, const Planking& planking, Reading& reading) {
    const auto refuse = [&](const std::string& key, const std::string& found, const std::string& would) {
        reading.messages.warning(
            view.lineOfKey(key), view.keyOf(key), found + " on a hull with a knuckle", would);
    };
    if (planking.start.kind != StartLine::Kind::Knuckle)
        refuse("start",
               "a start line that rows would have to be bent from sharply over the knuckle,",
               "start = { line = \"knuckle\" }, or no start, which is the same");
    if (!planking.accents.empty())
        refuse("accents", "accent rows", "no accents: rows start at the knuckle, which stays where it is");
    if (planking.closing == ClosingMethod::SplitBottom)
        refuse(
            "closing",
            "a split bottom",
            "\"both-sides\", \"run-over\" or \"herringbone\": the bottom is planked by itself already, from "
            "the knuckle in");
}

Planking readPlanking(TableView& file, const StripStock& strips, bool knuckled, Reading& reading) {
    Planking planking;
    if (knuckled)
        planking.start.kind = StartLine::Kind::Knuckle;
    auto view = file.table("planking", Need::Optional, "a table [planking]");
    if (!view)
        return planking;
    planking.layOn = view->choice<LayOn>("lay-on",
                                         Need::Optional,
                                         {{"moulds", LayOn::Moulds},
                                          {"mid-thickness", LayOn::MidThickness},
                                          {"outside", LayOn::Outside}})
                         .value_or(LayOn::MidThickness);
    planking.taper =
        view->choice<Taper>("taper",
                            Need::Optional,
                            {{"none", Taper::None}, {"ends", Taper::Ends}, {"anywhere", Taper::Anywhere}})
            .value_or(Taper::None);
    readStart(*view, planking.start, knuckled, reading);
    readAccents(*view, planking.accents, reading);
    readLimits(*view, strips, planking, reading);
    readEnds(*view, planking);
    readClosing(*view, planking, reading);
    if (knuckled)
        checkKnuckled(*view, planking, reading);
    view->reportUnknown();
    return planking;
}

} // namespace sheerlay::core

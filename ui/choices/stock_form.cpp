#include "core/project/nominal_lumber.hpp"
#include "core/units/length.hpp"
#include "ui/choices/choice_form.hpp"
#include "ui/choices/form_builder.hpp"

#include <algorithm>
#include <string>

namespace sheerlay::ui {
namespace {

using core::BoardLot;
using core::Project;
using core::Stock;
using core::WoodRule;
using Kind = ChoiceField::Kind;

ChoiceGroup stripGroup() {
    FormBuilder<core::StripStock> form([](Project& p) -> core::StripStock& { return p.strips; });
    form.length(&core::StripStock::thickness, formText("Thickness"), formText("Of the milled strip."))
        .length(&core::StripStock::width, formText("Width"), formText("From edge to edge, bead included."))
        .length(
            &core::StripStock::coverWidth,
            formText("Covers"),
            formText("What a strip covers once its bead sits in its neighbour's cove; square-edged strips "
                     "cover their full width."));
    addWood(form, &core::StripStock::wood, formText("Of all strips that no other rule names."));
    return {formText("The strip"), form.fields(), {}};
}

FormBuilder<Stock> ofStock() {
    return FormBuilder<Stock>([](Project& p) -> Stock& { return *p.stock; });
}

ChoiceGroup millingGroup() {
    auto form = ofStock();
    form.length(&Stock::kerf,
                formText("Saw takes"),
                formText("The kerf of the blade that rips the strips: 1/8 in for a full one, 3/32 in for a "
                         "thin one, about 1/32 in for a band saw's. Best measured on a test cut."))
        .length(&Stock::planing,
                formText("Planer takes"),
                formText("Off a ripped strip's thickness, both faces together."))
        .length(&Stock::jointing,
                formText("Straight edge"),
                formText("Taken off the board's width for a straight edge before ripping."))
        .length(
            &Stock::surfacing,
            formText("Surfacing"),
            formText("Taken off the board's thickness, both faces together; nothing where boards are bought "
                     "planed."))
        .length(&Stock::endTrim,
                formText("Each end"),
                formText("Lost at each end of a board to checks and to the planer's snipe."))
        .scaled(Kind::Number,
                &Stock::spare,
                100.0,
                formText("Spare, percent"),
                formText("Strips beyond those needed; 8 to 15 percent is common."));
    return {formText("Milling"), form.fields(), [](Project& p) { p.stock.reset(); }};
}

ChoiceGroup scarfGroup() {
    auto form = ofStock();
    form.number(Kind::Number,
                &Stock::scarfSlope,
                formText("Slope"),
                formText("Length of a scarf over the strip's thickness; 8 is common."))
        .length(&Stock::longestPiece,
                formText("Longest piece"),
                formText("the board's length"),
                formText("The longest piece your shop can turn round."))
        .length(&Stock::shortestPiece,
                formText("Shortest piece"),
                formText("No piece of a scarfed strip is shorter."))
        .length(&Stock::jointWorth,
                formText("A joint is worth"),
                formText(
                    "Length of strip you would rather waste than glue one more scarf; 0 for the least wood."))
        .oneOf(&Stock::sides,
               formText("Both sides"),
               {formText("joined alike"), formText("joined in turn"), formText("book-matched")},
               formText(
                   "Port joined in the same mould bays as starboard, as in a mirror; in others; or alike, a "
                   "pair cut side by side from one board"));
    return {formText("Scarfs"), form.fields(), {}};
}

ChoiceGroup lotGroup(std::size_t index) {
    FormBuilder<BoardLot> form([index](Project& p) -> BoardLot& { return p.stock->lots[index]; });
    form.words(&BoardLot::name, formText("Name"), formText("Short; tells the boards apart on the sheets."));
    addWood(form, &BoardLot::wood, formText("Strips of a wood are cut from boards of it."));
    form.length(&BoardLot::thickness, formText("Thickness"), formText("As it measures, not as it is called."))
        .length(&BoardLot::width, formText("Width"), formText("As it measures: a 1x6 is 5 1/2 in wide."))
        .length(&BoardLot::length, formText("Length"), formText("Of one board."))
        .length(&BoardLot::chargedThickness,
                formText("Charged as"),
                formText("The thickness that board feet are reckoned with; at least 1 in."))
        .count(&BoardLot::count,
               formText("To be had"),
               formText("as many as needed"),
               formText("How many such boards you can get."))
        .number(Kind::Number,
                &BoardLot::price,
                formText("Price"),
                formText("not told"),
                formText("Of one board, in whatever money you count."));
    return {formText("Boards %1").arg(index + 1),
            form.fields(),
            removeAt(
                [](Project & p) -> auto& { return p.stock->lots; }, index)};
}

ChoiceGroup ruleGroup(std::size_t index, bool byRows) {
    FormBuilder<WoodRule> form([index](Project& p) -> WoodRule& { return p.stock->woodRules[index]; });
    addWood(form, &WoodRule::wood, formText("Of these rows, over what stands before."));
    if (byRows) // else a band of girth says which
        form.row(&WoodRule::firstRow,
                 formText("From row"),
                 formText("Counted from the start toward the keel; - above it."))
            .row(&WoodRule::lastRow, formText("To row"), formText("This row included."));
    form.count(&WoodRule::every,
               formText("Every"),
               formText("1 for each of the rows, 2 for every second, counted from the first."));
    return {formText("Wood of some rows %1").arg(index + 1),
            form.fields(),
            removeAt(
                [](Project & p) -> auto& { return p.stock->woodRules; }, index)};
}

/// Boards of a size that every yard has, under a letter of their own.
void addLot(Project& project) {
    constexpr double twelveFeet = 12 * core::mmPerFoot;
    Stock& stock = *project.stock;
    std::string name(1, 'A');
    while (std::ranges::find(stock.lots, name, &BoardLot::name) != stock.lots.end()) {
        if (name.back() == 'Z')
            name += 'A';
        else
            ++name.back();
    }
    const core::NominalLumber size = core::nominalLumber("1x6").value();
    stock.lots.push_back({name,
                          project.strips.wood,
                          size.thickness,
                          size.width,
                          twelveFeet,
                          size.chargedThickness,
                          std::nullopt,
                          std::nullopt,
                          {},
                          0});
}

} // namespace

ChoiceForm stockForm(const Project& project) {
    ChoiceForm form;
    form.groups.push_back(stripGroup());
    const auto boards = [](Project& p) {
        if (!p.stock)
            p.stock.emplace();
        addLot(p);
    };
    form.adders.push_back(
        {formText("Boards"),
         formText("Boards you can have, 1x6 of 12 ft at first: then the bench tells how many to buy."),
         boards});
    if (!project.stock)
        return form;
    for (std::size_t i = 0; i < project.stock->lots.size(); ++i)
        form.groups.push_back(lotGroup(i));
    form.groups.push_back(millingGroup());
    form.groups.push_back(scarfGroup());
    for (std::size_t i = 0; i < project.stock->woodRules.size(); ++i)
        form.groups.push_back(ruleGroup(i, !project.stock->woodRules[i].girth));
    form.adders.push_back({formText("Another wood for some rows"),
                           formText("Such as an accent of light strips below the sheer."),
                           [](Project& p) {
                               p.stock->woodRules.push_back({p.strips.wood, 1, 1, 1, {}, 0});
                           }});
    return form;
}

} // namespace sheerlay::ui

#include "core/project/nominal_lumber.hpp"
#include "core/project/saw_blades.hpp"
#include "core/project/ten_strips.hpp"
#include "core/units/length.hpp"
#include "ui/choices/choice_form.hpp"
#include "ui/choices/form_builder.hpp"
#include "ui/scene/wording.hpp"

#include <algorithm>
#include <string>
#include <string_view>

namespace sheerlay::ui {
namespace {

using core::BoardLot;
using core::Project;
using core::Stock;
using core::WoodRule;
using Kind = ChoiceField::Kind;

ChoiceGroup stripGroup() {
    FormBuilder<core::StripStock> form([](Project& p) -> core::StripStock& { return p.strips; });
    form.length(&core::StripStock::thickness, Wording::tr("Thickness"), Wording::tr("Of the milled strip."))
        .length(
            &core::StripStock::width, Wording::tr("Width"), Wording::tr("From edge to edge, bead included."))
        .length(
            &core::StripStock::coverWidth,
            Wording::tr("Covers"),
            Wording::tr("What a strip covers once its bead sits in its neighbour's cove; square-edged strips "
                        "cover their full width."));
    ChoiceField ten;
    ten.kind = Kind::Length;
    ten.label = Wording::tr("Ten laid");
    ten.meaning =
        Wording::tr("What ten milled strips measure across, laid edge to edge: puts in what one covers.");
    form.field(
        ten,
        [](const core::StripStock& strip) -> ChoiceValue { return core::tenStripsMeasure(strip); },
        [](core::StripStock& strip, const ChoiceValue& value) {
            const auto cover = core::coverByTenStrips(std::get<double>(value), strip);
            if (!cover)
                return Wording::tr("ten strips of this width can't measure that, look at the width");
            strip.coverWidth = *cover;
            return QString();
        });
    addWood(form, &core::StripStock::wood, Wording::tr("Of all strips that no other rule names."));
    return {Wording::tr("The strip"), form.fields(), {}};
}

FormBuilder<Stock> ofStock() {
    return FormBuilder<Stock>([](Project& p) -> Stock& { return *p.stock; });
}

/// A choice of what is common; none of it stands there when what was measured is something else.
ChoiceField commonOnes(const QString& label, const QStringList& words, const QString& meaning) {
    ChoiceField field;
    field.kind = Kind::OneOf;
    field.label = label;
    field.oneOf = words;
    field.leftOut = Wording::tr("as measured");
    field.meaning = meaning;
    return field;
}

void addBlade(FormBuilder<Stock>& form) {
    form.field(
        commonOnes(Wording::tr("Blade"),
                   {Wording::tr("full kerf"), Wording::tr("thin kerf"), Wording::tr("band saw")},
                   Wording::tr("Puts in what such a blade takes; a test cut tells better.")),
        [](const Stock& stock) -> ChoiceValue {
            const auto blade = core::bladeOf(stock.kerf);
            return blade ? ChoiceValue(static_cast<double>(*blade)) : ChoiceValue();
        },
        [](Stock& stock, const ChoiceValue& value) {
            if (const auto* chosen = std::get_if<double>(&value))
                stock.kerf = core::kerfOf(static_cast<core::SawBlade>(*chosen));
            return QString();
        });
}

ChoiceGroup millingGroup() {
    auto form = ofStock();
    addBlade(form);
    form.length(
            &Stock::kerf,
            Wording::tr("Saw takes"),
            Wording::tr("The kerf of the blade that rips the strips: 1/8 in for a full one, 3/32 in for a "
                        "thin one, about 1/32 in for a band saw's. Best measured on a test cut."))
        .length(&Stock::planing,
                Wording::tr("Planer takes"),
                Wording::tr("Off a ripped strip's thickness, both faces together."))
        .length(&Stock::jointing,
                Wording::tr("Straight edge"),
                Wording::tr("Taken off the board's width for a straight edge before ripping."))
        .length(&Stock::surfacing,
                Wording::tr("Surfacing"),
                Wording::tr(
                    "Taken off the board's thickness, both faces together; nothing where boards are bought "
                    "planed."))
        .length(&Stock::endTrim,
                Wording::tr("Each end"),
                Wording::tr("Lost at each end of a board to checks and to the planer's snipe."))
        .scaled(Kind::Number,
                &Stock::spare,
                100.0,
                Wording::tr("Spare, percent"),
                Wording::tr("Strips beyond those needed; 8 to 15 percent is common."));
    return {Wording::tr("Milling"), form.fields(), [](Project& p) { p.stock.reset(); }};
}

ChoiceGroup scarfGroup() {
    auto form = ofStock();
    form.number(Kind::Number,
                &Stock::scarfSlope,
                Wording::tr("Slope"),
                Wording::tr("Length of a scarf over the strip's thickness; 8 is common."))
        .length(&Stock::longestPiece,
                Wording::tr("Longest piece"),
                Wording::tr("the board's length"),
                Wording::tr("The longest piece your shop can turn round."))
        .length(&Stock::shortestPiece,
                Wording::tr("Shortest piece"),
                Wording::tr("No piece of a scarfed strip is shorter."))
        .length(&Stock::jointWorth,
                Wording::tr("A joint is worth"),
                Wording::tr(
                    "Length of strip you would rather waste than glue one more scarf; 0 for the least wood."))
        .oneOf(&Stock::sides,
               Wording::tr("Both sides"),
               {Wording::tr("joined alike"), Wording::tr("joined in turn"), Wording::tr("book-matched")},
               Wording::tr(
                   "Port joined in the same mould bays as starboard, as in a mirror; in others; or alike, a "
                   "pair cut side by side from one board"));
    return {Wording::tr("Scarfs"), form.fields(), {}};
}

void addBoardSize(FormBuilder<BoardLot>& form) {
    QStringList names;
    for (const std::string_view size : core::commonLumber)
        names << QString::fromLatin1(size.data(), static_cast<qsizetype>(size.size()));
    form.field(
        commonOnes(
            Wording::tr("Sold as"),
            names,
            Wording::tr("Puts in the sizes that dry, planed boards of that name have; a tape tells better.")),
        [](const BoardLot& lot) -> ChoiceValue {
            const auto size = core::commonLumberOf(lot.thickness, lot.width);
            return size ? ChoiceValue(static_cast<double>(*size)) : ChoiceValue();
        },
        [](BoardLot& lot, const ChoiceValue& value) {
            if (const auto* chosen = std::get_if<double>(&value)) {
                const core::NominalLumber size =
                    core::nominalLumber(core::commonLumber.at(static_cast<std::size_t>(*chosen))).value();
                lot.thickness = size.thickness;
                lot.width = size.width;
                lot.chargedThickness = size.chargedThickness;
            }
            return QString();
        });
}

ChoiceGroup lotGroup(std::size_t index) {
    FormBuilder<BoardLot> form([index](Project& p) -> BoardLot& { return p.stock->lots[index]; });
    form.words(
        &BoardLot::name, Wording::tr("Name"), Wording::tr("Short; tells the boards apart on the sheets."));
    addWood(form, &BoardLot::wood, Wording::tr("Strips of a wood are cut from boards of it."));
    addBoardSize(form);
    form.length(&BoardLot::thickness,
                Wording::tr("Thickness"),
                Wording::tr("As it measures, not as it is called."))
        .length(
            &BoardLot::width, Wording::tr("Width"), Wording::tr("As it measures: a 1x6 is 5 1/2 in wide."))
        .length(&BoardLot::length, Wording::tr("Length"), Wording::tr("Of one board."))
        .length(&BoardLot::chargedThickness,
                Wording::tr("Charged as"),
                Wording::tr("The thickness that board feet are reckoned with; at least 1 in."))
        .count(&BoardLot::count,
               Wording::tr("To be had"),
               Wording::tr("as many as needed"),
               Wording::tr("How many such boards you can get."))
        .number(Kind::Number,
                &BoardLot::price,
                Wording::tr("Price"),
                Wording::tr("not told"),
                Wording::tr("Of one board, in whatever money you count."));
    return {Wording::tr("Boards %1").arg(index + 1),
            form.fields(),
            removeAt(
                [](Project & p) -> auto& { return p.stock->lots; }, index)};
}

using Defect = std::array<double, 2>; // mm, from and to

/// A defect of a lot; what is typed moves it to its place among the others.
ChoiceGroup defectGroup(std::size_t lot, std::size_t index) {
    const auto defects = [lot](Project & p) -> auto& {
        return p.stock->lots[lot].defects;
    };
    FormBuilder<std::vector<Defect>> form(defects);
    for (const std::size_t end : {std::size_t{0}, std::size_t{1}}) {
        ChoiceField field;
        field.label = end == 0 ? Wording::tr("From") : Wording::tr("To");
        field.meaning =
            Wording::tr("From the board's first end. Every board of the lot is cut clear of it; a board "
                        "with knots of its own is a lot of one.");
        form.field(
            field,
            [index, end](const std::vector<Defect>& all) -> ChoiceValue { return all[index][end]; },
            [index, end](std::vector<Defect>& all, const ChoiceValue& value) {
                all[index][end] = std::get<double>(value);
                std::ranges::sort(all);
                return QString();
            });
    }
    return {Wording::tr("Defect %1 of boards %2").arg(index + 1).arg(lot + 1),
            form.fields(),
            removeAt(defects, index)};
}

/// In the middle of the longest clear length.
void addDefect(BoardLot& lot) {
    constexpr double most = 50.0; // mm long at first
    Defect widest{0.0, 0.0};
    double clear = 0.0;
    const auto weigh = [&](double from, double to) {
        if (to - from > widest[1] - widest[0])
            widest = {from, to};
        clear = to;
    };
    for (const Defect& defect : lot.defects) {
        weigh(clear, defect[0]);
        clear = defect[1];
    }
    weigh(clear, lot.length);
    const double middle = 0.5 * (widest[0] + widest[1]);
    const double half = 0.5 * std::min(most, 0.5 * (widest[1] - widest[0]));
    lot.defects.push_back({middle - half, middle + half});
    std::ranges::sort(lot.defects);
}

ChoiceGroup ruleGroup(std::size_t index, bool byRows) {
    FormBuilder<WoodRule> form([index](Project& p) -> WoodRule& { return p.stock->woodRules[index]; });
    addWood(form, &WoodRule::wood, Wording::tr("Of these rows, over what stands before."));
    if (byRows) // else a band of girth says which
        form.row(&WoodRule::firstRow,
                 Wording::tr("From row"),
                 Wording::tr("Counted from the start toward the keel; - above it."))
            .row(&WoodRule::lastRow, Wording::tr("To row"), Wording::tr("This row included."));
    form.count(&WoodRule::every,
               Wording::tr("Every"),
               Wording::tr("1 for each of the rows, 2 for every second, counted from the first."));
    return {Wording::tr("Wood of some rows %1").arg(index + 1),
            form.fields(),
            removeAt(
                [](Project & p) -> auto& { return p.stock->woodRules; }, index)};
}

void addLotGroups(ChoiceForm& form, const BoardLot& lot, std::size_t index) {
    form.groups.push_back(lotGroup(index));
    for (std::size_t i = 0; i < lot.defects.size(); ++i)
        form.groups.push_back(defectGroup(index, i));
    form.adders.push_back({Wording::tr("A defect of boards %1").arg(index + 1),
                           Wording::tr("A knot or check that every board of the lot is cut clear of."),
                           [index](Project& p) { addDefect(p.stock->lots[index]); }});
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
        {Wording::tr("Boards"),
         Wording::tr("Boards you can have, 1x6 of 12 ft at first: then the bench tells how many to buy."),
         boards});
    if (!project.stock)
        return form;
    for (std::size_t i = 0; i < project.stock->lots.size(); ++i)
        addLotGroups(form, project.stock->lots[i], i);
    form.groups.push_back(millingGroup());
    form.groups.push_back(scarfGroup());
    for (std::size_t i = 0; i < project.stock->woodRules.size(); ++i)
        form.groups.push_back(ruleGroup(i, !project.stock->woodRules[i].girth));
    form.adders.push_back({Wording::tr("Another wood for some rows"),
                           Wording::tr("Such as an accent of light strips below the sheer."),
                           [](Project& p) {
                               p.stock->woodRules.push_back({p.strips.wood, 1, 1, 1, {}, 0});
                           }});
    return form;
}

} // namespace sheerlay::ui

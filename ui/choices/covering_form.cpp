#include "ui/choices/choice_form.hpp"
#include "ui/choices/form_builder.hpp"
#include "ui/scene/wording.hpp"

#include <QRegularExpression>

namespace sheerlay::ui {
namespace {

using core::BulkheadCloth;
using core::ClothFace;
using core::CoveringChoices;
using core::MixParts;
using core::Project;
using Kind = ChoiceField::Kind;

constexpr double sixOunces = 203.4; // g/m2; 6 oz to the square yard, common on canoes, no source

CoveringChoices& coveringOf(Project& project) {
    return *project.covering;
}

/// The covering, begun where there is none yet.
CoveringChoices& begun(Project& project) {
    if (!project.covering)
        project.covering.emplace();
    return *project.covering;
}

ChoiceGroup faceGroup(std::optional<ClothFace> CoveringChoices::*face, const QString& title) {
    FormBuilder<ClothFace> form([face](Project& p) -> ClothFace& { return *(coveringOf(p).*face); });
    form.number(Kind::Cloth,
                &ClothFace::cloth,
                Wording::tr("Cloth"),
                Wording::tr(
                    "Its weight: ounces to the square yard (6 oz), or grams to the square metre (200 g)."))
        .length(&ClothFace::roll, Wording::tr("Roll"), Wording::tr("Width of the roll it comes on."))
        .oneOf(&ClothFace::lay,
               Wording::tr("Laid"),
               {Wording::tr("in fewest pieces"), Wording::tr("in one drape"), Wording::tr("a piece a side")},
               Wording::tr(
                   "One drape over the keel, or a piece a side with an overlap along it; the fewest pieces "
                   "that the roll allows."))
        .length(&ClothFace::overlap, Wording::tr("Overlap"), Wording::tr("Where two pieces meet."))
        .length(&ClothFace::overhang,
                Wording::tr("Overhang"),
                Wording::tr("Past sheer and stems, cut off later."))
        .count(&ClothFace::coats,
               Wording::tr("Fill coats"),
               Wording::tr("Rolled on after the cloth is wetted out."));
    return {title, form.fields(), [face](Project& p) { (coveringOf(p).*face).reset(); }};
}

ChoiceGroup bulkheadsGroup() {
    FormBuilder<BulkheadCloth> form([](Project& p) -> BulkheadCloth& { return *coveringOf(p).bulkheads; });
    form.number(Kind::Cloth,
                &BulkheadCloth::cloth,
                Wording::tr("Cloth"),
                Wording::tr(
                    "Its weight: ounces to the square yard (6 oz), or grams to the square metre (200 g)."))
        .length(&BulkheadCloth::roll, Wording::tr("Roll"), Wording::tr("Width of the roll it comes on."))
        .length(&BulkheadCloth::lap,
                Wording::tr("Turned out"),
                Wording::tr("Onto the hull, along sides and bottom."))
        .count(&BulkheadCloth::coats,
               Wording::tr("Fill coats"),
               Wording::tr("Rolled on after the cloth is wetted out."))
        .oneOf(&BulkheadCloth::faces,
               Wording::tr("Faces"),
               {Wording::tr("toward amidships"), Wording::tr("both")},
               Wording::tr("Both keep damp out of the board where the space behind is open."));
    return {Wording::tr("Cloth over bulkheads"), form.fields(), [](Project& p) {
                coveringOf(p).bulkheads.reset();
            }};
}

/// How resin is mixed, in one line: "3 : 1 by volume". Never assumed, so there is nothing to begin with.
FormBuilder<CoveringChoices>& addMix(FormBuilder<CoveringChoices>& form) {
    const ChoiceField field{
        Kind::Words,
        Wording::tr("Mixed"),
        Wording::tr("Parts of resin to parts of hardener as the maker prints them, such as “3 : 1 "
                    "by volume” or “100 : 45 by weight”."),
        Wording::tr("not told"),
        {},
        {},
        {}};
    return form.field(
        field,
        [](const CoveringChoices& c) -> ChoiceValue {
            if (!c.mix)
                return {};
            return QStringLiteral("%1 : %2 by %3")
                .arg(c.mix->resin)
                .arg(c.mix->hardener)
                .arg(c.mix->byWeight ? QStringLiteral("weight") : QStringLiteral("volume"));
        },
        [](CoveringChoices& c, const ChoiceValue& value) {
            static const QRegularExpression mixed(
                QStringLiteral(R"(^\s*(\d+\.?\d*)\s*(?::|to)\s*(\d+\.?\d*)\s*by\s+(volume|weight)\s*$)"));
            const auto* words = std::get_if<QString>(&value);
            c.mix.reset();
            if (words == nullptr)
                return QString();
            const auto said = mixed.match(words->toLower());
            if (!said.hasMatch())
                return Wording::tr("“%1”; “3 : 1 by volume” or “by weight” would do.").arg(*words);
            c.mix = MixParts{said.captured(1).toDouble(),
                             said.captured(2).toDouble(),
                             said.captured(3) == QStringLiteral("weight")};
            return QString();
        });
}

ChoiceGroup resinGroup() {
    FormBuilder<CoveringChoices> form(coveringOf);
    addMix(form);
    form.oneOf(&CoveringChoices::seal,
               Wording::tr("Bare wood"),
               {Wording::tr("no coat first"), Wording::tr("sealed first")},
               Wording::tr("A coat on the bare wood, so that the cloth does not starve."))
        .number(Kind::Number,
                &CoveringChoices::potLife,
                Wording::tr("Pot life, minutes"),
                Wording::tr("not told"),
                Wording::tr("As the maker prints it; without it no batches are told."))
        .number(Kind::Number,
                &CoveringChoices::pace,
                Wording::tr("Pace, m²/min"),
                Wording::tr("Square metres that one pair of hands wets out or rolls in a minute."))
        .scaled(Kind::Number,
                &CoveringChoices::waste,
                100.0,
                Wording::tr("Waste, percent"),
                Wording::tr("Left in pots, rollers and on the floor; 15 percent in the published formula."))
        .number(Kind::Number,
                &CoveringChoices::wetOut,
                Wording::tr("Wet-out, L/kg"),
                Wording::tr("Litres of mixed resin to a kilogram of cloth, without waste."))
        .number(Kind::Number,
                &CoveringChoices::fillCoat,
                Wording::tr("Fill coat, L/m²"),
                Wording::tr("Litres to a square metre, without waste."))
        .number(Kind::Number,
                &CoveringChoices::sealCoat,
                Wording::tr("Seal coat, L/m²"),
                Wording::tr("Litres to a square metre of bare wood."))
        .number(Kind::Number,
                &CoveringChoices::glueSpread,
                Wording::tr("Glue, g/m²"),
                Wording::tr("Grams to a square metre of glued face."))
        .length(&CoveringChoices::fillet,
                Wording::tr("Fillets"),
                Wording::tr("Their radius, on both faces of a bulkhead; 0 leaves them out."))
        .scaled(Kind::Number,
                &CoveringChoices::sanded,
                100.0,
                Wording::tr("Sanded, percent"),
                Wording::tr("Part of the fill coats that is sanded away."))
        .number(Kind::Number,
                &CoveringChoices::liquidDensity,
                Wording::tr("Liquid, kg/L"),
                Wording::tr("Of the mixed resin, to buy by."))
        .number(Kind::Number,
                &CoveringChoices::curedDensity,
                Wording::tr("Cured, kg/L"),
                Wording::tr("Of the hard resin, to weigh by."));
    return {Wording::tr("Resin"), form.fields(), {}};
}

ChoiceGroup clothGroup() {
    FormBuilder<CoveringChoices> form(coveringOf);
    form.scaled(Kind::Number,
                &CoveringChoices::clothSpare,
                100.0,
                Wording::tr("Spare, percent"),
                Wording::tr("Cloth bought beyond the pieces."))
        .number(Kind::Number,
                &CoveringChoices::give,
                Wording::tr("Give, degrees"),
                Wording::tr("How far the weave slides before it wrinkles and must be slit."));
    return {Wording::tr("Cloth on both faces"), form.fields(), [](Project& p) { p.covering.reset(); }};
}

ChoiceGroup varnishGroup() {
    FormBuilder<CoveringChoices> form(coveringOf);
    form.count(&CoveringChoices::varnishCoats,
               Wording::tr("Coats"),
               Wording::tr("At least three keep the sun off."))
        .number(Kind::Number,
                &CoveringChoices::varnishSpread,
                Wording::tr("Spread, m²/L"),
                Wording::tr("Square metres that a litre covers once."))
        .number(Kind::Number,
                &CoveringChoices::varnishFilm,
                Wording::tr("Film, g/m²"),
                Wording::tr("Left on the boat by a coat."));
    return {Wording::tr("Varnish"), form.fields(), {}};
}

ClothFace newFace(int coats) {
    ClothFace face;
    face.cloth = sixOunces;
    face.coats = coats;
    return face;
}

} // namespace

ChoiceForm coveringForm(const Project& project) {
    constexpr int coatsOutside = 3, coatsInside = 2; // as a file without the key is read
    const CoveringChoices none;
    const CoveringChoices& now = project.covering ? *project.covering : none;
    ChoiceForm form;
    if (now.outside)
        form.groups.push_back(faceGroup(&CoveringChoices::outside, Wording::tr("Cloth outside")));
    else
        form.adders.push_back({Wording::tr("Cloth outside"),
                               Wording::tr("Cloth and resin over the planking, and the varnish with it."),
                               [](Project& p) { begun(p).outside = newFace(coatsOutside); }});
    if (now.inside)
        form.groups.push_back(faceGroup(&CoveringChoices::inside, Wording::tr("Cloth inside")));
    else
        form.adders.push_back({Wording::tr("Cloth inside"),
                               Wording::tr("Cloth and resin inside."),
                               [](Project& p) { begun(p).inside = newFace(coatsInside); }});
    if (now.bulkheads)
        form.groups.push_back(bulkheadsGroup());
    else if (project.fitout && !project.fitout->bulkheads.empty())
        form.adders.push_back({Wording::tr("Cloth over bulkheads"),
                               Wording::tr("Laid flat and turned out onto the hull."),
                               [](Project& p) { begun(p).bulkheads.emplace().cloth = sixOunces; }});
    if (!project.covering)
        return form;
    form.groups.push_back(clothGroup());
    form.groups.push_back(resinGroup());
    form.groups.push_back(varnishGroup());
    return form;
}

} // namespace sheerlay::ui

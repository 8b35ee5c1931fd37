#include "ui/choices/choice_form.hpp"
#include "ui/choices/form_builder.hpp"
#include "ui/scene/wording.hpp"

#include <algorithm>

namespace sheerlay::ui {
namespace {

using core::Prices;

struct PriceWords {
    std::optional<double> Prices::*member;
    QString label, meaning;
};

std::vector<PriceWords> words() {
    const QString offRoll = Wording::tr("Off the roll, as wide as it is given.");
    return {
        {&Prices::strip, Wording::tr("Strip"), Wording::tr("Milled, where no boards are described.")},
        {&Prices::stick, Wording::tr("Stick"), Wording::tr("Wood for gunwales, rails, thwarts and hangers.")},
        {&Prices::plywood, Wording::tr("Plywood"), Wording::tr("For bulkheads and decks.")},
        {&Prices::mouldBoard, Wording::tr("Mould board"), Wording::tr("For moulds and stem forms.")},
        {&Prices::clothOutside, Wording::tr("Cloth outside"), offRoll},
        {&Prices::clothInside, Wording::tr("Cloth inside"), offRoll},
        {&Prices::clothBulkheads, Wording::tr("Cloth over bulkheads"), offRoll},
        {&Prices::resin, Wording::tr("Resin"), Wording::tr("Without its hardener.")},
        {&Prices::hardener, Wording::tr("Hardener"), Wording::tr("Without the resin.")},
        {&Prices::varnish, Wording::tr("Varnish"), Wording::tr("As it is sold.")},
        {&Prices::glue, Wording::tr("Glue"), Wording::tr("For wood, on the strips' edges.")},
        {&Prices::screw, Wording::tr("Screw"), Wording::tr("For the gunwales.")},
        {&Prices::plug, Wording::tr("Plug"), Wording::tr("Over a screw's head.")},
        {&Prices::bolt, Wording::tr("Bolt"), Wording::tr("With its nut and washers.")},
        {&Prices::cane, Wording::tr("Cane"), Wording::tr("For the seats.")}};
}

/// "Resin, a gallon": what the price is of.
QString withUnit(const QString& label, core::PricedBy by, bool inches) {
    switch (by) {
    case core::PricedBy::Run:
        return inches ? Wording::tr("%1, a foot").arg(label) : Wording::tr("%1, a metre").arg(label);
    case core::PricedBy::Cloth:
        return inches ? Wording::tr("%1, a yard").arg(label) : Wording::tr("%1, a metre").arg(label);
    case core::PricedBy::Volume:
        return inches ? Wording::tr("%1, a gallon").arg(label) : Wording::tr("%1, a litre").arg(label);
    case core::PricedBy::Piece:
        break;
    }
    return Wording::tr("%1, one").arg(label);
}

const core::PriceKey& keyOf(std::optional<double> Prices::*member) {
    const auto& keys = core::priceKeys();
    return *std::find_if(
        keys.begin(), keys.end(), [&](const core::PriceKey& k) { return k.member == member; });
}

} // namespace

ChoiceForm pricesForm(const core::Project& project) {
    FormBuilder<Prices> form([](core::Project& p) -> Prices& { return p.prices; });
    const bool inches = project.units == core::Units::Inches;
    for (const PriceWords& one : words()) {
        const core::PricedBy by = keyOf(one.member).by;
        const double of = inches ? core::pricedInInches(by) : 1.0;
        form.field(
            {ChoiceField::Kind::Number,
             withUnit(one.label, by, inches),
             one.meaning,
             Wording::tr("not told"),
             {},
             {},
             {}},
            [member = one.member, of](const Prices& p) -> ChoiceValue {
                return p.*member ? ChoiceValue(*(p.*member) * of) : ChoiceValue();
            },
            [member = one.member, of](Prices& p, const ChoiceValue& value) {
                const auto* given = std::get_if<double>(&value);
                p.*member = given != nullptr ? std::optional(*given / of) : std::nullopt;
                return QString();
            });
    }
    ChoiceForm all;
    all.groups.push_back({Wording::tr("Prices"), form.fields(), {}});
    return all;
}

} // namespace sheerlay::ui

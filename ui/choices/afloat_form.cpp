#include "ui/choices/choice_form.hpp"
#include "ui/choices/form_builder.hpp"
#include "ui/scene/wording.hpp"

#include <algorithm>
#include <iterator>

namespace sheerlay::ui {
namespace {

using core::AfloatChoices;
using core::PlacedWeight;
using core::Project;
using Kind = ChoiceField::Kind;
using Weights = std::vector<PlacedWeight> AfloatChoices::*;

AfloatChoices& afloatOf(Project& project) {
    return *project.afloat;
}

AfloatChoices& begun(Project& project) {
    if (!project.afloat)
        project.afloat.emplace();
    return *project.afloat;
}

ChoiceGroup waterGroup() {
    FormBuilder<AfloatChoices> form(afloatOf);
    form.number(Kind::Number,
                &AfloatChoices::density,
                Wording::tr("Water, kg/m³"),
                Wording::tr("Fresh water 1000, salt water 1025."))
        .length(&AfloatChoices::freeboard,
                Wording::tr("Freeboard kept"),
                Wording::tr("From the water to the lowest sheer at the largest load."))
        .number(Kind::Weight,
                &AfloatChoices::boatMass,
                Wording::tr("She weighs"),
                Wording::tr("from her parts"),
                Wording::tr("The boat alone, once you have weighed her."));
    return {Wording::tr("Afloat"), form.fields(), [](Project& p) { p.afloat.reset(); }};
}

ChoiceGroup weightGroup(Weights list, std::size_t index, const QString& title) {
    FormBuilder<PlacedWeight> form(
        [list, index](Project& p) -> PlacedWeight& { return (afloatOf(p).*list)[index]; });
    form.words(&PlacedWeight::name, Wording::tr("Name"), Wording::tr("As it stands on the sheet."))
        .number(
            Kind::Weight, &PlacedWeight::mass, Wording::tr("Weight"), Wording::tr("With clothes and boots."))
        .length(&PlacedWeight::x, Wording::tr("At"), Wording::tr("In the table's x."))
        .length(
            &PlacedWeight::height,
            Wording::tr("Height"),
            Wording::tr(
                "Of the weight's own centre above the base line; a sitting paddler's is about 10 in above "
                "the seat."))
        .length(&PlacedWeight::y,
                Wording::tr("Off centre"),
                Wording::tr("From the centreline; + to starboard, - to port."));
    return {title.arg(index + 1),
            form.fields(),
            removeAt(
                [list](Project & p) -> auto& { return afloatOf(p).*list; }, index)};
}

/// Where the builder has not said yet: amidships, about where a sitting paddler's centre is.
PlacedWeight placed(const Project& project, std::string name, double mass) {
    constexpr double height = 400.0; // mm above the base line; from memory
    return {std::move(name), mass, middleOf(project), 0.0, height, 0};
}

} // namespace

ChoiceForm afloatForm(const Project& project) {
    ChoiceForm form;
    if (project.afloat) {
        form.groups.push_back(waterGroup());
        for (std::size_t i = 0; i < project.afloat->loads.size(); ++i)
            form.groups.push_back(weightGroup(&AfloatChoices::loads, i, Wording::tr("Aboard %1")));
        for (std::size_t i = 0; i < project.afloat->parts.size(); ++i)
            form.groups.push_back(weightGroup(&AfloatChoices::parts, i, Wording::tr("Part of her %1")));
    }
    constexpr double paddler = 80.0, pack = 20.0, part = 1.0; // kg, to be changed
    form.adders.push_back({Wording::tr("A paddler"),
                           Wording::tr("Put amidships at first; give weight and place."),
                           [](Project& p) { begun(p).loads.push_back(placed(p, "paddler", paddler)); }});
    form.adders.push_back({Wording::tr("Gear"),
                           Wording::tr("A pack, a dog, a cooler; give weight and place."),
                           [](Project& p) { begun(p).loads.push_back(placed(p, "pack", pack)); }});
    form.adders.push_back({Wording::tr("A part of the boat"),
                           Wording::tr("What the fit-out does not know of, such as a foot brace."),
                           [](Project& p) { begun(p).parts.push_back(placed(p, "part", part)); }});
    return form;
}

ChoiceForm fittingOutForm(const Project& project) {
    ChoiceForm all;
    all.folded = true;
    for (const auto part : {fitoutForm, coveringForm, afloatForm, pricesForm}) {
        ChoiceForm form = part(project);
        std::ranges::move(form.groups, std::back_inserter(all.groups));
        std::ranges::move(form.adders, std::back_inserter(all.adders));
    }
    return all;
}

} // namespace sheerlay::ui

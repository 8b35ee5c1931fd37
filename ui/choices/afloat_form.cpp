#include "ui/choices/choice_form.hpp"
#include "ui/choices/form_builder.hpp"

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
                formText("Water, kg/m³"),
                formText("Fresh water 1000, salt water 1025."))
        .length(&AfloatChoices::freeboard,
                formText("Freeboard kept"),
                formText("From the water to the lowest sheer at the largest load."))
        .number(Kind::Weight,
                &AfloatChoices::boatMass,
                formText("She weighs"),
                formText("from her parts"),
                formText("The boat alone, once you have weighed her."));
    return {formText("Afloat"), form.fields(), [](Project& p) { p.afloat.reset(); }};
}

ChoiceGroup weightGroup(Weights list, std::size_t index, const QString& title) {
    FormBuilder<PlacedWeight> form(
        [list, index](Project& p) -> PlacedWeight& { return (afloatOf(p).*list)[index]; });
    form.words(&PlacedWeight::name, formText("Name"), formText("As it stands on the sheet."))
        .number(Kind::Weight, &PlacedWeight::mass, formText("Weight"), formText("With clothes and boots."))
        .length(&PlacedWeight::x, formText("At"), formText("In the table's x."))
        .length(
            &PlacedWeight::height,
            formText("Height"),
            formText(
                "Of the weight's own centre above the base line; a sitting paddler's is about 10 in above "
                "the seat."))
        .length(&PlacedWeight::y,
                formText("Off centre"),
                formText("From the centreline; + to starboard, - to port."));
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
            form.groups.push_back(weightGroup(&AfloatChoices::loads, i, formText("Aboard %1")));
        for (std::size_t i = 0; i < project.afloat->parts.size(); ++i)
            form.groups.push_back(weightGroup(&AfloatChoices::parts, i, formText("Part of her %1")));
    }
    constexpr double paddler = 80.0, pack = 20.0, part = 1.0; // kg, to be changed
    form.adders.push_back({formText("A paddler"),
                           formText("Put amidships at first; give weight and place."),
                           [](Project& p) { begun(p).loads.push_back(placed(p, "paddler", paddler)); }});
    form.adders.push_back({formText("Gear"),
                           formText("A pack, a dog, a cooler; give weight and place."),
                           [](Project& p) { begun(p).loads.push_back(placed(p, "pack", pack)); }});
    form.adders.push_back({formText("A part of the boat"),
                           formText("What the fit-out does not know of, such as a foot brace."),
                           [](Project& p) { begun(p).parts.push_back(placed(p, "part", part)); }});
    return form;
}

ChoiceForm fittingOutForm(const Project& project) {
    ChoiceForm all;
    all.folded = true;
    for (const auto part : {fitoutForm, coveringForm, afloatForm}) {
        ChoiceForm form = part(project);
        std::ranges::move(form.groups, std::back_inserter(all.groups));
        std::ranges::move(form.adders, std::back_inserter(all.adders));
    }
    return all;
}

} // namespace sheerlay::ui

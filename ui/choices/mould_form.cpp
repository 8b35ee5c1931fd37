#include "core/units/length.hpp"
#include "ui/choices/choice_form.hpp"
#include "ui/choices/form_builder.hpp"
#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"

namespace sheerlay::ui {
namespace {

using core::MouldChoices;

/// The stations that carry a mould, as a list of places; typed and read in the project's own units.
FormBuilder<MouldChoices>& addStations(FormBuilder<MouldChoices>& form, core::Units units) {
    const ChoiceField field{
        ChoiceField::Kind::Words,
        Wording::tr("Only at"),
        Wording::tr("Places of the moulds in the table's x, one behind the other with semicolons "
                    "between; instead of a spacing."),
        Wording::tr("see above"),
        {},
        {},
        {}};
    return form.field(
        field,
        [units](const MouldChoices& moulds) -> ChoiceValue {
            QStringList places;
            for (const double x : moulds.stations)
                places << QString::fromStdString(core::formatLength(x, units, 32, 1));
            return places.join(QStringLiteral("; "));
        },
        [units](MouldChoices& moulds, const ChoiceValue& value) {
            std::vector<double> places;
            const auto* text = std::get_if<QString>(&value);
            for (const QString& place :
                 (text != nullptr ? *text : QString()).split(u';', Qt::SkipEmptyParts)) {
                const auto read = core::parseLength(place.trimmed().toStdString(), units);
                if (!read)
                    return Wording::tr("%1; %2 would do.")
                        .arg(heardText(read.error().found), heardText(read.error().would));
                places.push_back(read->millimetres);
            }
            moulds.stations = places;
            if (!places.empty())
                moulds.spacing.reset();
            return QString();
        });
}

ChoiceGroup mouldGroup(const core::Project& project) {
    FormBuilder<MouldChoices> form([](core::Project& p) -> MouldChoices& { return p.moulds; });
    form.length(&MouldChoices::thickness,
                Wording::tr("Board"),
                Wording::tr("Thickness of the board that moulds and stem forms are sawn from."));
    const ChoiceField spacing{
        ChoiceField::Kind::Length,
        Wording::tr("Spacing"),
        Wording::tr("A mould stands at every multiple of this from the bow. Left empty, one stands "
                    "at every station of the table."),
        Wording::tr("at every station"),
        {},
        {},
        {}};
    form.field(
        spacing,
        [](const MouldChoices& moulds) -> ChoiceValue {
            return moulds.spacing ? ChoiceValue(*moulds.spacing) : ChoiceValue();
        },
        [](MouldChoices& moulds, const ChoiceValue& value) {
            moulds.spacing.reset();
            if (const auto* given = std::get_if<double>(&value)) {
                moulds.spacing = *given;
                moulds.stations.clear(); // one of the two says where every mould stands
            }
            return QString();
        });
    addStations(form, project.units);
    form.length(&MouldChoices::kerf,
                Wording::tr("Between parts"),
                Wording::tr("Kept free between two parts on a sheet: the saw's cut and room to steer it."));
    form.oneOf(
        &MouldChoices::shape,
        Wording::tr("Patterns"),
        {Wording::tr("half, to be turned over"), Wording::tr("whole")},
        Wording::tr("A half pattern is drawn round twice, mirrored about the centreline, and so comes out "
                    "alike on both sides."));
    return {Wording::tr("Moulds"), form.fields(), {}};
}

ChoiceGroup strongbackGroup() {
    FormBuilder<core::Strongback> form(
        [](core::Project& p) -> core::Strongback& { return p.moulds.strongback; });
    form.length(&core::Strongback::width,
                Wording::tr("Width"),
                Wording::tr("Across the boat; the beam or ladder the moulds stand on."))
        .length(&core::Strongback::height, Wording::tr("Height"), Wording::tr("From its foot to its top."))
        .length(&core::Strongback::clear,
                Wording::tr("Clear"),
                Wording::tr("Between its top and the highest point of the sheer: room for clamps and hands "
                            "below the first strip."));
    return {Wording::tr("Strongback"), form.fields(), {}};
}

ChoiceGroup holesGroup() {
    FormBuilder<core::EdgeHoles> form([](core::Project& p) -> core::EdgeHoles& { return *p.moulds.holes; });
    form.length(&core::EdgeHoles::pitch, Wording::tr("Apart"), Wording::tr("Along the mould's edge."))
        .length(&core::EdgeHoles::inset, Wording::tr("From the edge"), Wording::tr("To the hole's middle."))
        .length(
            &core::EdgeHoles::diameter, Wording::tr("Across"), Wording::tr("What the clamp or cord needs."));
    return {Wording::tr("Holes for clamps"), form.fields(), [](core::Project& p) { p.moulds.holes.reset(); }};
}

ChoiceGroup sheetGroup(std::size_t index, bool last) {
    FormBuilder<core::SheetSize> form(
        [index](core::Project& p) -> core::SheetSize& { return p.moulds.sheets[index]; });
    form.length(&core::SheetSize::length, Wording::tr("Length"), Wording::tr("The longer side of the sheet."))
        .length(&core::SheetSize::width, Wording::tr("Width"), Wording::tr("The shorter side of the sheet."))
        .count(&core::SheetSize::count,
               Wording::tr("To be had"),
               Wording::tr("as many as needed"),
               Wording::tr("How many such sheets there are; the first size is begun first."));
    ChoiceGroup group{Wording::tr("Sheets of board %1").arg(index + 1), form.fields(), {}};
    if (!last)
        group.remove = removeAt(
            [](core::Project & p) -> auto& { return p.moulds.sheets; }, index);
    return group;
}

} // namespace

ChoiceForm mouldForm(const core::Project& project) {
    ChoiceForm form;
    form.groups = {mouldGroup(project), strongbackGroup()};
    for (std::size_t i = 0; i < project.moulds.sheets.size(); ++i)
        form.groups.push_back(sheetGroup(i, project.moulds.sheets.size() == 1));
    form.adders.push_back({Wording::tr("Another size of sheet"),
                           Wording::tr("Such as offcuts you have; 8 by 4 ft at first."),
                           [](core::Project& p) { p.moulds.sheets.emplace_back(); }});
    if (project.moulds.holes)
        form.groups.push_back(holesGroup());
    else
        form.adders.push_back(
            {Wording::tr("Holes for clamps"),
             Wording::tr("Small holes along every mould's edge, to hook a clamp or a cord into."),
             [](core::Project& p) { p.moulds.holes.emplace(); }});
    return form;
}

} // namespace sheerlay::ui

#include "tests/support/catch.hpp"
#include "tests/support/full_project.hpp"
#include "tests/support/qt_app.hpp"
#include "ui/choices/choice_form.hpp"
#include "ui/choices/form_builder.hpp"

#include <set>

using namespace sheerlay;
using namespace sheerlay::ui;
using namespace sheerlay::test;

namespace {

struct App {
    App() { qtApp(); }
};

struct NamedForm {
    const char* name;
    FormOf of;
};

const NamedForm forms[] = {{"moulds", mouldForm}, {"stock", stockForm}, {"fitting out", fittingOutForm}};

ChoiceField fieldOf(const ChoiceForm& form, const char* group, const char* label) {
    for (const ChoiceGroup& g : form.groups)
        for (const ChoiceField& field : g.fields)
            if (g.title == QString::fromUtf8(group) && field.label == QString::fromUtf8(label))
                return field;
    FAIL("no field " << label << " in " << group);
    throw std::logic_error("not reached");
}

} // namespace

TEST_CASE_METHOD(App, "every field tells what the project says, what it means, and puts back what it told") {
    const core::Project project = fullProject();
    int fields = 0;
    for (const NamedForm& form : forms) {
        std::set<QString> titles;
        for (const ChoiceGroup& group : form.of(project).groups) {
            CHECK(titles.insert(group.title).second);
            std::set<QString> labels;
            for (const ChoiceField& field : group.fields) {
                INFO(form.name << ": " << group.title.toStdString() << ", " << field.label.toStdString());
                ++fields;
                CHECK(labels.insert(field.label).second);
                CHECK(field.meaning.size() > 10);
                const ChoiceValue value = field.get(project);
                if (std::holds_alternative<std::monostate>(value)) {
                    CHECK_FALSE(field.leftOut.isEmpty());
                    continue;
                }
                core::Project same = project;
                CHECK(field.put(same, value).isEmpty());
                const ChoiceValue again = field.get(same);
                REQUIRE(again.index() == value.index());
                if (const auto* number = std::get_if<double>(&value)) {
                    CHECK_THAT(std::get<double>(again), WithinRel(*number, 1e-12));
                    if (field.kind == ChoiceField::Kind::OneOf)
                        CHECK(*number < static_cast<double>(field.oneOf.size()));
                } else {
                    CHECK(again == value);
                }
            }
        }
    }
    CHECK(fields > 90); // one for each key of the README's tables
}

TEST_CASE_METHOD(App, "each choice of a list is one that the file can say") {
    const core::Project project = fullProject();
    for (const NamedForm& form : forms)
        for (const ChoiceGroup& group : form.of(project).groups)
            for (const ChoiceField& field : group.fields)
                for (int i = 0; i < field.oneOf.size(); ++i) {
                    INFO(group.title.toStdString() << ", " << field.label.toStdString() << " " << i);
                    core::Project next = project;
                    CHECK(field.put(next, static_cast<double>(i)).isEmpty());
                    CHECK(std::get<double>(field.get(next)) == i);
                    CHECK(core::checked(next).has_value());
                }
}

TEST_CASE_METHOD(App, "whatever is added to a project, or taken out of it, can be read again") {
    const core::Project bare = parsed(smallProject());
    for (const core::Project& project : {bare, fullProject()})
        for (const NamedForm& form : forms) {
            const ChoiceForm shown = form.of(project);
            for (const ChoiceAdder& adder : shown.adders) {
                INFO(form.name << ", + " << adder.title.toStdString());
                core::Project next = project;
                adder.add(next);
                CHECK_FALSE(next == project);
                CHECK(core::checked(next).has_value());
                CHECK(form.of(next).groups.size() > shown.groups.size());
            }
            for (const ChoiceGroup& group : shown.groups) {
                if (!group.remove)
                    continue;
                INFO(form.name << ", - " << group.title.toStdString());
                core::Project next = project;
                group.remove(next);
                CHECK_FALSE(next == project);
                CHECK(core::checked(next).has_value());
            }
        }
}

TEST_CASE_METHOD(App, "stations and a spacing take each other's place") {
    core::Project project = fullProject();
    const ChoiceField stations = fieldOf(mouldForm(project), "Moulds", "Only at");
    const ChoiceField spacing = fieldOf(mouldForm(project), "Moulds", "Spacing");
    CHECK(spacing.put(project, 250.0).isEmpty());
    CHECK(project.moulds.spacing == 250.0);
    CHECK(stations.put(project, QStringLiteral("600; 3' 1/2\"")).isEmpty());
    CHECK_FALSE(project.moulds.spacing);
    REQUIRE(project.moulds.stations.size() == 2);
    CHECK_THAT(project.moulds.stations[1], WithinAbs(36.5 * 25.4, 1e-9));
    const core::Project before = project;
    CHECK_FALSE(stations.put(project, QStringLiteral("600; amidships")).isEmpty());
    CHECK(project == before);
    CHECK(spacing.put(project, 250.0).isEmpty());
    CHECK(project.moulds.stations.empty());
}

TEST_CASE_METHOD(App, "a seat has one height, and resin is mixed only as the maker says") {
    core::Project project = fullProject();
    const ChoiceForm form = fittingOutForm(project);
    CHECK(fieldOf(form, "Seat 1", "Below the sheer").put(project, 60.0).isEmpty());
    CHECK(project.fitout->seats[0].belowSheer == 60.0);
    CHECK_FALSE(project.fitout->seats[0].aboveBottom);
    CHECK_FALSE(fieldOf(form, "Seat 1", "Below the sheer").put(project, {}).isEmpty());
    CHECK(core::checked(project).has_value());

    const ChoiceField mix = fieldOf(form, "Resin", "Mixed");
    CHECK(std::get<QString>(mix.get(project)) == QStringLiteral("3 : 1 by volume"));
    CHECK(mix.put(project, QStringLiteral("100:45 by weight")).isEmpty());
    CHECK(project.covering->mix == core::MixParts{100.0, 45.0, true});
    CHECK_FALSE(mix.put(project, QStringLiteral("3 to 1")).isEmpty()); // of what?
    core::Project none = fullProject();
    CHECK(mix.put(none, {}).isEmpty());
    CHECK_FALSE(none.covering->mix);
    core::Project fresh = parsed(smallProject());
    for (const ChoiceAdder& adder : fittingOutForm(fresh).adders)
        if (adder.title == QStringLiteral("Cloth outside"))
            adder.add(fresh);
    REQUIRE(fresh.covering);
    CHECK_FALSE(fresh.covering->mix); // never assumed
}

TEST_CASE_METHOD(App, "boards come under letters of their own") {
    core::Project project = parsed(smallProject());
    for (int i = 0; i < 30; ++i)
        stockForm(project).adders.front().add(project);
    std::set<std::string> names;
    for (const core::BoardLot& lot : project.stock->lots)
        names.insert(lot.name);
    CHECK(names.size() == 30);
    CHECK(core::checked(project).has_value());
}

TEST_CASE_METHOD(App,
                 "boards and blades can be taken by their common names, and still typed as they measure") {
    core::Project project = parsed(smallProject());
    stockForm(project).adders.front().add(project);
    const ChoiceForm form = stockForm(project);
    const ChoiceField sold = fieldOf(form, "Boards 1", "Sold as"), blade = fieldOf(form, "Milling", "Blade");
    CHECK(sold.oneOf.at(static_cast<int>(std::get<double>(sold.get(project)))) == QLatin1String("1x6"));
    CHECK(blade.oneOf.at(static_cast<int>(std::get<double>(blade.get(project)))) ==
          QLatin1String("full kerf"));

    CHECK(sold.put(project, static_cast<double>(sold.oneOf.indexOf(QLatin1String("5/4x8")))).isEmpty());
    const core::BoardLot& lot = project.stock->lots.front();
    CHECK_THAT(lot.thickness, WithinAbs(25.4, 1e-9)); // PS 20: 5/4 dry is 1 in, 8 is 7 1/4
    CHECK_THAT(lot.width, WithinAbs(7.25 * 25.4, 1e-9));
    CHECK_THAT(lot.chargedThickness, WithinAbs(1.25 * 25.4, 1e-9));
    CHECK(blade.put(project, static_cast<double>(blade.oneOf.indexOf(QLatin1String("thin kerf")))).isEmpty());
    CHECK_THAT(project.stock->kerf, WithinAbs(2.38125, 1e-9));

    project.stock->kerf = 2.0;
    project.stock->lots.front().width = 150.0;
    CHECK(std::holds_alternative<std::monostate>(sold.get(project)));
    CHECK(std::holds_alternative<std::monostate>(blade.get(project)));
}

TEST_CASE_METHOD(App, "the test of ten strips puts in what one covers, and refuses what they can't measure") {
    core::Project project = parsed(smallProject());
    const ChoiceField ten = fieldOf(stockForm(project), "The strip", "Ten laid");
    const double before = project.strips.coverWidth;
    const double told = std::get<double>(ten.get(project));
    CHECK(ten.put(project, told + 0.9).isEmpty());
    CHECK_THAT(project.strips.coverWidth, WithinAbs(before + 0.1, 1e-9));
    CHECK_FALSE(ten.put(project, 20 * project.strips.width).isEmpty());
    CHECK_THAT(project.strips.coverWidth, WithinAbs(before + 0.1, 1e-9));
}

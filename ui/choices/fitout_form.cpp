#include "ui/choices/choice_form.hpp"
#include "ui/choices/form_builder.hpp"

#include <numbers>

namespace sheerlay::ui {
namespace {

using core::BulkheadChoice;
using core::CaningChoice;
using core::DeckChoice;
using core::FitoutChoices;
using core::GunwaleChoices;
using core::Project;
using core::ScupperChoice;
using core::SeatChoice;
using core::StickSize;
using core::ThwartChoice;
using Kind = ChoiceField::Kind;

constexpr double degreesPerRadian = 180.0 / std::numbers::pi;

FitoutChoices& fitoutOf(Project& project) {
    return *project.fitout;
}

std::vector<ChoiceField> sizeFields(std::function<StickSize&(Project&)> of, const QString& what) {
    FormBuilder<StickSize> form(std::move(of));
    form.length(&StickSize::width, formText("%1, width").arg(what), formText("Across the stick."))
        .length(&StickSize::height, formText("%1, height").arg(what), formText("Up and down."));
    return form.fields();
}

ChoiceGroup wholeGroup() {
    FormBuilder<FitoutChoices> form(fitoutOf);
    addWood(form, &FitoutChoices::wood, formText("Of gunwales, seats, thwarts and yoke."));
    form.length(&FitoutChoices::glassInside,
                formText("Glass inside"),
                formText("Thickness of cloth and resin inside; every part fits against it."))
        .length(&FitoutChoices::glassOutside,
                formText("Glass outside"),
                formText("Thickness of cloth and resin outside."));
    return {formText("All parts"), form.fields(), [](Project& p) { p.fitout.reset(); }};
}

GunwaleChoices& gunwalesOf(Project& project) {
    return *fitoutOf(project).gunwales;
}

ChoiceGroup gunwaleGroup() {
    std::vector<ChoiceField> sizes =
        joined(sizeFields([](Project& p) -> StickSize& { return gunwalesOf(p).inner; }, formText("Inner")),
               sizeFields([](Project& p) -> StickSize& { return gunwalesOf(p).outer; }, formText("Outer")));
    FormBuilder<GunwaleChoices> form(gunwalesOf);
    form.oneOf(&GunwaleChoices::stand,
               formText("They stand"),
               {formText("plumb"), formText("along the side")},
               formText("Faces plumb, or flared with the planking."))
        .oneOf(&GunwaleChoices::edge,
               formText("At the edge"),
               {formText("beside the planking"), formText("lapping it")},
               formText("The outer one beside the planking's edge, or rabbeted to cover it."))
        .length(&GunwaleChoices::stockLength,
                formText("Stock"),
                formText("The longest piece to be had; what is longer is scarfed."))
        .number(Kind::Number,
                &GunwaleChoices::scarfSlope,
                formText("Scarf slope"),
                formText("Length of a scarf over the stick's width; 10 holds as well as the wood."))
        .length(&GunwaleChoices::overLength,
                formText("Over length"),
                formText("Left at each end, to be cut when it is fitted."))
        .length(&GunwaleChoices::screwSpacing, formText("Screws apart"), formText("6 to 8 in is common."))
        .oneOf(&GunwaleChoices::plugs,
               formText("Screw heads"),
               {formText("flush"), formText("under plugs")},
               formText("Plugs of the same wood hide the heads."));
    return {formText("Gunwales"), joined(std::move(sizes), form.fields()), [](Project& p) {
                fitoutOf(p).gunwales.reset();
            }};
}

ChoiceGroup scupperGroup() {
    FormBuilder<ScupperChoice> form([](Project& p) -> ScupperChoice& { return *gunwalesOf(p).scuppers; });
    form.length(&ScupperChoice::opening, formText("Opening"), formText("Along the gunwale."))
        .length(&ScupperChoice::block, formText("Block"), formText("Wood between two openings."))
        .length(&ScupperChoice::solidEnds,
                formText("Solid ends"),
                formText("No opening nearer than this to either end."));
    return {formText("Scuppers"), form.fields(), [](Project& p) { gunwalesOf(p).scuppers.reset(); }};
}

QStringList ends() {
    return {formText("bow"), formText("stern")};
}

ChoiceGroup bulkheadGroup(std::size_t index) {
    FormBuilder<BulkheadChoice> form(
        [index](Project& p) -> BulkheadChoice& { return fitoutOf(p).bulkheads[index]; });
    form.oneOf(&BulkheadChoice::end, formText("At the"), ends(), formText("The end it closes off."))
        .length(&BulkheadChoice::fromEnd,
                formText("From the end"),
                formText("From that end's outermost point to the face toward amidships."))
        .length(&BulkheadChoice::thickness, formText("Board"), formText("Its thickness."))
        .length(
            &BulkheadChoice::gap, formText("Gap"), formText("Left all round for glue or a strip of foam."))
        .length(&BulkheadChoice::belowSheer,
                formText("Below the sheer"),
                formText("Its top under the line across the sheer."))
        .length(&BulkheadChoice::crown,
                formText("Crown"),
                formText("Rise of its top at the centreline over that line."));
    return {formText("Bulkhead %1").arg(index + 1),
            form.fields(),
            removeAt(
                [](Project & p) -> auto& { return fitoutOf(p).bulkheads; }, index)};
}

ChoiceGroup deckGroup(std::size_t index) {
    FormBuilder<DeckChoice> form([index](Project& p) -> DeckChoice& { return fitoutOf(p).decks[index]; });
    form.oneOf(&DeckChoice::end, formText("At the"), ends(), formText("The end it covers."))
        .length(&DeckChoice::length,
                formText("Length"),
                formText("From that end's outermost point to the deck's inner edge."))
        .length(&DeckChoice::thickness, formText("Board"), formText("Its thickness."))
        .length(&DeckChoice::crown,
                formText("Crown"),
                formText("Rise at the centreline of its inner edge; sprung to one radius all along."))
        .oneOf(&DeckChoice::between,
               formText("Lands on"),
               {formText("the gunwales"), formText("the planking")},
               formText("What its edges are fitted against."));
    return {formText("Deck %1").arg(index + 1),
            form.fields(),
            removeAt(
                [](Project & p) -> auto& { return fitoutOf(p).decks; }, index)};
}

/// One of two heights: the other is cleared.
ChoiceField heightField(const QString& label, const QString& meaning, const QString& leftOut) {
    return {Kind::Length, label, meaning, leftOut, {}, {}, {}};
}

template <class Form>
void addHeight(Form& form,
               const ChoiceField& field,
               std::optional<double> SeatChoice::*height,
               std::optional<double> SeatChoice::*other) {
    form.field(
        field,
        [height](const SeatChoice& seat) -> ChoiceValue {
            return seat.*height ? ChoiceValue(*(seat.*height)) : ChoiceValue();
        },
        [height, other](SeatChoice& seat, const ChoiceValue& value) {
            const auto* given = std::get_if<double>(&value);
            if (given == nullptr && seat.*height)
                return formText("a seat without a height; give one of the two heights.");
            if (given != nullptr) {
                seat.*height = *given;
                (seat.*other).reset();
            }
            return QString();
        });
}

ChoiceGroup seatGroup(std::size_t index) {
    const auto seatOf = [index](Project& p) -> SeatChoice& { return fitoutOf(p).seats[index]; };
    FormBuilder<SeatChoice> form(seatOf);
    form.words(&SeatChoice::name, formText("Name"), formText("As it stands on the sheets."))
        .length(&SeatChoice::x, formText("At"), formText("Its middle, in the table's x."));
    addHeight(form,
              heightField(formText("Above the bottom"),
                          formText("The top of the seat's middle over the inside on the centreline."),
                          formText("or below the sheer")),
              &SeatChoice::aboveBottom,
              &SeatChoice::belowSheer);
    addHeight(form,
              heightField(formText("Below the sheer"),
                          formText("The top of the seat's middle under the line across the sheer."),
                          formText("or above the bottom")),
              &SeatChoice::belowSheer,
              &SeatChoice::aboveBottom);
    form.length(&SeatChoice::depth, formText("Depth"), formText("Fore and aft, over both rails."))
        .scaled(Kind::Number,
                &SeatChoice::tilt,
                degreesPerRadian,
                formText("Tilt, degrees"),
                formText("With + the forward edge is lower, as one likes it for kneeling."))
        .oneOf(&SeatChoice::on,
               formText("Hangs on"),
               {formText("hangers"), formText("cleats")},
               formText("Bolts through the inner gunwale with hangers between, or cleats on the side."))
        .length(&SeatChoice::boltInset,
                formText("Bolts in"),
                formText("half the gunwale"),
                formText("From the inner gunwale's inner edge."))
        .length(&SeatChoice::opening,
                formText("Opening"),
                formText("what the boat leaves"),
                formText("Between the side rails."))
        .length(&SeatChoice::footRoom,
                formText("Foot room"),
                formText("Wanted between the seat's underside and the bottom, for feet when kneeling."));
    return {
        formText("Seat %1").arg(index + 1),
        joined(form.fields(),
               sizeFields([seatOf](Project& p) -> StickSize& { return seatOf(p).rail; }, formText("Rail"))),
        removeAt(
            [](Project & p) -> auto& { return fitoutOf(p).seats; }, index)};
}

ChoiceGroup caningGroup(std::size_t index) {
    FormBuilder<CaningChoice> form(
        [index](Project& p) -> CaningChoice& { return *fitoutOf(p).seats[index].caning; });
    form.length(&CaningChoice::spacing, formText("Holes apart"), formText("Middle to middle."))
        .length(
            &CaningChoice::hole, formText("Hole"), formText("Across; what the cane needs drawn six ways."))
        .length(&CaningChoice::inset,
                formText("From the edge"),
                formText("From the opening to the holes' middles."));
    return {formText("Caning of seat %1").arg(index + 1), form.fields(), [index](Project& p) {
                fitoutOf(p).seats[index].caning.reset();
            }};
}

std::vector<ChoiceField> thwartFields(const std::function<ThwartChoice&(Project&)>& of,
                                      const QString& leftOut) {
    FormBuilder<ThwartChoice> form(of);
    form.words(&ThwartChoice::name, formText("Name"), formText("As it stands on the sheets."))
        .length(&ThwartChoice::x, formText("At"), leftOut, formText("Its middle, in the table's x."))
        .length(&ThwartChoice::boltInset,
                formText("Bolts in"),
                formText("half the gunwale"),
                formText("From the inner gunwale's inner edge."));
    return joined(form.fields(),
                  sizeFields([of](Project& p) -> StickSize& { return of(p).size; }, formText("Bar")));
}

ChoiceGroup thwartGroup(std::size_t index) {
    return {formText("Thwart %1").arg(index + 1),
            thwartFields([index](Project& p) -> ThwartChoice& { return fitoutOf(p).thwarts[index]; }, {}),
            removeAt(
                [](Project & p) -> auto& { return fitoutOf(p).thwarts; }, index)};
}

ChoiceGroup yokeGroup() {
    return {formText("Yoke"),
            thwartFields([](Project& p) -> ThwartChoice& { return *fitoutOf(p).yoke; },
                         formText("where she balances")),
            [](Project& p) { fitoutOf(p).yoke.reset(); }};
}

/// The fit-out, begun where there is none yet.
FitoutChoices& begun(Project& project) {
    if (!project.fitout)
        project.fitout.emplace();
    return *project.fitout;
}

SeatChoice newSeat(const Project& project, std::size_t number) {
    SeatChoice seat;
    seat.name = "seat " + std::to_string(number);
    seat.x = middleOf(project);
    seat.aboveBottom = 230.0; // mm; low enough to be steady, high enough for feet; common practice, no source
    return seat;
}

std::vector<ChoiceAdder> addersOf(const Project& project) {
    const FitoutChoices none;
    const FitoutChoices& now = project.fitout ? *project.fitout : none;
    std::vector<ChoiceAdder> adders;
    if (!now.gunwales)
        adders.push_back({formText("Gunwales"),
                          formText("An inner and an outer stick along the sheer on both sides."),
                          [](Project& p) { begun(p).gunwales.emplace(); }});
    else if (!now.gunwales->scuppers)
        adders.push_back({formText("Scuppers"),
                          formText("Openings under the inner gunwale, to drain her through."),
                          [](Project& p) { gunwalesOf(p).scuppers.emplace(); }});
    adders.push_back({formText("A bulkhead"), formText("Closes off the space in an end."), [](Project& p) {
                          begun(p).bulkheads.emplace_back();
                      }});
    adders.push_back({formText("A deck"), formText("Covers an end between the gunwales."), [](Project& p) {
                          begun(p).decks.emplace_back();
                      }});
    adders.push_back(
        {formText("A seat"), formText("Put amidships at first; give its place."), [](Project& p) {
             auto& seats = begun(p).seats;
             seats.push_back(newSeat(p, seats.size() + 1));
         }});
    for (std::size_t i = 0; i < now.seats.size(); ++i)
        if (!now.seats[i].caning)
            adders.push_back({formText("Caning of seat %1").arg(i + 1),
                              formText("Holes round its opening, and cane drawn through them."),
                              [i](Project& p) { fitoutOf(p).seats[i].caning.emplace(); }});
    adders.push_back(
        {formText("A thwart"), formText("A bar across the boat under the inner gunwales."), [](Project& p) {
             auto& thwarts = begun(p).thwarts;
             thwarts.push_back(
                 {"thwart " + std::to_string(thwarts.size() + 1), middleOf(p), {57.15, 19.05}, {}});
         }});
    if (!now.yoke)
        adders.push_back({formText("A yoke"),
                          formText("To carry her on your shoulders, where she balances."),
                          [](Project& p) { begun(p).yoke.emplace().name = "yoke"; }});
    return adders;
}

} // namespace

ChoiceForm fitoutForm(const Project& project) {
    ChoiceForm form;
    form.adders = addersOf(project);
    if (!project.fitout)
        return form;
    const FitoutChoices& now = *project.fitout;
    form.groups.push_back(wholeGroup());
    if (now.gunwales)
        form.groups.push_back(gunwaleGroup());
    if (now.gunwales && now.gunwales->scuppers)
        form.groups.push_back(scupperGroup());
    for (std::size_t i = 0; i < now.bulkheads.size(); ++i)
        form.groups.push_back(bulkheadGroup(i));
    for (std::size_t i = 0; i < now.decks.size(); ++i)
        form.groups.push_back(deckGroup(i));
    for (std::size_t i = 0; i < now.seats.size(); ++i) {
        form.groups.push_back(seatGroup(i));
        if (now.seats[i].caning)
            form.groups.push_back(caningGroup(i));
    }
    for (std::size_t i = 0; i < now.thwarts.size(); ++i)
        form.groups.push_back(thwartGroup(i));
    if (now.yoke)
        form.groups.push_back(yokeGroup());
    return form;
}

} // namespace sheerlay::ui

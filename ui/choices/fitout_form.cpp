#include "ui/choices/choice_form.hpp"
#include "ui/choices/form_builder.hpp"
#include "ui/scene/wording.hpp"

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
    form.length(&StickSize::width, Wording::tr("%1, width").arg(what), Wording::tr("Across the stick."))
        .length(&StickSize::height, Wording::tr("%1, height").arg(what), Wording::tr("Up and down."));
    return form.fields();
}

ChoiceGroup wholeGroup() {
    FormBuilder<FitoutChoices> form(fitoutOf);
    addWood(form, &FitoutChoices::wood, Wording::tr("Of gunwales, seats, thwarts and yoke."));
    form.length(&FitoutChoices::glassInside,
                Wording::tr("Glass inside"),
                Wording::tr("Thickness of cloth and resin inside; every part fits against it."))
        .length(&FitoutChoices::glassOutside,
                Wording::tr("Glass outside"),
                Wording::tr("Thickness of cloth and resin outside."))
        .length(&FitoutChoices::boltDiameter,
                Wording::tr("Bolts"),
                Wording::tr("Across, of seats, thwarts and yoke."));
    return {Wording::tr("All parts"), form.fields(), [](Project& p) { p.fitout.reset(); }};
}

GunwaleChoices& gunwalesOf(Project& project) {
    return *fitoutOf(project).gunwales;
}

ChoiceGroup gunwaleGroup() {
    std::vector<ChoiceField> sizes = joined(
        sizeFields([](Project& p) -> StickSize& { return gunwalesOf(p).inner; }, Wording::tr("Inner")),
        sizeFields([](Project& p) -> StickSize& { return gunwalesOf(p).outer; }, Wording::tr("Outer")));
    FormBuilder<GunwaleChoices> form(gunwalesOf);
    form.oneOf(&GunwaleChoices::stand,
               Wording::tr("They stand"),
               {Wording::tr("plumb"), Wording::tr("along the side")},
               Wording::tr("Faces plumb, or flared with the planking."))
        .oneOf(&GunwaleChoices::edge,
               Wording::tr("At the edge"),
               {Wording::tr("beside the planking"), Wording::tr("lapping it")},
               Wording::tr("The outer one beside the planking's edge, or rabbeted to cover it."))
        .length(&GunwaleChoices::stockLength,
                Wording::tr("Stock"),
                Wording::tr("The longest piece to be had; what is longer is scarfed."))
        .number(Kind::Number,
                &GunwaleChoices::scarfSlope,
                Wording::tr("Scarf slope"),
                Wording::tr("Length of a scarf over the stick's width; 10 holds as well as the wood."))
        .length(&GunwaleChoices::overLength,
                Wording::tr("Over length"),
                Wording::tr("Left at each end, to be cut when it is fitted."))
        .length(
            &GunwaleChoices::screwSpacing, Wording::tr("Screws apart"), Wording::tr("6 to 8 in is common."))
        .oneOf(&GunwaleChoices::plugs,
               Wording::tr("Screw heads"),
               {Wording::tr("flush"), Wording::tr("under plugs")},
               Wording::tr("Plugs of the same wood hide the heads."))
        .length(&GunwaleChoices::screwDiameter, Wording::tr("Screws"), Wording::tr("Across the shank."))
        .length(&GunwaleChoices::screwLength,
                Wording::tr("Screws, length"),
                Wording::tr("two thirds into the outer one"),
                Wording::tr("Without it, as long as the sticks ask for."));
    return {Wording::tr("Gunwales"), joined(std::move(sizes), form.fields()), [](Project& p) {
                fitoutOf(p).gunwales.reset();
            }};
}

ChoiceGroup scupperGroup() {
    FormBuilder<ScupperChoice> form([](Project& p) -> ScupperChoice& { return *gunwalesOf(p).scuppers; });
    form.length(&ScupperChoice::opening, Wording::tr("Opening"), Wording::tr("Along the gunwale."))
        .length(&ScupperChoice::block, Wording::tr("Block"), Wording::tr("Wood between two openings."))
        .length(&ScupperChoice::solidEnds,
                Wording::tr("Solid ends"),
                Wording::tr("No opening nearer than this to either end."));
    return {Wording::tr("Scuppers"), form.fields(), [](Project& p) { gunwalesOf(p).scuppers.reset(); }};
}

QStringList ends() {
    return {Wording::tr("bow"), Wording::tr("stern")};
}

ChoiceGroup bulkheadGroup(std::size_t index) {
    FormBuilder<BulkheadChoice> form(
        [index](Project& p) -> BulkheadChoice& { return fitoutOf(p).bulkheads[index]; });
    form.oneOf(&BulkheadChoice::end, Wording::tr("At the"), ends(), Wording::tr("The end it closes off."))
        .length(&BulkheadChoice::fromEnd,
                Wording::tr("From the end"),
                Wording::tr("From that end's outermost point to the face toward amidships."))
        .length(&BulkheadChoice::thickness, Wording::tr("Board"), Wording::tr("Its thickness."))
        .length(&BulkheadChoice::gap,
                Wording::tr("Gap"),
                Wording::tr("Left all round for glue or a strip of foam."))
        .length(&BulkheadChoice::belowSheer,
                Wording::tr("Below the sheer"),
                Wording::tr("Its top under the line across the sheer."))
        .length(&BulkheadChoice::crown,
                Wording::tr("Crown"),
                Wording::tr("Rise of its top at the centreline over that line."));
    return {Wording::tr("Bulkhead %1").arg(index + 1),
            form.fields(),
            removeAt(
                [](Project & p) -> auto& { return fitoutOf(p).bulkheads; }, index)};
}

ChoiceGroup deckGroup(std::size_t index) {
    FormBuilder<DeckChoice> form([index](Project& p) -> DeckChoice& { return fitoutOf(p).decks[index]; });
    form.oneOf(&DeckChoice::end, Wording::tr("At the"), ends(), Wording::tr("The end it covers."))
        .length(&DeckChoice::length,
                Wording::tr("Length"),
                Wording::tr("From that end's outermost point to the deck's inner edge."))
        .length(&DeckChoice::thickness, Wording::tr("Board"), Wording::tr("Its thickness."))
        .length(&DeckChoice::crown,
                Wording::tr("Crown"),
                Wording::tr("Rise at the centreline of its inner edge; sprung to one radius all along."))
        .oneOf(&DeckChoice::between,
               Wording::tr("Lands on"),
               {Wording::tr("the gunwales"), Wording::tr("the planking")},
               Wording::tr("What its edges are fitted against."));
    return {Wording::tr("Deck %1").arg(index + 1),
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
                return Wording::tr("a seat without a height; give one of the two heights.");
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
    form.words(&SeatChoice::name, Wording::tr("Name"), Wording::tr("As it stands on the sheets."))
        .length(&SeatChoice::x, Wording::tr("At"), Wording::tr("Its middle, in the table's x."));
    addHeight(form,
              heightField(Wording::tr("Above the bottom"),
                          Wording::tr("The top of the seat's middle over the inside on the centreline."),
                          Wording::tr("or below the sheer")),
              &SeatChoice::aboveBottom,
              &SeatChoice::belowSheer);
    addHeight(form,
              heightField(Wording::tr("Below the sheer"),
                          Wording::tr("The top of the seat's middle under the line across the sheer."),
                          Wording::tr("or above the bottom")),
              &SeatChoice::belowSheer,
              &SeatChoice::aboveBottom);
    form.length(&SeatChoice::depth, Wording::tr("Depth"), Wording::tr("Fore and aft, over both rails."))
        .scaled(Kind::Number,
                &SeatChoice::tilt,
                degreesPerRadian,
                Wording::tr("Tilt, degrees"),
                Wording::tr("With + the forward edge is lower, as one likes it for kneeling."))
        .oneOf(&SeatChoice::on,
               Wording::tr("Hangs on"),
               {Wording::tr("hangers"), Wording::tr("cleats")},
               Wording::tr("Bolts through the inner gunwale with hangers between, or cleats on the side."))
        .length(&SeatChoice::boltInset,
                Wording::tr("Bolts in"),
                Wording::tr("half the gunwale"),
                Wording::tr("From the inner gunwale's inner edge."))
        .length(&SeatChoice::opening,
                Wording::tr("Opening"),
                Wording::tr("what the boat leaves"),
                Wording::tr("Between the side rails."))
        .length(&SeatChoice::footRoom,
                Wording::tr("Foot room"),
                Wording::tr("Wanted between the seat's underside and the bottom, for feet when kneeling."))
        .length(&SeatChoice::legRoom,
                Wording::tr("Leg room"),
                Wording::tr("Wanted from its forward edge to the next thwart, seat or bulkhead before it; 0 "
                            "where one sits facing aft."));
    return {Wording::tr("Seat %1").arg(index + 1),
            joined(form.fields(),
                   sizeFields([seatOf](Project& p) -> StickSize& { return seatOf(p).rail; },
                              Wording::tr("Rail"))),
            removeAt(
                [](Project & p) -> auto& { return fitoutOf(p).seats; }, index)};
}

ChoiceGroup caningGroup(std::size_t index) {
    FormBuilder<CaningChoice> form(
        [index](Project& p) -> CaningChoice& { return *fitoutOf(p).seats[index].caning; });
    form.length(&CaningChoice::spacing, Wording::tr("Holes apart"), Wording::tr("Middle to middle."))
        .length(&CaningChoice::hole,
                Wording::tr("Hole"),
                Wording::tr("Across; what the cane needs drawn six ways."))
        .length(&CaningChoice::inset,
                Wording::tr("From the edge"),
                Wording::tr("From the opening to the holes' middles."));
    return {Wording::tr("Caning of seat %1").arg(index + 1), form.fields(), [index](Project& p) {
                fitoutOf(p).seats[index].caning.reset();
            }};
}

std::vector<ChoiceField> thwartFields(const std::function<ThwartChoice&(Project&)>& of,
                                      const QString& leftOut) {
    FormBuilder<ThwartChoice> form(of);
    form.words(&ThwartChoice::name, Wording::tr("Name"), Wording::tr("As it stands on the sheets."))
        .length(&ThwartChoice::x, Wording::tr("At"), leftOut, Wording::tr("Its middle, in the table's x."))
        .length(&ThwartChoice::boltInset,
                Wording::tr("Bolts in"),
                Wording::tr("half the gunwale"),
                Wording::tr("From the inner gunwale's inner edge."))
        .length(&ThwartChoice::kneeRoom,
                Wording::tr("Knee room"),
                Wording::tr("Wanted between its underside and the bottom, for knees and feet."));
    return joined(form.fields(),
                  sizeFields([of](Project& p) -> StickSize& { return of(p).size; }, Wording::tr("Bar")));
}

ChoiceGroup thwartGroup(std::size_t index) {
    return {Wording::tr("Thwart %1").arg(index + 1),
            thwartFields([index](Project& p) -> ThwartChoice& { return fitoutOf(p).thwarts[index]; }, {}),
            removeAt(
                [](Project & p) -> auto& { return fitoutOf(p).thwarts; }, index)};
}

ChoiceGroup yokeGroup() {
    return {Wording::tr("Yoke"),
            thwartFields([](Project& p) -> ThwartChoice& { return *fitoutOf(p).yoke; },
                         Wording::tr("where she balances")),
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
        adders.push_back({Wording::tr("Gunwales"),
                          Wording::tr("An inner and an outer stick along the sheer on both sides."),
                          [](Project& p) { begun(p).gunwales.emplace(); }});
    else if (!now.gunwales->scuppers)
        adders.push_back({Wording::tr("Scuppers"),
                          Wording::tr("Openings under the inner gunwale, to drain her through."),
                          [](Project& p) { gunwalesOf(p).scuppers.emplace(); }});
    adders.push_back({Wording::tr("A bulkhead"),
                      Wording::tr("Closes off the space in an end."),
                      [](Project& p) { begun(p).bulkheads.emplace_back(); }});
    adders.push_back({Wording::tr("A deck"),
                      Wording::tr("Covers an end between the gunwales."),
                      [](Project& p) { begun(p).decks.emplace_back(); }});
    adders.push_back(
        {Wording::tr("A seat"), Wording::tr("Put amidships at first; give its place."), [](Project& p) {
             auto& seats = begun(p).seats;
             seats.push_back(newSeat(p, seats.size() + 1));
         }});
    for (std::size_t i = 0; i < now.seats.size(); ++i)
        if (!now.seats[i].caning)
            adders.push_back({Wording::tr("Caning of seat %1").arg(i + 1),
                              Wording::tr("Holes round its opening, and cane drawn through them."),
                              [i](Project& p) { fitoutOf(p).seats[i].caning.emplace(); }});
    adders.push_back(
        {Wording::tr("A thwart"),
         Wording::tr("A bar across the boat under the inner gunwales."),
         [](Project& p) {
             auto& thwarts = begun(p).thwarts;
             thwarts.push_back(
                 {"thwart " + std::to_string(thwarts.size() + 1), middleOf(p), {57.15, 19.05}, {}});
         }});
    if (!now.yoke)
        adders.push_back({Wording::tr("A yoke"),
                          Wording::tr("To carry her on your shoulders, where she balances."),
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

#include "core/fitout/fitout.hpp"

#include "core/fitout/fastenings.hpp"
#include "core/units/both_units.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {

namespace {

void gather(std::vector<Finding>& all, std::vector<Finding> more) {
    all.insert(all.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

/// Takes a part out of its plan, and what was found with it.
template <class Part>
void take(std::vector<Part>& parts,
          std::optional<Part> part,
          std::vector<Finding> found,
          std::vector<Finding>& all) {
    if (part)
        parts.push_back(std::move(*part));
    gather(all, std::move(found));
}

Finding needsGunwales(const std::string& name) {
    return {
        Level::Caution,
        "no-gunwales",
        std::nullopt,
        std::nullopt,
        say("The {} goes under gunwales that the file does not describe; a table [fitout.gunwales] would do.",
            name)};
}

/// What stands across the boat, by its after face.
struct Across {
    std::string name;
    double aft = 0.0; // mm from the bow
};

/// Legs want room before a seat, toward the bow: up to the next thwart, seat or bulkhead.
void checkLegRoom(Fitout& f) {
    std::vector<Across> all;
    for (const Bulkhead& b : f.bulkheads)
        if (b.choice.end == End::Bow)
            all.push_back({sayable("bow bulkhead"), b.x});
    for (const Seat& s : f.seats)
        all.push_back({s.choice.name, s.x + s.choice.depth / 2 * std::cos(s.choice.tilt)});
    for (const Thwart& t : f.thwarts)
        all.push_back({t.name, t.x + t.bar.piece.width / 2});
    if (f.yoke)
        all.push_back({f.yoke->name, f.yoke->x + f.yoke->bar.piece.width / 2});
    for (const Seat& s : f.seats) {
        const double edge = s.x - s.choice.depth / 2 * std::cos(s.choice.tilt);
        const Across* before = nullptr;
        for (const Across& one : all)
            if (one.aft <= edge && (before == nullptr || one.aft > before->aft))
                before = &one;
        if (before == nullptr || edge - before->aft >= s.choice.legRoom)
            continue;
        f.findings.push_back(
            {Level::Note,
             "leg-room",
             std::nullopt,
             edge,
             say("Before the {} there are {} to the {}, less than the {} wanted for a paddler's legs; "
                 "another place would do, or leg-room = 0 where one sits facing aft.",
                 s.choice.name,
                 bothUnits(edge - before->aft),
                 before->name,
                 bothUnits(s.choice.legRoom))});
    }
}

} // namespace

Expected<std::optional<Fitout>, std::string>
planFitout(const Project& project, const LoftedHull& hull, const Plan& plan, const BalanceAt& balance) {
    if (!project.fitout)
        return std::optional<Fitout>{};
    const FitoutChoices& choices = *project.fitout;
    auto faces = facesOf(project, hull);
    if (!faces)
        return unexpected(faces.error());
    Fitout f;
    f.sheerMarks = sheerMarks(project, hull, plan);
    f.fairing = fairing(project, hull, plan);
    gather(f.findings, f.fairing.findings);

    std::optional<InnerGunwale> inner;
    if (choices.gunwales) {
        GunwalePlan made = planGunwales(project, hull, *faces);
        f.gunwales = std::move(made.gunwales);
        gather(f.findings, std::move(made.findings));
        gather(f.findings, checkScrews(project));
        inner = InnerGunwale{choices.gunwales->inner, f.gunwales->innerLine};
    }
    for (const BulkheadChoice& choice : choices.bulkheads) {
        BulkheadPlan made = planBulkhead(choice, *faces, choices.decks);
        take(f.bulkheads, std::move(made.bulkhead), std::move(made.findings), f.findings);
    }
    for (const DeckChoice& choice : choices.decks) {
        DeckPlan made = planDeck(choice, *faces, choices.gunwales);
        take(f.decks, std::move(made.deck), std::move(made.findings), f.findings);
    }
    for (const SeatChoice& choice : choices.seats) {
        SeatPlan made = planSeat(choice, *faces, hull.xShift, inner);
        take(f.seats, std::move(made.seat), std::move(made.findings), f.findings);
    }
    for (const ThwartChoice& choice : choices.thwarts) {
        if (!inner) {
            f.findings.push_back(needsGunwales(choice.name));
            continue;
        }
        ThwartPlan made = planThwart(choice, choice.x.value_or(0.0) + hull.xShift, *faces, *inner);
        take(f.thwarts, std::move(made.thwart), std::move(made.findings), f.findings);
    }
    if (choices.yoke && !inner)
        f.findings.push_back(needsGunwales(choices.yoke->name));
    if (choices.yoke && inner) {
        const double x = choices.yoke->x ? *choices.yoke->x + hull.xShift : balance(f);
        ThwartPlan made = planThwart(*choices.yoke, x, *faces, *inner);
        f.yoke = std::move(made.thwart);
        gather(f.findings, std::move(made.findings));
    }
    checkLegRoom(f);
    std::stable_sort(f.findings.begin(), f.findings.end(), [](const Finding& a, const Finding& b) {
        return a.level > b.level;
    });
    return std::optional<Fitout>(std::move(f));
}

} // namespace sheerlay::core

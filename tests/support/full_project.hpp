#pragma once

#include "core/project/project_edit.hpp"
#include "tests/support/project_text.hpp"

namespace sheerlay::test {

/// The small project with one of everything that a form can hold.
[[nodiscard]] inline core::Project fullProject() {
    core::Project project = parsed(smallProject());
    project.moulds.holes.emplace();
    project.stock.emplace();
    project.stock->longestPiece = 2400.0;
    project.stock->lots.push_back({"A",
                                   project.strips.wood,
                                   19.05,
                                   139.7,
                                   3657.6,
                                   25.4,
                                   12,
                                   18.5,
                                   {{{600.0, 650.0}}, {{1200.0, 1230.0}}},
                                   0});
    project.stock->woodRules.push_back({"northern-white-cedar", -1, 3, 2, {}, 0});
    core::FitoutChoices& fitout = project.fitout.emplace();
    fitout.gunwales.emplace().scuppers.emplace();
    fitout.bulkheads.emplace_back();
    fitout.decks.push_back({core::End::Stern});
    core::SeatChoice seat;
    seat.name = "stern seat";
    seat.x = 1200.0;
    seat.aboveBottom = 230.0;
    seat.caning.emplace();
    fitout.seats.push_back(seat);
    fitout.thwarts.push_back({"thwart", 1000.0, {57.15, 19.05}, 10.0});
    fitout.yoke.emplace().name = "yoke";
    core::CoveringChoices& covering = project.covering.emplace();
    covering.outside.emplace().cloth = 203.4;
    covering.inside.emplace().cloth = 130.0;
    covering.mix = core::MixParts{3.0, 1.0, false};
    covering.potLife = 25.0;
    core::AfloatChoices& afloat = project.afloat.emplace();
    afloat.boatMass = 24.0;
    afloat.loads.push_back({"paddler", 77.0, 1100.0, 0.0, 420.0, 0});
    afloat.parts.push_back({"brace", 0.4, 900.0, 0.0, 200.0, 0});
    REQUIRE(core::checked(project).has_value());
    return project;
}

} // namespace sheerlay::test

#include "core/sheets/boat_sheets.hpp"
#include "core/sheets/fitout_sheets.hpp"
#include "core/sheets/fitout_titles.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fitout_hulls.hpp"

#include <algorithm>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

Finding found(const char* code, std::optional<double> x, std::string text) {
    return {Level::Note, code, std::nullopt, x, std::move(text)};
}

/// With a second bulkhead and a second seat, so that each is told from its like.
Project fitted() {
    Project p = test::fittedPipe();
    p.fitout->bulkheads.resize(2);
    p.fitout->bulkheads[1].end = End::Stern;
    p.fitout->seats.push_back(p.fitout->seats[0]);
    p.fitout->seats[1].name = "bow seat";
    p.fitout->seats[1].x = 800;
    p.fitout->thwarts[0].x = 1200;
    return p;
}

} // namespace

TEST_CASE("a finding of the fit-out leads to the page of its part, in English and German") {
    Project project = fitted();
    for (const Language language : {Language::English, Language::German}) {
        project.language = language;
        const auto fitout =
            planFitout(project, test::quarterPipe(400, 3000), Plan{}, [](const Fitout&) { return 1500.0; });
        REQUIRE(fitout);
        REQUIRE(fitout->has_value());
        AfterPlanking after;
        after.fitout = **fitout;
        const auto sheets = fitoutSheets(project, *after.fitout, Units::Millimetres, PageSize::A4);
        const auto page = [&](const Finding& finding) {
            const std::string title = titleFor(project, after, finding);
            INFO(title);
            const auto sheet = std::ranges::find(sheets, title, &Sheet::title);
            REQUIRE(sheet != sheets.end());
            return sheet - sheets.begin();
        };
        // sheer, gunwales, two bulkheads, deck, two seats, thwarts
        REQUIRE(sheets.size() == 8);
        CHECK(page(found("gunwale-bend", 79.0, "The outer gunwale is bent.")) == 1);
        CHECK(page(found("screw-length", {}, "Screws of 40 mm come out.")) == 1);
        CHECK(page(found("bulkhead-bevel", after.fitout->bulkheads[0].x, "It leans.")) == 2);
        CHECK(page(found("bulkhead-bevel", after.fitout->bulkheads[1].x, "It leans.")) == 3);
        CHECK(page(found("bulkhead-outside", 17.0, "The bow bulkhead does not stand.")) == 0);
        CHECK(page(found("deck-not-flat", after.fitout->decks[0].innerX, "It misses.")) == 4);
        CHECK(page(found("bolt-near-end", 1.0, "The bolt of the seat comes near.")) == 5);
        CHECK(page(found("end-gap", 1.0, "A gap under the ends of the bow seat; fill it.")) == 6);
        CHECK(page(found("leg-room", 1.0, "Before the seat there are 3 mm to the bow seat, less.")) == 5);
        CHECK(page(found("knee-room", 1.0, "Under the thwart there are 3 mm.")) == 7);
        CHECK(page(found("seat-outside", 1.0, "The stern seat lies beyond the ends.")) == 0);
        CHECK(page(found("facet-deep", 1.0, "Planing the facets fair takes much.")) == 0);
        for (const Finding& finding : after.fitout->findings)
            page(finding);
    }
}

TEST_CASE("findings of cloth, of the weight and of how she floats lead to their pages") {
    Project project;
    project.name = "Pipe";
    AfterPlanking after;
    after.covering.emplace();
    after.weights.emplace();
    const Finding cloth = found("pot-life-not-told", {}, "The file has no pot life.");
    Finding heavy = found("two-to-carry", {}, "She weighs more.");
    after.covering->findings = {cloth};
    after.weights->findings = {heavy};
    heavy.aside = AsideNote{"we are two", ""};
    CHECK(titleFor(project, after, cloth) == "Pipe, cloth and resin");
    CHECK(titleFor(project, after, heavy) == "Pipe, what she weighs");
    CHECK(afloatSheets(project, after, Units::Millimetres, PageSize::A4).front().title ==
          "Pipe, what she weighs");
    after.afloat.emplace();
    CHECK(titleFor(project, after, heavy) == "Pipe, how she floats");
}

#include "core/afloat/after_text.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/loaded_boat.hpp"

#include <algorithm>

using namespace sheerlay;
using namespace sheerlay::core;

TEST_CASE("the text tells cloth, resin, weight and how she floats, in either unit, line by line") {
    const auto& [bare, hull, plan] = test::canoeToLoad();
    const AfterPlanking after = afterPlanking(test::loaded(bare), hull, plan);
    for (const Units units : {Units::Inches, Units::Millimetres}) {
        const std::string text = toText(after, units);
        INFO(text);
        for (const char* label :
             {"  cloth ", "  resin ", "  weight ", "  afloat ", "  heeling ", "  carries "})
            CHECK(text.find(label) != std::string::npos);
        CHECK(text.find("no approval") != std::string::npos);
        CHECK(text.back() == '\n');
        CHECK(text.find("nan") == std::string::npos);
    }
    CHECK(toText(AfterPlanking{}, Units::Inches).empty());
}

TEST_CASE("one coat, no varnish, nobody in her: the text says no more") {
    const auto& [bare, hull, plan] = test::canoeToLoad();
    Project project = test::loaded(bare);
    project.afloat->loads.clear();
    project.covering->varnishCoats = 0;
    project.covering->outside->coats = 0;
    const std::string text = toText(afterPlanking(project, hull, plan), Units::Millimetres);
    INFO(text);
    CHECK(text.find("in 1 coat\n") != std::string::npos);
    CHECK(text.find("varnish") == std::string::npos);
    CHECK(text.find("empty she draws") != std::string::npos);
    project.covering = CoveringChoices{};
    CHECK(toText(afterPlanking(project, hull, plan), Units::Millimetres).find("resin") == std::string::npos);
}

TEST_CASE("figures are printed as far as they hold") {
    CHECK(litresText(2.44, Units::Millimetres) == "2.4 L");
    CHECK(litresText(0.244, Units::Millimetres) == "240 mL");
    CHECK(litresText(0.0626, Units::Millimetres) == "65 mL");
    CHECK(twoLitresText(0.24, 0.08, Units::Millimetres) == "240 mL and 80 mL");
    CHECK(twoLitresText(0.24, 0.08, Units::Inches) == "8.1 and 2.7 fl oz");
    CHECK(litresText(3.785411784, Units::Inches) == "128 fl oz (3.8 L)");    // a US gallon
    CHECK(largestLoadText(463.9, Units::Millimetres) == "460 kg (1020 lb)"); // 1022.7 lb
    CHECK(largestLoadText(0.0, Units::Inches) == "0 lb (0 kg)");
    CHECK(areaText(3.12e6, Units::Millimetres) == "3.1 m\u00B2");
    CHECK(areaText(100 * 0.09290304e6, Units::Inches) == "100 sq ft");
    CHECK(degreesText(-0.6) == "34 degrees");
}

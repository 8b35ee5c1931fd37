#include "ui/shop/shop_text.hpp"

#include "core/planking/plan_findings.hpp"
#include "core/sheets/pieces.hpp"
#include "core/sheets/strip_drawing.hpp"
#include "core/sheets/strip_notes.hpp"
#include "core/summary/plan_summary.hpp"
#include "ui/panels/card_text.hpp"
#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"

#include <algorithm>
#include <array>
#include <variant>

namespace sheerlay::ui {
namespace {

constexpr qsizetype mostToWatch = 3;
constexpr double typeScale = 2.0;    // of the drawing's lettering against a sheet's
constexpr double usualWidth = 300.0; // mm of the drawing's page
constexpr double leastHeight = 45.0; // mm of it that two storeys of names, the strip and some sag take
constexpr core::Colour nightInk{0xE9, 0xE4, 0xD8};
constexpr core::Colour nightBlue{0x8F, 0xB8, 0xDE};

/// Only what says line or letter changes; fills keep the colour that has a meaning.
core::Colour atNight(const core::Colour& colour) {
    return colour == core::colours::lineBlue ? nightBlue : nightInk;
}

std::vector<core::NamedMark> marksOf(const Boat& boat, const core::Strip& strip) {
    const std::vector<std::string> names = boat.stationNames();
    std::vector<core::NamedMark> marks;
    for (const core::StationMark& mark : core::stationMarks(strip, boat.hull.stationX))
        marks.push_back({mark, names[mark.station]});
    return marks;
}

core::Drawing drawing(const Boat& boat, const core::Strip& strip, double width, double height) {
    return core::drawStrip(core::layStraight(strip),
                           marksOf(boat, strip),
                           width,
                           height,
                           typeScale,
                           core::colourOf(core::difficultyOf(strip)));
}

} // namespace

ShopText shopText(const Boat& boat, const core::Strip& strip, core::Units units) {
    const CardText card = cardText(boat, strip, units);
    ShopText text;
    text.name = card.title;
    text.place = Wording::tr("%1 · piece %2 of %3").arg(rowText(strip)).arg(strip.order).arg(boat.pieces());
    text.length = ui::cutLengthText(strip.cutLength, units);
    const auto end = [&](std::size_t which) {
        return QStringLiteral("%1 %2").arg(which == 0 ? Wording::tr("Bow") : Wording::tr("Stern"),
                                           landingText(strip.ends[which].on)) +
               (strip.ends[which].weave == core::Weave::Passes   ? Wording::tr(", passes")
                : strip.ends[which].weave == core::Weave::Fitted ? Wording::tr(", fitted")
                                                                 : QString());
    };
    text.ends = end(0) + QStringLiteral("   ·   ") + end(1);
    for (const core::Finding& finding : core::allFindings(boat.hull, boat.plan)) {
        if (finding.strip == strip.id && text.watch.size() < mostToWatch - 1)
            text.watch << heardText(finding.text, units);
    }
    constexpr std::size_t edgeBend = 2, twist = 3;
    text.watch
        << Wording::tr("Edge bend %1, %2").arg(card.lines[edgeBend].figure, card.lines[edgeBend].detail);
    if (text.watch.size() < mostToWatch)
        text.watch << card.advice;
    if (text.watch.size() < mostToWatch)
        text.watch << Wording::tr("Twist %1, %2").arg(card.lines[twist].figure, card.lines[twist].detail);
    text.caption = Wording::tr(
        "Unsprung, as seen from outside: keel side up, bow to the left; the width is drawn larger.");
    if (strip.side == core::Side::Port)
        text.caption += Wording::tr(" Port, shown as its starboard mirror image.");
    QStringList cautions;
    for (const std::string& caution : core::cautionsFor(boat.project))
        cautions << heardText(caution);
    text.caution = cautions.join(u' ');
    return text;
}

double shopDrawingWidth(double roomWidth, double roomHeight) {
    return std::max(usualWidth, leastHeight * roomWidth / roomHeight);
}

core::Sheet shopDrawing(const Boat& boat, const core::Strip& strip, double width, double height, bool night) {
    const core::Speaking speaking(windowLanguage());
    core::Sheet sheet;
    sheet.width = width;
    sheet.height = height;
    sheet.items = drawing(boat, strip, width, height).items;
    if (!night)
        return sheet;
    for (core::Item& item : sheet.items)
        std::visit([](auto& drawn) { drawn.colour = atNight(drawn.colour); }, item);
    return sheet;
}

} // namespace sheerlay::ui

#include "ui/panels/card_text.hpp"

#include "core/planking/difficulty.hpp"
#include "core/planking/strength.hpp"
#include "core/planking/uncertainty_text.hpp"
#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sheerlay::ui {
namespace {

QString degrees(double radians) {
    return QStringLiteral("%1°").arg(numberText(radians * 180.0 / std::numbers::pi, 0));
}

CardLine lengthLine(const core::Strip& strip, core::Units units) {
    const double onBoat =
        units == core::Units::Inches ? strip.length : 5.0 * std::round(strip.length / 5.0); // mm
    return {
        Wording::tr("Length to cut"),
        cutLengthText(strip.cutLength, units),
        Wording::tr("%1 on the boat").arg(lengthText(onBoat, units, {4, 0})),
        Wording::tr("Measured along the middle of the strip; laps and trim at both ends are in it. Good to a "
                    "few millimetres, as good as the boat stands on its moulds.")};
}

/// What becomes of the width toward the ends, from (place along the middle, width).
QString widthWords(const core::Strip& strip, core::Units units) {
    constexpr double point = 1.0; // mm; narrower than this is no wood to speak of
    const auto byWidth = [](const auto& a, const auto& b) { return a[1] < b[1]; };
    const auto [least, most] = std::minmax_element(strip.widths.begin(), strip.widths.end(), byWidth);
    if (strip.kind == core::StripKind::Full || (*most)[1] - (*least)[1] < 0.05)
        return Wording::tr("full width from end to end, before the ends are cut");
    const QString place = lengthText((*most)[0], units, {1, 0});
    const bool bow = strip.widths.front()[1] < point;
    const bool stern = strip.widths.back()[1] < point;
    if (bow && stern)
        return Wording::tr("at its widest, %1 from its bow end; it runs out to a point at both ends")
            .arg(place);
    if (bow || stern)
        return Wording::tr("at its widest, %1 from its bow end; it runs out to a point at the %2")
            .arg(place, bow ? Wording::tr("bow") : Wording::tr("stern"));
    return Wording::tr("at its widest; narrowest %1, %2 from its bow end")
        .arg(lengthText((*least)[1], units, {16, 1}), lengthText((*least)[0], units, {1, 0}));
}

CardLine widthLine(const core::Strip& strip, core::Units units) {
    CardLine line{Wording::tr("Width"), {}, {}, {}};
    double widest = 0.0;
    for (const auto& [along, width] : strip.widths)
        widest = std::max(widest, width);
    line.figure = lengthText(widest, units, {16, 1});
    if (!strip.widths.empty())
        line.detail = widthWords(strip, units);
    line.meaning = Wording::tr(
        "What the strip covers, square to its middle, with its bead set in the neighbour's cove.");
    return line;
}

CardLine edgeBendLine(const core::Strip& strip, core::Difficulty difficulty, core::Units units) {
    CardLine line{Wording::tr("Edge bend"), sagText(strip.edgeBend.maxAbs, units), {}, {}};
    const QString radius = strip.edgeBend.minRadius
                               ? Wording::tr("radius %1").arg(radiusText(*strip.edgeBend.minRadius, units))
                               : Wording::tr("straight");
    const bool toKeel = strip.edgeBend.signedMax >= -strip.edgeBend.signedMin;
    line.detail = Wording::tr("%1: %2; most %3, hollow toward the %4")
                      .arg(heardText(core::toText(difficulty)),
                           radius,
                           placeText(strip.edgeBend.atX, units),
                           toKeel ? Wording::tr("keel") : Wording::tr("sheer"));
    constexpr double straight = 1e-6; // 1/mm: a sag of half a millimetre over 2 m
    if (strip.edgeBend.maxAbs < straight)
        line.detail = Wording::tr("%1: straight").arg(heardText(core::toText(difficulty)));
    const auto pounds =
        QStringLiteral("%1 lb").arg(numberText(strip.edgeBend.force / core::newtonsPerPound, 0));
    const auto newtons = QStringLiteral("%1 N").arg(numberText(strip.edgeBend.force, 0));
    const QString force = units == core::Units::Inches ? pounds + QStringLiteral(" (") + newtons + u')'
                                                       : newtons + QStringLiteral(" (") + pounds + u')';
    line.meaning =
        Wording::tr(
            "How far the uncut edge stands off a straight batten of that length where the strip bends most "
            "across its width. Holding it there takes about %1 over one mould bay, give or take a third, "
            "as wood goes.")
            .arg(force);
    return line;
}

CardLine twistLine(const core::Strip& strip, core::Units units) {
    return {Wording::tr("Twist"),
            twistText(strip.twistMax, units),
            Wording::tr("most %1").arg(placeText(strip.twistAtX, units)),
            Wording::tr(
                "How fast the strip turns about its own length. Clamps take up to about 18° per foot (60° "
                "per metre) out of a quarter-inch strip.")};
}

CardLine bendLine(const core::Strip& strip, core::Units units) {
    CardLine line{Wording::tr("Bend over the moulds"), Wording::tr("straight"), {}, {}};
    if (strip.bendMinRadius) {
        line.figure = Wording::tr("radius %1").arg(radiusText(*strip.bendMinRadius, units));
        line.detail = Wording::tr("tightest %1").arg(placeText(strip.bendAtX, units));
    }
    line.meaning = Wording::tr("Bending the easy way, flat over the moulds.");
    return line;
}

CardLine strainLine(const core::Strip& strip, core::Units units) {
    return {
        Wording::tr("Strain in the wood"),
        QStringLiteral("%1 %").arg(numberText(100.0 * strip.strainMax, 0)),
        Wording::tr("of what it should be asked to take, most %1").arg(placeText(strip.strainAtX, units)),
        Wording::tr("Edge bend, bend and twist together, against the allowed strain of the wood table. Clear "
                    "wood differs by a quarter either way; a knot has no place in this strip if it is over "
                    "70 %.")};
}

CardLine endLine(const core::StripEnd& end, core::Units units) {
    CardLine line;
    line.caption = end.end == core::End::Bow ? Wording::tr("Bow end") : Wording::tr("Stern end");
    line.figure = landingText(end.on);
    QString detail = Wording::tr("%1, %2 up").arg(placeText(end.x, units), lengthText(end.z, units));
    detail += Wording::tr("; cut %1, bevel %2").arg(degrees(end.cut), degrees(end.bevel));
    if (end.weave == core::Weave::Fitted)
        detail += Wording::tr("; fitted against the other side, which passes");
    else if (end.lap > 0.0)
        detail += Wording::tr("; laps %1 past the centreline").arg(lengthText(end.lap, units, {16, 1}));
    line.detail = detail;
    line.meaning =
        Wording::tr("The cut is the angle between the strip and the line it ends on, laid flat; the bevel "
                    "is how far the end face leans from square. Cut a little long and pare to fit.");
    return line;
}

/// Adds to the first, third and fourth line how far the rounding of the table moves the figure.
void tellRounding(const std::optional<core::PlanUncertainty>& uncertainty,
                  int row,
                  core::Units units,
                  std::vector<CardLine>& lines) {
    if (!uncertainty)
        return;
    const auto& rows = uncertainty->rows;
    const auto own = std::find_if(rows.begin(), rows.end(), [row](const auto& r) { return r.row == row; });
    if (own == rows.end())
        return;
    const auto tell = [](CardLine& line, const QString& seen, const std::string& plusMinus) {
        line.detail = QStringLiteral("%1; %2").arg(line.detail, seen);
        line.meaning += Wording::tr(" Rounding of the table moves it by %1.").arg(markedText(plusMinus));
    };
    const std::string length = core::lengthPlusMinus(own->length, units);
    tell(lines[0], plusMinusText(length), length);
    tell(lines[2], sagPlusMinusText(own->edgeBend, units), core::edgeBendPlusMinus(own->edgeBend, units));
    const std::string twist = core::twistPlusMinus(own->twist, units);
    tell(lines[3], plusMinusText(twist), twist);
}

} // namespace

CardText cardText(const Boat& boat, const core::Strip& strip, core::Units units) {
    const core::Difficulty difficulty = core::difficultyOf(strip);
    CardText card;
    card.title = toQString(strip.id);
    card.subtitle = Wording::tr("%1 · %2 · piece %3 of %4 to lay")
                        .arg(rowText(strip), kindText(strip))
                        .arg(strip.order)
                        .arg(boat.pieces());
    card.lines = {lengthLine(strip, units),
                  widthLine(strip, units),
                  edgeBendLine(strip, difficulty, units),
                  twistLine(strip, units),
                  bendLine(strip, units),
                  strainLine(strip, units),
                  endLine(strip.ends[0], units),
                  endLine(strip.ends[1], units)};
    tellRounding(boat.plan.uncertainty, strip.row, units, card.lines);
    card.advice = heardText(core::holdingAdvice(difficulty));
    return card;
}

} // namespace sheerlay::ui

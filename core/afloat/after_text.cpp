#include "core/afloat/after_text.hpp"

#include "core/fitout/fitout_text.hpp"
#include "core/stock/stock_words.hpp"
#include "core/units/length.hpp"
#include "core/units/number_text.hpp"
#include "core/units/rounded_text.hpp"
#include "core/units/weight.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sheerlay::core {

namespace {

constexpr double ouncesPerGallon = 128;

std::string fluidOunces(double litres) {
    const double ounces = litres / litresPerGallon * ouncesPerGallon;
    return numberText(ounces, ounces < 9.95 ? 1 : 0);
}

/// Lines under one label, as the plan's summary sets them.
class Lines {
public:
    void add(const std::string& label, const std::string& text) {
        const std::string shown = label == m_label ? "" : label;
        m_label = label;
        m_text += "  " + shown + std::string(11 - std::min<std::size_t>(10, shown.size()), ' ') + text + "\n";
    }
    [[nodiscard]] std::string text() && { return std::move(m_text); }

private:
    std::string m_text, m_label;
};

void tell(Lines& lines, const CoveringPlan& covering, Units units) {
    for (const FaceCovering& f : covering.faces)
        for (const ClothPiece& piece : f.pieces)
            lines.add("cloth",
                      f.name + ": " + std::to_string(piece.count) +
                          (piece.count == 1 ? " piece, " : " pieces, ") + piece.what + ", " +
                          formatLength(std::ceil(piece.length / 10) * 10, units, 1) + " by " +
                          formatLength(std::ceil(piece.width / 5) * 5, units, 2) + "; " +
                          runOfStrip(f.fromRoll, units) + " off the roll");
    for (const FaceCovering& f : covering.faces)
        lines.add("resin",
                  f.name + ": " + litresText(f.litres, units) + " in " + std::to_string(f.coats.size()) +
                      (f.coats.size() == 1 ? " coat" : " coats") +
                      (f.varnish > 0.0 ? ", varnish " + litresText(f.varnish, units) : ""));
    if (covering.faces.empty())
        return;
    if (const auto parts = covering.litresOf(covering.litres))
        lines.add("resin",
                  "in all " + litresText(parts->resin, units) + " of resin and " +
                      litresText(parts->hardener, units) + " of hardener, waste included");
    else
        lines.add("resin", "in all " + litresText(covering.litres, units) + " mixed, waste included");
}

void tell(Lines& lines, const WeightSheet& weights, Units units) {
    lines.add("weight",
              "she weighs about " + weightText(weights.mass, units) +
                  (weights.weighed ? ", as you weighed her"
                                   : ", give or take " + weightText(weights.plusMinus, units)) +
                  "; she balances " + placeText(weights.centre.x(), units) + " from the bow");
}

void tell(Lines& lines, const AfloatReport& afloat, Units units) {
    if (afloat.rest) {
        const Rest& rest = *afloat.rest;
        const auto length = [units](double mm) { return formatLength(mm, units, 8); };
        lines.add("afloat",
                  (afloat.load.mass > 0.0
                       ? "with " + weightText(afloat.load.mass, units) + " in her she draws "
                       : std::string("empty she draws ")) +
                      length(rest.draught) + "; least freeboard " + length(rest.freeboard));
        lines.add("afloat",
                  "water line " + placeText(rest.under.length, units) + " long, " +
                      formatLength(rest.under.beam, units, 4) + " wide; " +
                      areaText(rest.under.wettedSkin + rest.under.wettedTransom, units) + " wetted; block " +
                      numberText(afloat.form.block, 2) + ", prismatic " +
                      numberText(afloat.form.prismatic, 2));
        lines.add("afloat",
                  "the " + std::string(afloat.form.trimByEnds >= 0 ? "stern" : "bow") + " is " +
                      length(std::abs(afloat.form.trimByEnds)) + " deeper; heel " +
                      numberText(std::abs(rest.water.heel) * 180 / std::numbers::pi, 1) + " degrees");
        if (afloat.toStarboard) {
            const RightingCurve& curve = *afloat.toStarboard;
            lines.add("heeling",
                      "metacentre " + length(std::abs(rest.gm)) + (rest.gm < 0 ? " below" : " above") +
                          " her weight; righting arm at most " + length(curve.largest.arm) + ", at " +
                          degreesText(curve.largest.heel));
            if (curve.floods && !curve.arms.empty())
                lines.add("heeling",
                          "water comes over the sheer at " + degreesText(curve.arms.back().heel) +
                              ", in still water with nobody moving");
        }
    }
    lines.add("carries",
              largestLoadText(afloat.largestLoad, units) + " beside herself, level, with " +
                  formatLength(afloat.freeboard, units, 4) +
                  " of freeboard; no approval, and local rules go first");
}

} // namespace

std::string litresText(double litres, Units units) {
    const double step = litres < 0.195 ? 5.0 : 10.0; // mL; no cup is read finer
    const std::string metric = litres < 0.995 ? numberText(std::round(1000 * litres / step) * step, 0) + " mL"
                                              : numberText(litres, 1) + " L";
    if (units == Units::Millimetres)
        return metric;
    return fluidOunces(litres) + " fl oz (" + metric + ")";
}

std::string twoLitresText(double one, double other, Units units) {
    if (units == Units::Inches)
        return say("{} and {}", fluidOunces(one), fluidOunces(other) + " fl oz");
    return say("{} and {}", litresText(one, units), litresText(other, units));
}

std::string degreesText(double radians) {
    return say("{} degrees", numberText(std::abs(radians) * 180 / std::numbers::pi, 0));
}

std::string largestLoadText(double kilograms, Units units) {
    const auto whole = [](double value, double step) {
        return numberText(std::floor(value / step) * step, 0);
    };
    const std::string metric = whole(kilograms, 5) + " kg",
                      imperial = whole(kilograms / kgPerPound, 10) + " lb";
    return units == Units::Inches ? imperial + " (" + metric + ")" : metric + " (" + imperial + ")";
}

std::string areaText(double squareMillimetres, Units units) {
    const double squareM = squareMillimetres / 1e6;
    return units == Units::Inches ? numberText(squareM / squareMPerSquareFoot, 0) + " sq ft"
                                  : numberText(squareM, 1) + " m\u00B2";
}

std::string toText(const AfterPlanking& after, Units units) {
    Lines lines;
    if (after.covering)
        tell(lines, *after.covering, units);
    if (after.weights)
        tell(lines, *after.weights, units);
    if (after.afloat)
        tell(lines, *after.afloat, units);
    std::string text = std::move(lines).text();
    if (after.fitout)
        text += toText(*after.fitout, units);
    return text;
}

} // namespace sheerlay::core

#include "core/tables/strip_table.hpp"

#include "core/planking/plan_words.hpp"
#include "core/tables/csv.hpp"
#include "core/units/number_text.hpp"

#include <algorithm>
#include <numbers>
#include <utility>
#include <vector>

namespace sheerlay::core {
namespace {

constexpr double degrees = 180.0 / std::numbers::pi;

std::string narrowestOf(const Strip& strip, Units units) {
    if (strip.samples.empty())
        return "";
    return plainLength(std::ranges::min(strip.samples, {}, &StripSample::width).width, units);
}

std::vector<std::string> rowOf(const Strip& strip, Units units) {
    const auto radius = [units](const std::optional<double>& r) {
        return r ? plainLength(*r, units) : std::string();
    };
    std::vector<std::string> row{std::to_string(strip.order),
                                 strip.id,
                                 toText(strip.side),
                                 std::to_string(strip.row),
                                 toText(strip.kind),
                                 plainLength(strip.length, units),
                                 plainLength(strip.cutLength, units),
                                 plainLength(widest(strip), units),
                                 narrowestOf(strip, units),
                                 radius(strip.edgeBend.minRadius),
                                 plainLength(strip.edgeBend.atX, units),
                                 numberText(strip.edgeBend.force, 0),
                                 numberText(strip.twistMax * 1000.0 * degrees, 1),
                                 plainLength(strip.twistAtX, units),
                                 radius(strip.bendMinRadius),
                                 plainLength(strip.bendAtX, units)};
    for (const StripEnd& end : strip.ends)
        for (std::string cell : {std::string(toText(end.on)),
                                 plainLength(end.x, units),
                                 plainLength(end.z, units),
                                 numberText(end.cut * degrees, 1),
                                 numberText(end.bevel * degrees, 1),
                                 plainLength(end.lap, units)})
            row.push_back(std::move(cell));
    return row;
}

} // namespace

std::string stripTable(const Plan& plan, Units units) {
    std::vector<std::string> head{"order",
                                  "strip",
                                  "side",
                                  "row",
                                  "kind",
                                  inUnits("length", units),
                                  inUnits("cut length", units),
                                  inUnits("widest", units),
                                  inUnits("narrowest", units),
                                  inUnits("edge bend radius", units),
                                  inUnits("edge bend at x", units),
                                  "edge bend force N",
                                  "twist deg per m",
                                  inUnits("twist at x", units),
                                  inUnits("bend radius", units),
                                  inUnits("bend at x", units)};
    for (const std::string end : {"bow ", "stern "})
        for (std::string cell : {end + "end on",
                                 inUnits(end + "x", units),
                                 inUnits(end + "z", units),
                                 end + "cut deg",
                                 end + "bevel deg",
                                 inUnits(end + "lap", units)})
            head.push_back(std::move(cell));
    std::vector<const Strip*> strips;
    for (const Strip& strip : plan.strips)
        strips.push_back(&strip);
    std::ranges::stable_sort(strips, {}, [](const Strip* s) { return s->order; });
    std::vector<std::vector<std::string>> rows{std::move(head)};
    for (const Strip* strip : strips)
        rows.push_back(rowOf(*strip, units));
    return csvText(rows);
}

} // namespace sheerlay::core

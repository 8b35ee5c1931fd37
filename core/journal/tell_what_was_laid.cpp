#include "core/journal/what_was_laid.hpp"
#include "core/units/both_units.hpp"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace sheerlay::core {

namespace {

std::string rows(int first, int last) {
    return first == last ? "row " + std::to_string(first)
                         : "rows " + std::to_string(first) + " to " + std::to_string(last);
}

/// Spread of a figure that is told in whole millimetres.
std::string giveOrTake(double sd) {
    return ", give or take " + bothUnits(std::max(1.0, sd));
}

std::string giveOrTakeFine(double sd) {
    return ", give or take " + bothUnitsFine(std::max(0.01, sd));
}

class Stations {
public:
    Stations(const LoftedHull& hull, const std::vector<std::string>& names) : m_hull(hull), m_names(names) {}

    [[nodiscard]] std::string nearest(double x) const {
        std::size_t best = 0;
        for (std::size_t i = 0; i < count(); ++i)
            if (std::abs(m_hull.stationX[i] - x) < std::abs(m_hull.stationX[best] - x))
                best = i;
        return count() == 0 ? "there" : "station " + m_names[best];
    }

    /// " between stations a and b", of those inside; empty when there are fewer than two.
    [[nodiscard]] std::string between(const Reach& reach) const {
        std::vector<std::string> inside;
        for (std::size_t i = 0; i < count(); ++i)
            if (m_hull.stationX[i] >= reach.from && m_hull.stationX[i] <= reach.to)
                inside.push_back(m_names[i]);
        return inside.size() < 2 ? std::string()
                                 : " between stations " + inside.front() + " and " + inside.back();
    }

private:
    [[nodiscard]] std::size_t count() const { return std::min(m_hull.stationX.size(), m_names.size()); }

    const LoftedHull& m_hull;
    const std::vector<std::string>& m_names;
};

std::string edgeText(const WhatWasLaid& laid, const Stations& stations) {
    const std::string where = "The lower edge of row " + std::to_string(laid.row) + ", read " +
                              std::to_string(laid.stations) + (laid.stations == 1 ? " time" : " times") +
                              ", lies ";
    const std::string place = " at " + stations.nearest(laid.x);
    const std::string spread = ", give or take " + bothUnitsWithin(laid.offset.sd, laid.offset.sd);
    if (std::abs(laid.offset.value) < laid.offset.sd)
        return where + "where it was planned" + place + spread + ".";
    return where + bothUnitsWithin(std::abs(laid.offset.value), laid.offset.sd) + " nearer the " +
           (laid.offset.value > 0 ? "keel" : "sheer") + " than planned" + place + spread + ".";
}

std::string coverText(const WhatWasLaid& laid) {
    const double excess = laid.excess.value;
    if (std::abs(excess) < laid.excess.sd)
        return "The strips cover " + bothUnitsFine(laid.planned) +
               " as planned, as far as the readings tell" + giveOrTakeFine(laid.excess.sd) + ".";
    return "The strips really cover " + bothUnitsFine(laid.planned + excess) +
           giveOrTakeFine(laid.excess.sd) + ", which is " + bothUnitsFine(std::abs(excess)) +
           (excess > 0 ? " more" : " less") + " than planned.";
}

std::string actionText(const WhatWasLaid& laid, const Stations& stations) {
    const Correction& c = laid.correction;
    const std::string each = c.firstRow == c.lastRow ? "the strips of " : "each strip of ";
    const std::string then = "; the last plank is then " + bothUnits(c.lastPlank) + " wide.";
    switch (c.kind) {
    case Correction::Kind::None:
        return "; nothing need be done.";
    case Correction::Kind::Plane:
        return "; plane " + bothUnitsFine(c.perStrip) + " off " + each + rows(c.firstRow, c.lastRow) +
               stations.between(laid.correctionReach) + ", fading to nothing over the last " +
               bothUnits(correctionFade) + " of each end" + then;
    case Correction::Kind::MillNarrower:
        return "; mill the strips for " + rows(c.firstRow, c.lastRow) + " " + bothUnitsFine(c.perStrip) +
               " narrower than the " + bothUnitsFine(c.cover + c.perStrip) +
               " they would cover, from end to end, so that each covers " + bothUnitsFine(c.cover) + then;
    case Correction::Kind::AsItComes:
        break;
    }
    if (laid.lastPlank->strips < 1)
        return "; it is too late to change that, so fit it as it comes.";
    return "; no bearable narrowing of the strips still to come changes that, so fit it as it comes, or "
           "share "
           "its width with the strip before it, " +
           bothUnits(0.5 * (c.lastPlank + laid.planned + laid.ahead.value)) + " each.";
}

std::string lastPlankText(const WhatWasLaid& laid, const Stations& stations) {
    char part[32];
    std::snprintf(part, sizeof part, "%.0f per cent", 100 * laid.lastPlank->part);
    return std::string("Laid as planned from here on, the last plank comes ") +
           bothUnits(laid.lastPlank->width) + " wide at its widest" + giveOrTake(laid.lastPlank->sd) + ", " +
           part + " of a strip" + actionText(laid, stations);
}

std::string leftOutText(const LeftOutReading& reading, const Stations& stations) {
    const std::string what = "The reading of " + bothUnits(reading.read) + " below row " +
                             std::to_string(reading.row) + " at " + stations.nearest(reading.x);
    if (reading.planned == 0.0)
        return what +
               " was left out, since the row does not pass there in the plan; look at its row and station.";
    if (reading.farOff)
        return what + " was left out, since " + bothUnits(reading.planned) +
               (reading.since > 0 ? " was to be expected there after row " + std::to_string(reading.since) +
                                        " as it was read"
                                  : std::string(" was planned there")) +
               ", and strips and moulds are not so far off; look at its row and "
               "station, and read it once more.";
    return what + " was left out, since " + bothUnits(reading.planned) +
           " was planned there and the other readings of that row bear this out; read it once more.";
}

} // namespace

std::vector<Finding>
tellWhatWasLaid(const WhatWasLaid& laid, const LoftedHull& hull, const std::vector<std::string>& names) {
    const Stations stations(hull, names);
    std::vector<Finding> findings;
    const auto tell = [&](Level level, const char* code, double x, std::string text) {
        findings.push_back({level, code, std::nullopt, x, std::move(text)});
    };
    for (const LeftOutReading& reading : laid.leftOut)
        tell(Level::Caution, "journal-left-out", reading.x, leftOutText(reading, stations));
    tell(Level::Note, "journal-edge", laid.x, edgeText(laid, stations));
    tell(Level::Note, "journal-cover-width", laid.x, coverText(laid));
    if (laid.lastPlank)
        tell(laid.correction.kind == Correction::Kind::None ? Level::Note : Level::Caution,
             "journal-last-plank",
             laid.x,
             lastPlankText(laid, stations));
    return findings;
}

} // namespace sheerlay::core

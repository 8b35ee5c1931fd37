#include "core/journal/what_was_laid.hpp"
#include "core/units/both_units.hpp"
#include "core/units/number_text.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace sheerlay::core {

namespace {

std::string rows(int first, int last) {
    return first == last ? say("row {}", first) : say("rows {} to {}", first, last);
}

/// Spread of a figure that is told in whole millimetres.
std::string giveOrTake(double sd) {
    return bothUnits(std::max(1.0, sd));
}

std::string giveOrTakeFine(double sd) {
    return bothUnitsFine(std::max(0.01, sd));
}

class Stations {
public:
    Stations(const LoftedHull& hull, const std::vector<std::string>& names) : m_hull(hull), m_names(names) {}

    /// The station there or next to it; a place that is off the boat's stations is told by its distance.
    [[nodiscard]] std::string nearest(double x) const {
        std::size_t best = 0;
        for (std::size_t i = 0; i < count(); ++i)
            if (std::abs(m_hull.stationX[i] - x) < std::abs(m_hull.stationX[best] - x))
                best = i;
        if (count() == 0)
            return say("there");
        constexpr double beside = 25; // mm, about what a tape is laid beside a mould
        const auto [first, last] = std::minmax_element(m_hull.stationX.begin(), m_hull.stationX.end());
        if (x < *first - beside || x > *last + beside)
            return say("a place {} from the bow", bothUnits(x));
        return say("station {}", m_names[best]);
    }

    /// "between stations a and b", of those inside; empty when there are fewer than two.
    [[nodiscard]] std::string between(const Reach& reach) const {
        std::vector<std::string> inside;
        for (std::size_t i = 0; i < count(); ++i)
            if (m_hull.stationX[i] >= reach.from && m_hull.stationX[i] <= reach.to)
                inside.push_back(m_names[i]);
        return inside.size() < 2 ? std::string()
                                 : say("between stations {} and {}", inside.front(), inside.back());
    }

private:
    [[nodiscard]] std::size_t count() const { return std::min(m_hull.stationX.size(), m_names.size()); }

    const LoftedHull& m_hull;
    const std::vector<std::string>& m_names;
};

std::string edgeText(const WhatWasLaid& laid, const Stations& stations) {
    const std::string read =
        laid.stations == 1 ? say("read {} time", laid.stations) : say("read {} times", laid.stations);
    const std::string place = stations.nearest(laid.x),
                      spread = bothUnitsWithin(laid.offset.sd, laid.offset.sd);
    if (std::abs(laid.offset.value) < laid.offset.sd)
        return say("The lower edge of row {}, {}, lies where it was planned at {}, give or take {}.",
                   laid.row,
                   read,
                   place,
                   spread);
    return say(laid.offset.value > 0 ? sayable("The lower edge of row {}, {}, lies {} nearer the keel than "
                                               "planned at {}, give or take {}.")
                                     : sayable("The lower edge of row {}, {}, lies {} nearer the sheer than "
                                               "planned at {}, give or take {}."),
               laid.row,
               read,
               bothUnitsWithin(std::abs(laid.offset.value), laid.offset.sd),
               place,
               spread);
}

std::string coverText(const WhatWasLaid& laid) {
    const double excess = laid.excess.value;
    const std::string spread = giveOrTakeFine(laid.excess.sd);
    if (std::abs(excess) < laid.excess.sd)
        return say("The strips cover {} as planned, as far as the readings tell, give or take {}.",
                   bothUnitsFine(laid.planned),
                   spread);
    return say(excess > 0
                   ? sayable("The strips really cover {}, give or take {}, which is {} more than planned.")
                   : sayable("The strips really cover {}, give or take {}, which is {} less than planned."),
               bothUnitsFine(laid.planned + excess),
               spread,
               bothUnitsFine(std::abs(excess)));
}

std::string planeText(const WhatWasLaid& laid, const Stations& stations) {
    const Correction& c = laid.correction;
    const bool one = c.firstRow == c.lastRow;
    const std::string off = bothUnitsFine(c.perStrip), of = rows(c.firstRow, c.lastRow),
                      fade = bothUnits(correctionFade), between = stations.between(laid.correctionReach),
                      wide = bothUnits(c.lastPlank);
    if (between.empty())
        return say(one ? sayable("plane {} off the strips of {}, fading to nothing over the last {} of each "
                                 "end; the last plank is then {} wide")
                       : sayable("plane {} off each strip of {}, fading to nothing over the last {} of each "
                                 "end; the last plank is then {} wide"),
                   off,
                   of,
                   fade,
                   wide);
    return say(one ? sayable("plane {} off the strips of {} {}, fading to nothing over the last {} of each "
                             "end; the last plank is then {} wide")
                   : sayable("plane {} off each strip of {} {}, fading to nothing over the last {} of each "
                             "end; the last plank is then {} wide"),
               off,
               of,
               between,
               fade,
               wide);
}

std::string actionText(const WhatWasLaid& laid, const Stations& stations) {
    const Correction& c = laid.correction;
    switch (c.kind) {
    case Correction::Kind::None:
        return say("nothing need be done");
    case Correction::Kind::Plane:
        return planeText(laid, stations);
    case Correction::Kind::MillNarrower:
        return say("mill the strips for {} {} narrower than the {} they would cover, from end to end, so "
                   "that each covers {}; the last plank is then {} wide",
                   rows(c.firstRow, c.lastRow),
                   bothUnitsFine(c.perStrip),
                   bothUnitsFine(c.cover + c.perStrip),
                   bothUnitsFine(c.cover),
                   bothUnits(c.lastPlank));
    case Correction::Kind::AsItComes:
        break;
    }
    if (laid.lastPlank->strips < 1)
        return say("it is too late to change that, so fit it as it comes");
    return say("no bearable narrowing of the strips still to come changes that, so fit it as it comes, or "
               "share its width with the strip before it, {} each",
               bothUnits(0.5 * (c.lastPlank + laid.planned + laid.ahead.value)));
}

std::string lastPlankText(const WhatWasLaid& laid, const Stations& stations) {
    const LastPlank& plank = *laid.lastPlank;
    std::string comes =
        say("the last plank comes {} wide at its widest, give or take {}, {} per cent of a strip",
            bothUnits(plank.width),
            giveOrTake(plank.sd),
            numberText(100 * plank.part, 0));
    // the plan may have shared such a sliver already, and then tells two planks of half the sum
    constexpr double sliver = 0.25; // of a strip
    if (plank.part > 0 && plank.part < sliver)
        comes = say("{} (with the strip before it {}, which two planks can share)",
                    comes,
                    bothUnits(plank.width + plank.width / plank.part));
    return say("Laid as planned from here on, {}; {}.", comes, actionText(laid, stations));
}

std::string leftOutHead(int row, double x, double read, const Stations& stations) {
    return say(
        "The reading of {} below row {} at {} was left out", bothUnits(read), row, stations.nearest(x));
}

std::string leftOutText(const LeftOutReading& reading, const Stations& stations) {
    const std::string what = leftOutHead(reading.row, reading.x, reading.read, stations);
    const std::string planned = bothUnits(reading.planned);
    if (reading.planned == 0.0)
        return say("{}, since the row does not pass there in the plan; look at its row and station.", what);
    if (reading.farOff && reading.since > 0)
        return say("{}, since {} was to be expected there after row {} as it was read, and strips and moulds "
                   "are not so far off; look at its row and station, and read it once more.",
                   what,
                   planned,
                   reading.since);
    if (reading.farOff)
        return say("{}, since {} was planned there, and strips and moulds are not so far off; look at its "
                   "row and station and whether start and strips of the plan are those that were laid, and "
                   "read it once more.",
                   what,
                   planned);
    return say(
        "{}, since {} was planned there and the other readings of that row bear this out; read it once more.",
        what,
        planned);
}

std::string apartText(const ReadingsApart& place, const Stations& stations) {
    return say("Below row {} {} and {} were read at {}; their mean is used. Read both sides there once more: "
               "if they really differ, look whether the moulds stand square and level.",
               place.row,
               bothUnits(place.least),
               bothUnits(place.most),
               stations.nearest(place.x));
}

Finding finding(Level level, const char* code, std::optional<double> x, std::string text) {
    return {level, code, std::nullopt, x, std::move(text)};
}

std::vector<Finding> tellLeftOut(const std::vector<LeftOutReading>& readings, const Stations& stations) {
    std::vector<Finding> findings;
    for (const LeftOutReading& reading : readings)
        findings.push_back(
            finding(Level::Caution, "journal-left-out", reading.x, leftOutText(reading, stations)));
    return findings;
}

std::string bareMouldsText(const BareMoulds& bare) {
    const std::string read =
        bare.stations == 1 ? say("read {} time", bare.stations) : say("read {} times", bare.stations);
    constexpr double asLofted = 1.0; // mm, what a tape is read to
    const std::string how = std::abs(bare.excess) < asLofted
                                ? say("it is as lofted to within a millimetre on the average")
                                : say(bare.excess > 0 ? sayable("it is {} more than lofted on the average")
                                                      : sayable("it is {} less than lofted on the average"),
                                      bothUnits(std::abs(bare.excess)));
    return say("Girth on the bare moulds, {}: {}. This counts from the first row that is read on; until then "
               "nothing is planned anew.",
               read,
               how);
}

} // namespace

std::vector<Finding>
tellUnused(const UnusedReadings& readings, const LoftedHull& hull, const std::vector<std::string>& names) {
    std::vector<Finding> findings = tellLeftOut(readings.leftOut, Stations(hull, names));
    if (readings.bareMoulds)
        findings.push_back(
            finding(Level::Note, "journal-bare-moulds", std::nullopt, bareMouldsText(*readings.bareMoulds)));
    else
        findings.push_back(finding(
            Level::Caution,
            "journal-not-used",
            std::nullopt,
            say("None of the journal's readings fits this plan, so nothing was planned anew: their rows are "
                "not below the start and above the last plank, do not pass the stations given, or the girths "
                "are further off than strips and moulds can be. Look at rows, stations and the tape.")));
    return findings;
}

std::vector<Finding>
tellWhatWasLaid(const WhatWasLaid& laid, const LoftedHull& hull, const std::vector<std::string>& names) {
    const Stations stations(hull, names);
    std::vector<Finding> findings = tellLeftOut(laid.leftOut, stations);
    const auto tell = [&](Level level, const char* code, double x, std::string text) {
        findings.push_back(finding(level, code, x, std::move(text)));
    };
    for (const ReadingsApart& place : laid.apart)
        tell(Level::Caution, "journal-readings-apart", place.x, apartText(place, stations));
    tell(Level::Note, "journal-edge", laid.x, edgeText(laid, stations));
    tell(Level::Note, "journal-cover-width", laid.x, coverText(laid));
    if (laid.lastPlank)
        tell(laid.correction.kind == Correction::Kind::None ? Level::Note : Level::Caution,
             "journal-last-plank",
             laid.x,
             lastPlankText(laid, stations));
    return findings;
}

const Finding* leftOutFinding(const std::vector<Finding>& findings,
                              int row,
                              double x,
                              double read,
                              const LoftedHull& hull,
                              const std::vector<std::string>& names) {
    const std::string head = leftOutHead(row, x, read, Stations(hull, names));
    const auto found = std::ranges::find_if(findings, [&](const Finding& f) {
        return f.code == "journal-left-out" && f.x == x && f.text.starts_with(head);
    });
    return found == findings.end() ? nullptr : &*found;
}

} // namespace sheerlay::core

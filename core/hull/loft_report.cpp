#include "core/hull/loft_report.hpp"

#include "core/hull/knuckle.hpp"
#include "core/hull/likely_slip.hpp"
#include "core/units/both_units.hpp"
#include "core/units/length.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

namespace sheerlay::core {
namespace {

std::string mm(double value, int decimals = 0) {
    char text[40];
    std::snprintf(text, sizeof text, "%.*f mm", decimals, value);
    return text;
}

void residualsPerStation(const HullTable& table,
                         const LoftData& data,
                         const SurfaceFit& fit,
                         LoftedHull& hull) {
    std::vector<StationResidual> list(table.stations.size() + 1);
    std::vector<double> squares(list.size(), 0.0);
    for (std::size_t i = 0; i < table.stations.size(); ++i) {
        list[i].station = table.stations[i].printedX;
        list[i].x = hull.stationX[i];
    }
    list.back().station = "profile";
    for (std::size_t i = 0; i < data.points.size(); ++i) {
        const LoftPoint& p = data.points[i];
        if (p.kind == LoftPoint::Kind::Helper || p.weightY == 0 || p.weightZ == 0)
            continue; // helpers are no data, and what is set aside has its own finding
        StationResidual& r = p.station < 0 ? list.back() : list[static_cast<std::size_t>(p.station)];
        double& sum = squares[p.station < 0 ? list.size() - 1 : static_cast<std::size_t>(p.station)];
        const PointResidual& e = fit.residuals[i];
        const double size = p.onGivenLine() ? std::hypot(e.y, e.z) * (e.normal < 0 ? -1 : 1) : e.normal;
        sum += size * size;
        ++r.points;
        if (std::abs(size) > std::abs(r.max))
            r.max = size;
        hull.residualMax = std::max(hull.residualMax, std::abs(size));
    }
    for (std::size_t i = 0; i < list.size(); ++i)
        if (list[i].points > 0) {
            list[i].rms = std::sqrt(squares[i] / list[i].points);
            hull.residuals.push_back(list[i]);
        }
    hull.residualRms = fit.rms;
}

/// A table needs a half station near a stem: the last gap decides how well the ends are known.
void lastGaps(const HullTable& table, const LoftData& data, LoftedHull& hull) {
    for (const End end : {End::Bow, End::Stern}) {
        if (std::any_of(
                table.transoms.begin(), table.transoms.end(), [&](const Transom& t) { return t.end == end; }))
            continue;
        const bool bow = end == End::Bow;
        const Station* outer = nullptr;
        for (const Station& s : table.stations) {
            const bool full =
                s.sheer.halfBreadth > std::max(2 * table.roundedTo, table.halfSiding + table.roundedTo);
            if (full && (!outer || !bow))
                outer = &s;
        }
        if (!outer)
            continue;
        const double tip = bow ? hull.drawn.sheer.front().x() : hull.drawn.sheer.back().x();
        const double gap = std::abs(outer->x + hull.xShift - tip);
        if (gap > 0.55 * data.stationGap)
            hull.findings.push_back(
                {Level::Caution,
                 "last-gap-wide",
                 std::nullopt,
                 bow ? tip + gap / 2 : tip - gap / 2,
                 say(bow ? sayable("Between the foremost station and the stem the table says nothing over "
                                   "{}; the last foot may be off by about 6 mm (1/4\") and its edge bend is "
                                   "not to be trusted. A half station there would settle it.")
                         : sayable("Between the aftmost station and the stem the table says nothing over {}; "
                                   "the last foot may be off by about 6 mm (1/4\") and its edge bend is not "
                                   "to be trusted. A half station there would settle it."),
                     bothUnits(gap))});
    }
}

/// A length in the notation the cell itself was printed in.
std::string asPrinted(double value, const std::string& printed) {
    const bool inches = printed.find_first_of("-'\"") != std::string::npos ||
                        printed.find("in") != std::string::npos || printed.find("ft") != std::string::npos;
    return inches ? toFeetInchesEighths(value) : mm(value);
}

std::string spreadText(double value, const std::string& printed) {
    const bool inches = asPrinted(0, printed).find("mm") == std::string::npos;
    return inches ? formatLength(std::max(value, mmPerInch / 16), Units::Inches) : mm(std::max(value, 1.0));
}

/// "1-3-0, give or take 1/4 in, likeliest a digit lost (0-4-4 meant)": what the rest wants, and what would
/// make the number right again, offered and never done.
std::string
wantedText(const SuspectCell& c, const std::string& printed, const std::optional<LikelySlip>& slip) {
    const std::string fair = asPrinted(c.fair, printed), spread = spreadText(c.spread, printed);
    return slip ? say("{}, give or take {}, likeliest {} ({} meant)",
                      fair,
                      spread,
                      slip->words,
                      asPrinted(slip->value, printed))
                : say("{}, give or take {}", fair, spread);
}

/// The end of what is said of a doubtful number.
const char* settleText(bool setAside, bool nearEnd) {
    if (setAside)
        return nearEnd ? sayable("{}, {}: {} is printed, but the rest of the table wants about {}; the loft "
                                 "is made without this number until you settle it (so near an end the table "
                                 "hardly decides it).")
                       : sayable("{}, {}: {} is printed, but the rest of the table wants about {}; the loft "
                                 "is made without this number until you settle it.");
    return nearEnd ? sayable("{}, {}: {} is printed, but the rest of the table wants about {}; look at it "
                             "before you cut the mould (so near an end the table hardly decides it).")
                   : sayable("{}, {}: {} is printed, but the rest of the table wants about {}; look at it "
                             "before you cut the mould.");
}

DoubtfulCell doubtfulCell(const HullTable& table,
                          const LoftPoint& p,
                          const SuspectCell& c,
                          const std::optional<LikelySlip>& slip) {
    DoubtfulCell cell;
    cell.station = static_cast<std::size_t>(p.station);
    cell.kind = p.cell->kind;
    const std::vector<TablePoint>& points = table.stations[cell.station].points;
    for (std::size_t i = 0; i < points.size(); ++i)
        if (&points[i] == p.cell)
            cell.point = i;
    cell.height = c.height;
    cell.printed = c.printed;
    cell.fair = c.fair;
    cell.spread = c.spread;
    cell.setAside = c.setAside;
    if (slip) {
        cell.likely = slip->value;
        cell.slip = slip->words;
    }
    return cell;
}

void suspectCells(const HullTable& table,
                  const LoftData& data,
                  const std::vector<SuspectCell>& suspects,
                  LoftedHull& hull) {
    for (const SuspectCell& c : suspects) {
        const LoftPoint& p = data.points[c.point];
        const Station& s = table.stations[static_cast<std::size_t>(p.station)];
        const std::string& printed = printedNumber(*p.cell, c.height);
        const std::string& line = c.height ? p.cell->printedHalfBreadth : p.cell->printedHeight;
        std::string where;
        switch (p.cell->kind) {
        case PointKind::Sheer:
            where = c.height ? say("sheer height") : say("sheer half-breadth");
            break;
        case PointKind::Keel:
            where = c.height ? say("keel height") : say("keel half-breadth");
            break;
        case PointKind::Knuckle:
            where = c.height ? say("knuckle height") : say("knuckle half-breadth");
            break;
        case PointKind::Waterline:
            where = say("half-breadth at the waterline {}", line);
            break;
        case PointKind::Buttock:
            where = say("height at the buttock {}", line);
            break;
        case PointKind::Point:
            where = p.cell->diagonal
                        ? say("distance along the diagonal from height {}", p.cell->diagonal->printedHeight)
                    : c.height ? say("a point's height")
                               : say("a point's half-breadth");
            break;
        }
        const std::optional<LikelySlip> slip = likelySlip(table, data, c);
        hull.doubtful.push_back(doubtfulCell(table, p, c, slip));
        const bool nearEnd = p.station <= 1 || p.station + 2 >= static_cast<int>(table.stations.size());
        hull.findings.push_back(
            {nearEnd && !c.setAside ? Level::Note : Level::Caution,
             "doubtful-cell",
             std::nullopt,
             hull.stationX[static_cast<std::size_t>(p.station)],
             say(settleText(c.setAside, nearEnd),
                 p.cell->line > 0 ? say("Station at x {} (line {})", s.printedX, p.cell->line)
                                  : say("Station at x {}", s.printedX),
                 where,
                 printed,
                 wantedText(c, printed, slip))});
    }
    if (suspects.size() >= 6)
        hull.findings.push_back(
            {Level::Caution,
             "many-doubtful-cells",
             std::nullopt,
             std::nullopt,
             say("Six or more numbers contradict the rest: more likely the station spacing, the waterline "
                 "heights or the half siding are not what the table was drawn with. Check these first.")});
}

void levelKeels(const HullTable& table, const SurfaceFit& fit, LoftedHull& hull) {
    if (fit.levelKeel.empty())
        return;
    std::string names;
    for (const int i : fit.levelKeel)
        names += (names.empty() ? "" : ", ") + table.stations[static_cast<std::size_t>(i)].printedX;
    hull.findings.push_back(
        {Level::Caution,
         "bottom-not-given",
         std::nullopt,
         std::nullopt,
         say("Between the lowest waterline and the keel the table leaves the bottom open; it is drawn level "
             "at the keel at x {} so that it does not hang below it. One buttock height a station would "
             "settle it; until then take girths as good to 1 percent and the shutter's width as unknown.",
             names)});
}

/// Stations whose section is drawn straight between the knuckle and its neighbour for want of a number.
void straightPanels(const HullTable& table, const LoftData& data, LoftedHull& hull) {
    for (const int side : {-1, 1}) {
        std::string names;
        int last = -1;
        for (const LoftPoint& p : data.points)
            if (p.kind == LoftPoint::Kind::Helper && p.side == side && p.station >= 0 && p.station != last) {
                last = p.station;
                names +=
                    (names.empty() ? "" : ", ") + table.stations[static_cast<std::size_t>(last)].printedX;
            }
        if (!names.empty())
            hull.findings.push_back(
                {Level::Note,
                 "panel-straight",
                 std::nullopt,
                 std::nullopt,
                 say(side < 0
                         ? sayable("Between sheer and knuckle the table has no number at x {}; the section "
                                   "is drawn straight there. One point a station would settle it.")
                         : sayable("Between knuckle and keel the table has no number at x {}; the section is "
                                   "drawn straight there. One point a station would settle it."),
                     names)});
    }
}

/// How sharply the knuckle turns, and where it is so soft that it need be none.
void knuckle(LoftedHull& hull) {
    const std::vector<KnucklePlace> line = knuckleLine(hull.drawn);
    if (line.empty())
        return;
    const auto softer = [](const KnucklePlace& a, const KnucklePlace& b) { return a.turn < b.turn; };
    const auto [least, most] = std::minmax_element(line.begin(), line.end(), softer);
    const auto degrees = [](double rad) { return std::to_string(std::lround(rad * 180 / std::numbers::pi)); };
    hull.findings.push_back({Level::Note,
                             "knuckle",
                             std::nullopt,
                             most->p.x(),
                             say("At the knuckle sides and bottom meet at an angle: they turn by {} degrees "
                                 "at x {} and {} degrees at x {}. The moulds have a sharp corner there.",
                                 degrees(least->turn),
                                 bothUnits(least->p.x()),
                                 degrees(most->turn),
                                 bothUnits(most->p.x()))});
    if (least->turn < softKnuckle)
        hull.findings.push_back(
            {Level::Caution,
             "knuckle-soft",
             std::nullopt,
             least->p.x(),
             say(least->turn < 0 ? sayable("Near x {} the knuckle turns by {} degrees only, hollow instead "
                                           "of outward; look at the knuckle's numbers there.")
                                 : sayable("Near x {} the knuckle turns by {} degrees only; strips could lie "
                                           "over that. If it is as soft all along, leave the knuckle out of "
                                           "the table and the hull is planked in one."),
                 bothUnits(least->p.x()),
                 degrees(least->turn))});
}

} // namespace

void reportLoft(const HullTable& table,
                const LoftData& data,
                const SurfaceFit& fit,
                const std::vector<SuspectCell>& suspects,
                LoftedHull& hull) {
    residualsPerStation(table, data, fit, hull);
    suspectCells(table, data, suspects, hull);
    levelKeels(table, fit, hull);
    lastGaps(table, data, hull);
    straightPanels(table, data, hull);
    knuckle(hull);
    hull.findings = heaviestFirst(std::move(hull.findings));
}

} // namespace sheerlay::core

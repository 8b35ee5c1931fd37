#include "core/project/check_hull.hpp"

#include "core/units/length_text.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

namespace sheerlay::core {

namespace {

// Two lengths of the same table that differ by less than this are the same cell; below any digit one writes.
constexpr double sameLength = 1e-6; // mm

bool same(double a, double b) {
    return std::abs(a - b) < sameLength;
}

/// A station as a sentence names it.
std::string nameOf(const ReadStation& read) {
    return quoted(read.station.printedX);
}

const ReadStation* previousWithX(const std::vector<ReadStation>& stations, std::size_t index) {
    while (index-- > 0)
        if (stations[index].hasX)
            return &stations[index];
    return nullptr;
}

void checkOrder(const std::vector<ReadStation>& stations, Messages& messages) {
    for (std::size_t i = 0; i < stations.size(); ++i) {
        const ReadStation& read = stations[i];
        const ReadStation* before = previousWithX(stations, i);
        if (before == nullptr || !read.hasX || read.station.x > before->station.x)
            continue;
        messages.error(read.xLine,
                       read.path + ".x",
                       inEnglish(sayable("{} after {}"), nameOf(read), nameOf(*before)),
                       sayable("stations in order, each x larger than the one before"));
    }
}

/// Whether a point agrees with an earlier one of its own list. Two lists may meet: a waterline crosses a
/// buttock.
void checkAgainst(const ReadStation& read, std::size_t i, std::size_t j, Messages& messages) {
    const TablePoint& point = read.station.points[i];
    const TablePoint& earlier = read.station.points[j];
    if (point.kind != earlier.kind || !same(point.height, earlier.height))
        return;
    if (same(point.halfBreadth, earlier.halfBreadth))
        messages.warning(
            point.line,
            read.pointKeys[i],
            inEnglish(sayable("the same point as {} at station {}"), read.pointKeys[j], nameOf(read)),
            sayable("each point once; the second one tells nothing new"));
    else if (point.kind == PointKind::Waterline)
        messages.error(point.line,
                       read.pointKeys[i],
                       inEnglish(sayable("half-breadth {} on the waterline at {}, which has {} already at "
                                         "station {}"),
                                 quoted(point.printedHalfBreadth),
                                 quoted(point.printedHeight),
                                 quoted(earlier.printedHalfBreadth),
                                 nameOf(read)),
                       sayable("one half-breadth for each waterline"));
}

void checkPairs(const ReadStation& read, Messages& messages) {
    for (std::size_t i = 0; i < read.station.points.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            checkAgainst(read, i, j, messages);
}

void checkHeights(const ReadStation& read, Messages& messages) {
    const Station& station = read.station;
    for (std::size_t i = 0; i < station.points.size(); ++i) {
        const TablePoint& point = station.points[i];
        if (!read.hasSheer || point.height < station.sheer.height - sameLength)
            continue;
        if (same(point.height, station.sheer.height) && same(point.halfBreadth, station.sheer.halfBreadth))
            continue; // the sheer itself, written twice: common where a waterline meets it
        messages.warning(
            point.line,
            read.pointKeys[i],
            inEnglish(sayable("height {} is at or above the sheer at {} at station {}"),
                      quoted(point.printedHeight),
                      quoted(station.sheer.printedHeight),
                      nameOf(read)),
            sayable("heights below the sheer, or a higher sheer; one of the two may be a misprint"));
    }
    if (!station.keel)
        return;
    double lowest = read.hasSheer ? station.sheer.height : std::numeric_limits<double>::infinity();
    std::string printed = station.sheer.printedHeight;
    for (const TablePoint& point : station.points) {
        if (point.height < lowest) {
            lowest = point.height;
            printed = point.printedHeight;
        }
    }
    if (station.keel->height > lowest + sameLength)
        messages.warning(
            station.keel->line,
            read.path + ".keel.height",
            inEnglish(sayable("{} is above the lowest point, {}, at station {}"),
                      quoted(station.keel->printedHeight),
                      quoted(printed),
                      nameOf(read)),
            sayable("a keel below every point of the section; one of the two may be a misprint"));
}

/// Height of the profile's low side over x, straight between its nearest points; none outside it.
std::optional<double> profileHeight(const std::vector<ProfilePoint>& profile, double x) {
    const ProfilePoint* before = nullptr;
    const ProfilePoint* after = nullptr;
    for (const ProfilePoint& point : profile) {
        if (point.x <= x && (before == nullptr || point.x > before->x ||
                             (same(point.x, before->x) && point.height < before->height)))
            before = &point;
        if (point.x >= x && (after == nullptr || point.x < after->x ||
                             (same(point.x, after->x) && point.height < after->height)))
            after = &point;
    }
    if (before == nullptr || after == nullptr)
        return std::nullopt;
    if (same(before->x, after->x))
        return std::min(before->height, after->height);
    return before->height + (after->height - before->height) * (x - before->x) / (after->x - before->x);
}

void checkKeels(const std::vector<ReadStation>& stations, const HullTable& hull, Messages& messages) {
    double siding = hull.halfSiding;
    for (const ProfilePoint& point : hull.profile)
        siding = std::max(siding, point.halfSiding.value_or(0.0));
    for (const ReadStation& read : stations) {
        if (read.keelWritten || !read.hasX || !read.hasSheer)
            continue;
        const bool onStem = read.station.sheer.halfBreadth <= siding + hull.roundedTo + sameLength;
        const auto height =
            hull.profile.size() >= 2 ? profileHeight(hull.profile, read.station.x) : std::nullopt;
        // A profile that has only the stem heads passes above the hull between them and gives no keel.
        if (onStem || (height && *height < read.station.sheer.height))
            continue;
        messages.error(
            read.station.line,
            read.path + ".keel",
            inEnglish(sayable("no keel height at station {}"), nameOf(read)),
            sayable("keel = { height = … }, which is 0 where the keel is on the base line, or profile "
                    "points that pass under this station"));
    }
}

/// Whether the knuckle, led on straight from the nearest two stations that give it, has met the stem before
/// it comes to this one.
bool pastKnuckle(const std::vector<ReadStation>& stations, const ReadStation& read) {
    constexpr double bend = 0.2; // of the last half-breadth: the line is round, and meets the stem earlier
    std::vector<const Station*> near;
    for (const ReadStation& other : stations)
        if (other.station.knuckle && other.hasX)
            near.push_back(&other.station);
    if (near.size() < 2 || !read.hasX)
        return false;
    const bool forward = read.station.x < near.front()->x;
    if (!forward && read.station.x < near.back()->x)
        return false;
    const Station& a = forward ? *near[0] : *near[near.size() - 1];
    const Station& b = forward ? *near[1] : *near[near.size() - 2];
    const double slope = (b.knuckle->halfBreadth - a.knuckle->halfBreadth) / (b.x - a.x);
    return a.knuckle->halfBreadth + slope * (read.station.x - a.x) < bend * a.knuckle->halfBreadth;
}

/// A knuckle runs from end to end, between sheer and keel.
void checkKnuckles(const std::vector<ReadStation>& stations, Messages& messages) {
    const auto given = [](const ReadStation& read) { return read.station.knuckle.has_value(); };
    const auto named = std::find_if(stations.begin(), stations.end(), given);
    if (named == stations.end())
        return;
    for (const ReadStation& read : stations) {
        const Station& s = read.station;
        if (!s.knuckle) {
            if (read.keelWritten && !read.knuckleWritten && !pastKnuckle(stations, read))
                messages.error(
                    s.line,
                    read.path + ".knuckle",
                    inEnglish(sayable("no knuckle at station {}, though there is one at station {}"),
                              nameOf(read),
                              nameOf(*named)),
                    sayable("a knuckle at every station but those on the stem above it: one that "
                            "fades into a round bilge can't be lofted; leave it out of the whole "
                            "table then, and the turn is lofted round"));
            continue;
        }
        const TablePoint& k = *s.knuckle;
        if (read.hasSheer && k.height >= s.sheer.height - sameLength)
            messages.error(k.line,
                           read.path + ".knuckle.height",
                           inEnglish(sayable("{} is at or above the sheer at {} at station {}"),
                                     quoted(k.printedHeight),
                                     quoted(s.sheer.printedHeight),
                                     nameOf(read)),
                           sayable("a knuckle below the sheer, with planking above it"));
        else if (s.keel && k.halfBreadth <= s.keel->halfBreadth + sameLength && k.halfBreadth > 0.0)
            messages.error(k.line,
                           read.path + ".knuckle.half-breadth",
                           inEnglish(sayable("{} is no further out than the keel at station {}"),
                                     quoted(k.printedHalfBreadth),
                                     nameOf(read)),
                           sayable("a knuckle outside the keel, with planking below it"));
    }
    const auto full = std::count_if(stations.begin(), stations.end(), given);
    if (full < 3)
        messages.error(named->station.knuckle->line,
                       named->path + ".knuckle",
                       full == 1 ? std::string(sayable("a knuckle at 1 station"))
                                 : inEnglish(sayable("a knuckle at {} stations"), full),
                       sayable("a knuckle at three stations or more, so that its line can be faired"));
}

void checkLength(const std::vector<ReadStation>& stations, Messages& messages) {
    constexpr double shortest = 500.0;   // mm; a model is still that long
    constexpr double longest = 30'000.0; // mm
    if (stations.size() < 3 || !stations.front().hasX || !stations.back().hasX)
        return;
    const double length = stations.back().station.x - stations.front().station.x;
    if (length > 0.0 && (length < shortest || length > longest))
        messages.warning(
            stations.back().xLine,
            stations.back().path + ".x",
            inEnglish(sayable("a table {} mm long from first to last station"), std::llround(length)),
            sayable("a look at units: inches and millimetres may have been mixed up"));
}

} // namespace

void checkHull(const std::vector<ReadStation>& stations, const HullTable& hull, Messages& messages) {
    checkOrder(stations, messages);
    for (const ReadStation& read : stations) {
        checkPairs(read, messages);
        checkHeights(read, messages);
    }
    checkKeels(stations, hull, messages);
    checkKnuckles(stations, messages);
    checkLength(stations, messages);
}

} // namespace sheerlay::core

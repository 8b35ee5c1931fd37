#include "core/hull/loft_data.hpp"

#include "core/hull/knuckle_line.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace sheerlay::core {
namespace {

constexpr double onCentreSpread = 0.1; // mm: a stem or keel point is on the centreplane by definition
constexpr double leastPanel = 40.0;    // mm of girth: two strips at the least above a knuckle

/// Half-breadth of the keel cell, or the siding where the table leaves it out.
double keelHalfBreadth(const TablePoint& keel, double siding) {
    return keel.printedHalfBreadth.empty() ? std::max(siding, keel.halfBreadth) : keel.halfBreadth;
}

/// A station that stands on the stem itself: no keel, and no breadth beyond the stem's own thickness.
bool standsOnStem(const Station& s, const HullTable& t) {
    if (s.keel)
        return false;
    const double thin = std::max(2 * t.roundedTo, t.halfSiding + t.roundedTo);
    return s.sheer.halfBreadth <= thin;
}

geometry::HalfSiding sidingOf(const HullTable& table) {
    std::vector<std::array<double, 2>> points;
    for (const ProfilePoint& p : table.profile)
        if (p.halfSiding)
            points.push_back({p.x, *p.halfSiding});
    for (const Station& s : table.stations) {
        if (s.keel)
            points.push_back({s.x, keelHalfBreadth(*s.keel, table.halfSiding)});
        else if (standsOnStem(s, table))
            points.push_back({s.x, std::min(table.halfSiding, s.sheer.halfBreadth)});
    }
    std::sort(points.begin(), points.end());
    points.erase(
        std::unique(points.begin(), points.end(), [](const auto& a, const auto& b) { return a[0] == b[0]; }),
        points.end());
    const bool constant =
        std::all_of(points.begin(), points.end(), [&](const auto& p) { return p[1] == points.front()[1]; });
    if (points.empty() || (constant && points.front()[1] == table.halfSiding))
        return geometry::HalfSiding(table.halfSiding);
    return geometry::HalfSiding(std::move(points));
}

double distanceTo(const TablePoint& a, const TablePoint& b, const TablePoint& p) {
    const Eigen::Vector2d along(b.halfBreadth - a.halfBreadth, b.height - a.height);
    const Eigen::Vector2d off(p.halfBreadth - a.halfBreadth, p.height - a.height);
    const double f = std::clamp(off.dot(along) / std::max(along.squaredNorm(), 1e-12), 0.0, 1.0);
    return (off - f * along).norm();
}

/// True where a point lies on the bottom: nearer to the straight way from knuckle to keel than to that from
/// sheer to knuckle.
bool belowKnuckle(const Station& s, const TablePoint& knuckle, const TablePoint& p) {
    TablePoint keel;
    keel.height = s.keel ? s.keel->height : std::min(knuckle.height, p.height);
    keel.halfBreadth = s.keel ? s.keel->halfBreadth : 0.0;
    return distanceTo(knuckle, keel, p) < distanceTo(s.sheer, knuckle, p);
}

/// Section points from sheer to keel; waterline and buttock points of one station mix. Those on the bottom
/// below a knuckle go inward, be it level.
/// @param knuckle  where it must lie, whatever is printed; none where the station has none
std::vector<const TablePoint*> ordered(const Station& s, const std::optional<TablePoint>& knuckle) {
    std::vector<const TablePoint*> list;
    for (const TablePoint& p : s.points)
        list.push_back(&p);
    std::stable_sort(list.begin(), list.end(), [](const TablePoint* a, const TablePoint* b) {
        return a->height != b->height ? a->height > b->height : a->halfBreadth > b->halfBreadth;
    });
    if (!knuckle)
        return list;
    const auto bottom = std::stable_partition(
        list.begin(), list.end(), [&](const TablePoint* p) { return !belowKnuckle(s, *knuckle, *p); });
    std::stable_sort(bottom, list.end(), [](const TablePoint* a, const TablePoint* b) {
        return a->halfBreadth > b->halfBreadth;
    });
    list.insert(bottom, &*s.knuckle);
    return list;
}

double median(std::vector<double> values) {
    if (values.empty())
        return 0.0;
    std::nth_element(
        values.begin(), values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2), values.end());
    return values[values.size() / 2];
}

struct Known {
    double x, y, z, girth;
};

/// Linear between the known places; the nearest one beyond.
Known between(const std::vector<Known>& known, double x) {
    if (x <= known.front().x)
        return known.front();
    for (std::size_t i = 1; i < known.size(); ++i)
        if (x <= known[i].x) {
            const Known& a = known[i - 1];
            const Known& b = known[i];
            const double f = (x - a.x) / (b.x - a.x);
            return {x, a.y + f * (b.y - a.y), a.z + f * (b.z - a.z), a.girth + f * (b.girth - a.girth)};
        }
    return known.back();
}

/// The printed stem is straight between its cells; without points there the surface bulges between them.
void addStemHelpers(LoftData& data, const Station& s, int index, double weight) {
    std::vector<const TablePoint*> cells = ordered(s, s.knuckle);
    cells.insert(cells.begin(), &s.sheer);
    for (std::size_t i = 1; i < cells.size(); ++i) {
        const TablePoint& a = *cells[i - 1];
        const TablePoint& b = *cells[i];
        constexpr int helpers = 6;
        for (int k = 1; k <= helpers; ++k) {
            const double z = a.height + (b.height - a.height) * k / (helpers + 1);
            data.points.push_back({LoftPoint::Kind::Helper,
                                   index,
                                   nullptr,
                                   s.x,
                                   std::min(a.halfBreadth, b.halfBreadth),
                                   z,
                                   s.sheer.height - z,
                                   weight,
                                   weight});
        }
    }
}

/// Where a station gives nothing between sheer and knuckle, or knuckle and keel, its section is straight.
void addStraightHelpers(LoftData& data, int station, const TablePoint& knuckle, double weight) {
    std::vector<LoftPoint> corners;
    std::vector<int> between(3, 0);
    for (const LoftPoint& p : data.points) {
        if (p.station != station || p.kind == LoftPoint::Kind::Helper)
            continue;
        if (p.kind == LoftPoint::Kind::Section)
            ++between[static_cast<std::size_t>(p.side + 1)];
        else
            corners.push_back(p);
        if (p.kind == LoftPoint::Kind::Knuckle) {
            corners.back().y = knuckle.halfBreadth;
            corners.back().z = knuckle.height;
        }
    }
    for (std::size_t k = 1; k < corners.size(); ++k) {
        const int side = k == 1 ? -1 : 1;
        if (between[static_cast<std::size_t>(side + 1)] > 0)
            continue;
        for (const double f : {1.0 / 3, 2.0 / 3}) {
            const auto at = [&](double LoftPoint::*of) {
                return corners[k - 1].*of + f * (corners[k].*of - corners[k - 1].*of);
            };
            LoftPoint helper;
            helper.kind = LoftPoint::Kind::Helper;
            helper.station = station;
            helper.x = corners[k].x;
            helper.y = at(&LoftPoint::y);
            helper.z = at(&LoftPoint::z);
            helper.girth = at(&LoftPoint::girth);
            helper.weightY = helper.weightZ = weight;
            helper.side = side;
            data.points.push_back(helper);
        }
    }
}

/// Gives the knuckle one v along the whole boat and all girths theirs.
/// @return words where it comes so near to sheer or keel that nothing is left to plank there
std::optional<std::string>
placeKnuckle(const HullTable& table, const std::vector<Known>& knuckle, LoftData& data) {
    std::vector<double> girths;
    for (const Known& k : knuckle)
        girths.push_back(k.girth);
    data.knuckle = median(girths);
    for (const LoftPoint& p : data.points) {
        if (p.kind != LoftPoint::Kind::Knuckle)
            continue;
        const Station& s = table.stations[static_cast<std::size_t>(p.station)];
        if (p.girth < leastPanel || p.girth < 0.3 * *data.knuckle)
            return "at station x " + s.printedX +
                   " the knuckle comes so near the sheer that no panel of planking is left above it; a "
                   "knuckle that runs into the sheer can't be lofted";
    }
    data.girthMax = 0;
    for (LoftPoint& p : data.points) {
        if (p.kind == LoftPoint::Kind::Knuckle)
            p.girth = *data.knuckle;
        else if (p.girth > 0)
            p.girth = girthParameter(p.girth, between(knuckle, p.x).girth, data.knuckle);
        data.girthMax = std::max(data.girthMax, p.girth);
    }
    return std::nullopt;
}

} // namespace

geometry::UniformKnots girthKnots(const LoftData& data, int spans) {
    constexpr double above = 80.0; // mm of the surface above the sheer
    constexpr double past = 145.0; // mm of girth past the keel
    const double last = data.girthMax + past;
    const double step = (last + above) / spans;
    if (!data.knuckle)
        return {-above, step, spans};
    const double v = *data.knuckle;
    const int down = std::max(3, static_cast<int>(std::lround(v / step)));
    const double own = v / down;
    const int up = static_cast<int>(std::ceil(above / own));
    const int rest = std::max(3, static_cast<int>(std::ceil((last - v) / own)));
    return {-up * own, own, up + down + rest, up + down};
}

Expected<LoftData, std::string> prepareLoft(const HullTable& table) {
    if (table.stations.size() < 3)
        return unexpected(std::string("at least three stations are needed"));
    LoftData data;
    data.sigma = table.roundedTo / std::sqrt(12.0);
    const double w = 1 / data.sigma;
    data.trims.siding = sidingOf(table);

    std::vector<double> gaps;
    for (std::size_t i = 1; i < table.stations.size(); ++i)
        gaps.push_back(table.stations[i].x - table.stations[i - 1].x);
    data.stationGap = median(gaps);

    std::vector<Known> sheer;
    std::vector<Known> keel;
    std::vector<Known> profile; // by x, the lowest where a stem turns back
    for (const ProfilePoint& p : table.profile)
        profile.push_back({p.x, 0, p.height, 0});
    std::stable_sort(
        profile.begin(), profile.end(), [](const Known& a, const Known& b) { return a.x < b.x; });

    std::vector<Known> knuckle;
    const std::vector<std::optional<TablePoint>> corners = plausibleKnuckle(table);
    for (std::size_t i = 0; i < table.stations.size(); ++i) {
        const Station& s = table.stations[i];
        const auto index = static_cast<int>(i);
        data.points.push_back(
            {LoftPoint::Kind::Sheer, index, &s.sheer, s.x, s.sheer.halfBreadth, s.sheer.height, 0, w, w});
        sheer.push_back({s.x, s.sheer.halfBreadth, s.sheer.height, 0});
        double girth = 0;
        double y = s.sheer.halfBreadth;
        double z = s.sheer.height;
        const auto walk = [&](double toY, double toZ) {
            girth += std::hypot(toY - y, toZ - z);
            y = toY;
            z = toZ;
            return girth;
        };
        int side = table.knuckled() ? -1 : 0; // a station without lies on the stem above it
        for (const TablePoint* p : ordered(s, corners[i])) {
            const bool corner = p->kind == PointKind::Knuckle;
            const TablePoint& at = corner ? *corners[i] : *p;
            const double g = walk(at.halfBreadth, at.height);
            const auto kind = corner ? LoftPoint::Kind::Knuckle : LoftPoint::Kind::Section;
            data.points.push_back(
                {kind, index, p, s.x, p->halfBreadth, p->height, g, w, w, corner ? 0 : side});
            if (!corner)
                continue;
            side = 1;
            knuckle.push_back({s.x, at.halfBreadth, at.height, g});
        }
        if (s.keel) {
            const double half = keelHalfBreadth(*s.keel, table.halfSiding);
            const double g = walk(half, s.keel->height);
            data.points.push_back({LoftPoint::Kind::Keel,
                                   index,
                                   &*s.keel,
                                   s.x,
                                   half,
                                   s.keel->height,
                                   g,
                                   1 / onCentreSpread,
                                   w,
                                   s.knuckle ? 1 : 0});
            keel.push_back({s.x, half, s.keel->height, g});
        } else if (standsOnStem(s, table)) {
            addStemHelpers(data, s, index, w);
        } else if (profile.size() >= 2 && s.x >= profile.front().x && s.x <= profile.back().x) {
            const double zk = between(profile, s.x).z;
            keel.push_back({s.x, 0, zk, walk(data.trims.siding.at(s.x), zk)});
        }
        if (corners[i])
            addStraightHelpers(data, index, *corners[i], w);
        data.girthMax = std::max(data.girthMax, girth);
    }
    if (keel.empty())
        return unexpected(std::string("no keel or profile heights are given: without them the bottom is "
                                      "anybody's guess; give a keel height at the "
                                      "stations or profile points along stem and keel"));

    // the profile's topmost point at an open end closes the sheer
    std::vector<const ProfilePoint*> heads;
    for (const End end : {End::Bow, End::Stern}) {
        const Known& outer = end == End::Bow ? sheer.front() : sheer.back();
        // within what the table's digits can tell apart, the last station's cell is the head itself
        const double apart = std::max(table.roundedTo, 0.02 * data.stationGap);
        const ProfilePoint* head = nullptr;
        for (const ProfilePoint& p : table.profile)
            if ((end == End::Bow ? p.x < outer.x - apart : p.x > outer.x + apart) &&
                (!head || p.height > head->height))
                head = &p;
        // a transom closes the end itself, unless the table goes on past it to the stem it was cut from
        const bool closed = std::any_of(table.transoms.begin(), table.transoms.end(), [&](const Transom& t) {
            return t.end == end && head && std::abs(head->x - t.xAtSheer) < data.stationGap / 2;
        });
        if (closed || !head ||
            std::abs(head->height - outer.z) > std::abs(head->x - outer.x) + 0.35 * outer.z)
            continue;
        (end == End::Bow ? data.bowHead : data.sternHead) = true;
        heads.push_back(head);
    }
    for (const ProfilePoint* head : heads) {
        const double y = head->halfSiding.value_or(data.trims.siding.at(head->x));
        data.points.push_back(
            {LoftPoint::Kind::Profile, -1, nullptr, head->x, y, head->height, 0, 1 / onCentreSpread, w});
        sheer.push_back({head->x, y, head->height, 0});
    }
    std::sort(sheer.begin(), sheer.end(), [](const Known& a, const Known& b) { return a.x < b.x; });

    for (const ProfilePoint& p : table.profile) {
        if (std::find(heads.begin(), heads.end(), &p) != heads.end())
            continue;
        const double y = p.halfSiding.value_or(data.trims.siding.at(p.x));
        const Known top = between(sheer, p.x);
        double girth = std::hypot(std::hypot(top.y - y, top.z - p.height), top.x - p.x);
        if (p.x > keel.front().x && p.x < keel.back().x)
            girth = std::max(girth, between(keel, p.x).girth);
        data.points.push_back(
            {LoftPoint::Kind::Profile, -1, nullptr, p.x, y, p.height, girth, 1 / onCentreSpread, w});
    }

    if (!knuckle.empty())
        if (const auto fault = placeKnuckle(table, knuckle, data))
            return unexpected(*fault);

    data.x0 = data.x1 = data.points.front().x;
    for (const LoftPoint& p : data.points) {
        data.x0 = std::min(data.x0, p.x);
        data.x1 = std::max(data.x1, p.x);
    }
    for (const Transom& t : table.transoms) {
        (t.end == End::Bow ? data.bowTransom : data.sternTransom) = true;
        data.x0 = std::min({data.x0, t.xAtSheer, t.xAtKeel});
        data.x1 = std::max({data.x1, t.xAtSheer, t.xAtKeel});
    }
    return data;
}

} // namespace sheerlay::core

#include "core/project/read_hull.hpp"

#include "core/project/check_hull.hpp"
#include "core/project/ranged_number.hpp"
#include "core/project/read_station.hpp"

#include <algorithm>
#include <limits>

namespace sheerlay::core {

namespace {

constexpr double finestBelievable = 0.1; // mm; nobody lifts offsets finer, whatever the digits say
constexpr std::string_view stationForm =
    "one [[hull.station]] per station, bow to stern, each with x, sheer and keel";

std::vector<ProfilePoint> readProfile(TableView& hull, HullTable& table, Reading& reading) {
    std::vector<ProfilePoint> profile;
    auto view = hull.table("profile", Need::Optional, "a table [hull.profile] with points and half-siding");
    if (!view)
        return profile;
    if (const auto siding = view->length("half-siding", Need::Optional, Sign::NotNegative))
        table.halfSiding = siding->value;
    constexpr std::string_view form =
        "points = [[x, height], …], with a half siding as a third length where it differs";
    const toml::array* points = view->array("points", Need::Optional, form);
    view->reportUnknown();
    if (points == nullptr)
        return profile;
    int number = 0;
    for (const toml::node& node : *points) {
        const std::string key = view->keyOf("points") + "[" + std::to_string(++number) + "]";
        const toml::array* point = node.as_array();
        if (point == nullptr || point->size() < 2 || point->size() > 3) {
            const std::string found = point == nullptr
                                          ? describe(node, reading.source)
                                          : "a list of " + std::to_string(point->size()) + " values";
            reading.messages.error(lineOf(node), key, found, std::string(form));
            continue;
        }
        const auto x = readLengthNode(*point->get(0), key, Sign::Any, reading);
        const auto height = readLengthNode(*point->get(1), key, Sign::Any, reading);
        std::optional<Cell> siding;
        if (point->size() == 3)
            siding = readLengthNode(*point->get(2), key, Sign::NotNegative, reading);
        if (!x || !height)
            continue;
        ProfilePoint read{x->value, height->value, std::nullopt, lineOf(node)};
        if (siding)
            read.halfSiding = siding->value;
        profile.push_back(read);
    }
    if (points->size() < 2)
        reading.messages.error(
            lineOf(*points),
            view->keyOf("points"),
            points->empty() ? "no point" : "one point",
            "at least two points, better three at each end; or no points, only half-siding");
    return profile;
}

std::vector<Transom> readTransoms(TableView& hull, Reading& reading) {
    std::vector<Transom> transoms;
    constexpr std::string_view form = "[[hull.transom]] with end, x-at-sheer and x-at-keel";
    const toml::array* list = hull.array("transom", Need::Optional, form);
    if (list == nullptr)
        return transoms;
    int number = 0;
    for (const toml::node& node : *list) {
        const std::string path = hull.keyOf("transom") + "[" + std::to_string(++number) + "]";
        const toml::table* inner = node.as_table();
        if (inner == nullptr) {
            reading.messages.error(lineOf(node), path, describe(node, reading.source), std::string(form));
            continue;
        }
        TableView view(*inner, path, lineOf(node), reading);
        const auto end = view.choice<End>("end", Need::Required, {{"bow", End::Bow}, {"stern", End::Stern}});
        const auto atSheer = view.length("x-at-sheer", Need::Required, Sign::Any);
        const auto atKeel = view.length("x-at-keel", Need::Required, Sign::Any);
        view.reportUnknown();
        if (!end || !atSheer || !atKeel)
            continue;
        if (std::any_of(transoms.begin(), transoms.end(), [&](const Transom& t) { return t.end == *end; })) {
            reading.messages.error(view.lineOfKey("end"),
                                   view.keyOf("end"),
                                   std::string("a second transom at the ") +
                                       (*end == End::Bow ? "bow" : "stern"),
                                   "one transom per end at most");
            continue;
        }
        transoms.push_back({*end, atSheer->value, atKeel->value, lineOf(node)});
    }
    return transoms;
}

} // namespace

HullTable readHull(TableView& file, Reading& reading) {
    HullTable table;
    auto hull = file.table("hull", Need::Required, "a table [hull] with " + std::string(stationForm));
    if (!hull)
        return table;
    table.drawnTo =
        hull->choice<DrawnTo>(
                "drawn-to",
                Need::Optional,
                {{"moulds", DrawnTo::Moulds}, {"inside", DrawnTo::Moulds}, {"outside", DrawnTo::Outside}})
            .value_or(DrawnTo::Moulds);
    const auto rounded = hull->length("rounded-to", Need::Optional, Sign::Positive);
    constexpr NumberRange fairing{
        leastFairing,
        mostFairing,
        "0.5 to 1: how far the loft may miss the table in the mean, in parts of what its rounding alone "
        "accounts for; 0.5 follows the numbers, 1 is as fair as their rounding allows, 0.8 is usual"};
    table.fairing = rangedNumber(*hull, "fairing", fairing, reading).value_or(usualFairing);
    table.profile = readProfile(*hull, table, reading);

    std::vector<ReadStation> read;
    const toml::array* stations = hull->array("station", Need::Required, stationForm);
    if (stations != nullptr) {
        int number = 0;
        for (const toml::node& node : *stations) {
            const std::string path = hull->keyOf("station") + "[" + std::to_string(++number) + "]";
            if (const toml::table* inner = node.as_table())
                read.push_back(readStation(TableView(*inner, path, lineOf(node), reading), reading));
            else
                reading.messages.error(
                    lineOf(node), path, describe(node, reading.source), std::string(stationForm));
        }
        if (stations->size() < 3)
            reading.messages.error(
                lineOf(*stations),
                hull->keyOf("station"),
                stations->empty()       ? "no station"
                : stations->size() == 1 ? "one station"
                                        : "two stations",
                "at least three stations; most builders have one every foot or 300 mm, closer near the ends");
    }
    table.transoms = readTransoms(*hull, reading);
    hull->reportUnknown();

    double finest = std::numeric_limits<double>::infinity();
    for (const ReadStation& station : read)
        finest = std::min(finest, station.finest);
    const double unsaid = reading.units == Units::Inches ? 25.4 / 16 : 1.0;
    table.roundedTo = rounded                                            ? rounded->value
                      : finest < std::numeric_limits<double>::infinity() ? std::max(finest, finestBelievable)
                                                                         : unsaid;
    checkHull(read, table, reading.messages);
    for (ReadStation& station : read)
        table.stations.push_back(std::move(station.station));
    return table;
}

} // namespace sheerlay::core

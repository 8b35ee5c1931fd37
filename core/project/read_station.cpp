#include "core/project/read_station.hpp"

#include "core/project/diagonal.hpp"

#include <algorithm>
#include <utility>

namespace sheerlay::core {

namespace {

/// Which of a point's two lengths was lifted off the lines; the other one only names the waterline or
/// buttock.
struct Lifted {
    bool height = true;
    bool halfBreadth = true;
};

class StationReader {
public:
    StationReader(ReadStation& read, Reading& reading) : m_read(read), m_reading(reading) {}

    std::optional<TablePoint> point(TableView view, PointKind kind, Lifted lifted) {
        const Need breadthNeed = kind == PointKind::Keel ? Need::Optional : Need::Required;
        const auto height = view.length("height", Need::Required, Sign::Any);
        const auto halfBreadth = view.length("half-breadth", breadthNeed, Sign::NotNegative);
        const bool breadthBroken = !halfBreadth && view.has("half-breadth");
        const auto [replacedHeight, replacedHalfBreadth] = replaced(view, "height", "half-breadth");
        view.reportUnknown();
        if (lifted.height)
            note(height);
        if (lifted.halfBreadth)
            note(halfBreadth);
        if (!height || breadthBroken || (!halfBreadth && breadthNeed == Need::Required))
            return std::nullopt;
        TablePoint point;
        point.kind = kind;
        point.height = height->value;
        point.printedHeight = height->printed;
        point.replacedHeight = replacedHeight;
        point.replacedHalfBreadth = replacedHalfBreadth;
        point.line = view.line();
        if (halfBreadth) {
            point.halfBreadth = halfBreadth->value;
            point.printedHalfBreadth = halfBreadth->printed;
        }
        return point;
    }

    void list(TableView& station, std::string_view key, PointKind kind, Lifted lifted) {
        constexpr std::string_view form = "a list of { height = …, half-breadth = … }";
        const toml::array* points = station.array(key, Need::Optional, form);
        if (points == nullptr)
            return;
        int number = 0;
        for (const toml::node& node : *points) {
            const std::string path = station.keyOf(key) + "[" + std::to_string(++number) + "]";
            const toml::table* inner = node.as_table();
            if (inner == nullptr) {
                m_reading.messages.error(
                    lineOf(node), path, describe(node, m_reading.source), std::string(form));
                continue;
            }
            if (const auto read = point(TableView(*inner, path, lineOf(node), m_reading), kind, lifted)) {
                m_read.station.points.push_back(*read);
                m_read.pointKeys.push_back(path);
            }
        }
    }

    void diagonals(TableView& station) {
        constexpr std::string_view form =
            "a list of { height = …, angle = …, distance = … }, or with through = "
            "{ half-breadth = …, height = … } instead of the angle";
        station.eachTable("diagonals", Need::Optional, form, [&](TableView view) {
            const std::string path = view.path();
            if (const auto read = diagonal(std::move(view))) {
                m_read.station.points.push_back(*read);
                m_read.pointKeys.push_back(path);
            }
        });
    }

private:
    /// The printed numbers that corrected ones stand in place of.
    std::pair<std::string, std::string>
    replaced(TableView& point, std::string_view first, std::string_view second) {
        auto view = point.table("replaces",
                                Need::Optional,
                                "replaces = { " + std::string(first) + " = … }, as the table was printed");
        if (!view)
            return {};
        const auto a = view->length(first, Need::Optional, Sign::Any);
        const auto b = second.empty() ? std::nullopt : view->length(second, Need::Optional, Sign::Any);
        view->reportUnknown();
        return {a ? a->printed : "", b ? b->printed : ""};
    }

    /// The point a diagonal runs through besides its height on the centreplane; on the base line where only
    /// its half-breadth is given.
    void through(TableView view, DiagonalReading& diagonal) {
        const auto breadth = view.length("half-breadth", Need::Required, Sign::Positive);
        const auto height = view.length("height", Need::Optional, Sign::Any);
        view.reportUnknown();
        diagonal.throughBreadth = breadth ? breadth->value : 0.0;
        diagonal.throughHeight = height ? height->value : 0.0;
    }

    std::optional<TablePoint> diagonal(TableView view) {
        const auto height = view.length("height", Need::Required, Sign::Any);
        const auto distance = view.length("distance", Need::Required, Sign::NotNegative);
        DiagonalReading reading;
        reading.angle = view.number("angle", Need::Optional, "degrees down from level, above 0 and below 90");
        if (auto point = view.table("through", Need::Optional, "through = { half-breadth = …, height = … }"))
            through(*std::move(point), reading);
        const bool both = reading.angle && view.has("through");
        const bool neither = !view.has("angle") && !view.has("through");
        reading.replacedDistance = replaced(view, "distance", "").first;
        view.reportUnknown();
        if (both || neither)
            m_reading.messages.error(
                view.line(),
                view.path(),
                both ? "an angle and a point it runs through"
                     : "neither an angle nor a point it runs through",
                "one of the two: angle = 40, or through = { half-breadth = …, height = … }");
        note(distance);
        if (!height || !distance || both || neither)
            return std::nullopt;
        reading.height = height->value;
        reading.printedHeight = height->printed;
        reading.distance = distance->value;
        reading.printedDistance = distance->printed;
        auto point = pointOnDiagonal(reading, m_reading.units);
        const bool broken = !reading.angle && reading.throughBreadth == 0.0; // reported already
        if (!point && !broken)
            m_reading.messages.error(view.line(),
                                     reading.angle ? view.keyOf("angle") : view.keyOf("through"),
                                     "a diagonal that does not run down and out from the centreplane",
                                     reading.angle ? "degrees down from level, above 0 and below 90"
                                                   : "a point lower than the diagonal's height there");
        if (point)
            point->line = view.line();
        return point;
    }

    void note(const std::optional<Cell>& cell) {
        if (cell && cell->resolution > 0.0)
            m_read.finest = std::min(m_read.finest, cell->resolution);
    }

    ReadStation& m_read;
    Reading& m_reading;
};

} // namespace

ReadStation readStation(TableView view, Reading& reading) {
    ReadStation read;
    read.path = view.path();
    read.station.line = view.line();
    StationReader reader(read, reading);

    if (const auto x = view.length("x", Need::Required, Sign::Any)) {
        read.station.x = x->value;
        read.station.printedX = x->printed;
        read.xLine = x->line;
        read.hasX = true;
    }
    constexpr std::string_view sheerForm = "sheer = { height = …, half-breadth = … }";
    if (auto sheer = view.table("sheer", Need::Required, sheerForm)) {
        if (const auto point = reader.point(*std::move(sheer), PointKind::Sheer, {})) {
            read.station.sheer = *point;
            read.hasSheer = true;
        }
    }
    read.keelWritten = view.has("keel");
    if (auto keel = view.table("keel", Need::Optional, "keel = { height = … }"))
        read.station.keel = reader.point(*std::move(keel), PointKind::Keel, {});
    constexpr std::string_view knuckleForm =
        "knuckle = { height = …, half-breadth = … }, one to a station: strips turn along one line only";
    read.knuckleWritten = view.has("knuckle");
    if (auto knuckle = view.table("knuckle", Need::Optional, knuckleForm))
        read.station.knuckle = reader.point(*std::move(knuckle), PointKind::Knuckle, {});
    reader.list(view, "waterlines", PointKind::Waterline, {.height = false, .halfBreadth = true});
    reader.list(view, "buttocks", PointKind::Buttock, {.height = true, .halfBreadth = false});
    reader.diagonals(view);
    reader.list(view, "points", PointKind::Point, {});
    view.reportUnknown();
    return read;
}

} // namespace sheerlay::core

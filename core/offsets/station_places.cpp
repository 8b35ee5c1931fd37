#include "core/offsets/station_places.hpp"

#include "core/units/length_text.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace sheerlay::core {

namespace {

constexpr double unknown = std::numeric_limits<double>::quiet_NaN();

/// The two names of "0 & 14", "1 and 13", "2, 12" in a table folded amidships.
std::optional<std::array<double, 2>> pairOf(std::string_view name) {
    const std::string plain = plainSigns(name);
    for (const std::string_view between : {"&", " and ", "+", ";", ","}) {
        const auto at = plain.find(between);
        if (at == std::string::npos)
            continue;
        const auto first = stationNumber(plain.substr(0, at));
        const auto second = stationNumber(plain.substr(at + between.size()));
        if (first && second && *first != *second)
            return std::array{*first, *second};
    }
    return std::nullopt;
}

class Finder {
public:
    Finder(const TurnedGrid& grid,
           const TableReading& reading,
           const TableCorrections& corrections,
           const std::string& file)
        : m_grid(grid), m_reading(reading), m_corrections(corrections), m_file(file) {}

    Expected<StationPlaces, std::vector<FileMessage>> places() {
        for (std::size_t line = 0; line < m_reading.lines.size(); ++line) {
            if (m_reading.lines[line].kind == OffsetLine::StationNames)
                m_names = line;
            if (m_reading.lines[line].kind == OffsetLine::Positions)
                m_positions = line;
        }
        if (!m_names && !m_positions)
            return unexpected(one(
                sayable("no names and no positions of the stations"),
                m_reading.stationsInColumns
                    ? sayable("a heading \"station\" or \"position\", or --take \"row 1 = station names\"")
                    : sayable(
                          "a heading \"station\" or \"position\", or --take \"column 1 = station names\"")));
        collect();
        if (m_positions)
            fromPositions();
        else if (m_corrections.spacing)
            fromSpacing();
        else
            fromNames();
        if (m_errors.empty())
            fold();
        if (!m_errors.empty())
            return unexpected(std::move(m_errors));
        return std::move(m_found);
    }

private:
    [[nodiscard]] std::vector<FileMessage> one(std::string found, std::string would) const {
        return {{m_file, 0, sayable("the table"), std::move(found), std::move(would)}};
    }
    void error(std::size_t line, std::size_t place, std::string found, std::string would) {
        m_errors.push_back({m_file,
                            m_grid.fileLine(line, place),
                            m_grid.cellName(line, place),
                            std::move(found),
                            std::move(would)});
    }

    /// A station is named, or stands somewhere; in a list of points a blank name is the station before.
    void collect() {
        for (std::size_t place = m_reading.labels; place < m_grid.places(); ++place) {
            StationPlace station;
            station.place = place;
            if (m_names)
                station.name = m_grid.at(*m_names, place);
            if (station.name.empty() && m_positions)
                station.name = m_grid.at(*m_positions, place);
            if (!isNotGiven(station.name))
                m_found.stations.push_back(station);
        }
    }
    void fromPositions() {
        std::vector<StationPlace> kept;
        for (StationPlace& station : m_found.stations) {
            const std::string& cell = m_grid.at(*m_positions, station.place);
            if (isNotGiven(cell)) {
                if (!m_reading.pointList)
                    error(*m_positions,
                          station.place,
                          inEnglish(sayable("no position of station {}"), quoted(station.name)),
                          sayable("its distance along the boat"));
                continue;
            }
            const auto x = readCell(cell, notationOf(m_reading, *m_positions));
            if (!x) {
                error(*m_positions, station.place, x.error().found, x.error().would);
                continue;
            }
            station.x = x->millimetres;
            station.printedX = m_reading.lines[*m_positions].unit ? "" : x->printed;
            station.resolution = x->resolution;
            kept.push_back(station);
        }
        m_found.stations = std::move(kept);
    }

    void fromSpacing() {
        const auto spacing = readSaid(*m_corrections.spacing, m_reading.notation);
        if (!spacing || spacing->millimetres <= 0.0) {
            m_errors = one(spacing ? "spacing = " + *m_corrections.spacing : spacing.error().found,
                           sayable("a length such as spacing = 12 in"));
            return;
        }
        m_spacing = spacing->millimetres;
        auto& stations = m_found.stations;
        for (StationPlace& station : stations) {
            const auto pair = pairOf(station.name);
            const auto number = pair ? std::optional((*pair)[0]) : stationNumber(station.name);
            station.x = number ? *number * m_spacing : unknown;
        }
        // "X", or the sign for amidships: halfway between its neighbours.
        for (std::size_t i = 0; i < stations.size(); ++i) {
            if (!std::isnan(stations[i].x))
                continue;
            if (i > 0 && i + 1 < stations.size() && !std::isnan(stations[i - 1].x) &&
                !std::isnan(stations[i + 1].x))
                stations[i].x = (stations[i - 1].x + stations[i + 1].x) / 2;
            else
                error(*m_names,
                      stations[i].place,
                      inEnglish(sayable("station {}, which has no number"), quoted(stations[i].name)),
                      sayable("a number, or a line of positions"));
        }
    }

    /// Names that are lengths themselves: "3-0-0", "900 mm", or numbers far enough apart.
    void fromNames() {
        constexpr double nearest = 50.0;   // mm between stations
        constexpr double shortest = 500.0; // mm, a model
        bool plain = false;
        for (StationPlace& station : m_found.stations) {
            const auto x = readCell(station.name, notationOf(m_reading, *m_names));
            if (!x)
                return askForSpacing();
            station.x = x->millimetres;
            station.printedX = m_reading.lines[*m_names].unit ? "" : x->printed;
            station.resolution = x->resolution;
            plain = plain || isPlainNumber(station.name);
        }
        if (!plain || m_reading.pointList)
            return;
        double apart = std::numeric_limits<double>::infinity();
        const auto& stations = m_found.stations;
        for (std::size_t i = 1; i < stations.size(); ++i)
            apart = std::min(apart, std::abs(stations[i].x - stations[i - 1].x));
        if (stations.size() < 2 || apart < nearest ||
            std::abs(stations.back().x - stations.front().x) < shortest)
            askForSpacing();
    }
    void askForSpacing() {
        m_errors = one(sayable("stations whose distance along the boat is nowhere said"),
                       sayable("a line of positions, or --take \"spacing = 12 in\" where they stand evenly"));
    }

    void fold() {
        if (m_corrections.mirror && *m_corrections.mirror != "no") {
            const std::string& about = *m_corrections.mirror;
            const auto named = std::ranges::find(
                m_found.stations, about, [](const StationPlace& station) { return station.name; });
            if (named != m_found.stations.end()) {
                m_found.fold = named->x;
                return;
            }
            const auto x = readSaid(about, m_reading.notation);
            if (x)
                m_found.fold = x->millimetres;
            else
                m_errors =
                    one("mirror = " + about, sayable("the name of the middle station, or its position"));
            return;
        }
        if (m_corrections.mirror)
            return;
        std::size_t pairs = 0;
        std::optional<double> middle;
        for (const StationPlace& station : m_found.stations) {
            const auto pair = pairOf(station.name);
            pairs += pair ? 1 : 0;
            if (!pair)
                middle = station.x;
            else if (m_corrections.spacing && !m_positions)
                m_found.fold = m_spacing * ((*pair)[0] + (*pair)[1]) / 2;
        }
        if (pairs == 0)
            return;
        if (pairs + 1 == m_found.stations.size() && middle) {
            m_found.fold = middle;
        } else if (!m_found.fold || pairs < m_found.stations.size()) {
            m_errors = one(
                sayable("stations named in pairs, and no middle to fold the table about"),
                sayable("--take \"mirror = \" with the middle station's name or position, or mirror = no"));
        }
    }

    const TurnedGrid& m_grid;
    const TableReading& m_reading;
    const TableCorrections& m_corrections;
    const std::string& m_file;
    std::optional<std::size_t> m_names;
    std::optional<std::size_t> m_positions;
    double m_spacing = 0.0; // mm
    StationPlaces m_found;
    std::vector<FileMessage> m_errors;
};

} // namespace

std::optional<double> stationNumber(std::string_view name) {
    const LabelWords words = labelWords(name);
    if (words.lengths.size() != 1 || words.lengthUnit)
        return std::nullopt;
    return readCount(words.lengths.front());
}

Expected<StationPlaces, std::vector<FileMessage>> stationPlaces(const TurnedGrid& grid,
                                                                const TableReading& reading,
                                                                const TableCorrections& corrections,
                                                                const std::string& file) {
    return Finder(grid, reading, corrections, file).places();
}

} // namespace sheerlay::core

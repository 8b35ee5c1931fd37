#include "core/offsets/table_project.hpp"

#include "core/offsets/said_profile.hpp"
#include "core/offsets/station_places.hpp"
#include "core/offsets/unfold.hpp"
#include "core/project/diagonal.hpp"
#include "core/units/length_text.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace sheerlay::core {

namespace {

constexpr double finestBelievable = 0.1; // mm, as for a project's own table

/// A length with its sign turned where the line counts downward.
CellLength signedHeight(CellLength length, bool below) {
    if (below && length.millimetres != 0.0) {
        length.millimetres = -length.millimetres;
        if (length.printed.starts_with('-'))
            length.printed.erase(0, 1);
        else
            length.printed.insert(0, 1, '-');
    }
    return length;
}

/// What a station's cells have said so far.
struct Cells {
    std::optional<CellLength> sheerHeight, sheerBreadth, keelHeight, keelBreadth;
    std::vector<TablePoint> points;
};

class Builder {
public:
    Builder(const CellGrid& cells,
            const TableReading& reading,
            const TableCorrections& corrections,
            const std::string& file)
        : m_grid(cells, reading.stationsInColumns), m_reading(reading), m_corrections(corrections),
          m_file(file) {}

    Expected<TableProject, std::vector<FileMessage>> project(const std::string& name) {
        auto places = stationPlaces(m_grid, m_reading, m_corrections, m_file);
        if (!places)
            return unexpected(places.error());
        Project& project = m_made.project;
        project.name = name;
        project.units = projectUnits(m_reading.notation);
        project.hull.drawnTo = m_corrections.drawnTo;
        if (m_reading.pointList)
            fromPoints(*places);
        else
            for (const StationPlace& place : places->stations)
                project.hull.stations.push_back(station(place));
        if (m_corrections.halfSiding)
            siding();
        for (const std::string& said : m_corrections.profile)
            profile(said, places->fold);
        if (m_errors.empty())
            order();
        if (m_errors.empty() && places->fold)
            unfold(*places->fold);
        if (m_errors.empty())
            blankKeels();
        if (!m_errors.empty())
            return unexpected(std::move(m_errors));
        project.hull.roundedTo = std::isfinite(m_finest) && m_finest > 0.0
                                     ? std::max(m_finest, finestBelievable)
                                 : project.units == Units::Inches ? fromSixteenths(2)
                                                                  : 1.0;
        return std::move(m_made);
    }

private:
    void error(std::size_t line, std::size_t place, const std::string& found, const std::string& would) {
        m_errors.push_back(
            {m_file, m_grid.fileLine(line, place), m_grid.cellName(line, place), found, would});
    }
    void error(const StationPlace& place, const std::string& found, const std::string& would) {
        m_errors.push_back({m_file,
                            m_grid.fileLine(0, place.place),
                            m_grid.placeName(place.place) + ", station " + quoted(place.name),
                            found,
                            would});
    }

    std::optional<CellLength> value(std::size_t line, std::size_t place, bool mayBeNegative) {
        const std::string& cell = m_grid.at(line, place);
        if (isNotGiven(cell))
            return std::nullopt;
        const TableLine& read = m_reading.lines[line];
        auto length = readCell(cell, notationOf(m_reading, line));
        if (!length) {
            error(line, place, length.error().found, length.error().would);
            return std::nullopt;
        }
        if (!mayBeNegative && length->millimetres < 0.0) {
            error(line,
                  place,
                  inEnglish(sayable("{}, which is negative"), quoted(cell)),
                  sayable("a half-breadth of 0 or more"));
            return std::nullopt;
        }
        if (read.unit)
            length.value().printed.clear(); // it says something else in the project's units
        if (length->resolution > 0.0)
            m_finest = std::min(m_finest, length->resolution);
        if (length->markedDoubtful)
            m_made.notes.push_back(
                inEnglish(sayable("The cell in {}, {}, is marked as doubtful; it is taken as printed."),
                          m_grid.cellName(line, place),
                          quoted(cell)));
        return std::move(length).value();
    }

    void cell(Cells& cells, std::size_t line, const StationPlace& place) {
        const TableLine& read = m_reading.lines[line];
        const auto height = [&] {
            auto length = value(line, place.place, true);
            return length ? std::optional(signedHeight(*length, read.below)) : length;
        };
        switch (read.kind) {
        case OffsetLine::SheerHeight:
            cells.sheerHeight = height();
            break;
        case OffsetLine::SheerBreadth:
            cells.sheerBreadth = value(line, place.place, false);
            break;
        case OffsetLine::KeelHeight:
            cells.keelHeight = height();
            break;
        case OffsetLine::KeelBreadth:
            cells.keelBreadth = value(line, place.place, false);
            break;
        case OffsetLine::Waterline:
            if (const auto breadth = value(line, place.place, false))
                cells.points.push_back({PointKind::Waterline,
                                        breadth->millimetres,
                                        read.at,
                                        breadth->printed,
                                        read.printedAt,
                                        0,
                                        std::nullopt});
            break;
        case OffsetLine::Buttock:
            if (const auto z = height())
                cells.points.push_back({PointKind::Buttock,
                                        read.at,
                                        z->millimetres,
                                        read.printedAt,
                                        z->printed,
                                        0,
                                        std::nullopt});
            break;
        case OffsetLine::Diagonal:
            if (const auto distance = value(line, place.place, false)) {
                DiagonalReading diagonal = read.diagonal;
                diagonal.distance = distance->millimetres;
                diagonal.printedDistance = distance->printed;
                if (const auto point = pointOnDiagonal(diagonal, m_made.project.units))
                    cells.points.push_back(*point);
            }
            break;
        default:
            break;
        }
    }

    Station station(const StationPlace& place) {
        Cells cells;
        for (std::size_t line = 0; line < m_reading.lines.size(); ++line)
            cell(cells, line, place);
        Station station;
        station.x = place.x;
        station.printedX = place.printedX;
        if (m_errors.empty() && (!cells.sheerHeight || !cells.sheerBreadth))
            error(place,
                  cells.sheerHeight ? sayable("no half-breadth of the sheer")
                                    : sayable("no height of the sheer"),
                  sayable("both for every station; or no name for a station that is not one"));
        if (cells.sheerHeight && cells.sheerBreadth)
            station.sheer = point(PointKind::Sheer, *cells.sheerBreadth, *cells.sheerHeight);
        if (cells.keelHeight)
            station.keel =
                point(PointKind::Keel, cells.keelBreadth.value_or(CellLength{}), *cells.keelHeight);
        station.points = std::move(cells.points);
        return station;
    }
    static TablePoint point(PointKind kind, const CellLength& breadth, const CellLength& height) {
        return {
            kind, breadth.millimetres, height.millimetres, breadth.printed, height.printed, 0, std::nullopt};
    }

    /// A list of points: from sheer to keel or the other way, one after the other.
    void fromPoints(const StationPlaces& places) {
        std::size_t heights = 0;
        std::size_t breadths = 0;
        for (std::size_t line = 0; line < m_reading.lines.size(); ++line) {
            heights = m_reading.lines[line].kind == OffsetLine::PointHeight ? line : heights;
            breadths = m_reading.lines[line].kind == OffsetLine::PointBreadth ? line : breadths;
        }
        std::vector<std::pair<StationPlace, std::vector<TablePoint>>> lists;
        for (std::size_t i = 0; i < places.stations.size(); ++i) {
            const StationPlace& here = places.stations[i];
            if (lists.empty() || std::abs(lists.back().first.x - here.x) > 1e-9)
                lists.push_back({here, {}});
            const std::size_t end =
                i + 1 < places.stations.size() ? places.stations[i + 1].place : m_grid.places();
            for (std::size_t place = here.place; place < end; ++place) {
                const auto breadth = value(breadths, place, false);
                auto height = value(heights, place, true);
                if (!breadth != !height && m_errors.empty())
                    error(breadth ? heights : breadths,
                          place,
                          sayable("one number of a point"),
                          sayable("both, or neither"));
                if (breadth && height)
                    lists.back().second.push_back(point(
                        PointKind::Point, *breadth, signedHeight(*height, m_reading.lines[heights].below)));
            }
        }
        for (auto& [place, points] : lists) {
            if (points.size() < 2) {
                if (m_errors.empty())
                    error(place,
                          sayable("fewer than two points"),
                          sayable("the half section from sheer to keel"));
                continue;
            }
            if (points.front().height < points.back().height)
                std::ranges::reverse(points);
            Station station;
            station.x = place.x;
            station.printedX = place.printedX;
            station.sheer = points.front();
            station.sheer.kind = PointKind::Sheer;
            station.keel = points.back();
            station.keel->kind = PointKind::Keel;
            station.points.assign(points.begin() + 1, points.end() - 1);
            m_made.project.hull.stations.push_back(std::move(station));
        }
    }

    void siding() {
        const auto read = readSaid(*m_corrections.halfSiding, m_reading.notation);
        if (read && read->millimetres >= 0.0)
            m_made.project.hull.halfSiding = read->millimetres;
        else
            m_errors.push_back({m_file,
                                0,
                                "half-siding",
                                read ? quoted(*m_corrections.halfSiding) : read.error().found,
                                sayable("a length of 0 or more, such as half-siding = 3/8 in")});
    }

    void profile(const std::string& said, const std::optional<double>& fold) {
        const auto points = saidProfile(said, m_reading.notation, fold);
        if (!points) {
            m_errors.push_back({m_file, 0, "profile", points.error().found, points.error().would});
            return;
        }
        auto& all = m_made.project.hull.profile;
        all.insert(all.end(), points->begin(), points->end());
    }

    /// Bow to stern; a table from the stern is turned round.
    void order() {
        auto& stations = m_made.project.hull.stations;
        const auto falls = [](const Station& a, const Station& b) { return a.x > b.x; };
        if (stations.size() < 2 || std::ranges::is_sorted(stations, {}, &Station::x))
            return;
        if (std::ranges::is_sorted(stations, falls)) {
            std::ranges::reverse(stations);
            m_made.notes.push_back(
                sayable("The stations' positions fall along the table, so its last station is the bow's; "
                        "if it is the stern's, give the positions with a minus sign."));
            return;
        }
        for (std::size_t i = 1; i < stations.size(); ++i)
            if (stations[i].x <= stations[i - 1].x)
                m_errors.push_back(
                    {m_file,
                     0,
                     sayable("the positions of the stations"),
                     inEnglish(sayable("station number {} of the table stands no further along "
                                       "the boat than the one before"),
                               i + 1),
                     sayable("positions in order from one end to the other")});
    }

    void unfold(double fold) {
        auto& stations = m_made.project.hull.stations;
        const std::size_t listed = stations.size();
        stations = unfolded(std::move(stations), fold);
        m_made.notes.push_back(inEnglish(
            sayable("{} stations are listed for both ends; unfolded they are {}."), listed, stations.size()));
    }

    /// A blank keel between two that are 0 is on the base line, as printed tables leave it out there; one on
    /// a stem is not needed.
    void blankKeels() {
        auto& stations = m_made.project.hull.stations;
        const auto nextKeel = [&stations](std::size_t from, std::ptrdiff_t step) -> const TablePoint* {
            for (auto i = static_cast<std::ptrdiff_t>(from) + step; i >= 0 && i < std::ssize(stations);
                 i += step)
                if (stations[static_cast<std::size_t>(i)].keel)
                    return &*stations[static_cast<std::size_t>(i)].keel;
            return nullptr;
        };
        std::vector<std::size_t> blank;
        for (std::size_t i = 0; i < stations.size(); ++i)
            if (!stations[i].keel)
                blank.push_back(i);
        if (blank.size() == stations.size() && !stations.empty()) {
            m_errors.push_back(
                {m_file,
                 0,
                 sayable("the table"),
                 sayable("no keel or rabbet heights at all"),
                 sayable("the keel's height at every station that is not on a stem; without them nobody can "
                         "say how deep she is")});
            return;
        }
        std::vector<std::pair<std::size_t, TablePoint>> found;
        for (const std::size_t i : blank) {
            const TablePoint* before = nextKeel(i, -1);
            const TablePoint* after = nextKeel(i, 1);
            if (before == nullptr || after == nullptr)
                continue; // at an end: on the stem, or complained of by the project's reader
            const double unit = std::isfinite(m_finest) ? std::max(m_finest, finestBelievable) : 1.0;
            if (std::abs(before->height) > unit + 1e-9 || std::abs(after->height) > unit + 1e-9)
                continue;
            TablePoint keel = *before;
            keel.height = 0.0;
            keel.printedHeight = inFeetInchesEighths(before->printedHeight) ? "0-0-0" : "0";
            found.emplace_back(i, keel);
        }
        for (auto& [i, keel] : found)
            stations[i].keel = keel;
        if (!found.empty())
            m_made.notes.push_back(
                inEnglish(found.size() == 1
                              ? sayable("The keel is not given at {} station between others where it is on "
                                        "the base line; it is taken as 0 there.")
                              : sayable("The keel is not given at {} stations between others where it is on "
                                        "the base line; it is taken as 0 there."),
                          found.size()));
    }

    TurnedGrid m_grid;
    const TableReading& m_reading;
    const TableCorrections& m_corrections;
    const std::string& m_file;
    TableProject m_made;
    double m_finest = std::numeric_limits<double>::infinity();
    std::vector<FileMessage> m_errors;
};

} // namespace

Expected<TableProject, std::vector<FileMessage>> tableProject(const CellGrid& grid,
                                                              const TableReading& reading,
                                                              const TableCorrections& corrections,
                                                              const std::string& name,
                                                              const std::string& file) {
    return Builder(grid, reading, corrections, file).project(name);
}

} // namespace sheerlay::core

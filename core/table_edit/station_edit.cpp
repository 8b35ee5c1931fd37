#include "core/table_edit/station_edit.hpp"

#include "core/project/diagonal.hpp"
#include "core/project/project_edit.hpp"
#include "core/table_edit/cell_loft.hpp"
#include "core/table_edit/set_cells.hpp"
#include "core/table_edit/table_grid.hpp"
#include "core/units/length_text.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

namespace sheerlay::core {
namespace {

using Kind = GridLine::Kind;

LengthError firstOf(const std::vector<FileMessage>& messages) {
    return {messages.front().found, messages.front().would};
}

/// A number as the table prints it, and that printed number's own value.
void print(double millimetres, const Project& project, double& value, std::string& printed) {
    printed = textLike(millimetres, "", project.hull, project.units);
    const auto read = parseLength(printed, project.units);
    value = read ? read->millimetres : millimetres;
}

/// A station whose cells come off the loft.
class NewStation {
public:
    NewStation(const Project& project, const LoftedHull& hull, Station station)
        : m_project(project), m_hull(hull), m_section(hull, station.x + hull.xShift),
          m_station(std::move(station)) {}

    Station make() {
        if (const auto height = read({Kind::SheerHeight}))
            print(*height, m_project, m_station.sheer.height, m_station.sheer.printedHeight);
        if (const auto breadth = read({Kind::SheerBreadth}))
            print(std::max(0.0, *breadth),
                  m_project,
                  m_station.sheer.halfBreadth,
                  m_station.sheer.printedHalfBreadth);
        m_station.sheer.kind = PointKind::Sheer;
        const auto neighbours = between();
        const bool keeled = std::any_of(
            neighbours.begin(), neighbours.end(), [](const Station* s) { return s->keel.has_value(); });
        if (const auto height = read({Kind::KeelHeight}); height && keeled) {
            m_station.keel = TablePoint{};
            m_station.keel->kind = PointKind::Keel;
            print(*height, m_project, m_station.keel->height, m_station.keel->printedHeight);
        }
        addKnuckle();
        for (const GridLine& line : gridLines(m_project.hull))
            addOn(line);
        if (m_station.points.empty())
            addSpread(neighbours);
        return std::move(m_station);
    }

private:
    [[nodiscard]] std::optional<double> read(const GridLine& line) const {
        const auto loft = m_section.at(Station{}, line);
        return loft ? std::optional(loft->lofted) : std::nullopt;
    }

    /// The stations beside it, the nearer one first.
    [[nodiscard]] std::vector<const Station*> between() const {
        std::vector<const Station*> list;
        for (const Station& s : m_project.hull.stations)
            list.push_back(&s);
        std::sort(list.begin(), list.end(), [&](const Station* a, const Station* b) {
            return std::abs(a->x - m_station.x) < std::abs(b->x - m_station.x);
        });
        return {list[0], list[1]}; // a table has three at least
    }

    /// None on the stem above a knuckle.
    void addKnuckle() {
        const auto v = m_hull.drawn.surface.crease();
        if (!v || !m_project.hull.knuckled())
            return;
        const double x = m_station.x + m_hull.xShift;
        const Eigen::Vector3d at = m_hull.drawn.surface.point(x, *v);
        if (at.y() <= m_hull.drawn.trims.siding.at(x))
            return;
        m_station.knuckle = TablePoint{};
        m_station.knuckle->kind = PointKind::Knuckle;
        print(at.z(), m_project, m_station.knuckle->height, m_station.knuckle->printedHeight);
        print(at.y(), m_project, m_station.knuckle->halfBreadth, m_station.knuckle->printedHalfBreadth);
    }

    void addOn(const GridLine& line) {
        if (line.number > 0)
            return;
        TablePoint p;
        const auto lofted =
            line.kind == Kind::Waterline || line.kind == Kind::Buttock || line.kind == Kind::Diagonal
                ? read(line)
                : std::nullopt;
        if (!lofted)
            return;
        const double stem = m_hull.drawn.trims.siding.at(m_station.x + m_hull.xShift);
        if (line.kind == Kind::Waterline && *lofted <= stem)
            return; // it has run past the stem there
        if (line.kind == Kind::Diagonal) {
            DiagonalReading reading = *line.diagonal;
            print(*lofted, m_project, reading.distance, reading.printedDistance);
            if (auto on = pointOnDiagonal(reading, m_project.units))
                p = *std::move(on);
        } else if (line.kind == Kind::Waterline) {
            p.kind = PointKind::Waterline;
            p.height = line.level;
            p.printedHeight = line.printed;
            print(*lofted, m_project, p.halfBreadth, p.printedHalfBreadth);
        } else {
            p.kind = PointKind::Buttock;
            p.halfBreadth = line.level;
            p.printedHalfBreadth = line.printed;
            print(*lofted, m_project, p.height, p.printedHeight);
        }
        if (p.height < m_station.sheer.height)
            m_station.points.push_back(std::move(p));
    }

    void addSpread(const std::vector<const Station*>& neighbours) {
        const std::size_t count = neighbours.front()->points.size();
        const auto section = sectionAt(m_hull.drawn, m_station.x + m_hull.xShift, 200);
        for (std::size_t i = 1; i <= count && !section.empty(); ++i) {
            const Eigen::Vector3d& at = section[i * (section.size() - 1) / (count + 1)];
            TablePoint p;
            print(at.y(), m_project, p.halfBreadth, p.printedHalfBreadth);
            print(at.z(), m_project, p.height, p.printedHeight);
            m_station.points.push_back(std::move(p));
        }
    }

    const Project& m_project;
    const LoftedHull& m_hull;
    LoftedSection m_section;
    Station m_station;
};

} // namespace

Expected<Project, LengthError>
insertStation(const Project& project, const LoftedHull& hull, const std::string& place) {
    const auto read = readTyped(place, project);
    if (!read)
        return unexpected(read.error());
    Station station;
    station.x = read->millimetres;
    station.printedX = read->printed;
    const double x = station.x + hull.xShift;
    const std::string from =
        textLike(hull.drawn.sheer.front().x() - hull.xShift, "", project.hull, project.units);
    const std::string to =
        textLike(hull.drawn.sheer.back().x() - hull.xShift, "", project.hull, project.units);
    if (x <= hull.drawn.sheer.front().x() || x >= hull.drawn.sheer.back().x())
        return unexpected(LengthError{inEnglish(sayable("{}, which is not on the boat"), quoted(place)),
                                      inEnglish(sayable("a place between {} and {}"), from, to)});
    Project next = project;
    auto& stations = next.hull.stations;
    for (const Station& s : stations)
        if (std::abs(s.x - station.x) < leastApart)
            return unexpected(LengthError{
                inEnglish(sayable("{}, where station {} stands"), quoted(place), quoted(s.printedX)),
                sayable("a place at least 10 mm (3/8 in) from the next station")});
    Station made = NewStation(project, hull, std::move(station)).make();
    const auto at =
        std::find_if(stations.begin(), stations.end(), [&](const Station& s) { return s.x > made.x; });
    stations.insert(at, std::move(made));
    if (const auto judged = checked(next); !judged)
        return unexpected(firstOf(judged.error()));
    return next;
}

Expected<Project, LengthError> removeStation(const Project& project, std::size_t station) {
    Project next = project;
    auto& stations = next.hull.stations;
    if (stations.size() <= 3)
        return unexpected(
            LengthError{sayable("a table of three stations"), sayable("at least three have to stay")});
    stations.erase(stations.begin() + static_cast<std::ptrdiff_t>(station));
    if (const auto judged = checked(next); !judged)
        return unexpected(firstOf(judged.error()));
    return next;
}

} // namespace sheerlay::core

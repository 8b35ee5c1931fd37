#include "core/table_edit/table_grid.hpp"

#include "core/project/diagonal.hpp"
#include "core/project/written_value.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace sheerlay::core {
namespace {

using Kind = GridLine::Kind;

// Two lengths of one table that differ by less are the same; below any digit one writes.
constexpr double sameLength = 1e-6; // mm
constexpr double sameSlope = 1e-9;  // rad

bool near(double a, double b) {
    return std::abs(a - b) < sameLength;
}

Kind kindOf(const TablePoint& p) {
    return p.diagonal                       ? Kind::Diagonal
           : p.kind == PointKind::Waterline ? Kind::Waterline
           : p.kind == PointKind::Buttock   ? Kind::Buttock
                                            : Kind::PointHeight;
}

double levelOf(const TablePoint& p) {
    const Kind kind = kindOf(p);
    return kind == Kind::Waterline ? p.height : kind == Kind::Buttock ? p.halfBreadth : 0.0;
}

bool sameDiagonal(const DiagonalReading& a, const DiagonalReading& b) {
    const auto slope = slopeOf(a);
    const auto other = slopeOf(b);
    return near(a.height, b.height) && slope && other && std::abs(*slope - *other) < sameSlope;
}

/// Whether two points of the stations' lists stand in one line of the table.
bool alike(const TablePoint& a, const TablePoint& b) {
    if (kindOf(a) != kindOf(b) || !near(levelOf(a), levelOf(b)))
        return false;
    return !a.diagonal || sameDiagonal(*a.diagonal, *b.diagonal);
}

bool onLine(const GridLine& line, const TablePoint& p) {
    const Kind kind = line.kind == Kind::PointBreadth ? Kind::PointHeight : line.kind;
    if (kindOf(p) != kind || !near(levelOf(p), line.level))
        return false;
    return !p.diagonal || (line.diagonal && sameDiagonal(*line.diagonal, *p.diagonal));
}

/// The line of a point, its first where it has two.
GridLine lineOf(const TablePoint& p, std::size_t number) {
    GridLine line{kindOf(p), levelOf(p), "", number};
    if (p.diagonal) {
        line.diagonal = p.diagonal;
        line.diagonal->distance = 0.0;
        line.diagonal->printedDistance.clear();
        line.diagonal->replacedDistance.clear();
        line.printed = p.diagonal->printedHeight;
    } else if (p.kind == PointKind::Waterline) {
        line.printed = p.printedHeight;
    } else if (p.kind == PointKind::Buttock) {
        line.printed = p.printedHalfBreadth;
    }
    return line;
}

/// Lines of the stations' lists, each once.
std::vector<GridLine> listedLines(const HullTable& table) {
    std::vector<GridLine> lines;
    for (const Station& station : table.stations)
        for (std::size_t i = 0; i < station.points.size(); ++i) {
            const TablePoint& p = station.points[i];
            const auto number = static_cast<std::size_t>(
                std::count_if(station.points.begin(),
                              station.points.begin() + static_cast<std::ptrdiff_t>(i),
                              [&](const TablePoint& earlier) { return alike(p, earlier); }));
            if (std::none_of(lines.begin(), lines.end(), [&](const GridLine& line) {
                    return line.number == number && onLine(line, p);
                }))
                lines.push_back(lineOf(p, number));
        }
    return lines;
}

} // namespace

std::vector<GridLine> gridLines(const HullTable& table) {
    std::vector<GridLine> lines{{Kind::Place, 0.0, "", 0},
                                {Kind::SheerHeight, 0.0, "", 0},
                                {Kind::KeelHeight, 0.0, "", 0},
                                {Kind::SheerBreadth, 0.0, "", 0},
                                {Kind::KeelBreadth, 0.0, "", 0}};
    if (table.knuckled()) {
        lines.push_back({Kind::KnuckleHeight, 0.0, "", 0});
        lines.push_back({Kind::KnuckleBreadth, 0.0, "", 0});
    }
    for (GridLine line : listedLines(table)) {
        lines.push_back(line);
        if (line.kind == Kind::PointHeight) {
            line.kind = Kind::PointBreadth;
            lines.push_back(line);
        }
    }
    sortLines(lines);
    return lines;
}

bool sameLine(const GridLine& a, const GridLine& b) {
    return a.kind == b.kind && a.number == b.number && near(a.level, b.level) &&
           (a.diagonal && b.diagonal ? sameDiagonal(*a.diagonal, *b.diagonal)
                                     : a.diagonal.has_value() == b.diagonal.has_value());
}

void sortLines(std::vector<GridLine>& lines) {
    std::stable_sort(lines.begin(), lines.end(), [](const GridLine& a, const GridLine& b) {
        const auto rank = [](const GridLine& line) {
            const bool point = line.kind == Kind::PointHeight || line.kind == Kind::PointBreadth;
            const double height = line.diagonal ? line.diagonal->height : line.level;
            return std::tuple(point ? static_cast<int>(Kind::PointHeight) : static_cast<int>(line.kind),
                              -height,
                              line.number,
                              static_cast<int>(line.kind));
        };
        return rank(a) < rank(b);
    });
}

const TablePoint* pointOf(const Station& station, const GridLine& line) {
    switch (line.kind) {
    case Kind::Place:
        return nullptr;
    case Kind::SheerHeight:
    case Kind::SheerBreadth:
        return &station.sheer;
    case Kind::KeelHeight:
    case Kind::KeelBreadth:
        return station.keel ? &*station.keel : nullptr;
    case Kind::KnuckleHeight:
    case Kind::KnuckleBreadth:
        return station.knuckle ? &*station.knuckle : nullptr;
    default:
        break;
    }
    std::size_t number = 0;
    for (const TablePoint& p : station.points)
        if (onLine(line, p) && number++ == line.number)
            return &p;
    return nullptr;
}

bool givesHeight(const GridLine& line) {
    return line.kind == Kind::SheerHeight || line.kind == Kind::KnuckleHeight ||
           line.kind == Kind::KeelHeight || line.kind == Kind::Buttock || line.kind == Kind::PointHeight;
}

std::optional<double> cellValue(const Station& station, const GridLine& line) {
    if (line.kind == Kind::Place)
        return station.x;
    const TablePoint* p = pointOf(station, line);
    if (p == nullptr)
        return std::nullopt;
    // a keel whose half-breadth is left out ends at the half siding
    if (line.kind == Kind::KeelBreadth && p->halfBreadth == 0.0 && p->printedHalfBreadth.empty())
        return std::nullopt;
    return line.kind == Kind::Diagonal ? p->diagonal->distance
           : givesHeight(line)         ? p->height
                                       : p->halfBreadth;
}

std::string cellText(const Station& station, const GridLine& line, Units units) {
    const auto value = cellValue(station, line);
    if (!value)
        return {};
    const TablePoint* p = pointOf(station, line);
    const std::string& printed = p == nullptr                  ? station.printedX
                                 : line.kind == Kind::Diagonal ? p->diagonal->printedDistance
                                 : givesHeight(line)           ? p->printedHeight
                                                               : p->printedHalfBreadth;
    return printed.empty() ? writtenLength(*value, units) : printed;
}

std::string replacedText(const Station& station, const GridLine& line) {
    const TablePoint* p = pointOf(station, line);
    if (p == nullptr)
        return {};
    return line.kind == Kind::Diagonal ? p->diagonal->replacedDistance
           : givesHeight(line)         ? p->replacedHeight
                                       : p->replacedHalfBreadth;
}

std::string lineName(const GridLine& line) {
    const std::string level =
        line.printed + (line.number > 0 ? " (" + std::to_string(line.number + 1) + ")" : "");
    switch (line.kind) {
    case Kind::Place:
        return say("place");
    case Kind::SheerHeight:
        return say("sheer height");
    case Kind::SheerBreadth:
        return say("sheer half-breadth");
    case Kind::KnuckleHeight:
        return say("knuckle height");
    case Kind::KnuckleBreadth:
        return say("knuckle half-breadth");
    case Kind::KeelHeight:
        return say("keel height");
    case Kind::KeelBreadth:
        return say("keel half-breadth");
    case Kind::Waterline:
        return say("half-breadth at the waterline {}", level);
    case Kind::Buttock:
        return say("height at the buttock {}", level);
    case Kind::Diagonal:
        return say("distance along the diagonal from height {}", level);
    case Kind::PointHeight:
        return say("height of point {}", line.number + 1);
    case Kind::PointBreadth:
        break;
    }
    return say("half-breadth of point {}", line.number + 1);
}

std::string cellName(const Project& project, const std::vector<GridLine>& lines, GridCell cell) {
    return say("Station {}, {}",
               cellText(project.hull.stations.at(cell.station), {}, project.units),
               lineName(lines.at(cell.line)));
}

} // namespace sheerlay::core

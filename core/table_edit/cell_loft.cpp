#include "core/table_edit/cell_loft.hpp"

#include "core/offsets/cell_length.hpp"
#include "core/project/diagonal.hpp"
#include "core/tables/offset_lines.hpp"
#include "core/units/length.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {
namespace {

using Kind = GridLine::Kind;

constexpr double step = 4.0;        // mm of girth between the places a section is first looked at
constexpr double aboveSheer = 60.0; // mm; a point near the sheer may lie above it
constexpr double exact = 1e-7;      // mm of girth

} // namespace

/// A straight line in the section's plane, a y + b z = level, and what is read off along it: c y + d z + e.
struct LoftedSection::Reading {
    double a = 0, b = 0, level = 0;
    double c = 0, d = 0, e = 0;
    std::optional<double> given; ///< mm
    bool lowest = false;         ///< of several crossings, where nothing is given; else the largest

    [[nodiscard]] double beside(const Place& p) const { return a * p.y + b * p.z - level; }
    [[nodiscard]] double value(const Place& p) const { return c * p.y + d * p.z + e; }
};

LoftedSection::LoftedSection(const LoftedHull& hull, double x)
    : m_hull(hull), m_x(x), m_siding(hull.drawn.trims.siding.at(x)) {
    const double last = hull.drawn.surface.knotsV().last();
    m_keel = last;
    const double corner = hull.drawn.surface.crease().value_or(last);
    double next = 0.0;
    for (double v = -aboveSheer; v <= last; v = next) {
        next = v < corner && v + step > corner ? corner : v + step;
        m_places.push_back(place(v));
        if (v >= 0.0 && m_keel == last && m_places.back().y <= m_siding)
            m_keel = v;
    }
}

LoftedSection::Place LoftedSection::place(double v) const {
    const Eigen::Vector3d p = m_hull.drawn.surface.point(m_x, v);
    return {v, p.y(), p.z()};
}

std::optional<CellLoft> LoftedSection::onGivenLine(double v, const Reading& reading) const {
    CellLoft loft;
    loft.lofted = reading.value(place(v));
    loft.off = loft.normal = reading.given ? *reading.given - loft.lofted : 0.0;
    return loft;
}

std::optional<CellLoft> LoftedSection::at(const Station& station, const GridLine& line) const {
    Reading reading;
    reading.given = cellValue(station, line);
    const TablePoint* p = pointOf(station, line);
    const Reading breadth{0, 1, 0, 1, 0, 0, reading.given, false};
    const Reading height{1, 0, 0, 0, 1, 0, reading.given, true};
    switch (line.kind) {
    case Kind::Place:
    case Kind::KeelBreadth:
        return std::nullopt;
    case Kind::SheerHeight:
        return onGivenLine(0.0, height);
    case Kind::SheerBreadth:
        return onGivenLine(0.0, breadth);
    case Kind::KnuckleHeight:
    case Kind::KnuckleBreadth: {
        const auto corner = m_hull.drawn.surface.crease();
        if (!corner || p == nullptr)
            return std::nullopt;
        return onGivenLine(*corner, line.kind == Kind::KnuckleHeight ? height : breadth);
    }
    case Kind::KeelHeight:
        reading = height;
        reading.level = p != nullptr && !p->printedHalfBreadth.empty() ? p->halfBreadth : m_siding;
        break;
    case Kind::Waterline:
        reading = breadth;
        reading.level = line.level;
        break;
    case Kind::Buttock:
        reading = height;
        reading.level = line.level;
        break;
    case Kind::PointHeight:
    case Kind::PointBreadth:
        if (p == nullptr)
            return std::nullopt;
        reading = line.kind == Kind::PointHeight ? height : breadth;
        reading.level = line.kind == Kind::PointHeight ? p->halfBreadth : p->height;
        break;
    case Kind::Diagonal: {
        const auto slope = slopeOf(*line.diagonal);
        if (!slope)
            return std::nullopt;
        const double c = std::cos(*slope);
        const double s = std::sin(*slope);
        const double from = line.diagonal->height;
        reading = {s, c, c * from, c, -s, s * from, reading.given, false};
        break;
    }
    }

    std::optional<CellLoft> best;
    double bestMerit = 0.0;
    for (std::size_t i = 0; i + 1 < m_places.size(); ++i) {
        Place from = m_places[i];
        Place to = m_places[i + 1];
        if ((reading.beside(from) > 0.0) == (reading.beside(to) > 0.0))
            continue;
        const bool inside = from.v >= 0.0 && from.v <= m_keel;
        if (!reading.given && !inside)
            continue;
        while (to.v - from.v > exact) {
            const Place middle = place(0.5 * (from.v + to.v));
            ((reading.beside(middle) > 0.0) == (reading.beside(from) > 0.0) ? from : to) = middle;
        }
        CellLoft loft;
        loft.lofted = reading.value(from);
        const double merit = reading.given    ? -std::abs(*reading.given - loft.lofted)
                             : reading.lowest ? -loft.lofted
                                              : loft.lofted;
        if (best && merit <= bestMerit)
            continue;
        if (reading.given) {
            loft.off = *reading.given - loft.lofted;
            const Eigen::Vector3d along = m_hull.drawn.surface.jet(m_x, from.v).v;
            const double length = std::hypot(along.y(), along.z());
            // outward of a section that runs from the sheer to the keel
            if (length > 0.0)
                loft.normal = loft.off * (reading.d * along.y() - reading.c * along.z()) / length;
        }
        best = loft;
        bestMerit = merit;
    }
    return best;
}

std::vector<std::vector<std::optional<CellLoft>>>
loftOfCells(const HullTable& table, const LoftedHull& hull, const std::vector<GridLine>& lines) {
    std::vector<std::vector<std::optional<CellLoft>>> all;
    for (const Station& station : table.stations) {
        const LoftedSection section(hull, station.x + hull.xShift);
        std::vector<std::optional<CellLoft>>& cells = all.emplace_back(lines.size());
        for (std::size_t i = 0; i < lines.size(); ++i)
            if (cellValue(station, lines[i]))
                cells[i] = section.at(station, lines[i]);
    }
    return all;
}

std::string textLike(double millimetres, const std::string& like, const HullTable& table, Units units) {
    const std::string& sample =
        !like.empty() || table.stations.empty() ? like : table.stations.front().sheer.printedHeight;
    if (!isFeetInchesEighths(sample))
        return roundedLength(millimetres, table.roundedTo, units);
    return toFeetInchesEighths(table.roundedTo * std::round(millimetres / table.roundedTo));
}

} // namespace sheerlay::core

#include "core/lines_drawing/lines_parts.hpp"

#include "core/hull/knuckle.hpp"
#include "core/hull/station_names.hpp"
#include "core/units/length.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace sheerlay::core {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

constexpr double small = 2.6; // mm, size of type

} // namespace

DrawnLines drawnLines(const Project& project, const LoftedHull& hull, Units units) {
    const TrimmedSurface& boat = hull.drawn;
    DrawnLines drawn;
    drawn.widestX = boat.halfGirthMaxX;
    drawn.choices = usualLines(boat, units);
    const std::vector<std::string> names = core::stationNames(project, hull);
    for (std::size_t i = 0; i < names.size(); ++i)
        if (!sectionAt(boat, hull.stationX[i], 8).empty()) {
            drawn.choices.stations.push_back(hull.stationX[i]);
            drawn.names.push_back(names[i]);
        }
    drawn.choices.girths.clear();
    drawn.lines = hullLines(boat, drawn.choices);
    for (const Vector2d& uv : boat.outline.region.boundary()) {
        const Vector3d p = boat.surface.point(uv.x(), uv.y());
        for (const auto trim : {geometry::Trim::BowPlane, geometry::Trim::SternPlane})
            if (std::abs(boat.trims.value(trim, uv.y(), p)) < 0.05)
                (trim == geometry::Trim::BowPlane ? drawn.bowTransom : drawn.sternTransom).push_back(p);
    }
    for (const KnucklePlace& k : knuckleLine(boat))
        drawn.knuckle.push_back(k.p);
    for (const HullLine& line : drawn.lines)
        for (const HullLinePoint& q : line.points) {
            drawn.bow = std::min(drawn.bow, q.p.x());
            drawn.stern = std::max(drawn.stern, q.p.x());
            drawn.low = std::min(drawn.low, q.p.z());
            drawn.high = std::max(drawn.high, q.p.z());
            drawn.broad = std::max(drawn.broad, q.p.y());
            if (line.family == LineFamily::Diagonal)
                drawn.far = std::max(drawn.far, drawn.choices.diagonals[line.index].outward(q.p));
        }
    return drawn;
}

std::string LinesParts::length(double mm) const {
    return formatLength(mm, m_units);
}

/// A line of the hull on a view by two functions of its points.
template <class A, class B>
PaperLine LinesParts::onPaper(const LinesView& view, const HullLine& line, A a, B b) const {
    PaperLine points;
    for (const HullLinePoint& q : line.points)
        points.push_back(view.at(a(q.p), b(q.p)));
    return points;
}

/// Straight lines of reference: one across the view at every level, named in the lane at its left.
void LinesParts::across(const LinesView& view, const std::vector<double>& levels, Colour colour) {
    for (const double level : levels) {
        m_pen.line({view.at(m_lines.bow, level), view.at(m_lines.stern, level)}, LineKind::Thin, colour);
        m_pen.label(view.at(m_lines.bow, level) + Vector2d(-2.0, 0.35 * small),
                    length(level),
                    {.size = small, .anchor = Anchor::Right, .colour = colour});
    }
}

void LinesParts::upright(const LinesView& view, double from, double to) {
    for (const double x : m_lines.choices.stations)
        m_pen.line({view.at(x, from), view.at(x, to)}, LineKind::Thin, colours::pencil);
}

/// Names spread over the length, so that neighbours' do not meet.
void LinesParts::name(const PaperLine& points, const HullLine& line, const std::string& text, Colour colour) {
    // waterlines run together amidships, buttocks at the ends
    const double first = line.family == LineFamily::Waterline ? 0.08 : 0.2;
    const double step = line.family == LineFamily::Waterline ? 0.025 : 0.055;
    m_pen.labelOn(points, text, first + step * static_cast<double>(line.index), colour);
}

void LinesParts::edges(const LinesView& view, bool fromAbove) {
    for (const auto* line : {&m_lines.bowTransom, &m_lines.sternTransom, &m_lines.knuckle}) {
        PaperLine edge;
        for (const Vector3d& p : *line)
            edge.push_back(view.at(p.x(), fromAbove ? p.y() : p.z()));
        m_pen.line(edge, LineKind::Visible);
    }
}

void LinesParts::profile(const LinesView& view) {
    const auto side = [&](const HullLine& line) {
        return onPaper(
            view, line, [](const Vector3d& p) { return p.x(); }, [](const Vector3d& p) { return p.z(); });
    };
    upright(view, 0, m_lines.high);
    across(view, m_lines.choices.waterlines, colours::lineBlue);
    m_pen.line({view.at(m_lines.bow, 0), view.at(m_lines.stern, 0)}, LineKind::Centre);
    m_pen.label(view.at(m_lines.bow, 0) + Vector2d(-2.0, 0.35 * small),
                say("base line"),
                {.size = small, .anchor = Anchor::Right});
    for (const HullLine& line : m_lines.lines) // before what is named: names keep clear of them
        if (line.family == LineFamily::SheerProfile || line.family == LineFamily::Keel)
            m_pen.line(side(line), LineKind::Visible);
    edges(view, false);
    for (const HullLine& line : m_lines.lines)
        if (line.family == LineFamily::Buttock)
            m_pen.line(side(line), LineKind::Thin, colours::cedar);
    for (const HullLine& line : m_lines.lines)
        if (line.family == LineFamily::Buttock)
            name(side(line), line, length(m_lines.choices.buttocks[line.index]), colours::cedar);
}

void LinesParts::halfBreadths(const LinesView& view) {
    const auto above = [&](const HullLine& line) {
        return onPaper(
            view, line, [](const Vector3d& p) { return p.x(); }, [](const Vector3d& p) { return p.y(); });
    };
    upright(view, 0, m_lines.broad);
    across(view, m_lines.choices.buttocks, colours::cedar);
    m_pen.line({view.at(m_lines.bow, 0), view.at(m_lines.stern, 0)}, LineKind::Centre);
    m_pen.label(view.at(m_lines.bow, 0) + Vector2d(-2.0, 0.35 * small),
                say("centreline"),
                {.size = small, .anchor = Anchor::Right});
    for (const HullLine& line : m_lines.lines)
        if (line.family == LineFamily::SheerPlan)
            m_pen.line(above(line), LineKind::Visible);
    edges(view, true);
    for (const HullLine& line : m_lines.lines)
        if (line.family == LineFamily::Waterline)
            m_pen.line(above(line), LineKind::Thin, colours::lineBlue);
    for (const HullLine& line : m_lines.lines)
        if (line.family == LineFamily::Waterline)
            name(above(line), line, length(m_lines.choices.waterlines[line.index]), colours::lineBlue);
}

std::string LinesParts::letter(std::size_t index) {
    return std::string(1, static_cast<char>('A' + index));
}

void LinesParts::diagonals(const LinesView& view) {
    upright(view, 0, m_lines.far);
    const auto down = [&](const HullLine& line) {
        const DiagonalPlane& d = m_lines.choices.diagonals[line.index];
        return onPaper(
            view,
            line,
            [](const Vector3d& p) { return p.x(); },
            [&](const Vector3d& p) { return d.outward(p); });
    };
    for (const HullLine& line : m_lines.lines)
        if (line.family == LineFamily::Diagonal)
            m_pen.line(down(line), LineKind::Thin, colours::taper);
    for (const HullLine& line : m_lines.lines)
        if (line.family == LineFamily::Diagonal)
            name(down(line), line, say("diagonal {}", letter(line.index)), colours::taper);
}

void LinesParts::stationNames(const LinesView& view, double edge) {
    for (std::size_t i = 0; i < m_lines.names.size(); ++i)
        m_pen.label({view.at(m_lines.choices.stations[i], 0).x(), edge},
                    m_lines.names[i],
                    {.size = small, .anchor = Anchor::Middle});
}

void LinesParts::bodyPlan(const LinesView& view) {
    bodyGrid(view);
    bodyDiagonals(view);
    bodySections(view);
    PaperLine edge;
    for (const Vector3d& p : m_lines.sternTransom)
        edge.push_back(view.at(-p.y(), p.z()));
    m_pen.line(edge, LineKind::Hidden);
    edge.clear();
    for (const Vector3d& p : m_lines.bowTransom)
        edge.push_back(view.at(p.y(), p.z()));
    m_pen.line(edge, LineKind::Hidden);
}

/// Waterlines and buttocks, straight from the end.
void LinesParts::bodyGrid(const LinesView& view) {
    const auto both = [&](double a, double b) { return std::array{view.at(-a, b), view.at(a, b)}; };
    for (const double z : m_lines.choices.waterlines) {
        const auto [left, right] = both(m_lines.broad, z);
        m_pen.line({left, right}, LineKind::Thin, colours::lineBlue);
        m_pen.label(left + Vector2d(-2.0, 0.35 * small),
                    length(z),
                    {.size = small, .anchor = Anchor::Right, .colour = colours::lineBlue});
    }
    for (const double y : m_lines.choices.buttocks)
        for (const double side : {-1.0, 1.0}) {
            m_pen.line(
                {view.at(side * y, 0), view.at(side * y, m_lines.high)}, LineKind::Thin, colours::cedar);
            m_pen.label(view.at(side * y, 0) + Vector2d(0, 4.0),
                        length(y),
                        {.size = small, .anchor = Anchor::Middle, .colour = colours::cedar});
        }
    m_pen.line({both(m_lines.broad, 0)[0], both(m_lines.broad, 0)[1]}, LineKind::Centre);
    m_pen.line({view.at(0, 0), view.at(0, m_lines.high)}, LineKind::Centre);
}

void LinesParts::bodyDiagonals(const LinesView& view) {
    for (std::size_t i = 0; i < m_lines.choices.diagonals.size(); ++i) {
        const DiagonalPlane& d = m_lines.choices.diagonals[i];
        double reach = 0;
        for (const HullLine& line : m_lines.lines)
            if (line.family == LineFamily::Diagonal && line.index == i)
                for (const HullLinePoint& q : line.points)
                    reach = std::max(reach, q.p.y());
        reach += 4.0 / view.scale;
        for (const double side : {-1.0, 1.0}) {
            const PaperLine line{view.at(0, d.height),
                                 view.at(side * reach, d.height - reach * std::tan(d.angle))};
            m_pen.line(line, LineKind::Hidden, colours::taper);
            m_pen.label(
                line.back() + Vector2d(side * 2.0, 0.0),
                letter(i),
                {.size = small, .anchor = side < 0 ? Anchor::Right : Anchor::Left, .colour = colours::taper});
        }
    }
}

/// The stations, and the sheer through their heads.
void LinesParts::bodySections(const LinesView& view) {
    const auto fromEnd = [&](const HullLine& line, double side) {
        return onPaper(
            view,
            line,
            [side](const Vector3d& p) { return side * p.y(); },
            [](const Vector3d& p) { return p.z(); });
    };
    const auto sideOf = [&](const HullLine& line) {
        return m_lines.choices.stations[line.index] <= m_lines.widestX ? 1.0 : -1.0;
    };
    for (const HullLine& line : m_lines.lines)
        if (line.family == LineFamily::SheerProfile)
            for (const double side : {-1.0, 1.0}) {
                HullLine half{line.family, 0, {}};
                for (const HullLinePoint& q : line.points)
                    if ((q.p.x() < m_lines.widestX) == (side > 0))
                        half.points.push_back(q);
                m_pen.line(fromEnd(half, side), LineKind::Thin);
            }
    std::vector<PaperLine> sections;
    for (const HullLine& line : m_lines.lines)
        if (line.family == LineFamily::Station) {
            sections.push_back(fromEnd(line, sideOf(line)));
            m_pen.line(sections.back(), LineKind::Visible);
        }
    auto section = sections.begin();
    for (const HullLine& line : m_lines.lines)
        if (line.family == LineFamily::Station)
            bodyName(section++->front(), sideOf(line), m_lines.names[line.index]);
}

/// A station's name above the head of its section, higher where others stand in the way.
void LinesParts::bodyName(const Vector2d& head, double side, const std::string& name) {
    const Anchor anchor = side < 0 ? Anchor::Right : Anchor::Left;
    for (const double above : {1.2, 4.0, 6.8, 9.6, 12.4})
        if (m_pen.label(head + Vector2d(side * 1.2, -above), name, {.size = small, .anchor = anchor}))
            return;
}

} // namespace sheerlay::core

#include "core/lines_drawing/lines_sheet.hpp"

#include "core/hull/station_names.hpp"
#include "core/lines/hull_lines.hpp"
#include "core/lines_drawing/lines_view.hpp"
#include "core/sheets/page.hpp"
#include "core/sheets/page_frame.hpp"
#include "core/units/length.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <numbers>

namespace sheerlay::core {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

constexpr double headHeight = 17.0, footHeight = 8.0, lane = 17.0; // mm on paper
constexpr double labelRow = 7.0, gap = 6.0;                        // mm
constexpr double small = 2.6, note = 3.4;                          // mm, sizes of type
constexpr std::array metricScales{2.0, 2.5, 4.0, 5.0, 8.0, 10.0, 12.5, 15.0, 20.0, 25.0, 40.0, 50.0};
constexpr std::array inchScales{2.0, 3.0, 4.0, 6.0, 8.0, 12.0, 16.0, 24.0, 32.0, 48.0};

std::string scaleText(double scale) {
    char text[24];
    std::snprintf(text, sizeof text, "1:%.4g", scale);
    return text;
}

class Drawing {
public:
    Drawing(const Project& project, const LoftedHull& hull, Units units)
        : m_project(project), m_hull(hull), m_boat(hull.drawn), m_units(units), m_pen(m_sheet.items) {}

    Sheet make() {
        choose();
        measure();
        layOut();
        heading();
        profile();
        halfBreadths();
        diagonals();
        stationNamesBelow();
        bodyPlan();
        legend();
        foot();
        return std::move(m_sheet);
    }

private:
    [[nodiscard]] std::string length(double mm) const { return formatLength(mm, m_units); }

    void choose() {
        m_choices = usualLines(m_boat, m_units);
        const std::vector<std::string> names = core::stationNames(m_project, m_hull);
        for (std::size_t i = 0; i < names.size(); ++i)
            if (!sectionAt(m_boat, m_hull.stationX[i], 8).empty()) {
                m_choices.stations.push_back(m_hull.stationX[i]);
                m_names.push_back(names[i]);
            }
        m_choices.girths.clear();
        m_lines = hullLines(m_boat, m_choices);
        for (const Vector2d& uv : m_boat.outline.region.boundary()) {
            const Vector3d p = m_boat.surface.point(uv.x(), uv.y());
            for (const auto trim : {geometry::Trim::BowPlane, geometry::Trim::SternPlane})
                if (std::abs(m_boat.trims.value(trim, uv.y(), p)) < 0.05)
                    (trim == geometry::Trim::BowPlane ? m_bowTransom : m_sternTransom).push_back(p);
        }
    }

    void measure() {
        m_low = 0;
        for (const HullLine& line : m_lines)
            for (const HullLinePoint& q : line.points) {
                m_bow = std::min(m_bow, q.p.x());
                m_stern = std::max(m_stern, q.p.x());
                m_low = std::min(m_low, q.p.z());
                m_high = std::max(m_high, q.p.z());
                m_broad = std::max(m_broad, q.p.y());
                if (line.family == LineFamily::Diagonal)
                    m_far = std::max(m_far, m_choices.diagonals[line.index].outward(q.p));
            }
    }

    /// Paper, scales and where the views stand.
    void layOut() {
        const bool inches = m_units == Units::Inches;
        m_sheet.width = inches ? 22 * mmPerInch : 594.0;
        m_sheet.height = inches ? 17 * mmPerInch : 420.0;
        m_sheet.title = m_project.name + ", lines";
        const std::vector<double> scales = inches ? std::vector(inchScales.begin(), inchScales.end())
                                                  : std::vector(metricScales.begin(), metricScales.end());
        const double room = m_sheet.width - 2 * pageMargin - 2 * lane;
        const double deep = m_high - m_low;
        const double rows = 2 * labelRow + 2 * gap;
        for (const double s : scales) {
            m_scale = s;
            if ((m_stern - m_bow) / s <= room && (deep + m_broad + m_far) / s + rows <= 0.6 * m_sheet.height)
                break;
        }
        const double k = 1 / m_scale;
        const double left = pageMargin + lane + 0.5 * (room - (m_stern - m_bow) * k);
        double y = pageMargin + headHeight + deep * k;
        m_profile = {{left - m_bow * k, y + m_low * k}, k};
        y += labelRow + gap + m_broad * k;
        m_plan = {{left - m_bow * k, y}, k};
        m_diagonal = {{left - m_bow * k, y}, k, -1.0};
        y += m_far * k + labelRow + gap;
        const double bottom = m_sheet.height - pageMargin - footHeight;
        for (const double s : scales) {
            m_bodyScale = s;
            if (deep / s <= bottom - y - 2 * labelRow && 2 * m_broad / s <= 0.56 * m_sheet.width)
                break;
        }
        const double b = 1 / m_bodyScale;
        m_body = {{pageMargin + lane + m_broad * b, bottom - labelRow + m_low * b}, b};
        m_legend = {m_body.at(m_broad, 0).x() + lane, y, m_sheet.width - pageMargin, bottom};
    }

    void heading() {
        const double right = m_sheet.width - pageMargin;
        const double type = sizeForCapitals(7.0);
        const std::string name = shortened(m_project.name, 0.5 * right, type, Weight::Bold);
        m_sheet.items.emplace_back(
            makeText({pageMargin, pageMargin + 7.0}, name, {.size = type, .weight = Weight::Bold}));
        const std::string text = "Lines, " + scaleText(m_scale) + ", body plan " + scaleText(m_bodyScale);
        m_sheet.items.emplace_back(
            makeText({right, pageMargin + 7.0}, text, {.size = 5.0, .anchor = Anchor::Right}));
    }

    /// A line of the hull on a view by two functions of its points.
    template <class A, class B>
    PaperLine onPaper(const LinesView& view, const HullLine& line, A a, B b) const {
        PaperLine points;
        for (const HullLinePoint& q : line.points)
            points.push_back(view.at(a(q.p), b(q.p)));
        return points;
    }
    PaperLine fromSide(const HullLine& line) const {
        return onPaper(
            m_profile,
            line,
            [](const Vector3d& p) { return p.x(); },
            [](const Vector3d& p) { return p.z(); });
    }
    PaperLine fromAbove(const HullLine& line) const {
        return onPaper(
            m_plan, line, [](const Vector3d& p) { return p.x(); }, [](const Vector3d& p) { return p.y(); });
    }
    PaperLine fromEnd(const HullLine& line, double side) const {
        return onPaper(
            m_body,
            line,
            [side](const Vector3d& p) { return side * p.y(); },
            [](const Vector3d& p) { return p.z(); });
    }

    /// Straight lines of reference: one across the view at every level, named in the lane at its left.
    void across(const LinesView& view, const std::vector<double>& levels, Colour colour) {
        for (const double level : levels) {
            m_pen.line({view.at(m_bow, level), view.at(m_stern, level)}, LineKind::Thin, colour);
            m_pen.label(view.at(m_bow, level) + Vector2d(-2.0, 0.35 * small),
                        length(level),
                        {.size = small, .anchor = Anchor::Right, .colour = colour});
        }
    }
    void upright(const LinesView& view, double from, double to) {
        for (const double x : m_choices.stations)
            m_pen.line({view.at(x, from), view.at(x, to)}, LineKind::Thin, colours::pencil);
    }
    /// Names spread over the length, so that neighbours' do not meet.
    void name(const PaperLine& points, const HullLine& line, const std::string& text, Colour colour) {
        // waterlines run together amidships, buttocks at the ends
        const double first = line.family == LineFamily::Waterline ? 0.08 : 0.2;
        const double step = line.family == LineFamily::Waterline ? 0.025 : 0.055;
        m_pen.labelOn(points, text, first + step * static_cast<double>(line.index), colour);
    }

    void profile() {
        upright(m_profile, 0, m_high);
        across(m_profile, m_choices.waterlines, colours::lineBlue);
        m_pen.line({m_profile.at(m_bow, 0), m_profile.at(m_stern, 0)}, LineKind::Centre);
        m_pen.label(m_profile.at(m_bow, 0) + Vector2d(-2.0, 0.35 * small),
                    "base line",
                    {.size = small, .anchor = Anchor::Right});
        for (const HullLine& line : m_lines)
            if (line.family == LineFamily::Buttock) {
                m_pen.line(fromSide(line), LineKind::Thin, colours::cedar);
                name(fromSide(line), line, length(m_choices.buttocks[line.index]), colours::cedar);
            } else if (line.family == LineFamily::SheerProfile || line.family == LineFamily::Keel)
                m_pen.line(fromSide(line), LineKind::Visible);
        for (const auto* transom : {&m_bowTransom, &m_sternTransom}) {
            PaperLine edge;
            for (const Vector3d& p : *transom)
                edge.push_back(m_profile.at(p.x(), p.z()));
            m_pen.line(edge, LineKind::Visible);
        }
    }

    void halfBreadths() {
        upright(m_plan, 0, m_broad);
        across(m_plan, m_choices.buttocks, colours::cedar);
        m_pen.line({m_plan.at(m_bow, 0), m_plan.at(m_stern, 0)}, LineKind::Centre);
        m_pen.label(m_plan.at(m_bow, 0) + Vector2d(-2.0, 0.35 * small),
                    "centreline",
                    {.size = small, .anchor = Anchor::Right});
        for (const HullLine& line : m_lines)
            if (line.family == LineFamily::Waterline) {
                m_pen.line(fromAbove(line), LineKind::Thin, colours::lineBlue);
                name(fromAbove(line), line, length(m_choices.waterlines[line.index]), colours::lineBlue);
            } else if (line.family == LineFamily::SheerPlan)
                m_pen.line(fromAbove(line), LineKind::Visible);
        for (const auto* transom : {&m_bowTransom, &m_sternTransom}) {
            PaperLine edge;
            for (const Vector3d& p : *transom)
                edge.push_back(m_plan.at(p.x(), p.y()));
            m_pen.line(edge, LineKind::Visible);
        }
    }

    static std::string letter(std::size_t index) { return std::string(1, static_cast<char>('A' + index)); }

    void diagonals() {
        upright(m_diagonal, 0, m_far);
        for (const HullLine& line : m_lines)
            if (line.family == LineFamily::Diagonal) {
                const DiagonalPlane& d = m_choices.diagonals[line.index];
                const PaperLine points = onPaper(
                    m_diagonal,
                    line,
                    [](const Vector3d& p) { return p.x(); },
                    [&](const Vector3d& p) { return d.outward(p); });
                m_pen.line(points, LineKind::Thin, colours::taper);
                name(points, line, "diagonal " + letter(line.index), colours::taper);
            }
    }

    void stationNamesBelow() {
        for (const LinesView* view : {&m_profile, &m_diagonal}) {
            const double edge = view == &m_profile ? view->at(0, m_low).y() : view->at(0, m_far).y();
            for (std::size_t i = 0; i < m_names.size(); ++i)
                m_pen.label({view->at(m_choices.stations[i], 0).x(), edge + 4.0},
                            m_names[i],
                            {.size = small, .anchor = Anchor::Middle});
        }
    }

    void bodyPlan() {
        const auto both = [&](double a, double b) { return std::array{m_body.at(-a, b), m_body.at(a, b)}; };
        for (const double z : m_choices.waterlines) {
            const auto [left, right] = both(m_broad, z);
            m_pen.line({left, right}, LineKind::Thin, colours::lineBlue);
            m_pen.label(left + Vector2d(-2.0, 0.35 * small),
                        length(z),
                        {.size = small, .anchor = Anchor::Right, .colour = colours::lineBlue});
        }
        for (const double y : m_choices.buttocks)
            for (const double side : {-1.0, 1.0}) {
                m_pen.line(
                    {m_body.at(side * y, 0), m_body.at(side * y, m_high)}, LineKind::Thin, colours::cedar);
                m_pen.label(m_body.at(side * y, 0) + Vector2d(0, 4.0),
                            length(y),
                            {.size = small, .anchor = Anchor::Middle, .colour = colours::cedar});
            }
        m_pen.line({both(m_broad, 0)[0], both(m_broad, 0)[1]}, LineKind::Centre);
        m_pen.line({m_body.at(0, 0), m_body.at(0, m_high)}, LineKind::Centre);
        for (std::size_t i = 0; i < m_choices.diagonals.size(); ++i) {
            const DiagonalPlane& d = m_choices.diagonals[i];
            double reach = 0;
            for (const HullLine& line : m_lines)
                if (line.family == LineFamily::Diagonal && line.index == i)
                    for (const HullLinePoint& q : line.points)
                        reach = std::max(reach, q.p.y());
            reach += 4.0 * m_bodyScale;
            for (const double side : {-1.0, 1.0}) {
                const PaperLine line{m_body.at(0, d.height),
                                     m_body.at(side * reach, d.height - reach * std::tan(d.angle))};
                m_pen.line(line, LineKind::Hidden, colours::taper);
                m_pen.label(line.back() + Vector2d(side * 2.0, 0.0),
                            letter(i),
                            {.size = small,
                             .anchor = side < 0 ? Anchor::Right : Anchor::Left,
                             .colour = colours::taper});
            }
        }
        for (const HullLine& line : m_lines)
            if (line.family == LineFamily::SheerProfile)
                for (const double side : {-1.0, 1.0}) {
                    HullLine half{line.family, 0, {}};
                    for (const HullLinePoint& q : line.points)
                        if ((q.p.x() < m_boat.halfGirthMaxX) == (side > 0))
                            half.points.push_back(q);
                    m_pen.line(fromEnd(half, side), LineKind::Thin);
                }
            else if (line.family == LineFamily::Station) {
                const double side = m_choices.stations[line.index] <= m_boat.halfGirthMaxX ? 1.0 : -1.0;
                const PaperLine points = fromEnd(line, side);
                m_pen.line(points, LineKind::Visible);
                for (const double above : {1.2, 4.0, 6.8, 9.6, 12.4})
                    if (m_pen.label(points.front() + Vector2d(side * 1.2, -above),
                                    m_names[line.index],
                                    {.size = small, .anchor = side < 0 ? Anchor::Right : Anchor::Left}))
                        break;
            }
        PaperLine edge;
        for (const Vector3d& p : m_sternTransom)
            edge.push_back(m_body.at(-p.y(), p.z()));
        m_pen.line(edge, LineKind::Hidden);
        edge.clear();
        for (const Vector3d& p : m_bowTransom)
            edge.push_back(m_body.at(p.y(), p.z()));
        m_pen.line(edge, LineKind::Hidden);
    }

    void legend() {
        std::vector<std::string> texts{
            "Length " + length(m_boat.length) + ", beam " + length(m_boat.beam) +
                ", depth at the widest section " + length(depthAmidships()) + ".",
            m_project.hull.drawnTo == DrawnTo::Outside
                ? "Drawn to the outside of the planking."
                : "Drawn to the inside of the planking, which is the moulds.",
            "Profile above, half-breadth plan below it, diagonals on the other side of its centreline. In "
            "the "
            "body plan the forward sections stand to the right, the after ones to the left.",
            "Blue: waterlines, by their height above the base line. Brown: buttocks, by their distance from "
            "the "
            "centreline. Purple: diagonals, as far out as measured along their plane."};
        for (std::size_t i = 0; i < m_choices.diagonals.size(); ++i) {
            const DiagonalPlane& d = m_choices.diagonals[i];
            char angle[16];
            std::snprintf(angle, sizeof angle, "%.0f", d.angle * 180 / std::numbers::pi);
            texts.push_back("Diagonal " + letter(i) + " leaves the centreline " + length(d.height) +
                            " above the base line, " + angle + " degrees below the horizontal.");
        }
        texts.push_back(
            "Read off the lofted hull, which keeps to the table within its rounding; set moulds out "
            "from their patterns, not by scaling this sheet.");
        if (!m_sternTransom.empty() || !m_bowTransom.empty())
            texts.insert(texts.begin() + 3,
                         "Dashed in the body plan: the edge of the transom, seen square to the stations.");
        double y = m_legend.top + note;
        for (const std::string& text : texts) {
            for (const std::string& line :
                 wrap(text, std::min(150.0, m_legend.right - m_legend.left), note)) {
                m_sheet.items.emplace_back(makeText({m_legend.left, y}, line, {.size = note}));
                y += 1.4 * note;
            }
            y += 0.5 * note;
        }
    }

    [[nodiscard]] double depthAmidships() const {
        const auto section = sectionAt(m_boat, m_boat.halfGirthMaxX, 60);
        return section.empty() ? 0.0 : section.front().z() - section.back().z();
    }

    void foot() {
        for (Item& item : scaleBar({pageMargin + 0.2, m_sheet.height - pageMargin - 0.3}, m_units, small))
            m_sheet.items.push_back(std::move(item));
    }

    const Project& m_project;
    const LoftedHull& m_hull;
    const TrimmedSurface& m_boat;
    Units m_units;
    Sheet m_sheet;
    LinesPen m_pen;
    LineChoices m_choices;
    std::vector<std::string> m_names; ///< of the choices' stations
    std::vector<HullLine> m_lines;
    std::vector<Vector3d> m_bowTransom, m_sternTransom;
    double m_bow = 1e9, m_stern = -1e9, m_low = 0, m_high = -1e9, m_broad = 0, m_far = 0; ///< mm of the boat
    double m_scale = 10, m_bodyScale = 5;                                                 ///< 1:…
    LinesView m_profile, m_plan, m_diagonal, m_body;
    Box m_legend;
};

} // namespace

Sheet linesSheet(const Project& project, const LoftedHull& hull, Units units) {
    return Drawing(project, hull, units).make();
}

} // namespace sheerlay::core

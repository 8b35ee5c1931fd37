#include "core/lines_drawing/lines_sheet.hpp"

#include "core/lines_drawing/lines_parts.hpp"
#include "core/lines_drawing/lines_view.hpp"
#include "core/sheets/page.hpp"
#include "core/sheets/page_frame.hpp"
#include "core/units/length.hpp"
#include "core/words/say.hpp"

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
    return withDecimalMark(text);
}

class Drawing {
public:
    Drawing(const Project& project, const LoftedHull& hull, Units units)
        : m_project(project), m_boat(hull.drawn), m_units(units), m_lines(drawnLines(project, hull, units)) {}

    Sheet make() {
        layOut();
        heading();
        LinesPen pen(m_sheet.items);
        LinesParts parts(m_lines, m_units, pen);
        parts.profile(m_profile);
        parts.halfBreadths(m_plan);
        parts.diagonals(m_diagonal);
        parts.stationNames(m_profile, m_profile.at(0, m_lines.low).y() + 4.0);
        parts.stationNames(m_diagonal, m_diagonal.at(0, m_lines.far).y() + 4.0);
        parts.bodyPlan(m_body);
        legend();
        foot();
        return std::move(m_sheet);
    }

private:
    [[nodiscard]] std::string length(double mm) const { return formatLength(mm, m_units); }

    /// Paper, scales and where the views stand.
    void layOut() {
        const bool inches = m_units == Units::Inches;
        m_sheet.width = inches ? 22 * mmPerInch : 594.0;
        m_sheet.height = inches ? 17 * mmPerInch : 420.0;
        m_sheet.title = say("{}, lines", m_project.name);
        const std::vector<double> scales = inches ? std::vector(inchScales.begin(), inchScales.end())
                                                  : std::vector(metricScales.begin(), metricScales.end());
        const double room = m_sheet.width - 2 * pageMargin - 2 * lane;
        const double deep = m_lines.high - m_lines.low;
        const double rows = 2 * labelRow + 2 * gap;
        for (const double s : scales) {
            m_scale = s;
            if ((m_lines.stern - m_lines.bow) / s <= room &&
                (deep + m_lines.broad + m_lines.far) / s + rows <= 0.6 * m_sheet.height)
                break;
        }
        const double k = 1 / m_scale;
        const double left = pageMargin + lane + 0.5 * (room - (m_lines.stern - m_lines.bow) * k);
        double y = pageMargin + headHeight + deep * k;
        m_profile = {{left - m_lines.bow * k, y + m_lines.low * k}, k};
        y += labelRow + gap + m_lines.broad * k;
        m_plan = {{left - m_lines.bow * k, y}, k};
        m_diagonal = {{left - m_lines.bow * k, y}, k, -1.0};
        y += m_lines.far * k + labelRow + gap;
        const double bottom = m_sheet.height - pageMargin - footHeight;
        for (const double s : scales) {
            m_bodyScale = s;
            if (deep / s <= bottom - y - 2 * labelRow && 2 * m_lines.broad / s <= 0.56 * m_sheet.width)
                break;
        }
        const double b = 1 / m_bodyScale;
        m_body = {{pageMargin + lane + m_lines.broad * b, bottom - labelRow + m_lines.low * b}, b};
        m_legend = {m_body.at(m_lines.broad, 0).x() + lane, y, m_sheet.width - pageMargin, bottom};
    }

    void heading() {
        const double right = m_sheet.width - pageMargin;
        const double type = sizeForCapitals(7.0);
        const std::string name = shortened(m_project.name, 0.5 * right, type, Weight::Bold);
        m_sheet.items.emplace_back(
            makeText({pageMargin, pageMargin + 7.0}, name, {.size = type, .weight = Weight::Bold}));
        const std::string text = say("Lines, {}, body plan {}", scaleText(m_scale), scaleText(m_bodyScale));
        m_sheet.items.emplace_back(
            makeText({right, pageMargin + 7.0}, text, {.size = 5.0, .anchor = Anchor::Right}));
    }

    void legend() {
        std::vector<std::string> texts{
            say("Length {}, beam {}, depth at the widest section {}.",
                length(m_boat.length),
                length(m_boat.beam),
                length(depthAmidships())),
            m_project.hull.drawnTo == DrawnTo::Outside
                ? say("Drawn to the outside of the planking.")
                : say("Drawn to the inside of the planking, which is the moulds."),
            say("Profile above, half-breadth plan below it, diagonals on the other side of its centreline. "
                "In "
                "the body plan the forward sections stand to the right, the after ones to the left."),
            say("Blue: waterlines, by their height above the base line. Brown: buttocks, by their distance "
                "from "
                "the centreline. Purple: diagonals, as far out as measured along their plane.")};
        for (std::size_t i = 0; i < m_lines.choices.diagonals.size(); ++i) {
            const DiagonalPlane& d = m_lines.choices.diagonals[i];
            char angle[16];
            std::snprintf(angle, sizeof angle, "%.0f", d.angle * 180 / std::numbers::pi);
            texts.push_back(
                say("Diagonal {} leaves the centreline {} above the base line, {} degrees below the "
                    "horizontal.",
                    LinesParts::letter(i),
                    length(d.height),
                    angle));
        }
        texts.push_back(
            say("Read off the lofted hull, which keeps to the table within its rounding; set moulds out from "
                "their patterns, not by scaling this sheet."));
        if (!m_lines.sternTransom.empty() || !m_lines.bowTransom.empty())
            texts.insert(
                texts.begin() + 3,
                say("Dashed in the body plan: the edge of the transom, seen square to the stations."));
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
    const TrimmedSurface& m_boat;
    Units m_units;
    DrawnLines m_lines;
    Sheet m_sheet;
    double m_scale = 10, m_bodyScale = 5; ///< 1:…
    LinesView m_profile, m_plan, m_diagonal, m_body;
    Box m_legend;
};

} // namespace

Sheet linesSheet(const Project& project, const LoftedHull& hull, Units units) {
    const Speaking speaking(project.language);
    return Drawing(project, hull, units).make();
}

} // namespace sheerlay::core

#include "core/lines_drawing/curvature_sheet.hpp"

#include "core/hull/station_names.hpp"
#include "core/lines/hull_lines.hpp"
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

constexpr double headHeight = 20.0, footHeight = 8.0, lane = 18.0; // mm on paper
constexpr double panelGap = 12.0, small = 2.6, note = 3.4;         // mm
constexpr double widest = 1.0;     // 1/m: buttocks run out over the bilge with ten times that
constexpr double middlePart = 0.8; // of the length that decides a panel's range

std::string decimals(double value, int count) {
    char text[24];
    std::snprintf(text, sizeof text, "%.*f", count, value);
    return withDecimalMark(text);
}

struct Panel {
    std::string title;
    std::vector<LineFamily> families;
    Colour colour;
};

class Plot {
public:
    Plot(const Project& project, const LoftedHull& hull, Units units)
        : m_project(project), m_hull(hull), m_units(units), m_choices(usualLines(hull.drawn, units)),
          m_lines(hullLines(hull.drawn, m_choices)), m_pen(m_sheet.items) {}

    Sheet make() {
        const bool inches = m_units == Units::Inches;
        m_sheet.width = inches ? 22 * mmPerInch : 594.0;
        m_sheet.height = inches ? 17 * mmPerInch : 420.0;
        m_sheet.title = say("{}, how her lines bend", m_project.name);
        m_bow = m_hull.drawn.sheer.front().x();
        m_stern = m_hull.drawn.sheer.back().x();
        m_scale = (m_sheet.width - 2 * pageMargin - 2 * lane) / (m_stern - m_bow);
        heading();
        const std::array<Panel, 5> panels{
            {{say("sheer and keel"),
              {LineFamily::SheerPlan, LineFamily::SheerProfile, LineFamily::Keel},
              colours::ink},
             {say("waterlines"), {LineFamily::Waterline}, colours::lineBlue},
             {say("buttocks"), {LineFamily::Buttock}, colours::cedar},
             {say("diagonals"), {LineFamily::Diagonal}, colours::taper},
             {say("equal girth below the sheer"), {LineFamily::EqualGirth}, colours::ink}}};
        const double top = pageMargin + headHeight;
        const double bottom = m_sheet.height - pageMargin - footHeight - 5.0;
        const double height = (bottom - top) / static_cast<double>(panels.size()) - panelGap;
        for (std::size_t i = 0; i < panels.size(); ++i)
            draw(panels[i], top + static_cast<double>(i) * (height + panelGap) + panelGap, height);
        for (Item& item : scaleBar({pageMargin + 0.2, m_sheet.height - pageMargin - 0.3}, m_units, small))
            m_sheet.items.push_back(std::move(item));
        return std::move(m_sheet);
    }

private:
    void heading() {
        const double type = sizeForCapitals(7.0);
        const double right = m_sheet.width - pageMargin;
        const std::string name = shortened(m_project.name, 0.5 * right, type, Weight::Bold);
        m_sheet.items.emplace_back(
            makeText({pageMargin, pageMargin + 7.0}, name, {.size = type, .weight = Weight::Bold}));
        m_sheet.items.emplace_back(makeText(
            {right, pageMargin + 7.0}, say("How her lines bend"), {.size = 5.0, .anchor = Anchor::Right}));
        const std::string text =
            say("Curvature over the length, in 1/m: above the zero line a line is round, below it "
                "hollow. Fair lines run smoothly; the table's rounding alone moves them by "
                "about {}.",
                withDecimalMark("0.02"));
        m_sheet.items.emplace_back(makeText(
            {pageMargin, pageMargin + 14.5}, text, {.size = sizeToFit(text, right - pageMargin, note)}));
    }

    [[nodiscard]] std::string nameOf(const HullLine& line) const {
        switch (line.family) {
        case LineFamily::SheerPlan:
            return say("sheer from above");
        case LineFamily::SheerProfile:
            return say("sheer from the side");
        case LineFamily::Keel:
            return say("keel");
        case LineFamily::Waterline:
            return formatLength(m_choices.waterlines[line.index], m_units);
        case LineFamily::Buttock:
            return formatLength(m_choices.buttocks[line.index], m_units);
        case LineFamily::Diagonal:
            return formatLength(m_choices.diagonals[line.index].height, m_units) + ", " +
                   decimals(m_choices.diagonals[line.index].angle * 180 / std::numbers::pi, 0) + "\u00B0";
        case LineFamily::EqualGirth:
            return formatLength(m_choices.girths[line.index], m_units);
        case LineFamily::Station:
            break;
        }
        return {};
    }

    void draw(const Panel& panel, double top, double height) {
        std::vector<const HullLine*> lines;
        double least = 0.0, most = 0.05; // 1/m
        const double margin = 0.5 * (1 - middlePart) * (m_stern - m_bow);
        for (const HullLine& line : m_lines) {
            if (std::find(panel.families.begin(), panel.families.end(), line.family) == panel.families.end())
                continue;
            lines.push_back(&line);
            // where a line runs out over the sheer or the keel it says nothing of the run of the hull
            for (std::size_t i = line.points.size() / 10; i < line.points.size() * 9 / 10; ++i) {
                const HullLinePoint& q = line.points[i];
                if (q.p.x() < m_bow + margin || q.p.x() > m_stern - margin)
                    continue;
                least = std::min(least, 1000 * q.curvature);
                most = std::max(most, 1000 * q.curvature);
            }
        }
        least = std::max(least, -widest);
        most = std::min(most, widest);
        const double room = 0.08 * (most - least);
        least -= room;
        most += room;
        const double k = height / (most - least);
        const auto at = [&](double x, double bend) {
            return Eigen::Vector2d(pageMargin + lane + (x - m_bow) * m_scale, top + (most - bend) * k);
        };
        axes(panel, top, height, least, most, at);
        for (const HullLine* line : lines) {
            PaperLine run, longest;
            for (const HullLinePoint& q : line->points) {
                const double bend = 1000 * q.curvature;
                if (bend >= least && bend <= most) {
                    run.push_back(at(q.p.x(), bend));
                    continue;
                }
                flush(run, longest, panel.colour);
            }
            flush(run, longest, panel.colour);
            m_pen.labelOn(longest,
                          nameOf(*line),
                          0.15 + 0.09 * static_cast<double>(line - lines.front()),
                          panel.colour);
        }
    }

    void flush(PaperLine& run, PaperLine& longest, Colour colour) {
        m_pen.line(run, LineKind::Thin, colour);
        if (run.size() > longest.size())
            longest = run;
        run.clear();
    }

    template <class At>
    void axes(const Panel& panel, double top, double height, double least, double most, const At& at) {
        m_sheet.items.emplace_back(
            makeText({pageMargin + lane, top - 1.5},
                     panel.title,
                     {.size = note, .weight = Weight::SemiBold, .colour = panel.colour}));
        const std::vector<std::string> names = stationNames(m_project, m_hull);
        for (std::size_t i = 0; i < names.size(); ++i) {
            const double x = m_hull.stationX[i];
            if (x < m_bow || x > m_stern)
                continue;
            m_pen.line({at(x, most), at(x, least)}, LineKind::Thin, colours::pencil);
            m_pen.label(Eigen::Vector2d(at(x, 0).x(), top + height + 3.2),
                        names[i],
                        {.size = small, .anchor = Anchor::Middle});
        }
        double step = 0.05;
        for (const double wider : {0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0})
            if ((most - least) / step > 6)
                step = wider;
        for (double n = std::ceil(least / step); n * step <= most; ++n) {
            const bool zero = n == 0.0;
            m_pen.line({at(m_bow, n * step), at(m_stern, n * step)},
                       zero ? LineKind::Centre : LineKind::Thin,
                       zero ? colours::ink : colours::bench);
            m_pen.label(at(m_bow, n * step) + Eigen::Vector2d(-2.0, 0.35 * small),
                        decimals(zero ? 0.0 : n * step, step < 0.1 ? 2 : 1),
                        {.size = small, .anchor = Anchor::Right});
        }
    }

    const Project& m_project;
    const LoftedHull& m_hull;
    Units m_units;
    LineChoices m_choices;
    std::vector<HullLine> m_lines;
    Sheet m_sheet;
    LinesPen m_pen;
    double m_bow = 0, m_stern = 1, m_scale = 1;
};

} // namespace

Sheet curvatureSheet(const Project& project, const LoftedHull& hull, Units units) {
    const Speaking speaking(project.language);
    return Plot(project, hull, units).make();
}

} // namespace sheerlay::core

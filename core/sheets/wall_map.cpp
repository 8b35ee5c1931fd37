#include "core/sheets/wall_map.hpp"

#include "core/hull/station_names.hpp"
#include "core/sheets/compose.hpp"
#include "core/sheets/flat_strip.hpp"
#include "core/sheets/page.hpp"
#include "core/sheets/page_frame.hpp"
#include "core/sheets/pieces.hpp"
#include "core/sheets/scarf_notes.hpp"
#include "core/sheets/unrolled.hpp"
#include "core/sheets/words.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <numbers>

namespace sheerlay::core {

namespace {

constexpr double headHeight = 34.0, footHeight = 30.0, laneWidth = 34.0, stationLane = 12.0; // mm
constexpr double readableBand = 5.5, broadestBand = 14.0, largestName = 7.0;                 // mm on paper

struct Bounds {
    double left = 1e9, right = -1e9, top = 1e9, bottom = -1e9;
    void take(const std::vector<Eigen::Vector2d>& points) {
        for (const Eigen::Vector2d& p : points) {
            left = std::min(left, p.x());
            right = std::max(right, p.x());
            top = std::min(top, p.y());
            bottom = std::max(bottom, p.y());
        }
    }
};

std::string oneDecimal(double value) {
    char buffer[32];
    std::snprintf(buffer, sizeof buffer, "%.1f", value);
    return withDecimalMark(buffer);
}

class Map {
public:
    Map(const Project& project, const LoftedHull& hull, const Plan& plan, Units units, const StockPlan* stock)
        : m_project(project), m_hull(hull), m_plan(plan), m_stock(stock), m_units(units),
          m_starboard(unroll(plan, hull, Side::Starboard)), m_port(unroll(plan, hull, Side::Port)) {}

    Sheet make() {
        measure();
        choosePaper();
        heading();
        for (const UnrolledStrip& laid : m_starboard)
            outline(laid, false);
        for (const UnrolledStrip& laid : m_port)
            outline(laid, true);
        scarfs();
        stations();
        centreline();
        for (const UnrolledStrip& laid : m_starboard)
            names(laid, false);
        for (const UnrolledStrip& laid : m_port)
            names(laid, true);
        landmarks();
        foot();
        return std::move(m_sheet);
    }

private:
    void measure() {
        for (const UnrolledStrip& laid : m_starboard) {
            m_bounds.take(laid.outline);
            m_width = std::max(m_width, widest(*laid.strip));
        }
        // the keel lies where the sides meet: half way over a centre piece, else at the last edge
        m_axis = m_bounds.bottom;
        for (const UnrolledStrip& laid : m_starboard)
            if (laid.strip->side == Side::Centre)
                m_axis = laid.at(laid.strip->length / 2, 0.0).y();
        Bounds port;
        for (const UnrolledStrip& laid : m_port)
            port.take(laid.outline);
        m_portAxis = m_port.empty() ? m_axis : std::max(port.bottom, m_axis);
        if (!m_port.empty()) {
            m_bounds.left = std::min(m_bounds.left, port.left);
            m_bounds.right = std::max(m_bounds.right, port.right);
            m_portTop = port.top;
        }
        if (m_starboard.empty())
            m_bounds = {0.0, 1.0, 0.0, 1.0};
    }

    void choosePaper() {
        struct Paper {
            double width, height;
        };
        const double girth = (m_axis - m_bounds.top) + (m_port.empty() ? 0.0 : m_portAxis - m_portTop);
        for (const Paper& paper : {Paper{594.0, 420.0}, Paper{841.0, 594.0}, Paper{1189.0, 841.0}}) {
            m_sheet.width = paper.width;
            m_sheet.height = paper.height;
            const double room = paper.height - 2 * pageMargin - headHeight - footHeight - 2 * stationLane;
            m_across = std::min(room / std::max(1.0, girth), broadestBand / std::max(1.0, m_width));
            m_along = (paper.width - 2 * pageMargin - 2 * laneWidth) /
                      std::max(1.0, m_bounds.right - m_bounds.left);
            if (m_across * m_width >= readableBand)
                break;
        }
        m_sheet.title = say("{}, wall map", m_project.name);
        m_top = pageMargin + headHeight + stationLane;
        m_axisAt = m_top + (m_port.empty() ? 0.0 : (m_portAxis - m_portTop) * m_across);
    }

    [[nodiscard]] Eigen::Vector2d onPaper(const Eigen::Vector2d& p, bool port) const {
        const double x = pageMargin + laneWidth + (p.x() - m_bounds.left) * m_along;
        return {x,
                port ? m_axisAt - (m_portAxis - p.y()) * m_across : m_axisAt + (m_axis - p.y()) * m_across};
    }

    void put(Item item) { m_sheet.items.push_back(std::move(item)); }

    void heading() {
        const double left = pageMargin, right = m_sheet.width - pageMargin;
        const double type = sizeForCapitals(typeSize::length);
        const std::string name = shortened(m_project.name, right - left, type, Weight::Bold);
        put(makeText({left, pageMargin + typeSize::length}, name, {.size = type, .weight = Weight::Bold}));
        const std::string how = say(
            "The planking unrolled, seen from outside as the boat lies on the moulds: port above, "
            "starboard below, bow to the left. Lengths along the strips 1:{}, widths drawn {} times wider.",
            oneDecimal(1.0 / m_along),
            oneDecimal(m_across / m_along));
        put(makeText({left, pageMargin + typeSize::length + 9.0},
                     how,
                     {.size = sizeToFit(how, right - left, typeSize::table)}));
    }

    void outline(const UnrolledStrip& laid, bool port) {
        Path path;
        path.closed = true;
        path.line = LineKind::Thin;
        path.fill = colourOf(difficultyOf(*laid.strip));
        for (const Eigen::Vector2d& p : laid.outline)
            path.points.push_back(onPaper(p, port));
        if (path.points.size() > 2)
            put(path);
    }

    // Strokes as slanted as a scarf and as long as the paper's scale makes it, from edge to edge.
    void scarfs() {
        for (const bool port : {false, true})
            for (const UnrolledStrip& laid : port ? m_port : m_starboard)
                for (const double s : scarfsOf(m_stock, laid.strip->id)) {
                    const double half = m_stock->scarf / 2;
                    put(makeLine(onPaper(laid.at(s - half, -1.0), port),
                                 onPaper(laid.at(s + half, 1.0), port),
                                 LineKind::Visible));
                }
    }

    void stations() {
        const std::vector<std::string> stationNamed = stationNames(m_project, m_hull);
        const double small = typeSize::small * 1.2;
        for (const bool port : {false, true}) {
            const std::vector<UnrolledStrip>& side = port ? m_port : m_starboard;
            double occupied = -1e9;
            for (std::size_t k = 0; k < m_hull.stationX.size(); ++k) {
                std::vector<Eigen::Vector2d> points;
                for (const UnrolledStrip& laid : side)
                    for (const StationMark& mark : stationMarks(*laid.strip, {m_hull.stationX[k]}))
                        for (const double part : {-1.0, 1.0})
                            points.push_back(onPaper(laid.at(mark.along, part), port));
                if (points.empty())
                    continue;
                std::sort(points.begin(),
                          points.end(),
                          [](const Eigen::Vector2d& a, const Eigen::Vector2d& b) { return a.y() < b.y(); });
                const double lane = port ? m_top - 3.0 : onPaper({0.0, m_bounds.top}, false).y() + 3.0;
                const Eigen::Vector2d outer = port ? points.front() : points.back();
                Path line;
                line.line = LineKind::Thin;
                line.colour = colours::lineBlue;
                line.points = points;
                line.points.insert(port ? line.points.begin() : line.points.end(),
                                   Eigen::Vector2d(outer.x(), lane));
                put(line);
                const double half = textWidth(stationNamed[k], small) / 2;
                if (outer.x() - half < occupied)
                    continue;
                occupied = outer.x() + half + 1.0;
                put(makeText({outer.x(), port ? lane - 1.2 : lane + small},
                             stationNamed[k],
                             {.size = small, .anchor = Anchor::Middle, .colour = colours::lineBlue}));
            }
        }
    }

    void centreline() {
        const double left = pageMargin + laneWidth - 4.0,
                     right = m_sheet.width - pageMargin - laneWidth + 4.0;
        put(makeLine({left, m_axisAt}, {right, m_axisAt}, LineKind::Centre));
        put(makeText({m_sheet.width - pageMargin, m_axisAt + 1.6},
                     toText(End::Stern),
                     {.size = typeSize::note, .anchor = Anchor::Right}));
        put(makeText({pageMargin, m_axisAt + 1.6}, toText(End::Bow), {.size = typeSize::note}));
    }

    /// Where along the strip words find room beside the scarfs' strokes, as near to `wanted` as can be; mm.
    [[nodiscard]] double
    clearOf(const std::vector<double>& joints, double wanted, const std::string& words, double length) const {
        const double half = (textWidth(words, largestName, Weight::SemiBold) / 2 + 2.0) / m_along;
        for (const double step : {0.0, 0.25, -0.25, 0.5, -0.5, 0.75, -0.75, 1.0, -1.0, 1.25, -1.25}) {
            const double s = wanted + 2.0 * step * half;
            const bool free =
                std::ranges::none_of(joints, [&](double joint) { return std::abs(joint - s) < half; });
            if (free && s > half && s < length - half)
                return s;
        }
        return wanted;
    }

    void names(const UnrolledStrip& laid, bool port) {
        const Strip& strip = *laid.strip;
        const Difficulty difficulty = difficultyOf(strip);
        const bool dark = difficulty == Difficulty::Hard || difficulty == Difficulty::Taper;
        const std::string word = strip.kind == StripKind::Shutter ? say("shutter") : say(toText(difficulty));
        const std::string inFull = say("{}  laid {}  {}", strip.id, strip.order, word);
        const std::vector<double> joints = scarfsOf(m_stock, strip.id);
        const auto write = [&](double wanted, const std::string& words) {
            const double s = clearOf(joints, wanted * strip.length, words, strip.length),
                         band = widthAt(strip, s) * m_across;
            double type = std::min(largestName, 0.74 * band);
            type = sizeToFit(words, 0.8 * strip.length * m_along, type, Weight::SemiBold);
            constexpr double leastType = 1.8;
            if (type < leastType)
                return false;
            const Eigen::Vector2d centre = onPaper(laid.at(s, 0.0), port);
            const double half = textWidth(words, type, Weight::SemiBold) / 2 + 0.6;
            // strip colour under the words, so that no station line runs through them
            put(makeBox(
                {centre.x() - half, centre.y() - 0.45 * type, centre.x() + half, centre.y() + 0.45 * type},
                LineKind::None,
                colourOf(difficulty)));
            put(makeText({centre.x(), centre.y() + capHeight * type / 2},
                         words,
                         {.size = type,
                          .weight = Weight::SemiBold,
                          .anchor = Anchor::Middle,
                          .colour = dark ? colours::white : colours::ink}));
            return true;
        };
        if (!write(0.5, inFull) && !write(0.5, strip.id)) {
            m_unnamed.push_back(strip.id);
            return;
        }
        if (textWidth(inFull, largestName, Weight::SemiBold) * 3 < strip.length * m_along) {
            write(0.15, strip.id);
            write(0.85, strip.id);
        }
    }

    [[nodiscard]] const UnrolledStrip* inRow(int row) const {
        for (const UnrolledStrip& laid : m_starboard)
            if (laid.strip->row == row)
                return &laid;
        return nullptr;
    }

    void landmarks() {
        const auto weave = [&](const std::optional<RowRange>& range, bool bow) {
            const UnrolledStrip* first = range ? inRow(range->first) : nullptr;
            const UnrolledStrip* last = range ? inRow(range->last) : nullptr;
            if (first == nullptr || last == nullptr)
                return;
            // starboard lies keel side up, so the last row stands highest
            const double top = onPaper(last->at(last->strip->length / 2, 1.0), false).y();
            const double bottom = onPaper(first->at(first->strip->length / 2, -1.0), false).y();
            const double x = bow ? pageMargin + 9.0 : m_sheet.width - pageMargin - 9.0,
                         tick = bow ? 2.5 : -2.5;
            Path bracket;
            bracket.points = {{x + tick, top}, {x, top}, {x, bottom}, {x + tick, bottom}};
            put(bracket);
            const std::string words = say("woven ends, rows {} to {}, both sides", range->first, range->last);
            const double type = sizeToFit(words, std::max(12.0, bottom - top), typeSize::note);
            put(makeText({bow ? x - 2.0 : x + 2.0 + type * capHeight, (top + bottom) / 2},
                         words,
                         {.size = type, .anchor = Anchor::Middle, .rotation = -std::numbers::pi / 2}));
        };
        const auto closing = [&](std::optional<int> row, bool bow) {
            const UnrolledStrip* laid = row ? inRow(*row) : nullptr;
            if (laid == nullptr)
                return;
            const double y = onPaper(laid->at(laid->strip->length / 2, -1.0), false).y();
            const Eigen::Vector2d end = onPaper(laid->at(bow ? 0.0 : laid->strip->length, -1.0), false);
            const double x = bow ? pageMargin + 13.0 : m_sheet.width - pageMargin - 13.0;
            put(makeLine({x, y}, {end.x(), y}, LineKind::Hidden));
            const Anchor anchor = bow ? Anchor::Left : Anchor::Right;
            put(makeText({x, y - 5.8}, say("closing"), {.size = 4.0, .anchor = anchor}));
            put(makeText({x, y - 1.4}, say("from row {}", *row), {.size = 4.0, .anchor = anchor}));
        };
        weave(m_plan.marks.weaveBow, true);
        weave(m_plan.marks.weaveStern, false);
        closing(m_plan.marks.closingBow, true);
        closing(m_plan.marks.closingStern, false);
    }

    void foot() {
        const double type = typeSize::note, base = m_sheet.height - pageMargin - 13.0, patch = 5.0;
        double x = pageMargin;
        const auto words = [&](const std::string& text) {
            put(makeText({x, base}, text, {.size = type}));
            x += textWidth(text, type) + 6.0;
        };
        words(m_units == Units::Millimetres ? say("Edge bend, over a straight 2 m:")
                                            : say("Edge bend, over a straight 8 ft:"));
        const BendLimits limits = bendLimits(m_project.strips.width);
        const auto upTo = [&](double edgeBend) { return say("up to {}", bareSagText(edgeBend, m_units)); };
        const std::array<std::string, 4> spans{
            upTo(limits.free), upTo(limits.clamp), upTo(limits.hard), say("above|of bends")};
        std::size_t i = 0;
        for (const Difficulty difficulty :
             {Difficulty::Free, Difficulty::Clamp, Difficulty::Hard, Difficulty::Taper}) {
            put(makeBox(
                {x, base - patch + 1.0, x + 2 * patch, base + 1.0}, LineKind::Thin, colourOf(difficulty)));
            x += 2 * patch + 2.0;
            words(say(toText(difficulty)) + ", " + spans[i++]);
        }
        if (!m_unnamed.empty()) {
            std::string text = say("Too small to carry their name here:");
            for (const std::string& id : m_unnamed)
                text += " " + id;
            text = shortened(text, m_sheet.width - 2 * pageMargin, typeSize::small);
            put(makeText({pageMargin, base + 6.0}, text, {.size = typeSize::small}));
        }
        for (Item& item :
             scaleBar({pageMargin + 0.2, m_sheet.height - pageMargin - 0.3}, m_units, typeSize::small))
            put(std::move(item));
        const std::string note =
            (m_stock != nullptr ? say("A slanted stroke across a strip is a scarf.") + " " : std::string()) +
            say("Numbers after the names are the order of laying. Lengths to cut stand on the cut sheets.");
        put(makeText({m_sheet.width - pageMargin, m_sheet.height - pageMargin - 0.3},
                     note,
                     {.size = typeSize::small, .anchor = Anchor::Right}));
    }

    const Project& m_project;
    const LoftedHull& m_hull;
    const Plan& m_plan;
    const StockPlan* m_stock; // may be null
    Units m_units;
    std::vector<UnrolledStrip> m_starboard, m_port;
    Bounds m_bounds;
    double m_width = 0.0, m_axis = 0.0, m_portAxis = 0.0, m_portTop = 0.0;
    double m_along = 1.0, m_across = 1.0, m_top = 0.0, m_axisAt = 0.0;
    std::vector<std::string> m_unnamed;
    Sheet m_sheet;
};

} // namespace

Sheet wallMap(
    const Project& project, const LoftedHull& hull, const Plan& plan, Units units, const StockPlan* stock) {
    const Speaking speaking(project.language);
    return Map(project, hull, plan, units, stock).make();
}

} // namespace sheerlay::core

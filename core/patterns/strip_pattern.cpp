#include "core/patterns/strip_pattern.hpp"

#include "core/hull/station_names.hpp"
#include "core/sheets/flat_strip.hpp"
#include "core/sheets/pieces.hpp"
#include "core/sheets/words.hpp"
#include "core/units/length.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace sheerlay::core {

namespace {

using Eigen::Vector2d;

constexpr double pointedFrom = 60.0;  // mm, how much one edge is longer than the other at a pointed end
constexpr double shortPiece = 1200.0; // mm, up to which a pointed piece is shown whole
constexpr double hair = 1e-6;         // mm
constexpr double past = 60.0;         // mm of full width shown behind a point
constexpr std::size_t perPattern = 4; // strips one above the other: they fit a page's height
constexpr double pitch = 46.0;        // mm from one strip's middle to the next
constexpr double small = 3.0, large = 5.0;

/// A strip or an end of it.
struct Shown {
    const Piece* piece = nullptr;
    double from = 0.0, to = 0.0; ///< mm along the middle from its bow end
    bool fromStern = false;      ///< marks count from the stern end
    std::string part;            ///< "", "bow end"
};

/// Runs of the closed outline between two places along the strip; a single closed one where all of it is.
std::vector<PatternLine> partsOf(const std::vector<Vector2d>& outline, double from, double to) {
    const auto in = [&](const Vector2d& p) { return p.x() >= from && p.x() <= to; };
    if (std::ranges::all_of(outline, in))
        return {{Layer::Cut, outline, true, LineKind::Visible, {}}};
    const auto first = static_cast<std::size_t>(std::distance(
        outline.begin(), std::ranges::find_if(outline, [&](const Vector2d& p) { return !in(p); })));
    const auto cut = [](const Vector2d& a, const Vector2d& b, double x) {
        return Vector2d(a + (b - a) * ((x - a.x()) / (b.x() - a.x())));
    };
    std::vector<PatternLine> parts;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Vector2d& a = outline[(first + i) % outline.size()];
        const Vector2d& b = outline[(first + i + 1) % outline.size()];
        std::vector<Vector2d> points{a};
        std::vector<double> crossed{from, to};
        if (a.x() > b.x())
            std::swap(crossed[0], crossed[1]);
        for (const double x : crossed)
            if ((a.x() - x) * (b.x() - x) < 0.0)
                points.push_back(cut(a, b, x));
        points.push_back(b);
        for (std::size_t k = 1; k < points.size(); ++k) {
            if (!in(0.5 * (points[k - 1] + points[k])))
                continue;
            const bool goesOn = !parts.empty() && (parts.back().points.back() - points[k - 1]).norm() < 1e-9;
            if (!goesOn)
                parts.push_back({Layer::Cut, {points[k - 1]}, false, LineKind::Visible, {}});
            parts.back().points.push_back(points[k]);
        }
    }
    return parts;
}

class StripDrawer {
public:
    StripDrawer(const Project& project, const LoftedHull& hull, Units units)
        : m_hull(hull), m_names(stationNames(project, hull)), m_units(units) {}

    static std::vector<Shown> chosen(const std::vector<Piece>& pieces) {
        std::vector<Shown> all;
        for (const Piece& piece : pieces) {
            const Strip& strip = *piece.strip;
            const FlatStrip flat = layStraight(strip);
            if (flat.straight.size() < 4 || flat.upperCount < 2 || flat.upperCount >= flat.straight.size())
                continue;
            const Vector2d& upperBow = flat.straight.front();
            const Vector2d& upperStern = flat.straight[flat.upperCount - 1];
            const Vector2d& lowerStern = flat.straight[flat.upperCount];
            const Vector2d& lowerBow = flat.straight.back();
            const double bow = std::abs(upperBow.x() - lowerBow.x());
            const double stern = std::abs(upperStern.x() - lowerStern.x());
            const double first = std::min(upperBow.x(), lowerBow.x()) - hair;
            const double last = std::max(upperStern.x(), lowerStern.x()) + hair;
            const bool whole = strip.kind == StripKind::Shutter || strip.kind == StripKind::Stealer ||
                               ((bow > pointedFrom || stern > pointedFrom) &&
                                last - first < std::max(shortPiece, bow + stern + 2 * past));
            if (whole) {
                all.push_back({&piece, first, last, false, ""});
                continue;
            }
            if (bow > pointedFrom)
                all.push_back({&piece, first, first + bow + past, false, say("bow end")});
            if (stern > pointedFrom)
                all.push_back({&piece, last - stern - past, last, true, say("stern end")});
        }
        return all;
    }

    Pattern draw(const std::vector<Shown>& shown, std::size_t number, std::size_t count) {
        m_pattern = {};
        m_pattern.file = "pointed-strips-" + std::string(number < 10 ? "0" : "") + std::to_string(number);
        m_pattern.title = say("Pointed strips {} of {}", number, count);
        const double top = 17.0;
        mark({{0.0, top}, {160.0, top}});
        write({0.0, top - 5.0},
              say("Outside up, keel side up, bow to the left; turn over for port. As marked on a straight "
                  "strip,"),
              small);
        write({0.0, top - 9.0},
              say("before it is sprung. No laps: to the line on the boat. Measure the gap before you cut."),
              small);
        double y = -pitch * 0.55;
        for (const Shown& one : shown) {
            strip(one, y);
            y -= pitch;
        }
        return std::move(m_pattern);
    }

private:
    void mark(std::vector<Vector2d> points, LineKind kind = LineKind::Thin) {
        m_pattern.lines.push_back({Layer::Mark, std::move(points), false, kind, {}});
    }
    /// Words from a place to the right.
    void write(const Vector2d& at, const std::string& words, double size) {
        m_pattern.texts.push_back({{at.x() + textWidth(words, size) / 2, at.y()}, words, size});
    }
    void middleText(const Vector2d& at, const std::string& words, double size) {
        m_pattern.texts.push_back({at, words, size});
    }

    void strip(const Shown& shown, double y) {
        const Strip& strip = *shown.piece->strip;
        const FlatStrip flat = layStraight(strip);
        double half = 0.0;
        for (PatternLine& line : partsOf(flat.straight, shown.from, shown.to)) {
            for (Vector2d& p : line.points) {
                half = std::max(half, std::abs(p.y()));
                p = {p.x() - shown.from, p.y() + y};
            }
            m_pattern.lines.push_back(std::move(line));
        }
        const double first = std::max(0.0, shown.from), last = std::min(strip.length, shown.to);
        mark({{first - shown.from, y}, {last - shown.from, y}}, LineKind::Centre);
        const double step = m_units == Units::Inches ? 6 * mmPerInch : 150.0;
        for (double from = 0.0; from <= strip.length; from += step) {
            const double s = shown.fromStern ? strip.length - from : from;
            if (s < first || s > last)
                continue;
            const double x = s - shown.from, w = widthAt(strip, s) / 2;
            mark({{x, y - w}, {x, y + w + 3.0}});
            const std::string words = formatLength(from, m_units, 16) + ": " + widthText(2 * w, m_units);
            middleText({x, y + w + 4.0}, words, small);
        }
        for (const StationMark& station : stationMarks(strip, m_hull.stationX)) {
            if (station.along < first || station.along > last)
                continue;
            const double x = station.along - shown.from;
            mark({{x, y - half - 3.0}, {x, y + station.width / 2}}, LineKind::Hidden);
            middleText({x, y - half - 6.5}, say("station {}", m_names[station.station]), small);
        }
        const std::string where =
            shown.fromStern ? say("marks from the stern end") : say("marks from the bow end");
        write({0.0, y + half + 10.5},
              shown.piece->name() + (shown.part.empty() ? "" : ", " + shown.part) + ", " + where,
              large);
    }

    const LoftedHull& m_hull;
    std::vector<std::string> m_names;
    Units m_units;
    Pattern m_pattern;
};

} // namespace

std::vector<Pattern>
stripPatterns(const Project& project, const LoftedHull& hull, const Plan& plan, Units units) {
    const Speaking speaking(project.language);
    const std::vector<Piece> pieces = piecesOf(plan);
    const std::vector<Shown> all = StripDrawer::chosen(pieces);
    const std::size_t count = (all.size() + perPattern - 1) / perPattern;
    StripDrawer drawer(project, hull, units);
    std::vector<Pattern> patterns;
    for (std::size_t i = 0; i < count; ++i) {
        const auto from = all.begin() + static_cast<std::ptrdiff_t>(i * perPattern);
        const auto to = all.begin() + static_cast<std::ptrdiff_t>(std::min(all.size(), (i + 1) * perPattern));
        patterns.push_back(drawer.draw({from, to}, i + 1, count));
    }
    return patterns;
}

} // namespace sheerlay::core

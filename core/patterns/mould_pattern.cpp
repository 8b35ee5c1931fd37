#include "core/patterns/mould_pattern.hpp"

#include "core/sheets/compose.hpp"
#include "core/sheets/words.hpp"
#include "core/units/length.hpp"
#include "core/units/number_text.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

namespace sheerlay::core {

namespace {

using Eigen::Vector2d;

constexpr double bevelPitch = 80;  // mm along the edge from one bevel told to the next
constexpr double tickLength = 6;   // mm
constexpr double bevelRoom = 25;   // mm inside the edge that bevels are told in
constexpr double noteWidth = 70;   // mm, for the words on a mould
constexpr double noteHeight = 21;  // mm
constexpr double circleParts = 48; // of a hole; a chord of 10 mm across is 0.01 mm short

/// Heights of the table's waterlines, each once.
std::vector<double> waterlinesOf(const Project& project) {
    std::vector<double> heights;
    for (const Station& station : project.hull.stations)
        for (const TablePoint& p : station.points)
            if (p.kind == PointKind::Waterline)
                heights.push_back(p.height);
    std::sort(heights.begin(), heights.end());
    heights.erase(
        std::unique(heights.begin(), heights.end(), [](double a, double b) { return std::abs(a - b) < 0.1; }),
        heights.end());
    return heights;
}

/// Half-breadth of an edge at a height, the widest where there are several; 0 where it has none.
double breadthAt(const std::vector<EdgePoint>& edge, double z) {
    double widest = 0.0;
    for (std::size_t i = 1; i < edge.size(); ++i) {
        const Vector2d& a = edge[i - 1].at;
        const Vector2d& b = edge[i].at;
        if ((a.y() - z) * (b.y() - z) <= 0.0 && a.y() != b.y())
            widest = std::max(widest, a.x() + (z - a.y()) / (b.y() - a.y()) * (b.x() - a.x()));
    }
    return widest;
}

std::string degreesText(double radians) {
    return numberText(radians * 180.0 / std::numbers::pi, 0) + "\u00B0";
}

class Drawer {
public:
    Drawer(const Project& project, Units units) : m_project(project), m_units(units) {}

    Pattern mould(const Mould& mould, std::size_t number) {
        start("mould-" + std::string(number < 10 ? "0" : "") + std::to_string(number),
              mould.forward ? say("Mould {}, after face", mould.name)
                            : say("Mould {}, forward face", mould.name));
        m_mirrors = m_project.moulds.shape == MouldChoices::Shape::Whole && mould.stemCut == 0.0;
        if (m_mirrors) {
            wholeOutline(mould);
        } else {
            line(Layer::Cut, mould.outline, true, LineKind::Visible);
        }
        line(Layer::Mark, {{0, mould.keel}, {0, mould.foot}}, false, LineKind::Centre);
        level(mould, mould.sheer, say("sheer"));
        for (const double z : waterlinesOf(m_project))
            if (z > mould.keel + 5 && z < mould.sheer - 5)
                level(mould, z, say("waterline {}", formatLength(z, m_units, 16, 0)));
        bevels(mould.edge);
        if (m_project.moulds.holes)
            holes(mould.edge, *m_project.moulds.holes);
        std::vector<std::string> notes{mould.forward
                                           ? say("saw to the line; plane the bevel toward the forward face")
                                           : say("saw to the line; plane the bevel toward the after face")};
        if (mould.stemCut > 0)
            notes.push_back(say("two of it, one a side of the stem form"));
        else if (!m_mirrors)
            notes.push_back(say("half: turn over at the centreline"));
        notes.push_back(say("up: foot, on the strongback"));
        write(noteRoom(mould), notes);
        return std::move(m_pattern);
    }

    Pattern stem(const StemForm& form) {
        start(form.end == End::Bow ? "stem-form-bow" : "stem-form-stern",
              say("Stem form, {}, against mould {}", toText(form.end), form.mould));
        m_mirrors = false;
        line(Layer::Cut, form.outline, true, LineKind::Visible);
        if (form.bevelLine.size() > 1)
            line(Layer::Mark, form.bevelLine, false, LineKind::Hidden);
        stemLevel(form, form.edge.front().at.y(), say("head, at the sheer"));
        for (const double z : waterlinesOf(m_project))
            if (z < form.edge.front().at.y() - 5)
                stemLevel(form, z, say("waterline {}", formatLength(z, m_units, 16, 0)));
        bevels(form.edge);
        const double z = form.foot - 25;
        const double centre = 0.5 * (form.edge.front().at.x() + form.endsAt);
        text({centre, z}, m_pattern.title, 5.0);
        text({centre, z - 7}, say("saw to the line; bevel both faces back to the dashed line"), 3.0);
        return std::move(m_pattern);
    }

    Pattern transom(const TransomForm& form) {
        start(form.end == End::Bow ? "transom-bow" : "transom-stern", say("Transom, {}", toText(form.end)));
        m_mirrors = true;
        std::vector<Vector2d> outer;
        for (const EdgePoint& e : form.edge)
            outer.push_back(e.at);
        const bool wide = form.fullerInside();
        const auto both = [](const std::vector<Vector2d>& half) {
            std::vector<Vector2d> all = half;
            for (std::size_t i = half.size(); i-- > 0;)
                all.emplace_back(-half[i].x(), half[i].y());
            return all;
        };
        line(Layer::Cut, both(wide ? form.inside : outer), true, LineKind::Visible);
        line(Layer::Mark, both(wide ? outer : form.inside), true, LineKind::Hidden);
        const double top = outer.front().y(), bottom = outer.back().y();
        line(Layer::Mark, {{0, bottom}, {0, top}}, false, LineKind::Centre);
        std::vector<EdgePoint> edge = form.edge;
        for (EdgePoint& e : edge)
            e.bevel = std::abs(e.bevel); // the words say which face is the fuller one
        bevels(edge);
        const double k = std::min(1.0, outer.front().x() / 150.0);
        double z = top - 0.3 * (top - bottom);
        const auto tell = [&](const std::string& words, double size) {
            text({0.45 * outer.front().x(), z}, words, size * k);
            z -= 1.6 * size;
        };
        tell(say("{}, seen from outside the boat", m_pattern.title), 5.0);
        tell(wide ? say("saw to the full line, the inner face; bevel to the dashed line, the outer face")
                  : say("saw to the full line, the outer face; bevel to the dashed line, the inner face"),
             3.0);
        tell(say("for a board {} thick; the top as you like it, above the sheer",
                 formatLength(form.thickness, m_units, 16)),
             3.0);
        tell(say("rake {} from plumb", degreesText(std::abs(form.rake()))), 3.0);
        return std::move(m_pattern);
    }

private:
    void start(std::string file, std::string title) {
        m_pattern = {};
        m_levels.clear();
        m_pattern.file = std::move(file);
        m_pattern.title = std::move(title);
    }
    void line(Layer layer, std::vector<Vector2d> points, bool closed, LineKind kind) {
        m_pattern.lines.push_back({layer, std::move(points), closed, kind, {}});
    }
    void text(const Vector2d& at, std::string words, double size) {
        m_pattern.texts.push_back({at, std::move(words), size});
    }
    void wholeOutline(const Mould& mould) {
        // starboard from the shoulder down to the centreline, then port back up; the foot joins them
        std::vector<Vector2d> side;
        const std::size_t edge = mould.edge.size();
        for (std::size_t i = edge; i < mould.outline.size(); ++i)
            if (mould.outline[i].x() > 1e-9)
                side.push_back(mould.outline[i]); // foot, leg, shoulder: down to the sheer
        for (std::size_t i = 0; i < edge; ++i)
            side.push_back(mould.outline[i]);
        std::vector<Vector2d> all = side;
        for (std::size_t i = side.size(); i-- > 0;)
            if (side[i].x() > 1e-9)
                all.emplace_back(-side[i].x(), side[i].y());
        line(Layer::Cut, all, true, LineKind::Visible);
    }
    void level(const Mould& mould, double z, const std::string& name) {
        const double right = breadthAt(mould.edge, z);
        const double left = m_mirrors ? -right : mould.stemCut;
        if (right - left < 3)
            return;
        m_levels.push_back(z);
        line(Layer::Mark, {{left, z}, {right, z}}, false, LineKind::Thin);
        m_pattern.lines.back().name = name;
        if (right - left > 40)
            text({m_mirrors ? 0.5 * right : 0.5 * (left + right), z + 1}, name, 3.0);
    }
    /// A level across a stem form, from its edge to the mould it stands against.
    void stemLevel(const StemForm& form, double z, const std::string& name) {
        for (std::size_t i = 1; i < form.edge.size(); ++i) {
            const Vector2d& a = form.edge[i - 1].at;
            const Vector2d& b = form.edge[i].at;
            if ((a.y() - z) * (b.y() - z) > 0.0 || a.y() == b.y())
                continue;
            const Vector2d at = a + (z - a.y()) / (b.y() - a.y()) * (b - a);
            if (std::abs(at.x() - form.endsAt) < 3)
                return;
            m_levels.push_back(z);
            line(Layer::Mark, {at, {form.endsAt, z}}, false, LineKind::Thin);
            m_pattern.lines.back().name = name;
            if (std::abs(at.x() - form.endsAt) > 60)
                text({form.endsAt + 0.35 * (at.x() - form.endsAt), z + 1}, name, 3.0);
            return;
        }
    }
    /// Room for words inside a mould: free of levels, and clear of the bevels told along the edge.
    struct Room {
        Vector2d top = Vector2d::Zero(); // middle of its upper side
        double width = 0.0;
    };
    /// Between two levels, as near half depth as may be; in a small mould on the horn above the sheer.
    [[nodiscard]] Room noteRoom(const Mould& mould) {
        std::sort(m_levels.begin(), m_levels.end());
        const double half = 0.5 * (mould.sheer + mould.keel);
        std::optional<Room> best;
        double bestOff = 0.0;
        for (std::size_t i = 1; i < m_levels.size(); ++i) {
            const double below = m_levels[i - 1], above = m_levels[i];
            const double right =
                std::min(breadthAt(mould.edge, below), breadthAt(mould.edge, above)) - bevelRoom;
            const double left = m_mirrors ? -right : mould.stemCut + 3;
            const double off = std::abs(0.5 * (below + above) - half);
            if (above - below < noteHeight || right - left < noteWidth || (best && off > bestOff))
                continue;
            best = Room{{0.5 * (left + right), 0.5 * (below + above + noteHeight)}, right - left};
            bestOff = off;
        }
        if (best)
            return *best;
        const double left = m_mirrors ? -mould.legHalfBreadth : mould.stemCut;
        return {{0.5 * (left + mould.legHalfBreadth), mould.foot - 3}, mould.legHalfBreadth - left - 4};
    }
    /// The title and notes below it, in as many lines as the room asks for.
    void write(const Room& room, const std::vector<std::string>& notes) {
        constexpr double letter = 0.55;   // of the size of type, an average one's advance
        constexpr double levelName = 4.5; // mm, a level's name reaches above it
        double z = room.top.y();
        const auto wrapped = [&](const std::string& words, double size) {
            const auto most = static_cast<std::size_t>(std::max(6.0, room.width / (letter * size)));
            std::string rest = words;
            while (!rest.empty()) {
                std::size_t end = rest.size();
                if (end > most) {
                    end = rest.rfind(' ', most);
                    if (end == std::string::npos || end == 0)
                        end = std::min(rest.find(' '), rest.size());
                }
                z -= 1.3 * size;
                for (auto level = m_levels.rbegin(); level != m_levels.rend(); ++level)
                    if (z < *level + levelName && z + size > *level - 0.5)
                        z = *level - 0.5 - size; // below it and the name on it
                text({room.top.x(), z}, rest.substr(0, end), size);
                rest.erase(0, std::min(end + 1, rest.size()));
            }
        };
        wrapped(m_pattern.title, room.width < noteWidth ? 3.5 : 5.0);
        for (const std::string& note : notes)
            wrapped(note, 3.0);
    }
    /// Whether a line that is sawn runs through words or close by, or they reach past the pattern's side: a
    /// page would move them back in.
    [[nodiscard]] bool isInTheWay(const Vector2d& at, const std::string& words, double size) const {
        constexpr double white = 0.4; // mm
        const double half = textWidth(words, size) / 2 + white;
        const Box box{at.x() - half, at.y() - 0.3 * size - white, at.x() + half, at.y() + size};
        const Box all = extentOf(m_pattern);
        return box.left < all.left || box.right > all.right ||
               std::ranges::any_of(m_pattern.lines, [&](const PatternLine& line) {
                   return line.layer == Layer::Cut &&
                          enters({line.points, line.closed, line.kind, {}, {}}, box);
               });
    }
    void bevels(const std::vector<EdgePoint>& edge) {
        constexpr double figureSize = 3.0; // mm
        double since = bevelPitch;
        for (std::size_t i = 1; i + 1 < edge.size(); ++i) {
            since += (edge[i].at - edge[i - 1].at).norm();
            if (since < bevelPitch)
                continue;
            const EdgePoint& e = edge[i];
            const Vector2d figure = e.at - (tickLength + 5) * e.outward - Vector2d(0, 1);
            const std::string words = degreesText(e.bevel);
            if (std::ranges::any_of(m_levels, [&](double z) { return std::abs(z - figure.y() - 1) < 4.5; }) ||
                isInTheWay(figure, words, figureSize))
                continue; // the next point is near
            since = 0.0;
            line(Layer::Mark, {e.at, e.at - tickLength * e.outward}, false, LineKind::Thin);
            text(figure, words, figureSize);
        }
    }
    void holes(const std::vector<EdgePoint>& edge, const EdgeHoles& choice) {
        double since = choice.pitch / 2;
        for (std::size_t i = 1; i + 1 < edge.size(); ++i) {
            since += (edge[i].at - edge[i - 1].at).norm();
            if (since < choice.pitch)
                continue;
            since = 0.0;
            const Vector2d centre = edge[i].at - choice.inset * edge[i].outward;
            if (centre.x() < choice.diameter)
                continue; // would run into the centreline
            for (const double side : {1.0, -1.0}) {
                if (side < 0 && !m_mirrors)
                    continue;
                std::vector<Vector2d> ring;
                for (int k = 0; k < static_cast<int>(circleParts); ++k) {
                    const double a = 2 * std::numbers::pi * k / circleParts;
                    ring.emplace_back(side * (centre.x() + choice.diameter / 2 * std::cos(a)),
                                      centre.y() + choice.diameter / 2 * std::sin(a));
                }
                line(Layer::Cut, ring, true, LineKind::Visible);
            }
        }
    }

    const Project& m_project;
    Units m_units;
    Pattern m_pattern;
    bool m_mirrors = false;
    std::vector<double> m_levels; // heights of the lines across the mould
};

} // namespace

std::vector<Pattern> mouldPatterns(const Project& project, const MouldSet& set, Units units) {
    const Speaking speaking(project.language);
    Drawer drawer(project, units);
    std::vector<Pattern> patterns;
    for (const Mould& mould : set.moulds)
        patterns.push_back(drawer.mould(mould, patterns.size() + 1));
    for (const StemForm& form : set.stemForms)
        patterns.push_back(drawer.stem(form));
    for (const TransomForm& form : set.transoms)
        patterns.push_back(drawer.transom(form));
    return patterns;
}

} // namespace sheerlay::core

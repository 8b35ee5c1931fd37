#include "core/patterns/fitout_pattern.hpp"

#include "core/patterns/gunwale_pattern.hpp"
#include "core/sheets/words.hpp"
#include "core/units/number_text.hpp"
#include "core/words/heard.hpp"
#include "core/words/language.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <numbers>
#include <set>
#include <string>
#include <utility>

namespace sheerlay::core {

namespace {

using Eigen::Vector2d;

constexpr double bevelPitch = 80.0;   // mm along an edge from one bevel told to the next
constexpr double tickLength = 6.0;    // mm
constexpr double titleSize = 5.0;     // mm of type
constexpr double noteSize = 3.0;      // mm of type
constexpr double boltArm = 5.0;       // mm, half a cross
constexpr double boltRing = 6.0;      // mm
constexpr int holeParts = 24;         // of a hole; a chord of 5 mm across is 0.02 mm short
constexpr double faceGap = 25.0;      // mm between the faces drawn one below the other
constexpr double leastBevel = 0.0087; // rad, half a degree; less has no other line

std::string degreesText(double radians) {
    return numberText(radians * 180.0 / std::numbers::pi, 1) + "\u00B0";
}

/// "bow seat" as a file's name: letters and figures of ASCII, everything else a dash.
std::string fileName(const std::string& name) {
    std::string file;
    for (const char c : name) {
        const bool plain = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
        const bool large = c >= 'A' && c <= 'Z';
        if (plain || large)
            file += large ? static_cast<char>(c - 'A' + 'a') : c;
        else if (!file.empty() && file.back() != '-')
            file += '-';
    }
    while (!file.empty() && file.back() == '-')
        file.pop_back();
    return file;
}

/// "bow", "stern" in a file's name, whatever is spoken.
std::string fileEnd(End end) {
    return end == End::Bow ? "bow" : "stern";
}

class Drawer {
public:
    explicit Drawer(Units units) : m_units(units) {}

    void bulkhead(const Bulkhead& b) {
        const std::string end = toText(b.choice.end);
        start("bulkhead-" + fileEnd(b.choice.end), say("Bulkhead, {}", end));
        line(Layer::Cut, b.outline, true, LineKind::Visible);
        std::vector<Vector2d> far;
        for (const EdgePoint& e : b.edge)
            far.push_back(e.at - b.choice.thickness * std::tan(e.bevel) * e.outward);
        if (std::max(std::abs(b.bevelLeast), std::abs(b.bevelMost)) > leastBevel) {
            line(Layer::Mark, far, false, LineKind::Hidden);
            for (Vector2d& p : far)
                p.x() = -p.x();
            line(Layer::Mark, far, false, LineKind::Hidden);
        }
        const double top = b.edge.front().at.y() + b.crown, bottom = b.edge.back().at.y();
        std::vector<Vector2d> at, outward;
        std::vector<double> bevel;
        for (const EdgePoint& e : b.edge) {
            at.push_back(e.at);
            outward.push_back(e.outward);
            bevel.push_back(e.bevel);
        }
        bevels(at, outward, bevel);
        const double half = 0.5 * b.width;
        write({bottom, top},
              top - 0.18 * b.height,
              1.5 * half,
              {say("larger face, seen from amidships; cloth inside is allowed for"),
               say("saw to the line; plane the bevel toward the {}, to the dashed line", end),
               say("{} thick", stockText(b.choice.thickness, m_units))});
        keep();
    }

    void deck(const Deck& d) {
        start("deck-" + fileEnd(d.choice.end), say("Deck, {}", toText(d.choice.end)));
        std::vector<Vector2d> flat;
        for (const Vector2d& p : d.flat)
            flat.emplace_back(p.y(), p.x());
        line(Layer::Cut, flat, true, LineKind::Visible);
        const double long_ = d.places.back().along;
        std::vector<Vector2d> at, outward;
        std::vector<double> bevel;
        for (std::size_t i = 0; i < d.places.size(); ++i) {
            const DeckPlace &a = d.places[i == 0 ? 0 : i - 1],
                            &b = d.places[std::min(i + 1, d.places.size() - 1)];
            const Vector2d run = Vector2d(b.girth - a.girth, b.along - a.along).normalized();
            at.emplace_back(d.places[i].girth, d.places[i].along);
            outward.emplace_back(run.y(), -run.x());
            bevel.push_back(d.places[i].bevel);
        }
        bevels(at, outward, bevel);
        std::vector<std::string> notes{
            say("top, laid flat, inner edge below; cut a little over and fit"),
            say("{} thick; + bevel: the underside is the narrower", stockText(d.choice.thickness, m_units))};
        if (d.radius > 0.0)
            notes.push_back(say("sprung to a radius of {} across", lapText(d.radius, m_units)));
        write({0.0, long_}, 0.35 * long_, d.places.front().girth, notes);
        keep();
    }

    void seat(const Seat& s) {
        start("part-" + fileName(s.choice.name), heard(s.choice.name));
        const CrossPiece &front = s.front.piece, &back = s.back.piece;
        const double backFrom = s.choice.depth - back.width, rail = s.choice.rail.width;
        topFace(s.front, 0.0);
        topFace(s.back, backFrom);
        for (const double side : {-1.0, 1.0}) {
            const double in = side * s.opening / 2, out = side * (s.opening / 2 + rail);
            for (const double y : {in, out})
                line(Layer::Mark, {{y, -front.width}, {y, -backFrom}}, false, LineKind::Visible);
        }
        if (s.caning)
            caningHoles(s);
        write({-s.choice.depth, 0.0},
              -0.5 * s.choice.depth + 10,
              s.opening - 20,
              {say("looked down on, bow up; saw rails to the line, side rails without their tenons")});
        double y = -s.choice.depth - faceGap;
        y = face(y, say("front rail, forward face"), front.frontTop, front.frontBottom, front.height);
        face(y, say("back rail, after face, seen from aft"), back.backTop, back.backBottom, back.height);
        keep();
    }

    void bar(const Thwart& t) {
        start("part-" + fileName(t.name), heard(t.name));
        const CrossPiece& p = t.bar.piece;
        topFace(t.bar, 0.0);
        line(Layer::Mark, {{0, 0}, {0, -p.width}}, false, LineKind::Centre);
        text({-0.25 * p.frontTop, -0.5 * p.width}, say("{}, top, bow up", m_pattern.title), titleSize);
        const double y =
            face(-p.width - faceGap, say("forward face|of a part"), p.frontTop, p.frontBottom, p.height);
        face(y, say("after face, seen from aft"), p.backTop, p.backBottom, p.height);
        keep();
    }

    std::vector<Pattern> take() { return std::move(m_patterns); }

private:
    void start(const std::string& file, std::string title) {
        m_pattern = {};
        m_pattern.file = file;
        for (int n = 2; !m_files.insert(m_pattern.file).second; ++n)
            m_pattern.file = file + "-" + std::to_string(n);
        if (!title.empty() && title[0] >= 'a' && title[0] <= 'z')
            title[0] = static_cast<char>(title[0] - 'a' + 'A');
        m_pattern.title = std::move(title);
    }
    void keep() { m_patterns.push_back(std::move(m_pattern)); }
    void line(Layer layer, std::vector<Vector2d> points, bool closed, LineKind kind) {
        m_pattern.lines.push_back({layer, std::move(points), closed, kind, {}});
    }
    void text(const Vector2d& at, std::string words, double size) {
        m_pattern.texts.push_back({at, std::move(words), size});
    }
    /// The title and notes below one another, in lines no longer than `room`, on a centreline that makes way
    /// for them.
    /// @param centre  from where to where it runs
    void write(const Vector2d& centre, double top, double room, const std::vector<std::string>& notes) {
        double y = top;
        text({0.0, y}, m_pattern.title, titleSize);
        for (const std::string& note : notes)
            for (const std::string& part : wrap(note, std::max(room, 40.0), noteSize)) {
                y -= 1.5 * noteSize + 0.5;
                text({0.0, y}, part, noteSize);
            }
        line(Layer::Mark, {{0, centre.x()}, {0, y - noteSize}}, false, LineKind::Centre);
        line(Layer::Mark, {{0, top + 1.5 * titleSize}, {0, centre.y()}}, false, LineKind::Centre);
    }
    void bevels(const std::vector<Vector2d>& at,
                const std::vector<Vector2d>& outward,
                const std::vector<double>& bevel) {
        double since = bevelPitch / 2;
        for (std::size_t i = 1; i + 1 < at.size(); ++i) {
            since += (at[i] - at[i - 1]).norm();
            if (since < bevelPitch || at[i].x() < 12.0) // no figure across the centreline
                continue;
            since = 0.0;
            line(Layer::Mark, {at[i], at[i] - tickLength * outward[i]}, false, LineKind::Thin);
            text(at[i] - (tickLength + 6) * outward[i] - Vector2d(0, 1), degreesText(bevel[i]), noteSize);
        }
    }
    /// The upper face of a cross piece `aft` mm behind the part's forward edge, with its bolts.
    void topFace(const BoltedPiece& part, double aft) {
        const CrossPiece& p = part.piece;
        line(Layer::Cut,
             {{-p.frontTop / 2, -aft},
              {p.frontTop / 2, -aft},
              {p.backTop / 2, -aft - p.width},
              {-p.backTop / 2, -aft - p.width}},
             true,
             LineKind::Visible);
        if (!part.bolt)
            return;
        const double y = p.halfAt(p.width / 2, 0.0) - part.bolt->fromEnd, x = -aft - p.width / 2;
        for (const double side : {-1.0, 1.0}) {
            const Vector2d at(side * y, x);
            line(Layer::Mark, {at - Vector2d(boltArm, 0), at + Vector2d(boltArm, 0)}, false, LineKind::Thin);
            line(Layer::Mark, {at - Vector2d(0, boltArm), at + Vector2d(0, boltArm)}, false, LineKind::Thin);
            line(Layer::Mark, ring(at, boltRing), true, LineKind::Thin); // pages join at bare crosses
        }
    }
    /// An upright face of a cross piece; @return where the next goes
    double face(double y, const std::string& name, double top, double bottom, double height) {
        line(Layer::Cut,
             {{-top / 2, y}, {top / 2, y}, {bottom / 2, y - height}, {-bottom / 2, y - height}},
             true,
             LineKind::Visible);
        text({0.0, y + 2.0}, name, noteSize);
        return y - height - faceGap;
    }
    static std::vector<Vector2d> ring(const Vector2d& at, double across) {
        std::vector<Vector2d> points;
        for (int i = 0; i < holeParts; ++i) {
            const double a = 2 * std::numbers::pi * i / holeParts;
            points.emplace_back(at + across / 2 * Vector2d(std::cos(a), std::sin(a)));
        }
        return points;
    }
    void hole(const Vector2d& at, double across) {
        line(Layer::Cut, ring(at, across), true, LineKind::Visible);
    }
    void caningHoles(const Seat& s) {
        const Caning& c = *s.caning;
        const CaningChoice& choice = *s.choice.caning;
        const double right = s.opening / 2 + choice.inset;
        const double top = -s.choice.rail.width + choice.inset,
                     bottom = -s.choice.rail.width - s.sideRail - choice.inset;
        for (int i = 0; i < c.front; ++i)
            for (const double y : {top, bottom})
                hole({-right + i * c.spacingAcross, y}, choice.hole);
        for (int i = 1; i + 1 < c.side; ++i)
            for (const double x : {-right, right})
                hole({x, top - i * c.spacingAlong}, choice.hole);
    }

    Units m_units;
    Pattern m_pattern;
    std::vector<Pattern> m_patterns;
    std::set<std::string> m_files;
};

} // namespace

std::vector<Pattern> fitoutPatterns(const Fitout& fitout, Units units) {
    Drawer drawer(units);
    for (const Bulkhead& b : fitout.bulkheads)
        drawer.bulkhead(b);
    for (const Deck& d : fitout.decks)
        drawer.deck(d);
    for (const Seat& s : fitout.seats)
        drawer.seat(s);
    for (const Thwart& t : fitout.thwarts)
        drawer.bar(t);
    if (fitout.yoke)
        drawer.bar(*fitout.yoke);
    std::vector<Pattern> patterns = drawer.take();
    if (fitout.gunwales)
        std::ranges::move(gunwalePatterns(*fitout.gunwales, units), std::back_inserter(patterns));
    return patterns;
}

} // namespace sheerlay::core

#include "core/patterns/gunwale_pattern.hpp"

#include "core/sheets/words.hpp"
#include "core/units/number_text.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>
#include <tuple>
#include <utility>

namespace sheerlay::core {

namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

constexpr std::size_t mostSections = 6;
constexpr double planked = 25.0;     // mm of planking drawn below the deeper gunwale
constexpr double between = 20.0;     // mm from part to part
constexpr double column = 68.0;      // mm from the middle to the middle of either column
constexpr double titleSize = 5.0;    // mm of type
constexpr double noteSize = 3.0;     // mm of type
constexpr double endLength = 120.0;  // mm of stick drawn at an end cut
constexpr double onStem = 60.0;      // mm off the centreplane; beyond, the sheer ends at a transom
constexpr double leastCut = 0.21;    // rad, 12 degrees; a finer point is drawn blunt
constexpr double frame = 4.0;        // mm round everything
constexpr double leastRise = 0.0087; // rad, half a degree
constexpr double sectionRoom = 90.0; // mm from one section to the next, its words included

std::string degreesText(double radians) {
    return numberText(radians * 180.0 / std::numbers::pi, 1) + "\u00B0";
}

/// A stick whose width is across, told from the corner that touches the face at the sheer.
/// @param sign  + outside the planking, - inside
std::vector<Vector2d> plumbStick(const StickSize& size, double sign, double flare) {
    const double lean = size.height * std::tan(flare); // of the face over its height
    const double touches = std::max(0.0, sign * lean); // wood planed off at the top, or off the bottom
    const double far = sign * size.width - sign * touches;
    return {{0, 0}, {far, 0}, {far, -size.height}, {-lean, -size.height}};
}

std::vector<Vector2d> leaningStick(const StickSize& size, double sign, double flare) {
    const Vector2d out(std::cos(flare), -std::sin(flare)), up(std::sin(flare), std::cos(flare));
    const Vector2d far = sign * size.width * out, down = -size.height * up;
    return {{0, 0}, far, far + down, down};
}

std::vector<Vector2d> shifted(std::vector<Vector2d> ring, const Vector2d& by) {
    for (Vector2d& p : ring)
        p += by;
    return ring;
}

/// Carries the outer stick up by a lip that reaches in over the planking's edge.
void addLip(std::vector<Vector2d>& outer, double rabbet, const Vector2d& innerEdge) {
    const double lip = rabbet, top = std::max(0.0, innerEdge.y()); // the lip lies on the higher edge
    const double in = std::min(-rabbet, innerEdge.x());
    outer = {{in, top}, {in, top + lip}, {outer[1].x(), top + lip}, outer[2], outer[3], {0, top}};
}

/// Gathers what is drawn on one piece of paper.
class Drawer {
public:
    Drawer(std::string file, std::string title, Units units) : m_units(units) {
        m_pattern.file = std::move(file);
        m_pattern.title = std::move(title);
    }

    void sections(const Gunwales& g) {
        const auto& all = g.bevels;
        const std::size_t count = std::min(mostSections, all.size());
        const double depth = std::max(g.outer.size.height, g.inner.size.height) + planked;
        const double wide = std::max(sectionRoom, g.outer.size.width + g.inner.size.width + 50.0);
        text({0, 30}, say("{}, cut across, looked at from aft", m_pattern.title), titleSize);
        for (std::size_t i = 0; i < count; ++i) {
            const GunwaleBevel& b =
                all[count == 1 ? 0 : (i * (all.size() - 1) + (count - 1) / 2) / (count - 1)];
            const Vector2d at((i % 2 == 0 ? -0.5 : 0.5) * wide, -static_cast<double>(i / 2) * (depth + 35));
            const GunwaleSection s =
                gunwaleSection(g, sheerPointAt(g.outerLine, b.x), sheerPointAt(g.innerLine, b.x), depth);
            line(Layer::Mark, shifted(s.outer, at), LineKind::Visible);
            line(Layer::Mark, shifted(s.inner, at), LineKind::Visible);
            line(Layer::Mark, shifted(s.planking, at), LineKind::Thin);
            text(at + Vector2d(0, 16), say("station {}, {}", b.name, degreesText(b.flare)), noteSize);
        }
    }

    void scarf(const Gunwale& g, const std::string& name) {
        if (g.scarfs.empty())
            return;
        const double w = g.size.width, half = g.scarf / 2, rest = 40.0;
        const Vector2d at(0, m_low - w);
        text(at + Vector2d(-column, w + 4),
             say("scarf of the {} gunwale, {} long, from above", name, lapText(g.scarf, m_units)),
             noteSize);
        line(Layer::Cut,
             shifted({{-half - rest, 0}, {half, 0}, {-half, w}, {-half - rest, w}}, at),
             LineKind::Visible);
        line(Layer::Cut,
             shifted({{half + rest, w}, {-half, w}, {half, 0}, {half + rest, 0}}, at),
             LineKind::Visible);
        m_low = at.y() - between;
    }

    /// The stick where the sheer ends, from above, its point to the left: the bow's in the left column.
    void endCut(const std::vector<SheerPoint>& sheer, const Gunwale& g, const std::string& name, bool bow) {
        const SheerPoint& end = bow ? sheer.front() : sheer.back();
        const double run = std::atan2(std::abs(end.along.y()), std::abs(end.along.x()));
        const bool stem = std::abs(end.point.y()) < onStem;
        const double cut = stem ? run : std::numbers::pi / 2 - run;
        const double drawn = std::max(cut, leastCut), w = g.size.width;
        const double middle = bow ? -column : column;
        const Vector2d at(middle - endLength / 2, m_low - w);
        text({middle, at.y() + w + 4},
             say(bow ? sayable("bow end of the {} gunwale, from above")
                     : sayable("stern end of the {} gunwale, from above"),
                 name),
             noteSize);
        text({middle, at.y() - 6},
             say(stem ? sayable("to the centreline, {} off its length")
                      : sayable("to the transom, {} off its length"),
                 degreesText(cut)),
             noteSize);
        const double rise = std::asin(std::clamp((bow ? -1 : 1) * end.along.z(), -1.0, 1.0));
        const std::string sloped = std::abs(rise) < leastRise
                                       ? say("level there")
                                       : say(rise > 0 ? sayable("rises {} toward the end there")
                                                      : sayable("falls {} toward the end there"),
                                             degreesText(std::abs(rise)));
        text({middle, at.y() - 11},
             drawn > cut ? say("{}; too fine a point, leave it blunt", sloped) : sloped,
             noteSize);
        // starboard seen from above, bow to the left, has its outboard side up, stern to the left down; on a
        // stem that side is the longer, at a transom the inboard one
        const double back = w / std::tan(drawn);
        const bool longUp = bow == stem;
        line(Layer::Cut,
             shifted({{longUp ? back : 0, 0}, {endLength, 0}, {endLength, w}, {longUp ? 0 : back, w}}, at),
             LineKind::Visible);
    }

    void next(double down) { m_low -= down; }
    /// With a frame round everything, words too: paper is cut to a pattern's lines.
    [[nodiscard]] Pattern take() {
        Box box = extentOf(m_pattern);
        for (const PatternText& t : m_pattern.texts) {
            const double half = textWidth(t.text, t.size) / 2;
            box.left = std::min(box.left, t.at.x() - half);
            box.right = std::max(box.right, t.at.x() + half);
            box.top = std::max(box.top, t.at.y() + t.size);
            box.bottom = std::min(box.bottom, t.at.y() - 0.3 * t.size);
        }
        const double l = box.left - frame, r = box.right + frame, t = box.top + frame, b = box.bottom - frame;
        line(Layer::Text, {{l, t}, {r, t}, {r, b}, {l, b}}, LineKind::Thin);
        return std::move(m_pattern);
    }

private:
    void line(Layer layer, std::vector<Vector2d> points, LineKind kind) {
        m_pattern.lines.push_back({layer, std::move(points), true, kind, {}});
    }
    void text(const Vector2d& at, std::string words, double size) {
        m_pattern.texts.push_back({at, std::move(words), size});
    }

    Units m_units;
    Pattern m_pattern;
    double m_low = 0.0; // mm: below what is drawn
};

} // namespace

GunwaleSection
gunwaleSection(const Gunwales& gunwales, const SheerPoint& outside, const SheerPoint& inside, double depth) {
    const Vector3d level = Vector3d::UnitZ().cross(outside.along).normalized();
    const Vector3d upright = outside.along.cross(level);
    const Vector3d apart = inside.point - outside.point;
    const Vector2d innerEdge(apart.dot(level), apart.dot(upright));
    // of a plumb gunwale `out` is level; of one along the side it is the face's normal
    const bool plumb = std::abs(outside.out.z()) < 1e-9;
    const auto stick = [&](const StickSize& size, double sign, double flare) {
        return plumb ? plumbStick(size, sign, flare) : leaningStick(size, sign, flare);
    };
    GunwaleSection s;
    s.outer = stick(gunwales.outer.size, 1.0, outside.flare);
    s.inner = shifted(stick(gunwales.inner.size, -1.0, inside.flare), innerEdge);
    const auto down = [&](double flare) { return Vector2d(-depth * std::tan(flare), -depth); };
    s.planking = {Vector2d::Zero(), innerEdge, innerEdge + down(inside.flare), down(outside.flare)};
    if (gunwales.rabbet > 0.0)
        addLip(s.outer, gunwales.rabbet, innerEdge);
    return s;
}

std::vector<Pattern> gunwalePatterns(const Gunwales& gunwales, Units units) {
    std::vector<Pattern> patterns;
    if (!gunwales.bevels.empty()) {
        Drawer sections("gunwale-sections", say("Gunwales, starboard"), units);
        sections.sections(gunwales);
        patterns.push_back(sections.take());
    }
    Drawer joints("gunwale-joints", say("Gunwales, scarfs and ends"), units);
    const bool alike = gunwales.inner.size == gunwales.outer.size;
    joints.scarf(gunwales.outer, alike ? say("outer or inner") : say("outer|gunwale"));
    if (!alike || gunwales.outer.scarfs.empty())
        joints.scarf(gunwales.inner, say("inner|gunwale"));
    for (const auto& [sheer, stick, name] :
         {std::tuple{&gunwales.outerLine, &gunwales.outer, say("outer|gunwale")},
          std::tuple{&gunwales.innerLine, &gunwales.inner, say("inner|gunwale")}}) {
        for (const bool bow : {true, false})
            joints.endCut(*sheer, *stick, name, bow);
        joints.next(stick->size.width + 11 + between);
    }
    patterns.push_back(joints.take());
    return patterns;
}

} // namespace sheerlay::core

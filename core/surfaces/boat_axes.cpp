#include "core/surfaces/boat_axes.hpp"

#include "core/units/number_text.hpp"
#include "geometry/mesh_sections.hpp"
#include "geometry/polyline.hpp"

#include <Eigen/Geometry>

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

namespace sheerlay::core {
namespace {

using Eigen::Vector3d;
using Line = std::vector<Vector3d>;

constexpr double slenderness = 1.4; // length over the next extent, below which nobody can tell which is which
constexpr double alike = 0.02;      // of the breadth: how far two halves may differ and be one boat's
constexpr double reaches = 0.01;    // of the breadth: how near a section of a half comes to the centreplane
constexpr double blunt = 0.15;      // of the greatest breadth, just inside an end: a transom
constexpr double nearEnd = 0.01;    // of the length, where that is looked at
constexpr int looks = 9;

struct Extent {
    double low = 1e300, high = -1e300;
    void take(double v) {
        low = std::min(low, v);
        high = std::max(high, v);
    }
    [[nodiscard]] double size() const { return high - low; }
    [[nodiscard]] double middle() const { return (low + high) / 2; }
};

double distanceTo(const std::vector<Line>& lines, const Vector3d& p) {
    double least = 1e300;
    for (const Line& line : lines)
        least = std::min(least, geometry::distanceTo(line, p));
    return least;
}

/// The mesh seen with three of its axes as length, breadth and height.
class Look {
public:
    Look(const geometry::Mesh& mesh, int length, int breadth, int height) : m_axes{length, breadth, height} {
        m_turned.triangles = mesh.triangles;
        for (const Vector3d& p : mesh.points) {
            m_turned.points.emplace_back(p[length], p[breadth], p[height]);
            m_breadth.take(p[breadth]);
        }
        const geometry::MeshSections sections(m_turned);
        for (int i = 1; i <= looks; ++i)
            m_sections.push_back(
                sections.at(sections.first() + (sections.last() - sections.first()) * i / (looks + 1)));
        for (const double part : {nearEnd, 1 - nearEnd})
            m_ends.push_back(sections.at(sections.first() + (sections.last() - sections.first()) * part));
    }

    [[nodiscard]] const std::array<int, 3>& axes() const { return m_axes; }
    [[nodiscard]] const Extent& breadth() const { return m_breadth; }

    /// The centre that all sections repeat about, with how far they do not.
    struct Symmetry {
        double centre = 0.0, uneven = 0.0;
    };
    [[nodiscard]] std::optional<Symmetry> symmetry(std::optional<double> said) const {
        Extent middles;
        for (const auto& section : m_sections) {
            const Extent y = across(section);
            if (y.size() < 0.0)
                return std::nullopt;
            middles.take(y.middle());
        }
        if (!said && middles.size() > alike * m_breadth.size())
            return std::nullopt;
        Symmetry found{said.value_or(middles.middle()), 0.0};
        for (const auto& section : m_sections)
            for (const Line& line : section)
                for (std::size_t i = 0; i < line.size(); i += 1 + line.size() / 40) {
                    const Vector3d image(line[i].x(), 2 * found.centre - line[i].y(), line[i].z());
                    found.uneven = std::max(found.uneven, distanceTo(section, image));
                    if (found.uneven > alike * m_breadth.size())
                        return std::nullopt;
                }
        return found;
    }

    /// Whether every section comes to the plane y = centre and none passes it.
    [[nodiscard]] bool endsOn(double centre) const {
        const double near = reaches * m_breadth.size();
        if (m_breadth.low < centre - near && m_breadth.high > centre + near)
            return false;
        return std::ranges::all_of(m_sections, [&](const auto& section) {
            const Extent y = across(section);
            return y.size() >= 0.0 && std::min(std::abs(y.low - centre), std::abs(y.high - centre)) <= near;
        });
    }

    /// +1 where the sections meet the centreplane low, -1 where high, 0 where both or neither.
    [[nodiscard]] int up(double centre) const {
        int low = 0;
        int high = 0;
        for (const auto& section : m_sections) {
            Extent all;
            Extent there;
            for (const Line& line : section)
                for (std::size_t i = 0; i < line.size(); ++i) {
                    all.take(line[i].z());
                    const bool crosses = i > 0 && (line[i - 1].y() < centre) != (line[i].y() < centre);
                    if (crosses || std::abs(line[i].y() - centre) <= reaches * m_breadth.size())
                        there.take(line[i].z());
                }
            low += there.size() >= 0.0 && there.low < all.middle() ? 1 : 0;
            high += there.size() >= 0.0 && there.high > all.middle() ? 1 : 0;
        }
        return 2 * std::abs(low - high) <= looks ? 0 : low > high ? 1 : -1;
    }

    /// Half-breadth just inside each end, as part of the greatest.
    [[nodiscard]] std::array<double, 2> endBreadths(double centre) const {
        const double most = std::max(m_breadth.high - centre, centre - m_breadth.low);
        std::array<double, 2> parts{};
        for (std::size_t i = 0; i < 2; ++i) {
            const Extent y = across(m_ends[i]);
            parts[i] = y.size() < 0.0 ? 0.0 : std::max(y.high - centre, centre - y.low) / most;
        }
        return parts;
    }

private:
    static Extent across(const std::vector<Line>& section) {
        Extent y;
        for (const Line& line : section)
            for (const Vector3d& p : line)
                y.take(p.y());
        return y;
    }

    std::array<int, 3> m_axes;
    geometry::Mesh m_turned;
    Extent m_breadth;
    std::vector<std::vector<Line>> m_sections, m_ends;
};

std::string nameOf(const Vector3d& direction) {
    for (int i = 0; i < 3; ++i)
        if (std::abs(direction[i]) > 0.5)
            return std::string(direction[i] > 0.0 ? "+" : "-") + "xyz"[i];
    return "?";
}

/// A way to see the boat, and how well it goes.
struct View {
    std::array<int, 3> axes{};
    BoatAxes::Given given = BoatAxes::Given::Whole;
    double centre = 0.0, uneven = 0.0;
    int up = 0;
    std::array<double, 2> ends{};
    bool far = false; ///< a half on the far side of its centreplane
};

std::optional<View> viewOf(const Look& look, std::optional<double> said) {
    View view;
    view.axes = look.axes();
    if (const auto whole = look.symmetry(said)) {
        view.centre = whole->centre;
        view.uneven = whole->uneven;
    } else {
        view.given = BoatAxes::Given::Half;
        const Extent& y = look.breadth();
        // a half that stops short of the file's own middle plane ends on a keel's side
        const double least = std::abs(y.low) < std::abs(y.high) ? y.low : y.high;
        const double keel = 0.05 * y.size();
        std::vector<double> places{y.low, y.high};
        if (said)
            places = {*said};
        else if (std::abs(least) <= keel && (y.low >= -reaches * y.size() || y.high <= reaches * y.size()))
            places.insert(places.begin(), 0.0);
        const auto at = std::ranges::find_if(places, [&](double c) { return look.endsOn(c); });
        if (at == places.end())
            return std::nullopt;
        view.centre = *at;
        view.far = y.middle() < view.centre;
    }
    view.up = look.up(view.centre);
    view.ends = look.endBreadths(view.centre);
    return view;
}

class Finder {
public:
    Finder(const geometry::Mesh& mesh, const TableCorrections& corrections)
        : m_mesh(mesh), m_said(corrections) {
        for (const Vector3d& p : mesh.points)
            for (std::size_t i = 0; i < 3; ++i)
                m_extents[i].take(p[static_cast<int>(i)]);
    }

    Expected<BoatAxes, LengthError> axes() {
        const auto length = lengthAxis();
        if (!length)
            return unexpected(length.error());
        std::optional<double> centre;
        if (m_said.centre) {
            const auto read = readCell(*m_said.centre, {});
            if (!read)
                return unexpected(LengthError{"centre = " + *m_said.centre,
                                              "the centreplane's place in the file, such as centre = 0"});
            centre = read->millimetres;
        }
        const auto view = bestView(*length, centre);
        if (!view)
            return unexpected(LengthError{"faces that are neither port and starboard alike nor one half that "
                                          "ends on a plane along the boat",
                                          "a whole hull or one half of it; --take \"up = z\", \"bow = -x\" "
                                          "and \"centre = 0\" tell how it lies, "
                                          "--take \"faces = 1, 3\" which faces are hull"});
        return finished(*view);
    }

private:
    /// The longest extent, or the axis that the bow is said to lie on.
    Expected<int, LengthError> lengthAxis() const {
        if (m_said.bow)
            return m_said.bow->axis;
        std::array<int, 3> order{0, 1, 2};
        const auto size = [&](int i) { return m_extents[static_cast<std::size_t>(i)].size(); };
        std::ranges::sort(order, [&](int a, int b) { return size(a) > size(b); });
        if (size(order[0]) < slenderness * size(order[1]))
            return unexpected(LengthError{
                "faces " + numberText(size(order[0]), 0) + " mm long and " + numberText(size(order[1]), 0) +
                    " mm broad, of which nobody can tell how they make a boat",
                "the hull alone; or --take \"bow = -x\", the direction its bow points in"});
        return order[0];
    }

    std::optional<View> bestView(int length, std::optional<double> centre) const {
        std::optional<View> best;
        // z is up where that is possible, then y, then x
        for (const int height : {2, 1, 0}) {
            if (height == length || (m_said.up && m_said.up->axis != height))
                continue;
            const auto view = viewOf(Look(m_mesh, length, 3 - length - height, height), centre);
            const bool better =
                view &&
                (!best || (best->given == BoatAxes::Given::Half && view->given == BoatAxes::Given::Whole));
            if (better)
                best = view;
        }
        return best;
    }

    BoatAxes finished(const View& view) const {
        BoatAxes axes;
        axes.given = view.given;
        axes.uneven = view.uneven;
        const bool upSaid = m_said.up.has_value();
        const bool upward = upSaid ? m_said.up->positive : view.up >= 0;
        axes.up = (upward ? 1 : -1) * Vector3d::Unit(view.axes[2]);
        const bool bowSaid = m_said.bow.has_value();
        const bool bluntLow = view.ends[0] > blunt;
        const bool bluntHigh = view.ends[1] > blunt;
        const bool narrowHigh = bluntLow && (!bluntHigh || view.ends[1] < view.ends[0]);
        const bool bowHigh = bowSaid ? m_said.bow->positive : narrowHigh;
        axes.aft = (bowHigh ? -1 : 1) * Vector3d::Unit(view.axes[0]);
        axes.side = axes.up.cross(axes.aft);
        const Vector3d breadth = Vector3d::Unit(view.axes[1]);
        if (view.given == BoatAxes::Given::Half)
            axes.side = view.far ? Vector3d(-breadth) : breadth;
        axes.centre = view.centre * axes.side.dot(breadth);
        const Extent& x = m_extents[static_cast<std::size_t>(view.axes[0])];
        axes.foremost = bowHigh ? -x.high : x.low;
        axes.said.push_back(
            "The boat lies along the file's " + std::string(1, "xyz"[view.axes[0]]) + " axis, " +
            numberText(x.size(), 0) + " mm long; her bow points to " + nameOf(-axes.aft) +
            (bowSaid ? ", as you say."
             : bluntLow || bluntHigh
                 ? (bluntLow && bluntHigh ? ": the narrower of two transoms is taken as the bow."
                                          : ": the transom is the stern.")
                 : ", for want of a transom to tell; --take \"bow = " + nameOf(axes.aft) +
                       "\" turns her round."));
        axes.said.push_back("Up is " + nameOf(axes.up) +
                            (upSaid         ? ", as you say."
                             : view.up == 0 ? ", for want of an open side to tell; --take \"up = " +
                                                  nameOf(-axes.up) + "\" turns her over."
                                            : ": the sections are open there."));
        const std::string plane = "The centreplane is " + std::string(1, "xyz"[view.axes[1]]) + " = " +
                                  numberText(view.centre, 2) + " mm. ";
        if (view.given == BoatAxes::Given::Whole)
            axes.said.push_back(plane + "Both sides are there and differ by at most " +
                                numberText(view.uneven, 2) + " mm; the half toward " + nameOf(axes.side) +
                                " is used.");
        else
            axes.said.push_back(plane + "One half is there, toward " + nameOf(axes.side) +
                                "; the other is its image.");
        return axes;
    }

    const geometry::Mesh& m_mesh;
    const TableCorrections& m_said;
    std::array<Extent, 3> m_extents;
};

} // namespace

Expected<BoatAxes, LengthError> boatAxes(const geometry::Mesh& mesh, const TableCorrections& corrections) {
    return Finder(mesh, corrections).axes();
}

} // namespace sheerlay::core

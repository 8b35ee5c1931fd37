#include "ui/scene/tape.hpp"

#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"

#include <cmath>
#include <numbers>

namespace sheerlay::ui {
namespace {

constexpr double ringRadius = 9.0; // mm

std::vector<Eigen::Vector3d> ringAbout(const Eigen::Vector3d& middle, const Eigen::Vector3d& normal) {
    const Eigen::Vector3d a = normal.unitOrthogonal(), b = normal.cross(a);
    std::vector<Eigen::Vector3d> ring;
    constexpr int sides = 16;
    for (int i = 0; i <= sides; ++i) {
        const double t = 2.0 * std::numbers::pi * i / sides;
        ring.emplace_back(middle + ringRadius * (std::cos(t) * a + std::sin(t) * b));
    }
    return ring;
}

QString inBoth(double millimetres, core::Units first) {
    const core::Units other = first == core::Units::Inches ? core::Units::Millimetres : core::Units::Inches;
    return QStringLiteral("%1 (%2)").arg(lengthText(millimetres, first), lengthText(millimetres, other));
}

} // namespace

Tape withEnd(const Tape& tape, const core::HullPlace& end, const core::TrimmedSurface& hull) {
    if (!tape.from || tape.line)
        return {end, std::nullopt};
    return {tape.from, core::measureBetween(hull, *tape.from, end)};
}

std::vector<std::vector<Eigen::Vector3d>> tapeOnBoat(const Tape& tape, double outward) {
    if (!tape.line) {
        if (!tape.from)
            return {};
        return {ringAbout(tape.from->point + outward * tape.from->normal, tape.from->normal)};
    }
    std::vector<Eigen::Vector3d> line;
    for (std::size_t i = 0; i < tape.line->points.size(); ++i)
        line.emplace_back(tape.line->points[i] + outward * tape.line->normals[i]);
    return {line,
            ringAbout(line.front(), tape.line->normals.front()),
            ringAbout(line.back(), tape.line->normals.back())};
}

std::vector<Eigen::Vector2d> tapeOnMap(const Tape& tape, const GirthMap& map) {
    if (!tape.line)
        return tape.from ? std::vector{map.place(tape.from->point)} : std::vector<Eigen::Vector2d>();
    std::vector<Eigen::Vector2d> line;
    for (const Eigen::Vector3d& p : tape.line->points)
        line.push_back(map.place(p));
    return line;
}

QString tapeText(const Tape& tape, core::Units first) {
    if (!tape.from)
        return Wording::tr(
            "Where does the tape begin? Click the boat or the map, or move the mark on the map "
            "with the arrows and press Enter.");
    if (!tape.line)
        return Wording::tr("And where does it end?");
    const QString says =
        Wording::tr(
            "%1 along the planking, in the middle of its thickness: %2 along the boat, %3 around her.")
            .arg(inBoth(tape.line->length, first),
                 inBoth(tape.line->along, first),
                 inBoth(tape.line->around, first));
    return tape.line->onHull
               ? says
               : says + u' ' + Wording::tr("The straight way runs past the planking's edge in between.");
}

} // namespace sheerlay::ui

#pragma once

#include "ui/scene/boat.hpp"

#include <Eigen/Core>

#include <algorithm>
#include <cmath>
#include <memory>
#include <numbers>
#include <string>
#include <vector>

namespace sheerlay::test {

/// A boat known in closed form: the lower half of a spheroid, planked in rows of equal girth below the sheer.
/// Every section is a half circle, so girths, areas and places of strips can be checked by formula. Not a
/// plan anybody would build.
struct Spheroid {
    double halfLength = 2000.0; ///< mm
    double radius = 400.0;      ///< mm amidships: half beam and depth
    double cover = 40.0;        ///< mm of girth a row covers

    [[nodiscard]] double radiusAt(double x) const {
        const double t = (x - halfLength) / halfLength;
        return radius * std::sqrt(std::max(0.0, 1.0 - t * t));
    }
    /// Point at a girth below the sheer; z up, sheer at z = 0.
    [[nodiscard]] Eigen::Vector3d at(double x, double girth) const {
        const double r = radiusAt(x);
        const double angle = r > 0.0 ? girth / r : 0.0;
        return {x, r * std::cos(angle), -r * std::sin(angle)};
    }
    [[nodiscard]] Eigen::Vector3d normalAt(const Eigen::Vector3d& p) const {
        const double a2 = halfLength * halfLength;
        const double r2 = radius * radius;
        return Eigen::Vector3d((p.x() - halfLength) / a2, p.y() / r2, p.z() / r2).normalized();
    }
    [[nodiscard]] std::vector<Eigen::Vector3d> section(double x, int points) const {
        std::vector<Eigen::Vector3d> line;
        const double half = 0.5 * std::numbers::pi * radiusAt(x);
        if (half <= 0.0)
            return line;
        for (int i = 0; i < points; ++i)
            line.push_back(at(x, half * i / (points - 1)));
        return line;
    }
    /// x between which the half girth is more than `girth`.
    [[nodiscard]] double reach(double girth) const {
        const double part = girth / (0.5 * std::numbers::pi * radius);
        return halfLength * std::sqrt(std::max(0.0, 1.0 - part * part));
    }
    [[nodiscard]] int rows() const { return static_cast<int>(0.5 * std::numbers::pi * radius / cover); }
};

namespace detail {

inline std::vector<Eigen::Vector3d> rowLine(const Spheroid& hull, double girth) {
    const double reach = 0.995 * hull.reach(girth);
    std::vector<Eigen::Vector3d> line;
    constexpr int steps = 160;
    for (int i = 0; i <= steps; ++i) {
        const double x = hull.halfLength + reach * (2.0 * i / steps - 1.0);
        line.push_back(hull.at(x, girth));
    }
    return line;
}

inline core::Strip makeStrip(const Spheroid& hull, int row, core::Side side) {
    core::Strip strip;
    const bool port = side == core::Side::Port;
    strip.id = std::string(port ? "P" : "S") + (row < 10 ? "0" : "") + std::to_string(row);
    strip.side = side;
    strip.row = row;
    strip.upperEdge = rowLine(hull, (row - 1) * hull.cover);
    strip.lowerEdge = rowLine(hull, row * hull.cover);
    strip.middle = rowLine(hull, (row - 0.5) * hull.cover);
    for (const Eigen::Vector3d& p : strip.middle)
        strip.middleNormal.push_back(hull.normalAt(p));
    if (port) {
        for (auto* line : {&strip.upperEdge, &strip.lowerEdge, &strip.middle, &strip.middleNormal})
            for (Eigen::Vector3d& p : *line)
                p.y() = -p.y();
    }
    strip.length = 2.0 * hull.reach((row - 0.5) * hull.cover);
    strip.cutLength = strip.length + 60.0;
    strip.widths = {{0.0, hull.cover}, {strip.length, hull.cover}};
    strip.edgeBend.maxAbs = 0.049e-3 * row; // the classes change after rows 3, 6 and 9
    strip.edgeBend.signedMax = strip.edgeBend.maxAbs;
    strip.edgeBend.minRadius = 1.0 / strip.edgeBend.maxAbs;
    strip.edgeBend.atX = 300.0;
    strip.edgeBend.force = 20.0;
    strip.twistMax = 0.2e-3;
    strip.ends[0].end = core::End::Bow;
    strip.ends[1].end = core::End::Stern;
    for (std::size_t i = 0; i < 2; ++i) {
        const Eigen::Vector3d p = i == 0 ? strip.middle.front() : strip.middle.back();
        strip.ends[i].x = p.x();
        strip.ends[i].z = p.z();
        strip.ends[i].on = row > 10 ? core::EndsOn::Keel : core::EndsOn::Stem;
        strip.ends[i].lap = row > 10 ? 0.0 : 12.0;
    }
    strip.order = 2 * (row - 1) + (port ? 2 : 1);
    return strip;
}

} // namespace detail

/// The spheroid planked with laying order starboard, port, row by row; the last row is the shutter (two
/// pieces); the middle of every tenth row starts a new class of edge bend. Landmarks: weave to row 10,
/// closing from row 11.
inline std::shared_ptr<const ui::Boat> fakeBoat(const Spheroid& hull = {}) {
    core::Project project;
    project.name = "Spheroid";
    core::LoftedHull lofted;
    lofted.laidHeight = 0.5 * project.strips.thickness;
    lofted.laid.length = 2.0 * hull.halfLength;
    lofted.laid.beam = 2.0 * hull.radius;
    for (int i = 0; i <= 100; ++i) {
        const double x = 2.0 * hull.halfLength * i / 100;
        lofted.laid.sheer.push_back(hull.at(x, 0.0));
        lofted.laid.profile.emplace_back(x, 0.0, -hull.radiusAt(x));
    }
    for (int i = 1; i < 10; ++i)
        lofted.stationX.push_back(0.2 * hull.halfLength * i);
    core::Plan plan;
    plan.coverWidth = project.strips.coverWidth;
    plan.lastRow = hull.rows();
    for (int row = 1; row <= plan.lastRow; ++row) {
        for (const core::Side side : {core::Side::Starboard, core::Side::Port}) {
            plan.strips.push_back(detail::makeStrip(hull, row, side));
            if (row == plan.lastRow)
                plan.strips.back().kind = core::StripKind::Shutter;
        }
    }
    plan.marks.weaveBow = core::RowRange{1, 10};
    plan.marks.weaveStern = core::RowRange{1, 10};
    plan.marks.closingBow = 11;
    plan.marks.closingStern = 11;
    plan.findings = {{core::Level::Note, "fake-note", std::nullopt, std::nullopt, "A note."},
                     {core::Level::Caution, "fake-caution", "P03", 1000.0, "A caution."},
                     {core::Level::Stop, "fake-stop", "S12", 700.0, "A stop."}};
    ui::HullSections sections;
    sections.moulds = [hull](double x) { return hull.section(x, 40); };
    sections.laid = [hull](double x) { return hull.section(x, 200); };
    return ui::makeBoat(project, lofted, plan, sections);
}

} // namespace sheerlay::test

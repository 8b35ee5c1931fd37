#pragma once

#include "core/project/project.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <random>
#include <string>
#include <vector>

/// Invented hulls by the hundred: a family of formulas (closing.md section 10, with tumblehome and
/// asymmetry), read off like a table and rounded like one.
namespace sheerlay::test {

struct HullShape {
    double halfLength = 2200, halfBreadth = 400, rocker = 20, stemHeight = 350, stemPower = 12;
    double sheer = 280, sheerRise = 70, endRise = 60; // sheer height amidships and its rise to the ends
    double deadrise = 0.02, endDeadrise = 2.6, floor = 1000, fullness = 4, taperOff = 0.95;
    double tumblehome = 0, asymmetry = 0;
    double stemPush = 0; // ends pushed outward below the heads: near plumb to recurved stems
    double siding = 0;   // half of it: planking ends this far from the centreplane

    [[nodiscard]] double xi(double x) const {
        const double q = x / halfLength;
        return q + asymmetry * (1 - q * q);
    }
    [[nodiscard]] double keel(double x) const {
        const double q = xi(x);
        return rocker * q * q + stemHeight * std::pow(std::abs(q), stemPower);
    }
    [[nodiscard]] double sheerAt(double x) const {
        const double q = xi(x);
        return sheer + sheerRise * q * q + endRise * std::pow(q, 6);
    }
    /// x of the point at height z of what the formula draws at t.
    [[nodiscard]] double pushed(double t, double z) const {
        const double below = std::max(0.0, 1 - z / sheerAt(t));
        return t + std::copysign(stemPush * std::pow(below, 1.5) * std::pow(std::abs(xi(t)), 8), t);
    }
    /// Point of the formula's own section t, `along` mm from the centreplane before the turn of the bilge.
    [[nodiscard]] std::array<double, 3> point(double t, double along) const {
        const double q = xi(t);
        const double slope = (keel(t + 0.01) - keel(t - 0.01)) / 0.02;
        const double a = deadrise + endDeadrise * q * q * q * q;
        const double hollow = (1 - 0.8 * std::min(q * q, 1.0)) / floor;
        const double B = std::max(halfBreadth * (1 - taperOff * q * q), 4.0);
        const double z = keel(t) + std::sqrt(1 + slope * slope) * (a * along + along * along * hollow / 2);
        double y = along / std::pow(1 + std::pow(along / B, fullness), 1 / fullness);
        const double reach = std::max(0.0, 1 - q * q);
        y *= 1 - tumblehome * reach * reach * std::pow(z / sheer, 3);
        return {pushed(t, z), y, z};
    }
    /// The t between amidships and the head whose point `along` stands at x.
    [[nodiscard]] double drawnAt(double x, double along, double end) const {
        if (stemPush == 0)
            return x;
        double in = 0, out = end;
        for (int i = 0; i < 40; ++i) {
            const double t = 0.5 * (in + out);
            (std::abs(point(t, along)[0]) < std::abs(x) ? in : out) = t;
        }
        return in;
    }
    /// Half section at x as (half-breadth, height) from keel to sheer; empty past the stems.
    [[nodiscard]] std::vector<std::array<double, 2>> section(double x) const {
        std::vector<std::array<double, 2>> points;
        const double end = stemPush > 0 ? head(x).value_or(x) : x;
        for (double along = siding; along < 4000; along += along < 30 ? 1 : 4) {
            const double t = drawnAt(x, along, end);
            const auto p = point(t, along);
            if (along == siding && p[2] >= sheerAt(t))
                return {};
            points.push_back({p[1], p[2]});
            if (p[2] >= sheerAt(t))
                return points;
        }
        return {};
    }
    /// Where keel (or the side of it) and sheer meet, on the side of `sign`.
    [[nodiscard]] std::optional<double> head(double sign) const {
        for (double t = 0; std::abs(t) < 1.15 * halfLength; t += std::copysign(1.0, sign))
            if (point(t, siding)[2] > sheerAt(t))
                return t;
        return std::nullopt;
    }
    /// mm the stem reaches out past its head, on the side of `sign`.
    [[nodiscard]] double overhang(double sign) const {
        const double end = head(sign).value_or(0);
        double most = 0;
        for (double part = 0.8; part < 1; part += 0.005)
            most = std::max(most, std::abs(point(part * end, siding)[0]) - std::abs(end));
        return most;
    }
};

/// Value of a section at a coordinate: index 1 asked at index 0, or the other way.
[[nodiscard]] inline std::optional<double>
readOff(const std::vector<std::array<double, 2>>& section, std::size_t at, double value) {
    for (std::size_t i = 1; i < section.size(); ++i)
        if (section[i - 1][at] < value && section[i][at] >= value) {
            const double f = (value - section[i - 1][at]) / (section[i][at] - section[i - 1][at]);
            return section[i - 1][1 - at] + f * (section[i][1 - at] - section[i - 1][1 - at]);
        }
    return std::nullopt;
}

/// The hull as a table of offsets, x from the bow's head.
[[nodiscard]] inline std::optional<core::Project> tableOf(const HullShape& shape,
                                                          double spacing,
                                                          double unit,
                                                          std::optional<double> transomAt = {},
                                                          double rake = 0) {
    const auto bow = shape.head(-1);
    const auto stern = shape.head(1);
    if (!bow || !stern)
        return std::nullopt;
    core::Project p;
    p.hull.roundedTo = unit;
    const auto rounded = [unit](double v) { return std::round(v / unit) * unit; };
    std::vector<double> xs{*bow * 0.94};
    if (!transomAt)
        xs.push_back(*stern * 0.94);
    for (double x = std::ceil(*bow / spacing) * spacing; x < *stern; x += spacing)
        if (!transomAt || x < *transomAt + 1.01 * spacing)
            xs.push_back(x);
    std::sort(xs.begin(), xs.end());
    double last = -1e9;
    for (const double x : xs) {
        if (x - last < 60 || x < *bow + 25 || x > *stern - 25)
            continue;
        const auto section = shape.section(x);
        if (section.size() < 20)
            continue;
        last = x;
        core::Station s;
        s.x = x - *bow;
        s.printedX = std::to_string(static_cast<int>(s.x));
        const double zs = shape.sheerAt(x), zk = section.front()[1];
        const double ys = readOff(section, 1, zs).value_or(section.back()[0]);
        s.sheer = {core::PointKind::Sheer, rounded(ys), rounded(zs), "", "", 0};
        s.keel = core::TablePoint{core::PointKind::Keel, 0, rounded(zk), "", "", 0};
        double widest = 0;
        for (const auto& q : section)
            widest = std::max(widest, q[0]);
        for (double z = 25; z < 700; z += z < 100 ? 25 : 50)
            if (z > zk + 3 && z < zs - 3)
                if (const auto y = readOff(section, 1, z); y && *y > 2)
                    s.points.push_back({core::PointKind::Waterline, rounded(*y), z, "", "", 0});
        for (double y = 75; y < 0.9 * widest; y += 75)
            if (const auto z = readOff(section, 0, y); z && *z < zs - 3)
                s.points.push_back({core::PointKind::Buttock, y, rounded(*z), "", "", 0});
        p.hull.stations.push_back(s);
    }
    p.hull.halfSiding = shape.siding;
    const auto stem = [&](double head) {
        for (int i = 0; i < 8; ++i) {
            const double part = shape.stemPush > 0 ? std::pow(i / 7.0, 1.6) : i / 7.0; // closer at the head
            const auto at = shape.point(head * (1 - 0.25 * part), shape.siding);
            p.hull.profile.push_back({rounded(at[0] - *bow), rounded(at[2]), {}, 0});
        }
    };
    stem(*bow);
    if (transomAt)
        p.hull.transoms.push_back({core::End::Stern, *transomAt - *bow, *transomAt - *bow - rake, 0});
    else
        stem(*stern);
    return p;
}

} // namespace sheerlay::test

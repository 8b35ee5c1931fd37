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
    /// Half section as (half-breadth, height) from keel to sheer; empty past the stems.
    [[nodiscard]] std::vector<std::array<double, 2>> section(double x) const {
        const double q = xi(x);
        const double slope = (keel(x + 0.01) - keel(x - 0.01)) / 0.02;
        const double c = std::sqrt(1 + slope * slope);
        const double a = deadrise + endDeadrise * q * q * q * q;
        const double hollow = (1 - 0.8 * std::min(q * q, 1.0)) / floor;
        const double B = std::max(halfBreadth * (1 - taperOff * q * q), 4.0);
        const double zk = keel(x);
        const double zs = sheerAt(x);
        std::vector<std::array<double, 2>> points{{0, zk}};
        if (zk >= zs)
            return {};
        const double reach = std::max(0.0, 1 - q * q);
        for (double along = 1; along < 4000; along += 1) {
            const double z = zk + c * (a * along + along * along * hollow / 2);
            double y = along / std::pow(1 + std::pow(along / B, fullness), 1 / fullness);
            y *= 1 - tumblehome * reach * reach * std::pow(z / sheer, 3);
            points.push_back({y, z});
            if (z >= zs)
                return points;
        }
        return {};
    }
    /// Where keel and sheer meet, on the side of `sign`.
    [[nodiscard]] std::optional<double> head(double sign) const {
        for (double x = 0; std::abs(x) < 1.15 * halfLength; x += sign)
            if (keel(x) > sheerAt(x))
                return x;
        return std::nullopt;
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
        const double zs = shape.sheerAt(x);
        s.sheer = {core::PointKind::Sheer, rounded(*readOff(section, 1, zs)), rounded(zs), "", "", 0};
        s.keel = core::TablePoint{core::PointKind::Keel, 0, rounded(shape.keel(x)), "", "", 0};
        double widest = 0;
        for (const auto& q : section)
            widest = std::max(widest, q[0]);
        for (double z = 25; z < 700; z += z < 100 ? 25 : 50)
            if (z > shape.keel(x) + 3 && z < zs - 3)
                if (const auto y = readOff(section, 1, z); y && *y > 2)
                    s.points.push_back({core::PointKind::Waterline, rounded(*y), z, "", "", 0});
        for (double y = 75; y < 0.9 * widest; y += 75)
            if (const auto z = readOff(section, 0, y); z && *z < zs - 3)
                s.points.push_back({core::PointKind::Buttock, y, rounded(*z), "", "", 0});
        p.hull.stations.push_back(s);
    }
    for (int i = 0; i < 8; ++i) {
        const double x = *bow * (1 - 0.25 * i / 7);
        p.hull.profile.push_back({rounded(x - *bow), rounded(shape.keel(x)), {}, 0});
    }
    if (transomAt)
        p.hull.transoms.push_back({core::End::Stern, *transomAt - *bow, *transomAt - *bow - rake, 0});
    else
        for (int i = 0; i < 8; ++i) {
            const double x = *stern * (0.75 + 0.25 * i / 7);
            p.hull.profile.push_back({rounded(x - *bow), rounded(shape.keel(x)), {}, 0});
        }
    return p;
}

/// A plausible boat from a seed: canoe, kayak bottom, transom skiff, tumblehome, flat or V bottom; start
/// line, strip, tapers and closing drawn by lot too.
[[nodiscard]] inline std::optional<core::Project> randomBoat(unsigned seed) {
    std::mt19937 random(seed);
    const auto between = [&](double a, double b) {
        return a + (b - a) * (static_cast<double>(random()) / 4294967296.0);
    };
    const auto one = [&](std::initializer_list<double> list) {
        return *(list.begin() + random() % list.size());
    };
    enum Kind { Canoe, Kayak, Skiff, Tumblehome, Flat, Vee };
    const auto kind = static_cast<Kind>(random() % 6);
    const bool open = kind == Skiff || kind == Flat || kind == Vee;
    HullShape h;
    h.halfLength = between(1600, 2700);
    h.halfBreadth = kind == Kayak ? between(220, 300) : open ? between(450, 620) : between(330, 480);
    h.rocker = between(5, 40);
    h.stemHeight = between(250, 480);
    h.stemPower = one({10, 12, 14});
    h.sheer = kind == Kayak ? between(180, 240) : open ? between(330, 430) : between(240, 330);
    h.sheerRise = between(30, 120);
    h.endRise = between(0, 120);
    h.deadrise = kind == Vee ? between(0.05, 0.2) : kind == Flat ? 0.0 : between(0, 0.05);
    h.endDeadrise = between(2, 3.3);
    h.floor = kind == Flat ? 4000 : between(700, 1500);
    h.fullness = kind == Flat ? 5 : one({3, 4, 5});
    h.tumblehome = kind == Tumblehome ? between(0.03, 0.08) : 0;
    h.taperOff = between(0.94, 0.965);
    h.asymmetry = between(-0.06, 0.06);
    std::optional<double> transom;
    double rake = 0;
    if (const auto stern = h.head(1); open && stern && random() % 5 < 3) {
        transom = between(0.55, 0.8) * *stern;
        rake = random() % 2 ? between(20, 90) : 0;
    }
    auto p = tableOf(h, one({250, 300, 304.8, 400}), one({0.5, 1.0, 1.5875}), transom, rake);
    if (!p)
        return p;
    p->name = "Seed " + std::to_string(seed);
    p->strips.coverWidth = one({15.875, 17, 19.05});
    p->strips.width = p->strips.coverWidth + 2;
    p->planking.layOn = static_cast<core::LayOn>(random() % 3);
    if (random() % 2) {
        p->planking.start.kind = core::StartLine::Kind::Geodesic;
        p->planking.start.girth = between(0, 0.55) * (h.sheer + h.halfBreadth);
    }
    if (random() % 3 == 0) {
        p->planking.taper = random() % 3 ? core::Taper::Anywhere : core::Taper::Ends;
        p->planking.edgeBendRadius = 1000 / between(0.18, 0.32);
    }
    p->planking.closing = std::array{core::ClosingMethod::BothSides,
                                     core::ClosingMethod::BothSides,
                                     core::ClosingMethod::RunOver,
                                     core::ClosingMethod::SplitBottom}[random() % 4];
    return p;
}

} // namespace sheerlay::test

#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"
#include "core/project/project.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>
#include <vector>

namespace sheerlay::test {

/// What a strip of the made-up planking is like; lengths mm.
struct FakeStrip {
    std::string id = "S01";
    core::Side side = core::Side::Starboard;
    int row = 1, order = 1;
    double length = 4800.0;
    double width = 15.875;
    double endWidth = 15.875; ///< width at both ends; between them it swells as a sine
    double edgeBend = 0.0;    ///< 1/mm, the same all along
    double cut = 1.0;         ///< rad, at both ends
    double firstX = 0.0;      ///< x of the bow end; x grows by one mm per mm of length
    core::StripKind kind = core::StripKind::Full;
};

inline double fakeWidth(const FakeStrip& f, double s) {
    return f.endWidth +
           (f.width - f.endWidth) * std::sin(std::numbers::pi * std::clamp(s / f.length, 0.0, 1.0));
}

/// Point of the flat strip: along a circle of curvature edgeBend, turned onto its chord.
inline Eigen::Vector2d fakePoint(const FakeStrip& f, double s, double across) {
    const double k = f.edgeBend, half = f.length / 2, turn = k * (s - half);
    if (std::abs(k) < 1e-12)
        return {s, across};
    const double chordHalf = std::sin(k * half) / k, rise = (1.0 - std::cos(k * half)) / k;
    return Eigen::Vector2d(std::sin(turn) / k + chordHalf, (1.0 - std::cos(turn)) / k - rise) +
           across * Eigen::Vector2d(-std::sin(turn), std::cos(turn));
}

/// A strip on a circular arc, with straight slanted ends, the upper edge the longer.
inline core::Strip makeFakeStrip(const FakeStrip& f) {
    core::Strip strip;
    strip.id = f.id;
    strip.side = f.side;
    strip.row = f.row;
    strip.order = f.order;
    strip.kind = f.kind;
    strip.length = f.length;
    const double slant = f.endWidth / 2 / std::tan(f.cut), lap = f.row <= 12 ? 12.0 + f.row : 0.0;
    strip.cutLength = f.length + 2 * (slant + lap + 3.2);
    const int steps = std::max(4, static_cast<int>(f.length / 25.0));
    const auto outline = [&](double from, double to, double sign) {
        for (int i = 0; i <= steps; ++i) {
            const double s = from + (to - from) * i / steps;
            Eigen::Vector2d p = fakePoint(f, s, sign * fakeWidth(f, s) / 2);
            if (f.side == core::Side::Port)
                p.y() = -p.y();
            strip.outline.push_back(p);
        }
    };
    outline(-slant, f.length + slant, -1.0);
    strip.outlineUpperCount = strip.outline.size();
    outline(f.length - slant, slant, 1.0);
    for (int i = 0; i <= steps; ++i) {
        core::StripSample sample;
        sample.s = f.length * i / steps;
        sample.x = f.firstX + sample.s;
        sample.width = fakeWidth(f, sample.s);
        sample.edgeBend = f.edgeBend;
        strip.samples.push_back(sample);
        strip.widths.push_back({sample.s, sample.width});
        strip.middle.emplace_back(sample.x, 400.0, 300.0 - 10.0 * f.row);
        strip.middleNormal.emplace_back(0.0, 1.0, 0.0);
    }
    strip.edgeBend.maxAbs = std::abs(f.edgeBend);
    strip.edgeBend.signedMin = std::min(0.0, f.edgeBend);
    strip.edgeBend.signedMax = std::max(0.0, f.edgeBend);
    if (f.edgeBend != 0.0)
        strip.edgeBend.minRadius = 1.0 / std::abs(f.edgeBend);
    strip.edgeBend.atX = f.firstX + f.length / 2;
    strip.edgeBend.force = 28.2e6 * std::abs(f.edgeBend) / 305.0; // EI kappa over one bay
    strip.twistMax = 0.8e-3;
    strip.twistAtX = f.firstX + 220.0;
    strip.bendMinRadius = 1900.0;
    strip.bendAtX = f.firstX + f.length / 3;
    strip.strainMax = std::min(0.95, 0.2 + 1500.0 * std::abs(f.edgeBend));
    strip.strainAtX = strip.edgeBend.atX;
    for (const core::End end : {core::End::Bow, core::End::Stern}) {
        core::StripEnd& e = strip.ends[end == core::End::Bow ? 0 : 1];
        e.end = end;
        e.on = lap > 0.0 ? core::EndsOn::Stem : core::EndsOn::Keel;
        e.x = end == core::End::Bow ? f.firstX : f.firstX + f.length;
        e.cut = f.cut;
        e.bevel = 0.38;
        e.lap = e.lapOuter = lap;
    }
    return strip;
}

struct FakeBoat {
    core::Project project;
    core::LoftedHull hull;
    core::Plan plan;
};

/// Twenty rows of an invented hull, port the mirror of starboard, two pieces of filler above the start on
/// each side and one closing plank over both. Numbers are plausible, not true.
inline FakeBoat makeFakeBoat(int rows = 20) {
    FakeBoat boat;
    boat.project.name = "Reed Warbler";
    boat.plan.coverWidth = boat.project.strips.coverWidth;
    boat.hull.laid.length = 4870.0;
    boat.hull.laid.beam = 860.0;
    boat.hull.laid.halfGirthMaxX = 2435.0;
    for (int i = 0; i < 17; ++i) {
        core::Station station;
        station.x = 304.8 * i;
        station.printedX = std::to_string(i) + "-0-0";
        boat.project.hull.stations.push_back(station);
        boat.hull.stationX.push_back(station.x + 5.0);
    }
    core::Plan& plan = boat.plan;
    plan.firstRow = -1;
    plan.lastRow = rows + 1;
    int order = 1;
    const auto add = [&](FakeStrip f, const std::string& number) {
        for (const core::Side side : {core::Side::Starboard, core::Side::Port}) {
            f.side = side;
            f.id = std::string(1, side == core::Side::Starboard ? 'S' : 'P').append(number);
            f.order = order++;
            plan.strips.push_back(makeFakeStrip(f));
        }
    };
    for (int row = 1; row <= rows; ++row) {
        FakeStrip f;
        f.row = row;
        f.length = 4850.0 - 3.0 * row * row;
        f.firstX = 2435.0 - f.length / 2;
        f.edgeBend = (-0.25 + 0.72 * row / rows) * 1e-3;
        f.cut = 0.95 - 0.8 * row / rows;
        if (row % 7 == 0) {
            f.kind = core::StripKind::Tapered;
            f.endWidth = 11.0;
        }
        std::string number = std::to_string(row);
        if (row < 10)
            number.insert(number.begin(), '0');
        add(f, number);
    }
    for (const int piece : {1, 2}) {
        FakeStrip f;
        f.row = -1;
        f.kind = core::StripKind::Filler;
        f.length = 700.0;
        f.firstX = piece == 1 ? 40.0 : 4130.0;
        f.cut = 0.5;
        add(f, "-01." + std::to_string(piece));
    }
    FakeStrip shutter;
    shutter.id = "C" + std::to_string(rows + 1);
    shutter.side = core::Side::Centre;
    shutter.row = rows + 1;
    shutter.order = order;
    shutter.kind = core::StripKind::Shutter;
    shutter.length = 1210.0;
    shutter.firstX = 2435.0 - 605.0;
    shutter.width = 12.4;
    shutter.endWidth = 0.6;
    shutter.cut = std::numbers::pi / 2;
    plan.strips.push_back(makeFakeStrip(shutter));

    plan.marks.weaveBow = plan.marks.weaveStern = core::RowRange{1, std::min(12, rows)};
    plan.marks.closingBow = plan.marks.closingStern = std::min(13, rows);
    plan.findings = {{core::Level::Caution,
                      "edge-bend-hard",
                      "S19",
                      2435.0,
                      "S19 needs two people between stations 7-0-0 and 9-0-0; plane its lower edge to 14.2 "
                      "mm there and the "
                      "strips below come easier."},
                     {core::Level::Note,
                      "keel-landing",
                      "S13",
                      300.0,
                      "From S13 on the ends land on the centreline; keep a straight edge along it."}};
    boat.hull.findings = {
        {core::Level::Note,
         "loft-residual",
         std::nullopt,
         914.4,
         "The loft lies 1.2 mm outside the table at station 3-0-0; that is within its last digit."}};
    return boat;
}

} // namespace sheerlay::test

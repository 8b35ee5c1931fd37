#pragma once

#include "tests/support/random_hull.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <random>
#include <string>

/// Invented boats by the hundred: a random hull with everything that decides how she is planked.
namespace sheerlay::test {

class Lots {
public:
    explicit Lots(unsigned seed) : m_random(seed) {}
    [[nodiscard]] double between(double a, double b) {
        return a + (b - a) * (static_cast<double>(m_random()) / 4294967296.0);
    }
    [[nodiscard]] double one(std::initializer_list<double> list) {
        return *(list.begin() + m_random() % list.size());
    }
    [[nodiscard]] unsigned below(unsigned n) { return static_cast<unsigned>(m_random() % n); }

private:
    std::mt19937 m_random;
};

enum class BoatKind { Canoe, Kayak, Skiff, Tumblehome, Flat, Vee };

[[nodiscard]] inline bool isOpen(BoatKind kind) {
    return kind == BoatKind::Skiff || kind == BoatKind::Flat || kind == BoatKind::Vee;
}

[[nodiscard]] inline HullShape randomShape(BoatKind kind, Lots& lots) {
    const bool open = isOpen(kind), kayak = kind == BoatKind::Kayak, flat = kind == BoatKind::Flat;
    HullShape h;
    h.halfLength = lots.between(1600, 2700);
    h.halfBreadth = kayak ? lots.between(220, 300) : open ? lots.between(450, 620) : lots.between(330, 480);
    h.rocker = lots.between(5, 40);
    h.stemHeight = lots.between(250, 480);
    h.stemPower = lots.one({10, 12, 14});
    h.sheer = kayak ? lots.between(180, 240) : open ? lots.between(330, 430) : lots.between(240, 330);
    h.sheerRise = lots.between(30, 120);
    h.endRise = lots.between(0, 120);
    h.deadrise = kind == BoatKind::Vee ? lots.between(0.05, 0.2) : flat ? 0.0 : lots.between(0, 0.05);
    h.endDeadrise = lots.between(2, 3.3);
    h.floor = flat ? 4000 : lots.between(700, 1500);
    h.fullness = flat ? 5 : lots.one({3, 4, 5});
    h.tumblehome = kind == BoatKind::Tumblehome ? lots.between(0.03, 0.08) : 0;
    h.taperOff = lots.between(0.94, 0.965);
    h.asymmetry = lots.between(-0.06, 0.06);
    return h;
}

/// Pushes the stems out until they reach `past` mm beyond their heads; 0: plumb somewhere.
inline void recurve(HullShape& shape, double past) {
    double low = 0, high = 4000;
    for (int i = 0; i < 12; ++i) {
        shape.stemPush = 0.5 * (low + high);
        (std::max(shape.overhang(-1), shape.overhang(1)) < past ? low : high) = shape.stemPush;
    }
}

/// Where she starts and how her strips may be narrowed. @param girth  mm, about half of hers
inline void drawPlanking(core::Planking& planking, double coverWidth, double girth, Lots& lots) {
    if (planking.start.kind == core::StartLine::Kind::Geodesic && lots.below(3) == 0) {
        planking.start.kind = core::StartLine::Kind::Bent;
        planking.start.edgeBend = {lots.between(-0.03, 0.03), lots.between(-0.06, 0.06), 0};
    }
    const auto style = [&] { return static_cast<core::EndStyle>(lots.below(3)); };
    planking.bowEnds = style();
    planking.sternEnds = style();
    if (planking.taper != core::Taper::None && lots.below(2) == 0) // wide strips and a low limit: stealers
        planking.narrowest = coverWidth * lots.between(0.75, 0.95);
    if (lots.below(5) == 0)
        planking.closing = core::ClosingMethod::Herringbone;
    if (lots.below(5) == 0)
        planking.shutter = {0.6, 1.0};
    if (lots.below(8) == 0)
        planking.accents.push_back({core::Accent::By::Girth, lots.between(0.1, 0.5) * girth});
}

/// A plausible boat from a seed: canoe, kayak bottom, transom skiff, tumblehome, flat or V bottom, stems
/// raked, plumb or recurved; start line, strip, tapers, ends and closing drawn by lot too.
[[nodiscard]] inline std::optional<core::Project> randomBoat(unsigned seed) {
    Lots lots(seed);
    const auto kind = static_cast<BoatKind>(lots.below(6));
    HullShape h = randomShape(kind, lots);
    const double girth = h.sheer + h.halfBreadth;
    std::optional<double> transom;
    double rake = 0;
    if (const auto stern = h.head(1); isOpen(kind) && stern && lots.below(5) < 3) {
        transom = lots.between(0.55, 0.8) * *stern;
        rake = lots.below(2) ? lots.between(20, 90) : 0;
    }
    const double unit = lots.one({0.5, 1.0, 1.5875}), spacing = lots.one({250, 300, 304.8, 400});
    core::StripStock strips;
    strips.coverWidth = lots.one({15.875, 17, 19.05});
    strips.width = strips.coverWidth + 2;
    core::Planking planking;
    planking.layOn = static_cast<core::LayOn>(lots.below(3));
    if (lots.below(2)) {
        planking.start.kind = core::StartLine::Kind::Geodesic;
        planking.start.girth = lots.between(0, 0.55) * girth;
    }
    if (lots.below(3) == 0) {
        planking.taper = lots.below(3) ? core::Taper::Anywhere : core::Taper::Ends;
        planking.edgeBendRadius = 1000 / lots.between(0.18, 0.32);
    }
    planking.closing = std::array{core::ClosingMethod::BothSides,
                                  core::ClosingMethod::BothSides,
                                  core::ClosingMethod::RunOver,
                                  core::ClosingMethod::SplitBottom}[lots.below(4)];
    drawPlanking(planking, strips.coverWidth, girth, lots);
    if (lots.below(3) == 0)
        recurve(h, lots.between(0, 30));
    if (planking.bowEnds == core::EndStyle::Stem || planking.sternEnds == core::EndStyle::Stem)
        h.siding = unit * std::round(lots.between(3, 8) / unit);
    auto boat = tableOf(h, spacing, unit, transom, rake);
    if (!boat)
        return boat;
    boat->name = "Seed " + std::to_string(seed);
    boat->strips = strips;
    boat->planking = planking;
    return boat;
}

} // namespace sheerlay::test

#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"
#include "core/project/project.hpp"
#include "core/units/rounded_text.hpp"

#include <string>
#include <vector>

namespace sheerlay::core {

// In the language in force (core/words).
//
// Figures as a builder reads them, rounded to what the plan can promise: lengths 5 mm or 1/4 in
// (core/units/rounded_text), edge bend 0.01 /m, twist half a degree in a foot. Every function takes mm, 1/mm,
// rad or N as its name says.

/// A width to plane to: to the nearest 0.1 mm or 1/32 in.
[[nodiscard]] std::string widthText(double millimetres, Units units);
/// A size of stock as it was given: to 0.01 mm or 1/64 in, without idle zeros.
[[nodiscard]] std::string stockText(double millimetres, Units units);
/// A lap past the centreplane: to the nearest millimetre or 1/16 in.
[[nodiscard]] std::string lapText(double millimetres, Units units);
/// A long run of stock: metres to 1 m, feet to 1 ft, both rounded up.
[[nodiscard]] std::string runText(double millimetres, Units units);
/// A radius, two figures: "5.6 m", "18 ft".
[[nodiscard]] std::string radiusText(double millimetres, Units units);
/// Sag of the uncut edge: "95 mm over 2 m", "4 1/2\" over 8 ft"; of the edge bend as it is printed, to 0.01
/// /m.
[[nodiscard]] std::string sagText(double edgeBend, Units units);
/// The sag alone, where the length it is told over stands beside it.
[[nodiscard]] std::string bareSagText(double edgeBend, Units units);
/// "14 degrees in a foot" to the half degree, "46 degrees in a metre" to 2 degrees.
[[nodiscard]] std::string twistText(double twist, Units units);
/// "30 N (7 lb)" or "7 lb (30 N)", two figures at most.
[[nodiscard]] std::string forceText(double newtons, Units units);
/// To the nearest degree.
[[nodiscard]] std::string angleText(double radians);

/// Where x lies among the stations: "at station 48 in", "between stations 24 in and 36 in", "forward of
/// station 12 in".
class Places {
public:
    Places(const Project& project, const LoftedHull& hull);
    [[nodiscard]] std::string at(double x) const;
    /// The same where a heading says that it is of stations: "at 48 in", "between 24 in and 36 in".
    [[nodiscard]] std::string byName(double x) const;

private:
    struct Beside {
        enum class Where { Nowhere, At, Forward, Aft, Between };
        Where where = Where::Nowhere;
        std::string one = {}, other = {}; ///< names of stations
    };
    [[nodiscard]] Beside beside(double x) const;

    std::vector<std::string> m_names;
    std::vector<double> m_x;
};

/// How an end is made, in whole sentences, without naming which end it is.
/// @param pair  told on behalf of both sides; the end is starboard's
[[nodiscard]] std::string endText(const StripEnd& end, Units units, bool pair = false);

/// "bow", "stern".
[[nodiscard]] std::string toText(End end);

/// "3 strips", "1 strip".
[[nodiscard]] std::string countText(std::size_t count, const std::string& one, const std::string& many);

} // namespace sheerlay::core

#pragma once

#include "core/planking/plan.hpp"
#include "core/words/say.hpp"

#include <cmath>

namespace sheerlay::core {

/// How hard a strip is to hold to its line because of its edge bend.
enum class Difficulty { Free, Clamp, Hard, Taper };

/// Edge bends up to which strips of one width belong to each class, 1/mm.
struct BendLimits {
    double free;  ///< goes down by hand up to here
    double clamp; ///< clamps hold it up to here
    double hard;  ///< two people up to here; above: taper or pre-bend
};

/// The limits of a strip milled to this width, mm. The strain at its edge grows with the width, so a strip
/// half as wide bears twice the edge bend (closing.md section 7).
/// @source  estimates for a 3/4 x 1/4 in redcedar strip: bending moment, buckling sideways and force over one
/// mould bay
[[nodiscard]] constexpr BendLimits bendLimits(double width) noexcept {
    const double part = commonStripWidth / width;
    return {0.15e-3 * part, 0.30e-3 * part, 0.45e-3 * part};
}

inline constexpr double sagBaseInches =
    8 * 304.8; ///< mm, straight length that the sag is told over in feet and inches
inline constexpr double sagBaseMillimetres = 2000.0; ///< mm, the same in millimetres

/// Class of an edge bend; the limits belong to the easier class.
/// @param edgeBend  1/mm, either sign
/// @param width     mm, that the strip is milled to
[[nodiscard]] inline Difficulty classify(double edgeBend, double width) noexcept {
    const BendLimits limits = bendLimits(width);
    const double size = std::abs(edgeBend);
    if (size <= limits.free)
        return Difficulty::Free;
    if (size <= limits.clamp)
        return Difficulty::Clamp;
    return size <= limits.hard ? Difficulty::Hard : Difficulty::Taper;
}

/// Class of a strip by the edge bend it was planned with.
[[nodiscard]] inline Difficulty difficultyOf(const Strip& strip) noexcept {
    return classify(strip.edgeBend.maxAbs, strip.milledWidth);
}

/// One or two words for a legend or a label.
[[nodiscard]] inline const char* toText(Difficulty difficulty) noexcept {
    switch (difficulty) {
    case Difficulty::Free:
        return sayable("free");
    case Difficulty::Clamp:
        return sayable("clamp");
    case Difficulty::Hard:
        return sayable("hard");
    case Difficulty::Taper:
        break;
    }
    return sayable("taper or pre-bend");
}

/// What to do with a strip of this class, in whole sentences.
[[nodiscard]] inline const char* holdingAdvice(Difficulty difficulty) noexcept {
    switch (difficulty) {
    case Difficulty::Free:
        return sayable("It goes down by hand. One staple or one light clamp at each mould keeps it there.");
    case Difficulty::Clamp:
        return sayable(
            "Clamp it at every mould, from the middle toward the ends, and set each clamp before you pull "
            "on to the next.");
    case Difficulty::Hard:
        return sayable(
            "This takes two people, one to pull and one to clamp. Press it flat to every mould while you "
            "pull, since a strip "
            "pulled edgewise wants to roll, and leave the clamps until the glue is hard.");
    case Difficulty::Taper:
        break;
    }
    return sayable(
        "Don't force it. Taper this strip or the ones before it so that the bend comes out, or bend it "
        "wet over a form "
        "beforehand.");
}

/// How far the uncut edge lies off the middle of a straight edge: kappa L^2 / 8.
/// @param edgeBend  1/mm, either sign
/// @param base      mm, length of the straight edge; sagBaseInches or sagBaseMillimetres
/// @return          mm, >= 0; short by less than 1 percent up to 0.3 /m over 2 m
[[nodiscard]] inline double sagOver(double edgeBend, double base) noexcept {
    return std::abs(edgeBend) * base * base / 8.0;
}

} // namespace sheerlay::core

#pragma once

#include "tests/support/planked.hpp"

/// Hulls whose sheer, sections and offsets are closed forms, for parts that are fitted to a finished boat.
namespace sheerlay::test {

/// A quarter pipe whose sheer is a helix: at x it lies at the angle `rise` x / radius below the axis' level.
[[nodiscard]] core::LoftedHull helixPipe(double radius, double length, double rise);

/// A double-ender bent from a tube: every section square to her sheer is a circle of radius `tube`, her sheer
/// a level circle of radius `ring` + `tube` about a plumb axis `ring` to port of her centreplane. x = 0 is
/// amidships.
[[nodiscard]] core::LoftedHull tubeBoat(double ring, double tube);

/// Cone about the x axis, radius at the bow and its growth along x; sheer level with the axis.
[[nodiscard]] core::LoftedHull coneBoat(double radiusAtBow, double slope, double length);

/// A project that asks for a fit-out with bare faces: neither cloth nor resin on the planking.
[[nodiscard]] core::Project bareFitout();

/// For a pipe such as quarterPipe(400, 3000): gunwales, a bulkhead, a deck, a seat and a thwart.
[[nodiscard]] core::Project fittedPipe();

} // namespace sheerlay::test

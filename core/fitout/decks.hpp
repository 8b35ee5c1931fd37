#pragma once

#include "core/fitout/gunwales.hpp"

#include <optional>
#include <vector>

namespace sheerlay::core {

/// A deck's edge at one place; starboard, port mirrors it.
struct DeckPlace {
    double x = 0.0;           ///< mm from the bow
    double halfBreadth = 0.0; ///< mm, of its upper edge
    double height = 0.0;      ///< mm above the base line, of its upper edge: flush with the sheer
    double rise = 0.0;        ///< mm, of its middle over its edges
    double along = 0.0;       ///< mm over its middle from the inner edge, as the plate lies flat
    double girth = 0.0;       ///< mm over its top from the middle to the edge
    double bevel = 0.0;       ///< rad from square; + its underside is the narrower
};

/// A plate that covers an end of the boat.
struct Deck {
    DeckChoice choice;
    double innerX = 0.0;               ///< mm from the bow, of its inner edge on the drawing
    double radius = 0.0;               ///< mm it is sprung to, across the boat; 0: flat
    std::vector<DeckPlace> places;     ///< from the inner edge to the tip
    std::vector<Eigen::Vector2d> plan; ///< seen from above, closed: (mm from the inner edge, mm to starboard)
    std::vector<Eigen::Vector2d> flat; ///< the plate laid flat, likewise
    /// mm by which the edge of the boat is longer than the flat plate's (+) or shorter: what springing it to
    /// a crown and the sheer's curve at once takes out of it; 0 without a crown
    double misfit = 0.0;
    double area = 0.0; ///< mm2, of the flat plate
};

struct DeckPlan {
    std::optional<Deck> deck;
    std::vector<Finding> findings;
};

/// @param gunwale  width and stand of the inner gunwale; none: the deck goes to the planking
/// @accuracy  tests/core/fitout/decks_test.cpp: pipe, helix and circle to 0.05 mm and 0.05 degrees
[[nodiscard]] DeckPlan
planDeck(const DeckChoice& choice, const HullFaces& faces, const std::optional<GunwaleChoices>& gunwale);

} // namespace sheerlay::core

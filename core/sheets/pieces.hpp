#pragma once

#include "core/planking/difficulty.hpp"
#include "core/planking/plan.hpp"
#include "core/sheets/drawing.hpp"

#include <string>
#include <vector>

namespace sheerlay::core {

/// One strip, or a starboard and a port strip that are mirror images: what one cut sheet is about.
struct Piece {
    const Strip* strip = nullptr;  ///< the one described; starboard of a pair
    const Strip* mirror = nullptr; ///< its image on port; none for a strip on its own

    [[nodiscard]] int row() const { return strip->row; }
    [[nodiscard]] int order() const;        ///< the earlier of the two
    [[nodiscard]] std::string name() const; ///< "S07 P07"
    [[nodiscard]] bool portFirst() const;   ///< whether port is laid before starboard
    [[nodiscard]] double cutLength() const; ///< mm, of the longer of the two: the side that passes in a weave
};

/// Every strip of the plan once, in the laying order. Both sides share a piece where they differ by no more
/// than half a millimetre, in length as in every width, and end alike; which of them passes the other at a
/// woven end makes no difference.
/// @param plan  must outlive the result
[[nodiscard]] std::vector<Piece> piecesOf(const Plan& plan);

/// What sort of strip it is and for which side: "full width, one for each side".
[[nodiscard]] std::string kindWords(const Piece& piece);

/// When it is laid: "laid as 3 and 4, port first".
[[nodiscard]] std::string orderWords(const Piece& piece);

/// Names of what lies next to a piece: the pieces of a row and side, "S06 and P06", empty when there are
/// none.
[[nodiscard]] std::string namesInRow(const Plan& plan, int row, const Piece& beside);

/// Row above (-1) or below (+1) a row; there is no row 0.
[[nodiscard]] int nextRow(int row, int step) noexcept;

[[nodiscard]] Colour colourOf(Difficulty difficulty) noexcept;

} // namespace sheerlay::core

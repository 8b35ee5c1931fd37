#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"
#include "core/planking/row_cutter.hpp"
#include "core/planking/strength.hpp"

#include <stop_token>

namespace sheerlay::core {

/// What is the same for every strip of a plan.
struct LayingContext {
    const Project* project = nullptr;
    const LoftedHull* hull = nullptr;
    const TrimmedSurface* part =
        nullptr; ///< what the rows lie on and are cut by: the laid hull, or a part of it
    const Strength* strength = nullptr;
    double bay = 305.0;     ///< mm, mould spacing that forces are reckoned over
    std::stop_token stop{}; ///< asks to give up; what was laid so far is then of no use
    bool stealers = true;   ///< may be let in where tapers alone do not keep the limit
};

/// Fills in the strip's middle, samples, length, widths, edge bend, twist, bend and strain.
/// A piece cut by the sheer is bent as its uncut parent is (it is laid at full width and trimmed); a lens at
/// the bottom is bent to its uncut upper edge; any other to its middle.
void measureStrip(Strip& strip, const RowPiece& piece, const RowMesh& mesh, const LayingContext& context);

} // namespace sheerlay::core

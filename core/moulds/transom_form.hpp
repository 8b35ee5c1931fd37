#pragma once

#include "core/hull/hull.hpp"
#include "core/moulds/mould.hpp"

#include <optional>
#include <vector>

namespace sheerlay::core {

/// A flat transom as it is sawn, half, in its own plane: first coordinate y to starboard, second up along the
/// transom from the height it is hung at (`level`). Its outer face lies in the plane where the planking ends;
/// the edge is the inside of the planking.
struct TransomForm {
    End end = End::Stern;
    double thickness = 0.0;      ///< mm
    double slope = 0.0;          ///< dx/dz of its plane; 0 plumb
    double level = 0.0;          ///< mm above the base line where the second coordinate is 0
    double xAtSheer = 0.0;       ///< mm from the bow, outer face at the sheer
    double sheerHeight = 0.0;    ///< mm above the base line, the same point
    std::vector<EdgePoint> edge; ///< outer face, sheer to keel; bevel - where the hull is fuller inside
    std::vector<Eigen::Vector2d> inside; ///< the same edge on the inner face, sheer to keel

    /// rad from plumb; + when its foot, the keel, lies further aft than its head.
    [[nodiscard]] double rake() const noexcept;
    /// Whether the inner face reaches beyond the outer one, so that the board is sawn to the inner line.
    [[nodiscard]] bool fullerInside() const;
};

/// @return none where the hull has no transom at this end, or its plane doesn't close there
/// @accuracy  0.02 mm against a pipe cut askew, tests/core/moulds/transom_form_test.cpp
[[nodiscard]] std::optional<TransomForm> transomForm(const Project& project, const LoftedHull& hull, End end);

} // namespace sheerlay::core

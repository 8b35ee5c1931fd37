#pragma once

#include "core/moulds/mould_set.hpp"
#include "geometry/board.hpp"

#include <string>
#include <vector>

namespace sheerlay::core {

struct NamedBoard {
    std::string name;
    geometry::Board board;
};

/// Everything the planking is bent over as it is sawn, square-edged and in its place under the boat: moulds
/// bow to stern with legs and feet, two halves of those that stand against a stem form, then stem forms and
/// transoms. The outline is that of the governing face, of a transom that of its fuller face; what is planed
/// off to the bevel is still on. Edges are smooth lines within 0.02 mm of it.
[[nodiscard]] std::vector<NamedBoard> mouldBoards(const MouldSet& set);

} // namespace sheerlay::core

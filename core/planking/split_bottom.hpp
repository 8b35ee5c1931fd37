#pragma once

#include "core/planking/measures.hpp"
#include "core/planking/plan.hpp"
#include "core/planking/row_width.hpp"
#include "core/planking/stealer_bands.hpp"
#include "geometry/graph_edge.hpp"

#include <optional>
#include <vector>

namespace sheerlay::core {

/// Where the rows from the start give way to a bottom planked by itself.
struct SplitChoice {
    int row = 0;           ///< first row of the bottom
    double topsides = 0.0; ///< 1/mm, worst edge bend of the rows above
    double bottom = 0.0;   ///< 1/mm, worst edge bend of the bottom's own rows
};

/// Lays the rows below the start as far as row m - 1 and the rest as strips parallel to the centreline,
/// pointed against the lower edge of row m - 1. Bottom rows are numbered on from m; the last lies along the
/// centreline. m is the first row whose bottom strips bend no more than the limit and the topsides allow.
/// @param master, widths, bands  the line to go on from and the widths of the rows below it
/// @param first           number of the first of them; with a start line 1
/// @param plan            takes the strips; `splitRow` is set
/// @return the choice; none, and a plan left as it was, where no bottom can be split off (rows that never
/// land on the keel)
/// @source closing.md section 4 (d)
[[nodiscard]] std::optional<SplitChoice> laySplit(const geometry::EvenMaster& master,
                                                  const std::vector<RowWidth>& widths,
                                                  const std::vector<Band>& bands,
                                                  const LayingContext& context,
                                                  Plan& plan,
                                                  int first = 1);

} // namespace sheerlay::core

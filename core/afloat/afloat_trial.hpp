#pragma once

#include "core/afloat/afloat.hpp"
#include "core/afloat/float_body.hpp"

#include <vector>

namespace sheerlay::core {

/// One boat to be floated again and again with other loads, as while a paddler is dragged: what does not hang
/// on the loads is reckoned once. A value; may be asked from any thread.
class AfloatTrial {
public:
    /// @param choices  water and freeboard; its loads are not used
    /// @param units    of findings
    AfloatTrial(const AfloatChoices& choices,
                Units units,
                const TrimmedSurface& outside,
                const WeightSheet& weights);

    /// How she floats with these aboard.
    [[nodiscard]] AfloatReport with(const std::vector<WeightItem>& loads) const;

private:
    FloatBody m_body;
    AfloatReport m_empty; ///< what all loads share
    Units m_units;
};

} // namespace sheerlay::core

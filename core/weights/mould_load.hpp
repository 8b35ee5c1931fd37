#pragma once

#include "core/covering/covering.hpp"
#include "core/covering/glue.hpp"
#include "core/moulds/mould_set.hpp"
#include "core/weights/weights.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// What one mould carries.
struct MouldLoad {
    std::string mould;
    double x = 0.0;     ///< mm from the bow
    double hull = 0.0;  ///< kg of the hull that rests on it
    double board = 0.0; ///< kg, the mould's own
};

/// The hull on her moulds when the planking is closed and its outside covered, before she is turned over: how
/// heavy she is to lift off, where she balances so that she comes off level, and what each mould carries.
/// Without varnish and fit-out, which come later.
struct OnMoulds {
    WeightItem hull;
    double boards = 0.0;          ///< kg of moulds, stem forms not counted
    std::vector<MouldLoad> loads; ///< bow to stern

    [[nodiscard]] double strongback() const noexcept { return hull.mass + boards; } ///< kg that it carries
};

/// Each bit of hull rests on the two moulds it lies between, by the rule of the lever; beyond the last mould,
/// on that one (stem forms take some of it off; common practice, no source).
/// @accuracy  tests/core/weights/mould_load_test.cpp: a pipe on even moulds
[[nodiscard]] OnMoulds weighOnMoulds(const Project& project,
                                     const Plan& plan,
                                     const MouldSet& moulds,
                                     const std::vector<GlueUse>& glue,
                                     const std::optional<CoveringPlan>& covering);

} // namespace sheerlay::core

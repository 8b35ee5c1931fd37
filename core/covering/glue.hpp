#pragma once

#include "core/fitout/fitout.hpp"
#include "core/planking/plan.hpp"
#include "core/project/project.hpp"

#include <Eigen/Core>

#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// Glue of one kind of joint, both sides of the boat.
struct GlueUse {
    std::string what;    ///< "strips, edge to edge", "gunwales and scarfs", …
    bool epoxy = true;   ///< thickened epoxy; else any glue for wood
    double area = 0.0;   ///< mm2 of glued face, counted once a joint; 0 of fillets
    double litres = 0.0; ///< to mix or to buy, waste included
    double mass = 0.0;   ///< kg that stay in the boat
    Eigen::Vector3d centre = Eigen::Vector3d::Zero(); ///< mm
};

/// Area of a fillet's section: between two faces and an arc that touches both, mm2.
/// @param corner  rad between the faces, above 0 and below pi
[[nodiscard]] double filletSection(double radius, double corner);

/// mm across one edge of the milled strip: along its bead where it has one, else its thickness.
[[nodiscard]] double gluedEdge(const StripStock& strip);

/// What is glued: strips along their lower edges, gunwales with their scarfs, bulkheads and decks round their
/// edges, and fillets on both faces of a bulkhead. Seats and thwarts are bolted. Resin is counted as if it
/// filled a fillet without filler.
/// Spread, fillets, waste and density are those of [covering].
/// @param fitout  none: strips alone
/// @accuracy  tests/core/covering/glue_test.cpp: a pipe in closed form
[[nodiscard]] std::vector<GlueUse>
planGlue(const Project& project, const Plan& plan, const std::optional<Fitout>& fitout);

} // namespace sheerlay::core

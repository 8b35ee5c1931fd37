#pragma once

#include "core/planking/plan.hpp"
#include "ui/scene/boat.hpp"

#include <QString>

#include <vector>

namespace sheerlay::ui {

/// A stage of the work to jump to.
struct Landmark {
    QString name;
    int laid = 0; ///< how many pieces are laid there
};

/// Landmarks in the order of laying; those a boat does not have are left out.
[[nodiscard]] std::vector<Landmark> landmarks(const Boat& boat);

/// "Row 7 of 37, starboard next", or that nothing or everything is laid.
[[nodiscard]] QString layingText(const Boat& boat, int laid);

/// Laid count after going on (or back) by one row: to where the row that is begun is complete (or the row
/// before is).
[[nodiscard]] int afterRow(const Boat& boat, int laid, bool forward);

} // namespace sheerlay::ui

#pragma once

#include "core/journal/replan.hpp"
#include "core/units/length.hpp"
#include "ui/scene/boat.hpp"

#include <QString>
#include <QStringList>

namespace sheerlay::ui {

/// What a round of readings would do to the plan, before it is accepted.
struct TrialText {
    QString change;       ///< one line: pieces, last plank and hardest edge bend, now and as they were
    QStringList told;     ///< what the journal says about the boat, in whole sentences, heaviest first
    QStringList leftOut;  ///< those of them about readings that were left out
    bool planned = false; ///< the rows to come are planned anew
};

/// @param row  that was read; the rows below it are still to be laid
[[nodiscard]] TrialText
trialText(const Boat& before, const core::PlanAsLaid& tried, int row, core::Units units);

} // namespace sheerlay::ui

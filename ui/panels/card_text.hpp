#pragma once

#include "core/planking/plan.hpp"
#include "core/project/project.hpp"
#include "ui/scene/boat.hpp"

#include <QString>

#include <vector>

namespace sheerlay::ui {

/// One figure of the strip card.
struct CardLine {
    QString caption; ///< "Length to cut"
    QString figure;  ///< "4' 3 5/16\""
    QString detail;  ///< half a sentence beside it; may be empty
    QString meaning; ///< what the figure means and how sure it is; shown when it is clicked
};

/// Everything the card says about one strip.
struct CardText {
    QString title;    ///< "S07"
    QString subtitle; ///< "row 7, starboard; full strip; piece 13 of 74"
    std::vector<CardLine> lines;
    QString advice; ///< how to hold it
};

/// @param strip  one of boat.plan.strips
[[nodiscard]] CardText cardText(const Boat& boat, const core::Strip& strip, core::Units units);

} // namespace sheerlay::ui

#pragma once

#include "core/project/project.hpp"
#include "core/sheets/drawing.hpp"
#include "ui/scene/boat.hpp"

#include <QString>
#include <QStringList>

namespace sheerlay::ui {

/// What shop mode says about one strip.
struct ShopText {
    QString name;             ///< "S07"
    QString place;            ///< "row 7, starboard · piece 13 of 74"
    QString length;           ///< to cut
    QString ends;             ///< both ends in one line each
    QStringList watch;        ///< at most three things, most pressing first
    qsizetype edgeBendAt = 0; ///< which of these is about edge bend
    QString caption;          ///< how the strip is drawn
    QString caution;          ///< what the work asks care for
};

/// @param strip  one of boat.plan.strips
[[nodiscard]] ShopText shopText(const Boat& boat, const core::Strip& strip, core::Units units);

/// The page that a drawing fills a room of this shape with: as wide as its lettering reads best at, wider
/// where the room is so flat that names, strip and sag would not find their height.
/// @return  mm; the height is the room's share of it
[[nodiscard]] double shopDrawingWidth(double roomWidth, double roomHeight);

/// The strip unsprung, as on its sheet, on a page of `width` by `height` mm without anything else.
/// @param night  in light lines, for a dark ground
[[nodiscard]] core::Sheet
shopDrawing(const Boat& boat, const core::Strip& strip, double width, double height, bool night);

} // namespace sheerlay::ui

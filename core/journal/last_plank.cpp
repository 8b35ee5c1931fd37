#include "core/journal/last_plank.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace sheerlay::core {

namespace {

/// What one strip still to be laid really covers, on the average.
double realCover(const LastPlankOutlook& outlook, const CoverWidth& width) {
    const int first = std::min(outlook.row + 1, outlook.lastRow);
    return outlook.coverWidth + (outlook.lastRow >= 1 ? width.meanOf(first, outlook.lastRow).value : 0.0);
}

} // namespace

LastPlank forecastLastPlank(const LastPlankOutlook& outlook, const CoverWidth& width) {
    if (!(outlook.coverWidth > 0.0) || outlook.sides < 1)
        throw std::invalid_argument("forecastLastPlank: a strip must cover something, on one side or two");
    const Spread toCome = width.sumOf(outlook.row + 1, outlook.lastRow);
    const double cover = realCover(outlook, width);
    LastPlank plank;
    plank.width = outlook.planned - outlook.sides * (outlook.offset.value + toCome.value);
    plank.sd = outlook.sides * std::hypot(outlook.offset.sd, toCome.sd);
    const double more = std::ceil(plank.width / cover) - 1; // strips more than planned, on one side or two
    plank.width -= more * cover;
    plank.strips = (outlook.lastRow - outlook.row) * outlook.sides + static_cast<int>(more);
    plank.lastRow = outlook.lastRow + static_cast<int>(std::ceil(more / outlook.sides));
    plank.part = plank.width / cover;
    return plank;
}

Correction
proposeCorrection(const LastPlankOutlook& outlook, const CoverWidth& width, const CorrectionLimits& limits) {
    const LastPlank plank = forecastLastPlank(outlook, width);
    const double cover = realCover(outlook, width);
    const double wanted = 0.5 * (outlook.window[0] + outlook.window[1]);
    Correction correction;
    correction.lastPlank = plank.width;
    if (plank.part >= outlook.window[0] + limits.margin && plank.part <= outlook.window[1] - limits.margin)
        return correction;

    const bool wide = plank.part > wanted; // then one strip more, and the last plank narrower
    const double missing = wanted * cover - plank.width + (wide ? cover : 0.0);
    const int strips = plank.strips + (wide ? 1 : 0);
    const double perStrip = strips > 0 ? missing / strips : cover;
    if (perStrip > limits.narrowing * cover) {
        correction.kind = Correction::Kind::AsItComes;
        return correction;
    }
    correction.kind = perStrip <= limits.planing ? Correction::Kind::Plane : Correction::Kind::MillNarrower;
    correction.firstRow = outlook.row + 1;
    correction.lastRow = outlook.row + (strips + outlook.sides - 1) / outlook.sides;
    correction.perStrip = perStrip;
    correction.cover = cover - perStrip;
    correction.lastPlank = wanted * cover;
    return correction;
}

} // namespace sheerlay::core

#pragma once

#include "core/journal/cover_width.hpp"

#include <array>

namespace sheerlay::core {

/// What the forecast of the last plank starts from: the plan, and the edge that was read.
struct LastPlankOutlook {
    int row = 0;                            ///< laid and read, 0 when nothing is laid
    int lastRow = 0;                        ///< last full row before the last plank, by the plan
    double planned = 0.0;                   ///< mm, the last plank where it is widest, by the plan
    Spread offset;                          ///< mm, how much nearer the keel the read edge lies there
    double coverWidth = 0.0;                ///< mm, of a full strip by the plan; > 0
    int sides = 1;                          ///< 2 when one plank closes both sides at once
    std::array<double, 2> window{0.6, 1.0}; ///< wanted last plank, parts of a cover width
};

/// The last plank as it would come.
struct LastPlank {
    int lastRow = 0;    ///< last full row before it
    int strips = 0;     ///< still to be laid before it; on both sides together when it closes both
    double width = 0.0; ///< mm where it is widest, above 0 and up to what a strip covers
    double sd = 0.0;    ///< mm
    double part = 0.0;  ///< of what a strip really covers
};

/// Where the last plank will come if the rows still to be laid stay as planned. A strip more or less is laid
/// when the remainder asks for it.
/// @param width  asked up to outlook.lastRow at least
/// @accuracy  tests/core/journal/last_plank_test.cpp: spread of 500 boats as in the design study
[[nodiscard]] LastPlank forecastLastPlank(const LastPlankOutlook& outlook, const CoverWidth& width);

/// What brings the last plank where it is wanted. Strips can only be made narrower.
struct Correction {
    enum class Kind {
        None,         ///< the last plank comes well as it is
        Plane,        ///< a light planing off every strip still to be laid
        MillNarrower, ///< too much to plane by hand: mill the strips still to be laid narrower
        AsItComes     ///< too late or too much: fit what is left
    };
    Kind kind = Kind::None;
    int firstRow = 0; ///< rows it is done to
    int lastRow = 0;
    double perStrip = 0.0;  ///< mm off each
    double cover = 0.0;     ///< mm, what each of them then covers
    double lastPlank = 0.0; ///< mm, the last plank then
};

/// What the builder is asked for at most.
struct CorrectionLimits {
    double margin = 0.05;   ///< parts of a strip: how far inside the window nothing need be done
    double planing = 0.3;   ///< mm a strip, still a light planing
    double narrowing = 0.2; ///< parts of a strip, milled off; beyond it the last plank is fitted as it comes
};

[[nodiscard]] Correction proposeCorrection(const LastPlankOutlook& outlook,
                                           const CoverWidth& width,
                                           const CorrectionLimits& limits = {});

} // namespace sheerlay::core

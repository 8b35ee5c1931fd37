#pragma once

#include "core/project/paper_choices.hpp"

namespace sheerlay::core {

/// An upright page: its size and how much larger than on A4 everything on it is set.
struct Page {
    double width = 210.0;  ///< mm
    double height = 297.0; ///< mm
    double scale = 1.0;    ///< of type and drawings
};

/// Nothing stands nearer to the edge than this, mm; common printers leave 4 to 6 mm white.
inline constexpr double pageMargin = 10.0;

[[nodiscard]] constexpr Page pageOf(PageSize size) noexcept {
    switch (size) {
    case PageSize::Letter:
        return {215.9, 279.4, 1.0};
    case PageSize::A3:
        return {297.0, 420.0, 1.4};
    case PageSize::Tabloid:
        return {279.4, 431.8, 1.3};
    case PageSize::A4:
        break;
    }
    return {210.0, 297.0, 1.0};
}

/// Sizes of type on the wall, mm at scale 1. Name and length are given by the height of their figures.
namespace typeSize {
inline constexpr double name = 22.0;   ///< height of capitals
inline constexpr double length = 14.0; ///< height of capitals
inline constexpr double table = 6.0;
inline constexpr double note = 4.5;
inline constexpr double small = 3.0;
} // namespace typeSize

} // namespace sheerlay::core

#pragma once

#include "core/offsets/table_corrections.hpp"
#include "core/project/project.hpp"
#include "core/units/length.hpp"
#include "geometry/expected.hpp"
#include "geometry/given_faces.hpp"

#include <string>
#include <vector>

namespace sheerlay::core {

/// What the numbers of a surface file count.
struct SurfaceScale {
    double factor = 1.0;              ///< the given faces, in mm by the file's unit, times this are mm
    Units units = Units::Millimetres; ///< the builder works in
    std::vector<std::string> said;
};

/// The file's own unit, unless the builder says another; a length that is no boat's is asked about, not
/// guessed.
/// @return  the scale, or what was found and which units would make a boat of it
[[nodiscard]] Expected<SurfaceScale, LengthError> surfaceScale(const geometry::GivenFaces& given,
                                                               const TableCorrections& corrections);

} // namespace sheerlay::core

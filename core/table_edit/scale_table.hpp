#pragma once

#include "core/project/project.hpp"
#include "core/units/length.hpp"
#include "geometry/expected.hpp"

#include <string>

namespace sheerlay::core {

/// By how much the whole table is drawn larger or smaller in each direction; 1 leaves it as it is.
struct TableScale {
    double length = 1.0; ///< everything along the boat: stations, profile, transoms
    double beam = 1.0;   ///< half-breadths; half sidings are timber and stay
    double depth = 1.0;  ///< heights above the base line
    /// Beside the length: stations and what lies between them move apart from the foremost one on; stems
    /// beyond the outermost stations, and transoms, keep their form and move along.
    double spacing = 1.0;
    friend bool operator==(const TableScale&, const TableScale&) = default;
};

/// The main measures, by the table's own numbers; mm.
struct TableMeasures {
    double length = 0.0;  ///< from the foremost to the aftmost point given
    double beam = 0.0;    ///< twice the largest half-breadth
    double depth = 0.0;   ///< from keel, or lowest point, to sheer where she is widest
    double spacing = 0.0; ///< median distance of neighbouring stations
};

[[nodiscard]] TableMeasures measuresOf(const HullTable& table);

/// "15' 6\" long, 2' 10\" wide, 12\" deep where she is widest, stations 12\" apart"
[[nodiscard]] std::string measuresText(const TableMeasures& measures, Units units);

/// The project with its table scaled; moulds that stand at places of their own move along. Fittings and loads
/// stay where they are. Numbers that change are rounded to the table's last digit and printed as before, so
/// scaling back does not give every digit again.
/// @return the project, or what was found and what would do: a scale outside leastScale … mostScale, strips
///         laid or measured already, a project that would not pass
[[nodiscard]] Expected<Project, LengthError> scaleTable(const Project& project, const TableScale& scale);

inline constexpr double leastScale = 0.5, mostScale = 2.0; ///< more is another boat

} // namespace sheerlay::core

#pragma once

#include "core/units/length.hpp"

#include <string>

namespace sheerlay::core {

/// A length for a sentence that people of both unit systems read: "16 mm (5/8\")", whole millimetres, nearest
/// sixteenth.
[[nodiscard]] std::string bothUnits(double millimetres);

/// A radius or another length of metres: "2.3 m (7.5 ft)", one decimal.
[[nodiscard]] std::string bothUnitsLong(double millimetres);

/// A width or a shaving that is felt rather than measured: "0.15 mm (0.006\")", hundredths of a millimetre,
/// thousandths of an inch.
[[nodiscard]] std::string bothUnitsFine(double millimetres);

/// A length that is known within `spread` (mm), no finer than that: as bothUnitsFine where it is below
/// 0.1 mm, "11.2 mm (0.44\")" below 1 mm, else as bothUnits.
[[nodiscard]] std::string bothUnitsWithin(double millimetres, double spread);

/// A sentence whose measures are told in both unit systems as above, or as "23 kg (51 lb)", with those of
/// `units` first: in inches "16 mm (5/8\")" becomes "5/8\" (16 mm)". All else stays as it is.
[[nodiscard]] std::string unitsFirst(std::string sentence, Units units);

} // namespace sheerlay::core

#pragma once

#include "core/project/project.hpp"
#include "geometry/expected.hpp"
#include "geometry/trims.hpp"

#include <string>
#include <vector>

namespace sheerlay::core {

/// One point the loft must pass near, in the table's datum, mm.
struct LoftPoint {
    enum class Kind { Sheer, Section, Keel, Profile, Helper };
    Kind kind = Kind::Section;
    int station = -1;                 ///< index into HullTable::stations, -1 for the profile
    const TablePoint* cell = nullptr; ///< where it stands in the table; none for profile points and helpers
    double x = 0.0, y = 0.0, z = 0.0;
    double girth = 0.0;                  ///< start value of the surface parameter v; fixed for sheer points
    double weightY = 1.0, weightZ = 1.0; ///< 1 / spread, 1/mm; 0: set aside as doubtful
};

/// The table made ready for fitting.
struct LoftData {
    std::vector<LoftPoint> points;
    double x0 = 0.0, x1 = 0.0;               ///< mm, extent of points and transoms
    double girthMax = 0.0;                   ///< mm, longest chord sum from sheer to keel
    double sigma = 1.0;                      ///< mm, spread of one rounded cell: roundedTo / sqrt 12
    double stationGap = 0.0;                 ///< mm, median distance of stations
    geometry::Trims trims;                   ///< centreplane and planes still without the transoms' heights
    bool bowHead = false, sternHead = false; ///< the profile's topmost point at that end closes the sheer
    bool bowTransom = false, sternTransom = false;
};

/// Orders, weights and completes the table's points. Throws nothing; an unusable table is told in words.
/// @param table  must outlive the result, which points into it
[[nodiscard]] Expected<LoftData, std::string> prepareLoft(const HullTable& table);

} // namespace sheerlay::core

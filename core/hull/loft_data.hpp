#pragma once

#include "core/project/project.hpp"
#include "geometry/expected.hpp"
#include "geometry/tensor_surface.hpp"
#include "geometry/trims.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// One point the loft must pass near, in the table's datum, mm.
struct LoftPoint {
    enum class Kind { Sheer, Section, Keel, Profile, Helper, Knuckle };
    Kind kind = Kind::Section;
    int station = -1;                 ///< index into HullTable::stations, -1 for the profile
    const TablePoint* cell = nullptr; ///< where it stands in the table; none for profile points and helpers
    double x = 0.0, y = 0.0, z = 0.0;
    double girth = 0.0;                  ///< start value of the surface parameter v; fixed for sheer points
    double weightY = 1.0, weightZ = 1.0; ///< 1 / spread, 1/mm; 0: set aside as doubtful
    int side = 0;                        ///< of the knuckle: -1 above it, +1 below; 0 where that is open

    /// Its girth is known beforehand: it lies on the sheer or the knuckle.
    [[nodiscard]] bool onGivenLine() const noexcept {
        return kind == Kind::Sheer || kind == Kind::Knuckle || (kind == Kind::Profile && girth == 0.0);
    }
};

/// The table made ready for fitting.
struct LoftData {
    std::vector<LoftPoint> points;
    double x0 = 0.0, x1 = 0.0;               ///< mm, extent of points and transoms
    double girthMax = 0.0;                   ///< mm, longest chord sum from sheer to keel
    std::optional<double> knuckle;           ///< v of the knuckle, its median chord girth; none without
    double sigma = 1.0;                      ///< mm, spread of one rounded cell: roundedTo / sqrt 12
    double stationGap = 0.0;                 ///< mm, median distance of stations
    geometry::Trims trims;                   ///< centreplane and planes still without the transoms' heights
    bool bowHead = false, sternHead = false; ///< the profile's topmost point at that end closes the sheer
    bool bowTransom = false, sternTransom = false;
};

/// Orders, weights and completes the table's points. Throws nothing; an unusable table is told in words.
/// @param table  must outlive the result, which points into it
[[nodiscard]] Expected<LoftData, std::string> prepareLoft(const HullTable& table);

/// Surface parameter v for a girth below the sheer: at the knuckle it is the same all along the boat, above
/// it in proportion, below it mm for mm.
/// @param toKnuckle  mm, girth from sheer to knuckle at this place
[[nodiscard]] inline double
girthParameter(double girth, double toKnuckle, const std::optional<double>& knuckle) noexcept {
    if (!knuckle || toKnuckle <= 0)
        return girth;
    return girth <= toKnuckle ? girth * *knuckle / toKnuckle : *knuckle + (girth - toKnuckle);
}

/// Knots around the section for a fit to this data: about `spans` of them from above the sheer to past the
/// keel, with a crease on the knuckle.
[[nodiscard]] geometry::UniformKnots girthKnots(const LoftData& data, int spans);

} // namespace sheerlay::core

#pragma once

#include "core/moulds/mould.hpp"

#include <vector>

namespace sheerlay::core {

/// The beam the moulds stand on, boat upside down. Places along it are measured from its own forward end.
struct StrongbackPlan {
    double top = 0.0;      ///< mm, height of its top above the base line of the drawing, which is upside down
    double from = 0.0;     ///< mm from the bow, of its forward end; - when it stands out beyond the bow
    double length = 0.0;   ///< mm
    double width = 0.0;    ///< mm
    double height = 0.0;   ///< mm
    double diagonal = 0.0; ///< mm, across its top from corner to corner

    /// What stands across it at one mould.
    struct Place {
        std::string mould;
        double along = 0.0;  ///< mm from the forward end to the station line, where the governing face stands
        bool forward = true; ///< the mould stands forward of the line, its cleat abaft it; else the other way
        double keel = 0.0;   ///< mm, the mould's edge on the centreline above the strongback's top
        double sheer = 0.0;  ///< mm, the sheer mark above the strongback's top
        double cleat = 0.0;  ///< mm, length of the cleat: the mould's foot
    };
    std::vector<Place> places;  ///< bow to stern
    double checkLength = 0.0;   ///< mm, from the first station line to the last
    double checkDiagonal = 0.0; ///< mm, between these lines from side to side of the strongback
};

/// mm above the base line: the strongback's top, clear of the sheer by what the project says.
[[nodiscard]] double strongbackTop(const Project& project, double highestSheer) noexcept;

/// @param moulds  bow to stern, at least one
/// @param first   mm from the bow, of the foremost thing that stands on it
/// @param last    the same of the aftermost
[[nodiscard]] StrongbackPlan
planStrongback(const Project& project, const std::vector<Mould>& moulds, double first, double last);

} // namespace sheerlay::core

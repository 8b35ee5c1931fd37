#pragma once

#include "core/project/project.hpp"

#include <Eigen/Core>

#include <string>
#include <vector>

namespace sheerlay::core {

/// A point of an edge that planking lies on.
struct EdgePoint {
    Eigen::Vector2d at = Eigen::Vector2d::Zero();      ///< mm, in the board's own plane
    Eigen::Vector2d outward = Eigen::Vector2d::Zero(); ///< unit, in that plane, out of the board
    /// rad, from square to the face; + where the edge falls away from the governing face, so that wood is to
    /// be planed off; - where the hull goes on beyond a square edge, which then touches at this face alone
    double bevel = 0.0;
};

/// One mould. Half outline in the plane of its governing face: first coordinate y to starboard, second z
/// above the base line. The governing face stands on the station; it is the fuller one: the after face of a
/// forward mould, the forward face of an after one (common practice, no source).
struct Mould {
    std::string name;            ///< of the station it stands on
    double x = 0.0;              ///< mm from the bow, of the governing face
    bool forward = true;         ///< stands forward of the hull's widest section: its after face governs
    double thickness = 0.0;      ///< mm
    std::vector<EdgePoint> edge; ///< sheer to keel, at most 2 mm apart or the girth's 400th part
    double sheer = 0.0;          ///< mm, height of the planking's upper edge here
    double keel = 0.0;           ///< mm, height of the edge on the centreline
    double foot = 0.0;           ///< mm, height of the strongback's top, where the mould stands
    double legHalfBreadth = 0.0; ///< mm, half-breadth of the leg between shoulder and foot
    double stemCut = 0.0;        ///< mm, sawn off at the centreline to stand against a stem form; 0: nothing
    std::vector<Eigen::Vector2d> outline; ///< closed half outline, first point not repeated

    [[nodiscard]] const char* governingFace() const noexcept { return forward ? "after" : "forward"; }
    /// mm, x of the face away from the governing one.
    [[nodiscard]] double farFace() const noexcept { return forward ? x - thickness : x + thickness; }
};

/// The piece on the centreline that the strips' ends are bent round: x and z in the centreplane, sawn to the
/// line where the two sides meet and bevelled back to `bevelLine` on both faces.
struct StemForm {
    End end = End::Bow;
    double thickness = 0.0;      ///< mm
    std::vector<EdgePoint> edge; ///< head to foot; (x, z); bevel of each side
    std::vector<Eigen::Vector2d>
        bevelLine;       ///< (x, z) on the faces, head to foot; empty where nothing is bevelled
    std::string mould;   ///< the one whose far face it stands against
    double endsAt = 0.0; ///< mm from the bow, that face
    double foot = 0.0;   ///< mm, height of the strongback's top
    std::vector<Eigen::Vector2d> outline; ///< closed
};

} // namespace sheerlay::core

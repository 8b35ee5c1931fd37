#pragma once

#include "core/hull/hull.hpp"
#include "geometry/parallels.hpp"

#include <optional>
#include <vector>

namespace sheerlay::core {

/// A point of a row, both in space and in the row's own mesh: column (with fraction) of the fan and distance
/// from the parent edge.
struct RowPoint {
    double column = 0.0;
    double distance = 0.0; ///< mm from the edge nearer the start
    Eigen::Vector2d uv;
    Eigen::Vector3d p;
};

/// What part of its row a mesh holds.
enum class RowPart {
    Whole,
    Stealer, ///< the part of a band that ends in the surface; its far edge is cut
    Beside,  ///< the rest of a band; its near edge is cut to the stealers and notched for their ends
};

/// Three lines of one fan: a row's edge nearer the start, its middle and its far edge, column by column. All
/// are parallels, except in a tapered row, whose middle and far edge lie nearer.
struct RowMesh {
    std::vector<geometry::RowNode> parent, middle, child;
    double width = 0.0;           ///< mm, full
    double spacing = 0.0;         ///< mm between columns on the master
    std::vector<double> narrowed; ///< mm, width of every column of a tapered row; empty where all are full

    RowPart part = RowPart::Whole;
    std::optional<std::size_t> bowNib, sternNib; ///< columns on which a stealer ends square
    /// Where the near edge of the strip beside a stealer steps back onto the row's own.
    struct Notch {
        RowPoint corner; ///< on the row's near edge, on the nib's column; its distance is the depth, negative
        bool bow = true; ///< at the stealer's bow end
    };
    std::vector<Notch> notches;

    [[nodiscard]] bool tapered() const noexcept { return !narrowed.empty(); }
    [[nodiscard]] bool endsAt(std::size_t column, bool bow) const noexcept {
        const auto& nib = bow ? bowNib : sternNib;
        return nib && *nib == column;
    }
    [[nodiscard]] double widthAt(std::size_t column) const { return tapered() ? narrowed[column] : width; }
    /// Between columns too.
    [[nodiscard]] double widthAt(double column) const;
};

/// One connected piece of a row inside the hull.
struct RowPiece {
    std::vector<RowPoint> parentEdge,
        childEdge;                   ///< bow to stern; along a trim where it cuts the strip lengthwise
    std::vector<RowPoint> middle;    ///< bow to stern, inside the trims
    std::vector<double> middleWidth; ///< mm, one per point of `middle`
    geometry::Trim bowTrim = geometry::Trim::None; ///< what the middle ends on
    geometry::Trim sternTrim = geometry::Trim::None;
    double cutBySheer = 0.0;  ///< mm, most that the sheer takes off the width lengthwise
    double cutByCentre = 0.0; ///< mm, most that the centreline takes off the width lengthwise
    bool tapered = false;     ///< the row's own far edge is cut, or the near one of the strip by a stealer
    RowPart part = RowPart::Whole;
    bool lens = false; ///< the far edge lies wholly beyond the centreline
    /// mm from the bow, where it ends inside the hull because the line the rows are parallel to ends.
    std::optional<double> stopsShort;
    /// The far edge is cut, by a taper or lengthwise by the centreline: the strip's good edge is the one
    /// nearer the start.
    [[nodiscard]] bool farEdgeCut() const noexcept {
        return part != RowPart::Beside && (tapered || lens || cutByCentre > 0.1);
    }
    /// The line the strip is bent to: its good edge, or the middle of an uncut strip.
    [[nodiscard]] const std::vector<geometry::RowNode>& goodLine(const RowMesh& mesh) const noexcept {
        return part == RowPart::Beside ? mesh.child : farEdgeCut() ? mesh.parent : mesh.middle;
    }
    /// Both edges run together there, as against a transom, where the piece keeps its width.
    [[nodiscard]] bool bowPointed() const { return meet(parentEdge.front(), childEdge.front()); }
    [[nodiscard]] bool sternPointed() const { return meet(parentEdge.back(), childEdge.back()); }
    double widest = 0.0; ///< mm
    double area = 0.0;   ///< mm2

private:
    static bool meet(const RowPoint& a, const RowPoint& b) { return (a.p - b.p).norm() < 0.01; }
};

/// Cuts one row by the hull's trims.
/// @return the pieces from bow to stern, and nothing where the row lies outside the hull. Where two of them
/// meet in a point, what that leaves along the parent edge stands between them as a piece too thin to be
/// wood.
[[nodiscard]] std::vector<RowPiece> cutRow(const TrimmedSurface& hull, const RowMesh& mesh);

} // namespace sheerlay::core

#pragma once

#include "core/planking/row_cutter.hpp"
#include "core/planking/trim_crossing.hpp"

#include <optional>
#include <utility>
#include <vector>

namespace sheerlay::core {

inline constexpr double tooThin = 0.5; ///< mm: what is thinner than this everywhere is no piece of wood

/// Which of a row's three parallels.
enum class Line { Parent, Middle, Child };

/// What the trims leave of one column of a row: from a to b, mm from the parent edge.
struct Column {
    bool parentIn = false, middleIn = false, childIn = false;
    double a = 0.0, b = 0.0;
    geometry::Trim trimA = geometry::Trim::None, trimB = geometry::Trim::None;
    [[nodiscard]] bool any() const noexcept { return parentIn || middleIn || childIn; }
};

/// Where a parallel leaves the hull, and through which trim.
struct LineEnd {
    RowPoint point;
    geometry::Trim trim = geometry::Trim::None;
};

/// A row's mesh cut column by column, with the exact places where its lines leave the hull.
class RowColumns {
public:
    /// @param hull, mesh  must outlive this
    RowColumns(const TrimmedSurface& hull, const RowMesh& mesh);

    [[nodiscard]] const RowMesh& mesh() const noexcept { return m_mesh; }
    [[nodiscard]] std::size_t size() const noexcept { return m_columns.size(); }
    [[nodiscard]] const Column& operator[](std::size_t i) const { return m_columns[i]; }
    [[nodiscard]] double left(std::size_t i) const { return m_columns[i].b - m_columns[i].a; }
    [[nodiscard]] bool in(Line line, std::size_t i) const;
    /// First and last column from c0 to c1 on which a line lies inside; both c1 + 1 when there is none.
    [[nodiscard]] std::pair<std::size_t, std::size_t> span(Line line, std::size_t c0, std::size_t c1) const;

    /// The narrowest column of a stretch that a lengthwise trim leaves thinner than half a millimetre. 0 < k
    /// < size() - 1.
    [[nodiscard]] bool isNeck(std::size_t k) const;
    /// True when the run that ends at column i goes on beyond: it was parted at a neck there.
    [[nodiscard]] bool partedAt(std::size_t i, int step) const;

    /// The point on the trim in which the two pieces parted at column i end.
    [[nodiscard]] LineEnd neck(std::size_t i) const;
    /// What the pieces parted at column i leave between their parent edges and the row's own, for the strip
    /// nearer the start; none where the trim cuts the row on that side.
    [[nodiscard]] std::optional<RowPiece> besideNeck(std::size_t i) const;

    /// True when the fan ends at column i, inside the hull, though no nib is there: the row stops short.
    [[nodiscard]] bool stopsShort(Line line, std::size_t i, int step) const;

    [[nodiscard]] RowPoint nodePoint(Line line, std::size_t i) const;
    /// The point of column i at a distance from the parent edge.
    [[nodiscard]] RowPoint columnPoint(std::size_t i, double distance) const;
    /// Exact end of a parallel between column i (inside) and its neighbour `step` away (outside).
    [[nodiscard]] std::optional<LineEnd> lineEnd(Line line, std::size_t i, int step) const;
    /// Bow and stern end of a line within a run of columns; at a neck that of the parent line.
    [[nodiscard]] std::optional<LineEnd> firstEnd(Line line, std::size_t c0, std::size_t c1) const;
    [[nodiscard]] std::optional<LineEnd> lastEnd(Line line, std::size_t c0, std::size_t c1) const;
    /// Point between two points of one line, or of one trim.
    [[nodiscard]] RowPoint intermediate(const RowPoint& a, const RowPoint& b, double f) const;
    /// The trim whose zero line both points lie on, or come nearest to.
    [[nodiscard]] geometry::Trim sharedTrim(const RowPoint& a, const RowPoint& b) const;
    /// End of the sheer or of the keel line (Trim::Centre), where it meets stem or transom, near a point of
    /// column i, told in the row's mesh.
    [[nodiscard]] RowPoint corner(geometry::Trim along, bool bow, std::size_t i, const RowPoint& from) const;

private:
    [[nodiscard]] const std::vector<geometry::RowNode>& nodes(Line line) const;
    [[nodiscard]] double distanceOf(Line line, double column) const;
    [[nodiscard]] Column clip(std::size_t i) const;
    [[nodiscard]] RowPoint at(double column, double distance, const Eigen::Vector2d& uv) const;

    const TrimmedSurface& m_hull;
    const RowMesh& m_mesh;
    std::vector<Column> m_columns;
};

} // namespace sheerlay::core

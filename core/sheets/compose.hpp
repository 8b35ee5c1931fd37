#pragma once

#include "core/sheets/drawing.hpp"
#include "core/sheets/type.hpp"

#include <algorithm>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace sheerlay::core {

/// How a text is set; mm.
struct Lettering {
    double size = 4.5;
    Weight weight = Weight::Regular;
    Anchor anchor = Anchor::Left;
    Colour colour = colours::ink;
    double rotation = 0.0; ///< rad, clockwise
};

[[nodiscard]] Text
makeText(const Eigen::Vector2d& at, std::string_view line, const Lettering& lettering = {});
[[nodiscard]] Path
makeLine(const Eigen::Vector2d& from, const Eigen::Vector2d& to, LineKind kind, Colour colour = colours::ink);
[[nodiscard]] Path makeBox(const Box& box, LineKind kind, std::optional<Colour> fill = std::nullopt);

/// The line shortened with "…" until it is no wider than `width` mm.
[[nodiscard]] std::string
shortened(std::string_view line, double width, double size, Weight weight = Weight::Regular);

/// Largest size of type up to `wanted` at which the line is no wider than `width` mm.
[[nodiscard]] double
sizeToFit(std::string_view line, double width, double wanted, Weight weight = Weight::Regular);

/// Moves an item by mm.
[[nodiscard]] Item moved(Item item, const Eigen::Vector2d& by);

/// Box around everything on an item, lines with their width; mm.
[[nodiscard]] Box extentOf(const Item& item);

/// The part of the way from one point to another that lies inside a box, as parameters from 0 to 1; none
/// where it misses the box or only touches it.
[[nodiscard]] std::optional<std::pair<double, double>>
partInside(const Eigen::Vector2d& from, const Eigen::Vector2d& to, const Box& box);

/// Whether a path's line comes into a box.
[[nodiscard]] bool enters(const Path& path, const Box& box);

/// One slice of a column: items placed against its upper left corner. Never broken.
struct Slice {
    double height = 0.0; ///< mm
    std::vector<Item> items;
    bool keepWithNext = false; ///< a title stays with what follows it
};

/// Lines of a paragraph as slices, wrapped to `width`.
[[nodiscard]] std::vector<Slice>
paragraph(std::string_view text, double width, const Lettering& lettering, double pitch);

/// Fills columns with slices and asks for a new page when they are full.
class Flow {
public:
    /// @param sheets    pages so far; slices land on the last one
    /// @param columns   free boxes of the last page, in the order they are filled; all of one width
    /// @param nextPage  adds a page and returns its columns, at least one
    Flow(std::vector<Sheet>& sheets, std::vector<Box> columns, std::function<std::vector<Box>()> nextPage);

    /// Adds slices below what came last; they break from column to column, though not behind a keepWithNext.
    void add(const std::vector<Slice>& slices);
    /// Adds slices as one block in the first column that has room for all of it; a block higher than a column
    /// breaks.
    void addTogether(const std::vector<Slice>& slices);
    /// White space before whatever comes next in the column used last.
    void gap(double height) { m_columns[m_column].gap = std::max(m_columns[m_column].gap, height); }
    [[nodiscard]] double width() const {
        return m_columns[m_column].box.right - m_columns[m_column].box.left;
    }

private:
    struct Column {
        Box box;
        double used = 0.0, gap = 0.0;
        [[nodiscard]] bool fits(double height) const;
    };

    static std::vector<Column> columnsOf(const std::vector<Box>& boxes);
    void put(const std::vector<Slice>& slices, std::size_t from, std::size_t to);

    std::vector<Sheet>* m_sheets;
    std::vector<Column> m_columns;
    std::function<std::vector<Box>()> m_nextPage;
    std::size_t m_column = 0;
};

} // namespace sheerlay::core

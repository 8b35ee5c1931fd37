#pragma once

#include "core/sheets/drawing.hpp"
#include "core/sheets/type.hpp"

#include <algorithm>
#include <functional>
#include <string>
#include <string_view>
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

/// One slice of a column: items placed against its upper left corner. Never broken.
struct Slice {
    double height = 0.0; ///< mm
    std::vector<Item> items;
    bool keepWithNext = false; ///< a title stays with what follows it
};

/// Lines of a paragraph as slices, wrapped to `width`.
[[nodiscard]] std::vector<Slice>
paragraph(std::string_view text, double width, const Lettering& lettering, double pitch);

/// Fills columns with slices, one after the other, and asks for a new page when they are full.
class Flow {
public:
    /// @param sheets    pages so far; slices land on the last one
    /// @param columns   free boxes of the last page, in the order they are filled; all of one width
    /// @param nextPage  adds a page and returns its columns, at least one
    Flow(std::vector<Sheet>& sheets, std::vector<Box> columns, std::function<std::vector<Box>()> nextPage);

    /// Adds slices that belong together; they break only where keepWithNext allows.
    void add(const std::vector<Slice>& slices);
    /// White space before the next slice, none at the head of a column.
    void gap(double height) { m_gap = std::max(m_gap, height); }
    [[nodiscard]] double width() const { return m_columns[m_column].right - m_columns[m_column].left; }

private:
    void next();

    std::vector<Sheet>* m_sheets;
    std::vector<Box> m_columns;
    std::function<std::vector<Box>()> m_nextPage;
    std::size_t m_column = 0;
    double m_used = 0.0;
    double m_gap = 0.0;
};

} // namespace sheerlay::core

#include "core/patterns/nesting.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <functional>
#include <numeric>
#include <optional>
#include <stdexcept>

namespace sheerlay::core {

namespace {

using Eigen::Vector2d;
using Outline = std::vector<Vector2d>;

constexpr double cell = 8.0; // mm, of the grid

Vector2d turned(const Vector2d& p, int quarters) {
    switch (quarters & 3) {
    case 1:
        return {-p.y(), p.x()};
    case 2:
        return {-p.x(), -p.y()};
    case 3:
        return {p.y(), -p.x()};
    default:
        return p;
    }
}

double areaOf(const Outline& outline) {
    double twice = 0.0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Vector2d &a = outline[i], &b = outline[(i + 1) % outline.size()];
        twice += a.x() * b.y() - b.x() * a.y();
    }
    return std::abs(twice) / 2;
}

/// Cells of a grid, by column of `length`, 64 rows to a word: the sheet's width is the short way.
class Grid {
public:
    Grid(int columns, int rows)
        : m_columns(columns), m_rows(rows), m_words((rows + 63) / 64),
          m_bits(static_cast<std::size_t>(columns * m_words), 0) {}

    [[nodiscard]] int columns() const { return m_columns; }
    [[nodiscard]] int rows() const { return m_rows; }
    void set(int column, int row) {
        m_bits[static_cast<std::size_t>(column * m_words + row / 64)] |= std::uint64_t{1} << (row % 64);
    }
    [[nodiscard]] bool at(int column, int row) const {
        return (word(column, row / 64) >> (row % 64) & 1U) != 0;
    }
    /// Whether the other grid, put with its corner there, has a cell in common.
    [[nodiscard]] bool meets(const Grid& other, int column, int row) const {
        for (int c = 0; c < other.m_columns; ++c)
            for (int w = 0; w < other.m_words; ++w) {
                const std::uint64_t bits = other.word(c, w);
                if (bits == 0)
                    continue;
                const int at = row + 64 * w, shift = at % 64;
                if ((word(column + c, at / 64) & (bits << shift)) != 0)
                    return true;
                if (shift > 0 && at / 64 + 1 < m_words &&
                    (word(column + c, at / 64 + 1) & (bits >> (64 - shift))) != 0)
                    return true;
            }
        return false;
    }

private:
    [[nodiscard]] std::uint64_t word(int column, int index) const {
        return m_bits[static_cast<std::size_t>(column * m_words + index)];
    }
    int m_columns, m_rows, m_words;
    std::vector<std::uint64_t> m_bits;
};

/// Cells a run of the outline's edge goes through, by steps of a quarter cell, and the inside.
Grid cellsOf(const Outline& outline) {
    Vector2d low(1e9, 1e9), high(-1e9, -1e9);
    for (const Vector2d& p : outline) {
        low = low.cwiseMin(p);
        high = high.cwiseMax(p);
    }
    constexpr double hair = 1e-9;
    const int columns = std::max(1, static_cast<int>(std::ceil((high.x() - low.x()) / cell - hair)));
    const int rows = std::max(1, static_cast<int>(std::ceil((high.y() - low.y()) / cell - hair)));
    Grid grid(columns, rows);
    const auto mark = [&](const Vector2d& p) {
        grid.set(std::clamp(static_cast<int>((p.x() - low.x()) / cell), 0, columns - 1),
                 std::clamp(static_cast<int>((p.y() - low.y()) / cell), 0, rows - 1));
    };
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Vector2d &a = outline[i], &b = outline[(i + 1) % outline.size()];
        const int steps = std::max(1, static_cast<int>(std::ceil((b - a).norm() / (cell / 4))));
        for (int k = 0; k <= steps; ++k)
            mark(a + (b - a) * (static_cast<double>(k) / steps));
    }
    for (int c = 0; c < columns; ++c) { // the inside, by crossings along the middle of each column
        const double x = low.x() + (c + 0.5) * cell;
        std::vector<double> crossings;
        for (std::size_t i = 0; i < outline.size(); ++i) {
            const Vector2d &a = outline[i], &b = outline[(i + 1) % outline.size()];
            if ((a.x() <= x) != (b.x() <= x))
                crossings.push_back(a.y() + (x - a.x()) / (b.x() - a.x()) * (b.y() - a.y()));
        }
        std::ranges::sort(crossings);
        for (std::size_t i = 0; i + 1 < crossings.size(); i += 2)
            for (double y = crossings[i]; y < crossings[i + 1]; y += cell / 2)
                mark({x, y});
    }
    return grid;
}

/// A part one way round: its cells, and where its lower left corner is.
struct Turned {
    Grid cells;
    Vector2d low;
};

class Nester {
public:
    Nester(const std::vector<Outline>& parts, const SheetGoods& goods)
        : m_goods(goods), m_columns(static_cast<int>(goods.length / cell)),
          m_rows(static_cast<int>(goods.width / cell)) {
        for (const Outline& part : parts) {
            std::vector<Turned> ways;
            for (int quarters = 0; quarters < 4; ++quarters) {
                Outline outline;
                Vector2d low(1e9, 1e9);
                for (const Vector2d& p : part) {
                    outline.push_back(turned(p, quarters));
                    low = low.cwiseMin(outline.back());
                }
                ways.push_back({cellsOf(outline), low});
            }
            m_ways.push_back(std::move(ways));
        }
    }

    [[nodiscard]] bool fits(std::size_t part) const {
        return std::ranges::any_of(m_ways[part], [this](const Turned& way) {
            return way.cells.columns() <= m_columns && way.cells.rows() <= m_rows;
        });
    }
    [[nodiscard]] int longSide(std::size_t part) const {
        const Grid& cells = m_ways[part].front().cells;
        return std::max(cells.columns(), cells.rows());
    }

    std::vector<std::vector<NestedPart>> lay(const std::vector<std::size_t>& order) const {
        std::vector<std::vector<NestedPart>> sheets;
        std::vector<Grid> taken;
        for (const std::size_t part : order) {
            bool placed = false;
            for (std::size_t s = 0; s < sheets.size() && !placed; ++s)
                placed = put(part, taken[s], sheets[s]);
            if (placed)
                continue;
            sheets.emplace_back();
            taken.emplace_back(m_columns, m_rows);
            put(part, taken.back(), sheets.back());
        }
        return sheets;
    }

private:
    /// As far left as it goes, and there as low; of the ways round the one that reaches least to the right.
    bool put(std::size_t part, Grid& taken, std::vector<NestedPart>& sheet) const {
        struct Place {
            int reach = 0, column = 0, row = 0, quarters = 0;
        };
        std::optional<Place> best;
        for (int quarters = 0; quarters < 4; ++quarters) {
            const Grid& cells = m_ways[part][static_cast<std::size_t>(quarters)].cells;
            const auto place = leftmost(cells, taken, best ? best->reach : m_columns + 1);
            if (place)
                best = Place{place->first + cells.columns(), place->first, place->second, quarters};
        }
        if (!best)
            return false;
        const Turned& way = m_ways[part][static_cast<std::size_t>(best->quarters)];
        NestedPart nested{part, best->quarters, Vector2d(best->column, best->row) * cell - way.low};
        sheet.push_back(nested);
        keepClear(way.cells, best->column, best->row, taken);
        return true;
    }

    /// First place, column by column, where it reaches less far to the right than `before`.
    std::optional<std::pair<int, int>> leftmost(const Grid& cells, const Grid& taken, int before) const {
        const int last = std::min(m_columns - cells.columns(), before - cells.columns() - 1);
        for (int column = 0; column <= last; ++column)
            for (int row = 0; row <= m_rows - cells.rows(); ++row)
                if (!taken.meets(cells, column, row))
                    return std::pair{column, row};
        return std::nullopt;
    }

    /// Marks the cells of a part and those nearer to them than the gap.
    void keepClear(const Grid& cells, int column, int row, Grid& taken) const {
        const int around = static_cast<int>(std::ceil(m_goods.gap / cell));
        for (int c = 0; c < cells.columns(); ++c)
            for (int r = 0; r < cells.rows(); ++r) {
                if (!cells.at(c, r))
                    continue;
                for (int dc = -around; dc <= around; ++dc)
                    for (int dr = -around; dr <= around; ++dr) {
                        const int atColumn = column + c + dc, atRow = row + r + dr;
                        if (atColumn >= 0 && atColumn < m_columns && atRow >= 0 && atRow < m_rows)
                            taken.set(atColumn, atRow);
                    }
            }
    }

    SheetGoods m_goods;
    int m_columns, m_rows;
    std::vector<std::vector<Turned>> m_ways;
};

} // namespace

Vector2d NestedPart::onSheet(const Vector2d& p) const {
    return turned(p, quarters) + move;
}

Nesting nest(const std::vector<Outline>& parts, const SheetGoods& goods) {
    if (goods.length < cell || goods.width < cell || goods.gap <= 0.0)
        throw std::invalid_argument("a sheet to nest on needs a length, a width and a gap");
    if (std::ranges::any_of(parts, [](const Outline& part) { return part.size() < 3; }))
        throw std::invalid_argument("an outline to nest needs three points");
    const Nester nester(parts, goods);
    Nesting result;
    std::vector<std::size_t> able;
    double area = 0.0;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (!nester.fits(i)) {
            result.tooLarge.push_back(i);
            continue;
        }
        able.push_back(i);
        area += areaOf(parts[i]);
    }
    result.leastByArea = static_cast<int>(std::ceil(area / (goods.length * goods.width) - 1e-9));
    const std::vector<std::function<double(std::size_t)>> sizes{
        [&](std::size_t i) { return areaOf(parts[i]); },
        [&](std::size_t i) { return static_cast<double>(nester.longSide(i)); }};
    bool first = true;
    for (const auto& size : sizes) {
        std::vector<std::size_t> order = able;
        std::ranges::stable_sort(order, std::greater(), size);
        auto sheets = nester.lay(order);
        if (first || sheets.size() < result.sheets.size())
            result.sheets = std::move(sheets);
        first = false;
    }
    return result;
}

} // namespace sheerlay::core

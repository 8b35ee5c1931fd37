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
    Nester(const std::vector<Outline>& parts, const SheetGoods& goods) : m_goods(goods) {
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
        return std::ranges::any_of(m_goods.sizes, [&](const SheetSize& size) { return fits(part, size); });
    }
    [[nodiscard]] int longSide(std::size_t part) const {
        const Grid& cells = m_ways[part].front().cells;
        return std::max(cells.columns(), cells.rows());
    }

    struct Laid {
        std::vector<NestedSheet> sheets;
        std::vector<std::size_t> left;
        double area = 0.0; // mm2 of the sheets
    };
    [[nodiscard]] Laid lay(const std::vector<std::size_t>& order) const {
        Laid laid;
        std::vector<Grid> taken;
        std::vector<int> used(m_goods.sizes.size(), 0);
        for (const std::size_t part : order) {
            bool placed = false;
            for (std::size_t s = 0; s < laid.sheets.size() && !placed; ++s)
                placed = put(part, taken[s], laid.sheets[s].parts);
            if (placed)
                continue;
            const auto size = sizeToBegin(part, used);
            if (!size) {
                laid.left.push_back(part);
                continue;
            }
            const SheetSize& begun = m_goods.sizes[*size];
            ++used[*size];
            laid.area += begun.length * begun.width;
            laid.sheets.push_back({*size, {}});
            taken.emplace_back(columns(begun), rows(begun));
            put(part, taken.back(), laid.sheets.back().parts);
        }
        return laid;
    }

private:
    static int columns(const SheetSize& size) { return static_cast<int>(size.length / cell); }
    static int rows(const SheetSize& size) { return static_cast<int>(size.width / cell); }

    [[nodiscard]] bool fits(std::size_t part, const SheetSize& size) const {
        return std::ranges::any_of(m_ways[part], [&](const Turned& way) {
            return way.cells.columns() <= columns(size) && way.cells.rows() <= rows(size);
        });
    }
    [[nodiscard]] std::optional<std::size_t> sizeToBegin(std::size_t part,
                                                         const std::vector<int>& used) const {
        for (std::size_t i = 0; i < m_goods.sizes.size(); ++i)
            if (used[i] < m_goods.sizes[i].count.value_or(used[i] + 1) && fits(part, m_goods.sizes[i]))
                return i;
        return std::nullopt;
    }

    /// As far left as it goes, and there as low; of the ways round the one that reaches least to the right.
    bool put(std::size_t part, Grid& taken, std::vector<NestedPart>& sheet) const {
        struct Place {
            int reach = 0, column = 0, row = 0, quarters = 0;
        };
        std::optional<Place> best;
        for (int quarters = 0; quarters < 4; ++quarters) {
            const Grid& cells = m_ways[part][static_cast<std::size_t>(quarters)].cells;
            const auto place = leftmost(cells, taken, best ? best->reach : taken.columns() + 1);
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
    static std::optional<std::pair<int, int>> leftmost(const Grid& cells, const Grid& taken, int before) {
        const int last = std::min(taken.columns() - cells.columns(), before - cells.columns() - 1);
        for (int column = 0; column <= last; ++column)
            for (int row = 0; row <= taken.rows() - cells.rows(); ++row)
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
                        if (atColumn >= 0 && atColumn < taken.columns() && atRow >= 0 && atRow < taken.rows())
                            taken.set(atColumn, atRow);
                    }
            }
    }

    const SheetGoods& m_goods;
    std::vector<std::vector<Turned>> m_ways;
};

} // namespace

Vector2d NestedPart::onSheet(const Vector2d& p) const {
    return turned(p, quarters) + move;
}

Nesting nest(const std::vector<Outline>& parts, const SheetGoods& goods) {
    if (goods.gap <= 0.0 || goods.sizes.empty() ||
        std::ranges::any_of(goods.sizes,
                            [](const SheetSize& size) { return size.length < cell || size.width < cell; }))
        throw std::invalid_argument("sheets to nest on need a length, a width and a gap");
    if (std::ranges::any_of(parts, [](const Outline& part) { return part.size() < 3; }))
        throw std::invalid_argument("an outline to nest needs three points");
    const Nester nester(parts, goods);
    Nesting result;
    std::vector<std::size_t> able;
    for (std::size_t i = 0; i < parts.size(); ++i)
        (nester.fits(i) ? able : result.tooLarge).push_back(i);
    const std::vector<std::function<double(std::size_t)>> sizes{
        [&](std::size_t i) { return areaOf(parts[i]); },
        [&](std::size_t i) { return static_cast<double>(nester.longSide(i)); }};
    std::optional<Nester::Laid> best;
    for (const auto& size : sizes) {
        std::vector<std::size_t> order = able;
        std::ranges::stable_sort(order, std::greater(), size);
        Nester::Laid laid = nester.lay(order);
        if (!best || std::pair(laid.left.size(), laid.area) < std::pair(best->left.size(), best->area))
            best = std::move(laid);
    }
    double area = 0.0, largest = 0.0;
    for (const NestedSheet& sheet : best->sheets)
        for (const NestedPart& part : sheet.parts)
            area += areaOf(parts[part.part]);
    for (const SheetSize& size : goods.sizes)
        largest = std::max(largest, size.length * size.width);
    result.leastByArea = static_cast<int>(std::ceil(area / largest - 1e-9));
    result.sheets = std::move(best->sheets);
    result.left = std::move(best->left);
    return result;
}

} // namespace sheerlay::core

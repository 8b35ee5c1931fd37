#include "core/sheets/sheet_tiles.hpp"

#include "core/sheets/page.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace sheerlay::core {

namespace {

using Eigen::Vector2d;

constexpr double footBand = 14.0; // mm below the window, for the words and the map

/// What the drawing needs of a large sheet: its own margin stays away.
Box contentOf(const Sheet& large) {
    Box all{large.width, large.height, 0.0, 0.0};
    for (const Item& item : large.items) {
        const Box box = extentOf(item);
        all = {std::min(all.left, box.left),
               std::min(all.top, box.top),
               std::max(all.right, box.right),
               std::max(all.bottom, box.bottom)};
    }
    return all;
}

class SheetTiler {
public:
    SheetTiler(const Sheet& large, double width, double height)
        : m_large(large), m_width(width), m_height(height), m_window{pageMargin,
                                                                     pageMargin,
                                                                     width - pageMargin,
                                                                     height - pageMargin - footBand},
          m_content(contentOf(large)) {
        for (const Item& item : large.items)
            if (const auto* text = std::get_if<Text>(&item))
                m_words.push_back(inkBox(*text));
        m_grid.columns = count(m_content.right - m_content.left, m_window.right - m_window.left);
        m_grid.rows = count(m_content.bottom - m_content.top, m_window.bottom - m_window.top);
    }

    [[nodiscard]] int pages() const { return m_grid.columns * m_grid.rows; }

    [[nodiscard]] std::vector<SheetTile> make() const {
        std::vector<SheetTile> tiles;
        for (int row = 0; row < m_grid.rows; ++row)
            for (int column = 0; column < m_grid.columns; ++column)
                if (SheetTile tile = cut(row, column); !tile.sheet.items.empty())
                    tiles.push_back(std::move(tile));
        for (std::size_t i = 0; i < tiles.size(); ++i)
            finish(tiles[i], tiles, i + 1);
        return tiles;
    }

private:
    static int count(double size, double window) {
        return std::max(1, static_cast<int>(std::ceil((size - pageOverlap) / (window - pageOverlap))));
    }

    [[nodiscard]] SheetTile cut(int row, int column) const {
        SheetTile tile;
        tile.row = row;
        tile.column = column;
        tile.window = m_window;
        tile.sheet.width = m_width;
        tile.sheet.height = m_height;
        tile.origin = {m_window.left - m_content.left -
                           column * (m_window.right - m_window.left - pageOverlap),
                       m_window.top - m_content.top - row * (m_window.bottom - m_window.top - pageOverlap)};
        for (const Item& item : m_large.items)
            if (Item here = moved(item, tile.origin); extentOf(here).overlaps(m_window))
                tile.sheet.items.push_back(std::move(here));
        return tile;
    }

    /// White over what reaches past the window: the neighbour shows it.
    void cover(Sheet& sheet) const {
        constexpr double far = 5000.0; // mm, larger than any sheet
        for (const Box& band : {Box{-far, -far, m_window.left, far},
                                Box{m_window.right, -far, far, far},
                                Box{m_window.left, -far, m_window.right, m_window.top},
                                Box{m_window.left, m_window.bottom, m_window.right, far}})
            sheet.items.emplace_back(makeBox(band, LineKind::None, colours::white));
    }

    /// Crosses and letter keep clear of the large sheet's words; both pages of a joint see the same of them.
    void joint(SheetTile& tile, const Joint& meets) const {
        const double begin = meets.upright ? m_window.top : m_window.left,
                     end = meets.upright ? m_window.bottom : m_window.right;
        constexpr double inset = 25.0, half = 4.0; // mm
        Sheet& sheet = tile.sheet;
        for (const double wanted : {begin + inset, end - inset})
            for (Item& line : jointCross(clearPlace(tile, meets, wanted, crossArm)))
                sheet.items.push_back(std::move(line));
        const Vector2d middle = clearPlace(tile, meets, 0.5 * (begin + end), half);
        sheet.items.emplace_back(
            makeBox({middle.x() - half, middle.y() - half, middle.x() + half, middle.y() + half},
                    LineKind::Thin,
                    colours::white));
        sheet.items.emplace_back(makeText(middle + Vector2d(0, 1.8),
                                          jointLetters(meets.number),
                                          {.size = 5.0, .weight = Weight::Bold, .anchor = Anchor::Middle}));
    }

    /// The place in the shared band nearest to `wanted` where no words are within `reach`; `wanted` where
    /// there is none near.
    [[nodiscard]] Vector2d
    clearPlace(const SheetTile& tile, const Joint& meets, double wanted, double reach) const {
        constexpr double step = 2.0, most = 18.0, white = 0.5; // mm
        const auto placeAt = [&](double along) {
            return meets.upright ? Vector2d(meets.at, along) : Vector2d(along, meets.at);
        };
        const auto isClear = [&](const Vector2d& p) {
            const Vector2d there = p - tile.origin;
            const double r = reach + white;
            const Box box{there.x() - r, there.y() - r, there.x() + r, there.y() + r};
            return std::ranges::none_of(m_words, [&](const Box& words) { return words.overlaps(box); });
        };
        for (double off = 0.0; off <= most; off += step)
            for (const double along : {wanted + off, wanted - off})
                if (isClear(placeAt(along)))
                    return placeAt(along);
        return placeAt(wanted);
    }

    void finish(SheetTile& tile, const std::vector<SheetTile>& all, std::size_t number) const {
        Sheet& sheet = tile.sheet;
        cover(sheet);
        sheet.items.emplace_back(makeBox(m_window, LineKind::Thin));
        for (const Joint& meets : m_grid.jointsOf(tile.row, tile.column, m_window))
            if (hasNeighbour(tile, all, meets))
                joint(tile, meets);
        words(sheet, number, all.size());
        map(tile, all);
    }

    void words(Sheet& sheet, std::size_t number, std::size_t count) const {
        const double width = m_width - 2 * pageMargin - 30;
        sheet.title = say("{}, page {} of {}", m_large.title, number, count);
        const auto put = [&](double y, const std::string& line, double size, Weight weight) {
            sheet.items.emplace_back(
                makeText({pageMargin, m_window.bottom + y},
                         line,
                         {.size = sizeToFit(line, width, size, weight), .weight = weight}));
        };
        put(5, sheet.title, 4.0, Weight::SemiBold);
        put(10,
            say("Print at 100 %, never fitted to the page. Lay crosses over crosses where the letters are "
                "alike."),
            3.2,
            Weight::Regular);
    }

    void map(SheetTile& tile, const std::vector<SheetTile>& all) const {
        const double size = std::min(26.0 / m_grid.columns, (footBand - 2) / m_grid.rows);
        addPageMap(tile, all, {m_width - pageMargin - size * m_grid.columns, m_window.bottom + 2}, size);
    }

    const Sheet& m_large;
    double m_width, m_height;
    Box m_window, m_content;
    std::vector<Box> m_words; ///< mm on the large sheet
    TileGrid m_grid;
};

} // namespace

std::vector<Joint> TileGrid::jointsOf(int row, int column, const Box& window) const {
    constexpr double half = pageOverlap / 2;
    const int uprights = rows * (columns - 1); // numbered first
    std::vector<Joint> joints;
    if (column > 0)
        joints.push_back({true, window.left + half, row * (columns - 1) + column - 1});
    if (column + 1 < columns)
        joints.push_back({true, window.right - half, row * (columns - 1) + column});
    if (row > 0)
        joints.push_back({false, window.top + half, uprights + (row - 1) * columns + column});
    if (row + 1 < rows)
        joints.push_back({false, window.bottom - half, uprights + row * columns + column});
    return joints;
}

std::vector<Item> jointCross(const Vector2d& at) {
    const Vector2d level(crossArm, 0), plumb(0, crossArm);
    return {makeLine(at - level, at + level, LineKind::Thin),
            makeLine(at - plumb, at + plumb, LineKind::Thin)};
}

std::string jointLetters(int number) {
    std::string letters(1, static_cast<char>('A' + number % 26));
    return number < 26 ? letters : jointLetters(number / 26 - 1) + letters;
}

std::vector<SheetTile> tilesOf(const Sheet& large, PageSize size) {
    const Page page = pageOf(size);
    const SheetTiler upright(large, page.width, page.height), lying(large, page.height, page.width);
    return (upright.pages() <= lying.pages() ? upright : lying).make();
}

} // namespace sheerlay::core

#pragma once

#include "core/sheets/compose.hpp"
#include "core/sheets/page.hpp"

#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace sheerlay::core {

/// A column of a list.
struct ListColumn {
    std::string heading;
    double share = 1.0; ///< of the page's width, against the other columns' shares; > 0. More where a word
                        ///< would have to be broken
    Anchor anchor = Anchor::Left;
    Weight weight = Weight::Regular;
};

/// A line of a list: a text per column. Text too long for its column goes on below.
struct ListRow {
    std::vector<std::string> cells;
    bool box = false; ///< a box to tick before the first cell
};

/// Fills pages with headings, sentences, lists and drawings from top to bottom. A list that goes on repeats
/// the headings of its columns. Pages come without feet.
class ListPages {
public:
    /// @param title  of the first page; the others say "continued"
    /// @param zoom   of type and drawings, beyond the page's own scale; > 0
    ListPages(const Page& page, std::string title, double zoom = 1.0);

    void heading(std::string_view words);
    void text(std::string_view words);
    /// Sentences before which stand numbers, "1", "2", …
    void steps(const std::vector<std::string>& sentences);
    /// @throws std::invalid_argument  a row has more cells than there are columns
    void list(const std::vector<ListColumn>& columns, const std::vector<ListRow>& rows);
    /// A drawing against its upper left corner, kept on one page with what was written before it.
    /// @param height  mm
    void drawing(const std::vector<Item>& items, double height);
    void gap(double atA4) { m_gap = std::max(m_gap, atA4 * m_k); }

    /// mm of paper from margin to margin
    [[nodiscard]] double width() const noexcept { return m_room.right - m_room.left; }
    /// mm left on the page below what was written.
    [[nodiscard]] double left() const noexcept { return m_room.bottom - m_y - m_gap; }
    /// mm of paper for what is so high on A4.
    [[nodiscard]] double size(double atA4) const noexcept { return atA4 * m_k; }
    /// The pages; the list is empty afterwards.
    [[nodiscard]] std::vector<Sheet> take() { return std::move(m_sheets); }

private:
    void newPage();
    void put(const Slice& slice);
    [[nodiscard]] std::vector<double> edgesOf(const std::vector<ListColumn>& columns,
                                              const std::vector<ListRow>& rows) const;
    [[nodiscard]] Slice headingsOf(const std::vector<ListColumn>& columns,
                                   const std::vector<double>& edges) const;
    [[nodiscard]] Slice sliceOf(const ListRow& row,
                                const std::vector<ListColumn>& columns,
                                const std::vector<double>& edges) const;

    Page m_page;
    std::string m_title;
    double m_k;
    Box m_room;
    double m_y = 0.0, m_gap = 0.0;
    bool m_fresh = true; // nothing stands on the page but its title
    std::vector<Sheet> m_sheets;
};

/// Pages that `fill` writes. Where a little smaller type, 0.86 of the full one at least, takes a page less,
/// that is taken: a last page of a line or two is lost in the shop.
[[nodiscard]] std::vector<Sheet>
fewestPages(const Page& page, const std::string& title, const std::function<void(ListPages&)>& fill);

} // namespace sheerlay::core

#include "core/sheets/cut_sheets.hpp"

#include "core/sheets/compose.hpp"
#include "core/sheets/cover.hpp"
#include "core/sheets/page_frame.hpp"
#include "core/sheets/piece_sheet.hpp"
#include "core/words/language.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <iterator>
#include <optional>

namespace sheerlay::core {

namespace {

constexpr double between = 8.0; // mm from one row to the next on its page, with a line in the middle

/// A row that is small enough to share a page.
struct SmallRow {
    Piece piece;
    double height = 0.0; ///< mm of paper that is kept for it
    std::vector<Item> items;
};

/// Puts rows on pages in their order, small ones together.
class RowPages {
public:
    RowPages(const SheetContext& of, const Page& page) : m_of(of), m_page(page), m_room(roomOf(page)) {}

    void add(const Piece& piece) {
        std::optional<SmallRow> small = m_of.project.paper.severalRows ? smallRow(piece) : std::nullopt;
        if (!small || m_used + small->height > high() + 1e-6)
            flush();
        if (small) {
            m_used += small->height + between;
            m_rows.push_back(std::move(*small));
        } else {
            take(pieceSheets(m_of, m_page, piece));
        }
    }
    std::vector<Sheet> finish() {
        flush();
        return std::move(m_sheets);
    }

private:
    [[nodiscard]] double high() const { return m_room.bottom - m_room.top; }

    /// In a third of large paper, or in half a page.
    [[nodiscard]] std::optional<SmallRow> smallRow(const Piece& piece) const {
        for (int parts = m_page.scale > 1.0 ? 3 : 2; parts > 1; --parts) {
            const double height = (high() + between) / parts - between;
            if (auto items = smallPiece(m_of, m_page, piece, height))
                return SmallRow{piece, height, std::move(*items)};
        }
        return std::nullopt;
    }
    void take(std::vector<Sheet> sheets) {
        m_sheets.insert(
            m_sheets.end(), std::make_move_iterator(sheets.begin()), std::make_move_iterator(sheets.end()));
    }
    void flush() {
        if (m_rows.size() == 1) { // alone it has the page to itself
            take(pieceSheets(m_of, m_page, m_rows.front().piece));
        } else if (m_rows.size() > 1) {
            Sheet sheet = blankSheet(m_page, "");
            double down = 0.0;
            for (const SmallRow& row : m_rows) {
                sheet.title += (sheet.title.empty() ? "" : ", ") + row.piece.name();
                for (const Item& item : row.items)
                    sheet.items.push_back(moved(item, {0.0, down}));
                down += row.height + between;
                if (&row != &m_rows.back())
                    sheet.items.emplace_back(makeLine({m_room.left, m_room.top + down - between / 2},
                                                      {m_room.right, m_room.top + down - between / 2},
                                                      LineKind::Visible));
            }
            m_sheets.push_back(std::move(sheet));
        }
        m_rows.clear();
        m_used = 0.0;
    }

    const SheetContext& m_of;
    Page m_page;
    Box m_room;
    std::vector<SmallRow> m_rows; // of the page that is being filled
    double m_used = 0.0;          // mm of it
    std::vector<Sheet> m_sheets;
};

} // namespace

std::vector<Sheet> cutSheets(const Project& project,
                             const LoftedHull& hull,
                             const Plan& plan,
                             Units units,
                             PageSize size,
                             const StockPlan* stock) {
    const Speaking speaking(project.language);
    const Page page = pageOf(size);
    const SheetContext of{project, hull, plan, units, stock};
    std::vector<Sheet> sheets = coverSheets(project, hull, plan, units, size);
    RowPages rows(of, page);
    for (const Piece& piece : piecesOf(plan))
        rows.add(piece);
    std::vector<Sheet> made = rows.finish();
    sheets.insert(sheets.end(), std::make_move_iterator(made.begin()), std::make_move_iterator(made.end()));
    addFeet(sheets, project, units, page);
    return sheets;
}

std::optional<Finding>
rowsAlone(const Project& project, const Plan& plan, const std::vector<Sheet>& sheets, PageSize size) {
    const std::vector<Piece> pieces = piecesOf(plan);
    const auto isAlone = [&](const Piece& piece) {
        return std::ranges::any_of(sheets, [&](const Sheet& sheet) { return sheet.title == piece.name(); });
    };
    if (!project.paper.severalRows || pieces.size() < 2 || !std::ranges::all_of(pieces, isAlone))
        return std::nullopt;
    const bool large = pageOf(size).scale > 1.0;
    return Finding{
        Level::Note,
        "rows-alone",
        std::nullopt,
        std::nullopt,
        large ? say("No two rows find room on one sheet of this paper, so each has a page of its own.")
              : say("No two rows find room on one sheet of this paper, so each has a page of its "
                    "own; A3 and Tabloid hold two or three.")};
}

} // namespace sheerlay::core

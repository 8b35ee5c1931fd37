#include "core/sheets/list_pages.hpp"

#include "core/sheets/page_frame.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <numeric>
#include <stdexcept>

namespace sheerlay::core {

namespace {

constexpr double titleSize = 8.0, rowPitch = 5.8, linePitch = 5.4, columnGap = 3.0; // mm at scale 1
constexpr double boxHigh = 3.4, boxGap = 2.0;                                       // of a box to tick
constexpr double headingPart = 0.86; // a heading's type, of a cell's

/// Where a cell's text is anchored between the edges of its column.
double anchorAt(const ListColumn& column, double left, double right) {
    if (column.anchor == Anchor::Left)
        return left;
    return column.anchor == Anchor::Right ? right : (left + right) / 2;
}

/// Widths by the columns' shares of `room`, none less than it needs; by the shares alone where the room is
/// too small for that.
std::vector<double>
widthsOf(const std::vector<ListColumn>& columns, std::vector<double> needed, double room) {
    if (std::accumulate(needed.begin(), needed.end(), 0.0) > room)
        needed.assign(columns.size(), 0.0);
    std::vector<double> widths(columns.size(), 0.0);
    std::vector<bool> held(columns.size(), false); // at what it needs
    for (bool again = true; again;) {
        again = false;
        double shares = 0.0, left = room;
        for (std::size_t c = 0; c < columns.size(); ++c) {
            shares += held[c] ? 0.0 : columns[c].share;
            left -= held[c] ? needed[c] : 0.0;
        }
        for (std::size_t c = 0; c < columns.size(); ++c) {
            widths[c] = held[c] ? needed[c] : columns[c].share / shares * left;
            if (widths[c] < needed[c])
                again = held[c] = true;
        }
    }
    return widths;
}

} // namespace

ListPages::ListPages(const Page& page, std::string title, double zoom)
    : m_page(page), m_title(std::move(title)), m_k(page.scale * zoom), m_room(roomOf(page)) {
    newPage();
}

void ListPages::newPage() {
    const std::string words = m_sheets.empty() ? m_title : say("{}, continued", m_title);
    m_sheets.push_back(blankSheet(m_page, m_title));
    const double wanted = titleSize * m_page.scale, base = m_room.top + wanted * capHeight;
    const double type = sizeToFit(words, width(), wanted, Weight::Bold);
    m_sheets.back().items.emplace_back(
        makeText({m_room.left, base}, words, {.size = type, .weight = Weight::Bold}));
    const double ruled = base + 3.0 * m_page.scale;
    m_sheets.back().items.emplace_back(
        makeLine({m_room.left, ruled}, {m_room.right, ruled}, LineKind::Visible));
    m_y = ruled + 3.0 * m_page.scale;
    m_gap = 0.0;
    m_fresh = true;
}

void ListPages::put(const Slice& slice) {
    m_y += m_fresh ? 0.0 : m_gap;
    m_gap = 0.0;
    for (const Item& item : slice.items)
        m_sheets.back().items.push_back(moved(item, {m_room.left, m_y}));
    m_y += slice.height;
    m_fresh = false;
}

void ListPages::heading(std::string_view words) {
    const double needed = size(8.0 + 3 * rowPitch); // a heading stays with what follows it
    gap(3.0);
    if (left() < needed && !m_fresh)
        newPage();
    const double type = sizeToFit(words, width(), size(5.4), Weight::Bold);
    put({size(8.0), {makeText({0.0, size(5.2)}, words, {.size = type, .weight = Weight::Bold})}, false});
}

void ListPages::text(std::string_view words) {
    const std::vector<Slice> lines =
        paragraph(words, width(), {.size = size(typeSize::note)}, size(linePitch));
    double height = 0.0;
    for (const Slice& line : lines)
        height += line.height;
    if (left() < height && !m_fresh && height < m_room.bottom - m_room.top)
        newPage();
    for (const Slice& line : lines) {
        if (left() < line.height && !m_fresh)
            newPage();
        put(line);
    }
    gap(1.6);
}

void ListPages::steps(const std::vector<std::string>& sentences) {
    const double indent = size(8.0), type = size(typeSize::note);
    for (std::size_t i = 0; i < sentences.size(); ++i) {
        std::vector<Slice> lines = paragraph(sentences[i], width() - indent, {.size = type}, size(linePitch));
        Slice block;
        for (const Slice& line : lines) {
            for (const Item& item : line.items)
                block.items.push_back(moved(item, {indent, block.height}));
            block.height += line.height;
        }
        if (block.items.empty())
            continue;
        const double base = std::get<Text>(block.items.front()).at.y();
        block.items.emplace_back(
            makeText({0.0, base}, std::to_string(i + 1), {.size = type, .weight = Weight::Bold}));
        if (left() < block.height && !m_fresh)
            newPage();
        put(block);
        gap(1.2);
    }
    gap(2.0);
}

void ListPages::drawing(const std::vector<Item>& items, double height) {
    if (left() < height && !m_fresh)
        newPage();
    put({height, items, false});
    gap(3.0);
}

std::vector<double> ListPages::edgesOf(const std::vector<ListColumn>& columns,
                                       const std::vector<ListRow>& rows) const {
    const double type = size(typeSize::note);
    std::vector<double> needed; // by the widest word
    for (std::size_t c = 0; c < columns.size(); ++c) {
        double widest = widestWord(columns[c].heading, headingPart * type, Weight::SemiBold);
        for (const ListRow& row : rows)
            if (c < row.cells.size())
                widest = std::max(widest,
                                  widestWord(row.cells[c], type, columns[c].weight) +
                                      (c == 0 && row.box ? size(boxHigh + boxGap) : 0.0));
        needed.push_back(widest + size(columnGap) + 1e-6);
    }
    std::vector<double> edges{0.0};
    for (const double one : widthsOf(columns, needed, width() + size(columnGap)))
        edges.push_back(edges.back() + one);
    return edges;
}

Slice ListPages::headingsOf(const std::vector<ListColumn>& columns, const std::vector<double>& edges) const {
    const double wanted = headingPart * size(typeSize::note), pitch = 1.2 * wanted;
    std::vector<std::vector<std::string>> lines;
    std::size_t most = 1;
    for (std::size_t c = 0; c < columns.size(); ++c) {
        const double room = edges[c + 1] - size(columnGap) - edges[c];
        lines.push_back(wrap(columns[c].heading, room, wanted, Weight::SemiBold));
        most = std::max(most, lines.back().size());
    }
    const double last = size(4.2) + pitch * static_cast<double>(most - 1), ruled = last + size(1.4);
    Slice slice{ruled + size(1.0), {}, true};
    for (std::size_t c = 0; c < columns.size(); ++c) {
        const double right = edges[c + 1] - size(columnGap);
        double y = last - pitch * (static_cast<double>(lines[c].size()) - 1.0);
        for (const std::string& line : lines[c]) {
            slice.items.emplace_back(
                makeText({anchorAt(columns[c], edges[c], right), y},
                         line,
                         {.size = wanted, .weight = Weight::SemiBold, .anchor = columns[c].anchor}));
            y += pitch;
        }
    }
    slice.items.emplace_back(makeLine({0.0, ruled}, {width(), ruled}, LineKind::Thin));
    return slice;
}

Slice ListPages::sliceOf(const ListRow& row,
                         const std::vector<ListColumn>& columns,
                         const std::vector<double>& edges) const {
    const double type = size(typeSize::note), box = size(boxHigh);
    const double base = size(rowPitch) / 2 + type * capHeight / 2;
    Slice slice{size(rowPitch), {}, false};
    if (row.box)
        slice.items.emplace_back(makeBox({0.2, base - box, 0.2 + box, base}, LineKind::Thin));
    for (std::size_t c = 0; c < row.cells.size(); ++c) {
        const double from = edges[c] + (c == 0 && row.box ? box + size(boxGap) : 0.0);
        const double right = edges[c + 1] - size(columnGap);
        double y = base;
        for (const std::string& line : wrap(row.cells[c], right - from, type, columns[c].weight)) {
            slice.items.emplace_back(
                makeText({anchorAt(columns[c], from, right), y},
                         line,
                         {.size = type, .weight = columns[c].weight, .anchor = columns[c].anchor}));
            slice.height = std::max(slice.height, y + size(rowPitch) - base);
            y += size(linePitch) * 0.96;
        }
    }
    return slice;
}

void ListPages::list(const std::vector<ListColumn>& columns, const std::vector<ListRow>& rows) {
    for (const ListRow& row : rows)
        if (row.cells.size() > columns.size())
            throw std::invalid_argument("a row of a list has more cells than the list has columns");
    const std::vector<double> edges = edgesOf(columns, rows);
    const Slice headings = headingsOf(columns, edges);
    bool begun = false;
    for (const ListRow& row : rows) {
        const Slice slice = sliceOf(row, columns, edges);
        const double needed = slice.height + (begun ? 0.0 : headings.height);
        if (left() < needed && !m_fresh) {
            newPage();
            begun = false;
        }
        if (!begun)
            put(headings);
        begun = true;
        put(slice);
    }
    gap(3.0);
}

std::vector<Sheet>
fewestPages(const Page& page, const std::string& title, const std::function<void(ListPages&)>& fill) {
    const auto filled = [&](double zoom) {
        ListPages pages(page, title, zoom);
        fill(pages);
        return pages.take();
    };
    std::vector<Sheet> sheets = filled(1.0);
    for (const double zoom : {0.97, 0.94, 0.9, 0.86})
        if (sheets.size() > 1)
            if (std::vector<Sheet> fewer = filled(zoom); fewer.size() < sheets.size())
                return fewer;
    return sheets;
}

} // namespace sheerlay::core

#include "core/sheets/piece_sheet.hpp"

#include "core/hull/station_names.hpp"
#include "core/sheets/compose.hpp"
#include "core/sheets/page_frame.hpp"
#include "core/sheets/pieces.hpp"
#include "core/sheets/scarf_notes.hpp"
#include "core/sheets/strip_drawing.hpp"
#include "core/sheets/strip_notes.hpp"
#include "core/sheets/width_table.hpp"
#include "core/sheets/words.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cctype>

namespace sheerlay::core {

namespace {

constexpr double notePitch = 1.2;     // line to line, of the size of type
constexpr double leastName = 20.0;    // mm, height of capitals that are read across a shop
constexpr double smallHeadType = 3.6; // mm, of the lines under a small row's name

/// Lays out the page or pages of one piece.
class PieceSheet {
public:
    PieceSheet(const SheetContext& of, const Page& page, const Piece& piece)
        : m_project(of.project), m_plan(of.plan), m_stock(of.stock), m_units(of.units), m_page(page),
          m_piece(piece), m_room(roomOf(page)), m_k(page.scale), m_places(of.project, of.hull),
          m_names(stationNames(of.project, of.hull)), m_flat(layStraight(*piece.strip)),
          m_marks(stationMarks(*piece.strip, of.hull.stationX)) {}

    // One page is worth a little smaller notes and closer lines; where even those don't fit, they go on in
    // full size on a second.
    std::vector<Sheet> make() {
        struct Setting {
            double notes, tablePitch, drawing;
        };
        for (const Setting& setting : {Setting{1.0, 6.8, 28.0},
                                       Setting{0.94, 6.3, 28.0},
                                       Setting{0.88, 6.0, 24.0},
                                       Setting{0.86, 5.7, 21.0},
                                       Setting{0.8, 5.7, 20.0},
                                       Setting{1.0, 6.8, 28.0}}) {
            m_noteSize = size(typeSize::note) * setting.notes;
            m_tablePitch = size(setting.tablePitch);
            m_drawingHeight = size(setting.drawing);
            m_sheets.clear();
            layOut();
            if (m_sheets.size() == 1)
                break;
        }
        return std::move(m_sheets);
    }

    /// The whole piece in a box `height` high at the head of a page, in the type of A4 and small notes.
    std::optional<std::vector<Item>> makeSmall(double height) {
        struct Setting {
            double notes, tableSize, tablePitch, drawing;
        };
        m_small = true;
        m_k = 1.0;
        m_room.bottom = m_room.top + height;
        if (textWidth(m_piece.name(), sizeForCapitals(leastName), Weight::Bold) > m_room.right - m_room.left)
            return std::nullopt; // it would have to be smaller than is read across a shop
        for (const Setting& setting :
             {Setting{4.5, 6.0, 6.3, 24.0}, Setting{4.0, 5.0, 5.3, 21.0}, Setting{3.5, 4.0, 4.6, 18.0}}) {
            m_noteSize = setting.notes;
            m_tableSize = setting.tableSize;
            m_tablePitch = setting.tablePitch;
            m_drawingHeight = setting.drawing;
            m_sheets.clear();
            layOut();
            if (m_sheets.size() == 1)
                return std::move(sheet().items);
        }
        return std::nullopt;
    }

private:
    void layOut() {
        m_sheets.push_back(blankSheet(m_page, m_piece.name()));
        double y = m_small ? smallHeader() : header();
        y = madeOf(wholeStrip(y + 2.0 * m_k));
        const double bottom = tickBoxes();
        const std::vector<Box> columns = columnsIn(y, bottom);
        for (std::size_t i = 1; i < columns.size(); ++i) {
            const double x = (columns[i - 1].right + columns[i].left) / 2;
            sheet().items.emplace_back(makeLine({x, y}, {x, bottom}, LineKind::Thin, colours::pencil));
        }
        Flow flow(m_sheets, columns, [this] { return goOn(); });
        addWidthTable(flow,
                      {m_project, strip(), m_names, m_marks, m_units},
                      {m_k, m_tablePitch, m_tableSize, bottom - y});
        notes(flow);
    }

    Sheet& sheet() { return m_sheets.back(); }
    [[nodiscard]] const Strip& strip() const { return *m_piece.strip; }
    [[nodiscard]] double size(double atA4) const { return atA4 * m_k; }

    double header() {
        std::vector<Item>& items = sheet().items;
        const double width = m_room.right - m_room.left;
        const std::string row = say("Row {}", m_piece.row());
        const std::string kind = kindWords(m_piece);
        const std::string order = orderWords(m_piece);
        const double noteSize = size(typeSize::note), wanted = sizeForCapitals(size(typeSize::name));
        // a long name (fillers) gets the whole width, and what stood beside it a line below
        const double asideRoom =
            width - size(4.0) - textWidth(m_piece.name(), sizeForCapitals(size(leastName)), Weight::Bold);
        const double asideSize =
            std::min(sizeToFit(kind, asideRoom, noteSize), sizeToFit(order, asideRoom, noteSize));
        const bool tight = asideSize < size(typeSize::small) ||
                           textWidth(row, size(typeSize::table), Weight::SemiBold) > asideRoom;
        double asideWidth = size(4.0) + std::max({textWidth(row, size(typeSize::table), Weight::SemiBold),
                                                  textWidth(kind, asideSize),
                                                  textWidth(order, asideSize)});
        asideWidth = tight ? 0.0 : asideWidth;
        const double nameBase = m_room.top + size(typeSize::name);
        const double nameSize = sizeToFit(m_piece.name(), width - asideWidth, wanted, Weight::Bold);
        items.emplace_back(
            makeText({m_room.left, nameBase}, m_piece.name(), {.size = nameSize, .weight = Weight::Bold}));
        if (!tight) {
            double y = m_room.top + size(typeSize::table) * capHeight;
            items.emplace_back(makeText(
                {m_room.right, y},
                row,
                {.size = size(typeSize::table), .weight = Weight::SemiBold, .anchor = Anchor::Right}));
            for (const std::string& line : {kind, order}) {
                y += size(6.6);
                items.emplace_back(
                    makeText({m_room.right, y}, line, {.size = asideSize, .anchor = Anchor::Right}));
            }
        }
        const double asideLine = tight ? size(7.0) : 0.0;
        if (tight)
            items.emplace_back(
                makeText({m_room.left, nameBase + asideLine},
                         row + ", " + kind + ", " + order,
                         {.size = sizeToFit(row + ", " + kind + ", " + order, width, noteSize)}));

        const double lengthBase = nameBase + asideLine + size(5.0 + typeSize::length);
        const std::string length = cutLengthText(m_piece.cutLength(), m_units);
        const double lengthSize = sizeForCapitals(size(typeSize::length));
        items.emplace_back(
            makeText({m_room.left, lengthBase}, length, {.size = lengthSize, .weight = Weight::Bold}));
        const double after = m_room.left + textWidth(length, lengthSize, Weight::Bold) + size(5.0);
        const std::string words = cutSentence(m_piece, m_units) + " " + neighbourSentence(m_piece, m_plan);
        double type = noteSize;
        std::vector<std::string> said = wrap(words, m_room.right - after, type);
        constexpr std::size_t linesBesideLength = 3;
        for (; said.size() > linesBesideLength && type > size(typeSize::small); type *= 0.95)
            said = wrap(words, m_room.right - after, type * 0.95);
        double baseline = lengthBase - 1.25 * type * (static_cast<double>(said.size()) - 1.0);
        for (const std::string& line : said) {
            items.emplace_back(makeText({after, baseline}, line, {.size = type}));
            baseline += 1.25 * type;
        }
        const double ruled = lengthBase + size(4.0);
        items.emplace_back(makeLine({m_room.left, ruled}, {m_room.right, ruled}, LineKind::Visible));
        return ruled;
    }

    /// Two columns, three beside another row.
    [[nodiscard]] std::vector<Box> columnsIn(double top, double bottom) const {
        const int count = m_small ? 3 : 2;
        const double gap = size(6.0), wide = (m_room.right - m_room.left + gap) / count;
        std::vector<Box> columns;
        for (int i = 0; i < count; ++i) {
            const double left = m_room.left + i * wide;
            columns.push_back({left, top, left + wide - gap, bottom});
        }
        return columns;
    }

    /// Name and length in one line where they fit, what stands beside them on a whole sheet in lines below.
    double smallHeader() {
        std::vector<Item>& items = sheet().items;
        const double nameSize = sizeForCapitals(leastName), lengthSize = sizeForCapitals(typeSize::length);
        const std::string length = cutLengthText(m_piece.cutLength(), m_units);
        const double lengthWidth = textWidth(length, lengthSize, Weight::Bold);
        const bool beside = textWidth(m_piece.name(), nameSize, Weight::Bold) + 6.0 + lengthWidth <=
                            m_room.right - m_room.left;
        double y = m_room.top + leastName;
        items.emplace_back(
            makeText({m_room.left, y}, m_piece.name(), {.size = nameSize, .weight = Weight::Bold}));
        double from = m_room.left;
        if (beside) {
            items.emplace_back(
                makeText({m_room.right, y},
                         length,
                         {.size = lengthSize, .weight = Weight::Bold, .anchor = Anchor::Right}));
            y += 2.0;
        } else {
            items.emplace_back(makeText(
                {from, y + 3.0 + typeSize::length}, length, {.size = lengthSize, .weight = Weight::Bold}));
            from += lengthWidth + 5.0;
            y += 3.0 + typeSize::length - 2 * 1.25 * smallHeadType;
        }
        const std::string words = cutSentence(m_piece, m_units) + " " + neighbourSentence(m_piece, m_plan);
        for (const std::string& said :
             {say("Row {}", m_piece.row()) + ", " + kindWords(m_piece) + ", " + orderWords(m_piece), words})
            for (const std::string& line : wrap(said, m_room.right - from, smallHeadType)) {
                y += 1.25 * smallHeadType;
                items.emplace_back(makeText({from, y}, line, {.size = smallHeadType}));
            }
        const double ruled = y + 2.0;
        items.emplace_back(makeLine({m_room.left, ruled}, {m_room.right, ruled}, LineKind::Thin));
        return ruled;
    }

    double wholeStrip(double top) {
        std::vector<NamedMark> marks;
        for (const StationMark& mark : m_marks)
            marks.push_back({mark, m_names[mark.station]});
        const double width = m_room.right - m_room.left, small = size(typeSize::small);
        const Drawing drawing = drawStrip(m_flat,
                                          marks,
                                          width,
                                          m_drawingHeight,
                                          m_k,
                                          colourOf(difficultyOf(strip())),
                                          scarfsOf(m_stock, strip().id));
        for (const Item& item : drawing.items)
            sheet().items.push_back(moved(item, {m_room.left, top}));
        std::string caption = drawing.caption;
        if (m_piece.mirror != nullptr)
            caption += " " + say("{} is the mirror image.", m_piece.mirror->id);
        else if (strip().side == Side::Port)
            caption += " " + say("Shown as its starboard mirror image.");
        const double baseline = top + drawing.height + 1.3 * small;
        sheet().items.emplace_back(
            makeText({m_room.left, baseline},
                     caption,
                     {.size = sizeToFit(caption, width, small), .colour = colours::pencil}));
        return baseline + size(2.0);
    }

    // Pieces and scarfs, over the whole width: in a column they would cost most sheets a second page.
    double madeOf(double top) {
        const std::optional<Note> made = scarfNote(m_piece, m_stock, m_places, m_units);
        if (!made)
            return top;
        std::string words = made->heading + ": ";
        for (const std::string& sentence : made->paragraphs)
            words += (sentence == made->paragraphs.front() ? "" : " ") + sentence;
        const double type = 0.9 * m_noteSize;
        double y = top + 0.5 * m_k;
        for (const std::string& line : wrap(words, m_room.right - m_room.left, type)) {
            y += 1.2 * type;
            sheet().items.emplace_back(makeText({m_room.left, y}, line, {.size = type}));
        }
        return y + size(2.4);
    }

    /// @return where the columns above must end
    double tickBoxes() {
        const double height = size(8.0), base = m_room.bottom - size(2.0), type = size(typeSize::note);
        const double box = size(3.6);
        double x = m_room.left;
        std::vector<std::string> ids{strip().id};
        if (m_piece.mirror != nullptr)
            ids.push_back(m_piece.mirror->id);
        for (const std::string& id : ids) {
            sheet().items.emplace_back(makeText({x, base}, id, {.size = type, .weight = Weight::SemiBold}));
            x += textWidth(id, type, Weight::SemiBold) + size(2.5);
            for (const std::string& word : {say("milled"), say("dry fitted"), say("laid")}) {
                sheet().items.emplace_back(makeBox({x, base - box, x + box, base}, LineKind::Thin));
                x += box + size(1.6);
                sheet().items.emplace_back(makeText({x, base}, word, {.size = type}));
                x += textWidth(word, type) + size(2.8);
            }
            x = std::max(x, (m_room.left + m_room.right) / 2 + size(3.0));
        }
        return m_room.bottom - height - size(1.0);
    }

    std::vector<Box> goOn() {
        m_sheets.push_back(blankSheet(m_page, m_piece.name()));
        const double type = size(8.0);
        const double base = m_room.top + type * capHeight;
        sheet().items.emplace_back(makeText({m_room.left, base},
                                            say("{}, continued", m_piece.name()),
                                            {.size = type, .weight = Weight::Bold}));
        return columnsIn(base + size(6.0), m_room.bottom);
    }

    void notes(Flow& flow) {
        std::vector<Note> all = notesOn(m_piece, m_plan, m_places, m_units);
        write(flow, all.front());
        for (const StripEnd& end : strip().ends)
            writeEnd(flow, end);
        for (std::size_t i = 1; i < all.size(); ++i)
            write(flow, all[i]);
    }

    Slice headingSlice(const std::string& words, double width, std::optional<Difficulty> difficulty) const {
        const double height = 1.42 * m_noteSize, base = 1.02 * m_noteSize;
        Slice slice{height, {}, true};
        double x = 0.0;
        if (difficulty) {
            slice.items.emplace_back(
                makeBox({0.2, base - size(3.6), size(3.8), base}, LineKind::Thin, colourOf(*difficulty)));
            x = size(5.4);
        }
        const double type = sizeToFit(words, width - x, m_noteSize, Weight::Bold);
        slice.items.emplace_back(makeText({x, base}, words, {.size = type, .weight = Weight::Bold}));
        return slice;
    }

    void write(Flow& flow, const Note& note) {
        std::vector<Slice> slices{headingSlice(note.heading, flow.width(), note.difficulty)};
        for (const std::string& text : note.paragraphs)
            for (Slice& slice : paragraph(text, flow.width(), {.size = m_noteSize}, notePitch * m_noteSize))
                slices.push_back(std::move(slice));
        flow.addTogether(slices);
        flow.gap(size(2.2));
    }

    void writeEnd(Flow& flow, const StripEnd& end) {
        const Drawing drawing = drawEnd(m_flat, end, m_project.strips.thickness, flow.width(), m_k);
        const std::string name = end.end == End::Bow ? say("Bow end") : say("Stern end");
        std::vector<Slice> slices{headingSlice(
            name + (drawing.caption.empty() ? "" : ", " + drawing.caption), flow.width(), std::nullopt)};
        if (!drawing.items.empty())
            slices.push_back({drawing.height, drawing.items, true});
        std::string words = endText(end, m_units, m_piece.mirror != nullptr);
        words.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(words.front())));
        for (Slice& slice : paragraph(words, flow.width(), {.size = m_noteSize}, notePitch * m_noteSize))
            slices.push_back(std::move(slice));
        flow.addTogether(slices);
        flow.gap(size(2.2));
    }

    const Project& m_project;
    const Plan& m_plan;
    const StockPlan* m_stock; // may be null
    Units m_units;
    Page m_page;
    Piece m_piece;
    Box m_room;
    double m_k;
    Places m_places;
    std::vector<std::string> m_names;
    FlatStrip m_flat;
    std::vector<StationMark> m_marks;
    std::vector<Sheet> m_sheets;
    bool m_small = false;                       // it shares a page
    double m_tablePitch = 6.8;                  // mm, line to line of the table
    double m_tableSize = typeSize::table * m_k; // mm
    double m_noteSize = typeSize::note;         // mm, of the notes in the columns
    double m_drawingHeight = 28.0;              // mm, of the whole strip
};

} // namespace

std::vector<Sheet> pieceSheets(const SheetContext& of, const Page& page, const Piece& piece) {
    return PieceSheet(of, page, piece).make();
}

std::optional<std::vector<Item>>
smallPiece(const SheetContext& of, const Page& page, const Piece& piece, double height) {
    return PieceSheet(of, page, piece).makeSmall(height);
}

} // namespace sheerlay::core

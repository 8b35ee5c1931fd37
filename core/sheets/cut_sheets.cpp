#include "core/sheets/cut_sheets.hpp"

#include "core/hull/station_names.hpp"
#include "core/sheets/compose.hpp"
#include "core/sheets/cover.hpp"
#include "core/sheets/page_frame.hpp"
#include "core/sheets/pieces.hpp"
#include "core/sheets/scarf_notes.hpp"
#include "core/sheets/strip_drawing.hpp"
#include "core/sheets/strip_notes.hpp"
#include "core/sheets/words.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cctype>

namespace sheerlay::core {

namespace {

constexpr double notePitch = 1.2;  // line to line, of the size of type
constexpr double leastName = 20.0; // mm, height of capitals that are read across a shop

/// Lays out the page or pages of one piece.
class PieceSheet {
public:
    PieceSheet(const Project& project,
               const LoftedHull& hull,
               const Plan& plan,
               Units units,
               const Page& page,
               const Piece& piece,
               const StockPlan* stock)
        : m_project(project), m_plan(plan), m_stock(stock), m_units(units), m_page(page), m_piece(piece),
          m_room(roomOf(page)), m_k(page.scale), m_places(project, hull),
          m_names(stationNames(project, hull)), m_flat(layStraight(*piece.strip)),
          m_marks(stationMarks(*piece.strip, hull.stationX)) {}

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

private:
    void layOut() {
        m_sheets.push_back(blankSheet(m_page, m_piece.name()));
        double y = header();
        y = madeOf(wholeStrip(y + 2.0 * m_k));
        const double bottom = tickBoxes();
        const double middle = (m_room.left + m_room.right) / 2, half = 3.0 * m_k;
        sheet().items.emplace_back(makeLine({middle, y}, {middle, bottom}, LineKind::Thin, colours::pencil));
        Flow flow(m_sheets,
                  {{m_room.left, y, middle - half, bottom}, {middle + half, y, m_room.right, bottom}},
                  [this] { return goOn(); });
        table(flow, bottom - y);
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
        const std::string between = placeText(strip().length, m_units);
        std::string words = say("to cut; about {} of it stays on the boat.", between) + " ";
        words += neighbourSentence(m_piece, m_plan);
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

    double wholeStrip(double top) {
        std::vector<NamedMark> marks;
        for (const StationMark& mark : m_marks)
            marks.push_back({mark, m_names[mark.station]});
        const double width = m_room.right - m_room.left, height = m_drawingHeight,
                     small = size(typeSize::small);
        const Drawing drawing = drawStrip(m_flat,
                                          marks,
                                          width,
                                          height,
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
        const double baseline = top + height + 1.3 * small;
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
        const double top = base + size(6.0), middle = (m_room.left + m_room.right) / 2, half = size(3.0);
        return {{m_room.left, top, middle - half, m_room.bottom},
                {middle + half, top, m_room.right, m_room.bottom}};
    }

    void table(Flow& flow, double columnHeight) {
        struct Line {
            std::string name, along, width;
        };
        const auto lineAt = [&](const std::string& name, double along, double width) {
            return Line{name, bare(placeText(along, m_units)), bare(widthText(width, m_units))};
        };
        std::vector<Line> lines{lineAt(say("bow end"), 0.0, widthAt(strip(), 0.0))};
        for (const StationMark& mark : m_marks)
            lines.push_back(lineAt(m_names[mark.station], mark.along, mark.width));
        lines.push_back(lineAt(say("stern end"), strip().length, widthAt(strip(), strip().length)));

        const double type = size(typeSize::table), heading = size(typeSize::note), pitch = m_tablePitch;
        const double width = flow.width(), alongAt = width - size(25.0);
        const bool metric = m_units == Units::Millimetres;
        const auto headings = [&] {
            Slice slice{size(7.0), {}, true};
            const double base = size(4.4);
            const auto put = [&](double x, const std::string& word, Anchor anchor) {
                slice.items.emplace_back(makeText(
                    {x, base}, word, {.size = heading, .weight = Weight::SemiBold, .anchor = anchor}));
            };
            put(0.0, say("Station"), Anchor::Left);
            put(alongAt, metric ? say("from bow, mm") : say("from bow"), Anchor::Right);
            put(width, metric ? say("width, mm") : say("width"), Anchor::Right);
            slice.items.emplace_back(makeLine({0.0, size(6.2)}, {width, size(6.2)}, LineKind::Thin));
            return slice;
        };
        const std::string remark = tableRemark();
        const double small = size(typeSize::small);
        const auto perColumn = static_cast<std::size_t>(std::max(1.0, (columnHeight - size(7.0)) / pitch));
        for (std::size_t i = 0; i < lines.size(); i += perColumn) {
            std::vector<Slice> slices{headings()};
            for (std::size_t j = i; j < std::min(lines.size(), i + perColumn); ++j) {
                const double base = pitch / 2 + type * capHeight / 2;
                Slice slice{pitch, {}, false};
                const double nameRoom = alongAt - textWidth(lines[j].along, type) - size(2.0);
                slice.items.emplace_back(
                    makeText({0.0, base}, lines[j].name, {.size = sizeToFit(lines[j].name, nameRoom, type)}));
                slice.items.emplace_back(
                    makeText({alongAt, base}, lines[j].along, {.size = type, .anchor = Anchor::Right}));
                slice.items.emplace_back(
                    makeText({width, base}, lines[j].width, {.size = type, .anchor = Anchor::Right}));
                slices.push_back(slice);
            }
            flow.add(slices);
        }
        flow.gap(size(1.0));
        flow.add(paragraph(remark, flow.width(), {.size = small, .colour = colours::pencil}, 1.35 * small));
        flow.gap(size(3.0));
    }

    // The heading says millimetres once; feet and inches keep their marks.
    static std::string bare(std::string text) {
        if (text.ends_with(" mm"))
            text.resize(text.size() - 3);
        return text;
    }

    [[nodiscard]] std::string tableRemark() const {
        const double bead = m_project.strips.width - m_project.strips.coverWidth;
        std::string text = say("Along the strip's middle, from where it meets the line it ends on.") + " ";
        text += bead > 0.05 ? say("Widths are cover; the bead stands {} beyond.", stockText(bead, m_units))
                            : say("Widths stand square to the middle.");
        if (strip().planed == PlanedEdge::Lower)
            text += " " + say("Plane the lower edge down to these widths; the upper edge stays as it was "
                              "milled, and its bend is the one told here.");
        if (strip().planed == PlanedEdge::Upper)
            text += " " + say("Plane the upper edge down to these widths; the lower edge stays as it was "
                              "milled, and its bend is the one told here.");
        return text;
    }

    void notes(Flow& flow) {
        std::vector<Note> all = notesOn(m_piece, m_plan, m_places, m_units);
        write(flow, all.front());
        for (const StripEnd& end : strip().ends)
            writeEnd(flow, end);
        for (std::size_t i = 1; i < all.size(); ++i)
            write(flow, all[i]);
    }

    Slice headingSlice(const std::string& words, std::optional<Difficulty> difficulty) const {
        const double type = m_noteSize, height = 1.42 * type, base = 1.02 * type;
        Slice slice{height, {}, true};
        double x = 0.0;
        if (difficulty) {
            slice.items.emplace_back(
                makeBox({0.2, base - size(3.6), size(3.8), base}, LineKind::Thin, colourOf(*difficulty)));
            x = size(5.4);
        }
        slice.items.emplace_back(makeText({x, base}, words, {.size = type, .weight = Weight::Bold}));
        return slice;
    }

    void write(Flow& flow, const Note& note) {
        std::vector<Slice> slices{headingSlice(note.heading, note.difficulty)};
        for (const std::string& text : note.paragraphs)
            for (Slice& slice : paragraph(text, flow.width(), {.size = m_noteSize}, notePitch * m_noteSize))
                slices.push_back(std::move(slice));
        flow.addTogether(slices);
        flow.gap(size(2.2));
    }

    void writeEnd(Flow& flow, const StripEnd& end) {
        const Drawing drawing = drawEnd(m_flat, end, m_project.strips.thickness, flow.width(), m_k);
        const std::string name = end.end == End::Bow ? say("Bow end") : say("Stern end");
        std::vector<Slice> slices{
            headingSlice(name + (drawing.caption.empty() ? "" : ", " + drawing.caption), std::nullopt)};
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
    double m_tablePitch = 6.8;          // mm, line to line of the table
    double m_noteSize = typeSize::note; // mm, of the notes in the columns
    double m_drawingHeight = 28.0;      // mm, of the whole strip
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
    std::vector<Sheet> sheets = coverSheets(project, hull, plan, units, size);
    for (const Piece& piece : piecesOf(plan))
        for (Sheet& sheet : PieceSheet(project, hull, plan, units, page, piece, stock).make())
            sheets.push_back(std::move(sheet));
    addFeet(sheets, project, units, page);
    return sheets;
}

} // namespace sheerlay::core

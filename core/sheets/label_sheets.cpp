#include "core/sheets/compose.hpp"
#include "core/sheets/page_frame.hpp"
#include "core/sheets/stock_sheets.hpp"
#include "core/sheets/words.hpp"
#include "core/stock/stock_words.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <map>

namespace sheerlay::core {

namespace {

constexpr int across = 3, down = 9;
constexpr double inset = 3.0; // mm at scale 1, from a label's edge to its words

struct Label {
    std::string strip, piece, length, from;
};

std::vector<Item> draw(const Label& label, const Box& box, double k) {
    std::vector<Item> items;
    const double left = box.left + inset * k, right = box.right - inset * k, width = right - left;
    const double big = sizeForCapitals(8.0 * k), note = typeSize::note * k, small = typeSize::small * k;
    const double nameBase = box.top + (inset + 8.0) * k;
    const double arrowWidth = 9.0 * k, arrowAt = nameBase - 4.0 * k;
    const double nameSize = sizeToFit(label.strip, width - arrowWidth - 16.0 * k, big, Weight::Bold);
    Path arrow; // toward the bow, which lies to the left
    arrow.points = {
        {left + 3.0 * k, arrowAt - 2.0 * k}, {left, arrowAt}, {left + 3.0 * k, arrowAt + 2.0 * k}};
    items.emplace_back(arrow);
    items.emplace_back(makeLine({left, arrowAt}, {left + arrowWidth - 2.0 * k, arrowAt}, LineKind::Visible));
    items.emplace_back(makeText(
        {left, arrowAt + 2.6 * k + small}, toText(End::Bow), {.size = small, .colour = colours::pencil}));
    items.emplace_back(
        makeText({left + arrowWidth, nameBase}, label.strip, {.size = nameSize, .weight = Weight::Bold}));
    items.emplace_back(makeText({right, nameBase}, label.piece, {.size = note, .anchor = Anchor::Right}));
    const double lengthBase = nameBase + 8.0 * k;
    items.emplace_back(
        makeText({left, lengthBase},
                 label.length,
                 {.size = sizeToFit(label.length, width, typeSize::table * k, Weight::SemiBold),
                  .weight = Weight::SemiBold}));
    items.emplace_back(makeText({left, lengthBase + 4.4 * k},
                                shortened(label.from, width, small),
                                {.size = small, .colour = colours::pencil}));
    return items;
}

} // namespace

std::vector<Sheet> labelSheets(const Project& project, const StockPlan& stock, Units units, PageSize size) {
    const Speaking speaking(project.language);
    std::map<std::string, const StockStrip*> stripOf;
    for (const StockStrip& strip : stock.strips)
        stripOf[strip.strip] = &strip;
    std::vector<Label> labels;
    for (const Stick& stick : stock.sticks)
        for (const Stick::Part& part : stick.parts) {
            const StockStrip& strip = *stripOf.at(part.strip);
            labels.push_back({part.strip,
                              strip.pieces.size() == 1 ? say("whole|of a strip")
                                                       : say("{} of {}", part.number, strip.pieces.size()),
                              pieceText(part.toCut, units),
                              say("from {}, {}", stick.name, spoken(strip.wood))});
        }
    const Page page = pageOf(size);
    const Box room = roomOf(page);
    const double k = page.scale, headHeight = 8.0 * k;
    const double wide = (room.right - room.left) / across,
                 high = (room.bottom - room.top - headHeight) / down;
    std::vector<Sheet> sheets;
    for (std::size_t i = 0; i < labels.size(); ++i) {
        const std::size_t place = i % (across * down);
        if (place == 0) {
            sheets.push_back(blankSheet(page, say("{}, labels", project.name)));
            const std::string words = say(
                "Labels for the pieces, in the order of cutting. Cut apart and tape to the face that will "
                "lie on the moulds.");
            sheets.back().items.emplace_back(
                makeText({room.left, room.top + 4.0 * k},
                         words,
                         {.size = sizeToFit(words, room.right - room.left, typeSize::note * k)}));
        }
        const double left = room.left + wide * static_cast<double>(place % across);
        const double top = room.top + headHeight + high * static_cast<double>(place / across);
        const Box box{left, top, left + wide, top + high};
        sheets.back().items.emplace_back(makeBox(box, LineKind::Thin));
        for (Item& item : draw(labels[i], box, k))
            sheets.back().items.push_back(std::move(item));
    }
    return sheets;
}

} // namespace sheerlay::core

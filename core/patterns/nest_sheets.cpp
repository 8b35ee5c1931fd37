#include "core/patterns/nest_sheets.hpp"

#include "core/sheets/list_pages.hpp"
#include "core/sheets/page_frame.hpp"
#include "core/sheets/words.hpp"
#include "core/units/length.hpp"

#include <algorithm>
#include <numbers>

namespace sheerlay::core {

namespace {

using Eigen::Vector2d;

/// Starboard's half outline and its image, joined along the centreline.
std::vector<Vector2d> wholeOf(const std::vector<Vector2d>& half) {
    std::vector<Vector2d> side;
    constexpr double onCentre = 1e-9;
    const auto start = std::ranges::find_if(half, [](const Vector2d& p) { return p.x() <= onCentre; });
    // from the last point on the centreline round to the first
    std::vector<Vector2d> turned(start, half.end());
    turned.insert(turned.end(), half.begin(), start);
    for (const Vector2d& p : turned)
        if (p.x() > onCentre)
            side.push_back(p);
    std::vector<Vector2d> all = side;
    for (std::size_t i = side.size(); i-- > 0;)
        all.emplace_back(-side[i].x(), side[i].y());
    return all;
}

std::vector<Vector2d> mirrored(const std::vector<Vector2d>& outline) {
    std::vector<Vector2d> image;
    for (auto p = outline.rbegin(); p != outline.rend(); ++p)
        image.emplace_back(-p->x(), p->y());
    return image;
}

/// The box a part takes on its sheet.
struct Place {
    Vector2d low = Vector2d(1e9, 1e9), high = Vector2d(-1e9, -1e9);
    [[nodiscard]] Vector2d middle() const { return 0.5 * (low + high); }
};

Place placeOf(const NestedPart& part, const std::vector<Vector2d>& outline) {
    Place place;
    for (const Vector2d& p : outline) {
        place.low = place.low.cwiseMin(part.onSheet(p));
        place.high = place.high.cwiseMax(part.onSheet(p));
    }
    return place;
}

/// A part's name in its middle, upright in a part that is narrower than the name.
Text nameIn(const Place& place, const std::string& name, double scale, double high, double k) {
    const Vector2d size = (place.high - place.low) * scale;
    const double type = sizeToFit(name, 0.9 * std::max(size.x(), size.y()), typeSize::small * k);
    const bool upright = size.x() < textWidth(name, type) && size.y() > size.x();
    const Vector2d at(place.middle().x() * scale, high - place.middle().y() * scale);
    const double drop = type * capHeight / 2;
    return makeText(
        at + (upright ? Vector2d(drop, 0) : Vector2d(0, drop)),
        name,
        {.size = type, .anchor = Anchor::Middle, .rotation = upright ? -std::numbers::pi / 2 : 0.0});
}

std::string sheetName(std::size_t index) {
    return "sheet " + std::to_string(index + 1);
}

std::string capital(std::string words) {
    if (!words.empty() && words.front() >= 'a' && words.front() <= 'z')
        words.front() = static_cast<char>(words.front() - 'a' + 'A');
    return words;
}

std::string byText(double length, double width, Units units) {
    return formatLength(length, units, 16) + " by " + formatLength(width, units, 16);
}

double longestSheet(const NestedBoards& boards) {
    return std::ranges::max_element(boards.goods.sizes, {}, &SheetSize::length)->length;
}

/// A sheet drawn small, `width` mm of paper long; y down.
std::vector<Item> drawn(const NestedBoards& boards, std::size_t index, double width, double k) {
    const double scale = width / boards.sizeOf(index).length, high = boards.sizeOf(index).width * scale;
    std::vector<Item> items{makeBox({0.0, 0.0, width, high}, LineKind::Visible, colours::bench)};
    std::vector<Item> names;
    for (const NestedPart& part : boards.nesting.sheets[index].parts) {
        Path path;
        path.closed = true;
        path.line = LineKind::Thin;
        path.fill = colours::white;
        for (const Vector2d& p : boards.parts[part.part].outline) {
            const Vector2d q = part.onSheet(p) * scale;
            path.points.emplace_back(q.x(), high - q.y());
        }
        items.emplace_back(std::move(path));
        const SawnPart& sawn = boards.parts[part.part];
        names.emplace_back(nameIn(placeOf(part, sawn.outline), sawn.name, scale, high, k));
    }
    items.insert(items.end(), names.begin(), names.end());
    return items;
}

} // namespace

std::vector<SawnPart> sawnParts(const MouldSet& set) {
    std::vector<SawnPart> parts;
    for (const Mould& mould : set.moulds) {
        if (mould.stemCut > 0.0) {
            parts.push_back({mould.name + " S", mould.outline});
            parts.push_back({mould.name + " P", mirrored(mould.outline)});
        } else {
            parts.push_back({mould.name, wholeOf(mould.outline)});
        }
    }
    for (const StemForm& form : set.stemForms)
        parts.push_back({std::string(toText(form.end)) + " stem", form.outline});
    return parts;
}

NestedBoards nestMoulds(const MouldSet& set, const MouldChoices& choices) {
    NestedBoards boards;
    boards.parts = sawnParts(set);
    boards.goods = {choices.sheets, choices.kerf};
    std::vector<std::vector<Vector2d>> outlines;
    for (const SawnPart& part : boards.parts)
        outlines.push_back(part.outline);
    boards.nesting = nest(outlines, boards.goods);
    return boards;
}

std::vector<Finding> nestingFindings(const NestedBoards& boards, Units units) {
    std::vector<Finding> findings;
    const auto tell = [&](const char* code, std::string text) {
        findings.push_back({Level::Caution, code, std::nullopt, std::nullopt, std::move(text)});
    };
    for (const std::size_t part : boards.nesting.tooLarge) {
        const SawnPart& sawn = boards.parts[part];
        const Place place = placeOf({part, 0, Vector2d::Zero()}, sawn.outline);
        const Vector2d size = place.high - place.low;
        tell("mould-larger-than-sheet",
             capital(sawn.name) + " measures " + byText(size.maxCoeff(), size.minCoeff(), units) +
                 " and no sheet of [moulds] holds it; a larger one would do, or saw it in two pieces joined "
                 "by "
                 "a batten.");
    }
    if (!boards.nesting.left.empty()) {
        std::string names;
        for (const std::size_t part : boards.nesting.left)
            names += (names.empty() ? "" : ", ") + boards.parts[part].name;
        tell("sheets-run-out",
             "No sheet is left for " + names +
                 "; a larger count under [[moulds.sheet]] would do, or a size "
                 "without one, of which as many are taken as are needed.");
    }
    return findings;
}

std::vector<Pattern> nestedPatterns(const NestedBoards& boards) {
    std::vector<Pattern> patterns;
    for (std::size_t i = 0; i < boards.nesting.sheets.size(); ++i) {
        Pattern pattern;
        pattern.file = "moulds-on-sheet-" + std::string(i + 1 < 10 ? "0" : "") + std::to_string(i + 1);
        pattern.title = "Moulds on " + sheetName(i);
        const SheetSize& size = boards.sizeOf(i);
        pattern.lines.push_back({Layer::Mark,
                                 {{0, 0}, {size.length, 0}, {size.length, size.width}, {0, size.width}},
                                 true,
                                 LineKind::Thin,
                                 {}});
        for (const NestedPart& part : boards.nesting.sheets[i].parts) {
            std::vector<Vector2d> outline;
            for (const Vector2d& p : boards.parts[part.part].outline)
                outline.push_back(part.onSheet(p));
            pattern.lines.push_back({Layer::Cut, std::move(outline), true, LineKind::Visible, {}});
            pattern.texts.push_back({placeOf(part, boards.parts[part.part].outline).middle(),
                                     boards.parts[part.part].name,
                                     12.0});
        }
        patterns.push_back(std::move(pattern));
    }
    return patterns;
}

std::vector<Sheet>
nestedPages(const Project& project, const NestedBoards& boards, Units units, PageSize size) {
    ListPages pages(pageOf(size), project.name + ", moulds on sheets");
    const Nesting& nesting = boards.nesting;
    const std::size_t laid = boards.parts.size() - nesting.tooLarge.size() - nesting.left.size();
    std::string sizes;
    for (std::size_t s = 0; s < boards.goods.sizes.size(); ++s) {
        const auto count = std::ranges::count(nesting.sheets, s, &NestedSheet::size);
        if (count == 0)
            continue;
        const SheetSize& each = boards.goods.sizes[s];
        sizes += (sizes.empty() ? "" : " and ") +
                 countText(static_cast<std::size_t>(count), "sheet", "sheets") + " of " +
                 byText(each.length, each.width, units);
    }
    if (laid > 0)
        pages.text(sizes + ", " + formatLength(project.moulds.thickness, units, 16) + " thick, hold " +
                   countText(laid, "part", "parts") + " with " + formatLength(boards.goods.gap, units, 16) +
                   " between them for the saw; by their area alone " +
                   countText(static_cast<std::size_t>(nesting.leastByArea), "sheet", "sheets") +
                   " would be needed at least. The board is taken to have no grain. S and P are the halves "
                   "that stand on either side of a stem form.");
    for (const Finding& finding : nestingFindings(boards, units))
        pages.text(finding.text);
    for (std::size_t i = 0; i < nesting.sheets.size(); ++i) {
        const double width = pages.width() * boards.sizeOf(i).length / longestSheet(boards);
        const double high = width * boards.sizeOf(i).width / boards.sizeOf(i).length;
        std::vector<Item> items{makeText({0.0, pages.size(4.5)},
                                         capital(sheetName(i)),
                                         {.size = pages.size(typeSize::note), .weight = Weight::Bold})};
        for (const Item& item : drawn(boards, i, width, pages.size(1.0)))
            items.push_back(moved(item, {0.0, pages.size(6.5)}));
        pages.drawing(items, high + pages.size(7.0));
    }
    std::vector<Sheet> sheets = pages.take();
    addFeet(sheets, project, units, pageOf(size));
    return sheets;
}

} // namespace sheerlay::core

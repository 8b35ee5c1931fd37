#include "core/patterns/nest_sheets.hpp"

#include "core/sheets/list_pages.hpp"
#include "core/sheets/page_frame.hpp"
#include "core/sheets/words.hpp"
#include "core/units/both_units.hpp"
#include "core/units/length.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
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
};

Place placeOf(const NestedPart& part, const std::vector<Vector2d>& outline) {
    Place place;
    for (const Vector2d& p : outline) {
        place.low = place.low.cwiseMin(part.onSheet(p));
        place.high = place.high.cwiseMax(part.onSheet(p));
    }
    return place;
}

/// How far a part reaches from a place to both sides of it, along and across; 0 outside the part.
Vector2d reachAt(const std::vector<Vector2d>& outline, const Vector2d& at) {
    Vector2d least(1e9, 1e9);
    for (const int axis : {0, 1}) {
        const int other = 1 - axis;
        int before = 0; // edges crossed on the way out
        for (std::size_t i = 0; i < outline.size(); ++i) {
            const Vector2d &a = outline[i], &b = outline[(i + 1) % outline.size()];
            if ((a[other] <= at[other]) == (b[other] <= at[other]))
                continue;
            const double crossing =
                a[axis] + (at[other] - a[other]) / (b[other] - a[other]) * (b[axis] - a[axis]);
            before += crossing < at[axis] ? 1 : 0;
            least[axis] = std::min(least[axis], std::abs(crossing - at[axis]));
        }
        if (before % 2 == 0)
            return Vector2d::Zero();
    }
    return least;
}

/// Where a part's name stands on its sheet: amid the widest of its places that reach equally far to both
/// sides.
struct NamePlace {
    Vector2d at = Vector2d::Zero(), reach = Vector2d::Zero(); ///< mm on the sheet
};

NamePlace namePlaceOf(const NestedPart& part, const std::vector<Vector2d>& outline) {
    constexpr int steps = 24; // of a grid over the part
    std::vector<Vector2d> laid;
    for (const Vector2d& p : outline)
        laid.push_back(part.onSheet(p));
    const Place box = placeOf(part, outline);
    NamePlace best;
    double room = 0.0;
    for (int i = 1; i < steps; ++i)
        for (int j = 1; j < steps; ++j) {
            const Vector2d at =
                box.low + (box.high - box.low).cwiseProduct(Vector2d(i, j) / static_cast<double>(steps));
            const Vector2d reach = reachAt(laid, at);
            const double area = reach.minCoeff() * std::sqrt(reach.maxCoeff()); // wide before long
            if (area > room) {
                room = area;
                best = {at, reach};
            }
        }
    return best;
}

/// A part's name, upright where there is more room for it so.
Text nameIn(const NamePlace& place, const std::string& name, double scale, double high, double k) {
    const Vector2d room = 2 * scale * place.reach;
    const double wanted = typeSize::small * k;
    const bool upright = textWidth(name, wanted) > 0.9 * room.x() && room.y() > room.x();
    const double type = std::min(sizeToFit(name, 0.9 * (upright ? room.y() : room.x()), wanted),
                                 1.2 * (upright ? room.x() : room.y()));
    const Vector2d at(place.at.x() * scale, high - place.at.y() * scale);
    const double drop = type * capHeight / 2;
    return makeText(
        at + (upright ? Vector2d(drop, 0) : Vector2d(0, drop)),
        name,
        {.size = type, .anchor = Anchor::Middle, .rotation = upright ? -std::numbers::pi / 2 : 0.0});
}

std::string sheetName(std::size_t index) {
    return say("sheet {}|of board", index + 1);
}

std::string capital(std::string words) {
    if (!words.empty() && words.front() >= 'a' && words.front() <= 'z')
        words.front() = static_cast<char>(words.front() - 'a' + 'A');
    return words;
}

std::string byText(double length, double width, Units units) {
    return say("{} by {}", formatLength(length, units, 16), formatLength(width, units, 16));
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
        names.emplace_back(nameIn(namePlaceOf(part, sawn.outline), say(sawn.name), scale, high, k));
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
        parts.push_back({form.end == End::Bow ? sayable("bow stem") : sayable("stern stem"), form.outline});
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
             say("{} measures {} and no sheet of [moulds] holds it; a larger one would do, or saw it in two "
                 "pieces joined by a batten.",
                 capital(say(sawn.name)),
                 byText(size.maxCoeff(), size.minCoeff(), units)));
    }
    if (!boards.nesting.left.empty()) {
        std::string names;
        for (const std::size_t part : boards.nesting.left)
            names += (names.empty() ? "" : ", ") + say(boards.parts[part].name);
        tell("sheets-run-out",
             say("No sheet is left for {}; a larger count under [[moulds.sheet]] would do, or a size without "
                 "one, of which as many are taken as are needed.",
                 names));
    }
    return findings;
}

std::vector<Pattern> nestedPatterns(const NestedBoards& boards) {
    std::vector<Pattern> patterns;
    for (std::size_t i = 0; i < boards.nesting.sheets.size(); ++i) {
        Pattern pattern;
        pattern.file = "moulds-on-sheet-" + std::string(i + 1 < 10 ? "0" : "") + std::to_string(i + 1);
        pattern.title = say("Moulds on {}", sheetName(i));
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
            pattern.texts.push_back({namePlaceOf(part, boards.parts[part.part].outline).at,
                                     say(boards.parts[part.part].name),
                                     12.0});
        }
        patterns.push_back(std::move(pattern));
    }
    return patterns;
}

std::vector<Sheet>
nestedPages(const Project& project, const NestedBoards& boards, Units units, PageSize size) {
    const Speaking speaking(project.language);
    ListPages pages(pageOf(size), say("{}, moulds on sheets", project.name));
    const Nesting& nesting = boards.nesting;
    const std::size_t laid = boards.parts.size() - nesting.tooLarge.size() - nesting.left.size();
    std::string sizes;
    for (std::size_t s = 0; s < boards.goods.sizes.size(); ++s) {
        const auto count = std::ranges::count(nesting.sheets, s, &NestedSheet::size);
        if (count == 0)
            continue;
        const SheetSize& each = boards.goods.sizes[s];
        const std::string some = say("{} of {}|sheets",
                                     countText(static_cast<std::size_t>(count), say("sheet"), say("sheets")),
                                     byText(each.length, each.width, units));
        sizes = sizes.empty() ? some : say("{} and {}", sizes, some);
    }
    if (laid > 0)
        pages.text(
            say("{}, {} thick, hold {} with {} between them for the saw; by their area alone {} would be "
                "needed at least. The board is taken to have no grain. S and P are the halves that stand "
                "on either side of a stem form.",
                sizes,
                formatLength(project.moulds.thickness, units, 16),
                countText(laid, say("part"), say("parts")),
                formatLength(boards.goods.gap, units, 16),
                countText(static_cast<std::size_t>(nesting.leastByArea), say("sheet"), say("sheets"))));
    for (const Finding& finding : nestingFindings(boards, units))
        pages.text(unitsFirst(finding.text, units));
    for (std::size_t i = 0; i < nesting.sheets.size(); ++i) {
        const double width = pages.width() * boards.sizeOf(i).length / longestSheet(boards);
        const double high = width * boards.sizeOf(i).width / boards.sizeOf(i).length;
        std::vector<Item> items{makeText({0.0, pages.size(4.5)},
                                         capital(sheetName(i)) + ", " +
                                             byText(boards.sizeOf(i).length, boards.sizeOf(i).width, units),
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

#include "core/patterns/pattern_pages.hpp"

#include "core/sheets/compose.hpp"
#include "core/units/length.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <utility>

namespace sheerlay::core {

namespace {

using Eigen::Vector2d;

constexpr double leftBand = 12.0;   // mm beside the window, for the upright bars
constexpr double footBand = 32.0;   // mm below it, for the level bars and the words
constexpr double rollWidth = 914.4; // mm, 36 in
constexpr double rollLength = 2400; // mm
constexpr double leastRoll = 260.0; // mm, room for the bars

/// What of a polyline shows in the box.
std::vector<std::vector<Vector2d>> clipped(const std::vector<Vector2d>& line, const Box& box) {
    std::vector<std::vector<Vector2d>> parts;
    bool open = false;
    for (std::size_t i = 1; i < line.size(); ++i) {
        const auto part = partInside(line[i - 1], line[i], box);
        if (!part) {
            open = false;
            continue;
        }
        const Vector2d d = line[i] - line[i - 1];
        if (!open || part->first > 0.0)
            parts.push_back({line[i - 1] + part->first * d});
        parts.back().push_back(line[i - 1] + part->second * d);
        open = part->second >= 1.0;
    }
    return parts;
}

class Tiler {
public:
    Tiler(const Pattern& pattern, const Page& page, std::string boat)
        : m_pattern(pattern), m_page(page), m_boat(std::move(boat)),
          m_extent(extentOf(pattern)), m_window{pageMargin + leftBand,
                                                pageMargin,
                                                page.width - pageMargin,
                                                page.height - pageMargin - footBand} {
        m_columns = count(m_extent.right - m_extent.left, m_window.right - m_window.left);
        m_rows = count(m_extent.top - m_extent.bottom, m_window.bottom - m_window.top);
    }

    std::vector<PatternPage> make() {
        std::vector<PatternPage> pages;
        for (int row = 0; row < m_rows; ++row)
            for (int column = 0; column < m_columns; ++column)
                if (auto page = tile(row, column))
                    pages.push_back(std::move(*page));
        std::map<int, std::vector<Meeting>> joints; // by their numbers
        for (const PatternPage& page : pages)
            for (const Joint& joint : jointsOf(page))
                joints[joint.number].push_back({&page.sheet, joint});
        std::map<int, Crosses> crosses;
        for (const auto& [number, pagesThere] : joints)
            crosses[number] = crossesOn(pagesThere);
        for (std::size_t i = 0; i < pages.size(); ++i)
            finish(pages[i], pages, i, crosses);
        return pages;
    }

private:
    static constexpr double wordsOffFrame = 1.5; // mm
    static constexpr double edge = 3.0; // mm of white between the pattern and its first window's edge

    static int count(double size, double window) {
        return std::max(
            1, static_cast<int>(std::ceil((size + 2 * edge - pageOverlap) / (window - pageOverlap))));
    }

    std::optional<PatternPage> tile(int row, int column) const {
        PatternPage page;
        page.row = row;
        page.column = column;
        page.window = m_window;
        page.sheet.width = m_page.width;
        page.sheet.height = m_page.height;
        page.sheet.title = m_boat + ", " + m_pattern.title;
        page.origin = originOf(row, column);
        const auto onPaper = [&](const Vector2d& p) {
            return Vector2d(page.origin.x() + p.x(), page.origin.y() - p.y());
        };
        for (const PatternLine& line : m_pattern.lines) {
            std::vector<Vector2d> points;
            for (const Vector2d& p : line.points)
                points.push_back(onPaper(p));
            if (line.closed)
                points.push_back(points.front());
            for (std::vector<Vector2d>& part : clipped(points, m_window)) {
                Path path;
                path.points = std::move(part);
                path.line = line.layer == Layer::Cut ? LineKind::Visible : line.kind;
                page.sheet.items.emplace_back(std::move(path));
            }
        }
        if (page.sheet.items.empty())
            return std::nullopt;
        std::vector<Text> texts;
        for (const PatternText& text : m_pattern.texts) {
            if (const Text set = textAt(text, page.origin); holds(inkBox(set), wordsOffFrame))
                texts.push_back(set);
            else if (!isWholeSomewhere(text) && holds({set.at.x(), set.at.y(), set.at.x(), set.at.y()}))
                texts.push_back(movedInside(set));
        }
        for (const PatternLine& line : m_pattern.lines)
            if (!line.name.empty() && line.points.size() == 2)
                if (const auto name = nameOn(line, page.origin, texts))
                    texts.push_back(*name);
        for (const Text& text : texts)
            page.sheet.items.emplace_back(text);
        if (neighboursShowAll(page))
            return std::nullopt;
        return page;
    }

    /// Whether a page holds nothing beyond the bands it shares with the pages before and above it.
    [[nodiscard]] bool neighboursShowAll(const PatternPage& page) const {
        Box own = m_window;
        own.left += page.column > 0 ? pageOverlap : 0.0;
        own.top += page.row > 0 ? pageOverlap : 0.0;
        return std::ranges::none_of(page.sheet.items, [&](const Item& item) {
            if (const auto* text = std::get_if<Text>(&item))
                return inkBox(*text).overlaps(own);
            return enters(std::get<Path>(item), own);
        });
    }

    [[nodiscard]] Vector2d originOf(int row, int column) const {
        const double stepX = m_window.right - m_window.left - pageOverlap;
        const double stepY = m_window.bottom - m_window.top - pageOverlap;
        return {m_window.left + edge - m_extent.left - column * stepX,
                m_window.top + edge + m_extent.top - row * stepY};
    }
    /// @param white  mm that stay free to the frame
    [[nodiscard]] bool holds(const Box& box, double white = 0.0) const {
        return box.left >= m_window.left + white && box.right <= m_window.right - white &&
               box.top >= m_window.top + white && box.bottom <= m_window.bottom - white;
    }
    [[nodiscard]] static Text textAt(const PatternText& text, const Vector2d& origin) {
        return makeText({origin.x() + text.at.x(), origin.y() - text.at.y()},
                        text.text,
                        {.size = text.size, .anchor = Anchor::Middle});
    }
    [[nodiscard]] bool isWholeSomewhere(const PatternText& text) const {
        for (int row = 0; row < m_rows; ++row)
            for (int column = 0; column < m_columns; ++column)
                if (holds(inkBox(textAt(text, originOf(row, column))), wordsOffFrame))
                    return true;
        return false;
    }
    /// A text that reaches over the window's edge, moved back into it.
    [[nodiscard]] Text movedInside(Text text) const {
        constexpr double white = wordsOffFrame;
        const Box box = inkBox(text);
        text.at.x() += std::max(0.0, m_window.left + white - box.left) -
                       std::max(0.0, box.right - m_window.right + white);
        text.at.y() += std::max(0.0, m_window.top + white - box.top) -
                       std::max(0.0, box.bottom - m_window.bottom + white);
        return text;
    }
    /// The name of a level line on a page where no text says it yet, where it covers no other words.
    [[nodiscard]] std::optional<Text>
    nameOn(const PatternLine& line, const Vector2d& origin, const std::vector<Text>& texts) const {
        std::vector<Vector2d> points;
        for (const Vector2d& p : line.points)
            points.emplace_back(origin.x() + p.x(), origin.y() - p.y());
        const auto parts = clipped(points, m_window);
        if (parts.empty())
            return std::nullopt;
        const Vector2d &a = parts.front().front(), &b = parts.front().back();
        constexpr double size = 3.0, white = 8.0; // mm
        if ((b - a).norm() < textWidth(line.name, size) + white)
            return std::nullopt;
        for (const double part : {0.5, 0.3, 0.7}) {
            const Text name = makeText(
                a + part * (b - a) - Vector2d(0, 1), line.name, {.size = size, .anchor = Anchor::Middle});
            const auto said = [&](const Text& text) {
                return text.runs == name.runs && std::abs(text.at.y() - name.at.y()) < 2.0;
            };
            if (std::ranges::any_of(texts, said))
                return std::nullopt;
            const Box box = inkBox(name);
            if (holds(box, wordsOffFrame) &&
                std::ranges::none_of(texts, [&](const Text& text) { return inkBox(text).overlaps(box); }))
                return name;
        }
        return std::nullopt;
    }

    /// A page that has a joint.
    struct Meeting {
        const Sheet* sheet;
        Joint joint;
    };
    /// Where a joint's two crosses stand along it, mm on either page.
    struct Crosses {
        double low = 0.0, high = 0.0;
    };

    [[nodiscard]] std::vector<Joint> jointsOf(const PatternPage& page) const {
        return TileGrid{m_rows, m_columns}.jointsOf(page.row, page.column, m_window);
    }
    [[nodiscard]] static Vector2d on(const Joint& joint, double along) {
        return joint.upright ? Vector2d(joint.at, along) : Vector2d(along, joint.at);
    }

    /// Near the joint's ends and clear of the words of all its pages.
    [[nodiscard]] Crosses crossesOn(const std::vector<Meeting>& pages) const {
        constexpr double reach = crossArm + 0.7;                                 // mm
        constexpr double inset = 30.0, edgeRoom = 8.0, apart = 40.0, step = 2.0; // mm
        const auto isFree = [&](double along) {
            return std::ranges::none_of(pages, [&](const Meeting& page) {
                const Vector2d at = on(page.joint, along);
                return coversWords(*page.sheet,
                                   {at.x() - reach, at.y() - reach, at.x() + reach, at.y() + reach});
            });
        };
        const bool upright = pages.front().joint.upright;
        const double begin = upright ? m_window.top : m_window.left,
                     end = upright ? m_window.bottom : m_window.right;
        const auto near = [&](double wanted, double from) {
            for (double off = 0.0; off < end - begin; off += step)
                for (const double along : {wanted - off, wanted + off})
                    if (along > from && along < end - edgeRoom && isFree(along))
                        return along;
            return wanted;
        };
        const double low = near(begin + inset, begin + edgeRoom);
        return {low, near(end - inset, low + apart)};
    }

    static bool coversWords(const Sheet& sheet, const Box& box) {
        return std::ranges::any_of(sheet.items, [&](const Item& item) {
            const auto* text = std::get_if<Text>(&item);
            return text != nullptr && inkBox(*text).overlaps(box);
        });
    }

    static void mark(Sheet& sheet, const Joint& joint, const Crosses& crosses) {
        for (const double along : {crosses.low, crosses.high})
            for (Item& line : jointCross(on(joint, along)))
                sheet.items.push_back(std::move(line));
        sheet.items.emplace_back(jointLetter(sheet, joint, crosses));
    }

    /// The letter as near to the joint's middle as there is room; where a line runs along the joint, beside
    /// it.
    static Text jointLetter(const Sheet& sheet, const Joint& joint, const Crosses& crosses) {
        constexpr double step = 4.0, fromCross = 8.0, beside = 4.0; // mm
        const auto letterAt = [&](double along, double off) {
            const Vector2d aside = joint.upright ? Vector2d(off, 0) : Vector2d(0, off + 2);
            return makeText(on(joint, along) + aside,
                            jointLetters(joint.number),
                            {.size = 6.0, .weight = Weight::Bold, .anchor = Anchor::Middle});
        };
        const double middle = 0.5 * (crosses.low + crosses.high);
        for (const bool ofAllLines : {true, false}) // else of those to be sawn at least
            for (const double off : {0.0, beside, -beside})
                for (int i = 0; i / 2 * step < middle - crosses.low - fromCross;
                     ++i) { // to both sides by turns
                    const Text tried = letterAt(middle + (i % 2 == 0 ? 1 : -1) * ((i + 1) / 2) * step, off);
                    if (isClear(sheet, inkBox(tried), ofAllLines))
                        return tried;
                }
        return letterAt(middle, 0.0);
    }

    /// Whether neither words nor lines, or those to be sawn alone, come near.
    static bool isClear(const Sheet& sheet, const Box& box, bool ofAllLines) {
        constexpr double white = 0.7; // mm
        const Box wide{box.left - white, box.top - white, box.right + white, box.bottom + white};
        return std::ranges::none_of(sheet.items, [&](const Item& item) {
            if (const auto* text = std::get_if<Text>(&item))
                return inkBox(*text).overlaps(wide);
            const Path& path = std::get<Path>(item);
            return (ofAllLines || path.line == LineKind::Visible) && enters(path, wide);
        });
    }

    /// @param crosses  by the joints' numbers, reckoned before any page is finished
    void finish(PatternPage& page,
                const std::vector<PatternPage>& all,
                std::size_t index,
                const std::map<int, Crosses>& crosses) const {
        Sheet& sheet = page.sheet;
        sheet.items.emplace_back(makeBox(m_window, LineKind::Thin));
        for (const Joint& joint : jointsOf(page))
            if (hasNeighbour(page, all, joint))
                mark(sheet, joint, crosses.at(joint.number));
        bars(sheet);
        words(sheet, index + 1, all.size());
        map(page, all);
    }

    void bars(Sheet& sheet) const {
        const double bottom = m_page.height - pageMargin;
        const auto bar = [&](const Vector2d& from, const Vector2d& along, double length, const char* label) {
            sheet.items.emplace_back(makeLine(from, from + length * along, LineKind::Thin));
            const Vector2d square(along.y(), along.x());
            for (const double t : {0.0, length})
                sheet.items.emplace_back(makeLine(
                    from + t * along - 1.5 * square, from + t * along + 1.5 * square, LineKind::Thin));
            const bool level = along.x() > 0.5;
            Lettering lettering{.size = 2.6};
            if (!level)
                lettering.rotation = -std::acos(0.0);
            const Vector2d at = level ? from + Vector2d(length + 2, 1) : from + Vector2d(1, -2);
            sheet.items.emplace_back(makeText(at, label, lettering));
        };
        bar({pageMargin, bottom - 9}, {1, 0}, 100.0, "100 mm");
        bar({pageMargin, bottom - 4}, {1, 0}, 4 * mmPerInch, "4 in");
        // upright bars end above the foot
        const double low = m_window.bottom;
        bar({pageMargin + 2.5, low - 100.0}, {0, 1}, 100.0, "100 mm");
        bar({pageMargin + 8.0, low - 4 * mmPerInch}, {0, 1}, 4 * mmPerInch, "4 in");
    }

    void words(Sheet& sheet, std::size_t number, std::size_t count) const {
        const double top = m_window.bottom;
        const double width = m_page.width - 2 * pageMargin - 34;
        const auto put = [&](double y, const std::string& line, double size, Weight weight) {
            // a long name or language makes the line smaller, not shorter: it is what saves a mould
            constexpr double smallest = 0.65;
            size *= std::clamp(width / textWidth(line, size, weight), smallest, 1.0);
            sheet.items.emplace_back(makeText({pageMargin, top + y},
                                              shortened(line, width, size, weight),
                                              {.size = size, .weight = weight}));
        };
        put(5, say("{}, page {} of {}", m_pattern.title, number, count), 4.0, Weight::SemiBold);
        put(9.5,
            say("{}. Print at 100 %, never fitted to the page; measure the bars both ways before you saw.",
                m_boat),
            2.8,
            Weight::Regular);
        put(13.5,
            say("Lay crosses over crosses where the letters are alike. Line width: the middle of the line "
                "counts."),
            2.8,
            Weight::Regular);
        put(17.5,
            say("Saws: guard on, hands clear, eyes and ears covered. Draw the dust off and wear a mask."),
            2.8,
            Weight::Regular);
    }

    void map(PatternPage& page, const std::vector<PatternPage>& all) const {
        const double size = std::min(28.0 / m_columns, 26.0 / m_rows);
        addPageMap(page, all, {m_page.width - pageMargin - 30, m_window.bottom + 4}, size);
    }

    const Pattern& m_pattern;
    Page m_page;
    std::string m_boat;
    Box m_extent;
    Box m_window;
    int m_rows = 1, m_columns = 1;
};

} // namespace

std::vector<PatternPage> pagesOf(const Pattern& pattern, const Page& page, const std::string& boat) {
    const Speaking speaking(pattern.language);
    return Tiler(pattern, page, boat).make();
}

Page rollPageFor(const Pattern& pattern) {
    const Box box = extentOf(pattern);
    constexpr double white = 2 * (pageMargin + 4.0);
    return {std::clamp(box.right - box.left + white + leftBand, leastRoll, rollLength),
            std::clamp(box.top - box.bottom + white + footBand, leastRoll, rollWidth),
            1.0};
}

} // namespace sheerlay::core

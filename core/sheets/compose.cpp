#include "core/sheets/compose.hpp"

#include <algorithm>

namespace sheerlay::core {

Text makeText(const Eigen::Vector2d& at, std::string_view line, const Lettering& lettering) {
    Text text;
    text.at = at;
    text.runs = runsOf(line);
    text.size = lettering.size;
    text.weight = lettering.weight;
    text.anchor = lettering.anchor;
    text.rotation = lettering.rotation;
    text.colour = lettering.colour;
    return text;
}

Path makeLine(const Eigen::Vector2d& from, const Eigen::Vector2d& to, LineKind kind, Colour colour) {
    Path path;
    path.points = {from, to};
    path.line = kind;
    path.colour = colour;
    return path;
}

Path makeBox(const Box& box, LineKind kind, std::optional<Colour> fill) {
    Path path;
    path.points = {
        {box.left, box.top}, {box.right, box.top}, {box.right, box.bottom}, {box.left, box.bottom}};
    path.closed = true;
    path.line = kind;
    path.fill = fill;
    return path;
}

std::string shortened(std::string_view line, double width, double size, Weight weight) {
    if (textWidth(line, size, weight) <= width)
        return std::string(line);
    std::string cut(line);
    while (!cut.empty() && textWidth(cut + "\u2026", size, weight) > width) {
        while (!cut.empty() && (static_cast<unsigned char>(cut.back()) & 0xC0U) == 0x80U)
            cut.pop_back();
        if (!cut.empty())
            cut.pop_back();
    }
    while (!cut.empty() && cut.back() == ' ')
        cut.pop_back();
    return cut + "\u2026";
}

double sizeToFit(std::string_view line, double width, double wanted, Weight weight) {
    const double needed = textWidth(line, wanted, weight);
    return needed <= width ? wanted : wanted * width / needed;
}

Item moved(Item item, const Eigen::Vector2d& by) {
    if (auto* path = std::get_if<Path>(&item))
        for (Eigen::Vector2d& p : path->points)
            p += by;
    else
        std::get<Text>(item).at += by;
    return item;
}

Box extentOf(const Item& item) {
    if (const auto* text = std::get_if<Text>(&item))
        return inkBox(*text);
    const Path& path = std::get<Path>(item);
    const double half = lineWidth(path.line) / 2;
    Box box{1e9, 1e9, -1e9, -1e9};
    for (const Eigen::Vector2d& p : path.points) {
        box.left = std::min(box.left, p.x() - half);
        box.right = std::max(box.right, p.x() + half);
        box.top = std::min(box.top, p.y() - half);
        box.bottom = std::max(box.bottom, p.y() + half);
    }
    return box;
}

std::vector<Slice> paragraph(std::string_view text, double width, const Lettering& lettering, double pitch) {
    std::vector<Slice> slices;
    for (const std::string& line : wrap(text, width, lettering.size, lettering.weight)) {
        const double baseline =
            (pitch - lettering.size * (capHeight + descent)) / 2 + capHeight * lettering.size;
        slices.push_back({pitch, {makeText({0.0, baseline}, line, lettering)}, false});
    }
    if (slices.size() > 1) { // no single line left behind, none alone at the head of a column
        slices.front().keepWithNext = true;
        slices[slices.size() - 2].keepWithNext = true;
    }
    return slices;
}

Flow::Flow(std::vector<Sheet>& sheets, std::vector<Box> columns, std::function<std::vector<Box>()> nextPage)
    : m_sheets(&sheets), m_columns(std::move(columns)), m_nextPage(std::move(nextPage)) {}

void Flow::next() {
    m_used = 0.0;
    m_gap = 0.0;
    if (++m_column < m_columns.size())
        return;
    m_columns = m_nextPage();
    m_column = 0;
}

void Flow::add(const std::vector<Slice>& slices) {
    constexpr double rounding = 1e-6;
    for (std::size_t i = 0; i < slices.size();) {
        std::size_t end = i;
        double height = 0.0;
        do
            height += slices[end].height;
        while (slices[end++].keepWithNext && end < slices.size());

        const auto fits = [&] {
            const Box& column = m_columns[m_column];
            return m_used + m_gap + height <= column.bottom - column.top + rounding;
        };
        // a group higher than a fresh page's first column stands there alone rather than nowhere
        for (int tries = 0; !fits() && (m_used > 0.0 || tries == 0 || m_column > 0) && tries < 8; ++tries)
            next();
        m_used += m_used > 0.0 ? m_gap : 0.0;
        m_gap = 0.0;
        for (; i < end; ++i) {
            const Box& column = m_columns[m_column];
            for (const Item& item : slices[i].items)
                m_sheets->back().items.push_back(moved(item, {column.left, column.top + m_used}));
            m_used += slices[i].height;
        }
    }
}

} // namespace sheerlay::core

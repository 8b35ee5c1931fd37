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

std::optional<std::pair<double, double>>
partInside(const Eigen::Vector2d& from, const Eigen::Vector2d& to, const Box& box) {
    double begin = 0.0;
    double end = 1.0;
    const Eigen::Vector2d d = to - from;
    for (const auto& [p, q] : {std::pair{-d.x(), from.x() - box.left},
                               std::pair{d.x(), box.right - from.x()},
                               std::pair{-d.y(), from.y() - box.top},
                               std::pair{d.y(), box.bottom - from.y()}}) {
        if (p == 0.0) {
            if (q < 0.0)
                return std::nullopt;
            continue;
        }
        const double t = q / p;
        if (p < 0.0)
            begin = std::max(begin, t);
        else
            end = std::min(end, t);
    }
    if (begin >= end)
        return std::nullopt;
    return std::pair{begin, end};
}

bool enters(const Path& path, const Box& box) {
    const std::size_t count = path.points.size(),
                      sides = path.closed ? count : std::max<std::size_t>(count, 1) - 1;
    for (std::size_t i = 0; i < sides; ++i)
        if (partInside(path.points[i], path.points[(i + 1) % count], box))
            return true;
    return false;
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
    : m_sheets(&sheets), m_columns(columnsOf(columns)), m_nextPage(std::move(nextPage)) {}

std::vector<Flow::Column> Flow::columnsOf(const std::vector<Box>& boxes) {
    std::vector<Column> columns;
    for (const Box& box : boxes)
        columns.push_back({box});
    return columns;
}

bool Flow::Column::fits(double height) const {
    constexpr double rounding = 1e-6;
    const double white = used > 0.0 ? gap : 0.0;
    return used + white + height <= box.bottom - box.top + rounding;
}

void Flow::put(const std::vector<Slice>& slices, std::size_t from, std::size_t to) {
    Column& column = m_columns[m_column];
    column.used += column.used > 0.0 ? column.gap : 0.0;
    column.gap = 0.0;
    for (std::size_t i = from; i < to; ++i) {
        for (const Item& item : slices[i].items)
            m_sheets->back().items.push_back(moved(item, {column.box.left, column.box.top + column.used}));
        column.used += slices[i].height;
    }
}

void Flow::add(const std::vector<Slice>& slices) {
    for (std::size_t i = 0; i < slices.size();) {
        std::size_t end = i;
        double height = 0.0;
        do
            height += slices[end].height;
        while (slices[end++].keepWithNext && end < slices.size());
        while (!m_columns[m_column].fits(height)) {
            const bool last = m_column + 1 == m_columns.size();
            if (last && m_columns.front().used <= 0.0 && m_columns.back().used <= 0.0)
                break; // higher than a fresh page: it stands there alone rather than nowhere
            if (last)
                m_columns = columnsOf(m_nextPage());
            m_column = last ? 0 : m_column + 1;
        }
        put(slices, i, end);
        i = end;
    }
}

void Flow::addTogether(const std::vector<Slice>& slices) {
    double height = 0.0;
    for (const Slice& slice : slices)
        height += slice.height;
    for (std::size_t i = 0; i < m_columns.size(); ++i)
        if (m_columns[i].fits(height)) {
            m_column = i;
            put(slices, 0, slices.size());
            return;
        }
    const auto tallest =
        std::max_element(m_columns.begin(), m_columns.end(), [](const Column& a, const Column& b) {
            return a.box.bottom - a.box.top < b.box.bottom - b.box.top;
        });
    if (height > tallest->box.bottom - tallest->box.top) {
        add(slices);
        return;
    }
    m_columns = columnsOf(m_nextPage());
    m_column = 0;
    put(slices, 0, slices.size());
}

} // namespace sheerlay::core

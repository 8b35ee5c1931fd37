#include "core/offsets/cell_grid.hpp"

#include "core/units/length_text.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <stdexcept>

namespace sheerlay::core {

namespace {

constexpr std::size_t mostRows = 5000; // no boat's table comes near; a file that does is something else
constexpr std::size_t mostColumns = 500;

bool isSpace(char c) {
    return c == ' ' || c == '\t' || c == '\r' || c == '\n';
}

/// Bytes of the sign that starts here, 0 where it is no UTF-8.
std::size_t signLength(std::string_view rest) {
    const auto lead = static_cast<unsigned char>(rest.front());
    const std::size_t length = lead < 0x80U              ? 1
                               : (lead & 0xE0U) == 0xC0U ? 2
                               : (lead & 0xF0U) == 0xE0U ? 3
                               : (lead & 0xF8U) == 0xF0U ? 4
                                                         : 0;
    if (length == 0 || length > rest.size())
        return 0;
    for (std::size_t i = 1; i < length; ++i)
        if ((static_cast<unsigned char>(rest[i]) & 0xC0U) != 0x80U)
            return 0;
    return length;
}

std::string asUtf8(std::string_view text) {
    bool valid = true;
    for (std::string_view rest = text; valid && !rest.empty();) {
        const std::size_t length = signLength(rest);
        valid = length > 0;
        rest.remove_prefix(length);
    }
    if (valid)
        return std::string(text);
    std::string result;
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        if (byte < 0x80U) {
            result += c;
        } else {
            result += static_cast<char>(0xC0U | (byte >> 6U));
            result += static_cast<char>(0x80U | (byte & 0x3FU));
        }
    }
    return result;
}

std::vector<std::string_view> linesOf(std::string_view text) {
    std::vector<std::string_view> lines;
    while (!text.empty()) {
        const std::size_t end = text.find('\n');
        lines.push_back(text.substr(0, end));
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    }
    return lines;
}

/// The cells of a printed table: two spaces or more, or a tab, between them.
std::vector<std::string> spacedCells(std::string_view line) {
    std::vector<std::string> cells;
    std::string cell;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const bool gap = line[i] == '\t' || (line[i] == ' ' && i + 1 < line.size() && line[i + 1] == ' ');
        if (!gap) {
            cell += line[i];
            continue;
        }
        if (!trimmed(cell).empty())
            cells.push_back(trimmed(cell));
        cell.clear();
        while (i + 1 < line.size() && (line[i + 1] == ' ' || line[i + 1] == '\t'))
            ++i;
    }
    if (!trimmed(cell).empty())
        cells.push_back(trimmed(cell));
    return cells;
}

/// Whether every comma of the line stands between two digits, as a decimal comma does.
bool onlyDecimalCommas(std::string_view line) {
    const auto isDigit = [](char c) { return c >= '0' && c <= '9'; };
    for (std::size_t i = 0; i < line.size(); ++i)
        if (line[i] == ',' &&
            (i == 0 || i + 1 == line.size() || !isDigit(line[i - 1]) || !isDigit(line[i + 1])))
            return false;
    return true;
}

std::optional<Separator> guessSeparator(const std::vector<std::string_view>& lines) {
    std::size_t filled = 0;
    std::array<std::size_t, 3> with{};
    constexpr std::array<char, 3> marks{'\t', ';', ','};
    std::size_t spaced = 0;
    bool decimals = true;
    for (const std::string_view line : lines) {
        if (trimmed(line).empty() || line.starts_with('#'))
            continue;
        ++filled;
        for (std::size_t m = 0; m < marks.size(); ++m)
            if (std::ranges::count(line, marks[m]) >= 2)
                ++with[m];
        if (spacedCells(line).size() >= 3)
            ++spaced;
        decimals = decimals && onlyDecimalCommas(line);
    }
    const auto most = [filled](std::size_t count) { return count > 0 && 2 * count >= filled; };
    if (most(with[0]))
        return Separator::Tab;
    if (most(with[1]))
        return Separator::Semicolon;
    if (most(with[2]) && !(most(spaced) && decimals))
        return Separator::Comma;
    if (most(spaced))
        return Separator::Spaces;
    return std::nullopt;
}

/// Cuts at one sign, with CSV's quotes: a cell that begins with one ends with one, and "" inside is one.
class MarkedText {
public:
    MarkedText(std::string_view text, char mark) : m_text(text), m_mark(mark) {}

    /// All rows; a quote that is never closed gives the line it was opened in.
    Expected<std::vector<GridRow>, int> rows() {
        std::vector<GridRow> rows;
        while (!m_text.empty()) {
            if (m_text.front() == '#') {
                skipLine();
                continue;
            }
            GridRow row;
            row.line = m_line;
            for (bool more = true; more;) {
                auto cell = nextCell();
                if (!cell)
                    return unexpected(cell.error());
                row.cells.push_back(trimmed(*cell));
                more = !m_text.empty() && m_text.front() == m_mark;
                if (more)
                    m_text.remove_prefix(1);
            }
            skipLine();
            rows.push_back(std::move(row));
        }
        return rows;
    }

private:
    void skipLine() {
        const std::size_t end = m_text.find('\n');
        m_text.remove_prefix(end == std::string_view::npos ? m_text.size() : end + 1);
        ++m_line;
    }
    [[nodiscard]] bool atCellEnd() const {
        return m_text.empty() || m_text.front() == m_mark || m_text.front() == '\n' || m_text.front() == '\r';
    }
    Expected<std::string, int> nextCell() {
        while (!m_text.empty() && m_text.front() == ' ')
            m_text.remove_prefix(1);
        std::string cell;
        const int opened = m_line;
        if (m_text.starts_with('"') && m_text.size() > 1 && m_text[1] != m_mark && m_text[1] != '\n' &&
            m_text[1] != '\r') {
            m_text.remove_prefix(1);
            bool closed = false;
            while (!m_text.empty() && !closed) {
                const char c = m_text.front();
                m_text.remove_prefix(1);
                if (c == '"' && m_text.starts_with('"')) {
                    cell += '"';
                    m_text.remove_prefix(1);
                } else if (c == '"') {
                    closed = true;
                } else {
                    m_line += c == '\n' ? 1 : 0;
                    cell += isSpace(c) ? ' ' : c;
                }
            }
            if (!closed)
                return unexpected(opened);
        }
        while (!m_text.empty() && m_text.front() != m_mark && m_text.front() != '\n') {
            cell += m_text.front();
            m_text.remove_prefix(1);
        }
        return cell;
    }

    std::string_view m_text;
    char m_mark;
    int m_line = 1;
};

std::vector<GridRow> spacedRows(const std::vector<std::string_view>& lines) {
    std::vector<GridRow> rows;
    for (std::size_t i = 0; i < lines.size(); ++i)
        if (!lines[i].starts_with('#'))
            rows.push_back({spacedCells(lines[i]), static_cast<int>(i) + 1});
    return rows;
}

std::optional<FileMessage> notPlainText(std::string_view text, const std::string& file) {
    const std::string would = sayable(
        "the table as text: in the spreadsheet save it as CSV (UTF-8), or copy the cells into a text file");
    if (text.starts_with("PK\x03\x04") || text.starts_with("\xD0\xCF\x11\xE0"))
        return FileMessage{file, 0, "file", sayable("a spreadsheet's own file"), would};
    if (text.find('\0') != std::string_view::npos)
        return FileMessage{file, 0, "file", sayable("bytes that are no text"), would};
    return std::nullopt;
}

} // namespace

const std::string& CellGrid::at(std::size_t row, std::size_t column) const {
    static const std::string none;
    return row < rows.size() && column < rows[row].cells.size() ? rows[row].cells[column] : none;
}

Expected<std::vector<GridRow>, FileMessage>
cutRows(std::string_view text, Separator separator, const std::string& file) {
    if (separator == Separator::Spaces)
        throw std::invalid_argument("cutRows: spaces are no sign between cells");
    if (const auto problem = notPlainText(text, file))
        return unexpected(*problem);
    if (text.starts_with("\xEF\xBB\xBF"))
        text.remove_prefix(3);
    constexpr std::array<char, 3> marks{'\t', ';', ','};
    const std::string readable = asUtf8(text);
    auto cut = MarkedText(readable, marks[static_cast<std::size_t>(separator)]).rows();
    if (!cut)
        return unexpected(FileMessage{file,
                                      cut.error(),
                                      "file",
                                      sayable("a quote that is never closed"),
                                      sayable("a second quote at the cell's end")});
    return std::move(cut).value();
}

Expected<CellGrid, FileMessage> splitCells(std::string_view text, const std::string& file) {
    if (const auto problem = notPlainText(text, file))
        return unexpected(*problem);
    if (text.starts_with("\xEF\xBB\xBF"))
        text.remove_prefix(3);
    const std::string readable = asUtf8(text);
    const auto lines = linesOf(readable);
    const auto separator = guessSeparator(lines);
    if (!separator)
        return unexpected(FileMessage{
            file,
            0,
            "file",
            sayable("no table"),
            sayable("rows of at least three cells with commas, semicolons or tabs between them")});
    CellGrid grid;
    grid.separator = *separator;
    std::vector<GridRow> rows;
    if (*separator == Separator::Spaces) {
        rows = spacedRows(lines);
    } else {
        auto cut = cutRows(readable, *separator, file);
        if (!cut)
            return unexpected(cut.error());
        rows = std::move(cut).value();
    }
    for (GridRow& row : rows)
        if (std::ranges::any_of(row.cells, [](const std::string& cell) { return !cell.empty(); })) {
            grid.columns = std::max(grid.columns, row.cells.size());
            grid.rows.push_back(std::move(row));
        }
    if (grid.rows.size() > mostRows || grid.columns > mostColumns)
        return unexpected(
            FileMessage{file,
                        0,
                        "file",
                        inEnglish(sayable("{} rows and {} columns"), grid.rows.size(), grid.columns),
                        sayable("one boat's table of offsets")});
    return grid;
}

} // namespace sheerlay::core

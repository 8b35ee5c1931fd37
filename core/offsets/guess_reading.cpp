#include "core/offsets/guess_notation.hpp"
#include "core/offsets/table_reading.hpp"
#include "core/units/length_text.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace sheerlay::core {

namespace {

// Waterlines or buttocks nearer than this are numbers, not lengths: "WL 1, WL 2" in a table of millimetres.
constexpr double nearestLines = 5.0; // mm

bool isGeneric(std::string_view cell) {
    const auto line = readLabel(cell, "", {});
    return line && *line &&
           ((*line)->kind == OffsetLine::PointHeight || (*line)->kind == OffsetLine::PointBreadth);
}

std::optional<OffsetLine> headerKind(std::string_view cell) {
    const auto line = readLabel(cell, "", {});
    if (line && *line &&
        ((*line)->kind == OffsetLine::StationNames || (*line)->kind == OffsetLine::Positions))
        return (*line)->kind;
    return std::nullopt;
}

/// How many lines are named by their first two cells.
std::size_t namedLines(const TurnedGrid& grid) {
    std::size_t count = 0;
    for (std::size_t line = 0; line < grid.lines(); ++line) {
        bool named = false;
        for (std::size_t place = 0; place < 2; ++place)
            named = named || namesALine(grid.at(line, place), "") || isGeneric(grid.at(line, place)) ||
                    headerKind(grid.at(line, place)).has_value();
        count += named ? 1 : 0;
    }
    return count;
}

/// Whether a cell beside the head of the stations' line heads more cells that name lines, such as their
/// heights.
bool isLabelWord(const std::string& cell) {
    return cell.empty() ||
           labelWords(cell).has({"height", "line", "lines", "name", "half", "above", "from", "offset"});
}

struct Header {
    std::optional<std::size_t> line;
    std::size_t labels = 1;
    bool named = false; ///< it says that it heads the stations
};

Header findHeader(const TurnedGrid& grid) {
    constexpr std::size_t mostLabels = 3;
    Header header;
    for (std::size_t line = 0; line < grid.lines(); ++line)
        for (std::size_t place = 0; place < mostLabels; ++place)
            if (headerKind(grid.at(line, place))) {
                header = {line, place + 1, true};
                if (!labelWords(grid.at(line, place)).lengths.empty()) { // "St 0": the first station itself
                    header.labels = std::max<std::size_t>(place, 1);
                    header.named = false;
                    return header;
                }
                while (header.labels < mostLabels && header.labels + 1 < grid.places() &&
                       isLabelWord(grid.at(line, header.labels)))
                    ++header.labels;
                return header;
            }
    for (std::size_t line = 0; line < grid.lines(); ++line) {
        std::size_t filled = 0;
        for (std::size_t place = 1; place < grid.places(); ++place)
            filled += grid.at(line, place).empty() ? 0 : 1;
        if (filled >= 3) {
            header.line = line;
            break;
        }
    }
    return header;
}

bool isHeight(const TableLine& line) {
    return line.kind == OffsetLine::SheerHeight || line.kind == OffsetLine::KeelHeight ||
           line.kind == OffsetLine::Buttock || line.kind == OffsetLine::PointHeight ||
           line.kind == OffsetLine::Waterline;
}

void countDownward(std::vector<TableLine>& lines, bool below) {
    for (TableLine& line : lines) {
        if (!isHeight(line) || line.below == below)
            continue;
        line.below = below;
        if (line.kind != OffsetLine::Waterline || line.at == 0.0)
            continue;
        line.at = -line.at;
        if (line.printedAt.starts_with('-'))
            line.printedAt.erase(0, 1);
        else
            line.printedAt.insert(0, 1, '-');
    }
}

/// Guesses line by line.
class Guess {
public:
    Guess(const CellGrid& cells, const TableCorrections& corrections, const std::string& file)
        : m_cells(cells), m_corrections(corrections), m_file(file), m_grid(cells, turn()) {}

    Expected<TableReading, std::vector<FileMessage>> reading() {
        const auto notation = guessNotation(m_cells, m_corrections);
        if (!notation)
            return unexpected(std::vector{FileMessage{
                m_file, 0, sayable("the table"), notation.error().found, notation.error().would}});
        m_reading.stationsInColumns = turn();
        m_reading.notation = notation->notation;
        m_reading.unitFromSize = notation->unitFromSize;
        const Header header = findHeader(m_grid);
        m_reading.labels =
            std::min(m_corrections.labels.value_or(header.labels), std::max<std::size_t>(m_grid.places(), 1));
        for (std::size_t line = 0; line < m_grid.lines(); ++line)
            m_reading.lines.push_back(readLine(line, header));
        applyCorrections();
        dropRepeatedHeaders();
        numberedLines(OffsetLine::Waterline, m_corrections.waterlineSpacing, "waterline-spacing");
        numberedLines(OffsetLine::Buttock, m_corrections.buttockSpacing, "buttock-spacing");
        direction();
        points();
        if (m_errors.empty())
            needed();
        if (!m_errors.empty())
            return unexpected(std::move(m_errors));
        return std::move(m_reading);
    }

private:
    [[nodiscard]] bool turn() const {
        return m_corrections.stationsInColumns.value_or(namedLines(TurnedGrid(m_cells, true)) >=
                                                        namedLines(TurnedGrid(m_cells, false)));
    }
    void error(std::size_t line, std::string found, std::string would) {
        m_errors.push_back(
            {m_file, m_grid.fileLine(line, 0), m_grid.lineName(line), std::move(found), std::move(would)});
    }
    [[nodiscard]] std::string asLine(std::size_t line, std::string_view what) const {
        const std::string name = m_grid.lineName(line);
        return name.substr(0, name.find(" (")) + " = " + std::string(what);
    }
    [[nodiscard]] const LineAs* correctionOf(std::size_t line) const {
        const auto found = std::ranges::find_if(m_corrections.lines, [&](const LineAs& c) {
            return c.column != m_reading.stationsInColumns && m_grid.lineNumbered(c.number) == line;
        });
        return found == m_corrections.lines.end() ? nullptr : &*found;
    }
    [[nodiscard]] bool hasValues(std::size_t line) const {
        for (std::size_t place = m_reading.labels; place < m_grid.places(); ++place)
            if (!m_grid.at(line, place).empty())
                return true;
        return false;
    }

    TableLine readLine(std::size_t line, const Header& header) {
        const std::string label = labelOf(m_grid, line, m_reading.labels);
        TableLine unused{OffsetLine::Unused, label, 0.0, "", {}, false, std::nullopt};
        if (correctionOf(line) != nullptr)
            return unused; // said by the builder, see applyCorrections
        if (!hasValues(line)) {
            if (m_reading.stationsInColumns && !label.empty()) {
                m_group = label;
                unused.kind = OffsetLine::Heading;
            }
            return unused;
        }
        if (line == header.line && !header.named && !namesALine(label, m_group)) {
            unused.kind = OffsetLine::StationNames;
            return unused;
        }
        const auto read = readLabel(label, m_group, m_reading.notation);
        if (!read) {
            error(line,
                  read.error().found,
                  inEnglish(sayable("what it is, such as --take \"{}\""), asLine(line, read.error().would)));
            return unused;
        }
        return read->value_or(unused);
    }

    void applyCorrections() {
        for (const LineAs& correction : m_corrections.lines) {
            const std::string what =
                (correction.column ? "column " : "row ") + std::to_string(correction.number);
            if (correction.column == m_reading.stationsInColumns) {
                m_errors.push_back(
                    {m_file,
                     0,
                     what,
                     sayable("a correction of a station"),
                     m_reading.stationsInColumns
                         ? sayable("a row, as stations stand in columns here; or stations = rows")
                         : sayable("a column, as stations stand in rows here; or stations = columns")});
                continue;
            }
            const auto found = m_grid.lineNumbered(correction.number);
            if (!found) {
                m_errors.push_back(
                    {m_file,
                     0,
                     what,
                     sayable("no such line in the table"),
                     correction.column
                         ? inEnglish(sayable("a column up to {}"), m_reading.lines.size())
                         : std::string(sayable("a row with cells, counted by the lines of the file"))});
                continue;
            }
            const std::size_t line = *found;
            const auto read = readLabel(correction.as, "", m_reading.notation);
            if (!read)
                error(line,
                      read.error().found,
                      inEnglish(sayable("what it is, such as --take \"{}\""),
                                asLine(line, read.error().would)));
            else if (!*read)
                error(line,
                      inEnglish(sayable("{}, which names no line of a table"), quoted(correction.as)),
                      "unused, station names, positions, sheer heights, sheer half-breadths, keel heights, "
                      "half-siding, waterline 6 in, buttock 6 in, or diagonal 14 in at 40 degrees");
            else
                m_reading.lines[line] = **read;
        }
    }

    void dropRepeatedHeaders() {
        for (const OffsetLine kind : {OffsetLine::StationNames, OffsetLine::Positions}) {
            std::optional<std::size_t> first;
            for (std::size_t line = 0; line < m_reading.lines.size(); ++line) {
                if (m_reading.lines[line].kind != kind)
                    continue;
                if (!first) {
                    first = line;
                    continue;
                }
                bool same = true;
                for (std::size_t place = m_reading.labels; place < m_grid.places(); ++place)
                    same = same && m_grid.at(line, place) == m_grid.at(*first, place);
                if (!same)
                    error(line,
                          inEnglish(kind == OffsetLine::Positions
                                        ? sayable("positions of stations, which {} has otherwise")
                                        : sayable("names of stations, which {} has otherwise"),
                                    m_grid.lineName(*first)),
                          inEnglish(sayable("--take \"{}\", or a table of its own"), asLine(line, "unused")));
                m_reading.lines[line].kind = OffsetLine::Unused;
            }
        }
    }

    /// Numbered lines stand `spacing` apart; and lines too near each other must be numbered ones.
    void numberedLines(OffsetLine kind, const std::optional<std::string>& spacing, const std::string& key) {
        double apart = 0.0;
        if (spacing) {
            const auto read = readSaid(*spacing, m_reading.notation);
            if (!read || read->millimetres <= 0.0) {
                m_errors.push_back({m_file,
                                    0,
                                    key,
                                    read ? quoted(*spacing) : read.error().found,
                                    inEnglish(sayable("a length, such as {} = 4 in"), key)});
                return;
            }
            apart = read->millimetres;
        }
        std::optional<double> before;
        for (std::size_t line = 0; line < m_reading.lines.size(); ++line) {
            TableLine& read = m_reading.lines[line];
            if (read.kind != kind)
                continue;
            if (spacing) {
                const LabelWords words = labelWords(read.label);
                if (const auto count =
                        words.lengths.empty() ? std::nullopt : readCount(words.lengths.back())) {
                    read.at = *count * apart * (read.below ? -1 : 1);
                    read.printedAt.clear();
                }
            }
            if (before && std::abs(read.at - *before) < nearestLines)
                error(
                    line,
                    inEnglish(sayable("{}, less than 5 mm from the line before"), quoted(read.label)),
                    inEnglish(
                        sayable(
                            "{} = the distance between two of them if they are numbered; or its own length"),
                        key));
            before = read.at;
        }
    }

    [[nodiscard]] const TableLine* firstOf(OffsetLine kind, std::size_t& at) const {
        for (at = 0; at < m_reading.lines.size(); ++at)
            if (m_reading.lines[at].kind == kind)
                return &m_reading.lines[at];
        return nullptr;
    }

    /// A keel with larger numbers than the sheer is counted downward.
    void direction() {
        if (m_corrections.heightsBelow)
            return countDownward(m_reading.lines, *m_corrections.heightsBelow);
        std::size_t sheerLine = 0;
        std::size_t keelLine = 0;
        const TableLine* sheer = firstOf(OffsetLine::SheerHeight, sheerLine);
        const TableLine* keel = firstOf(OffsetLine::KeelHeight, keelLine);
        if (sheer == nullptr || keel == nullptr || sheer->below || keel->below)
            return;
        std::size_t down = 0;
        std::size_t up = 0;
        for (std::size_t place = m_reading.labels; place < m_grid.places(); ++place) {
            const auto high = readCell(m_grid.at(sheerLine, place), m_reading.notation);
            const auto low = readCell(m_grid.at(keelLine, place), m_reading.notation);
            if (high && low)
                ++(low->millimetres > high->millimetres ? down : up);
        }
        if (down >= 3 && up * 4 < down)
            countDownward(m_reading.lines, true);
    }

    void points() {
        std::size_t heights = 0;
        std::size_t breadths = 0;
        bool lines = false;
        for (const TableLine& line : m_reading.lines) {
            heights += line.kind == OffsetLine::PointHeight ? 1 : 0;
            breadths += line.kind == OffsetLine::PointBreadth ? 1 : 0;
            lines = lines || line.kind == OffsetLine::Waterline || line.kind == OffsetLine::Buttock ||
                    line.kind == OffsetLine::SheerHeight || line.kind == OffsetLine::SheerBreadth ||
                    line.kind == OffsetLine::Diagonal;
        }
        m_reading.pointList = !m_reading.stationsInColumns && heights == 1 && breadths == 1 && !lines;
        if (m_reading.pointList)
            return;
        for (TableLine& line : m_reading.lines) // "Height" alone, in a table of lines: of nothing
            if (line.kind == OffsetLine::PointHeight || line.kind == OffsetLine::PointBreadth)
                line.kind = OffsetLine::Unused;
    }

    void needed() {
        if (m_reading.pointList)
            return;
        std::size_t unused = 0;
        const char* where = m_reading.stationsInColumns ? "row" : "column";
        const char* none = m_reading.stationsInColumns ? sayable("no row of {}") : sayable("no column of {}");
        for (const auto& [kind, what] : {std::pair{OffsetLine::SheerHeight, sayable("sheer heights")},
                                         {OffsetLine::SheerBreadth, sayable("sheer half-breadths")}})
            if (firstOf(kind, unused) == nullptr)
                m_errors.push_back({m_file,
                                    0,
                                    sayable("the table"),
                                    inEnglish(none, what),
                                    inEnglish(sayable("a heading such as {}, or --take \"{}\""),
                                              quoted(what),
                                              std::string(where) + " 3 = " + what)});
    }

    const CellGrid& m_cells;
    const TableCorrections& m_corrections;
    const std::string& m_file;
    TurnedGrid m_grid;
    TableReading m_reading;
    std::string m_group;
    std::vector<FileMessage> m_errors;
};

} // namespace

Expected<TableReading, std::vector<FileMessage>>
guessReading(const CellGrid& grid, const TableCorrections& corrections, const std::string& file) {
    return Guess(grid, corrections, file).reading();
}

} // namespace sheerlay::core

#include "core/table_edit/paste_cells.hpp"

#include "core/offsets/cell_grid.hpp"

#include <algorithm>

namespace sheerlay::core {
namespace {

enum class Commas { None, Between, Either };

/// What the commas of a text are. A number has one decimal comma at most, with a digit on either side.
Commas commasOf(std::string_view text) {
    Commas commas = Commas::None;
    const auto isDigit = [](char c) { return c >= '0' && c <= '9'; };
    while (!text.empty()) {
        const std::string_view line = text.substr(0, text.find('\n'));
        text.remove_prefix(std::min(text.size(), line.size() + 1));
        const std::size_t at = line.find(',');
        if (at == std::string_view::npos)
            continue;
        commas = Commas::Either;
        if (line.find(',', at + 1) != std::string_view::npos || at == 0 || at + 1 == line.size() ||
            !isDigit(line[at - 1]) || !isDigit(line[at + 1]))
            return Commas::Between;
    }
    return commas;
}

template <class Take> void eachCell(const GridBlock& block, Take take) {
    for (std::size_t line = block.first.line; line <= block.last.line; ++line)
        for (std::size_t station = block.first.station; station <= block.last.station; ++station)
            take(GridCell{line, station});
}

std::string textOf(const Project& project, const std::vector<GridLine>& lines, GridCell cell) {
    return cellText(project.hull.stations.at(cell.station), lines.at(cell.line), project.units);
}

} // namespace

Expected<PastedRows, FileMessage> pastedRows(std::string_view text) {
    Separator separator = Separator::Tab; // a single column has none
    if (text.find('\t') == std::string_view::npos) {
        if (text.find(';') != std::string_view::npos) {
            separator = Separator::Semicolon;
        } else {
            const Commas commas = commasOf(text);
            if (commas == Commas::Either)
                return unexpected(FileMessage{"",
                                              0,
                                              "pasted cells",
                                              "commas that may be decimal commas or stand between cells",
                                              "tabs or semicolons between the cells, points in the numbers"});
            separator = commas == Commas::Between ? Separator::Comma : Separator::Tab;
        }
    }
    const auto cut = cutRows(text, separator, "");
    if (!cut) {
        FileMessage why = cut.error();
        why.key = "pasted cells";
        return unexpected(why);
    }
    PastedRows rows;
    for (const GridRow& row : *cut) {
        rows.resize(std::max(rows.size(), static_cast<std::size_t>(row.line)));
        rows[static_cast<std::size_t>(row.line) - 1] = row.cells;
    }
    return rows;
}

LaidRows layRows(const PastedRows& rows, const GridBlock& block, std::size_t lines, std::size_t stations) {
    LaidRows laid;
    if (rows.size() == 1 && rows.front().size() == 1) {
        eachCell(block, [&](GridCell cell) { laid.entries.push_back({cell, rows.front().front()}); });
        return laid;
    }
    for (std::size_t r = 0; r < rows.size(); ++r)
        for (std::size_t c = 0; c < rows[r].size(); ++c) {
            const GridCell cell{block.first.line + r, block.first.station + c};
            if (cell.line < lines && cell.station < stations)
                laid.entries.push_back({cell, rows[r][c]});
            else
                ++laid.leftOff;
        }
    return laid;
}

std::string copiedText(const Project& project, const std::vector<GridLine>& lines, const GridBlock& block) {
    std::string text;
    eachCell(block, [&](GridCell cell) {
        if (cell.station > block.first.station)
            text += '\t';
        else if (cell.line > block.first.line)
            text += '\n';
        text += textOf(project, lines, cell);
    });
    return text;
}

std::vector<CellEntry>
fillEntries(const Project& project, const std::vector<GridLine>& lines, const GridBlock& block, FillWay way) {
    std::vector<CellEntry> entries;
    eachCell(block, [&](GridCell cell) {
        GridCell from = cell;
        (way == FillWay::Down ? from.line : from.station) =
            way == FillWay::Down ? block.first.line : block.first.station;
        const bool place = lines.at(cell.line).kind == GridLine::Kind::Place ||
                           lines.at(from.line).kind == GridLine::Kind::Place;
        if (from != cell && !place)
            entries.push_back({cell, textOf(project, lines, from)});
    });
    return entries;
}

std::vector<CellEntry>
blankEntries(const Project& project, const std::vector<GridLine>& lines, const GridBlock& block) {
    std::vector<CellEntry> entries;
    eachCell(block, [&](GridCell cell) {
        if (!textOf(project, lines, cell).empty())
            entries.push_back({cell, ""});
    });
    return entries;
}

} // namespace sheerlay::core

#include "core/table_edit/line_edit.hpp"

#include "core/table_edit/cell_loft.hpp"
#include "core/table_edit/set_cells.hpp"
#include "core/units/length_text.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <utility>
#include <vector>

namespace sheerlay::core {

Expected<Project, LengthError>
insertLine(const Project& project, const LoftedHull& hull, GridLine::Kind kind, const std::string& level) {
    const auto read = readTyped(level, project);
    if (!read)
        return unexpected(read.error());
    const bool waterline = kind == GridLine::Kind::Waterline;
    const GridLine line{kind, read->millimetres, read->printed};
    std::vector<GridLine> lines = gridLines(project.hull);
    if (std::ranges::any_of(lines, [&](const GridLine& known) { return sameLine(known, line); }))
        return unexpected(LengthError{inEnglish(waterline ? sayable("the waterline {}, which the table has")
                                                          : sayable("the buttock {}, which the table has"),
                                                quoted(level)),
                                      sayable("filling its blank cells, or another place")});
    lines.push_back(line);
    sortLines(lines);
    const auto row = static_cast<std::size_t>(
        std::ranges::find_if(lines, [&](const GridLine& l) { return sameLine(l, line); }) - lines.begin());
    std::vector<CellEntry> entries;
    for (std::size_t i = 0; i < project.hull.stations.size(); ++i) {
        const Station& station = project.hull.stations[i];
        const auto crossing = LoftedSection(hull, station.x + hull.xShift).at(station, line);
        const double height = waterline || !crossing ? line.level : crossing->lofted;
        if (crossing && height < station.sheer.height)
            entries.push_back({{row, i}, textLike(crossing->lofted, "", project.hull, project.units)});
    }
    EditedTable edited = setCells(project, lines, entries);
    if (entries.empty())
        return unexpected(LengthError{
            inEnglish(sayable("{}, where no station's section comes between sheer and keel"), quoted(level)),
            waterline ? sayable("a height between keel and sheer")
                      : sayable("a half-breadth inside the sheer's")});
    if (edited.refused.size() == entries.size())
        return unexpected(LengthError{edited.refused.front().found, edited.refused.front().would});
    return std::move(edited.project);
}

} // namespace sheerlay::core

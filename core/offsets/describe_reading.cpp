#include "core/offsets/station_places.hpp"
#include "core/offsets/table_reading.hpp"
#include "core/project/written_value.hpp"
#include "core/units/length_text.hpp"
#include "core/units/number_text.hpp"

#include <array>

namespace sheerlay::core {

namespace {

std::string unitName(PlainUnit unit) {
    constexpr std::array<std::string_view, 5> names{"millimetres", "centimetres", "metres", "inches", "feet"};
    return std::string(names[static_cast<std::size_t>(unit)]);
}

std::string length(double mm, const std::string& printed, Units units) {
    if (!printed.empty())
        return isPlainNumber(printed) ? printed + (units == Units::Inches ? " in" : " mm") : printed;
    return units == Units::Inches ? numberText(mm / mmPerInch, 2) + " in" : numberText(mm, 1) + " mm";
}

std::string meaningOf(const TableLine& line, Units units) {
    const std::string heights = line.below ? "depths of " : "heights of ";
    switch (line.kind) {
    case OffsetLine::Unused:
        return "not used";
    case OffsetLine::Heading:
        return "a heading";
    case OffsetLine::StationNames:
        return "names of the stations";
    case OffsetLine::Positions:
        return "positions of the stations along the boat";
    case OffsetLine::SheerHeight:
        return heights + "the sheer";
    case OffsetLine::SheerBreadth:
        return "half-breadths of the sheer";
    case OffsetLine::KeelHeight:
        return heights + "the keel";
    case OffsetLine::KeelBreadth:
        return "half siding of the keel, where the planking ends";
    case OffsetLine::Waterline:
        return "half-breadths on the waterline at height " + length(line.at, line.printedAt, units);
    case OffsetLine::Buttock:
        return heights + "the buttock at half-breadth " + length(line.at, line.printedAt, units);
    case OffsetLine::Diagonal: {
        const DiagonalReading& d = line.diagonal;
        return "distances along the diagonal from height " + length(d.height, d.printedHeight, units) +
               (d.angle ? " at " + shortestDigits(*d.angle) + " degrees"
                        : " through half-breadth " + length(d.throughBreadth, "", units) + " at height " +
                              length(d.throughHeight, "", units));
    }
    case OffsetLine::PointHeight:
        return heights + "the points";
    case OffsetLine::PointBreadth:
        return "half-breadths of the points";
    }
    return {};
}

std::string cutAndUnits(const CellGrid& grid, const TableReading& reading) {
    constexpr std::array<std::string_view, 4> marks{"tabs", "semicolons", "commas", "two blanks or more"};
    std::string text =
        "Between the cells stand " + std::string(marks[static_cast<std::size_t>(grid.separator)]) + "; ";
    const Notation& notation = reading.notation;
    if (notation.feetInchesEighths)
        return text + "lengths are feet-inches-eighths.";
    text += "plain numbers are " + unitName(notation.plain);
    if (reading.unitFromSize)
        text += " by their size, as no unit is said";
    return text + (notation.decimal == DecimalMark::Comma ? ", with a decimal comma." : ".");
}

} // namespace

std::vector<std::string>
describeReading(const CellGrid& grid, const TableReading& reading, const TableCorrections& corrections) {
    const Units units = projectUnits(reading.notation);
    const TurnedGrid turned(grid, reading.stationsInColumns);
    std::vector<std::string> said{cutAndUnits(grid, reading)};
    const std::string first = turned.placeName(reading.labels);
    said.push_back(
        reading.pointList ? "Every row from " + first + " on is one point of a half section."
        : reading.stationsInColumns
            ? "Stations stand in columns, the first in " + first + "; the cells before name the rows."
            : "Stations stand in rows, the first in " + first + "; the cells above name the columns.");
    for (std::size_t line = 0; line < reading.lines.size(); ++line) {
        const TableLine& read = reading.lines[line];
        if (read.kind == OffsetLine::Unused && read.label.empty())
            continue;
        std::string text = turned.lineName(line);
        if (!read.label.empty())
            text += ", " + quoted(read.label);
        said.push_back(text + ": " + meaningOf(read, units) + ".");
    }
    if (corrections.spacing)
        said.push_back("The stations stand " + *corrections.spacing + " apart, as you said.");
    return said;
}

} // namespace sheerlay::core

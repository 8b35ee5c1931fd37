#include "core/offsets/station_places.hpp"
#include "core/offsets/table_reading.hpp"
#include "core/project/written_value.hpp"
#include "core/units/length_text.hpp"
#include "core/units/number_text.hpp"
#include "core/words/say.hpp"

#include <array>

namespace sheerlay::core {

namespace {

const char* unitName(PlainUnit unit) {
    constexpr std::array names{sayable("millimetres"),
                               sayable("centimetres"),
                               sayable("metres"),
                               sayable("inches"),
                               sayable("feet")};
    return names.at(static_cast<std::size_t>(unit));
}

std::string length(double mm, const std::string& printed, Units units) {
    if (!printed.empty())
        return isPlainNumber(printed) ? printed + (units == Units::Inches ? " in" : " mm") : printed;
    return units == Units::Inches ? numberText(mm / mmPerInch, 2) + " in" : numberText(mm, 1) + " mm";
}

/// What a line was taken for. @param name  of the line, as a correction names it
std::string sentenceOf(const TableLine& line, const std::string& name, Units units) {
    const auto heights = [&](const char* above, const char* below) {
        return inEnglish(line.below ? below : above, name);
    };
    switch (line.kind) {
    case OffsetLine::Unused:
        return inEnglish(sayable("{}: not used."), name);
    case OffsetLine::Heading:
        return inEnglish(sayable("{}: a heading."), name);
    case OffsetLine::StationNames:
        return inEnglish(sayable("{}: names of the stations."), name);
    case OffsetLine::Positions:
        return inEnglish(sayable("{}: positions of the stations along the boat."), name);
    case OffsetLine::SheerHeight:
        return heights(sayable("{}: heights of the sheer."), sayable("{}: depths of the sheer."));
    case OffsetLine::SheerBreadth:
        return inEnglish(sayable("{}: half-breadths of the sheer."), name);
    case OffsetLine::KeelHeight:
        return heights(sayable("{}: heights of the keel."), sayable("{}: depths of the keel."));
    case OffsetLine::KeelBreadth:
        return inEnglish(sayable("{}: half siding of the keel, where the planking ends."), name);
    case OffsetLine::Waterline:
        return inEnglish(sayable("{}: half-breadths on the waterline at height {}."),
                         name,
                         length(line.at, line.printedAt, units));
    case OffsetLine::Buttock:
        return inEnglish(line.below ? sayable("{}: depths of the buttock at half-breadth {}.")
                                    : sayable("{}: heights of the buttock at half-breadth {}."),
                         name,
                         length(line.at, line.printedAt, units));
    case OffsetLine::Diagonal: {
        const DiagonalReading& d = line.diagonal;
        const std::string height = length(d.height, d.printedHeight, units);
        return d.angle ? inEnglish(sayable("{}: distances along the diagonal from height {} at {} degrees."),
                                   name,
                                   height,
                                   shortestDigits(*d.angle))
                       : inEnglish(sayable("{}: distances along the diagonal from height {} through "
                                           "half-breadth {} at height {}."),
                                   name,
                                   height,
                                   length(d.throughBreadth, "", units),
                                   length(d.throughHeight, "", units));
    }
    case OffsetLine::PointHeight:
        return heights(sayable("{}: heights of the points."), sayable("{}: depths of the points."));
    case OffsetLine::PointBreadth:
        return inEnglish(sayable("{}: half-breadths of the points."), name);
    }
    return name;
}

std::string cutAndUnits(const CellGrid& grid, const TableReading& reading) {
    constexpr std::array marks{
        sayable("tabs"), sayable("semicolons"), sayable("commas"), sayable("two blanks or more")};
    const char* mark = marks.at(static_cast<std::size_t>(grid.separator));
    const Notation& notation = reading.notation;
    if (notation.feetInchesEighths)
        return inEnglish(sayable("Between the cells stand {}; lengths are feet-inches-eighths."), mark);
    const bool comma = notation.decimal == DecimalMark::Comma;
    const char* sentence =
        reading.unitFromSize
            ? (comma
                   ? sayable("Between the cells stand {}; plain numbers are {} by their size, as no unit is "
                             "said, with a decimal comma.")
                   : sayable("Between the cells stand {}; plain numbers are {} by their size, as no unit is "
                             "said."))
        : comma ? sayable("Between the cells stand {}; plain numbers are {}, with a decimal comma.")
                : sayable("Between the cells stand {}; plain numbers are {}.");
    return inEnglish(sentence, mark, unitName(notation.plain));
}

} // namespace

std::vector<std::string>
describeReading(const CellGrid& grid, const TableReading& reading, const TableCorrections& corrections) {
    const Units units = projectUnits(reading.notation);
    const TurnedGrid turned(grid, reading.stationsInColumns);
    std::vector<std::string> said{cutAndUnits(grid, reading)};
    const std::string first = turned.placeName(reading.labels);
    said.push_back(
        inEnglish(reading.pointList ? sayable("Every row from {} on is one point of a half section.")
                  : reading.stationsInColumns
                      ? sayable("Stations stand in columns, the first in {}; the cells before name the rows.")
                      : sayable("Stations stand in rows, the first in {}; the cells above name the columns."),
                  first));
    for (std::size_t line = 0; line < reading.lines.size(); ++line) {
        const TableLine& read = reading.lines[line];
        if (read.kind == OffsetLine::Unused && read.label.empty())
            continue;
        std::string name = turned.lineName(line);
        if (!read.label.empty())
            name += ", " + quoted(read.label);
        said.push_back(sentenceOf(read, name, units));
    }
    if (corrections.spacing)
        said.push_back(inEnglish(sayable("The stations stand {} apart, as you said."), *corrections.spacing));
    return said;
}

} // namespace sheerlay::core

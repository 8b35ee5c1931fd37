#include "core/journal/typed_round.hpp"

#include <algorithm>
#include <string>
#include <utility>

namespace sheerlay::core {

Expected<GirthLeft, LengthError>
readGirth(const Station& station, std::string_view typed, Units shown, Units inFile) {
    const auto read = parseLength(typed, shown);
    if (!read)
        return unexpected(read.error());
    const auto again = parseLength(typed, inFile);
    const bool alike = again && again->millimetres == read->millimetres;
    std::string printed(typed);
    if (!alike)
        printed += shown == Units::Inches ? " in" : " mm";
    return GirthLeft{station.x, read->millimetres, station.printedX, std::move(printed), 0};
}

Journal withRound(Journal journal, const RowReading& round) {
    const bool goesOn = !journal.readings.empty() && journal.readings.back().row == round.row &&
                        journal.readings.back().side == round.side &&
                        journal.readings.back().date == round.date && journal.readings.back().sd == round.sd;
    if (!goesOn) {
        journal.readings.push_back(round);
        return journal;
    }
    std::vector<GirthLeft>& read = journal.readings.back().girthLeft;
    for (const GirthLeft& girth : round.girthLeft) {
        const auto there = std::ranges::find(read, girth.x, &GirthLeft::x);
        if (there != read.end())
            *there = girth;
        else
            read.push_back(girth);
    }
    std::ranges::stable_sort(read, {}, &GirthLeft::x);
    return journal;
}

} // namespace sheerlay::core

#include "core/offsets/table_project.hpp"
#include "core/project/project_file.hpp"
#include "core/project/project_writer.hpp"
#include "core/units/length.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cstdlib>
#include <limits>
#include <optional>
#include <utility>

namespace sheerlay::core {

namespace {

/// The key of the project's reader in the words of the table: which station it means.
std::string inTableWords(const FileMessage& message, const Project& project) {
    constexpr std::string_view station = "hull.station[";
    const auto at = message.key.find(station);
    if (at == std::string::npos)
        return message.key;
    const auto number =
        static_cast<std::size_t>(std::strtoul(message.key.c_str() + at + station.size(), nullptr, 10));
    if (number == 0 || number > project.hull.stations.size())
        return message.key;
    const Station& s = project.hull.stations[number - 1];
    const auto dot = message.key.find('.', at + station.size());
    return "station " + std::to_string(number) + " from the bow, at " +
           (s.printedX.empty() ? formatLength(s.x, project.units) : s.printedX) +
           (dot == std::string::npos ? "" : ", " + message.key.substr(dot + 1));
}

/// A boat too wide, too narrow or too deep to be one: a unit was mistaken.
std::optional<FileMessage> impossibleSize(const Project& project, const std::string& file) {
    constexpr double widest = 3000.0;  // mm of half-breadth; far beyond what is strip-planked
    constexpr double narrowest = 50.0; // mm; a model
    constexpr double deepest = 5000.0; // mm
    double breadth = 0.0;
    double low = std::numeric_limits<double>::infinity();
    double high = -low;
    const auto look = [&](const TablePoint& p) {
        breadth = std::max(breadth, p.halfBreadth);
        low = std::min(low, p.height);
        high = std::max(high, p.height);
    };
    for (const Station& station : project.hull.stations) {
        look(station.sheer);
        if (station.keel)
            look(*station.keel);
        if (station.knuckle)
            look(*station.knuckle);
        for (const TablePoint& point : station.points)
            look(point);
    }
    if (breadth >= narrowest && breadth <= widest && high - low <= deepest)
        return std::nullopt;
    return FileMessage{
        file,
        0,
        sayable("the boat's size"),
        inEnglish(sayable("half-breadths up to {} and heights over {}"),
                  formatLength(breadth, project.units),
                  formatLength(high - low, project.units)),
        sayable("lengths of a boat; the unit may be mistaken, --take \"units = mm\" or another says it")};
}

} // namespace

Expected<ReadTable, std::vector<FileMessage>>
asProjectText(const TableProject& made, std::vector<std::string> reading, const std::string& file) {
    if (const auto problem = impossibleSize(made.project, file))
        return unexpected(std::vector{*problem});
    ReadTable read{std::move(reading), made.notes, {}, writeProject(made.project)};
    const auto back = parseProject(read.projectText, file);
    const auto inWords = [&](std::vector<FileMessage> messages) {
        for (FileMessage& message : messages) {
            message.key = inTableWords(message, made.project);
            message.line = 0;
        }
        return messages;
    };
    if (!back)
        return unexpected(inWords(back.error()));
    read.warnings = inWords(back->warnings);
    return read;
}

Expected<ReadTable, std::vector<FileMessage>> readTable(std::string_view text,
                                                        const std::string& file,
                                                        const std::string& name,
                                                        const TableCorrections& corrections) {
    const auto grid = splitCells(text, file);
    if (!grid)
        return unexpected(std::vector{grid.error()});
    const auto reading = guessReading(*grid, corrections, file);
    if (!reading)
        return unexpected(reading.error());
    const auto made = tableProject(*grid, *reading, corrections, name, file);
    if (!made)
        return unexpected(made.error());
    return asProjectText(*made, describeReading(*grid, *reading, corrections), file);
}

} // namespace sheerlay::core

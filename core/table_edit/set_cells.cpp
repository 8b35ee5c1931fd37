#include "core/table_edit/set_cells.hpp"

#include "core/offsets/cell_length.hpp"
#include "core/project/diagonal.hpp"
#include "core/project/project_edit.hpp"
#include "core/units/length_text.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cctype>
#include <optional>
#include <utility>

namespace sheerlay::core {
namespace {

using Kind = GridLine::Kind;

/// How the table's own cells write lengths.
Notation notationOf(const Project& project) {
    Notation notation;
    notation.plain = project.units == Units::Inches ? PlainUnit::Inches : PlainUnit::Millimetres;
    const std::vector<GridLine> lines = gridLines(project.hull);
    std::size_t given = 0;
    std::size_t inEighths = 0;
    for (const Station& station : project.hull.stations)
        for (const GridLine& line : lines)
            if (const std::string text = cellText(station, line, project.units); !text.empty()) {
                ++given;
                inEighths += isFeetInchesEighths(text) ? 1U : 0U;
            }
    notation.feetInchesEighths = 2 * inEighths > given;
    return notation;
}

using ReadEntry = Expected<CellLength, LengthError>;

ReadEntry readEntry(const std::string& text, Notation notation) {
    const auto comma = text.find(',');
    if (comma != std::string::npos && isPlainNumber(text)) {
        const auto behind = static_cast<std::size_t>(
            std::count_if(text.begin() + static_cast<std::ptrdiff_t>(comma), text.end(), [](unsigned char c) {
                return std::isdigit(c) != 0;
            }));
        if (behind == 3 && text.front() != '0')
            return unexpected(LengthError{
                inEnglish(sayable("{}, whose comma may be a decimal one or stand between thousands"),
                          quoted(text)),
                sayable("a decimal point, or no comma")});
        notation.decimal = DecimalMark::Comma;
    }
    auto read = readCell(text, notation);
    if (!read && read.error().would.starts_with("two-part")) // said so where a whole file is read
        return unexpected(
            LengthError{read.error().found, sayable("feet, inches and eighths, such as \"0-3-4\"")});
    return read;
}

/// Puts entries into one project, without a look at the rules of the file.
class Setter {
public:
    Setter(Project& project, const std::vector<GridLine>& lines, const Notation& notation)
        : m_project(project), m_lines(lines), m_notation(notation) {}

    [[nodiscard]] std::vector<RefusedEntry> set(const std::vector<CellEntry>& entries) {
        for (const CellEntry& entry : entries)
            put(entry);
        pairPoints();
        return std::move(m_refused);
    }

private:
    /// The two numbers of a single point that comes or goes.
    struct Pair {
        std::size_t station = 0, number = 0;
        std::vector<CellEntry> entries;
        std::optional<CellLength> height, breadth;
        bool heightBlank = false, breadthBlank = false;
    };

    void refuse(const CellEntry& entry, std::string found, std::string would) {
        m_refused.push_back({entry, std::move(found), std::move(would)});
    }

    void put(const CellEntry& entry) {
        const GridLine& line = m_lines.at(entry.cell.line);
        Station& station = m_project.hull.stations.at(entry.cell.station);
        if (isNotGiven(entry.text)) {
            clear(entry, line, station);
            return;
        }
        const ReadEntry read = readEntry(entry.text, m_notation);
        if (!read) {
            refuse(entry, read.error().found, read.error().would);
            return;
        }
        if (line.kind == Kind::Place) {
            station.x = read->millimetres;
            station.printedX = read->printed;
            return;
        }
        if (TablePoint* there = pointIn(station, line)) {
            if (entry.correction)
                keepPrinted(*there, line);
            change(*there, line, *read);
        } else {
            add(entry, line, station, *read);
        }
    }

    static TablePoint* pointIn(Station& station, const GridLine& line) {
        const TablePoint* there = pointOf(station, line);
        if (there == nullptr)
            return nullptr;
        if (there == &station.sheer)
            return &station.sheer;
        if (station.keel && there == &*station.keel)
            return &*station.keel;
        if (station.knuckle && there == &*station.knuckle)
            return &*station.knuckle;
        return &station.points[static_cast<std::size_t>(there - station.points.data())];
    }

    static std::string& replacedIn(TablePoint& p, const GridLine& line) {
        return line.kind == Kind::Diagonal ? p.diagonal->replacedDistance
               : givesHeight(line)         ? p.replacedHeight
                                           : p.replacedHalfBreadth;
    }

    /// The number of the printed table; a second correction does not change what was printed.
    static void keepPrinted(TablePoint& p, const GridLine& line) {
        if (std::string& replaced = replacedIn(p, line); replaced.empty())
            replaced = line.kind == Kind::Diagonal ? p.diagonal->printedDistance
                       : givesHeight(line)         ? p.printedHeight
                                                   : p.printedHalfBreadth;
    }

    void change(TablePoint& p, const GridLine& line, const CellLength& read) const {
        if (std::string& replaced = replacedIn(p, line); replaced == read.printed)
            replaced.clear(); // as printed again
        if (line.kind == Kind::Diagonal) {
            p.diagonal->distance = read.millimetres;
            p.diagonal->printedDistance = read.printed;
            if (auto moved = pointOnDiagonal(*p.diagonal, m_project.units)) {
                moved->line = p.line;
                p = *std::move(moved);
            }
            return;
        }
        (givesHeight(line) ? p.height : p.halfBreadth) = read.millimetres;
        (givesHeight(line) ? p.printedHeight : p.printedHalfBreadth) = read.printed;
    }

    void add(const CellEntry& entry, const GridLine& line, Station& station, const CellLength& read) {
        TablePoint p;
        switch (line.kind) {
        case Kind::KeelHeight:
            p.kind = PointKind::Keel;
            change(p, line, read);
            station.keel = p;
            return;
        case Kind::KeelBreadth:
            refuse(entry,
                   sayable("a keel half-breadth where there is no keel height"),
                   sayable("the keel height first"));
            return;
        case Kind::KnuckleHeight:
        case Kind::KnuckleBreadth:
            refuse(entry,
                   sayable("one number of a knuckle where this station has none"),
                   sayable("a knuckle with both its numbers in the file's text"));
            return;
        case Kind::PointHeight:
            remember(entry, line).height = read;
            return;
        case Kind::PointBreadth:
            remember(entry, line).breadth = read;
            return;
        case Kind::Waterline:
            p.kind = PointKind::Waterline;
            p.height = line.level;
            p.printedHeight = line.printed;
            break;
        case Kind::Buttock:
            p.kind = PointKind::Buttock;
            p.halfBreadth = line.level;
            p.printedHalfBreadth = line.printed;
            break;
        default:
            p.diagonal = line.diagonal;
            break;
        }
        change(p, line, read);
        insert(station, std::move(p));
    }

    /// Among its own kind: waterlines in their order, up or down as they stand, all others behind the last.
    static void insert(Station& station, TablePoint p) {
        std::vector<std::size_t> alike;
        for (std::size_t i = 0; i < station.points.size(); ++i)
            if (station.points[i].kind == p.kind &&
                station.points[i].diagonal.has_value() == p.diagonal.has_value())
                alike.push_back(i);
        std::size_t at = alike.empty() ? station.points.size() : alike.back() + 1;
        if (p.kind == PointKind::Waterline && !alike.empty()) {
            const bool rising = station.points[alike.front()].height < station.points[alike.back()].height;
            const auto next = std::find_if(alike.begin(), alike.end(), [&](std::size_t i) {
                const double height = station.points[i].height;
                return rising ? height > p.height : height < p.height;
            });
            at = next == alike.end() ? at : *next;
        }
        station.points.insert(station.points.begin() + static_cast<std::ptrdiff_t>(at), std::move(p));
    }

    void clear(const CellEntry& entry, const GridLine& line, Station& station) {
        switch (line.kind) {
        case Kind::Place:
            refuse(entry, sayable("no place"), sayable("how far the station stands from the table's zero"));
            return;
        case Kind::SheerHeight:
        case Kind::SheerBreadth:
            refuse(entry, sayable("nothing given"), sayable("a length: every station has its sheer"));
            return;
        case Kind::KnuckleHeight:
        case Kind::KnuckleBreadth:
            if (station.knuckle)
                refuse(entry,
                       sayable("nothing given"),
                       sayable("a length; that there is no knuckle here is said in the file's text"));
            return;
        case Kind::KeelHeight:
            station.keel.reset();
            return;
        case Kind::KeelBreadth:
            if (station.keel) {
                station.keel->halfBreadth = 0.0;
                station.keel->printedHalfBreadth.clear();
            }
            return;
        case Kind::PointHeight:
            remember(entry, line).heightBlank = true;
            return;
        case Kind::PointBreadth:
            remember(entry, line).breadthBlank = true;
            return;
        default:
            break;
        }
        if (const TablePoint* p = pointOf(station, line))
            station.points.erase(station.points.begin() + (p - station.points.data()));
    }

    Pair& remember(const CellEntry& entry, const GridLine& line) {
        auto pair = std::find_if(m_pairs.begin(), m_pairs.end(), [&](const Pair& p) {
            return p.station == entry.cell.station && p.number == line.number;
        });
        if (pair == m_pairs.end())
            pair = m_pairs.insert(m_pairs.end(), Pair{entry.cell.station, line.number, {}, {}, {}});
        pair->entries.push_back(entry);
        return *pair;
    }

    /// Single points have both numbers or none. From the last to the first, so that numbers hold.
    void pairPoints() {
        std::stable_sort(
            m_pairs.begin(), m_pairs.end(), [](const Pair& a, const Pair& b) { return a.number > b.number; });
        std::vector<Pair*> fresh;
        for (Pair& pair : m_pairs) {
            Station& station = m_project.hull.stations[pair.station];
            const TablePoint* there = pointOf(station, {Kind::PointHeight, 0.0, "", pair.number});
            if (there != nullptr && pair.heightBlank && pair.breadthBlank)
                station.points.erase(station.points.begin() + (there - station.points.data()));
            else if (there != nullptr)
                refuseAll(pair,
                          sayable("a point with one of its two numbers left out"),
                          sayable("both numbers, or neither"));
            else if (pair.height && pair.breadth)
                fresh.push_back(&pair);
            else if (pair.height || pair.breadth)
                refuseAll(pair,
                          pair.height ? sayable("a point with a height and no half-breadth")
                                      : sayable("a point with a half-breadth and no height"),
                          sayable("both numbers"));
        }
        for (auto pair = fresh.rbegin(); pair != fresh.rend(); ++pair) {
            TablePoint p;
            p.height = (*pair)->height->millimetres;
            p.printedHeight = (*pair)->height->printed;
            p.halfBreadth = (*pair)->breadth->millimetres;
            p.printedHalfBreadth = (*pair)->breadth->printed;
            insert(m_project.hull.stations[(*pair)->station], std::move(p));
        }
    }

    void refuseAll(const Pair& pair, const std::string& found, const std::string& would) {
        for (const CellEntry& entry : pair.entries)
            refuse(entry, found, would);
    }

    Project& m_project;
    const std::vector<GridLine>& m_lines;
    Notation m_notation;
    std::vector<Pair> m_pairs;
    std::vector<RefusedEntry> m_refused;
};

/// Both numbers of a single point, or one cell: what has to be judged at once.
std::vector<std::vector<CellEntry>> together(const std::vector<GridLine>& lines,
                                             const std::vector<CellEntry>& entries) {
    std::vector<std::vector<CellEntry>> groups;
    const auto isPoint = [&](const CellEntry& e) {
        const Kind kind = lines.at(e.cell.line).kind;
        return kind == Kind::PointHeight || kind == Kind::PointBreadth;
    };
    for (const CellEntry& entry : entries) {
        const auto group = std::find_if(groups.begin(), groups.end(), [&](const auto& g) {
            return isPoint(entry) && isPoint(g.front()) && g.front().cell.station == entry.cell.station;
        });
        if (group == groups.end())
            groups.push_back({entry});
        else
            group->push_back(entry);
    }
    return groups;
}

} // namespace

Expected<CellLength, LengthError> readTyped(const std::string& text, const Project& project) {
    return readEntry(text, notationOf(project));
}

EditedTable
setCells(const Project& project, const std::vector<GridLine>& lines, const std::vector<CellEntry>& entries) {
    const Notation notation = notationOf(project);
    EditedTable edited{project, {}};
    edited.refused = Setter(edited.project, lines, notation).set(entries);
    if (edited.project == project || checked(edited.project))
        return edited;
    edited = {project, {}};
    for (const std::vector<CellEntry>& group : together(lines, entries)) {
        Project next = edited.project;
        std::vector<RefusedEntry> refused = Setter(next, lines, notation).set(group);
        if (const auto judged = checked(next)) {
            edited.project = std::move(next);
        } else {
            for (const CellEntry& entry : group)
                if (std::none_of(refused.begin(), refused.end(), [&](const RefusedEntry& r) {
                        return r.entry.cell == entry.cell;
                    }))
                    refused.push_back({entry, judged.error().front().found, judged.error().front().would});
        }
        edited.refused.insert(edited.refused.end(), refused.begin(), refused.end());
    }
    return edited;
}

} // namespace sheerlay::core

#include "core/outlines/drawn_sections.hpp"

#include "core/offsets/said_profile.hpp"
#include "core/offsets/station_places.hpp"
#include "core/offsets/unfold.hpp"
#include "core/outlines/drawing_scale.hpp"
#include "core/outlines/dxf_drawing.hpp"
#include "core/outlines/half_section.hpp"
#include "core/outlines/svg_drawing.hpp"
#include "core/units/length.hpp"
#include "core/units/length_text.hpp"
#include "core/units/number_text.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <map>

namespace sheerlay::core {

namespace {

constexpr std::size_t mostCurves = 2000;
constexpr std::size_t mostPoints = 24; // of a half section; enough for 3 degrees of turn between two
constexpr double drawnTo = 0.5;        // mm; nobody draws or traces a section closer

/// One station as drawn: its chain, still in the drawing's units.
struct Section {
    std::string where; ///< name of its layer or group
    std::string place; ///< the length in it
    std::vector<std::vector<DrawnPoint>> curves;
    std::vector<DrawnPoint> half;
};

class Builder {
public:
    Builder(const Drawing& drawing, const TableCorrections& corrections, const std::string& file)
        : m_drawing(drawing), m_corrections(corrections), m_file(file) {}

    Expected<TableProject, std::vector<FileMessage>> project(const std::string& name) {
        collect();
        if (m_errors.empty() && m_sections.size() < 3)
            error("the drawing",
                  std::to_string(m_sections.size()) + " layers or groups named with a station's place",
                  "at least three, each named with its station's place along the boat, such as \"station 900 "
                  "mm\" "
                  "or \"1-0-0\"");
        if (m_errors.empty() && findCentre())
            halves();
        if (m_errors.empty())
            scale();
        if (m_errors.empty())
            stations();
        if (!m_errors.empty())
            return unexpected(std::move(m_errors));
        m_made.project.name = name;
        return std::move(m_made);
    }

private:
    void error(const std::string& where, std::string found, std::string would) {
        m_errors.push_back({m_file, 0, where, std::move(found), std::move(would)});
    }
    void note(std::string sentence) { m_made.notes.push_back(std::move(sentence)); }

    void collect() {
        std::map<std::string, std::size_t> byName;
        std::size_t homeless = 0;
        constexpr double far = std::numeric_limits<double>::infinity();
        DrawnPoint low{far, far};
        DrawnPoint high{-far, -far};
        if (m_drawing.curves.size() > mostCurves)
            return error("the drawing",
                         std::to_string(m_drawing.curves.size()) + " curves",
                         "the half sections alone, a few curves each");
        for (const DrawnCurve& curve : m_drawing.curves) {
            const auto name = std::ranges::find_if(
                curve.groups, [](const std::string& n) { return stationInName(n).has_value(); });
            if (name == curve.groups.end()) {
                ++homeless;
                continue;
            }
            const auto [at, fresh] = byName.try_emplace(*name, m_sections.size());
            if (fresh)
                m_sections.push_back({*name, *stationInName(*name), {}, {}});
            m_sections[at->second].curves.push_back(curve.points);
            for (const DrawnPoint& p : curve.points) {
                low = {std::min(low.x, p.x), std::min(low.y, p.y)};
                high = {std::max(high.x, p.x), std::max(high.y, p.y)};
            }
        }
        m_tolerance = std::max(high.x - low.x, high.y - low.y) * 1e-4; // a drawing may stand far from 0, 0
        if (homeless > 0)
            note(std::to_string(homeless) + (homeless == 1 ? " curve stands" : " curves stand") +
                 " under no station's name and " + (homeless == 1 ? "is" : "are") + " left out.");
        for (const std::string& kind : m_drawing.leftOut)
            note("Left out: " + kind + ".");
        for (Section& section : m_sections) {
            auto chains = joined(std::move(section.curves), m_tolerance);
            if (chains.size() != 1)
                error(quoted(section.where),
                      std::to_string(chains.size()) + " curves that do not meet",
                      "one curve, or pieces whose ends meet, from sheer to keel");
            section.half = std::move(chains.front());
        }
    }

    std::optional<double> said(const std::optional<std::string>& number, const char* key) {
        if (!number)
            return std::nullopt;
        const auto read = readCell(*number, {});
        if (!read)
            error(key,
                  read.error().found,
                  std::string("a number in the drawing's units, such as ") + key + " = 105");
        return read ? std::optional(read->millimetres) : std::nullopt;
    }

    /// Where the sections' low ends meet; or, for whole sections, halfway between their sides. x = 0 where
    /// the low ends are all near it, so that a half siding that was drawn stays.
    bool findCentre() {
        std::vector<double> lowEnds;
        std::vector<double> middles;
        double width = 0.0;
        double nearest = std::numeric_limits<double>::infinity();
        for (const Section& section : m_sections) {
            const auto& [left, right] = std::ranges::minmax(section.half, {}, &DrawnPoint::x);
            const DrawnPoint& low =
                section.half.front().y < section.half.back().y ? section.half.front() : section.half.back();
            lowEnds.push_back(low.x);
            middles.push_back((left.x + right.x) / 2);
            width = std::max(width, right.x - left.x);
            nearest = std::min(nearest, std::abs(low.x));
        }
        const double near = 0.02 * width;
        const auto agree = [near](const std::vector<double>& values) {
            const auto [least, most] = std::ranges::minmax(values);
            return most - least <= near;
        };
        if (const auto centre = said(m_corrections.centre, "centre"))
            m_centre = *centre;
        else if (agree(middles))
            m_centre = middles.front();
        else if (agree(lowEnds))
            m_centre = std::abs(lowEnds.front()) <= near ? 0.0 : lowEnds.front();
        else
            error(
                "the drawing",
                "sections without a common centreline",
                "all sections drawn over one another; or --take \"centre = 105\", the centreline's x in the "
                "drawing");
        return m_errors.empty();
    }

    void halves() {
        double width = 0.0;
        for (const Section& section : m_sections)
            for (const DrawnPoint& p : section.half)
                width = std::max(width, std::abs(p.x - m_centre));
        double lowest = std::numeric_limits<double>::infinity();
        for (Section& section : m_sections) {
            for (DrawnPoint& p : section.half)
                p.x -= m_centre;
            auto half = halfSection(std::move(section.half), 0.01 * width);
            if (!half) {
                error(quoted(section.where),
                      half.error(),
                      "the section's own line from sheer to keel, nothing else");
                continue;
            }
            section.half = std::move(half).value();
            for (const DrawnPoint& p : section.half) {
                lowest = std::min(lowest, p.y);
                m_widest = std::max(m_widest, p.x);
            }
        }
        m_base = said(m_corrections.base, "base").value_or(lowest);
    }

    void scale() {
        const auto found = drawingScale(m_drawing.millimetres, 2 * m_widest, m_corrections);
        if (!found)
            return error("the scale", found.error().found, found.error().would);
        m_scale = found->millimetres;
        for (const std::string& sentence : found->said)
            note(sentence);
        m_made.project.units = found->inches ? Units::Inches : Units::Millimetres;
    }

    /// Where a station stands: its name's length, or its number times the spacing.
    std::optional<double> place(const Section& section, Notation notation) {
        if (m_corrections.spacing) {
            const auto spacing = readCell(*m_corrections.spacing, notation);
            const auto number = stationNumber(section.place);
            if (!spacing || spacing->millimetres <= 0.0)
                error("spacing", quoted(*m_corrections.spacing), "a length, such as spacing = 12 in");
            else if (!number)
                error(quoted(section.where), "no number of a station", "a name such as \"station 3\"");
            else
                return *number * spacing->millimetres;
            return std::nullopt;
        }
        const auto x = readCell(section.place, notation);
        if (!x)
            error(quoted(section.where), x.error().found, x.error().would);
        return x ? std::optional(x->millimetres) : std::nullopt;
    }

    void stations() {
        auto& stations = m_made.project.hull.stations;
        Notation notation;
        notation.twoPart = m_corrections.twoPart;
        notation.plain = m_made.project.units == Units::Inches ? PlainUnit::Inches : PlainUnit::Millimetres;
        bool plain = false;
        for (const Section& section : m_sections) {
            const auto x = place(section, notation);
            if (!x)
                return;
            plain = plain || isPlainNumber(section.place);
            Station station = stationOf(section);
            station.x = *x;
            stations.push_back(std::move(station));
        }
        std::ranges::sort(stations, {}, &Station::x);
        double apart = std::numeric_limits<double>::infinity();
        for (std::size_t i = 1; i < stations.size(); ++i)
            apart = std::min(apart, stations[i].x - stations[i - 1].x);
        constexpr double nearest = 50.0; // mm, or the numbers count stations
        if (apart <= 0.0)
            return error(
                "the drawing", "two stations at the same place", "one layer or group for each station");
        if (plain && !m_corrections.spacing && apart < nearest)
            return error("the drawing",
                         "stations less than 50 mm apart by their names",
                         "--take \"spacing = 12 in\" if the names are numbers of stations");
        note(std::to_string(stations.size()) + " stations, from " +
             formatLength(stations.front().x, m_made.project.units) + " to " +
             formatLength(stations.back().x, m_made.project.units) + "; heights count from " +
             (m_corrections.base ? "the base you said." : "the lowest point of all."));
        finish();
    }

    /// To a thousandth of a millimetre, or a ten thousandth of an inch: as exact as the drawing, and no more
    /// digits in the file.
    [[nodiscard]] double rounded(double mm) const {
        const bool inches = m_made.project.units == Units::Inches;
        const double unit = inches ? mmPerInch : 1.0, steps = inches ? 1e4 : 1e3;
        return std::round(mm / unit * steps) / steps * unit;
    }

    Station stationOf(const Section& section) {
        Station station;
        const auto points = thinned(section.half, mostPoints);
        note(quoted(section.where) + ": " + std::to_string(points.size()) + " of " +
             std::to_string(section.half.size()) + " points on the curve are taken.");
        for (const DrawnPoint& p : points)
            station.points.push_back({PointKind::Point,
                                      rounded(p.x * m_scale),
                                      rounded((p.y - m_base) * m_scale),
                                      "",
                                      "",
                                      0,
                                      std::nullopt});
        station.sheer = station.points.front();
        station.sheer.kind = PointKind::Sheer;
        station.keel = station.points.back();
        station.keel->kind = PointKind::Keel;
        station.points.erase(station.points.begin());
        station.points.pop_back();
        return station;
    }

    void finish() {
        HullTable& hull = m_made.project.hull;
        hull.roundedTo = m_made.project.units == Units::Inches ? 0.02 * mmPerInch : drawnTo;
        hull.drawnTo = m_corrections.drawnTo;
        Notation notation;
        notation.plain = m_made.project.units == Units::Inches ? PlainUnit::Inches : PlainUnit::Millimetres;
        if (m_corrections.halfSiding) {
            const auto siding = readCell(*m_corrections.halfSiding, notation);
            if (!siding || siding->millimetres < 0.0)
                return error("half-siding",
                             quoted(*m_corrections.halfSiding),
                             "a length such as half-siding = 3/8 in");
            hull.halfSiding = siding->millimetres;
        }
        std::optional<double> middle; // mm, where the boat is folded
        if (m_corrections.mirror && *m_corrections.mirror != "no") {
            const auto fold = readCell(*m_corrections.mirror, notation);
            if (!fold)
                return error("mirror", fold.error().found, "the middle of the boat, such as mirror = 8 ft");
            hull.stations = unfolded(std::move(hull.stations), fold->millimetres);
            note("Unfolded, the stations are " + std::to_string(hull.stations.size()) + ".");
            middle = fold->millimetres;
        }
        for (const std::string& said : m_corrections.profile) {
            const auto points = saidProfile(said, notation, middle);
            if (!points)
                return error("profile", points.error().found, points.error().would);
            hull.profile.insert(hull.profile.end(), points->begin(), points->end());
        }
    }

    const Drawing& m_drawing;
    const TableCorrections& m_corrections;
    const std::string& m_file;
    TableProject m_made;
    std::vector<Section> m_sections;
    double m_tolerance = 0.0; // of the drawing, as all below but the scale
    double m_centre = 0.0;
    double m_widest = 0.0;
    double m_base = 0.0;
    double m_scale = 1.0; // mm to a unit
    std::vector<FileMessage> m_errors;
};

} // namespace

std::optional<std::string> stationInName(std::string_view name) {
    const LabelWords words = labelWords(name);
    const bool known = std::ranges::all_of(words.words, [](const std::string& word) {
        constexpr std::array<std::string_view, 12> allowed{
            "station", "st", "sta", "stn", "mould", "mold", "section", "x", "frame", "at", "position", "pos"};
        return std::ranges::find(allowed, word) != allowed.end();
    });
    if (!known || words.lengths.size() != 1)
        return std::nullopt;
    return words.lengths.front();
}

Expected<TableProject, std::vector<FileMessage>> sectionsProject(const Drawing& drawing,
                                                                 const TableCorrections& corrections,
                                                                 const std::string& name,
                                                                 const std::string& file) {
    return Builder(drawing, corrections, file).project(name);
}

Expected<ReadTable, std::vector<FileMessage>> readSections(std::string_view text,
                                                           const std::string& file,
                                                           const std::string& name,
                                                           const TableCorrections& corrections) {
    const auto first = text.find_first_not_of(" \t\r\n\xEF\xBB\xBF");
    const bool svg = first != std::string_view::npos && text[first] == '<';
    const auto drawing = svg ? readSvg(text, file) : readDxf(text, file);
    if (!drawing)
        return unexpected(std::vector{drawing.error()});
    const auto made = sectionsProject(*drawing, corrections, name, file);
    if (!made)
        return unexpected(made.error());
    return asProjectText(*made, {}, file);
}

} // namespace sheerlay::core

#include "core/tables/hull_tables.hpp"

#include "core/hull/station_names.hpp"
#include "core/tables/csv.hpp"
#include "core/units/length.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <optional>
#include <vector>

namespace sheerlay::core {
namespace {

using Line = std::vector<Eigen::Vector3d>;

constexpr int finePoints = 400; // of an offset section
constexpr int mouldPoints = 60;
constexpr double sameStation = 0.05; // mm

/// What `other` is where `along` crosses the level, of all crossings the one `better` prefers.
std::optional<double> crossing(const Line& section,
                               int along,
                               double level,
                               int other,
                               const std::function<bool(double, double)>& better) {
    std::optional<double> best;
    for (std::size_t i = 0; i + 1 < section.size(); ++i) {
        const double a = section[i][along] - level;
        const double b = section[i + 1][along] - level;
        if ((a > 0.0) == (b > 0.0))
            continue;
        const double f = a / (a - b);
        const double value = section[i][other] + f * (section[i + 1][other] - section[i][other]);
        if (!best || better(value, *best))
            best = value;
    }
    return best;
}

} // namespace

std::string
offsetTable(const Project& project, const LoftedHull& hull, Units units, const OffsetLines& lines) {
    const bool chosen = lines.stations || lines.waterlines || lines.buttocks;
    const auto text = [&](double value) {
        return chosen ? roundedLength(value, project.hull.roundedTo, units) : plainLength(value, units);
    };
    // places are told finer than what is read off there
    const auto place = [&](double value) {
        return chosen ? roundedLength(value, units == Units::Inches ? mmPerInch / 16 : 0.1, units)
                      : plainLength(value, units);
    };
    std::vector<std::string> names = stationNames(project, hull);
    std::vector<double> xs = hull.stationX;
    if (lines.stations) {
        const std::vector<std::string> own = names;
        xs = lines.stations->between(hull.drawn.sheer.front().x(), hull.drawn.sheer.back().x());
        names.clear();
        for (const double x : xs) {
            const auto same = std::find_if(hull.stationX.begin(), hull.stationX.end(), [&](double station) {
                return std::abs(station - x) < sameStation;
            });
            names.push_back(same == hull.stationX.end()
                                ? place(x)
                                : own[static_cast<std::size_t>(same - hull.stationX.begin())]);
        }
    }
    std::vector<Line> sections;
    double low = 1e300;
    double high = -1e300;
    double broad = 0.0;
    for (const double x : xs) {
        sections.push_back(sectionAt(hull.drawn, x, finePoints));
        for (const Eigen::Vector3d& p : sections.back()) {
            low = std::min(low, p.z());
            high = std::max(high, p.z());
            broad = std::max(broad, p.y());
        }
    }
    const bool inches = units == Units::Inches;
    const Levels usualWaterlines{{}, inches ? 2.0 * mmPerInch : 50.0};
    const Levels usualButtocks{{}, inches ? 4.0 * mmPerInch : 100.0};
    const std::vector<double> waterlines = lines.waterlines.value_or(usualWaterlines).between(low, high);
    const std::vector<double> buttocks = lines.buttocks.value_or(usualButtocks).between(0.0, broad);

    std::vector<std::string> head{"station",
                                  inUnits("x", units),
                                  inUnits("sheer height", units),
                                  inUnits("sheer half-breadth", units),
                                  inUnits("keel height", units),
                                  inUnits("keel half-breadth", units)};
    for (const double level : waterlines)
        head.push_back("half-breadth at height " + inUnits(place(level), units));
    for (const double level : buttocks)
        head.push_back("height at half-breadth " + inUnits(place(level), units));
    std::vector<std::vector<std::string>> rows{std::move(head)};
    const auto cell = [&](const std::optional<double>& value) {
        return value ? text(*value) : std::string();
    };
    for (std::size_t i = 0; i < sections.size(); ++i) {
        const Line& section = sections[i];
        if (section.size() < 2)
            continue;
        std::vector<std::string> row{names[i],
                                     place(xs[i]),
                                     text(section.front().z()),
                                     text(section.front().y()),
                                     text(section.back().z()),
                                     text(section.back().y())};
        for (const double level : waterlines)
            row.push_back(cell(crossing(section, 2, level, 1, std::greater<>())));
        for (const double level : buttocks)
            row.push_back(cell(crossing(section, 1, level, 2, std::less<>())));
        rows.push_back(std::move(row));
    }
    return csvText(rows);
}

std::string mouldTable(const Project& project, const LoftedHull& hull, Units units) {
    std::vector<std::vector<std::string>> rows{{"station",
                                                inUnits("x", units),
                                                "point",
                                                inUnits("half-breadth", units),
                                                inUnits("height", units),
                                                inUnits("girth from the sheer", units)}};
    const std::vector<std::string> names = stationNames(project, hull);
    for (std::size_t i = 0; i < names.size(); ++i) {
        const Line section = sectionAt(hull.moulds, hull.stationX[i], mouldPoints);
        if (section.size() < 2)
            continue;
        double girth = 0.0;
        for (std::size_t k = 0; k < section.size(); ++k) {
            if (k > 0)
                girth += (section[k] - section[k - 1]).norm();
            rows.push_back({names[i],
                            plainLength(hull.stationX[i], units),
                            std::to_string(k + 1),
                            plainLength(section[k].y(), units),
                            plainLength(section[k].z(), units),
                            plainLength(girth, units)});
        }
    }
    return csvText(rows);
}

} // namespace sheerlay::core

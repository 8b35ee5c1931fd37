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

/// Whole multiples of `step` strictly between two values.
std::vector<double> levels(double low, double high, double step) {
    std::vector<double> list;
    for (double level = step * (std::floor(low / step) + 1.0); level < high; level += step)
        list.push_back(level);
    return list;
}

} // namespace

std::string offsetTable(const Project& project, const LoftedHull& hull, Units units) {
    const std::vector<std::string> names = stationNames(project, hull);
    std::vector<Line> sections;
    double low = 1e300;
    double high = -1e300;
    double broad = 0.0;
    for (const double x : hull.stationX) {
        sections.push_back(sectionAt(hull.drawn, x, finePoints));
        for (const Eigen::Vector3d& p : sections.back()) {
            low = std::min(low, p.z());
            high = std::max(high, p.z());
            broad = std::max(broad, p.y());
        }
    }
    const bool inches = units == Units::Inches;
    const std::vector<double> waterlines = levels(low, high, inches ? 2.0 * mmPerInch : 50.0);
    const std::vector<double> buttocks = levels(0.0, broad, inches ? 4.0 * mmPerInch : 100.0);

    std::vector<std::string> head{"station",
                                  inUnits("x", units),
                                  inUnits("sheer height", units),
                                  inUnits("sheer half-breadth", units),
                                  inUnits("keel height", units),
                                  inUnits("keel half-breadth", units)};
    for (const double level : waterlines)
        head.push_back("half-breadth at height " + inUnits(plainLength(level, units), units));
    for (const double level : buttocks)
        head.push_back("height at half-breadth " + inUnits(plainLength(level, units), units));
    std::vector<std::vector<std::string>> rows{std::move(head)};
    const auto cell = [units](const std::optional<double>& value) {
        return value ? plainLength(*value, units) : std::string();
    };
    for (std::size_t i = 0; i < sections.size(); ++i) {
        const Line& section = sections[i];
        if (section.size() < 2)
            continue;
        std::vector<std::string> row{names[i],
                                     plainLength(hull.stationX[i], units),
                                     plainLength(section.front().z(), units),
                                     plainLength(section.front().y(), units),
                                     plainLength(section.back().z(), units),
                                     plainLength(section.back().y(), units)};
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

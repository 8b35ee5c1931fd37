#include "core/fairness/battens_text.hpp"

#include "core/hull/station_names.hpp"
#include "core/units/length.hpp"
#include "core/units/number_text.hpp"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <numbers>
#include <utility>

namespace sheerlay::core {
namespace {

constexpr std::size_t firstColumn = 10, column = 11; // letters

std::string padded(const std::string& text, std::size_t width) {
    std::size_t letters = 0;
    for (const char c : text)
        letters += (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
    return std::string(width > letters ? width - letters : 1, ' ') + text;
}

struct Column {
    std::string name;
    std::vector<const HullLine*> pieces;
};

std::string block(const std::string& title,
                  const std::vector<Column>& columns,
                  const std::vector<std::string>& names,
                  const std::vector<double>& xs) {
    std::string text = title + "\n" + padded("x", firstColumn);
    for (const Column& c : columns)
        text += padded(c.name, column);
    text += "\n";
    for (std::size_t i = 0; i < xs.size(); ++i) {
        std::string row = padded(names[i], firstColumn);
        bool any = false;
        for (const Column& c : columns) {
            std::optional<double> k;
            for (const HullLine* piece : c.pieces)
                if (!k)
                    k = curvatureAt(*piece, xs[i]);
            row += padded(k ? numberText(1000 * *k, 2) : ".", column);
            any = any || k;
        }
        if (any)
            text += row + "\n";
    }
    return text;
}

} // namespace

std::optional<double> curvatureAt(const HullLine& line, double x) {
    for (std::size_t i = 0; i + 1 < line.points.size(); ++i) {
        const HullLinePoint& a = line.points[i];
        const HullLinePoint& b = line.points[i + 1];
        if ((a.p.x() - x) * (b.p.x() - x) > 0 || a.p.x() == b.p.x())
            continue;
        const double f = (x - a.p.x()) / (b.p.x() - a.p.x());
        return a.curvature + f * (b.curvature - a.curvature);
    }
    return std::nullopt;
}

std::string battensText(const Project& project,
                        const LoftedHull& hull,
                        const std::vector<StationBump>& bumps,
                        Units units) {
    const std::vector<std::string> names = stationNames(project, hull);
    std::string text =
        "How far each station stands out of the fair lines through the others, + too full, mm:\n" +
        padded("x", firstColumn) + padded("out", column) + padded("+-", column) + "\n";
    for (const StationBump& b : bumps)
        text += padded(b.station, firstColumn) + padded(numberText(b.bump, 1), column) +
                padded(numberText(b.spread, 1), column) +
                (b.unfair   ? "  unfair"
                 : b.judged ? ""
                            : "  not judged: so near an end true shape looks alike") +
                "\n";

    const LineChoices choices = usualLines(hull.drawn, units);
    const std::vector<HullLine> lines = hullLines(hull.drawn, choices);
    const auto columnOf = [&](std::string name, LineFamily family, std::size_t index) {
        Column c{std::move(name), {}};
        for (const HullLine& line : lines)
            if (line.family == family && line.index == index)
                c.pieces.push_back(&line);
        return c;
    };
    const auto columnsOf = [&](const std::vector<double>& levels, LineFamily family) {
        std::vector<Column> columns;
        for (std::size_t i = 0; i < levels.size(); ++i)
            columns.push_back(columnOf(formatLength(levels[i], units), family, i));
        return columns;
    };
    text +=
        "\nCurvature of the lines at the stations, 1/m, + round, - hollow; the table's rounding moves it by "
        "about 0.02.\n";
    text += block("Sheer and keel",
                  {columnOf("in plan", LineFamily::SheerPlan, 0),
                   columnOf("in profile", LineFamily::SheerProfile, 0),
                   columnOf("keel", LineFamily::Keel, 0)},
                  names,
                  hull.stationX);
    text += block("Waterlines", columnsOf(choices.waterlines, LineFamily::Waterline), names, hull.stationX);
    text += block("Buttocks", columnsOf(choices.buttocks, LineFamily::Buttock), names, hull.stationX);
    std::vector<Column> diagonals;
    for (std::size_t i = 0; i < choices.diagonals.size(); ++i) {
        const DiagonalPlane& d = choices.diagonals[i];
        diagonals.push_back(columnOf(formatLength(d.height, units) + " " +
                                         numberText(d.angle * 180 / std::numbers::pi, 0) + "\u00B0",
                                     LineFamily::Diagonal,
                                     i));
    }
    text += block("Diagonals, by their height on the centreline and angle", diagonals, names, hull.stationX);
    text += block("Lines of equal girth below the sheer",
                  columnsOf(choices.girths, LineFamily::EqualGirth),
                  names,
                  hull.stationX);
    return text;
}

} // namespace sheerlay::core

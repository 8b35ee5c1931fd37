#include "core/summary/start_text.hpp"

#include "core/units/length.hpp"

#include <spdlog/fmt/fmt.h>

#include <cmath>

namespace sheerlay::core {
namespace {

std::string name(const StartLine& line, Units units) {
    if (line.kind == StartLine::Kind::Sheer)
        return "along the sheer";
    if (line.kind == StartLine::Kind::Knuckle)
        return "along the knuckle";
    return fmt::format("{}, {} down",
                       line.kind == StartLine::Kind::Bent ? "bent" : "geodesic",
                       formatLength(line.girth, units, 8));
}

} // namespace

std::string
startTableText(const std::vector<StartTableRow>& table, const StartLine& chosen, double limit, Units units) {
    if (table.empty())
        return {};
    const bool inches = units == Units::Inches;
    std::string text = fmt::format("Start lines compared (tapers for a radius of {:.1f} {}):\n",
                                   inches ? 1 / limit / mmPerFoot : 1 / limit / 1000,
                                   inches ? "ft" : "m");
    text += fmt::format("  {:<22}{:>9}{:>5}{:>7}{:>6}{:>8}{:>9}{:>10}{:>9}{:>9}\n",
                        "",
                        "worst /m",
                        "row",
                        "clamp",
                        "hard",
                        "pieces",
                        "slivers",
                        "to taper",
                        inches ? "strip ft" : "strip m",
                        "shutter");
    for (const StartTableRow& row : table)
        text += fmt::format("{} {:<22}{:>9.2f}{:>5}{:>7}{:>6}{:>8}{:>9}{:>10}{:>9.0f}{:>9}\n",
                            row.line == chosen ? '>' : ' ',
                            name(row.line, units),
                            row.worst * 1000,
                            row.worstRow,
                            row.rowsOverFree,
                            row.rowsOverClamp,
                            row.fillers,
                            row.slivers,
                            row.tapered ? std::to_string(*row.tapered) : "not met",
                            inches ? row.stripLength / mmPerFoot : row.stripLength / 1000,
                            formatLength(row.shutter, units, 16));
    text += "  row: of the worst bend; clamp, hard: rows a side that need more than hands, more than clamps\n"
            "  pieces: above the start, a side; slivers: under 6 mm\n";
    return text;
}

} // namespace sheerlay::core

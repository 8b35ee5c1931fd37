#include "core/summary/plan_summary.hpp"

#include "core/planking/difficulty.hpp"
#include "core/planking/plan_findings.hpp"
#include "core/planking/strength.hpp"
#include "core/planking/uncertainty_text.hpp"
#include "core/units/length.hpp"

#include <spdlog/fmt/fmt.h>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <string_view>
#include <utility>

namespace sheerlay::core {

namespace {

constexpr std::size_t textWidth = 76; // columns beside the label

double roundTo(double value, double step) {
    return std::round(value / step) * step;
}

/// Two significant digits.
double roughly(double value) {
    if (value <= 0.0)
        return 0.0;
    return roundTo(value, std::pow(10.0, std::floor(std::log10(value)) - 1.0));
}

/// A size the table gives: to 1 mm or 1/8 in.
std::string measured(double mm, Units units) {
    return formatLength(mm, units, 8);
}

/// Where something is along the boat: to 10 mm or 1 in.
std::string place(double mm, Units units) {
    return units == Units::Inches ? formatLength(mm, units, 1) : formatLength(roundTo(mm, 10.0), units);
}

/// A stock size: 6.35 mm is no 6 mm.
std::string size(double mm, Units units) {
    if (units == Units::Inches)
        return formatLength(mm, units, 32);
    int decimals = 0;
    for (double step = 1.0; decimals < 2 && std::abs(mm - roundTo(mm, step)) > 1e-6; step /= 10.0)
        ++decimals;
    return formatLength(mm, units, 16, decimals);
}

std::string count(int n, std::string_view one, std::string_view many) {
    return fmt::format("{} {}", n, n == 1 ? one : many);
}

const std::string continuation = "\n" + std::string(13, ' ');

std::string line(std::string_view label, std::string_view text) {
    return fmt::format("  {:<11}{}\n", label, text);
}

/// The sentence over as many lines as it takes, each under the first.
std::string wrapped(std::string_view sentence) {
    std::string text;
    std::size_t column = 0;
    while (!sentence.empty()) {
        std::size_t end = std::min(sentence.find(' '), sentence.size());
        if (sentence.substr(0, end) == "+/-") // stays with its figure
            end = std::min(sentence.find(' ', end + 1), sentence.size());
        if (column > 0 && column + 1 + end > textWidth) {
            text += continuation;
            column = 0;
        } else if (column > 0) {
            text += ' ';
            ++column;
        }
        text += sentence.substr(0, end);
        column += end;
        sentence.remove_prefix(std::min(end + 1, sentence.size()));
    }
    return text;
}

std::string rowsText(const PlanSummary& s) {
    const int rows = s.rowsBelow + s.rowsAbove;
    std::string text = count(rows, "row a side", "rows a side");
    if (s.rowsAbove > 0)
        text += fmt::format(" ({} from the start down, {} above it)", s.rowsBelow, s.rowsAbove);
    return text + ", " + count(s.pieces, "piece", "pieces") + " in all";
}

std::string lineal(double mm, Units units) {
    const double total = units == Units::Inches ? mm / mmPerFoot : mm / 1000.0;
    return fmt::format("about {:.0f} {} to cut, laps and trim included, spare not",
                       total,
                       units == Units::Inches ? "ft" : "m");
}

std::string bendText(const WorstEdgeBend& worst, const std::optional<PlanUncertainty>& u, Units units) {
    const bool inches = units == Units::Inches;
    const double radius = 1.0 / worst.edgeBend;
    const double base = inches ? sagBaseInches : sagBaseMillimetres;
    const double sag = sagOver(worst.edgeBend, base);
    const double sagPlusMinus = u ? printedDeviations * sagOver(u->edgeBend, base) : 0.0;
    std::string text = fmt::format("hardest in {}, {} from the bow ({})",
                                   worst.strip,
                                   place(worst.atX, units),
                                   toText(worst.difficulty));
    if (sag < base / 4) // beyond, nobody holds a straight edge to it
        text += fmt::format(": a sag of {} over {}",
                            lengthText(sag, inches ? mmPerInch / 4 : 5.0, sagPlusMinus, units),
                            inches ? "8 ft" : "2 m");
    text += continuation + fmt::format("radius {:.1f} {}, {:.2f} per metre",
                                       inches ? radius / mmPerFoot : radius / 1000.0,
                                       inches ? "ft" : "m",
                                       worst.edgeBend * 1000.0);
    if (worst.force > 0.0)
        text += fmt::format("; about {:.0f} N ({:.0f} lb) hold it over one mould bay",
                            roughly(worst.force),
                            roughly(worst.force / newtonsPerPound));
    return text;
}

/// "bow rows 1 to 21, stern rows 1 to 20", "nothing at the bow, …".
std::string weaveText(const Marks& marks) {
    const auto end = [](std::string_view name, const std::optional<RowRange>& rows) {
        if (!rows)
            return fmt::format("no row at the {}", name);
        if (rows->first == rows->last)
            return fmt::format("row {} at the {}", rows->first, name);
        return fmt::format("rows {} to {} at the {}", rows->first, rows->last, name);
    };
    if (!marks.weaveBow && !marks.weaveStern)
        return "no ends are woven";
    return "ends lap in " + end("bow", marks.weaveBow) + ", in " + end("stern", marks.weaveStern);
}

std::string closingText(const Marks& marks) {
    const auto end = [](std::string_view name, const std::optional<int>& row) {
        return row ? fmt::format("from row {} at the {}", *row, name)
                   : fmt::format("nowhere at the {}", name);
    };
    if (!marks.closingBow && !marks.closingStern)
        return "no strip ends on the keel";
    return "strips end on the keel " + end("bow", marks.closingBow) + ", " + end("stern", marks.closingStern);
}

std::string shutterText(const std::vector<ShutterSummary>& shutters,
                        const std::optional<PlanUncertainty>& u,
                        Units units) {
    const bool inches = units == Units::Inches;
    std::string text;
    for (const ShutterSummary& shutter : shutters) {
        if (!text.empty())
            text += "; ";
        text += fmt::format("{}, {} at its widest, {} long",
                            shutter.strip,
                            lengthText(shutter.widest,
                                       inches ? mmPerInch / 16 : 0.5,
                                       u ? printedDeviations * u->shutterWidth.value_or(0.0) : 0.0,
                                       units),
                            lengthText(shutter.length,
                                       inches ? mmPerInch / 4 : 5.0,
                                       printedDeviations * shutter.lengthDeviation,
                                       units));
    }
    return text;
}

std::string findingsText(const std::array<int, 3>& findings) {
    const auto [notes, cautions, stops] = findings;
    if (notes + cautions + stops == 0)
        return "none";
    std::string text;
    const auto add = [&text](int n, std::string_view one, std::string_view many) {
        if (n > 0)
            text += (text.empty() ? "" : ", ") + count(n, one, many);
    };
    add(stops, "stop", "stops");
    add(cautions, "caution", "cautions");
    add(notes, "note", "notes");
    return text;
}

} // namespace

PlanSummary summarize(const Project& project, const LoftedHull& hull, const Plan& plan) {
    PlanSummary s;
    s.name = project.name;
    s.stock = project.strips;
    s.stock.coverWidth = plan.coverWidth;
    s.length = hull.laid.length;
    s.beam = hull.laid.beam;
    s.halfGirthMax = hull.laid.halfGirthMax;
    s.halfGirthMaxX = hull.laid.halfGirthMaxX;
    s.rowsBelow = std::max(plan.lastRow, 0);
    s.rowsAbove = std::max(-plan.firstRow, 0);
    s.pieces = static_cast<int>(plan.strips.size());
    s.marks = plan.marks;
    s.uncertainty = plan.uncertainty;
    for (const Strip& strip : plan.strips) {
        s.cutLength += strip.cutLength;
        if (strip.edgeBend.maxAbs > (s.worst ? s.worst->edgeBend : 0.0))
            s.worst = WorstEdgeBend{strip.id,
                                    strip.edgeBend.maxAbs,
                                    strip.edgeBend.atX,
                                    strip.edgeBend.force,
                                    difficultyOf(strip)};
        if (strip.kind == StripKind::Shutter) {
            ShutterSummary shutter{
                strip.id, 0.0, strip.length, plan.uncertainty ? plan.uncertainty->lengthOf(strip.row) : 0.0};
            for (const auto& width : strip.widths)
                shutter.widest = std::max(shutter.widest, width[1]);
            s.shutters.push_back(std::move(shutter));
        }
    }
    for (const Finding& finding : allFindings(hull, plan))
        ++s.findings[static_cast<std::size_t>(finding.level)];
    return s;
}

std::string toText(const PlanSummary& s, Units units) {
    std::string wood = s.stock.wood;
    std::ranges::replace(wood, '-', ' ');

    std::string text = s.name + "\n";
    text += line("hull",
                 fmt::format("{} long, {} wide; half girth {} at most, {} from the bow",
                             measured(s.length, units),
                             measured(s.beam, units),
                             measured(s.halfGirthMax, units),
                             place(s.halfGirthMaxX, units)));
    text += line("stock",
                 fmt::format("{} by {} {}, each covering {}",
                             size(s.stock.thickness, units),
                             size(s.stock.width, units),
                             wood,
                             size(s.stock.coverWidth, units)));
    text += line("rows", rowsText(s));
    text += line("strip", lineal(s.cutLength, units));
    text +=
        line("edge bend",
             s.worst ? bendText(*s.worst, s.uncertainty, units) : "none: no strip is bent across its width");
    text += line("weave", weaveText(s.marks));
    text += line("closing", closingText(s.marks));
    if (!s.shutters.empty())
        text += line("shutter", shutterText(s.shutters, s.uncertainty, units));
    if (s.uncertainty)
        text += line("rounding", wrapped(toText(*s.uncertainty, units)));
    text += line("findings", findingsText(s.findings));
    return text;
}

} // namespace sheerlay::core

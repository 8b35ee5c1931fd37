#include "app/commands.hpp"

#include "app/patterns_command.hpp"
#include "app/sheets_command.hpp"
#include "app/table_command.hpp"
#include "core/afloat/after_json.hpp"
#include "core/afloat/after_text.hpp"
#include "core/fairness/battens_text.hpp"
#include "core/fairness/fairness_findings.hpp"
#include "core/fairness/fairness_json.hpp"
#include "core/hull/hull.hpp"
#include "core/journal/replan.hpp"
#include "core/planking/plan_findings.hpp"
#include "core/planking/plan_json.hpp"
#include "core/planking/recovery.hpp"
#include "core/planking/start_table.hpp"
#include "core/planking/taper_trade.hpp"
#include "core/project/project_file.hpp"
#include "core/questions/table_questions.hpp"
#include "core/sheets/shop_plan.hpp"
#include "core/stock/stock_json.hpp"
#include "core/summary/plan_summary.hpp"
#include "core/summary/start_text.hpp"
#include "core/summary/trade_text.hpp"
#include "core/units/both_units.hpp"
#include "core/units/length.hpp"
#include "ui/begin/begin_project.hpp"
#include "ui/begin/file_output.hpp"
#include "ui/exports/export_files.hpp"

#include <spdlog/fmt/fmt.h>

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace sheerlay::app {

namespace {

using core::Finding;
using core::LoftedHull;
using core::Plan;
using core::Project;

void progress(const Console& console, std::string_view text) {
    if (console.terminal)
        console.err << text << " …\n" << std::flush;
}

/// Flushes what was said on standard output. @return exitDone, or exitUnusable with a message
int finishOutput(const Console& console) {
    console.out.flush();
    if (console.out)
        return exitDone;
    console.err << "Standard output can't be written; is the disk full, or the reader gone?\n";
    return exitUnusable;
}

/// Reads the project; what is odd or wrong about its file goes to standard error.
std::optional<core::ReadProject> readProject(const Request& request, const Console& console) {
    auto read = core::readProject(request.project);
    if (!read) {
        for (const core::FileMessage& message : read.error())
            console.err << toText(message) << '\n';
        return std::nullopt;
    }
    for (const core::FileMessage& message : read->warnings)
        console.err << toText(message) << '\n';
    if (request.units)
        read->project.units = *request.units;
    return std::move(read).value();
}

std::optional<LoftedHull> loft(const Request& request, const Project& project, const Console& console) {
    progress(console, "Lofting the table");
    auto hull = core::loft(project);
    if (hull)
        return std::move(hull).value();
    console.err << request.project << ": " << core::unitsFirst(hull.error().text, project.units) << '\n';
    return std::nullopt;
}

void print(const std::vector<Finding>& findings, core::Units units, const Console& console) {
    for (const Finding& finding : findings)
        console.out << core::unitsFirst(toText(finding), units) << '\n';
}

/// Writes JSON where the request wants it. @return an exit code
int writeJson(const std::string& path,
              const std::string& json,
              const Console& console,
              std::string_view what) {
    if (path == "-") {
        console.out << json << '\n';
        return finishOutput(console);
    }
    if (const auto problem = ui::writeFile(path, json + "\n")) {
        console.err << *problem << '\n';
        return exitUnusable;
    }
    console.err << what << ' ' << path << ".\n";
    return exitDone;
}

/// How well the loft meets the table, in one sentence.
std::string loftText(const LoftedHull& hull, core::Units units) {
    const auto distance = [units](double mm) {
        return units == core::Units::Inches ? fmt::format("{:.2f} in", mm / core::mmPerInch)
                                            : fmt::format("{:.1f} mm", mm);
    };
    std::string text =
        fmt::format("The loft misses the table's points by {} in the mean", distance(hull.residualRms));
    const auto size = [](const core::StationResidual& station) { return std::abs(station.max); };
    if (const auto worst = std::ranges::max_element(hull.residuals, {}, size); worst != hull.residuals.end())
        text += fmt::format(", by {} at most, at station {}", distance(size(*worst)), worst->station);
    return text + ".";
}

int check(const Request& request, const Console& console) {
    const auto read = readProject(request, console);
    if (!read)
        return exitUnusable;
    const auto hull = loft(request, read->project, console);
    if (!hull)
        return exitUnusable;

    progress(console, "Laying battens over the stations");
    const auto battens = core::stationBumps(read->project, *hull);
    const std::vector<core::StationBump> bumps = battens ? *battens : std::vector<core::StationBump>{};
    const std::vector<Finding> unfair = core::fairnessFindings(bumps);
    const std::vector<Finding> questions = core::tableQuestions(read->project, *hull);
    std::vector<Finding> findings = core::besideQuestions(hull->findings, questions);
    findings.insert(findings.end(), unfair.begin(), unfair.end());
    findings.insert(findings.end(), questions.begin(), questions.end());
    if (!battens) // she is lofted for all that
        findings.push_back({core::Level::Note,
                            "fairness-untold",
                            std::nullopt,
                            std::nullopt,
                            "How far single stations stand out can't be told: " + battens.error() + "."});
    findings = core::withAsides(std::move(findings), read->project.putAside);
    if (request.json == "-")
        progress(console, loftText(*hull, read->project.units));
    else {
        console.err << loftText(*hull, read->project.units) << '\n';
        if (findings.empty())
            console.err << "Nothing was found on the table and the loft.\n";
        print(core::heaviestFirst(findings), read->project.units, console);
        if (request.battens)
            console.out << core::battensText(read->project, *hull, bumps, read->project.units);
        if (const int code = finishOutput(console); code != exitDone)
            return code;
    }
    if (!request.json)
        return exitDone;
    for (const core::FileMessage& message : read->warnings)
        findings.push_back({core::Level::Note, "project-file", std::nullopt, std::nullopt, toText(message)});
    return writeJson(
        *request.json,
        core::withFairness(core::findingsToJson(core::heaviestFirst(std::move(findings))), bumps),
        console,
        "The findings are in");
}

/// A project whose strips are laid.
struct Laid {
    Project project;
    LoftedHull hull;
    Plan plan;
};

std::optional<Laid> layStrips(const Request& request, const Console& console) {
    auto read = readProject(request, console);
    if (!read)
        return std::nullopt;
    auto hull = loft(request, read->project, console);
    if (!hull)
        return std::nullopt;
    progress(console, "Laying the strips");
    auto asLaid = core::plankAsLaid(read->project, *hull);
    if (!asLaid) {
        console.err << request.project << ": " << core::unitsFirst(asLaid.error().text, read->project.units)
                    << '\n';
        return std::nullopt;
    }
    Plan plan = std::move(asLaid->plan);
    if (core::breaksDown(plan))
        progress(console, "Looking for what would do");
    core::proposeRemedy(read->project, *hull, plan);
    return Laid{std::move(read->project), std::move(*hull), std::move(plan)};
}

core::ShopPlan planShop(Laid& laid, const Console& console) {
    return core::planShop(laid.project, laid.hull, std::move(laid.plan), [&console](std::string_view begun) {
        progress(console, begun);
    });
}

int plan(const Request& request, const Console& console) {
    auto laid = layStrips(request, console);
    if (!laid)
        return exitUnusable;
    const core::ShopPlan shop = planShop(*laid, console);
    const Project& project = laid->project;
    const LoftedHull& hull = laid->hull;
    const Plan& plan = shop.plan;
    if (request.json != "-") {
        const auto summary = core::summarize(project, hull, plan);
        console.out << core::toText(summary, project.units);
        if (shop.stock)
            console.out << core::toText(*shop.stock, project.units);
        console.out << core::toText(shop.after, project.units);
        if (!plan.candidates.empty()) {
            progress(console, "Comparing start lines");
            const auto lines = core::linesToCompare(plan.candidates, plan.start);
            const double limit = plan.edgeBendLimit;
            console.out << core::startTableText(
                core::compareStarts(project, hull, lines, limit), plan.start, limit, project.units);
        }
        if (request.taperTrade && plan.start.kind == core::StartLine::Kind::Knuckle) {
            console.out
                << "Limits are not weighed where rows start at a knuckle: sides and bottom have tapers "
                   "of their own.\n";
        } else if (request.taperTrade) {
            progress(console, "Weighing tapers");
            console.out << core::tradeText(
                core::taperTrade(project, hull, plan), plan.edgeBendLimit, project.units);
        }
        print(core::toldWithAsides(core::allFindings(hull, plan), project.putAside), project.units, console);
        if (const int code = finishOutput(console); code != exitDone)
            return code;
    }
    if (!request.json)
        return exitDone;
    std::string json = core::planToJson(project, hull, plan);
    if (shop.stock)
        json = core::withStockPlan(std::move(json), *shop.stock);
    json = core::withAfterPlanking(std::move(json), shop.after);
    return writeJson(*request.json, json, console, "The plan is in");
}

/// Has a folder filled with files of what is planned; their paths go to standard output, what could not be
/// drawn or asks for care to standard error.
template <class Write> int files(const Request& request, const Console& console, const Write& write) {
    auto laid = layStrips(request, console);
    if (!laid)
        return exitUnusable;
    const ui::Outcome written = write(*laid);
    if (!written) {
        console.err << written.error() << '\n';
        return exitUnusable;
    }
    for (const Finding& finding : written->findings)
        if (finding.level != core::Level::Note)
            console.err << core::unitsFirst(toText(finding), laid->project.units) << '\n';
    for (const std::string& path : written->files)
        console.out << path << '\n';
    return finishOutput(console);
}

int sheets(const Request& request, const Console& console) {
    return files(request, console, [&](Laid& laid) {
        const core::ShopPlan shop = planShop(laid, console);
        progress(console, "Drawing the sheets");
        return writeSheets(request, laid.project, laid.hull, shop);
    });
}

int patterns(const Request& request, const Console& console) {
    return files(request, console, [&](const Laid& laid) {
        progress(console, "Drawing the patterns");
        return writePatterns(request, laid.project, laid.hull, laid.plan);
    });
}

int exports(const Request& request, const Console& console) {
    return files(request, console, [&](const Laid& laid) {
        progress(console, "Writing solids and tables");
        return ui::writeExports(request.out,
                                laid.project,
                                laid.hull,
                                laid.plan,
                                {request.stations, request.waterlines, request.buttocks});
    });
}

int starter(const Request& request, const Console& console) {
    const auto text = ui::checkedStarter(request.name);
    if (!text) {
        console.err << "The name can't stand in a project file; plain text in UTF-8 would do.\n";
        return exitUnusable;
    }
    if (const auto problem = ui::writeNewFile(request.out, *text)) {
        console.err << *problem << '\n';
        return exitUnusable;
    }
    console.err << "The project is in " << request.out << ".\n";
    return exitDone;
}

} // namespace

int runCommand(const Request& request, const Console& console) {
    switch (request.command) {
    case Command::Check:
        return check(request, console);
    case Command::Plan:
        return plan(request, console);
    case Command::Sheets:
        return sheets(request, console);
    case Command::Patterns:
        return patterns(request, console);
    case Command::Export:
        return exports(request, console);
    case Command::New:
        return request.table.empty() && request.sections.empty() && request.surface.empty()
                   ? starter(request, console)
                   : writeFromTable(request, console);
    case Command::Window:
        break;
    }
    return exitWrongUsage; // the window is not a command; main opens it
}

} // namespace sheerlay::app

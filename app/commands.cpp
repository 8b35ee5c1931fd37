#include "app/commands.hpp"

#include "app/export_command.hpp"
#include "app/file_output.hpp"
#include "app/patterns_command.hpp"
#include "app/sheets_command.hpp"
#include "app/starter.hpp"
#include "app/table_command.hpp"
#include "core/afloat/afloat.hpp"
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
#include "core/planking/uncertainty.hpp"
#include "core/project/project_file.hpp"
#include "core/questions/table_questions.hpp"
#include "core/stock/stock_json.hpp"
#include "core/stock/stock_plan.hpp"
#include "core/summary/plan_summary.hpp"
#include "core/summary/start_text.hpp"
#include "core/summary/trade_text.hpp"
#include "core/units/length.hpp"

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
    console.err << request.project << ": " << hull.error().text << '\n';
    return std::nullopt;
}

void print(const std::vector<Finding>& findings, const Console& console) {
    for (const Finding& finding : findings)
        console.out << toText(finding) << '\n';
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
    if (const auto problem = writeFile(path, json + "\n")) {
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
    if (request.json == "-")
        progress(console, loftText(*hull, read->project.units));
    else {
        console.err << loftText(*hull, read->project.units) << '\n';
        if (findings.empty())
            console.err << "Nothing was found on the table and the loft.\n";
        print(core::heaviestFirst(findings), console);
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

/// A project that went all the way.
struct Planned {
    Project project;
    LoftedHull hull;
    Plan plan;
    std::optional<core::StockPlan> stock; ///< none where no boards are described
    core::AfterPlanking after;            ///< empty where the project asks for none of it
};

/// The strips alone; all that follows from them is left empty.
std::optional<Planned> layStrips(const Request& request, const Console& console) {
    auto read = readProject(request, console);
    if (!read)
        return std::nullopt;
    auto hull = loft(request, read->project, console);
    if (!hull)
        return std::nullopt;
    progress(console, "Laying the strips");
    auto asLaid = core::plankAsLaid(read->project, *hull);
    if (!asLaid) {
        console.err << request.project << ": " << asLaid.error().text << '\n';
        return std::nullopt;
    }
    Plan plan = std::move(asLaid->plan);
    if (core::breaksDown(plan))
        progress(console, "Looking for what would do");
    core::proposeRemedy(read->project, *hull, plan);
    return Planned{std::move(read->project), std::move(*hull), std::move(plan), {}, {}};
}

std::optional<Planned> planProject(const Request& request, const Console& console) {
    auto planned = layStrips(request, console);
    if (!planned)
        return std::nullopt;
    const Project& project = planned->project;
    const LoftedHull& hull = planned->hull;
    core::Plan& plan = planned->plan;
    const auto add = [&plan](const std::vector<Finding>& findings) {
        plan.findings.insert(plan.findings.end(), findings.begin(), findings.end());
    };
    progress(console, "Weighing the table's rounding");
    plan.uncertainty = core::uncertainty(project, hull, plan);
    if (project.stock)
        progress(console, "Cutting the strips from boards");
    planned->stock = core::planStock(project, hull, plan);
    if (planned->stock)
        add(planned->stock->findings);
    planned->after = core::afterPlanking(project, hull, plan);
    add(planned->after.findings);
    return planned;
}

int plan(const Request& request, const Console& console) {
    const auto planned = planProject(request, console);
    if (!planned)
        return exitUnusable;
    if (request.json != "-") {
        const auto summary = core::summarize(planned->project, planned->hull, planned->plan);
        console.out << core::toText(summary, planned->project.units);
        if (planned->stock)
            console.out << core::toText(*planned->stock, planned->project.units);
        console.out << core::toText(planned->after, planned->project.units);
        if (!planned->plan.candidates.empty()) {
            progress(console, "Comparing start lines");
            const auto lines = core::linesToCompare(planned->plan.candidates, planned->plan.start);
            const double limit = planned->plan.edgeBendLimit;
            console.out << core::startTableText(
                core::compareStarts(planned->project, planned->hull, lines, limit),
                planned->plan.start,
                limit,
                planned->project.units);
        }
        if (request.taperTrade) {
            progress(console, "Weighing tapers");
            console.out << core::tradeText(core::taperTrade(planned->project, planned->hull, planned->plan),
                                           planned->plan.edgeBendLimit,
                                           planned->project.units);
        }
        print(core::allFindings(planned->hull, planned->plan), console);
        if (const int code = finishOutput(console); code != exitDone)
            return code;
    }
    if (!request.json)
        return exitDone;
    std::string json = core::planToJson(planned->project, planned->hull, planned->plan);
    if (planned->stock)
        json = core::withStockPlan(std::move(json), *planned->stock);
    json = core::withAfterPlanking(std::move(json), planned->after);
    return writeJson(*request.json, json, console, "The plan is in");
}

using FileWriter = decltype(writeSheets);

/// Has a folder filled with files of what is planned; their paths go to standard output.
int files(const Request& request,
          const Console& console,
          const std::optional<Planned>& planned,
          std::string_view doing,
          FileWriter& write) {
    if (!planned)
        return exitUnusable;
    progress(console, doing);
    const auto written = write(request, planned->project, planned->hull, planned->plan);
    if (!written) {
        console.err << written.error() << '\n';
        return exitUnusable;
    }
    for (const std::string& path : *written)
        console.out << path << '\n';
    return finishOutput(console);
}

int starter(const Request& request, const Console& console) {
    const std::string text = starterProject(request.name);
    // The name comes from outside; the file must be one that this program reads.
    const auto read = core::parseProject(text, request.out);
    if (!read) {
        console.err << "The name can't stand in a project file; plain text in UTF-8 would do.\n";
        return exitUnusable;
    }
    if (const auto problem = writeNewFile(request.out, text)) {
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
        return files(request, console, planProject(request, console), "Drawing the sheets", writeSheets);
    case Command::Patterns:
        return files(request, console, layStrips(request, console), "Drawing the patterns", writePatterns);
    case Command::Export:
        return files(
            request, console, layStrips(request, console), "Writing solids and tables", writeExports);
    case Command::New:
        return request.table.empty() && request.sections.empty() ? starter(request, console)
                                                                 : writeFromTable(request, console);
    case Command::Window:
        break;
    }
    return exitWrongUsage; // the window is not a command; main opens it
}

} // namespace sheerlay::app

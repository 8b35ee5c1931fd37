#include "app/command_line.hpp"

#include "core/tables/offset_lines.hpp"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <filesystem>
#include <map>
#include <string_view>

namespace sheerlay::app {

namespace {

const std::map<std::string, core::Units> unitNames{{"in", core::Units::Inches},
                                                   {"mm", core::Units::Millimetres}};
const std::map<std::string, core::PageSize> pageNames(core::papers.begin(), core::papers.end());
const std::map<std::string, bool> rowNames{{"one", false}, {"several", true}};

/// `in|mm`, for the help and for complaints.
template <class T> std::string listOf(const std::map<std::string, T>& names) {
    std::string list;
    for (const auto& [name, value] : names)
        list += (list.empty() ? "" : "|") + name;
    return list;
}

/// One value out of few.
template <class T> CLI::Validator oneOf(const std::map<std::string, T>& names) {
    const std::string list = listOf(names);
    return CLI::Validator(
        [&names, list](std::string& text) {
            return names.contains(text) ? std::string() : "\"" + text + "\" is none of " + list;
        },
        "");
}

/// Places of lines, readable under one unit of plain numbers at least.
const CLI::Validator linePlaces(
    [](std::string& text) {
        const auto read = core::parseLevels(text, core::Units::Inches);
        if (read || core::parseLevels(text, core::Units::Millimetres))
            return std::string();
        return read.error().found + "; " + read.error().would + " would do";
    },
    "");

/// The values CLI11 writes into before they become a Request.
struct Fields {
    std::string project, json, out, name, units, page, rows, table, sections, surface;
    std::vector<std::string> takes;
    std::string stations, waterlines, buttocks;
    bool weighTapers = false, battens = false;
};

CLI::App* addCommand(CLI::App& app, const std::string& name, const std::string& text, Fields& fields) {
    CLI::App* command = app.add_subcommand(name, text);
    command->add_option("--units", fields.units, "Units of what is printed; the project's own when left out")
        ->check(oneOf(unitNames))
        ->type_name(listOf(unitNames));
    return command;
}

void addProject(CLI::App* command, Fields& fields) {
    command->add_option("PROJECT", fields.project, "A .sheerlay file")->required()->type_name("");
}

void addJson(CLI::App* command, const std::string& what, Fields& fields) {
    command
        ->add_option("--json", fields.json, what + "; - is standard output, which then holds the JSON alone")
        ->type_name("FILE");
}

Answer wrongUsage(const std::string& text, const std::string& help) {
    return {exitWrongUsage, "", text + "\n\n" + help};
}

/// A lone word that is neither a command nor a file: most likely a command misspelt.
bool looksLikeNoProject(const std::string& text) {
    const std::filesystem::path path(text);
    std::error_code ignored;
    return path.extension() != ".sheerlay" && !std::filesystem::exists(path, ignored);
}

std::string noSuchThing(const std::string& word) {
    return "There is no command and no project file called \"" + word + "\".";
}

} // namespace

std::variant<Request, Answer> readCommandLine(const std::vector<std::string>& arguments) {
    Fields fields;
    CLI::App app("Sheerlay plans the planking of strip-built boats, strip by strip.\n"
                 "Without a command it opens the window.",
                 "sheerlay");
    app.set_help_flag("-h,--help", "Shows this text"); // the commands take it over
    app.set_version_flag("--version", "sheerlay " SHEERLAY_VERSION, "Shows the version");
    app.require_subcommand(0, 1);
    std::string windowProject;
    app.add_option("PROJECT", windowProject, "A .sheerlay file to open in the window")->type_name("");

    CLI::App* check =
        addCommand(app, "check", "Says what was found on the file, the table and the loft", fields);
    addProject(check, fields);
    addJson(check, "Write the findings as JSON", fields);
    check->add_flag("--battens",
                    fields.battens,
                    "Also say how far every station stands out, and how every line bends at it");

    CLI::App* plan = addCommand(app, "plan", "Lays the strips; prints a summary and the findings", fields);
    addProject(plan, fields);
    addJson(plan, "Write the whole plan as JSON", fields);
    plan->add_flag("--weigh-tapers",
                   fields.weighTapers,
                   "Also say how many strips each limit on the edge bend would have tapered");

    CLI::App* sheets = addCommand(app, "sheets", "Writes the PDF sheets for the shop", fields);
    addProject(sheets, fields);
    sheets->add_option("--out", fields.out, "Folder for the sheets; made when it is not there")
        ->required()
        ->type_name("DIR");
    CLI::App* patterns =
        addCommand(app,
                   "patterns",
                   "Writes moulds, stem forms and pointed strips at true scale as PDF, DXF and SVG",
                   fields);
    addProject(patterns, fields);
    patterns->add_option("--out", fields.out, "Folder for the patterns; made when it is not there")
        ->required()
        ->type_name("DIR");
    for (CLI::App* paper : {sheets, patterns})
        paper
            ->add_option("--page",
                         fields.page,
                         "Paper; the project's own when left out, else Letter for inches and A4 for mm")
            ->check(oneOf(pageNames))
            ->type_name(listOf(pageNames));

    sheets->add_option("--rows", fields.rows, "Rows a cut sheet holds; as the project has it when left out")
        ->check(oneOf(rowNames))
        ->type_name(listOf(rowNames));

    CLI::App* solids = addCommand(app,
                                  "export",
                                  "Writes hull, moulds and strips as STEP, glTF and STL, their tables as "
                                  "CSV and the lines as SVG",
                                  fields);
    addProject(solids, fields);
    solids->add_option("--out", fields.out, "Folder for the files; made when it is not there")
        ->required()
        ->type_name("DIR");

    const auto addPlaces = [&](const char* name, std::string& into, const char* what) {
        solids
            ->add_option(name,
                         into,
                         std::string("Offsets at these ") + what +
                             ": \"every 6 in\", or lengths with commas between")
            ->check(linePlaces)
            ->type_name("PLACES");
    };
    addPlaces("--stations", fields.stations, "stations");
    addPlaces("--waterlines", fields.waterlines, "waterlines");
    addPlaces("--buttocks", fields.buttocks, "buttocks");

    CLI::App* starter =
        addCommand(app, "new", "Writes a starter project to edit, which plans as it is", fields);
    starter->add_option("NAME", fields.name, "What the boat is called")->required()->type_name("");
    starter->add_option("--out", fields.out, "File to write; never one that is there already")
        ->required()
        ->type_name("FILE");
    CLI::Option* table =
        starter
            ->add_option(
                "--table",
                fields.table,
                "Start from a table of offsets: CSV, or cells copied from a spreadsheet into a text file")
            ->type_name("TABLE");
    CLI::Option* sections =
        starter
            ->add_option(
                "--sections",
                fields.sections,
                "Start from half sections drawn in DXF or SVG, a layer or group for each station, named "
                "with its place")
            ->type_name("DRAWING")
            ->excludes(table);
    CLI::Option* surface =
        starter
            ->add_option("--surface",
                         fields.surface,
                         "Start from the hull's surfaces in STEP or IGES, a half or the whole of her")
            ->type_name("SURFACES")
            ->excludes(table)
            ->excludes(sections);
    starter
        ->add_option(
            "--take",
            fields.takes,
            "How the table, drawing or surface is to be read where it doesn't say or is read wrongly, as "
            "often as needed: "
            "\"spacing = 12 in\", \"row 5 = waterline 6 in\"")
        ->type_name("\"KEY = VALUE\"")
        ->allow_extra_args(false);

    try {
        // CLI11 takes the arguments from the back.
        app.parse(std::vector<std::string>(arguments.rbegin(), arguments.rend()));
    } catch (const CLI::ParseError& problem) {
        const auto given = app.get_subcommands();
        const std::string help = given.empty() ? app.help() : given.front()->help("sheerlay");
        if (dynamic_cast<const CLI::CallForVersion*>(&problem) != nullptr)
            return Answer{exitDone, std::string(problem.what()) + "\n", ""};
        if (problem.get_exit_code() == 0)
            return Answer{exitDone, help, ""};
        if (given.empty() && !windowProject.empty() && looksLikeNoProject(windowProject))
            return wrongUsage(noSuchThing(windowProject), help);
        return wrongUsage(problem.what(), help);
    }

    if (!fields.takes.empty() && table->count() + sections->count() + surface->count() == 0)
        return wrongUsage("--take says how a table, drawing or surface is to be read; --table, --sections or "
                          "--surface names it.",
                          starter->help("sheerlay"));

    Request request;
    const auto given = app.get_subcommands();
    if (given.empty()) {
        if (!windowProject.empty() && looksLikeNoProject(windowProject))
            return wrongUsage("There is no command and no project file called \"" + windowProject + "\".",
                              app.help());
        request.project = windowProject;
        return request;
    }
    if (!windowProject.empty())
        return wrongUsage("\"" + windowProject + "\" stands before the command; a command comes first.",
                          app.help());

    const CLI::App* command = given.front();
    request.command = command == check      ? Command::Check
                      : command == plan     ? Command::Plan
                      : command == sheets   ? Command::Sheets
                      : command == patterns ? Command::Patterns
                      : command == solids   ? Command::Export
                                            : Command::New;
    request.project = fields.project;
    request.out = fields.out;
    request.name = fields.name;
    request.table = fields.table;
    request.sections = fields.sections;
    request.surface = fields.surface;
    request.takes = fields.takes;
    request.taperTrade = fields.weighTapers;
    request.battens = fields.battens;
    request.stations = fields.stations;
    request.waterlines = fields.waterlines;
    request.buttocks = fields.buttocks;
    if (!fields.json.empty())
        request.json = fields.json;
    if (!fields.units.empty())
        request.units = unitNames.at(fields.units);
    if (!fields.page.empty())
        request.page = pageNames.at(fields.page);
    if (!fields.rows.empty())
        request.severalRows = rowNames.at(fields.rows);
    return request;
}

} // namespace sheerlay::app

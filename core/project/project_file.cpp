#include "core/project/project_file.hpp"

#include "core/project/read_afloat.hpp"
#include "core/project/read_covering.hpp"
#include "core/project/read_fitout.hpp"
#include "core/project/read_hull.hpp"
#include "core/project/read_journal.hpp"
#include "core/project/read_moulds.hpp"
#include "core/project/read_planking.hpp"
#include "core/project/read_prices.hpp"
#include "core/project/read_put_aside.hpp"
#include "core/project/read_stock.hpp"
#include "core/units/length_text.hpp"

#include <algorithm>
#include <array>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <regex>

namespace sheerlay::core {

namespace {

constexpr std::size_t largestFile =
    std::size_t{16} * 1024 * 1024; // bytes; a table of offsets has a few thousand

/// The parser's own words, on one line and not too long.
std::string oneLine(std::string_view text) {
    std::size_t end = std::min<std::size_t>(text.size(), 200);
    while (end > 0 && end < text.size() && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U)
        --end; // a sign of several bytes stays whole
    std::string tidy;
    for (const char c : text.substr(0, end))
        tidy += static_cast<unsigned char>(c) < 0x20U || c == 0x7F ? ' ' : c;
    if (!tidy.empty() && tidy.front() >= 'A' && tidy.front() <= 'Z')
        tidy.front() = static_cast<char>(tidy.front() - 'A' + 'a');
    return tidy;
}

/// The commonest slip: a builder's length without its quotes. What stands in quotes or in a comment is passed
/// over.
bool hasBareLength(std::string_view line) {
    static const std::regex bare(R"([=\[,{]\s*-?(\d+-\d+|\d+\s+\d+/|\d+/\d|\d+'|\d+\s*(mm|cm|in|ft)\b))");
    std::string outside;
    bool quote = false;
    for (const char c : line.substr(0, 400)) {
        if (c == '#' && !quote)
            break;
        if (c == '"')
            quote = !quote;
        else if (!quote)
            outside += c;
    }
    return std::regex_search(outside, bare);
}

FileMessage notToml(const toml::parse_error& error, const SourceText& source, const std::string& file) {
    const int line = static_cast<int>(error.source().begin.line);
    if (hasBareLength(source.line(line)))
        return {file,
                line,
                "text",
                "a length without quotes around it (" + oneLine(error.description()) + ")",
                "quotes around lengths with dashes, fractions or units, such as \"1-3-4+\""};
    return {file,
            line,
            "text",
            oneLine(error.description()),
            "a line by the rules of TOML; what follows is read once this is mended"};
}

void readHeading(TableView& file, Reading& reading, Project& project) {
    constexpr std::string_view form = "format = 1, the only one so far";
    if (const toml::node* format = file.find("format", Need::Required, form)) {
        const auto* number = format->as_integer();
        if (number == nullptr || number->get() != 1)
            reading.messages.error(
                lineOf(*format), "format", describe(*format, reading.source), std::string(form));
    }
    if (const auto name = file.text("name", Need::Optional, "a name in quotes"))
        project.name = *name;
    const auto units =
        file.choice<Units>("units", Need::Required, {{"mm", Units::Millimetres}, {"in", Units::Inches}});
    project.units = units.value_or(Units::Millimetres);
    reading.units = project.units;
    reading.unitsKnown = units.has_value();
}

/// What is said of the project itself, beside its heading.
void readPaper(TableView& file, Project& project) {
    auto view = file.table("project", Need::Optional, "a table [project]");
    if (!view)
        return;
    std::vector<TableView::Choice<Language>> codes;
    for (const LanguageName& name : allLanguages())
        codes.emplace_back(name.code, name.language);
    const auto language = view->choice<Language>(
        "language", Need::Optional, std::span<const TableView::Choice<Language>>(codes));
    project.language = language.value_or(Language::English);
    project.paper.size =
        view->choice<PageSize>("paper", Need::Optional, std::span<const TableView::Choice<PageSize>>(papers));
    project.paper.severalRows =
        view->choice<bool>("rows-a-page", Need::Optional, {{"one", false}, {"several", true}})
            .value_or(false);
    view->reportUnknown();
}

Expected<ReadProject, std::vector<FileMessage>>
readTables(const toml::table& root, const SourceText& source, const std::string& fileName) {
    Messages messages(fileName);
    Reading reading{source, messages};
    TableView file(root, {}, 1, reading);
    ReadProject read;
    read.project.name = std::filesystem::path(fileName).stem().string();
    readHeading(file, reading, read.project);
    readPaper(file, read.project);
    read.project.hull = readHull(file, reading);
    read.project.strips = readStrips(file, reading);
    read.project.planking = readPlanking(file, read.project.strips, read.project.hull.knuckled(), reading);
    read.project.moulds = readMoulds(file, reading);
    read.project.stock = readStock(file, read.project.strips, reading);
    read.project.fitout = readFitout(file, reading);
    read.project.covering = readCovering(file, reading);
    read.project.afloat = readAfloat(file, reading);
    read.project.prices = readPrices(file, reading);
    read.project.journal = readJournal(file, reading);
    read.project.putAside = readPutAside(file, reading);
    (void)file.find("load", Need::Optional); // read by the part it belongs to
    file.reportUnknown();
    if (messages.anyError())
        return unexpected(messages.inOrder());
    read.warnings = messages.inOrder();
    return read;
}

} // namespace

Expected<ReadProject, std::vector<FileMessage>> parseProject(std::string_view text,
                                                             const std::string& fileName) {
    if (const auto zero = text.find('\0'); zero != std::string_view::npos) {
        const auto line =
            1 + std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(zero), '\n');
        return unexpected(std::vector<FileMessage>{{fileName,
                                                    static_cast<int>(line),
                                                    "text",
                                                    "a byte that no text has",
                                                    "a project file, which is plain text in UTF-8"}});
    }
    const SourceText source(text);
    try {
        return readTables(toml::parse(text), source, fileName);
    } catch (const toml::parse_error& error) {
        return unexpected(std::vector<FileMessage>{notToml(error, source, fileName)});
    }
}

Expected<std::string, std::vector<FileMessage>> readProjectText(const std::string& path) {
    const auto refuse = [&](std::string found, std::string would) {
        return unexpected(std::vector<FileMessage>{{path, 0, "file", std::move(found), std::move(would)}});
    };
    std::error_code problem;
    if (!std::filesystem::exists(path, problem))
        return refuse("there is no such file", "the path of a .sheerlay file");
    if (std::filesystem::is_directory(path, problem))
        return refuse("this is a folder", "the path of a .sheerlay file in it");
    std::ifstream stream(path, std::ios::binary);
    if (!stream)
        return refuse("the file can't be opened", "a file that you may read");
    std::string text;
    std::array<char, 65536> block{};
    while (stream.read(block.data(), block.size()) || stream.gcount() > 0) {
        text.append(block.data(), static_cast<std::size_t>(stream.gcount()));
        if (text.size() > largestFile)
            return refuse("more than 16 MB", "a project file, which is a few kilobytes of text");
    }
    if (stream.bad())
        return refuse("the file can't be read to its end", "a file on a disk that answers");
    return text;
}

Expected<ReadProject, std::vector<FileMessage>> readProject(const std::string& path) {
    const auto text = readProjectText(path);
    if (!text)
        return unexpected(text.error());
    return parseProject(*text, path);
}

} // namespace sheerlay::core

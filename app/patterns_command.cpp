#include "app/patterns_command.hpp"

#include "app/file_output.hpp"
#include "app/offscreen.hpp"
#include "app/staging.hpp"
#include "core/patterns/mould_pattern.hpp"
#include "core/patterns/nest_sheets.hpp"
#include "core/patterns/pattern_files.hpp"
#include "core/patterns/pattern_pages.hpp"
#include "core/patterns/strip_pattern.hpp"
#include "ui/paper/pdf_writer.hpp"

#include <optional>
#include <utility>

namespace sheerlay::app {

namespace {

/// Patterns as DXF and SVG, added to what is staged. @return a sentence where one can't be written
std::optional<std::string> writeFiles(const std::vector<core::Pattern>& patterns,
                                      const Staging& staging,
                                      std::vector<std::string>& staged) {
    for (const core::Pattern& pattern : patterns)
        for (const auto& [ending, text] :
             {std::pair{"-mm.dxf", core::toDxf(pattern)}, std::pair{"-mm.svg", core::toSvg(pattern)}}) {
            staged.push_back(staging.folder() + "/" + pattern.file + ending);
            if (const auto problem = writeFile(staged.back(), text))
                return staging.inBuildersWords(*problem);
        }
    return std::nullopt;
}

} // namespace

Expected<std::vector<std::string>, std::string> writePatterns(const Request& request,
                                                              const core::Project& project,
                                                              const core::LoftedHull& hull,
                                                              const core::Plan& plan) {
    const auto set = core::mouldsOf(project, hull);
    if (!set)
        return unexpected(request.project + ": " + set.error() + ".");
    const Staging staging(request.out);
    if (staging.problem())
        return unexpected(staging.problemText());
    const Offscreen painting;

    const core::PageSize size = request.page.value_or(
        project.units == core::Units::Inches ? core::PageSize::Letter : core::PageSize::A4);
    const core::Page page = core::pageOf(size);
    struct Group {
        std::string name;
        std::vector<core::Pattern> patterns;
    };
    std::vector<Group> groups{{"moulds", core::mouldPatterns(project, *set, project.units)},
                              {"strips", core::stripPatterns(project, hull, plan, project.units)}};
    std::vector<std::string> staged;
    for (const Group& group : groups) {
        std::vector<core::Sheet> tiled, roll;
        for (const core::Pattern& pattern : group.patterns) {
            for (core::PatternPage& tile : core::pagesOf(pattern, page, project.name))
                tiled.push_back(std::move(tile.sheet));
            for (core::PatternPage& piece : core::pagesOf(pattern, core::rollPageFor(pattern), project.name))
                roll.push_back(std::move(piece.sheet));
        }
        for (const auto& [ending, sheets] : {std::pair{"-tiled.pdf", &tiled}, {"-roll.pdf", &roll}}) {
            if (sheets->empty())
                continue;
            staged.push_back(staging.folder() + "/" + group.name + ending);
            if (const auto written = ui::writePdf(*sheets, staged.back()); !written)
                return unexpected(staging.inBuildersWords(written.error().text));
        }
        if (const auto problem = writeFiles(group.patterns, staging, staged))
            return unexpected(*problem);
    }
    const core::NestedBoards boards = core::nestMoulds(*set);
    staged.push_back(staging.folder() + "/moulds-on-sheets.pdf");
    const auto pages = core::nestedPages(project, boards, project.units, size);
    if (const auto written = ui::writePdf(pages, staged.back()); !written)
        return unexpected(staging.inBuildersWords(written.error().text));
    if (const auto problem = writeFiles(core::nestedPatterns(boards), staging, staged))
        return unexpected(*problem);
    return staging.moveOut(staged);
}

} // namespace sheerlay::app

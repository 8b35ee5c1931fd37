#include "app/patterns_command.hpp"

#include "app/file_output.hpp"
#include "app/offscreen.hpp"
#include "app/staging.hpp"
#include "core/patterns/mould_pattern.hpp"
#include "core/patterns/pattern_files.hpp"
#include "core/patterns/pattern_pages.hpp"
#include "core/patterns/strip_pattern.hpp"
#include "ui/paper/pdf_writer.hpp"

#include <utility>

namespace sheerlay::app {

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

    const core::Page page = core::pageOf(request.page.value_or(
        project.units == core::Units::Inches ? core::PageSize::Letter : core::PageSize::A4));
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
        for (const core::Pattern& pattern : group.patterns)
            for (const auto& [ending, text] :
                 {std::pair{"-mm.dxf", core::toDxf(pattern)}, std::pair{"-mm.svg", core::toSvg(pattern)}}) {
                staged.push_back(staging.folder() + "/" + pattern.file + ending);
                if (const auto problem = writeFile(staged.back(), text))
                    return unexpected(staging.inBuildersWords(*problem));
            }
    }
    return staging.moveOut(staged);
}

} // namespace sheerlay::app

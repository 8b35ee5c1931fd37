#include "app/patterns_command.hpp"

#include "app/offscreen.hpp"
#include "core/afloat/afloat.hpp"
#include "core/patterns/pattern_set.hpp"
#include "ui/paper/pattern_files.hpp"

namespace sheerlay::app {

ui::Outcome writePatterns(const Request& request,
                          const core::Project& project,
                          const core::LoftedHull& hull,
                          const core::Plan& plan) {
    const core::AfterPlanking after = core::afterPlanking(project, hull, plan);
    const auto set = core::patternSet(project, hull, plan, project.units, after.fitout);
    if (!set)
        return unexpected(request.project + ": " + set.error() + ".");
    const ui::Staging staging(request.out);
    if (staging.problem())
        return unexpected(staging.problemText());
    const Offscreen painting;
    auto staged =
        ui::writePatternFiles(project, *set, project.units, paperOf(request, project), staging.folder());
    if (!staged)
        return unexpected(staging.inBuildersWords(staged.error().text));
    return staging.moveOut(std::move(staged).value());
}

} // namespace sheerlay::app

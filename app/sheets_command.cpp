#include "app/sheets_command.hpp"

#include "app/offscreen.hpp"
#include "ui/paper/sheet_set.hpp"

namespace sheerlay::app {

ui::Outcome writeSheets(const Request& request,
                        core::Project project,
                        const core::LoftedHull& hull,
                        const core::ShopPlan& shop) {
    const ui::Staging staging(request.out);
    if (staging.problem())
        return unexpected(staging.problemText());
    project.paper.severalRows = request.severalRows.value_or(project.paper.severalRows);
    const Offscreen painting;
    auto staged = ui::writeSheetSet(
        project, hull, shop, project.units, paperOf(request, project), staging.folder(), request.out);
    if (!staged)
        return unexpected(staging.inBuildersWords(staged.error().text));
    return staging.moveOut(std::move(staged).value());
}

} // namespace sheerlay::app

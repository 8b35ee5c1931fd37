#include "app/sheets_command.hpp"

#include "app/offscreen.hpp"
#include "app/staging.hpp"
#include "ui/paper/sheet_set.hpp"

namespace sheerlay::app {

Expected<std::vector<std::string>, std::string> writeSheets(const Request& request,
                                                            const core::Project& project,
                                                            const core::LoftedHull& hull,
                                                            const core::Plan& plan) {
    const Staging staging(request.out);
    if (staging.problem())
        return unexpected(staging.problemText());

    const Offscreen painting;
    const core::PageSize page = request.page.value_or(
        project.units == core::Units::Inches ? core::PageSize::Letter : core::PageSize::A4);
    const auto staged =
        ui::writeSheetSet(project, hull, plan, project.units, page, staging.folder(), request.out);
    if (!staged)
        return unexpected(staging.inBuildersWords(staged.error().text));
    return staging.moveOut(*staged);
}

} // namespace sheerlay::app

#include "app/sheets_command.hpp"

#include "ui/paper/sheet_set.hpp"

#include <QGuiApplication>

#include <array>
#include <utility>

namespace sheerlay::app {

Expected<std::vector<std::string>, std::string> writeSheets(const Request& request,
                                                            const core::Project& project,
                                                            const core::LoftedHull& hull,
                                                            const core::Plan& plan) {
    // The only platform that paints type without a display.
    qputenv("QT_QPA_PLATFORM", "offscreen");
    std::array<char, 9> name{"sheerlay"};
    std::array<char*, 2> arguments{name.data(), nullptr};
    int count = 1;
    const QGuiApplication application(count, arguments.data());

    const core::PageSize page = request.page.value_or(
        project.units == core::Units::Inches ? core::PageSize::Letter : core::PageSize::A4);
    return ui::writeSheetSet(project, hull, plan, project.units, page, request.out);
}

} // namespace sheerlay::app

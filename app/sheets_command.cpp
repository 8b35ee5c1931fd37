#include "app/sheets_command.hpp"

#include "app/staging.hpp"
#include "ui/paper/sheet_set.hpp"

#include <QGuiApplication>

#include <array>
#include <iostream>

namespace sheerlay::app {

namespace {

/// Qt remarks on the session (no runtime folder, no fonts folder) mean nothing to a command that only paints.
void keepQtQuiet(QtMsgType type, const QMessageLogContext& /*context*/, const QString& text) {
    if (type == QtCriticalMsg || type == QtFatalMsg)
        std::cerr << text.toStdString() << '\n';
}

} // namespace

Expected<std::vector<std::string>, std::string> writeSheets(const Request& request,
                                                            const core::Project& project,
                                                            const core::LoftedHull& hull,
                                                            const core::Plan& plan) {
    const Staging staging(request.out);
    if (staging.problem())
        return unexpected(staging.problemText());

    qputenv("QT_QPA_PLATFORM", "offscreen"); // the only platform that paints type without a display
    qputenv("LC_ALL", "C.UTF-8");            // file names are UTF-8 whatever the session speaks
    std::array<char, 9> name{"sheerlay"};
    std::array<char*, 2> arguments{name.data(), nullptr};
    int count = 1;
    qInstallMessageHandler(keepQtQuiet);
    const QGuiApplication application(count, arguments.data());

    const core::PageSize page = request.page.value_or(
        project.units == core::Units::Inches ? core::PageSize::Letter : core::PageSize::A4);
    const auto staged = ui::writeSheetSet(project, hull, plan, project.units, page, staging.folder());
    if (!staged)
        return unexpected(staging.inBuildersWords(staged.error().text));
    return staging.moveOut(*staged);
}

} // namespace sheerlay::app

#include "app/window_command.hpp"

#include "ui/window/run_window.hpp"

#include <cstdlib>
#include <fstream>
#include <initializer_list>
#include <optional>
#include <string>

namespace sheerlay::app {

namespace {

/// The window can appear: there is an X display (under Wayland XWayland gives one), or Qt was told where to
/// draw.
bool hasDisplay() {
    for (const char* name : {"DISPLAY", "QT_QPA_PLATFORM"}) {
        const char* value = std::getenv(name); // NOLINT(concurrency-mt-unsafe): before any thread
        if (value != nullptr && *value != '\0')
            return true;
    }
    return false;
}

} // namespace

int openWindow(const Request& request, const Console& console, int argc, char** argv) {
    // What is wrong inside a file the window shows in place; a file that isn't there is a slip of the pen.
    if (!request.project.empty() && !std::ifstream(request.project)) {
        console.err << request.project
                    << ": this file can't be opened; the path of a .sheerlay file would do.\n";
        return exitUnusable;
    }
    if (!hasDisplay()) {
        console.err << "There is no X display here for the window. The commands check, plan and sheets work "
                       "without one; "
                       "sheerlay --help names them.\n";
        return exitUnusable;
    }
    return ui::runWindow(argc, argv, request.project.empty() ? std::nullopt : std::optional(request.project));
}

} // namespace sheerlay::app

#include "app/window_command.hpp"

#include "ui/window/run_window.hpp"

#include <cstdlib>
#include <dlfcn.h>
#include <fstream>
#include <optional>
#include <string>

namespace sheerlay::app {

namespace {

bool isSet(const char* name) {
    const char* value = std::getenv(name); // NOLINT(concurrency-mt-unsafe): before any thread
    return value != nullptr && *value != '\0';
}

/// The X display that DISPLAY names lets us in. After su, sudo or ssh it often names one that doesn't, and Qt
/// would abort. Asked of the library that Qt's own X platform brings along; true where that isn't there.
bool displayAnswers() {
    void* const library = dlopen("libxcb.so.1", RTLD_NOW | RTLD_LOCAL);
    if (!library)
        return true;
    using Connect = void* (*)(const char*, int*);
    using HasError = int (*)(void*);
    const auto connect = reinterpret_cast<Connect>(dlsym(library, "xcb_connect"));
    const auto hasError = reinterpret_cast<HasError>(dlsym(library, "xcb_connection_has_error"));
    if (connect == nullptr || hasError == nullptr)
        return true;
    // Kept until the program ends: a server without other clients starts over when the last one leaves, and
    // Qt, coming next, would find it shut.
    static void* const connection = connect(nullptr, nullptr);
    return hasError(connection) == 0;
}

/// The window can appear: there is an X display (under Wayland XWayland gives one), or Qt was told where to
/// draw.
bool hasDisplay() {
    return isSet("QT_QPA_PLATFORM") || (isSet("DISPLAY") && displayAnswers());
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

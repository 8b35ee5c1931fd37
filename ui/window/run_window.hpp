#pragma once

#include <optional>
#include <string>

namespace sheerlay::ui {

/// Runs the window until it is closed. Needs an X display (XWayland will do); with QT_QPA_PLATFORM set to
/// something else the boat's picture gives way to a sentence.
///
/// For checks and for the README's pictures: with SHEERLAY_SHOT=picture.png in the environment the window
/// loads the project, shows SHEERLAY_STEP pieces laid (a number, or "last"; all when left out), saves itself
/// as a picture, prints how long that took on standard error and closes. SHEERLAY_BENCH=lines or sheets takes
/// the picture there.
/// @return  exit code of the process: 0, or 1 when the picture asked for could not be made
[[nodiscard]] int runWindow(int argc, char** argv, std::optional<std::string> projectPath);

} // namespace sheerlay::ui

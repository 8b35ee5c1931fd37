#pragma once

#include <string>

namespace sheerlay::ui {

/// What went wrong, of the exception that is being handled: of std::exception and of OpenCASCADE's own kind,
/// which does not derive from it. Call inside a catch block only.
[[nodiscard]] std::string currentExceptionText();

} // namespace sheerlay::ui

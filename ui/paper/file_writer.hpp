#pragma once

#include "geometry/expected.hpp"

#include <string>
#include <variant>

namespace sheerlay::ui {

/// Why a paper or a file could not be written, in words for the builder.
struct PaperError {
    std::string text;
};

using Written = Expected<std::monostate, PaperError>;

/// That this file could not be written, and what would do.
[[nodiscard]] PaperError cannotWrite(const std::string& path, const std::string& why);

/// Writes a file whole or not at all. A folder or device that bears the name stays what it is.
/// @param path  UTF-8; its folder must exist
[[nodiscard]] Written writeBytes(const std::string& bytes, const std::string& path);

/// Makes a folder and those it lies in, where they are not there.
[[nodiscard]] Written makeFolder(const std::string& path);

} // namespace sheerlay::ui

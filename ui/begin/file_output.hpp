#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace sheerlay::ui {

/// Writes a whole file or nothing: into a neighbour first, which then takes the file's place. Permissions of
/// a file that is replaced are kept; a symbolic link is followed; a device or pipe is written straight.
/// @return  nothing when done, else one sentence about what stood in the way
[[nodiscard]] std::optional<std::string> writeFile(const std::string& path, std::string_view text);

/// Same for a file that must not be there yet.
[[nodiscard]] std::optional<std::string> writeNewFile(const std::string& path, std::string_view text);

} // namespace sheerlay::ui

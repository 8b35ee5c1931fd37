#pragma once

#include "core/sheets/drawing.hpp"
#include "ui/paper/file_writer.hpp"

#include <string>
#include <vector>

namespace sheerlay::ui {

/// Writes sheets as one PDF, each page of its own size, true to scale (0.001 mm) when printed at full size.
/// Text stays text and can be searched. The same sheets give the same bytes: the date of creation is set to a
/// fixed one. The file appears whole or not at all.
/// @param sheets  at least one
/// @param path    file name, UTF-8; its folder must exist
[[nodiscard]] Written writePdf(const std::vector<core::Sheet>& sheets, const std::string& path);

/// A PDF's bytes with its date of creation replaced by 2000-01-01 00:00 UTC, the offsets of its objects kept
/// right. Bytes that hold no such date, or no plain table of objects, come back as they are.
[[nodiscard]] std::string withFixedDate(std::string pdf);

} // namespace sheerlay::ui

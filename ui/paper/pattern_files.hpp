#pragma once

#include "core/patterns/pattern_set.hpp"
#include "core/sheets/page.hpp"
#include "ui/paper/written_set.hpp"

#include <string>
#include <vector>

namespace sheerlay::ui {

/// Writes patterns at true scale into a folder, which is made when it isn't there: moulds-tiled.pdf,
/// moulds-roll.pdf (stem forms and transoms among them), strips-tiled.pdf and strips-roll.pdf where a strip
/// is pointed, parts-tiled.pdf and parts-roll.pdf where there are parts to fit, moulds-on-sheets.pdf; and
/// every pattern as DXF and SVG. The same set gives the same bytes.
/// @param page    of the tiles
/// @param folder  UTF-8
/// @return        the files written, or why there are none or not all
[[nodiscard]] WrittenFiles writePatternFiles(const core::Project& project,
                                             const core::PatternSet& set,
                                             core::Units units,
                                             core::PageSize page,
                                             const std::string& folder);

/// The parts' patterns alone, written in the same ways; no file where there are none.
/// @param boat    name of the boat, on every page
/// @param folder  UTF-8
[[nodiscard]] Expected<std::vector<std::string>, PaperError>
writePartPatterns(const std::vector<core::Pattern>& parts,
                  core::PageSize page,
                  const std::string& boat,
                  const std::string& folder);

} // namespace sheerlay::ui

#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"
#include "core/project/project.hpp"
#include "core/sheets/page.hpp"
#include "ui/paper/pdf_writer.hpp"

#include <string>
#include <vector>

namespace sheerlay::ui {

/// Writes the shop's set into a folder, which is made when it isn't there: cut-sheets.pdf (one sheet per
/// strip, with a cover and the laying order), wall-map.pdf (all strips unrolled on one large sheet),
/// strongback.pdf (how the moulds are set up), lines.pdf (the lines drawing, and how the lines bend) and,
/// where the project describes boards, stock.pdf (what to buy, milling, scarfs, labels). Where it asks for
/// them, covering.pdf (cloth and resin) and afloat.pdf (how she floats, what she weighs).
/// Likewise fitout.pdf (gunwales, bulkheads, decks, seats, yoke).
/// Beside them lies a record of what stood on every cut sheet: sheets that differ from it carry the number of
/// the revision, and are written once more by themselves, as changed-sheets.pdf.
/// @param outDir     UTF-8
/// @param recordDir  where the record of the set before lies; left out: outDir
/// @return        the files written, or why there are none or not all
[[nodiscard]] Expected<std::vector<std::string>, PaperError> writeSheetSet(const core::Project& project,
                                                                           const core::LoftedHull& hull,
                                                                           const core::Plan& plan,
                                                                           core::Units units,
                                                                           core::PageSize page,
                                                                           const std::string& outDir,
                                                                           const std::string& recordDir = {});

} // namespace sheerlay::ui

#pragma once

#include "core/hull/hull.hpp"
#include "core/project/project.hpp"
#include "core/sheets/drawing.hpp"
#include "core/sheets/page.hpp"
#include "core/sheets/shop_plan.hpp"
#include "ui/paper/written_set.hpp"

#include <string>
#include <vector>

namespace sheerlay::ui {

/// One PDF of a set.
struct Paper {
    std::string file; ///< its name
    std::vector<core::Sheet> sheets;
};

/// fitout.pdf (gunwales, bulkheads, decks, seats, yoke), covering.pdf (cloth and resin) and afloat.pdf (how
/// she floats, what she weighs); without sheets where the project does not ask for them.
[[nodiscard]] std::vector<Paper> fittingOutPapers(const core::Project& project,
                                                  const core::AfterPlanking& after,
                                                  core::Units units,
                                                  core::PageSize page);

/// Writes papers into a folder, which is made when it isn't there; those without sheets are left out.
/// @return  the files written
[[nodiscard]] Expected<std::vector<std::string>, PaperError> writePapers(const std::vector<Paper>& papers,
                                                                         const std::string& folder);

/// Writes the shop's set into a folder, which is made when it isn't there: cut-sheets.pdf (one sheet per
/// strip, with a cover and the laying order), wall-map.pdf (all strips unrolled on one large sheet),
/// wall-map-tiles.pdf (the same on pages of common paper, to be joined),
/// strongback.pdf (how the moulds are set up), lines.pdf (the lines drawing, and how the lines bend), where
/// the project describes boards stock.pdf (what to buy, milling, scarfs, labels), materials.pdf (what to buy
/// for the whole boat) and the papers of fitting out.
/// Beside them lies a record of what stood on every cut sheet: sheets that differ from it carry the number of
/// the revision, and are written once more by themselves, as changed-sheets.pdf. Where nothing changed, or
/// the record is lost, one that an earlier set left there is out of date and goes.
/// @param outDir     UTF-8
/// @param recordDir  where the record of the set before lies; left out: outDir
/// @return        the files written, with what could not be drawn; or why there are none or not all
[[nodiscard]] WrittenFiles writeSheetSet(const core::Project& project,
                                         const core::LoftedHull& hull,
                                         const core::ShopPlan& shop,
                                         core::Units units,
                                         core::PageSize page,
                                         const std::string& outDir,
                                         const std::string& recordDir = {});

} // namespace sheerlay::ui

#include "ui/paper/sheet_set.hpp"

#include "core/afloat/after_asides.hpp"
#include "core/lines_drawing/curvature_sheet.hpp"
#include "core/lines_drawing/lines_sheet.hpp"
#include "core/materials/materials_sheet.hpp"
#include "core/patterns/pattern_set.hpp"
#include "core/patterns/strongback_sheet.hpp"
#include "core/sheets/boat_sheets.hpp"
#include "core/sheets/cut_sheets.hpp"
#include "core/sheets/fitout_sheets.hpp"
#include "core/sheets/revision.hpp"
#include "core/sheets/sheet_tiles.hpp"
#include "core/sheets/stock_sheets.hpp"
#include "core/sheets/wall_map.hpp"
#include "core/words/language.hpp"
#include "ui/paper/pdf_writer.hpp"

#include <QFile>
#include <QString>

#include <algorithm>
#include <optional>
#include <utility>

namespace sheerlay::ui {

namespace {

constexpr const char* recordName = "cut-sheets-record.txt";
constexpr const char* changedName = "changed-sheets.pdf";

std::vector<core::Sheet> tiled(const core::Sheet& large, core::Language language, core::PageSize page) {
    const core::Speaking speaking(language);
    std::vector<core::Sheet> pages;
    for (core::SheetTile& tile : core::tilesOf(large, page))
        pages.push_back(std::move(tile.sheet));
    return pages;
}

std::string recordIn(const std::string& folder) {
    QFile file(QString::fromStdString(folder + "/" + recordName));
    return file.open(QIODevice::ReadOnly) ? file.readAll().toStdString() : std::string();
}

bool isThere(const std::string& folder, const std::vector<const char*>& names) {
    return std::ranges::any_of(
        names, [&](const char* name) { return QFile::exists(QString::fromStdString(folder + "/" + name)); });
}

} // namespace

std::vector<Paper> fittingOutPapers(const core::Project& project,
                                    const core::AfterPlanking& after,
                                    core::Units units,
                                    core::PageSize page) {
    const core::AfterPlanking marked = core::withAsides(after, project.putAside);
    return {{"fitout.pdf",
             marked.fitout ? core::fitoutSheets(project, *marked.fitout, units, page)
                           : std::vector<core::Sheet>()},
            {"covering.pdf", core::coveringSheets(project, marked, units, page)},
            {"afloat.pdf", core::afloatSheets(project, marked, units, page)}};
}

Expected<std::vector<std::string>, PaperError> writePapers(const std::vector<Paper>& papers,
                                                           const std::string& folder) {
    if (const Written made = makeFolder(folder); !made)
        return unexpected(made.error());
    std::vector<std::string> written;
    for (const Paper& paper : papers) {
        if (paper.sheets.empty())
            continue;
        written.push_back(folder + "/" + paper.file);
        if (const Written done = writePdf(paper.sheets, written.back()); !done)
            return unexpected(done.error());
    }
    return written;
}

WrittenFiles writeSheetSet(const core::Project& project,
                           const core::LoftedHull& hull,
                           const core::ShopPlan& shop,
                           core::Units units,
                           core::PageSize page,
                           const std::string& outDir,
                           const std::string& recordDir) {
    if (const Written made = makeFolder(outDir); !made) // before anything is drawn
        return unexpected(made.error());
    const core::StockPlan* stock = shop.stock ? &*shop.stock : nullptr;
    std::vector<core::Sheet> cut = core::cutSheets(project, hull, shop.plan, units, page, stock);
    const std::string& beforeDir = recordDir.empty() ? outDir : recordDir;
    const core::SheetRecord before = core::recordFrom(recordIn(beforeDir));
    const core::SheetRecord record =
        core::recordOf(cut, before, core::doneSheets(cut, project.journal, shop.plan));
    {
        const core::Speaking speaking(project.language);
        cut = core::withRevisions(std::move(cut), record, page);
    }
    std::vector<core::Sheet> changed;
    for (const std::size_t i : core::changedIn(record))
        changed.push_back(cut[i]);
    std::vector<core::Finding> findings = shop.findings;
    if (before.revision == 0 && isThere(beforeDir, {recordName, changedName}))
        findings.push_back(core::recordLost(recordName));
    if (std::optional<core::Finding> alone = core::rowsAlone(project, shop.plan, cut, page))
        findings.push_back(std::move(*alone));
    std::vector<std::string> outOfDate;
    if (changed.empty())
        outOfDate.emplace_back(changedName);
    const core::Sheet map = core::wallMap(project, hull, shop.plan, units, stock);
    std::vector<Paper> papers{{"cut-sheets.pdf", std::move(cut)},
                              {"wall-map.pdf", {map}},
                              {"wall-map-tiles.pdf", tiled(map, project.language, page)}};
    if (const auto moulds = core::mouldsOf(project, hull))
        papers.push_back({"strongback.pdf", core::strongbackSheets(project, *moulds, units, page)});
    else
        findings.push_back(core::withoutMoulds(moulds.error()));
    papers.push_back(
        {"lines.pdf", {core::linesSheet(project, hull, units), core::curvatureSheet(project, hull, units)}});
    if (stock != nullptr)
        papers.push_back({"stock.pdf", core::stockSheets(project, hull, shop.plan, *stock, units, page)});
    papers.push_back(
        {"materials.pdf",
         {core::materialsSheet(project, core::materialsOf(project, hull, shop, units), units, page)}});
    for (Paper& paper : fittingOutPapers(project, shop.after, units, page))
        papers.push_back(std::move(paper));
    papers.push_back({changedName, std::move(changed)});
    auto written = writePapers(papers, outDir);
    if (!written)
        return unexpected(written.error());
    written->push_back(outDir + "/" + recordName);
    if (const Written done = writeBytes(toText(record), written->back()); !done)
        return unexpected(done.error());
    for (const std::string& name : outOfDate)
        QFile::remove(QString::fromStdString(outDir + "/" + name));
    return WrittenSet{std::move(*written),
                      core::withAsides(core::heaviestFirst(std::move(findings)), project.putAside),
                      std::move(outOfDate)};
}

} // namespace sheerlay::ui

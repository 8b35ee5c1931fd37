#include "ui/paper/sheet_set.hpp"

#include "core/lines_drawing/curvature_sheet.hpp"
#include "core/lines_drawing/lines_sheet.hpp"
#include "core/patterns/strongback_sheet.hpp"
#include "core/sheets/boat_sheets.hpp"
#include "core/sheets/cut_sheets.hpp"
#include "core/sheets/fitout_sheets.hpp"
#include "core/sheets/stock_sheets.hpp"
#include "core/sheets/wall_map.hpp"

#include <QDir>
#include <QString>

namespace sheerlay::ui {

Expected<std::vector<std::string>, PaperError> writeSheetSet(const core::Project& project,
                                                             const core::LoftedHull& hull,
                                                             const core::Plan& plan,
                                                             core::Units units,
                                                             core::PageSize page,
                                                             const std::string& outDir) {
    const QDir folder(QString::fromStdString(outDir));
    if (!folder.mkpath(QStringLiteral(".")))
        return unexpected(PaperError{"The folder " + outDir +
                                     " could not be made. Name a folder in a place you may write to."});
    struct Paper {
        const char* name;
        std::vector<core::Sheet> sheets;
    };
    const std::optional<core::StockPlan> stock = core::planStock(project, hull, plan);
    const core::StockPlan* scarfs = stock ? &*stock : nullptr;
    std::vector<Paper> papers{{"cut-sheets.pdf", core::cutSheets(project, hull, plan, units, page, scarfs)},
                              {"wall-map.pdf", {core::wallMap(project, hull, plan, units, scarfs)}}};
    if (const auto moulds = core::mouldsOf(project, hull))
        papers.push_back({"strongback.pdf", core::strongbackSheets(project, *moulds, units, page)});
    papers.push_back(
        {"lines.pdf", {core::linesSheet(project, hull, units), core::curvatureSheet(project, hull, units)}});
    if (stock)
        papers.push_back({"stock.pdf", core::stockSheets(project, hull, plan, *stock, units, page)});
    const core::AfterPlanking after = core::afterPlanking(project, hull, plan);
    papers.push_back({"covering.pdf", core::coveringSheets(project, after, units, page)});
    papers.push_back({"afloat.pdf", core::afloatSheets(project, after, units, page)});
    if (const auto fitout = core::planFitout(project, hull, plan); fitout && *fitout)
        papers.push_back({"fitout.pdf", core::fitoutSheets(project, **fitout, units, page)});
    std::erase_if(papers, [](const Paper& paper) { return paper.sheets.empty(); });
    std::vector<std::string> written;
    for (const Paper& paper : papers) {
        const std::string path = folder.filePath(QString::fromUtf8(paper.name)).toStdString();
        const Written result = writePdf(paper.sheets, path);
        if (!result)
            return unexpected(result.error());
        written.push_back(path);
    }
    return written;
}

} // namespace sheerlay::ui

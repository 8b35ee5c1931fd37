#include "ui/paper/sheet_set.hpp"

#include "core/lines_drawing/curvature_sheet.hpp"
#include "core/lines_drawing/lines_sheet.hpp"
#include "core/patterns/strongback_sheet.hpp"
#include "core/sheets/boat_sheets.hpp"
#include "core/sheets/cut_sheets.hpp"
#include "core/sheets/fitout_sheets.hpp"
#include "core/sheets/revision.hpp"
#include "core/sheets/stock_sheets.hpp"
#include "core/sheets/wall_map.hpp"

#include <QDir>
#include <QFile>
#include <QSaveFile>
#include <QString>

#include <utility>

namespace sheerlay::ui {

namespace {

QString recordName() {
    return QStringLiteral("cut-sheets-record.txt");
}

std::string recordIn(const QDir& folder) {
    QFile file(folder.filePath(recordName()));
    return file.open(QIODevice::ReadOnly) ? file.readAll().toStdString() : std::string();
}

Written writeRecord(const QString& path, const core::SheetRecord& record) {
    QSaveFile file(path);
    const QByteArray bytes = QByteArray::fromStdString(toText(record));
    if (file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size() && file.commit())
        return std::monostate();
    return unexpected(PaperError{path.toStdString() +
                                 " could not be written. Name a folder in a place you may "
                                 "write to."});
}

} // namespace

Expected<std::vector<std::string>, PaperError> writeSheetSet(const core::Project& project,
                                                             const core::LoftedHull& hull,
                                                             const core::Plan& plan,
                                                             core::Units units,
                                                             core::PageSize page,
                                                             const std::string& outDir,
                                                             const std::string& recordDir) {
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
    std::vector<core::Sheet> cut = core::cutSheets(project, hull, plan, units, page, scarfs);
    const QDir before(recordDir.empty() ? folder.path() : QString::fromStdString(recordDir));
    const core::SheetRecord record = core::recordOf(cut, core::recordFrom(recordIn(before)));
    cut = core::withRevisions(std::move(cut), record, page);
    std::vector<core::Sheet> changed;
    for (const std::size_t i : core::changedIn(record))
        changed.push_back(cut[i]);
    std::vector<Paper> papers{{"cut-sheets.pdf", std::move(cut)},
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
    if (after.fitout)
        papers.push_back({"fitout.pdf", core::fitoutSheets(project, *after.fitout, units, page)});
    papers.push_back({"changed-sheets.pdf", std::move(changed)});
    std::erase_if(papers, [](const Paper& paper) { return paper.sheets.empty(); });
    std::vector<std::string> written;
    for (const Paper& paper : papers) {
        const std::string path = folder.filePath(QString::fromUtf8(paper.name)).toStdString();
        const Written result = writePdf(paper.sheets, path);
        if (!result)
            return unexpected(result.error());
        written.push_back(path);
    }
    const QString recordPath = folder.filePath(recordName());
    if (const Written result = writeRecord(recordPath, record); !result)
        return unexpected(result.error());
    written.push_back(recordPath.toStdString());
    return written;
}

} // namespace sheerlay::ui

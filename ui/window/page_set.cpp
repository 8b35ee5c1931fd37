#include "ui/window/page_set.hpp"

#include "core/lines_drawing/curvature_sheet.hpp"
#include "core/lines_drawing/lines_sheet.hpp"
#include "core/moulds/mould_set.hpp"
#include "core/patterns/mould_pattern.hpp"
#include "core/patterns/pattern_pages.hpp"
#include "core/patterns/strongback_sheet.hpp"
#include "core/sheets/boat_sheets.hpp"
#include "core/sheets/cut_sheets.hpp"
#include "core/sheets/fitout_sheets.hpp"
#include "core/sheets/stock_sheets.hpp"
#include "core/sheets/wall_map.hpp"
#include "ui/paper/sheet_set.hpp"

#include <QDir>

#include <algorithm>
#include <iterator>
#include <optional>
#include <utility>

namespace sheerlay::ui {
namespace {

using Pages = PageSet::Pages;

void append(Pages& pages, Pages more) {
    std::ranges::move(more, std::back_inserter(pages));
}

Pages wallPagesOf(const Boat& boat, core::Units units, core::PageSize size) {
    const std::optional<core::StockPlan> stock = core::planStock(boat.project, boat.hull, boat.plan);
    const core::StockPlan* scarfs = stock ? &*stock : nullptr;
    Pages pages = core::cutSheets(boat.project, boat.hull, boat.plan, units, size, scarfs);
    if (stock)
        append(pages, core::stockSheets(boat.project, boat.hull, boat.plan, *stock, units, size));
    pages.push_back(core::linesSheet(boat.project, boat.hull, units));
    pages.push_back(core::curvatureSheet(boat.project, boat.hull, units));
    pages.push_back(core::wallMap(boat.project, boat.hull, boat.plan, units, scarfs));
    return pages;
}

/// @param tiled  as a printer takes them; else each pattern whole
Pages patternPagesOf(const Boat& boat, core::Units units, core::PageSize size, bool tiled) {
    Pages pages;
    const auto set = core::mouldsOf(boat.project, boat.hull);
    if (!set)
        return pages;
    for (const core::Pattern& pattern : core::mouldPatterns(boat.project, *set, units))
        for (core::PatternPage& page : core::pagesOf(
                 pattern, tiled ? core::pageOf(size) : core::rollPageFor(pattern), boat.project.name))
            pages.push_back(std::move(page.sheet));
    return pages;
}

Pages framePagesOf(const Boat& boat, core::Units units, core::PageSize size) {
    const auto set = core::mouldsOf(boat.project, boat.hull);
    return set ? core::strongbackSheets(boat.project, *set, units, size) : Pages();
}

Pages stockPagesOf(const Boat& boat, core::Units units, core::PageSize size) {
    const auto stock = core::planStock(boat.project, boat.hull, boat.plan);
    return stock ? core::stockSheets(boat.project, boat.hull, boat.plan, *stock, units, size) : Pages();
}

using NamedPages = std::vector<std::pair<std::string, Pages>>;

NamedPages fittingOutFilesOf(const Boat& boat, core::Units units, core::PageSize size) {
    const core::AfterPlanking after = core::afterPlanking(boat.project, boat.hull, boat.plan);
    return {
        {"fitout.pdf", after.fitout ? core::fitoutSheets(boat.project, *after.fitout, units, size) : Pages()},
        {"covering.pdf", core::coveringSheets(boat.project, after, units, size)},
        {"afloat.pdf", core::afloatSheets(boat.project, after, units, size)}};
}

Pages fittingOutPagesOf(const Boat& boat, core::Units units, core::PageSize size) {
    Pages pages;
    for (auto& [name, more] : fittingOutFilesOf(boat, units, size))
        append(pages, std::move(more));
    return pages;
}

/// Writes PDFs into a folder that is made when it is not there; those without pages are left out.
Expected<std::vector<std::string>, PaperError> writeAll(const std::string& folder, const NamedPages& files) {
    if (!QDir().mkpath(QString::fromStdString(folder)))
        return unexpected(PaperError{"The folder " + folder + " can't be made; choose another."});
    std::vector<std::string> written;
    for (const auto& [name, pages] : files) {
        if (pages.empty())
            continue;
        written.push_back(folder + "/" + name);
        if (const auto done = writePdf(pages, written.back()); !done)
            return unexpected(done.error());
    }
    return written;
}

} // namespace

PageSet wallPages() {
    PageSet set;
    set.name = QStringLiteral("Sheets");
    set.invitation = QStringLiteral("Open a project, and this bench holds its sheets for the wall.");
    set.print = QStringLiteral("Print cut sheets…");
    set.show = wallPagesOf;
    set.printed = [](const Boat& boat, core::Units units, core::PageSize size) {
        // wall map and lines are larger than a printer's paper: they go out as PDFs only
        Pages pages = wallPagesOf(boat, units, size);
        const core::Page paper = core::pageOf(size);
        const double longest = std::max(paper.width, paper.height) + 1;
        std::erase_if(pages, [&](const core::Sheet& s) { return std::max(s.width, s.height) > longest; });
        return pages;
    };
    set.write = [](const Boat& boat, core::Units units, core::PageSize size, const std::string& folder) {
        return writeSheetSet(boat.project, boat.hull, boat.plan, units, size, folder);
    };
    set.status = [](const Pages& pages) {
        return QStringLiteral("%1 sheets, the lines and the wall map").arg(pages.size() - 3);
    };
    return set;
}

PageSet mouldPages() {
    PageSet set;
    set.name = QStringLiteral("Moulds");
    set.invitation = QStringLiteral("Open a project, and this bench holds its moulds and their strongback.");
    set.nothing = QStringLiteral("This hull gives no moulds; the findings on the Lines bench say why.");
    set.print = QStringLiteral("Print patterns…");
    set.show = [](const Boat& boat, core::Units units, core::PageSize size) {
        Pages pages = framePagesOf(boat, units, size);
        append(pages, patternPagesOf(boat, units, size, false));
        return pages;
    };
    set.printed = [](const Boat& boat, core::Units units, core::PageSize size) {
        Pages pages = framePagesOf(boat, units, size);
        append(pages, patternPagesOf(boat, units, size, true));
        return pages;
    };
    set.write = [](const Boat& boat, core::Units units, core::PageSize size, const std::string& folder) {
        return writeAll(folder,
                        {{"strongback.pdf", framePagesOf(boat, units, size)},
                         {"moulds-tiled.pdf", patternPagesOf(boat, units, size, true)},
                         {"moulds-roll.pdf", patternPagesOf(boat, units, size, false)}});
    };
    set.status = [](const Pages& pages) {
        return QStringLiteral("%1 pages. A pattern is shown whole here and printed in tiles at full size.")
            .arg(pages.size());
    };
    return set;
}

PageSet stockPages() {
    PageSet set;
    set.name = QStringLiteral("Stock");
    set.invitation = QStringLiteral("Open a project, and this bench holds its boards.");
    set.nothing =
        QStringLiteral("No boards are described yet. Put the lots you can have into the project's file, and "
                       "this bench says how many to buy, how to mill them and where every scarf falls:\n\n"
                       "[stock]\n[[stock.lot]]\nnominal = \"1x6\"\nlength = \"12 ft\"");
    set.print = QStringLiteral("Print lists…");
    set.show = stockPagesOf;
    set.printed = stockPagesOf;
    set.write = [](const Boat& boat, core::Units units, core::PageSize size, const std::string& folder) {
        return writeAll(folder, {{"stock.pdf", stockPagesOf(boat, units, size)}});
    };
    set.status = [](const Pages& pages) {
        return QStringLiteral("%1 pages: what to buy, milling, scarfs and labels").arg(pages.size());
    };
    return set;
}

PageSet fittingOutPages() {
    PageSet set;
    set.name = QStringLiteral("Fitting out");
    set.invitation = QStringLiteral("Open a project, and this bench holds what comes after the planking.");
    set.nothing = QStringLiteral(
        "Nothing is asked for yet. Put into the project's file what she shall have, and this bench tells "
        "lengths, angles, cloth, resin and how she floats:\n\n[fitout]\n[covering]\n[afloat]\n\n"
        "The README names their keys; the examples use them.");
    set.print = QStringLiteral("Print pages…");
    set.show = fittingOutPagesOf;
    set.printed = fittingOutPagesOf;
    set.write = [](const Boat& boat, core::Units units, core::PageSize size, const std::string& folder) {
        return writeAll(folder, fittingOutFilesOf(boat, units, size));
    };
    set.status = [](const Pages& pages) {
        return QStringLiteral("%1 pages: parts to fit, cloth and resin, afloat").arg(pages.size());
    };
    return set;
}

} // namespace sheerlay::ui

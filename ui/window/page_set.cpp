#include "ui/window/page_set.hpp"

#include "core/lines_drawing/curvature_sheet.hpp"
#include "core/lines_drawing/lines_sheet.hpp"
#include "core/materials/materials_sheet.hpp"
#include "core/patterns/fitout_pattern.hpp"
#include "core/patterns/pattern_set.hpp"
#include "core/patterns/strongback_sheet.hpp"
#include "core/project/put_aside.hpp"
#include "core/sheets/cut_sheets.hpp"
#include "core/sheets/revision.hpp"
#include "core/sheets/sheet_tiles.hpp"
#include "core/sheets/shop_plan.hpp"
#include "core/sheets/stock_sheets.hpp"
#include "core/sheets/wall_map.hpp"
#include "core/words/language.hpp"
#include "ui/paper/pattern_files.hpp"
#include "ui/paper/sheet_set.hpp"
#include "ui/scene/wording.hpp"

#include <algorithm>
#include <iterator>
#include <utility>

namespace sheerlay::ui {
namespace {

using Pages = PageSet::Pages;

void append(Pages& pages, Pages more) {
    std::ranges::move(more, std::back_inserter(pages));
}

core::Sheet materialsOf(const Boat& boat, core::Units units, core::PageSize size) {
    return core::materialsSheet(
        boat.project, core::materialsOf(boat.project, boat.hull, boat.shop(), units), units, size);
}

Pages cutPagesOf(const Boat& boat, core::Units units, core::PageSize size) {
    const core::ShopPlan& shop = boat.shop();
    return core::cutSheets(
        boat.project, boat.hull, shop.plan, units, size, shop.stock ? &*shop.stock : nullptr);
}

/// @param pages  the cut sheets, which the others follow
Pages wallPagesOf(const Boat& boat, core::Units units, core::PageSize size, Pages pages) {
    const core::ShopPlan& shop = boat.shop();
    const core::StockPlan* stock = shop.stock ? &*shop.stock : nullptr;
    if (stock != nullptr)
        append(pages, core::stockSheets(boat.project, boat.hull, shop.plan, *stock, units, size));
    pages.push_back(materialsOf(boat, units, size));
    pages.push_back(core::linesSheet(boat.project, boat.hull, units));
    pages.push_back(core::curvatureSheet(boat.project, boat.hull, units));
    pages.push_back(core::wallMap(boat.project, boat.hull, shop.plan, units, stock));
    return pages;
}

/// With those larger than a printer's paper.
RevisedPages
revisedWallPages(const Boat& boat, core::Units units, core::PageSize size, const std::string& before) {
    Pages cut = cutPagesOf(boat, units, size);
    const core::SheetRecord record =
        core::recordOf(cut, core::recordFrom(before), core::doneSheets(cut, boat.project.journal, boat.plan));
    {
        const core::Speaking speaking(boat.project.language);
        cut = core::withRevisions(std::move(cut), record, size);
    }
    RevisedPages pages{{}, {}, core::toText(record)};
    for (const std::size_t i : core::changedIn(record))
        pages.changed.push_back(cut[i]);
    pages.all = wallPagesOf(boat, units, size, std::move(cut));
    return pages;
}

bool fits(const core::Sheet& sheet, core::PageSize size) {
    const core::Page paper = core::pageOf(size);
    return std::max(sheet.width, sheet.height) <= std::max(paper.width, paper.height) + 1;
}

/// Without wall map and lines, which are larger than a printer's paper: they are printed by themselves.
Pages printable(Pages pages, core::PageSize size) {
    std::erase_if(pages, [&](const core::Sheet& sheet) { return !fits(sheet, size); });
    return pages;
}

/// One of these by itself, in pages to be joined where it is larger than the paper.
Pages aloneOf(const Pages& pages, std::size_t shown, core::PageSize size, core::Language language) {
    if (shown >= pages.size())
        return {};
    if (fits(pages[shown], size))
        return {pages[shown]};
    const core::Speaking speaking(language);
    Pages alone;
    for (core::SheetTile& tile : core::tilesOf(pages[shown], size))
        alone.push_back(std::move(tile.sheet));
    return alone;
}

/// The same of pages that are followed by patterns, each shown whole.
Pages aloneOf(const Pages& before,
              const std::vector<core::Pattern>& patterns,
              std::size_t shown,
              core::PageSize size,
              const core::Project& project) {
    if (shown < before.size())
        return aloneOf(before, shown, size, project.language);
    shown -= before.size();
    for (const core::Pattern& pattern : patterns) {
        const std::size_t sheets = core::rollPages({pattern}, project.name).size();
        if (shown < sheets)
            return core::tiledPages({pattern}, size, project.name);
        shown -= sheets;
    }
    return {};
}

/// What stands before the patterns of the frame.
Pages frameSheetsOf(const Boat& boat, const core::PatternSet& set, core::Units units, core::PageSize size) {
    Pages pages = core::strongbackSheets(boat.project, set.frame, units, size);
    append(pages, core::nestedPages(boat.project, set.boards, units, size));
    return pages;
}

Pages frameAlone(const Boat& boat, core::Units units, core::PageSize size, std::size_t shown) {
    auto set = core::patternSet(boat.project, boat.hull, boat.plan, units);
    if (!set)
        return {};
    std::vector<core::Pattern> patterns = std::move(set->moulds);
    std::ranges::move(set->strips, std::back_inserter(patterns));
    return aloneOf(frameSheetsOf(boat, *set, units, size), patterns, shown, size, boat.project);
}

/// @param tiled  patterns as a printer takes them; else each whole
BenchPages framePagesOf(const Boat& boat, core::Units units, core::PageSize size, bool tiled) {
    const auto set = core::patternSet(boat.project, boat.hull, boat.plan, units);
    if (!set)
        return {{}, {core::withoutMoulds(set.error())}};
    Pages pages = frameSheetsOf(boat, *set, units, size);
    const std::string& name = boat.project.name;
    for (const auto* patterns : {&set->moulds, &set->strips})
        append(pages, tiled ? core::tiledPages(*patterns, size, name) : core::rollPages(*patterns, name));
    return {std::move(pages), set->findings};
}

WrittenFiles writeFrame(const Boat& boat, core::Units units, core::PageSize size, const std::string& folder) {
    const auto set = core::patternSet(boat.project, boat.hull, boat.plan, units);
    if (!set)
        return unexpected(PaperError{core::withoutMoulds(set.error()).text});
    auto files = writePapers(
        {{"strongback.pdf", core::strongbackSheets(boat.project, set->frame, units, size)}}, folder);
    if (!files)
        return unexpected(files.error());
    WrittenFiles patterns = writePatternFiles(boat.project, *set, units, size, folder);
    if (patterns)
        patterns->files.insert(patterns->files.begin(), files->begin(), files->end());
    return patterns;
}

BenchPages stockPagesOf(const Boat& boat, core::Units units, core::PageSize size) {
    const core::ShopPlan& shop = boat.shop();
    if (!shop.stock)
        return {};
    return {core::stockSheets(boat.project, boat.hull, shop.plan, *shop.stock, units, size),
            core::withAsides(shop.stock->findings, boat.project.putAside)};
}

std::vector<core::Pattern> partPatterns(const Boat& boat, core::Units units) {
    const auto& fitout = boat.shop().after.fitout;
    const core::Speaking speaking(boat.project.language);
    return fitout ? core::fitoutPatterns(*fitout, units) : std::vector<core::Pattern>();
}

/// Heaviest first, those put aside marked.
std::vector<core::Finding> fitOutFindings(const Boat& boat) {
    return core::heaviestFirst(core::withAsides(boat.shop().after.findings, boat.project.putAside));
}

/// What stands before the patterns of the parts.
Pages fittingOutSheetsOf(const Boat& boat, core::Units units, core::PageSize size) {
    Pages pages;
    for (Paper& paper : fittingOutPapers(boat.project, boat.shop().after, units, size))
        append(pages, std::move(paper.sheets));
    if (!pages.empty())
        pages.push_back(materialsOf(boat, units, size));
    return pages;
}

BenchPages fittingOutPagesOf(const Boat& boat, core::Units units, core::PageSize size, bool tiled) {
    BenchPages pages{fittingOutSheetsOf(boat, units, size), fitOutFindings(boat)};
    const auto parts = partPatterns(boat, units);
    const std::string& name = boat.project.name;
    append(pages.sheets, tiled ? core::tiledPages(parts, size, name) : core::rollPages(parts, name));
    return pages;
}

WrittenFiles
writeFittingOut(const Boat& boat, core::Units units, core::PageSize size, const std::string& folder) {
    const core::AfterPlanking& after = boat.shop().after;
    std::vector<Paper> papers = fittingOutPapers(boat.project, after, units, size);
    papers.push_back({"materials.pdf", {materialsOf(boat, units, size)}});
    auto files = writePapers(papers, folder);
    if (!files)
        return unexpected(files.error());
    const auto parts = writePartPatterns(partPatterns(boat, units), size, boat.project.name, folder);
    if (!parts)
        return unexpected(parts.error());
    files->insert(files->end(), parts->begin(), parts->end());
    return WrittenSet{std::move(*files), fitOutFindings(boat)};
}

WrittenFiles
written(const std::vector<Paper>& papers, std::vector<core::Finding> findings, const std::string& folder) {
    const auto files = writePapers(papers, folder);
    if (!files)
        return unexpected(files.error());
    return WrittenSet{*files, std::move(findings)};
}

} // namespace

PageSet wallPages() {
    PageSet set;
    set.name = Wording::tr("Sheets");
    set.invitation = Wording::tr("Open a project, and this bench holds its sheets for the wall.");
    set.print = Wording::tr("Print cut sheets…");
    set.speaks = true;
    set.show = [](const Boat& boat, core::Units units, core::PageSize size) {
        return BenchPages{wallPagesOf(boat, units, size, cutPagesOf(boat, units, size)),
                          {}}; // the cover tells the findings
    };
    set.printed = [](const Boat& boat, core::Units units, core::PageSize size) {
        return printable(wallPagesOf(boat, units, size, cutPagesOf(boat, units, size)), size);
    };
    set.revised = [](const Boat& boat, core::Units units, core::PageSize size, const std::string& before) {
        RevisedPages pages = revisedWallPages(boat, units, size, before);
        pages.all = printable(std::move(pages.all), size);
        return pages;
    };
    set.alone = [](const Boat& boat,
                   core::Units units,
                   core::PageSize size,
                   const std::string& before,
                   std::size_t shown) {
        return aloneOf(revisedWallPages(boat, units, size, before).all, shown, size, boat.project.language);
    };
    set.write = [](const Boat& boat, core::Units units, core::PageSize size, const std::string& folder) {
        return writeSheetSet(boat.project, boat.hull, boat.shop(), units, size, folder);
    };
    set.status = [](const Pages& pages) {
        return Wording::tr("%1 sheets, the lines and the wall map").arg(pages.size() - 3);
    };
    return set;
}

PageSet mouldPages() {
    PageSet set;
    set.name = Wording::tr("Moulds");
    set.invitation = Wording::tr("Open a project, and this bench holds its moulds and their strongback.");
    set.print = Wording::tr("Print patterns…");
    set.choices = Wording::tr("How they are made");
    set.form = mouldForm;
    set.show = [](const Boat& boat, core::Units units, core::PageSize size) {
        return framePagesOf(boat, units, size, false);
    };
    set.printed = [](const Boat& boat, core::Units units, core::PageSize size) {
        return framePagesOf(boat, units, size, true).sheets;
    };
    set.write = writeFrame;
    set.alone =
        [](const Boat& boat, core::Units units, core::PageSize size, const std::string&, std::size_t shown) {
            return frameAlone(boat, units, size, shown);
        };
    set.status = [](const Pages& pages) {
        return Wording::tr("%1 pages. A pattern is shown whole here and printed in tiles at full size.")
            .arg(pages.size());
    };
    return set;
}

PageSet stockPages() {
    PageSet set;
    set.name = Wording::tr("Stock");
    set.invitation = Wording::tr("Open a project, and this bench holds its boards.");
    set.nothing = Wording::tr(
        "No boards are described yet. Add those you can have under “Boards and milling”, or in the "
        "project's file, and this bench says how many to buy, how to mill them and where every "
        "scarf falls:\n\n[stock]\n[[stock.lot]]\nnominal = \"1x6\"\nlength = \"12 ft\"");
    set.print = Wording::tr("Print lists…");
    set.choices = Wording::tr("Boards and milling");
    set.form = stockForm;
    set.show = stockPagesOf;
    set.printed = [](const Boat& boat, core::Units units, core::PageSize size) {
        return stockPagesOf(boat, units, size).sheets;
    };
    set.alone =
        [](const Boat& boat, core::Units units, core::PageSize size, const std::string&, std::size_t shown) {
            return aloneOf(stockPagesOf(boat, units, size).sheets, shown, size, boat.project.language);
        };
    set.write = [](const Boat& boat, core::Units units, core::PageSize size, const std::string& folder) {
        BenchPages pages = stockPagesOf(boat, units, size);
        return written({{"stock.pdf", std::move(pages.sheets)}}, std::move(pages.findings), folder);
    };
    set.status = [](const Pages& pages) {
        return Wording::tr("%1 pages: what to buy, milling, scarfs and labels").arg(pages.size());
    };
    return set;
}

PageSet fittingOutPages() {
    PageSet set;
    set.name = Wording::tr("Fitting out");
    set.invitation = Wording::tr("Open a project, and this bench holds what comes after the planking.");
    set.nothing = Wording::tr("Nothing is asked for yet. Add what she shall have under “What she gets”, "
                              "or in the project's file, and "
                              "this bench tells lengths, angles, cloth, resin and how she "
                              "floats:\n\n[fitout]\n[covering]\n[afloat]\n\n"
                              "The README names their keys; the examples use them.");
    set.print = Wording::tr("Print pages…");
    set.choices = Wording::tr("What she gets");
    set.form = fittingOutForm;
    set.floats = true;
    set.show = [](const Boat& boat, core::Units units, core::PageSize size) {
        return fittingOutPagesOf(boat, units, size, false);
    };
    set.printed = [](const Boat& boat, core::Units units, core::PageSize size) {
        return fittingOutPagesOf(boat, units, size, true).sheets;
    };
    set.write = writeFittingOut;
    set.alone =
        [](const Boat& boat, core::Units units, core::PageSize size, const std::string&, std::size_t shown) {
            return aloneOf(
                fittingOutSheetsOf(boat, units, size), partPatterns(boat, units), shown, size, boat.project);
        };
    set.status = [](const Pages& pages) {
        return Wording::tr("%1 pages: parts to fit, cloth and resin, afloat. A pattern is "
                           "shown whole here and printed in tiles at full size.")
            .arg(pages.size());
    };
    return set;
}

} // namespace sheerlay::ui

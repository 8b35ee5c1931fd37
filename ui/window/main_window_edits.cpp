// The part of the main window that turns what is decided on the benches into edits of the project.
#include "core/project/project_edit.hpp"
#include "core/sheets/fitout_titles.hpp"
#include "ui/choices/choices_panel.hpp"
#include "ui/panels/findings_pane.hpp"
#include "ui/panels/planking_controls.hpp"
#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"
#include "ui/shop/shop_mode.hpp"
#include "ui/window/journal_bench.hpp"
#include "ui/window/lines_bench.hpp"
#include "ui/window/main_window.hpp"
#include "ui/window/planking_bench.hpp"
#include "ui/window/project_desk.hpp"
#include "ui/window/project_memory.hpp"
#include "ui/window/sheets_bench.hpp"

#include <QFileInfo>

#include <memory>
#include <utility>

namespace sheerlay::ui {

void MainWindow::connectEdits() {
    connect(m_planking->controls(), &PlankingControls::changed, this, &MainWindow::askPlanking);
    connect(m_planking, &PlankingBench::startMoved, this, [this](const core::StartLine& line) {
        if (!m_desk->isOpen())
            return;
        core::Planking planking = m_desk->project().planking;
        planking.start = line;
        askPlanking(planking);
    });
    connect(m_planking->findingsPane(),
            &FindingsPane::asidesChanged,
            this,
            [this](const QString& name, const std::vector<core::PutAside>& asides) {
                if (!m_desk->isOpen())
                    return;
                core::Project next = m_desk->project();
                next.putAside = asides;
                m_desk->edit(name, std::move(next));
            });
    connect(m_planking->findingsPane(), &FindingsPane::followed, this, &MainWindow::showPartOf);
    connect(m_lines, &LinesBench::edited, this, [this](const QString& name, const core::Project& project) {
        m_desk->edit(name, project);
    });
    connect(m_fittingOut, &SheetsBench::loadMoved, this, [this](std::size_t load, double x) {
        if (!m_desk->isOpen())
            return;
        core::Project next = m_desk->project();
        if (!next.afloat || load >= next.afloat->loads.size())
            return; // taken out meanwhile
        core::PlacedWeight& placed = next.afloat->loads[load];
        placed.x = x;
        m_fittingOut->choices()->say(tryEdit(tr("Move %1").arg(toQString(placed.name)), next));
    });
    for (const SheetsBench* pages : {m_moulds, m_stock, m_fittingOut}) {
        ChoicesPanel* form = pages->choices();
        connect(
            form, &ChoicesPanel::changed, this, [this, form](const QString& name, const core::Project& next) {
                if (m_desk->isOpen())
                    form->say(tryEdit(name, next));
            });
    }
    connect(m_sheets, &SheetsBench::languageChosen, this, &MainWindow::askLanguage);
    for (const SheetsBench* pages : {m_moulds, m_stock, m_sheets, m_fittingOut})
        connect(pages, &SheetsBench::paperChosen, this, [this](core::PageSize paper) {
            askPaper(Wording::tr("Paper"), [paper](core::PaperChoices& choices) { choices.size = paper; });
        });
    connect(m_sheets, &SheetsBench::rowsChosen, this, [this](bool several) {
        askPaper(Wording::tr("Rows a cut sheet"),
                 [several](core::PaperChoices& choices) { choices.severalRows = several; });
    });
    connect(m_sheets, &SheetsBench::printed, this, [this](const std::string& record) {
        rememberPrintRecord(m_path, record);
    });
}

void MainWindow::askLanguage(core::Language language) {
    if (!m_desk->isOpen() || language == m_desk->project().language)
        return;
    core::Project next = m_desk->project();
    next.language = language;
    (void)tryEdit(Wording::tr("Language of the paper"), next); // any language will do
}

void MainWindow::askPaper(const QString& name, const std::function<void(core::PaperChoices&)>& choose) {
    if (!m_desk->isOpen())
        return;
    core::Project next = m_desk->project();
    choose(next.paper);
    if (!(next.paper == m_desk->project().paper))
        (void)tryEdit(name, next); // any paper will do
}

void MainWindow::showPaper() {
    const core::PaperChoices paper = m_desk->isOpen() ? m_desk->project().paper : core::PaperChoices{};
    for (SheetsBench* pages : {m_moulds, m_stock, m_sheets, m_fittingOut}) {
        pages->setPaper(paper.size);
        pages->setFolder(m_path.isEmpty() ? QString() : QFileInfo(m_path).absolutePath());
    }
    m_sheets->setSeveralRows(paper.severalRows);
    m_sheets->setPrintRecord(printRecordOf(m_path));
}

void MainWindow::askPlanking(const core::Planking& planking) {
    if (!m_desk->isOpen())
        return;
    core::Project next = m_desk->project();
    next.planking = planking;
    const QString name = heardText(core::nameOfChange(m_desk->project().planking, planking));
    if (const QString problem = tryEdit(name, next); !problem.isEmpty())
        m_planking->controls()->say(problem);
}

QString MainWindow::tryEdit(const QString& name, const core::Project& next) {
    const auto judged = core::checked(next);
    if (judged) {
        m_desk->edit(name, next);
        return {};
    }
    QStringList lines;
    for (const core::FileMessage& message : judged.error())
        lines << Wording::tr("%1: %2 would do.").arg(heardText(message.found), heardText(message.would));
    return lines.join(QLatin1Char('\n'));
}

void MainWindow::showProject() {
    m_planking->controls()->setProject(m_desk->project());
    m_planking->setAsides(m_desk->project().putAside);
    for (const SheetsBench* pages : {m_moulds, m_stock, m_fittingOut})
        pages->choices()->setProject(m_desk->project());
    m_shop->setJournal(m_desk->project().journal);
    m_sheets->setLanguage(m_desk->project().language);
    showPaper();
    m_journal->setProject(m_desk->project());
    m_lines->setProject(m_desk->project());
}

void MainWindow::takeWords() {
    const bool spokenAlike = m_boat->project.language == m_desk->project().language;
    if (spokenAlike && m_boat->project.putAside == m_desk->project().putAside &&
        m_boat->project.paper.severalRows == m_desk->project().paper.severalRows)
        return;
    Boat same = *m_boat;
    same.project = m_desk->project();
    m_boat = std::make_shared<const Boat>(std::move(same));
    // the cover and the pages of the fit-out tell what was put aside, and rows may share a sheet
    for (SheetsBench* pages : {m_sheets, m_stock, m_fittingOut})
        pages->setBoat(m_boat);
    if (!spokenAlike)
        m_moulds->setBoat(m_boat);
}

void MainWindow::showPartOf(const core::Finding& finding) {
    if (!m_boat)
        return;
    if (m_boat->foundIn(finding) == FoundIn::Boards) {
        showBench(Bench::Stock);
        return;
    }
    showBench(Bench::FittingOut);
    m_fittingOut->showPages(core::titleFor(m_boat->project, m_boat->shop().after, finding));
}

} // namespace sheerlay::ui

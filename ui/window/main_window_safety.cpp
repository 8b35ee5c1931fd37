// The part of the main window that looks after the project on the desk: edits, saving, what changed
// elsewhere.
#include "core/project/laid_strips.hpp"
#include "core/project/project_edit.hpp"
#include "core/project/project_file.hpp"
#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"
#include "ui/shop/shop_mode.hpp"
#include "ui/window/file_watch.hpp"
#include "ui/window/journal_bench.hpp"
#include "ui/window/language.hpp"
#include "ui/window/lines_bench.hpp"
#include "ui/window/main_window.hpp"
#include "ui/window/notice.hpp"
#include "ui/window/planking_bench.hpp"
#include "ui/window/project_desk.hpp"
#include "ui/window/sheets_bench.hpp"
#include "ui/window/style.hpp"

#include <QActionGroup>
#include <QCloseEvent>
#include <QFileInfo>
#include <QLabel>
#include <QLayout>
#include <QMenu>
#include <QMessageBox>
#include <QPushButton>
#include <QSettings>
#include <QToolButton>
#include <QUndoStack>

namespace sheerlay::ui {
namespace {

constexpr int mostRecent = 8;
constexpr auto recentKey = "recent";

} // namespace

void MainWindow::makeMenus(QWidget* strip, QLayout* layout) {
    m_unsaved->setText(tr("not saved"));
    m_unsaved->setToolTip(tr("There are changes that the project's file does not hold yet"));
    m_unsaved->setStyleSheet(QStringLiteral("color: #6B7078;"));
    QSizePolicy keepsItsPlace = m_unsaved->sizePolicy(); // the first change must not move the buttons
    keepsItsPlace.setRetainSizeWhenHidden(true);
    m_unsaved->setSizePolicy(keepsItsPlace);
    m_unsaved->hide();
    layout->addWidget(m_unsaved);
    const auto menuButton = [&](const QString& text, const QString& tip, QMenu* menu) {
        auto* made = new QToolButton(strip);
        made->setText(text);
        made->setToolTip(tip);
        made->setFocusPolicy(Qt::TabFocus);
        made->setPopupMode(QToolButton::InstantPopup);
        made->setMenu(menu);
        layout->addWidget(made);
        return made;
    };
    auto* shop = new QToolButton(strip);
    shop->setText(Wording::tr("Shop mode"));
    shop->setToolTip(Wording::tr("One strip at a time over the whole screen, to work by (F11)"));
    shop->setFocusPolicy(Qt::NoFocus);
    connect(shop, &QToolButton::clicked, this, &MainWindow::enterShop);
    layout->addWidget(shop);
    auto* project =
        menuButton(Wording::tr("Project"), Wording::tr("Open, save, and the last projects"), m_recent);
    project->setIcon(icon(Icon::Folder));
    project->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    m_saveAction->setText(Wording::tr("Save"));
    m_saveAction->setShortcut(QKeySequence::Save);
    m_saveAction->setEnabled(false);
    connect(m_saveAction, &QAction::triggered, this, &MainWindow::save);
    m_saveAsAction->setText(tr("Save as…"));
    m_saveAsAction->setShortcut(Qt::CTRL | Qt::SHIFT | Qt::Key_S);
    m_saveAsAction->setEnabled(false);
    connect(m_saveAsAction, &QAction::triggered, this, &MainWindow::askSaveAs);
    for (QAction* action : {m_saveAction, m_saveAsAction})
        addAction(action);
    m_pictureAction->setText(Wording::tr("Save picture of the boat…"));
    m_pictureAction->setEnabled(false);
    connect(m_pictureAction, &QAction::triggered, this, &MainWindow::askPicture);
    m_exportAction->setText(tr("Write the boat for other programs…"));
    m_exportAction->setToolTip(tr("Hull, moulds and strips as solids (STEP), pictures in space (glTF) and "
                                  "meshes (STL); tables as CSV"));
    m_exportAction->setEnabled(false);
    connect(m_exportAction, &QAction::triggered, this, &MainWindow::askExport);
    m_recent->setToolTipsVisible(true);
    connect(m_recent, &QMenu::aboutToShow, this, &MainWindow::fillRecent);

    menuButton(Wording::tr("Edit"), Wording::tr("Take back, or do again"), m_edit);
    QAction* undo = m_desk->undoStack()->createUndoAction(this, Wording::tr("Undo"));
    undo->setShortcut(QKeySequence::Undo);
    QAction* redo = m_desk->undoStack()->createRedoAction(this, Wording::tr("Redo"));
    redo->setShortcuts({QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z), QKeySequence(Qt::CTRL | Qt::Key_Y)});
    for (QAction* action : {undo, redo}) {
        m_edit->addAction(action);
        addAction(action);
    }
    makeLanguages();
}

void MainWindow::makeLanguages() {
    m_edit->addSeparator();
    QMenu* menu = m_edit->addMenu(tr("Language"));
    auto* group = new QActionGroup(menu);
    const auto add = [&](const QString& name, const QString& code) {
        QAction* action = menu->addAction(name);
        action->setCheckable(true);
        action->setChecked(code == chosenLanguage());
        group->addAction(action);
        connect(action, &QAction::triggered, this, [this, code] {
            if (code == chosenLanguage())
                return;
            chooseLanguage(code);
            Q_EMIT languageChosen();
        });
    };
    add(tr("As the system"), QString());
    for (const Language& language : languages())
        add(language.name, language.code);
}

void MainWindow::stopPlanning() {
    m_runner->cancel();
    if (!m_boat || !m_desk->isOpen())
        return;
    m_takingBack = true;
    m_desk->undoStack()->setIndex(m_plannedAt); // edits since then, or undone since then
    m_takingBack = false;
    showProject();
    const bool old = m_staleBoat || !core::plansAlike(m_boat->project, m_desk->project());
    m_planking->setStale(old);
    for (SheetsBench* pages : {m_moulds, m_stock, m_sheets, m_fittingOut})
        pages->setStale(old);
}

HullSink MainWindow::whenLofted() {
    // of the run that starts next; a later one makes its hull stale
    const std::uint64_t revision = m_runner->revision() + 1;
    return [this, revision, project = m_desk->project()](std::shared_ptr<const core::LoftedHull> hull) {
        QMetaObject::invokeMethod(m_runner, [this, revision, project, hull] {
            if (revision == m_runner->revision())
                m_lines->setLoft(project, hull);
        });
    };
}

void MainWindow::replan() {
    if (m_takingBack)
        return;
    showProject();
    if (m_boat && !m_runner->busy() && !m_staleBoat && core::plansAlike(m_boat->project, m_desk->project())) {
        m_plannedAt = m_desk->undoStack()->index();
        takeWords();
        return; // a strip more is down: the plan is the same
    }
    m_planking->setStale(true); // until the new plan is there, the picture is the old one
    for (SheetsBench* pages : {m_moulds, m_stock, m_sheets, m_fittingOut})
        pages->setStale(true);
    m_runner->run(
        [project = m_desk->project(), before = m_boat, lofted = whenLofted()](
            std::stop_token stop, const TaskRunner::Progress& progress) {
            return planBoat(project, before, stop, progress, lofted);
        },
        [this](const LoadedBoat& loaded) { take(loaded); },
        [this](const QString& text) {
            tellFault(text);
            Q_EMIT loaded();
        });
}

bool MainWindow::save() {
    const bool wasMissing = m_desk->missing();
    switch (m_desk->save()) {
    case ProjectDesk::Saved::Yes:
        if (wasMissing)
            m_notice->clear();  // it said so
        m_watch->watch(m_path); // what was written here is no news
        return true;
    case ProjectDesk::Saved::ChangedOnDisk:
        tellChangedOnDisk();
        return false;
    case ProjectDesk::Saved::CannotWrite:
        break;
    }
    m_notice->say({Wording::tr("The project was not saved. %1.").arg(m_desk->problem()),
                   Wording::tr("Free the folder or the disk and save again, or save as another file; until "
                               "then your changes stay here.")},
                  Notice::Weight::Remark);
    return false;
}

void MainWindow::fileGone() {
    m_desk->setMissing(true);
    if (m_desk->missing())
        m_notice->say({tr("%1 is no longer where it was: moved, renamed or deleted, or its folder is out of "
                          "reach.")
                           .arg(m_path),
                       tr("The boat here is whole. Saving writes her to that place again; if the file is "
                          "put back, nothing is needed.")},
                      Notice::Weight::Trouble,
                      {{tr("Save it there again"), [this] { save(); }}});
}

void MainWindow::fileChanged() {
    if (m_desk->missing()) { // and is back
        m_desk->setMissing(false);
        m_notice->clear();
    }
    if (!m_desk->dirty()) {
        load();
        return;
    }
    if (m_desk->changedOnDisk())
        tellChangedOnDisk();
}

void MainWindow::tellChangedOnDisk() {
    const auto keepMine = [this] {
        auto text = m_desk->onDisk();
        if (!text)
            return;
        const auto theirs = core::parseProject(*text, m_path.toStdString());
        m_desk->takeGround(std::move(*text),
                           theirs ? std::optional(theirs->project) : std::optional<core::Project>());
        if (!theirs)
            m_notice->say(
                {Wording::tr("The changed file can't be used as it stands, so the boat here is yours "
                             "alone. Saving replaces it, and keeps it as %1.")
                     .arg(QFileInfo(m_desk->backupPath()).fileName())},
                Notice::Weight::Remark);
    };
    m_notice->say(
        {Wording::tr("%1 was changed on disk, and there are changes here that are not saved.")
             .arg(QFileInfo(m_path).fileName()),
         Wording::tr("Your decisions can go on top of the changed file, or be discarded for it.")},
        Notice::Weight::Trouble,
        {{Wording::tr("Keep mine on top"), keepMine}, {Wording::tr("Take the file as it is"), [this] {
                                                           m_desk->close();
                                                           load();
                                                       }}});
}

void MainWindow::tellKept() {
    const auto kept = m_desk->kept();
    if (!kept)
        return;
    const bool older = QFileInfo(m_desk->keptPath()).lastModified() < QFileInfo(m_path).lastModified();
    m_notice->say({Wording::tr("There are changes from an earlier session that were not saved.%1")
                       .arg(older ? Wording::tr(" The file was changed after them.") : QString())},
                  Notice::Weight::Remark,
                  {{Wording::tr("Take them up"),
                    [this, project = *kept] {
                        m_desk->forgetKept();
                        m_desk->edit(Wording::tr("Changes from last time"), project);
                    }},
                   {Wording::tr("Discard them"), [this] { m_desk->forgetKept(); }}});
}

bool MainWindow::mayLeave() {
    if (m_desk->isOpen())
        m_desk->setMissing(!QFileInfo::exists(m_path)); // a folder that is gone is not told of
    if (!m_desk->dirty())
        return true;
    QMessageBox box(QMessageBox::NoIcon,
                    Wording::tr("Changes not saved"),
                    (m_desk->missing()
                         ? tr("%1 is no longer where it was, and the boat stands in no other file.")
                         : Wording::tr("%1 has changes that are not saved."))
                        .arg(QFileInfo(m_path).fileName()),
                    QMessageBox::NoButton,
                    this);
    QPushButton* save = box.addButton(Wording::tr("Save"), QMessageBox::AcceptRole);
    QPushButton* away = box.addButton(Wording::tr("Discard them"), QMessageBox::DestructiveRole);
    QPushButton* stay = box.addButton(Wording::tr("Go on working"), QMessageBox::RejectRole);
    box.setDefaultButton(save);
    box.setEscapeButton(stay);
    box.exec();
    if (box.clickedButton() == save)
        return this->save();
    if (box.clickedButton() != away)
        return false;
    m_desk->forgetKept();
    m_desk->close();
    return true;
}

void MainWindow::closeEvent(QCloseEvent* event) {
    event->setAccepted(mayLeave());
}

void MainWindow::remember(const QString& path) {
    QSettings settings;
    QStringList recent = settings.value(QLatin1String(recentKey)).toStringList();
    recent.removeAll(path);
    recent.prepend(path);
    settings.setValue(QLatin1String(recentKey), recent.mid(0, mostRecent));
}

void MainWindow::fillRecent() {
    m_recent->clear();
    m_recent->addAction(Wording::tr("Open a project…"), this, &MainWindow::askOpen);
    m_recent->addAction(tr("Begin a boat…"), this, [this] { beginBoat(); });
    m_recent->addAction(m_saveAction);
    m_recent->addAction(m_saveAsAction);
    m_recent->addAction(tr("Print the pages…") + QStringLiteral("\tCtrl+P"), this, &MainWindow::printPages);
    m_recent->addAction(m_pictureAction);
    m_recent->addAction(m_exportAction);
    m_recent->addAction(tr("Quit") + QStringLiteral("\tCtrl+Q"), this, &QWidget::close);
    bool any = false;
    for (const QString& path : QSettings().value(QLatin1String(recentKey)).toStringList()) {
        if (!QFileInfo::exists(path))
            continue;
        if (!any)
            m_recent->addSeparator();
        any = true;
        m_recent->addAction(QFileInfo(path).fileName(), this, [this, path] { open(path); })->setToolTip(path);
    }
}

} // namespace sheerlay::ui

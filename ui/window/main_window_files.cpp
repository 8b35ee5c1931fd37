// The part of the main window that takes files in and hands them out: opened, dropped, begun, exported.
#include "ui/exports/export_files.hpp"
#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"
#include "ui/view3d/boat_view.hpp"
#include "ui/window/dropped_file.hpp"
#include "ui/window/file_watch.hpp"
#include "ui/window/journal_bench.hpp"
#include "ui/window/main_window.hpp"
#include "ui/window/new_boat.hpp"
#include "ui/window/notice.hpp"
#include "ui/window/planking_bench.hpp"
#include "ui/window/project_desk.hpp"
#include "ui/window/project_memory.hpp"
#include "ui/window/sheets_bench.hpp"

#include <QAction>
#include <QDragEnterEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QPushButton>
#include <QStackedWidget>

namespace sheerlay::ui {
void MainWindow::askOpen() {
    const QString folder = m_path.isEmpty() ? QString() : QFileInfo(m_path).absolutePath();
    const QString path = QFileDialog::getOpenFileName(
        this, Wording::tr("Open a project"), folder, Wording::tr("Sheerlay projects (*.sheerlay)"));
    if (!path.isEmpty())
        open(path);
}

void MainWindow::askSaveAs() {
    // saveAs() asks before it replaces a file
    const QString path = QFileDialog::getSaveFileName(this,
                                                      tr("Save the project under another name"),
                                                      m_path,
                                                      Wording::tr("Sheerlay projects (*.sheerlay)"),
                                                      nullptr,
                                                      QFileDialog::DontConfirmOverwrite);
    if (!path.isEmpty())
        saveAs(path);
}

bool MainWindow::saveAs(const QString& path) {
    if (!m_desk->isOpen())
        return false;
    const QFileInfo wanted(isProject(path) ? path : path + QStringLiteral(".sheerlay"));
    const QString to = wanted.absoluteFilePath();
    if (to == m_path)
        return save();
    if (wanted.exists()) {
        QMessageBox box(QMessageBox::NoIcon,
                        tr("A file stands there"),
                        tr("%1 is there already. Replaced, it is kept as %1~.").arg(wanted.fileName()),
                        QMessageBox::NoButton,
                        this);
        const QPushButton* replace = box.addButton(tr("Replace it"), QMessageBox::DestructiveRole);
        QPushButton* leave = box.addButton(tr("Leave it"), QMessageBox::RejectRole);
        box.setDefaultButton(leave);
        box.setEscapeButton(leave);
        box.exec();
        if (box.clickedButton() != replace)
            return false;
    }
    if (!m_desk->saveAs(to)) {
        m_notice->say({Wording::tr("The project was not saved. %1.").arg(m_desk->problem()),
                       tr("Another folder or name would do.")},
                      Notice::Weight::Remark);
        return false;
    }
    // what this machine remembers of the project goes along
    rememberShopPlace(to, shopPlaceOf(m_path));
    rememberPrintRecord(to, printRecordOf(m_path));
    m_journal->moveTo(to);
    const QString before = QFileInfo(m_path).fileName();
    m_path = to;
    showPaper(); // with its folder
    m_watch->watch(m_path);
    remember(m_path);
    if (m_desk->project().name.empty())
        setWindowTitle(QStringLiteral("%1[*] · Sheerlay").arg(wanted.fileName()));
    m_notice->say({tr("Saved as %1, and the work goes on there. %2 stays as it was saved last.")
                       .arg(wanted.fileName(), before)},
                  Notice::Weight::Remark);
    return true;
}

void MainWindow::printPages() {
    for (SheetsBench* pages : {m_moulds, m_stock, m_sheets, m_fittingOut})
        if (m_pages->currentWidget() == pages) {
            pages->print();
            return;
        }
    showBench(Bench::Sheets);
}

void MainWindow::askPicture() {
    QString path = QFileDialog::getSaveFileName(
        this, Wording::tr("Save the picture"), QStringLiteral("boat.png"), Wording::tr("Pictures (*.png)"));
    if (path.isEmpty())
        return;
    if (QFileInfo(path).suffix().isEmpty())
        path += QStringLiteral(".png");
    if (!m_planking->boatView()->savePicture(path))
        m_notice->say(
            {Wording::tr("The picture could not be written to %1. Another folder would do.").arg(path)},
            Notice::Weight::Remark);
}

void MainWindow::askExport() {
    const QString folder = QFileDialog::getExistingDirectory(
        this, tr("Folder for the boat's files"), QFileInfo(m_path).absolutePath());
    if (!folder.isEmpty())
        exportTo(folder);
}

void MainWindow::exportTo(const QString& folder) {
    if (!m_boat)
        return;
    m_exportAction->setEnabled(false); // one set at a time
    m_exportTold = tr("Writing the boat's files…");
    m_notice->say({m_exportTold}, Notice::Weight::Remark, {{tr("Stop"), [this] {
                                                                m_exporting->cancel();
                                                                m_exportAction->setEnabled(m_boat != nullptr);
                                                                m_notice->say({tr("No file was written.")},
                                                                              Notice::Weight::Remark);
                                                            }}});
    const auto tell = [this](const QStringList& lines) {
        m_exportAction->setEnabled(m_boat != nullptr);
        m_notice->say(lines, Notice::Weight::Remark);
    };
    m_exporting->run(
        [boat = m_boat, out = folder.toStdString()](std::stop_token stop,
                                                    const TaskRunner::Progress& progress) {
            const auto watch = [&](const std::string& file) {
                progress(tr("Writing %1…").arg(toQString(file)));
                return !stop.stop_requested();
            };
            return writeExports(out, boat->project, boat->hull, boat->plan, {}, watch);
        },
        [this, folder, tell](const Outcome& written) {
            if (!written) {
                tell({toQString(written.error())});
                return;
            }
            QStringList names;
            for (const std::string& file : written->files)
                names << QFileInfo(toQString(file)).fileName();
            QStringList lines{tr("Written into %1: %2").arg(folder, names.join(QStringLiteral(", ")))};
            for (const core::Finding& finding : written->findings)
                lines << heardText(finding.text, m_units);
            if (m_staleBoat)
                lines << tr("That is the boat from before the change.");
            tell(lines);
        },
        [tell](const QString& text) {
            tell({tr("The files could not be written: %1. Another folder may do.").arg(text)});
        });
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    if (!droppedFile(event->mimeData()).isEmpty())
        event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
    const QString path = droppedFile(event->mimeData());
    if (path.isEmpty())
        return;
    event->acceptProposedAction();
    if (isProject(path))
        open(path);
    else if (sourceKind(path.toStdString()))
        beginBoat(path);
    else
        m_notice->say(
            {tr("%1 is no file that can be opened. A project (.sheerlay) would do, or to begin a boat "
                "from: .csv, .tsv or .txt for a table, .dxf or .svg for sections, .step or .iges for "
                "surfaces.")
                 .arg(QFileInfo(path).fileName())},
            Notice::Weight::Remark);
}

void MainWindow::beginBoat(const QString& source) {
    m_newBoat->show();
    m_newBoat->raise();
    if (!source.isEmpty())
        m_newBoat->takeFile(source);
}

} // namespace sheerlay::ui

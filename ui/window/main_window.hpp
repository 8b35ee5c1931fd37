#pragma once

#include "core/project/project.hpp"
#include "ui/window/load_boat.hpp"
#include "ui/window/task_runner.hpp"

#include <QMainWindow>

#include <functional>
#include <memory>

class QButtonGroup;
class QLabel;
class QMenu;
class QAction;
class QStackedWidget;
class QToolButton;

namespace sheerlay::ui {

class FileWatch;
class JournalBench;
class KeysCard;
class LinesBench;
class NewBoat;
class Notice;
class PlankingBench;
class ProjectDesk;
class ShopMode;
class SheetsBench;
class WorkSlip;

/// The window: bench strip on top, one bench below it. Opens and follows a project file; long work runs
/// beside it. When a changed file can't be used, the old boat stays and the notice says that it is old.
class MainWindow : public QMainWindow {
    Q_OBJECT
public:
    enum class Bench { Lines, Moulds, Planking, Stock, Sheets, Journal, FittingOut };

    explicit MainWindow(TaskRunner::Mode mode = TaskRunner::Mode::Thread, QWidget* parent = nullptr);
    ~MainWindow() override;

    void open(const QString& path);
    /// Opens an example with three steps to begin with, unless they were gone through or skipped before.
    void welcome();
    void showBench(Bench bench);
    void setUnits(core::Units units);
    [[nodiscard]] core::Units units() const noexcept { return m_units; }
    [[nodiscard]] std::shared_ptr<const Boat> boat() const { return m_boat; }
    [[nodiscard]] bool stale() const noexcept { return m_staleBoat; }
    [[nodiscard]] bool busy() const { return m_runner->busy(); }
    [[nodiscard]] PlankingBench* planking() const { return m_planking; }
    [[nodiscard]] SheetsBench* sheets() const { return m_sheets; }
    [[nodiscard]] SheetsBench* moulds() const { return m_moulds; }
    [[nodiscard]] SheetsBench* stock() const { return m_stock; }
    [[nodiscard]] SheetsBench* fittingOut() const { return m_fittingOut; }
    [[nodiscard]] JournalBench* journal() const { return m_journal; }
    [[nodiscard]] LinesBench* lines() const { return m_lines; }
    [[nodiscard]] Notice* notice() const { return m_notice; }
    /// One strip at a time over the whole screen, from where it was left.
    void enterShop();
    [[nodiscard]] ShopMode* shop() const { return m_shop; }
    [[nodiscard]] KeysCard* keys() const { return m_keys; }
    [[nodiscard]] KeysCard* shopKeys() const { return m_shopKeys; }
    [[nodiscard]] NewBoat* newBoat() const { return m_newBoat; }
    [[nodiscard]] ProjectDesk* desk() const { return m_desk; }
    /// Writes the project; what stands in the way is said in the notice. @return it is safe on disk
    bool save();
    /// Writes the project under another name and goes on there; asks before it replaces a file.
    /// @return  it is written
    bool saveAs(const QString& path);
    /// Prints the pages of the bench in hand, as its button does; from any other bench it goes to the sheets.
    void printPages();
    /// Writes the boat for other programs, beside the window; the notice tells what was written.
    void exportTo(const QString& folder);
    [[nodiscard]] FileWatch* watch() const { return m_watch; }

Q_SIGNALS:
    void loaded(); ///< a load came to its end, well or not
    void
    languageChosen(); ///< another one; the texts stand in a window when it is made, so it takes a new window

protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    void closeEvent(QCloseEvent* event) override;

private:
    QWidget* makeBenchStrip();
    QWidget* makeStartPage();
    void makeMenus(QWidget* strip, QLayout* layout);
    void makeLanguages();
    void makeKeys();
    void makeShopKeys();
    void load();
    void replan();
    /// Shows the next run's hull as soon as it is lofted, long before it is planked.
    [[nodiscard]] HullSink whenLofted();
    /// Goes to the bench and the page of the part that a finding is about.
    void showPartOf(const core::Finding& finding);
    void takeWords();
    void askLanguage(core::Language language);
    void stopPlanning();
    void showProject();
    void askPaper(const QString& name, const std::function<void(core::PaperChoices&)>& choose);
    void showPaper(); ///< as the project has it, on every bench of pages
    void connectShop();
    void connectEdits();
    void editJournal(const QString& name, const core::Journal& journal);
    void fileChanged();
    void fileGone();
    void tellChangedOnDisk();
    void tellKept();
    void askPlanking(const core::Planking& planking);
    /// An edit that core judges first. @return  what is wrong with it and what would do; empty when it is
    /// done
    [[nodiscard]] QString tryEdit(const QString& name, const core::Project& next);
    [[nodiscard]] bool mayLeave();
    void take(const LoadedBoat& loaded);
    /// Gives the boat to the benches, one at a turn of the event loop, so that the window answers between
    /// them; then tells that it is loaded.
    void handOver(std::size_t turn);
    void tellTrouble(const QStringList& lines);
    void tellFault(const QString& what);
    void showWelcome(int step); ///< 0, 1, 2
    void askOpen();
    /// A project begun from the starter or from a file; empty for none yet.
    void beginBoat(const QString& source = {});
    void askSaveAs();
    void askPicture();
    void askExport();
    void remember(const QString& path);
    void fillRecent();

    TaskRunner::Mode m_mode;
    TaskRunner* m_runner;
    FileWatch* m_watch;
    ProjectDesk* m_desk;
    std::shared_ptr<const Boat> m_boat;
    QString m_path;
    bool m_staleBoat = false;
    bool m_takingBack = false;  // edits whose plan was given up
    int m_plannedAt = 0;        // place in the undo stack that the boat stands for
    bool m_unitsChosen = false; // by hand; else the project's own
    core::Units m_units = core::Units::Millimetres;

    Notice* m_notice;
    QStackedWidget* m_pages;
    QWidget* m_start = nullptr;
    LinesBench* m_lines;
    PlankingBench* m_planking;
    SheetsBench *m_moulds, *m_stock, *m_sheets, *m_fittingOut;
    JournalBench* m_journal;
    ShopMode* m_shop;
    KeysCard *m_keys, *m_shopKeys;
    NewBoat* m_newBoat;
    QButtonGroup* m_benchButtons;
    WorkSlip* m_slip = nullptr;
    QToolButton* m_unitsButton;
    QLabel* m_unsaved;
    QMenu* m_recent;
    QMenu* m_edit;
    QAction *m_saveAction, *m_saveAsAction, *m_pictureAction, *m_exportAction;
    TaskRunner* m_exporting;
    QString m_exportTold; // of an export that goes on
};

} // namespace sheerlay::ui

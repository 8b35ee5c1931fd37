#pragma once

#include "core/project/project.hpp"
#include "core/sheets/drawing.hpp"
#include "core/sheets/page.hpp"
#include "ui/scene/boat.hpp"
#include "ui/window/page_set.hpp"
#include "ui/window/task_runner.hpp"

#include <QWidget>

#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

class QCheckBox;
class QComboBox;
class QLabel;
class QLayout;
class QListWidget;
class QPushButton;
class QScrollArea;
class QStackedWidget;
class QToolButton;

namespace sheerlay::ui {

class ChoicesPanel;
class LoadPanel;

/// A bench of pages: what goes to the shop on paper, to look through, write as PDF and print. Pages are laid
/// out on a worker when the bench is first looked at.
class SheetsBench : public QWidget {
    Q_OBJECT
public:
    SheetsBench(TaskRunner::Mode mode, PageSet set, QWidget* parent = nullptr);

    void setBoat(std::shared_ptr<const Boat> boat);
    void setUnits(core::Units units);
    /// The paper of this project; none: the one that goes with the units.
    void setPaper(std::optional<core::PageSize> paper);
    /// What was printed of this project last; empty: nothing yet.
    void setPrintRecord(std::string record);
    /// The language that the project's paper is in; shown where it is chosen.
    void setLanguage(core::Language language);
    /// Where the choice of a folder for the files begins.
    void setFolder(QString folder) { m_folder = std::move(folder); }
    /// Whether small rows share a cut sheet; shown where it is chosen.
    void setSeveralRows(bool several);
    /// Nothing is written or printed of a boat from before a change that could not be used.
    void setStale(bool stale);
    /// The form beside the pages; none where nothing is decided here.
    [[nodiscard]] ChoicesPanel* choices() const { return m_choices; }
    /// The boat in the water; none where the set has none.
    [[nodiscard]] LoadPanel* load() const { return m_load; }
    /// Puts her in the pages' place, or the pages in hers.
    void showAfloat(bool shown);
    /// Puts the list of pages, or the form, beside the picture.
    void showChoices(bool shown);
    [[nodiscard]] const std::vector<core::Sheet>& sheets() const noexcept { return m_sheets; }
    [[nodiscard]] QString status() const;
    [[nodiscard]] core::PageSize page() const;
    /// Goes to the first page of that title, once they are laid out; stays where there is none.
    void showPages(const std::string& title);
    /// Writes the set into a folder, on the worker.
    void write(const QString& folder);
    /// What its print button does: lays the pages out and shows them; nothing while that goes on, or without
    /// pages.
    void print();

Q_SIGNALS:
    void paperChosen(core::PageSize paper);       ///< by hand
    void languageChosen(core::Language language); ///< by hand
    void rowsChosen(bool several);                ///< by hand
    /// A load was dragged along her. @param x  mm, datum of the table
    void loadMoved(std::size_t load, double x);
    void printed(const std::string& record); ///< the printer took the pages that this is the record of

protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    /// A sentence with those that ask for care below it.
    [[nodiscard]] QString withFindings(QString text, const std::vector<core::Finding>& findings) const;
    QWidget* makePages();
    QLayout* makeLanguage();
    QWidget* makeRows();
    QWidget* makeSide();
    void makeLoad(TaskRunner::Mode mode);
    void layOut();
    void refreshButtons();
    void showSheet();
    void showWanted();
    void askFolder();
    enum class Which { All, Changed, Alone };
    void print(Which which);
    /// @param record  of what is to be printed; none where that is not a printing of the whole set
    void preview(const std::vector<core::Sheet>& pages, const std::optional<std::string>& record);
    void showPaper(core::PageSize paper);

    PageSet m_set;
    std::shared_ptr<const Boat> m_boat;
    core::Units m_units = core::Units::Millimetres;
    bool m_dirty = true; // sheets are to be laid out anew
    bool m_oldBoat = false;
    std::vector<core::Sheet> m_sheets;
    std::string m_wanted; ///< title of the page to go to once it is laid out; empty: none
    TaskRunner* m_layout;
    TaskRunner* m_writer;
    TaskRunner* m_printing; // lays out what goes through a printer
    QListWidget* m_list;
    bool m_paperChosen = false; ///< by hand
    QComboBox* m_page;
    QPushButton *m_write, *m_print, *m_printChanged, *m_printAlone;
    QString m_folder;
    std::string m_record;            // of the last printing
    QComboBox* m_language = nullptr; ///< where the language of the paper is chosen
    QCheckBox* m_rows = nullptr;     ///< where it is chosen whether rows share a sheet
    ChoicesPanel* m_choices = nullptr;
    QStackedWidget* m_side = nullptr;
    bool m_formOffered = false; ///< where there were no pages
    QToolButton* m_choicesButton = nullptr;
    QLabel* m_status;
    QLabel* m_preview;
    QScrollArea* m_scroll;
    QStackedWidget* m_view;
    LoadPanel* m_load = nullptr;
    QToolButton* m_afloatButton = nullptr;
};

} // namespace sheerlay::ui

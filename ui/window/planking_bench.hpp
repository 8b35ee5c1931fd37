#pragma once

#include "core/project/finding.hpp"
#include "core/project/project.hpp"
#include "ui/scene/boat.hpp"
#include "ui/scene/tape.hpp"
#include "ui/window/task_runner.hpp"

#include <QWidget>

#include <memory>
#include <optional>
#include <string>
#include <vector>

class QLabel;
class QMenu;
class QSplitter;
class QStackedWidget;
class QTimer;
class QToolButton;

namespace sheerlay::ui {

class BoatView;
class FindingsList;
class FindingsPane;
class LayingBar;
class PlankingControls;
class PlankingMap;
class StartComparison;
class StripCard;

/// The Planking bench: boat, map, card, findings and laying bar, all about one strip in hand. The strip in
/// hand is the one that was clicked, else the next to lay.
class PlankingBench : public QWidget {
    Q_OBJECT
public:
    explicit PlankingBench(TaskRunner::Mode mode = TaskRunner::Mode::Thread, QWidget* parent = nullptr);

    /// Keeps place, selection and views as far as the new boat has them.
    void setBoat(std::shared_ptr<const Boat> boat);
    void setUnits(core::Units units);
    /// The findings that the project has put aside; the plan stays as it is.
    void setAsides(std::vector<core::PutAside> asides);
    /// Says beside the picture that the boat is the one from before a change that could not be used.
    void setStale(bool stale);
    /// Puts the card of the strip, or how she is planked, beside the picture.
    void showControls(bool shown);
    [[nodiscard]] bool controlsShown() const;
    /// @param stripId  empty puts the selection away
    void select(const std::string& stripId);
    [[nodiscard]] const std::string& selected() const noexcept { return m_selected; }
    /// Strip the card is about.
    [[nodiscard]] std::string inHand() const;
    /// Searches good start lines and shows them side by side below the map.
    void compareStarts();
    [[nodiscard]] StartComparison* comparison() const { return m_comparison; }
    void nextFinding();
    /// A tape to be laid between two places of boat or map, or put away.
    void measure(bool measuring);
    [[nodiscard]] bool measuring() const;
    [[nodiscard]] const Tape& tape() const noexcept { return m_tape; }
    [[nodiscard]] QWidget* tapeBar() const { return m_tapeBar; }
    /// Boat or map alone in the middle; again brings both back.
    void boatAlone();
    void mapAlone();

    [[nodiscard]] LayingBar* bar() const { return m_bar; }
    [[nodiscard]] BoatView* boatView() const { return m_view; }
    [[nodiscard]] PlankingMap* map() const { return m_map; }
    [[nodiscard]] StripCard* card() const { return m_card; }
    [[nodiscard]] FindingsPane* findingsPane() const { return m_findings; }
    [[nodiscard]] FindingsList* findings() const;
    [[nodiscard]] PlankingControls* controls() const { return m_controls; }

Q_SIGNALS:
    /// The start line was moved to this girth below the sheer, mm.
    void startMoved(const sheerlay::core::StartLine& line);

private:
    QWidget* makeSide();
    void tryStart(double girth);
    [[nodiscard]] core::StartLine startAt(double girth) const;
    QWidget* makeViewBar();
    QMenu* makeColourMenu(QWidget* parent);
    QMenu* makeCutMenu(QWidget* parent);
    void cutAt(std::optional<double> x);
    void laidChanged(int count);
    void choose(const core::Finding& finding);
    void showFindings();
    void showPlace(std::optional<double> x);
    /// Name of the bench where a finding's part is; empty: this one.
    [[nodiscard]] QString benchOf(const core::Finding& finding) const;
    /// Has boards and fit-out planned beside the window, lists what is found there and shows the scarfs.
    void planShop();
    QWidget* makeTapeBar();
    void putTapeEnd(const std::optional<core::HullPlace>& end);
    void showTape(const QString& words);

    std::shared_ptr<const Boat> m_boat;
    std::string m_selected;
    core::Units m_units = core::Units::Millimetres;
    std::optional<double> m_cut; // mm from the bow
    TaskRunner::Mode m_mode;
    TaskRunner* m_trying;
    TaskRunner* m_comparing;
    TaskRunner* m_planningShop;
    QTimer* m_shopSoon; ///< waits until the boat stands still a while
    bool m_scarfs = true;
    StartComparison* m_comparison;
    std::optional<double> m_nextTry; ///< girth to try once the one before is judged
    BoatView* m_view;
    PlankingMap* m_map;
    StripCard* m_card;
    PlankingControls* m_controls;
    QStackedWidget* m_sidePages;
    QToolButton *m_stripButton, *m_controlsButton, *m_tapeButton;
    QWidget* m_tapeBar = nullptr;
    QLabel* m_tapeWords = nullptr;
    Tape m_tape;
    FindingsPane* m_findings;
    std::vector<core::PutAside> m_asides;
    LayingBar* m_bar;
    QWidget* m_boatPane;
    QSplitter* m_middle;
};

} // namespace sheerlay::ui

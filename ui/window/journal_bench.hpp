#pragma once

#include "core/journal/replan.hpp"
#include "core/project/project.hpp"
#include "ui/scene/boat.hpp"
#include "ui/shop/trial_text.hpp"
#include "ui/window/task_runner.hpp"

#include <QWidget>

#include <memory>
#include <optional>
#include <vector>

class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;
class QTableWidget;

namespace sheerlay::ui {

class JournalLog;

/// The Journal bench: a round with the tape is typed in, what it says is worked out, and the new plan stands
/// against the old one before it is accepted; below it stands what the journal holds. A round that is typed
/// and not accepted yet is kept with the project, and is there again when that is opened.
class JournalBench : public QWidget {
    Q_OBJECT
public:
    explicit JournalBench(TaskRunner::Mode mode, QWidget* parent = nullptr);

    /// The project whose round is kept; told before its boat.
    void setPath(const QString& path);
    /// The same project goes on in another file, and the round that waits with it.
    void moveTo(const QString& path);
    void setBoat(std::shared_ptr<const Boat> boat);
    /// The journal so far, and what a reading is added to.
    void setProject(const core::Project& project);
    void setUnits(core::Units units);
    /// A round from elsewhere into the fields, as if typed here.
    /// @return  why not; empty when it stands there
    [[nodiscard]] QString take(const core::RowReading& round);
    /// Works out what the typed readings say.
    void workOut();
    /// Makes the round that was worked out part of the project. @return  false: none is
    bool accept();

    [[nodiscard]] QSpinBox* row() const { return m_row; }
    [[nodiscard]] const std::vector<QLineEdit*>& fields() const noexcept { return m_fields; }
    [[nodiscard]] QString said() const;
    [[nodiscard]] QTableWidget* changes() const { return m_changes; }
    [[nodiscard]] QPushButton* acceptButton() const { return m_accept; }
    [[nodiscard]] JournalLog* log() const { return m_log; }

Q_SIGNALS:
    /// The builder accepted a round of readings, wrote a note or took an entry out.
    void accepted(const QString& name, const sheerlay::core::Journal& journal);
    void weighed(const sheerlay::ui::TrialText& trial); ///< the readings were worked out
    void refused(const QString& why);                   ///< they can't be

private:
    void refuse(const QString& why);
    /// What stands in the fields, girths as typed, with a unit where they have none.
    [[nodiscard]] core::RowReading open() const;
    void fill(const core::RowReading& round);
    void keep();
    void refillStations();
    void refillPlanned();
    [[nodiscard]] std::optional<core::RowReading> typed();
    void show(const core::PlanAsLaid& tried, int row);
    void forgetTrial();

    struct StationRow {
        double x = 0.0; ///< mm, in the table's own datum
        std::string printed;
        double fromBow = 0.0; ///< mm
    };

    std::shared_ptr<const Boat> m_boat;
    std::optional<core::Project> m_project;
    std::optional<core::Project> m_tried; ///< with the round that was worked out
    int m_triedRow = 0;
    QString m_path;
    bool m_opened = false; ///< what was kept of the path stands in the fields
    core::Units m_units = core::Units::Millimetres;
    TaskRunner* m_runner;
    std::vector<StationRow> m_stations;
    std::vector<QLabel*> m_planned;
    std::vector<QLineEdit*> m_fields;
    QSpinBox* m_row;
    QComboBox* m_side;
    QGridLayout* m_grid;
    QLabel* m_said;
    QTableWidget* m_changes;
    QPushButton *m_work, *m_accept;
    QWidget* m_soFar; ///< what the journal holds, with its heading
    JournalLog* m_log;
};

} // namespace sheerlay::ui

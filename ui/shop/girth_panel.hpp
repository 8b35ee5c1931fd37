#pragma once

#include "core/project/project.hpp"
#include "ui/scene/boat.hpp"
#include "ui/shop/trial_text.hpp"

#include <QFrame>

#include <memory>
#include <string>
#include <vector>

class QGridLayout;
class QLabel;
class QLineEdit;
class QToolButton;

namespace sheerlay::ui {

/// A round with the tape in shop mode: station by station, by keys or big targets. Enter keeps what is typed,
/// says how it lies to the plan and goes to the next station; a girth that is far off is asked for once more,
/// and kept when Enter comes again. After the last station the panel tells what the new plan would change,
/// and waits for one of two targets: Enter does nothing there. Esc leaves.
class GirthPanel : public QFrame {
    Q_OBJECT
public:
    explicit GirthPanel(QWidget* parent);

    /// Begins a round below the row of a strip of the boat.
    /// @return false, and nothing happens, where no station has anything left to measure there
    bool ask(const std::shared_ptr<const Boat>& boat, const core::Strip& strip);
    void setUnits(core::Units units);
    /// Height that a line of its text takes, and its colours.
    void dress(int pixels, const QString& ground, const QString& ink, const QString& accent);
    void say(const QString& words);
    [[nodiscard]] QString said() const;
    void step(int by);
    /// Hands the round over by noted(), or says what can't be read.
    void writeDown();
    /// What the round would do; take it or leave it for later.
    void decide(const TrialText& trial);
    /// Back to the readings: the round was refused, or the plan it was weighed against is no longer in force.
    void backToReadings(const QString& why);
    void leave();

    [[nodiscard]] QLineEdit* field() const { return m_field; }
    [[nodiscard]] QString station() const;
    [[nodiscard]] QToolButton* writeTarget() const { return m_write; }
    [[nodiscard]] QToolButton* takeTarget() const { return m_take; }
    [[nodiscard]] QToolButton* laterTarget() const { return m_later; }
    /// The round is being weighed, or was and waits for a decision.
    [[nodiscard]] bool weighing() const noexcept { return m_weighing; }

Q_SIGNALS:
    void noted(const sheerlay::core::RowReading& round); ///< to be weighed
    void taken();                                        ///< the new plan is wanted
    void left();                                         ///< what was weighed stays for later

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    struct Place {
        core::Station station;
        QString name;
        double planned = 0.0; ///< mm
        QString typed;
        QString doubted; ///< what was typed when it was asked for once more
    };
    QToolButton* target(const QString& text, const QString& spoken, int row, int column, int columns = 1);
    void makeKeypad();
    void refill();
    /// Keeps what the field says, and says how it lies to the plan; false where it can't be read, or is so
    /// far off that it is asked for once more.
    bool keep();
    [[nodiscard]] bool farOff(const core::GirthLeft& girth) const;
    [[nodiscard]] core::RowReading round() const;
    [[nodiscard]] QString besideThePlan(const Place& place, const core::GirthLeft& girth) const;
    void showTargets(bool deciding, bool trialThere);

    std::shared_ptr<const Boat> m_boat;
    core::Units m_units = core::Units::Millimetres;
    int m_row = 0;
    core::ReadSide m_side = core::ReadSide::Both;
    std::vector<Place> m_places;
    std::size_t m_at = 0;
    QString m_below; ///< row and side, as the panel names them
    QGridLayout* m_grid;
    QLabel *m_head, *m_place, *m_said;
    QLineEdit* m_field;
    QToolButton *m_before, *m_next, *m_write, *m_away, *m_take, *m_later;
    std::vector<QWidget*> m_typing; ///< what a girth is typed with
    bool m_weighing = false;
};

} // namespace sheerlay::ui

#pragma once

#include "core/project/project.hpp"
#include "ui/scene/boat.hpp"

#include <QFrame>

#include <memory>
#include <string>
#include <vector>

class QGridLayout;
class QLabel;
class QLineEdit;
class QToolButton;

namespace sheerlay::ui {

/// A round with the tape in shop mode: station by station, by keys or big targets. Enter keeps what is typed
/// and goes to the next station; Esc leaves.
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

    [[nodiscard]] QLineEdit* field() const { return m_field; }
    [[nodiscard]] QString station() const;
    [[nodiscard]] QToolButton* writeTarget() const { return m_write; }

Q_SIGNALS:
    void noted(const sheerlay::core::RowReading& round);
    void left();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    struct Place {
        core::Station station;
        QString name;
        double planned = 0.0; ///< mm
        QString typed;
    };
    QToolButton* target(const QString& text, const QString& spoken, int row, int column, int columns = 1);
    void makeKeypad();
    void refill();
    /// Keeps what the field says; false where it can't be read.
    bool keep();

    std::shared_ptr<const Boat> m_boat;
    core::Units m_units = core::Units::Millimetres;
    int m_row = 0;
    core::ReadSide m_side = core::ReadSide::Both;
    std::vector<Place> m_places;
    std::size_t m_at = 0;
    QGridLayout* m_grid;
    QLabel *m_head, *m_place, *m_said;
    QLineEdit* m_field;
    QToolButton *m_before, *m_next, *m_write;
};

} // namespace sheerlay::ui
